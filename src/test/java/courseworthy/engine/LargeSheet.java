package courseworthy.engine;

import courseworthy.demand.Measure;
import courseworthy.demand.MeasureScale;
import courseworthy.demand.StretchMeasure;
import courseworthy.sheet.TestSubject;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * A sheet of any size as a coach might write it, by chance from a seed: most rows ask for one to four measures, some for a settled topic,
 * stretches, shares or alternatives; some topics have many rows and most have few.
 */
public final class LargeSheet {

    private final SplittableRandom chance;
    private final List<Topic> topics = new ArrayList<>(Topics.all());
    private final List<Measure> measures = new ArrayList<>();

    private LargeSheet(long seed) {
        this.chance = new SplittableRandom(seed);
        for (Measure measure : Measure.values()) {
            if (measure.layer() == 0) {
                measures.add(measure);
            }
        }
    }

    /** The text of a sheet with so many rows. */
    public static String of(int rows, long seed) {
        LargeSheet sheet = new LargeSheet(seed);
        StringBuilder out = new StringBuilder("sheet: Large\nauthor: a coach\nadvice:\n");
        for (int i = 0; i < rows; i++) {
            sheet.row(i, out);
        }
        return out.toString();
    }

    private void row(int number, StringBuilder out) {
        Topic topic = topics.get((int) (topics.size() * Math.pow(chance.nextDouble(), 1.7)));
        out.append("  - id: row-").append(number).append("\n    when:\n");
        List<String> conditions = new ArrayList<>();
        if (topic.layer() > 1 && chance.nextInt(6) == 0) {
            conditions.add("decided: {bike: " + word(Topics.BIKE.options()) + "}");
        }
        switch (chance.nextInt(12)) {
            case 0 -> conditions.add("any stretch: {" + StretchMeasure.SHARP_STONES.written() + ": yes, length: over " + (1 + chance.nextInt(5))
                    + " km}");
            case 1 -> conditions.add("share of course: {where: {paved: " + (chance.nextBoolean() ? "yes" : "no") + "}, is: over "
                    + 10 * (1 + chance.nextInt(8)) + " %}");
            case 2 -> conditions.add("any of: [{" + measured() + "}, {" + measured() + "}]");
            case 3 -> conditions.add("none of: [{" + measured() + "}]");
            default -> { }
        }
        for (int i = 1 + chance.nextInt(4) - conditions.size() / 2; i > 0; i--) {
            String condition = measured();
            if (conditions.stream().noneMatch(other -> other.startsWith(condition.substring(0, condition.indexOf(':') + 1)))) {
                conditions.add(condition);
            }
        }
        conditions.forEach(condition -> out.append("      ").append(condition).append('\n'));
        out.append("    say: {").append(topic.name()).append(": ").append(saying(topic)).append("}\n    force: ")
                .append(word(List.of("must", "should", "may"))).append("\n    because: Row ").append(number).append(" has its reason.\n");
    }

    private String measured() {
        Measure measure = measures.get((int) (measures.size() * Math.pow(chance.nextDouble(), 1.5)));
        MeasureScale scale = measure.scale();
        if (scale.kind() == MeasureScale.Kind.QUANTITY) {
            long base = Math.max(0, measure.scale().least());
            long most = measure.scale().most();
            long at = base + 1 + chance.nextLong(Math.min(60, most - base - 1));
            boolean share = scale.text(1).endsWith("%");
            String from = plain(scale, at);
            return measure.written() + ": " + switch (chance.nextInt(3)) {
                case 0 -> "over " + from;
                case 1 -> "under " + from;
                default -> "between " + from + " and " + plain(scale, Math.min(most, at + 1 + chance.nextInt(share ? 40 : 100)));
            };
        }
        return measure.written() + ": " + (scale.kind() == MeasureScale.Kind.WORDS ? "at least " : "") + word(scale.words());
    }

    private static String plain(MeasureScale scale, long ticks) {
        return scale.bands().isEmpty() ? scale.text(ticks) : scale.resolution().text(Math.min(ticks, 49));
    }

    private String saying(Topic topic) {
        long value = topic.least() + chance.nextLong(Math.min(topic.most() - topic.least(), 8 * topic.step()) + 1);
        if (topic.kind() == Topic.Kind.OPTIONS) {
            return word(List.of("prefer ", "prefer ", "avoid ", "rule out ")) + topic.text(value);
        }
        return word(List.of("prefer ", "prefer ", "at least ", "at most ")) + topic.text(value);
    }

    private String word(List<String> words) {
        return words.get(chance.nextInt(words.size()));
    }
}
