package courseworthy.event;

import courseworthy.problem.Faults;
import courseworthy.text.FieldReader;
import courseworthy.text.FileKey;
import courseworthy.text.FileKeys;
import courseworthy.units.Amount;
import courseworthy.units.Dimension;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Reads the pits of a race of laps. */
public final class PitReader {

    private static final FileKeys DECLARED = new FileKeys();
    private static final FileKey<Boolean> HELPER = DECLARED.others("at").yesNo("helper", "Whether somebody of one's own stands there and hands up");
    private static final FileKey<Boolean> BOTTLES = DECLARED.yesNo("bottles", "Whether bottles may be taken there");
    private static final FileKey<Boolean> WHEELS = DECLARED.yesNo("wheels", "Whether wheels may wait there");
    private static final FileKey<Boolean> BIKE = DECLARED.yesNo("bike", "Whether a second bike may wait there");

    /** The keys of a pit, with the forms of their values. */
    public static final List<FileKey<?>> KEY_FORMS = DECLARED.all();
    /** Their names. */
    public static final List<String> KEYS = DECLARED.names();

    private static final double LONGEST_LAP = 200_000;

    private PitReader() {
    }

    /** The pits in the order of a lap; empty where none are written. */
    static List<Pit> read(FieldReader event, Integer laps, Event.Rules rules, Faults faults) {
        List<Pit> out = new ArrayList<>();
        for (FieldReader each : event.blocks("pits")) {
            Pit pit = pit(each, rules, faults);
            if (pit != null && out.stream().anyMatch(other -> other.at() == pit.at())) {
                each.fault("at", each.node("at").describe() + " a second time", "each pit once", "Put what waits there into one line.");
            } else if (pit != null) {
                out.add(pit);
            }
        }
        if (!out.isEmpty() && (laps == null || laps < 2)) {
            event.fault("pits", "pits on a course of one lap", "laps, of 2 or more", "Add \"laps: 6\", or list the points under support.");
        }
        out.sort(Comparator.comparingDouble(Pit::at));
        return out;
    }

    private static Pit pit(FieldReader from, Event.Rules rules, Faults faults) {
        from.required("at", "the distance from the start of the lap");
        Amount at = from.amount("at", Dimension.LENGTH, 0, LONGEST_LAP, "a distance within a lap, from 0 km");
        boolean helper = Boolean.TRUE.equals(HELPER.read(from));
        boolean bottles = Boolean.TRUE.equals(BOTTLES.read(from));
        boolean wheels = Boolean.TRUE.equals(WHEELS.read(from));
        boolean bike = Boolean.TRUE.equals(BIKE.read(from));
        if (!bottles && !wheels && !bike) {
            faults.add(from.file(), from.line(), "pits", "a pit where nothing may wait", "bottles, wheels or bike", "Add what may wait there, such as \"bottles: yes\".");
        }
        if (helper && Boolean.FALSE.equals(rules.outsideHelp())) {
            from.fault("helper", "a helper where the rules forbid outside help", "one of the two", "Leave the helper out, or correct \"outside help\".");
        }
        from.done();
        return at == null ? null : new Pit(at.inBase(), helper, bottles, wheels, bike, from.line());
    }
}
