package courseworthy.schema;

import static courseworthy.schema.Shape.about;

import courseworthy.claim.Due;
import courseworthy.demand.Measure;
import courseworthy.demand.Scale;
import courseworthy.demand.StretchMeasure;
import courseworthy.rulebase.CaseReader;
import courseworthy.rulebase.Subject;
import courseworthy.topic.BothEnds;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import courseworthy.units.Dimension;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The cases of a sheet: of rows alone, and of whole days. */
final class CasesSchema {

    private static final String FACTS = "facts";
    private static final String SENTENCES = "sentences";
    private static final String FIRING = "firing sentences";

    private CasesSchema() {
    }

    static Map<String, Object> of() {
        Map<String, Object> definitions = new LinkedHashMap<>(SheetSchema.definitions());
        definitions.put(FACTS, facts());
        definitions.put(SENTENCES, about("Sentences, each with its facts", Shape.of("type", "object", "additionalProperties", Shape.reference(FACTS))));
        definitions.put(FIRING, about("Sentences, each with its facts and what comes of them", Shape.of("type", "object", "additionalProperties", firing())));
        definitions.put("rider file", inside(RiderSchema.of()));
        definitions.put("event file", inside(EventSchema.of()));
        return new Shape.Block()
                .key("cases for", about("The name of the sheet", Shape.text()))
                .key("cases", Shape.oneOrMore(Shape.anyOf(ofARule(), ofADay())))
                .required("cases for", "cases")
                .also("$defs", definitions)
                .file("Cases of a sheet");
    }

    private static Map<String, Object> ofARule() {
        return new Shape.Block()
                .key("rule", about("The id of a row", Shape.text()))
                .key("fires", about("Cases in which it must speak; the first gives all its facts", Shape.reference(FIRING)))
                .key("still fires", about("What may change of the first without silencing it", Shape.reference(FIRING)))
                .key("silent", about("What must silence it, changed in the first", Shape.reference(SENTENCES)))
                .required("rule").shape();
    }

    private static Map<String, Object> ofADay() {
        return new Shape.Block()
                .key("call", about("What is the case, in a sentence", Shape.text()))
                .key("course", about("A shipped course, or a file beside this one", Shape.text()))
                .key("ground", about("Ground to take where the course says none", Shape.text()))
                .key("rider", about("A file beside this one, or what would stand in it", Shape.anyOf(Shape.text(), Shape.reference("rider file"))))
                .key("event", about("A file beside this one, or what would stand in it", Shape.anyOf(Shape.text(), Shape.reference("event file"))))
                .key("measures", about("What is known, instead of a course", Shape.reference(FACTS)))
                .key("stretches", about("The stretches of the course, instead of a course", stretches()))
                .key("expect", about("What must be decided", expect()))
                .key("standing", about("How sure it must be", byTopic(topic -> Shape.word(CaseReader.STANDINGS))))
                .key("speaks", about("Rules that must speak", Shape.oneOrMore(Shape.text())))
                .key("silent", about("Rules that must not speak", Shape.oneOrMore(Shape.text())))
                .required("call")
                .also("anyOf", List.of(Shape.of("required", List.of("expect")), Shape.of("required", List.of("standing")),
                        Shape.of("required", List.of("speaks")), Shape.of("required", List.of("silent"))))
                .shape();
    }

    /** What stands in a file of its own, as part of another one. */
    private static Map<String, Object> inside(Map<String, Object> file) {
        Map<String, Object> out = new LinkedHashMap<>(file);
        out.remove("$schema");
        out.remove("$defs");
        return out;
    }

    private static Map<String, Object> facts() {
        return someFacts().shape();
    }

    /** Facts, and what must come of them. */
    private static Map<String, Object> firing() {
        return someFacts().key("says", about("All that it must then say on topics", SheetSchema.says()))
                .key("does", about("All that its checklist item must have", new Shape.Block()
                        .key("by", about("By when", Shape.word(Due.allWords())))
                        .key("needs", about("How long it takes to be effective", Shape.amount(Dimension.TIME)))
                        .key("critical", about("Whether safety hangs on it", Shape.yesNo()))
                        .key("after", about("Ids of rows to be done before", Shape.oneOrMore(Shape.text())))
                        .required("by").shape()))
                .shape();
    }

    private static Shape.Block someFacts() {
        Shape.Block block = new Shape.Block();
        for (Measure measure : Measure.values()) {
            block.key(measure.written(), about(measure.about(), fact(measure.scale())));
        }
        return block.key("decided", byTopic(topic -> fact(Subject.of(topic).scale())))
                .key("stretches", stretches())
                .key("rider", about("The rider's name", Shape.text()))
                .key("rider tag", about("What the rider belongs to", Shape.oneOrMore(Shape.text())))
                .key("date", about("The day", Shape.pattern("[0-9]{4}-[0-9]{2}-[0-9]{2}|unknown")));
    }

    /** One exact value, or that it is not known. */
    private static Map<String, Object> fact(Scale scale) {
        List<Map<String, Object>> shapes = new ArrayList<>();
        String value = scale.bands().isEmpty() ? SheetSchema.value(scale) : SheetSchema.value(Scale.quantity(scale.resolution()));
        shapes.add(Shape.pattern(value + "|unknown"));
        SheetSchema.plain(scale, shapes);
        return shapes.size() == 1 ? shapes.get(0) : Shape.of("anyOf", shapes);
    }

    private static Map<String, Object> stretches() {
        Shape.Block block = new Shape.Block();
        for (StretchMeasure measure : StretchMeasure.values()) {
            block.key(measure.written(), about(measure.about(), fact(measure.scale())));
        }
        return Shape.anyOf(Shape.oneOrMore(block.required("length").shape()), Shape.of("const", "unknown"));
    }

    private static Map<String, Object> expect() {
        return byTopic(topic -> Shape.anyOf(SheetSchema.plainTest(Subject.of(topic)), Shape.of("const", "not applicable")));
    }

    private static Map<String, Object> byTopic(java.util.function.Function<Topic, Map<String, Object>> shape) {
        Shape.Block block = new Shape.Block();
        for (Topic topic : Topics.all()) {
            block.key(topic.name(), about(topic.about(), shape.apply(topic)));
        }
        for (String name : BothEnds.pairs()) {
            block.key(name, about(SheetSchema.bothEnds(name), shape.apply(BothEnds.topics(name).get(0))));
        }
        return block.shape();
    }
}
