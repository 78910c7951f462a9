package courseworthy.report;

import courseworthy.demand.Measure;
import courseworthy.demand.MeasureScale;
import courseworthy.task.RuleEntry;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import java.util.ArrayList;
import java.util.List;

/** Lists of what there is: topics, measures and rules. */
public final class CatalogueReport {

    private CatalogueReport() {
    }

    /** Every topic with its range or options and its default. */
    public static Report topics() {
        List<Definition> rows = new ArrayList<>();
        for (Topic topic : Topics.all()) {
            rows.add(Definition.of(topic.name(), RichText.ofStrong(values(topic))).details(List.of(RichText.of(topic.about() + "."))));
        }
        return Report.builder(RichText.of("Topics")).subtitle("what there is to decide").definitions(rows).build();
    }

    private static String values(Topic topic) {
        String usual = "; default " + topic.text(topic.standard());
        if (topic.kind() == Topic.Kind.QUANTITY) {
            return topic.resolution().number(topic.least()) + " to " + topic.text(topic.most()) + usual;
        }
        return String.join(topic.kind() == Topic.Kind.ORDERED ? " < " : ", ", topic.options()) + usual;
    }

    /** Every measure with its unit or words and its definition. */
    public static Report measures() {
        List<Definition> rows = new ArrayList<>();
        for (Measure measure : Measure.values()) {
            String known = measure.layer() == 0 ? "" : measure.ofTheBike() ? " Known once the bike is decided, if it is of the kind at hand."
                    : " Known once topics of layer " + measure.layer() + " are decided.";
            rows.add(Definition.of(measure.written(), RichText.ofStrong(values(measure.scale())))
                    .details(List.of(RichText.of(measure.about() + "." + known))));
        }
        return Report.builder(RichText.of("Measures")).subtitle("what rules may test").definitions(rows).build();
    }

    private static String values(MeasureScale scale) {
        if (scale.kind() != MeasureScale.Kind.QUANTITY) {
            return String.join(scale.kind() == MeasureScale.Kind.WORDS ? " < " : ", ", scale.words());
        }
        String step = "steps of " + scale.resolution().text(1);
        return scale.words().isEmpty() ? step : step + ", " + String.join(" < ", scale.words());
    }

    /** Every rule with what it says, why, and where it is written. */
    public static Report rules(List<RuleEntry> rules) {
        List<ItemList.Item> items = new ArrayList<>();
        for (RuleEntry rule : rules) {
            items.add(new ItemList.Item(RichText.ofStrong(rule.origin().rule()).text(": " + rule.origin().force().word()), below(rule)));
        }
        return Report.builder(RichText.of("Shipped rules")).subtitle(Phrases.count(rules.size(), "rule")).items(items).build();
    }

    private static List<Block> below(RuleEntry rule) {
        return List.of(ItemList.bulleted(says(rule)),
                new Paragraph(RichText.of(rule.origin().because() + " (" + Phrases.standing(rule.origin()) + ")"), Paragraph.Role.BODY),
                new Paragraph(RichText.of(rule.origin().where().toString()), Paragraph.Role.REMARK));
    }

    /** What a rule says on topics and puts on the checklist, line by line. */
    static List<RichText> says(RuleEntry rule) {
        List<RichText> out = new ArrayList<>();
        rule.says().forEach(each -> out.add(RichText.of(each)));
        if (rule.says().isEmpty() && !rule.topics().isEmpty()) {
            out.add(RichText.of("joins topics, on " + String.join(", ", rule.topics())));
        }
        if (!rule.does().isEmpty()) {
            out.add(RichText.of("checklist: " + rule.does()));
        }
        return out;
    }
}
