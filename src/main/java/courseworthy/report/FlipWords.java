package courseworthy.report;

import courseworthy.call.Flip;
import courseworthy.demand.Measure;
import java.util.ArrayList;
import java.util.List;

/** Phrases for what would change a decision, the same in text and Markdown. */
public final class FlipWords {

    /** How many are shown to people; all are in JSON. */
    static final int SHOWN = 6;

    static final String TITLE = "What would change it";

    static final String NONE = "No change of a single measure does.";

    /** What was left out. */
    static final String HELD = "One measure at a time, all others held, and with them every single stretch.";

    private FlipWords() {
    }

    /** {@code worst roughness from rugged (3.4) down to rough (2.9)}. */
    public static String change(Flip flip) {
        Measure measure = flip.measure();
        String to = flip.way() == Flip.Way.OVER ? " to " : " " + flip.way().word() + " to ";
        return measure.written() + " from " + measure.scale().text(flip.from()) + to + measure.scale().text(flip.to());
    }

    /** The change and what it brings, {@code ...: 57 mm}. */
    static String line(Flip flip) {
        String tyre = flip.tyre().isEmpty() ? "" : " in another tyre, " + Phrases.values(flip.tyre());
        return change(flip) + ": " + flip.decision().text() + tyre + (flip.inRange() ? " (within what it may be now)" : "");
    }

    /** The smallest changes, and how many more there are. */
    static List<String> lines(List<Flip> flips) {
        List<String> out = new ArrayList<>();
        for (int i = 0; i < Math.min(SHOWN, flips.size()); i++) {
            out.add(line(flips.get(i)));
        }
        int more = flips.size() - SHOWN;
        if (more > 0) {
            out.add("and " + more + " larger " + (more == 1 ? "change" : "changes") + " (--format json lists all)");
        }
        return out;
    }
}
