package courseworthy.event;

import courseworthy.problem.Faults;
import courseworthy.problem.Spelling;
import courseworthy.text.FieldReader;
import courseworthy.text.Node;
import courseworthy.topic.Work;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** Reads the stages of a race over several days, and what may change between them. */
public final class StageReader {

    /** The key of the list of stages. */
    public static final String KEY = "stages";
    /** The key of what may change between them. */
    public static final String CHANGES_KEY = "changes between stages";
    /** The keys of a stage. */
    public static final List<String> KEYS = List.of("course", "date", "start", "laps", "time limit", "group share", "forecast", "support", "start height",
            "cut-offs", "pits");
    /** In place of a list of what may change. */
    public static final List<String> ALL_OR_NOTHING = List.of("everything", "nothing");

    /** Keys of an event that say something of one day, or of one course. */
    private static final List<String> OF_A_DAY = List.of("date", "laps", "time limit", "forecast", "support", "cut-offs", "pits", "start height");
    private static final int LONGEST = 200;

    private final FieldReader event;
    private final Faults faults;
    private final List<StageBlock> blocks = new ArrayList<>();

    /** What a stage says besides what is read as of an event. */
    record StageBlock(FieldReader fields, String course, LocalDate date) {
    }

    private StageReader(FieldReader event, Faults faults) {
        this.event = event;
        this.faults = faults;
    }

    /** Null where no stages are written. */
    static StageReader of(FieldReader event, Faults faults) {
        if (!event.has(KEY)) {
            if (event.has(CHANGES_KEY)) {
                event.fault(CHANGES_KEY, "changes between stages where there are none", "stages, each with its course and date", "");
            }
            event.node(KEY);
            event.node(CHANGES_KEY);
            return null;
        }
        StageReader out = new StageReader(event, faults);
        event.node(KEY);
        event.node(CHANGES_KEY);
        out.read();
        return out;
    }

    private void read() {
        for (String key : OF_A_DAY) {
            if (event.has(key)) {
                event.fault(key, key + " beside stages", "it in each stage that has it", "Move the line into the stages.");
            }
        }
        if (event.node(KEY) instanceof Node.Sequence list && list.items().isEmpty()) {
            event.fault(KEY, "an empty list", "at least one stage", "");
        }
        LocalDate before = null;
        for (FieldReader each : event.blocks(KEY)) {
            each.required("course", "a file beside this one, or the name of a shipped course");
            each.required("date", "the day of the stage");
            String course = each.line("course", LONGEST);
            LocalDate date = each.day("date");
            if (date != null && before != null && !date.isAfter(before)) {
                each.fault("date", date.toString(), "a day after that of the stage before, " + before, "Write the stages in the order in which they are ridden.");
            }
            before = date == null ? before : date;
            blocks.add(new StageBlock(each, course, date));
        }
    }

    /** What each stage says, in order. */
    List<StageBlock> blocks() {
        return blocks;
    }

    /** The first day; null where it is unknown. */
    LocalDate first() {
        return blocks.isEmpty() ? null : blocks.get(0).date();
    }

    /** What may change between stages. */
    Set<Work> changes() {
        Set<Work> out = EnumSet.noneOf(Work.class);
        for (String word : event.names(CHANGES_KEY)) {
            boolean alone = event.items(CHANGES_KEY).size() == 1;
            if (alone && word.equals(ALL_OR_NOTHING.get(0))) {
                StageRace.CHANGES.forEach(each -> out.add(Work.of(each)));
            } else if (StageRace.CHANGES.contains(word)) {
                out.add(Work.of(word));
            } else if (!alone || !word.equals(ALL_OR_NOTHING.get(1))) {
                refuse(word);
            }
        }
        return out;
    }

    private void refuse(String word) {
        List<String> accepted = new ArrayList<>(ALL_OR_NOTHING);
        accepted.addAll(StageRace.CHANGES);
        boolean daily = StageRace.DAILY.stream().anyMatch(each -> each.word().equals(word));
        event.fault(CHANGES_KEY, "\"" + word + "\"", "everything or nothing alone, or a list of: " + String.join(", ", StageRace.CHANGES),
                daily ? "That is seen to every day in any case: leave it out." : Spelling.didYouMean(word, accepted));
    }
}
