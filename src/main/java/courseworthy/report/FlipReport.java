package courseworthy.report;

import courseworthy.call.Flip;
import courseworthy.demand.MeasureScale;
import java.util.ArrayList;
import java.util.List;

/** The section on what would change a decision, which the reports on one decision have in common. */
public final class FlipReport {

    /** How many changes are shown to people; all are in JSON. */
    private static final int SHOWN = 6;

    private static final String NONE = "No change to a single figure would change it.";

    /** What the search leaves out. */
    static final String SEARCHED = "One figure changed at a time; everything else, the stretches included, kept as it is.";

    private FlipReport() {
    }

    /** The smallest changes first. */
    static Section.Builder section(List<Flip> flips) {
        List<RichText> lines = new ArrayList<>();
        flips.stream().limit(SHOWN).forEach(flip -> lines.add(RichText.of(line(flip))));
        int more = flips.size() - lines.size();
        if (more > 0) {
            lines.add(RichText.of("and " + Phrases.count(more, "larger change") + " (").code("--format json").text(" lists all)"));
        }
        return Section.builder("changes", "What would change it").paragraph(flips.isEmpty() ? NONE : "").bullets(lines).remark(SEARCHED);
    }

    /** {@code worst roughness from rugged (3.4) to rough (2.9)}. */
    public static String change(Flip flip) {
        MeasureScale scale = flip.measure().scale();
        return flip.measure().written() + " from " + scale.text(flip.from()) + " to " + scale.text(flip.to());
    }

    /** The change and the decision that it leads to. */
    static String line(Flip flip) {
        String tyre = flip.tyre().isEmpty() ? "" : " in another tyre, " + Phrases.values(flip.tyre());
        String within = flip.measure().scale().text(flip.to()) + " is within the present uncertainty";
        return change(flip) + ": " + flip.decision().phrase() + tyre + (flip.inRange() ? " (" + within + ")" : "");
    }
}
