package courseworthy.event;

import java.time.LocalDate;
import java.util.List;

/**
 * A season as written: who rides, and when what is ridden. Paths are as written, inside the season's folder.
 *
 * @param name     may be empty
 * @param file     the path as typed
 * @param currency in which prices are written; may be empty
 * @param minuteWorth what a minute at an event is worth to the rider, in that currency; null where not written
 * @param hours    time for work on bikes on each evening; null where not written
 * @param back     whether everything goes back to where it was after each date
 * @param starters in the order written
 * @param events   in the order written
 */
public record SeasonFile(String name, String file, String currency, Double minuteWorth, WorkHours hours, boolean back, List<Starter> starters,
        List<Entry> events) {

    public SeasonFile {
        starters = List.copyOf(starters);
        events = List.copyOf(events);
    }

    /**
     * What a season names, and where.
     *
     * @param text as written: a path inside the season's folder, the name of a shipped course, or ground
     * @param line 1-based
     */
    public record FileValue(String text, int line) {
    }

    /**
     * Who rides.
     *
     * @param rider    the rider's file
     * @param workshop the workshop's file; riders who share one name the same
     * @param log      the log of that workshop; null where its own file names it, or there is none
     * @param sheets   coaches' sheets, in order
     * @param priority 1 goes first where parts or time are short; those for whom nothing is written go last
     */
    public record Starter(String name, FileValue rider, FileValue workshop, FileValue log, List<FileValue> sheets, int priority, int line) {
        public Starter {
            sheets = List.copyOf(sheets);
        }
    }

    /**
     * When what is ridden.
     *
     * @param event  the event's file; null where not written
     * @param course a file, or the name of a shipped course
     * @param ground ground where none is written; null where not written
     * @param map    files of map data that the ground is taken from; empty for none
     * @param elevation folder of elevation tiles; null for none
     * @param date   null where the event's file tells it
     * @param travel null where the event's file tells it
     * @param role   null where the event's file tells it
     * @param starts who rides; empty for all
     */
    public record Entry(FileValue event, FileValue course, FileValue ground, List<FileValue> map, FileValue elevation, LocalDate date, Travel travel, String role, List<Start> starts, int line) {
        public Entry {
            map = List.copyOf(map);
            starts = List.copyOf(starts);
        }
    }

    /**
     * Who starts.
     *
     * @param bike      the bike it must be; null for any
     * @param mayChange kinds of parts that may be changed on it, as words; null for all
     */
    public record Start(String rider, String bike, List<String> mayChange, int line) {
    }
}
