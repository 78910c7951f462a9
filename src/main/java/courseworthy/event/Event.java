package courseworthy.event;

import courseworthy.text.Node;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.List;

/**
 * The day as written; null means not written.
 *
 * @param name       may be empty
 * @param file       the path as typed, empty for no file
 * @param role       {@code race} or {@code training}; null where not written
 * @param date       the day
 * @param start      local time of the start
 * @param offset     local time's offset from UTC on that day
 * @param laps       laps of the course, at least 1
 * @param aim        one of {@link #AIMS}
 * @param cutoff     time allowed, s
 * @param groupShare share of the distance expected in a group, 0 to 1
 * @param forecast   the forecast, all of it may be unknown
 * @param support    support points in order; empty where none are written
 * @param supportKnown whether support points were written at all (an empty list then means none on the course)
 * @param rules      the event's equipment rules
 * @param startHeight height of the start above sea level, m, where the course does not tell
 * @param bike       the {@code bike:} block as written, read later by the reader of such blocks; null where not written here
 */
public record Event(String name, String file, String role, LocalDate date, LocalTime start, ZoneOffset offset, Integer laps,
        String aim, Double cutoff, Double groupShare, Forecast forecast, List<Support> support, boolean supportKnown, Rules rules,
        Double startHeight, Node.Mapping bike) {

    /** What the rider wants, least first. */
    public static final List<String> AIMS = List.of("finish", "time", "podium");

    /** The day nothing is known of. */
    public static final Event UNKNOWN = new Event("", "", null, null, null, null, null, null, null, null, Forecast.UNKNOWN, List.of(),
            false, Rules.NONE, null, null);

    /** The same day with the role or the date replaced; null leaves what is written. */
    public Event with(String otherRole, LocalDate otherDate) {
        return new Event(name, file, otherRole == null ? role : otherRole, otherDate == null ? date : otherDate, start, offset, laps, aim,
                cutoff, groupShare, forecast, support, supportKnown, rules, startHeight, bike);
    }

    /**
     * The forecast at the start's height.
     *
     * @param low     lowest temperature of the ride, C
     * @param high    highest temperature of the ride, C
     * @param ground  {@code dry}, {@code damp} or {@code wet}
     * @param wind    mean wind at 10 m height, m/s
     * @param from    direction it comes from, degrees clockwise from north
     */
    public record Forecast(Double low, Double high, String ground, Double wind, Double from) {
        public static final Forecast UNKNOWN = new Forecast(null, null, null, null, null);
        /** Words for the ground, driest first. */
        public static final List<String> GROUNDS = List.of("dry", "damp", "wet");
    }

    /**
     * A support point.
     *
     * @param at    m from the start of the event, over all laps
     * @param water whether bottles can be filled
     * @param food  whether there is food
     * @param bag   whether a bag of one's own waits there
     */
    public record Support(double at, boolean water, boolean food, boolean bag) {
    }

    /**
     * The event's equipment rules; null means not written.
     *
     * @param aeroExtensions whether allowed
     * @param tyreWidthMost  widest tyre allowed, m
     * @param lights         whether lights are required
     * @param mudguards      whether mudguards are required
     * @param outsideHelp    whether outside help is allowed
     * @param kit            required kit, in the event's words
     * @param edition        date or year of the rules, as written
     */
    public record Rules(Boolean aeroExtensions, Double tyreWidthMost, Boolean lights, Boolean mudguards, Boolean outsideHelp,
            List<String> kit, String edition) {
        public static final Rules NONE = new Rules(null, null, null, null, null, List.of(), "");
    }
}
