package courseworthy.brief;

import courseworthy.brief.Page.Weight;
import courseworthy.claim.Author;
import courseworthy.demand.Measure;
import courseworthy.demand.Scale;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import java.util.List;
import java.util.Set;

/** Lists what there is: topics, measures and rules. */
public final class Catalogue {

    /**
     * A rule as a list shows it.
     *
     * @param author who says it, why, and where it is written
     * @param says   what it says, each with its topic: {@code fork travel: at least 120 mm}; may be empty
     * @param topics the topics it speaks on
     * @param does   what it puts on the checklist, else empty
     */
    public record Rule(Author author, List<String> says, Set<String> topics, String does) {
    }

    private Catalogue() {
    }

    /** Every topic with its range or options and its usual value. */
    public static String topics(boolean colours) {
        Page page = new Page(colours);
        for (Topic topic : Topics.all()) {
            page.row(topic.name(), 24, values(topic), Weight.BOLD, "", 0, Weight.PLAIN);
            page.text(6, 6, topic.about() + ".", Weight.PLAIN);
        }
        return page.toString();
    }

    private static String values(Topic topic) {
        String usual = "; else " + topic.text(topic.standard());
        if (topic.kind() == Topic.Kind.QUANTITY) {
            return topic.resolution().number(topic.least()) + " to " + topic.text(topic.most()) + usual;
        }
        String joint = topic.kind() == Topic.Kind.ORDERED ? " < " : ", ";
        return String.join(joint, topic.options()) + usual;
    }

    /** Every measure with its unit or words and its definition. */
    public static String measures(boolean colours) {
        Page page = new Page(colours);
        for (Measure measure : Measure.values()) {
            page.row(measure.written(), 34, values(measure.scale()), Weight.BOLD, "", 0, Weight.PLAIN);
            String known = measure.layer() == 0 ? "" : measure.ofTheBike() ? " Holds once bike is settled, where it is of the kind at hand."
                    : " Known once topics of layer " + measure.layer() + " are settled.";
            page.text(6, 6, measure.about() + "." + known, Weight.PLAIN);
        }
        return page.toString();
    }

    private static String values(Scale scale) {
        if (scale.kind() != Scale.Kind.QUANTITY) {
            return String.join(scale.kind() == Scale.Kind.WORDS ? " < " : ", ", scale.words());
        }
        String step = "steps of " + scale.resolution().text(1);
        return scale.words().isEmpty() ? step : step + ", " + String.join(" < ", scale.words());
    }

    /** Every rule with what it says, why, and where it is written. */
    public static String rules(List<Rule> rules, boolean colours) {
        Page page = new Page(colours);
        for (Rule rule : rules) {
            page.spread(rule.author().rule(), rule.author().force().word(), Weight.BOLD);
            for (String says : rule.says()) {
                page.text(4, 6, says, Weight.PLAIN);
            }
            if (rule.says().isEmpty() && !rule.topics().isEmpty()) {
                page.text(4, 6, "joins topics, on " + String.join(", ", rule.topics()), Weight.PLAIN);
            }
            if (!rule.does().isEmpty()) {
                page.text(4, 6, "checklist: " + rule.does(), Weight.PLAIN);
            }
            page.text(4, 4, rule.author().because() + " (" + Words.standing(rule.author()) + ")", Weight.PLAIN);
            page.text(4, 6, rule.author().where().toString(), Weight.FAINT);
        }
        return page.toString();
    }
}
