package courseworthy.schema;

import static courseworthy.schema.SchemaFragments.about;

import courseworthy.claim.Deadline;
import courseworthy.claim.Evidence;
import courseworthy.claim.Force;
import courseworthy.demand.Measure;
import courseworthy.demand.MeasureScale;
import courseworthy.demand.StretchMeasure;
import courseworthy.sheet.NamedValues;
import courseworthy.sheet.TestSubject;
import courseworthy.topic.BothEnds;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import courseworthy.units.Amount;
import courseworthy.units.Dimension;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** A sheet of advice, and the rows in it. */
final class SheetSchema {

    /** The name of a row's schema. */
    static final String ROW = "row";

    private static final String CONDITIONS = "conditions";
    private static final String STRETCHES = "stretches";
    /** A value by its name. */
    private static final String NAMED = NamedValues.ARTICLE + NamedValues.NAME;
    private static final String NUMBER = Amount.pattern(Dimension.NUMBER);

    private SheetSchema() {
    }

    static Map<String, Object> of() {
        return new SchemaFragments.KeyBlock()
                .key("sheet", about("The sheet's name", SchemaFragments.text()))
                .key("author", about("Who wrote it", SchemaFragments.text()))
                .key("version", about("Which one it is, in its author's words", SchemaFragments.text()))
                .key("licence", about("What others may do with it: an SPDX identifier, such as CC-BY-4.0", SchemaFragments.text()))
                .key("values", about("Figures named once, and used by name: the heavy load", values()))
                .key("advice", SchemaFragments.oneOrMore(SchemaFragments.reference(ROW)))
                .key("leave out", about("Rules that do not count", SchemaFragments.oneOrMore(leaveOut())))
                .required("sheet", "author")
                .also("anyOf", List.of(SchemaFragments.of("required", List.of("advice")), SchemaFragments.of("required", List.of("leave out")),
                        SchemaFragments.of("required", List.of("values"))))
                .also("$defs", definitions())
                .file("Sheet of advice");
    }

    private static Map<String, Object> values() {
        List<Map<String, Object>> figures = new ArrayList<>();
        figures.add(SchemaFragments.pattern(SchemaFragments.alternatives(Arrays.stream(Dimension.values()).map(Amount::pattern).toList())));
        figures.add(SchemaFragments.of("type", "number"));
        Map<String, Object> one = new SchemaFragments.KeyBlock()
                .key("value", about("The figure with its unit", SchemaFragments.of("anyOf", figures)))
                .key("because", about("Why it is so much", SchemaFragments.text()))
                .key("source", about("Who published it where", SchemaFragments.text()))
                .required("value")
                .also("anyOf", List.of(SchemaFragments.of("required", List.of("because")), SchemaFragments.of("required", List.of("source")))).shape();
        return SchemaFragments.of("type", "object", "propertyNames", SchemaFragments.pattern(NamedValues.NEW_NAME), "additionalProperties", one);
    }

    /** What rows are made of, by name. */
    static Map<String, Object> definitions() {
        return SchemaFragments.of(ROW, row(), CONDITIONS, conditions(), STRETCHES, stretches());
    }

    private static Map<String, Object> row() {
        return new SchemaFragments.KeyBlock()
                .key("id", about("A name for the row", SchemaFragments.anyOf(SchemaFragments.pattern("[a-z0-9]+(?:-[a-z0-9]+)*"), SchemaFragments.of("type", "integer"))))
                .key("when", about("All must hold; always where it is absent", SchemaFragments.reference(CONDITIONS)))
                .key("say", about("What it says on topics", say()))
                .key("do", about("What is to be done", task()))
                .key("force", about("How strongly it is advised; should where it is absent",
                        SchemaFragments.word(Arrays.stream(Force.values()).map(Force::word).toList())))
                .key("evidence", about("How it is known; opinion where it is absent",
                        SchemaFragments.word(Arrays.stream(Evidence.values()).map(Evidence::word).toList())))
                .key("source", about("Who published it where", SchemaFragments.text()))
                .key("because", about("The reason, in one sentence", SchemaFragments.text()))
                .required("id", "because")
                .also("anyOf", List.of(SchemaFragments.of("required", List.of("say")), SchemaFragments.of("required", List.of("do"))))
                .also("if", SchemaFragments.of("properties", SchemaFragments.of("evidence", SchemaFragments.of("const", Evidence.PUBLISHED.word())),
                        "required", List.of("evidence")))
                .also("then", SchemaFragments.of("required", List.of("source")))
                .shape();
    }

    private static Map<String, Object> leaveOut() {
        return new SchemaFragments.KeyBlock()
                .key("rule", about("Its id with its sheet, such as shipped/some-rule", SchemaFragments.text()))
                .key("because", about("The reason, in one sentence", SchemaFragments.text()))
                .required("rule", "because").shape();
    }

    private static Map<String, Object> task() {
        return new SchemaFragments.KeyBlock()
                .key("what", about("What to do; topics in braces are filled in", SchemaFragments.text()))
                .key("find", about("How it is known to be done; topics in braces are filled in", SchemaFragments.text()))
                .key("by", about("By when", SchemaFragments.word(Deadline.allWords())))
                .key("needs", about("How long it takes to be effective", SchemaFragments.anyOf(SchemaFragments.amount(Dimension.TIME), SchemaFragments.pattern(NAMED))))
                .key("part", about("The part it belongs to", SchemaFragments.text()))
                .key("after", about("Ids of rows to be done before", SchemaFragments.oneOrMore(SchemaFragments.text())))
                .required("what", "find", "by").shape();
    }

    private static Map<String, Object> conditions() {
        SchemaFragments.KeyBlock block = new SchemaFragments.KeyBlock();
        for (Measure measure : Measure.values()) {
            block.key(measure.written(), about(measure.about(), test(TestSubject.of(measure))));
        }
        return block
                .key("decided", about("Topics settled in an earlier layer", decided()))
                .key("any stretch", about("Some run of stretches is so", SchemaFragments.oneOrMore(SchemaFragments.reference(STRETCHES))))
                .key("no stretch", about("No run of stretches is so", SchemaFragments.oneOrMore(SchemaFragments.reference(STRETCHES))))
                .key("share of course", about("So much of the course, by length, is so", SchemaFragments.oneOrMore(share())))
                .key("rider", about("Names of riders", names()))
                .key("rider tag", about("Tags of riders", names()))
                .key("date", about("A day, or between two; every year where no year is written", SchemaFragments.pattern(dates())))
                .key("any of", about("At least one of these sets holds", sets()))
                .key("none of", about("None of these sets holds", sets()))
                .also("minProperties", 1).shape();
    }

    private static Map<String, Object> sets() {
        Map<String, Object> list = SchemaFragments.listOf(SchemaFragments.reference(CONDITIONS));
        list.put("minItems", 1);
        return list;
    }

    private static Map<String, Object> names() {
        return SchemaFragments.names("one of \\[.*\\]|");
    }

    private static String dates() {
        String day = "[0-9]{2}-[0-9]{2}";
        String ofAYear = "[0-9]{4}-" + day;
        return ofAYear + "|between " + ofAYear + " and " + ofAYear + "|between " + day + " and " + day;
    }

    private static Map<String, Object> decided() {
        SchemaFragments.KeyBlock block = new SchemaFragments.KeyBlock();
        for (Topic topic : Topics.all()) {
            block.key(topic.name(), about(topic.about(), test(TestSubject.of(topic))));
        }
        return block.shape();
    }

    private static Map<String, Object> stretches() {
        SchemaFragments.KeyBlock block = new SchemaFragments.KeyBlock();
        for (StretchMeasure measure : StretchMeasure.values()) {
            block.key(measure.written(), about(measure.about(), test(TestSubject.of(measure))));
        }
        return block.also("minProperties", 1).shape();
    }

    private static Map<String, Object> share() {
        return new SchemaFragments.KeyBlock().key("where", SchemaFragments.reference(STRETCHES)).key("is", test(TestSubject.SHARE)).required("where", "is").shape();
    }

    /** A test of a value: a value, several, or a comparison where values have an order. */
    private static Map<String, Object> test(TestSubject subject) {
        MeasureScale scale = subject.scale();
        return test(subject, scale.kind() == MeasureScale.Kind.QUANTITY ? SchemaFragments.alternatives(List.of(value(scale), NAMED)) : value(scale));
    }

    /** A test of plain values, as in {@link #test(TestSubject)}. */
    static Map<String, Object> plainTest(TestSubject subject) {
        return test(subject, value(subject.scale()));
    }

    private static Map<String, Object> test(TestSubject subject, String value) {
        String tests = value + "|one of \\[ *" + value + "(?: *, *" + value + ")* *\\]";
        if (subject.ordered()) {
            tests += "|(?:over|under|at least|at most) " + value + "|between " + value + " and " + value;
        }
        List<Map<String, Object>> shapes = new ArrayList<>(List.of(SchemaFragments.pattern(tests)));
        plain(subject.scale(), shapes);
        Map<String, Object> one = shapes.size() == 1 ? shapes.get(0) : SchemaFragments.of("anyOf", shapes);
        return SchemaFragments.of("anyOf", List.of(one, SchemaFragments.listOf(one)));
    }

    /** What an editor may take for something else than text. */
    static void plain(MeasureScale scale, List<Map<String, Object>> shapes) {
        if (scale.kind() == MeasureScale.Kind.QUANTITY) {
            if (SchemaFragments.bare(scale.resolution().unit().dimension())) {
                shapes.add(SchemaFragments.of("type", "number"));
            }
        } else if (!SchemaFragments.word(scale.words()).containsKey("enum")) {
            shapes.add(SchemaFragments.of("type", "boolean"));
        }
    }

    static String value(MeasureScale scale) {
        if (scale.kind() == MeasureScale.Kind.YES_NO) {
            return "(?:yes|no|true|false)";
        }
        if (scale.kind() != MeasureScale.Kind.QUANTITY) {
            return SchemaFragments.either(scale.words());
        }
        String amount = Amount.pattern(scale.resolution().unit().dimension());
        return scale.words().isEmpty() ? amount : "(?:" + amount + "|" + SchemaFragments.either(scale.words()) + ")";
    }

    private static Map<String, Object> say() {
        return onTopics(topic -> (topic.kind() == Topic.Kind.QUANTITY ? "|" + NAMED : "") + measured(topic));
    }

    /** What a case expects to be said: as a row says it, with values alone. */
    static Map<String, Object> says() {
        return onTopics(topic -> "");
    }

    private static Map<String, Object> onTopics(Function<Topic, String> besides) {
        SchemaFragments.KeyBlock block = new SchemaFragments.KeyBlock();
        for (Topic topic : Topics.all()) {
            block.key(topic.name(), about(topic.about(), SchemaFragments.oneOrMore(SchemaFragments.pattern(sayings(topic, besides.apply(topic))))));
        }
        for (String name : BothEnds.pairs()) {
            block.key(name, about(bothEnds(name), SchemaFragments.oneOrMore(SchemaFragments.pattern(sayingsOfBoth(name, besides)))));
        }
        return block.also("minProperties", 1).shape();
    }

    /** What a name for both ends stands for. */
    static String bothEnds(String name) {
        List<Topic> ends = BothEnds.topics(name);
        return ends.get(0).name() + " and " + ends.get(1).name();
    }

    /** What may be said of each end, the measures of an end by the words for both. */
    private static String sayingsOfBoth(String name, Function<Topic, String> besides) {
        Topic front = BothEnds.topics(name).get(0);
        String each = sayings(front, besides.apply(front));
        return each.contains("front ") ? each.replace("front ", BothEnds.WORDS + " ") + "|" + each : each;
    }

    private static String sayings(Topic topic, String besides) {
        return switch (topic.kind()) {
            case QUANTITY -> "(?:at least|at most|prefer) (?:" + Amount.pattern(dimension(topic)) + besides + ")";
            case ORDERED -> "(?:at least|at most|prefer|avoid|rule out) (?:" + SchemaFragments.either(topic.options()) + besides + ")";
            case OPTIONS -> "(?:prefer|avoid|rule out) (?:" + SchemaFragments.either(topic.options()) + besides + ")";
        };
    }

    /** The measures whose value may stand for a value of the topic, with a factor where it is a quantity. */
    private static String measured(Topic topic) {
        List<String> names = new ArrayList<>();
        for (Measure measure : Measure.values()) {
            if (alike(topic, measure.scale()) && measure.layer() < topic.layer()) {
                names.add(measure.written());
            }
        }
        if (names.isEmpty()) {
            return "";
        }
        String factor = topic.kind() == Topic.Kind.QUANTITY ? "(?:(?:" + NUMBER + "|" + NAMED + ") x )?" : "";
        return "|" + factor + SchemaFragments.either(names);
    }

    private static boolean alike(Topic topic, MeasureScale scale) {
        if (topic.kind() == Topic.Kind.QUANTITY) {
            return scale.kind() == MeasureScale.Kind.QUANTITY && scale.resolution().unit().dimension() == dimension(topic);
        }
        return scale.kind() != MeasureScale.Kind.QUANTITY && scale.words().equals(topic.options());
    }

    private static Dimension dimension(Topic topic) {
        return topic.resolution().unit().dimension();
    }
}
