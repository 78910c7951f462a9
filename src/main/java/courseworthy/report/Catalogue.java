package courseworthy.report;

import courseworthy.demand.Measure;
import courseworthy.demand.MeasureScale;
import courseworthy.report.Page.Weight;
import courseworthy.task.RuleEntry;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import java.util.List;

/** Lists what there is: topics, measures and rules. */
public final class Catalogue {

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

    private static String values(MeasureScale scale) {
        if (scale.kind() != MeasureScale.Kind.QUANTITY) {
            return String.join(scale.kind() == MeasureScale.Kind.WORDS ? " < " : ", ", scale.words());
        }
        String step = "steps of " + scale.resolution().text(1);
        return scale.words().isEmpty() ? step : step + ", " + String.join(" < ", scale.words());
    }

    /** Every rule with what it says, why, and where it is written. */
    public static String rules(List<RuleEntry> rules, boolean colours) {
        Page page = new Page(colours);
        for (RuleEntry rule : rules) {
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
            page.text(4, 4, rule.author().because() + " (" + Phrases.standing(rule.author()) + ")", Weight.PLAIN);
            page.text(4, 6, rule.author().where().toString(), Weight.FAINT);
        }
        return page.toString();
    }
}
