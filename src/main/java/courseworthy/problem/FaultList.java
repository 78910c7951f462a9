package courseworthy.problem;

import java.util.List;

/** Faults as they are printed: as many as one can mend at a sitting, then how many more there are. */
public final class FaultList {

    private static final int MOST = 100;
    /** Most characters of all that are printed, but for the last. */
    private static final int LONGEST = 60_000;

    private FaultList() {
    }

    /** The lines, safe to show on a terminal, each with its end. */
    public static String text(List<Fault> faults) {
        StringBuilder out = new StringBuilder();
        int shown = 0;
        for (Fault each : faults) {
            if (shown == MOST || out.length() > LONGEST) {
                out.append(faults.size() - shown).append(" more like these; mend the above first.\n");
                break;
            }
            out.append(TextSanitiser.text(each.text())).append('\n');
            shown++;
        }
        return out.toString();
    }
}
