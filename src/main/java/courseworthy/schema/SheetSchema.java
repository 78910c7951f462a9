package courseworthy.schema;

import static courseworthy.schema.Shape.about;

import courseworthy.claim.Due;
import courseworthy.claim.Evidence;
import courseworthy.claim.Force;
import courseworthy.demand.Measure;
import courseworthy.demand.Scale;
import courseworthy.demand.StretchMeasure;
import courseworthy.rulebase.NamedValues;
import courseworthy.rulebase.Subject;
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
        return new Shape.Block()
                .key("sheet", about("The sheet's name", Shape.text()))
                .key("author", about("Who wrote it", Shape.text()))
                .key("version", about("Which one it is, in its author's words", Shape.text()))
                .key("licence", about("What others may do with it: an SPDX identifier, such as CC-BY-4.0", Shape.text()))
                .key("values", about("Figures named once, and used by name: the heavy load", values()))
                .key("advice", Shape.oneOrMore(Shape.reference(ROW)))
                .key("leave out", about("Rules that do not count", Shape.oneOrMore(leaveOut())))
                .required("sheet", "author")
                .also("anyOf", List.of(Shape.of("required", List.of("advice")), Shape.of("required", List.of("leave out")),
                        Shape.of("required", List.of("values"))))
                .also("$defs", definitions())
                .file("Sheet of advice");
    }

    private static Map<String, Object> values() {
        List<Map<String, Object>> figures = new ArrayList<>();
        figures.add(Shape.pattern(Shape.alternatives(Arrays.stream(Dimension.values()).map(Amount::pattern).toList())));
        figures.add(Shape.of("type", "number"));
        Map<String, Object> one = new Shape.Block()
                .key("value", about("The figure with its unit", Shape.of("anyOf", figures)))
                .key("because", about("Why it is so much", Shape.text()))
                .key("source", about("Who published it where", Shape.text()))
                .required("value")
                .also("anyOf", List.of(Shape.of("required", List.of("because")), Shape.of("required", List.of("source")))).shape();
        return Shape.of("type", "object", "propertyNames", Shape.pattern(NamedValues.NEW_NAME), "additionalProperties", one);
    }

    /** What rows are made of, by name. */
    static Map<String, Object> definitions() {
        return Shape.of(ROW, row(), CONDITIONS, conditions(), STRETCHES, stretches());
    }

    private static Map<String, Object> row() {
        return new Shape.Block()
                .key("id", about("A name for the row", Shape.anyOf(Shape.pattern("[a-z0-9]+(?:-[a-z0-9]+)*"), Shape.of("type", "integer"))))
                .key("when", about("All must hold; always where it is absent", Shape.reference(CONDITIONS)))
                .key("say", about("What it says on topics", say()))
                .key("do", about("What is to be done", task()))
                .key("force", about("How strongly it is advised; should where it is absent",
                        Shape.word(Arrays.stream(Force.values()).map(Force::word).toList())))
                .key("evidence", about("How it is known; opinion where it is absent",
                        Shape.word(Arrays.stream(Evidence.values()).map(Evidence::word).toList())))
                .key("source", about("Who published it where", Shape.text()))
                .key("because", about("The reason, in one sentence", Shape.text()))
                .required("id", "because")
                .also("anyOf", List.of(Shape.of("required", List.of("say")), Shape.of("required", List.of("do"))))
                .also("if", Shape.of("properties", Shape.of("evidence", Shape.of("const", Evidence.PUBLISHED.word())),
                        "required", List.of("evidence")))
                .also("then", Shape.of("required", List.of("source")))
                .shape();
    }

    private static Map<String, Object> leaveOut() {
        return new Shape.Block()
                .key("rule", about("Its id with its sheet, such as house/some-rule", Shape.text()))
                .key("because", about("The reason, in one sentence", Shape.text()))
                .required("rule", "because").shape();
    }

    private static Map<String, Object> task() {
        return new Shape.Block()
                .key("what", about("What to do; topics in braces are filled in", Shape.text()))
                .key("find", about("How it is known to be done; topics in braces are filled in", Shape.text()))
                .key("by", about("By when", Shape.word(Due.allWords())))
                .key("needs", about("How long it takes to be effective", Shape.anyOf(Shape.amount(Dimension.TIME), Shape.pattern(NAMED))))
                .key("part", about("The part it belongs to", Shape.text()))
                .key("after", about("Ids of rows to be done before", Shape.oneOrMore(Shape.text())))
                .required("what", "find", "by").shape();
    }

    private static Map<String, Object> conditions() {
        Shape.Block block = new Shape.Block();
        for (Measure measure : Measure.values()) {
            block.key(measure.written(), about(measure.about(), test(Subject.of(measure))));
        }
        return block
                .key("decided", about("Topics settled in an earlier layer", decided()))
                .key("any stretch", about("Some run of stretches is so", Shape.oneOrMore(Shape.reference(STRETCHES))))
                .key("no stretch", about("No run of stretches is so", Shape.oneOrMore(Shape.reference(STRETCHES))))
                .key("share of course", about("So much of the course, by length, is so", Shape.oneOrMore(share())))
                .key("rider", about("Names of riders", names()))
                .key("rider tag", about("Tags of riders", names()))
                .key("date", about("A day, or between two; every year where no year is written", Shape.pattern(dates())))
                .key("any of", about("At least one of these sets holds", sets()))
                .key("none of", about("None of these sets holds", sets()))
                .also("minProperties", 1).shape();
    }

    private static Map<String, Object> sets() {
        Map<String, Object> list = Shape.listOf(Shape.reference(CONDITIONS));
        list.put("minItems", 1);
        return list;
    }

    private static Map<String, Object> names() {
        return Shape.names("one of \\[.*\\]|");
    }

    private static String dates() {
        String day = "[0-9]{2}-[0-9]{2}";
        String ofAYear = "[0-9]{4}-" + day;
        return ofAYear + "|between " + ofAYear + " and " + ofAYear + "|between " + day + " and " + day;
    }

    private static Map<String, Object> decided() {
        Shape.Block block = new Shape.Block();
        for (Topic topic : Topics.all()) {
            block.key(topic.name(), about(topic.about(), test(Subject.of(topic))));
        }
        return block.shape();
    }

    private static Map<String, Object> stretches() {
        Shape.Block block = new Shape.Block();
        for (StretchMeasure measure : StretchMeasure.values()) {
            block.key(measure.written(), about(measure.about(), test(Subject.of(measure))));
        }
        return block.also("minProperties", 1).shape();
    }

    private static Map<String, Object> share() {
        return new Shape.Block().key("where", Shape.reference(STRETCHES)).key("is", test(Subject.SHARE)).required("where", "is").shape();
    }

    /** A test of a value: a value, several, or a comparison where values have an order. */
    private static Map<String, Object> test(Subject subject) {
        Scale scale = subject.scale();
        return test(subject, scale.kind() == Scale.Kind.QUANTITY ? Shape.alternatives(List.of(value(scale), NAMED)) : value(scale));
    }

    /** A test of plain values, as in {@link #test(Subject)}. */
    static Map<String, Object> plainTest(Subject subject) {
        return test(subject, value(subject.scale()));
    }

    private static Map<String, Object> test(Subject subject, String value) {
        String tests = value + "|one of \\[ *" + value + "(?: *, *" + value + ")* *\\]";
        if (subject.ordered()) {
            tests += "|(?:over|under|at least|at most) " + value + "|between " + value + " and " + value;
        }
        List<Map<String, Object>> shapes = new ArrayList<>(List.of(Shape.pattern(tests)));
        plain(subject.scale(), shapes);
        Map<String, Object> one = shapes.size() == 1 ? shapes.get(0) : Shape.of("anyOf", shapes);
        return Shape.of("anyOf", List.of(one, Shape.listOf(one)));
    }

    /** What an editor may take for something else than text. */
    static void plain(Scale scale, List<Map<String, Object>> shapes) {
        if (scale.kind() == Scale.Kind.QUANTITY) {
            if (Shape.bare(scale.resolution().unit().dimension())) {
                shapes.add(Shape.of("type", "number"));
            }
        } else if (!Shape.word(scale.words()).containsKey("enum")) {
            shapes.add(Shape.of("type", "boolean"));
        }
    }

    static String value(Scale scale) {
        if (scale.kind() == Scale.Kind.YES_NO) {
            return "(?:yes|no|true|false)";
        }
        if (scale.kind() != Scale.Kind.QUANTITY) {
            return Shape.either(scale.words());
        }
        String amount = Amount.pattern(scale.resolution().unit().dimension());
        return scale.words().isEmpty() ? amount : "(?:" + amount + "|" + Shape.either(scale.words()) + ")";
    }

    private static Map<String, Object> say() {
        return onTopics(topic -> (topic.kind() == Topic.Kind.QUANTITY ? "|" + NAMED : "") + measured(topic));
    }

    /** What a case expects to be said: as a row says it, with values alone. */
    static Map<String, Object> says() {
        return onTopics(topic -> "");
    }

    private static Map<String, Object> onTopics(Function<Topic, String> besides) {
        Shape.Block block = new Shape.Block();
        for (Topic topic : Topics.all()) {
            block.key(topic.name(), about(topic.about(), Shape.oneOrMore(Shape.pattern(sayings(topic, besides.apply(topic))))));
        }
        for (String name : BothEnds.pairs()) {
            block.key(name, about(bothEnds(name), Shape.oneOrMore(Shape.pattern(sayingsOfBoth(name, besides)))));
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
            case ORDERED -> "(?:at least|at most|prefer|avoid|rule out) (?:" + Shape.either(topic.options()) + besides + ")";
            case OPTIONS -> "(?:prefer|avoid|rule out) (?:" + Shape.either(topic.options()) + besides + ")";
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
        return "|" + factor + Shape.either(names);
    }

    private static boolean alike(Topic topic, Scale scale) {
        if (topic.kind() == Topic.Kind.QUANTITY) {
            return scale.kind() == Scale.Kind.QUANTITY && scale.resolution().unit().dimension() == dimension(topic);
        }
        return scale.kind() != Scale.Kind.QUANTITY && scale.words().equals(topic.options());
    }

    private static Dimension dimension(Topic topic) {
        return topic.resolution().unit().dimension();
    }
}
