package courseworthy.event;

import courseworthy.topic.Work;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A race over several days, each on a course of its own.
 *
 * @param stages    in order of their dates
 * @param mayChange kinds of work on the bike that the rules of the event permit between stages; what is set every day is not among them
 * @param stated    whether the event says what may change; otherwise nothing is taken to
 * @param number    of the stage that is looked at, from 1; 0 for the whole race
 */
public record StageRace(List<RaceStage> stages, Set<Work> mayChange, boolean stated, int number) {

    /** Work that belongs to every morning, and which no event forbids between stages. */
    public static final Set<Work> DAILY = Set.copyOf(EnumSet.of(Work.PRESSURE, Work.SUSPENSION_SETTINGS, Work.LIGHTS, Work.UPKEEP, Work.CLOTHING, Work.CARRY));
    /** The words for work that an event may permit or forbid between stages. */
    public static final List<String> CHANGES = Stream.of(Work.values()).filter(each -> !DAILY.contains(each)).map(Work::word).toList();

    public StageRace {
        stages = List.copyOf(stages);
        mayChange = Set.copyOf(mayChange);
    }

    /**
     * One day.
     *
     * @param course as written: a file beside the event's, or the name of a shipped course
     * @param day    the event of that day alone
     * @param line   on which the course is written
     */
    public record RaceStage(String course, Event day, int line) {
    }

    StageRace at(int stage) {
        return new StageRace(stages, mayChange, stated, stage);
    }
}
