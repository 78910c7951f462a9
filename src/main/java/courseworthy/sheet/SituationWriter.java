package courseworthy.sheet;

import courseworthy.demand.Measure;
import courseworthy.demand.MeasureScale;
import courseworthy.demand.Occasion;
import courseworthy.demand.StretchFacts;
import courseworthy.demand.StretchMeasure;
import courseworthy.topic.SettledTopic;
import java.util.ArrayList;
import java.util.List;

/** Writes a situation so that {@link SituationReader} reads the same. Values are written by their middle. */
public final class SituationWriter {

    private SituationWriter() {
    }

    /** Lines of YAML, each ended. */
    public static String of(Situation situation) {
        StringBuilder out = new StringBuilder();
        occasion(situation.occasion(), out);
        for (Measure measure : Measure.values()) {
            if (situation.measures().containsKey(measure)) {
                out.append(measure.written()).append(": ").append(text(measure.scale(), situation.measures().get(measure).mid())).append('\n');
            }
        }
        List<String> settled = new ArrayList<>();
        for (SettledTopic one : situation.settled().values()) {
            if (one.known()) {
                settled.add("  " + one.topic().name() + ": " + one.text() + "\n");
            }
        }
        out.append(settled.isEmpty() ? "" : "decided:\n").append(String.join("", settled));
        out.append(situation.stretches().isEmpty() ? "" : "stretches:\n");
        for (StretchFacts stretch : situation.stretches()) {
            out.append("  - {").append(String.join(", ", facts(stretch))).append("}\n");
        }
        return out.toString();
    }

    private static void occasion(Occasion occasion, StringBuilder out) {
        if (occasion.rider() != null && !occasion.rider().isEmpty()) {
            out.append(OccasionCondition.Riders.KEY).append(": ").append(quoted(occasion.rider())).append('\n');
        }
        if (!occasion.tags().isEmpty()) {
            out.append(OccasionCondition.Tags.KEY).append(": ");
            out.append(occasion.tags().size() == 1 ? quoted(occasion.tags().get(0))
                    : "[" + String.join(", ", occasion.tags().stream().map(SituationWriter::quoted).toList()) + "]").append('\n');
        }
        if (occasion.date() != null) {
            out.append(OccasionCondition.Days.KEY).append(": ").append(occasion.date()).append('\n');
        }
    }

    private static String quoted(String text) {
        return "'" + text.replace("'", "''") + "'";
    }

    private static List<String> facts(StretchFacts stretch) {
        List<String> out = new ArrayList<>();
        for (StretchMeasure measure : StretchMeasure.values()) {
            if (stretch.get(measure) != StretchFacts.UNKNOWN) {
                out.add(measure.written() + ": " + text(measure.scale(), stretch.get(measure)));
            }
        }
        return out;
    }

    /** A banded value by its number alone: its word stands for many. */
    private static String text(MeasureScale scale, long value) {
        return scale.kind() == MeasureScale.Kind.QUANTITY ? scale.resolution().text(value) : scale.text(value);
    }
}
