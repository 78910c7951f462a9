package courseworthy.task;

import courseworthy.build.Build;
import courseworthy.build.RaceBuild;
import courseworthy.checklist.Checklist;
import courseworthy.event.Event;
import courseworthy.sheet.SheetInForce;
import courseworthy.stage.BagItem;
import courseworthy.stage.StageSetUp;
import courseworthy.wear.WearCounter.Outlook;
import java.util.List;

/**
 * One set-up for a race over several days, with what wears out and what goes into the bag.
 *
 * @param event  the race as a whole
 * @param rider  the rider's name; may be empty
 * @param setUp  what is settled
 * @param builds the parts of a workshop that realise it, bike by bike as in the set-up; empty where no workshop is given
 * @param wear   what wears on the bike; of fresh parts as they are decided where no workshop is given
 * @param bag    what goes into the bag for the days
 * @param charge what is charged every night
 * @param checklist what is to be done before the race, between the stages and after it
 * @param sheets coaches' sheets in force, in the order given
 */
public record StagesResult(Event event, String rider, StageSetUp setUp, List<RaceBuild> builds, List<Outlook> wear, List<BagItem> bag, List<String> charge,
        Checklist checklist, List<SheetInForce> sheets) {

    /** A part that may use up so much of its interval over the race is named, although it does not fall due. */
    private static final double TELLING = 0.5;

    public StagesResult {
        builds = List.copyOf(builds);
        wear = List.copyOf(wear);
        bag = List.copyOf(bag);
        charge = List.copyOf(charge);
        sheets = List.copyOf(sheets);
    }

    /** The build of the bike that is ridden longest; null where there is no workshop, or no bike of it can be built. */
    public Build build() {
        return builds.isEmpty() || builds.get(0).build().bike() == null ? null : builds.get(0).build();
    }

    /** What is to be done on the evening before a stage, in order of safety. @param stage from 1 */
    public List<Outlook> due(int stage) {
        return wear.stream().filter(each -> each.due().contains(stage - 1)).sorted((one, other) -> Boolean.compare(other.interval().work().safety(), one.interval().work().safety())).toList();
    }

    /** What uses up at least half of its interval over the race, and does not fall due. */
    public List<Outlook> worn() {
        return wear.stream().filter(each -> each.due().isEmpty() && each.used().high() >= TELLING).toList();
    }
}
