package courseworthy.schema;

import static courseworthy.schema.SchemaFragments.about;

import courseworthy.claim.Deadline;
import courseworthy.demand.Measure;
import courseworthy.demand.MeasureScale;
import courseworthy.demand.StretchMeasure;
import courseworthy.sheet.CaseReader;
import courseworthy.sheet.TestSubject;
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
        definitions.put(SENTENCES, about("Sentences, each with its facts", SchemaFragments.of("type", "object", "additionalProperties", SchemaFragments.reference(FACTS))));
        definitions.put(FIRING, about("Sentences, each with its facts and what comes of them", SchemaFragments.of("type", "object", "additionalProperties", firing())));
        definitions.put("rider file", inside(RiderSchema.of()));
        definitions.put("event file", inside(EventSchema.of()));
        return new SchemaFragments.KeyBlock()
                .key("cases for", about("The name of the sheet", SchemaFragments.text()))
                .key("cases", SchemaFragments.oneOrMore(SchemaFragments.anyOf(ofARule(), ofADay())))
                .required("cases for", "cases")
                .also("$defs", definitions)
                .file("Cases of a sheet");
    }

    private static Map<String, Object> ofARule() {
        return new SchemaFragments.KeyBlock()
                .key("rule", about("The id of a row", SchemaFragments.text()))
                .key("fires", about("Cases in which it must apply; the first gives all its facts", SchemaFragments.reference(FIRING)))
                .key("still fires", about("What may change of the first without silencing it", SchemaFragments.reference(FIRING)))
                .key("silent", about("What must keep it from applying, as changes to the first", SchemaFragments.reference(SENTENCES)))
                .required("rule").shape();
    }

    private static Map<String, Object> ofADay() {
        return new SchemaFragments.KeyBlock()
                .key("call", about("What is the case, in a sentence", SchemaFragments.text()))
                .key("course", about("A shipped course, or a file beside this one", SchemaFragments.text()))
                .key("ground", about("Ground to take where the course gives none", SchemaFragments.text()))
                .key("rider", about("A file beside this one, or what would stand in it", SchemaFragments.anyOf(SchemaFragments.text(), SchemaFragments.reference("rider file"))))
                .key("event", about("A file beside this one, or what would stand in it", SchemaFragments.anyOf(SchemaFragments.text(), SchemaFragments.reference("event file"))))
                .key("measures", about("What is known, instead of a course", SchemaFragments.reference(FACTS)))
                .key("stretches", about("The stretches of the course, instead of a course", stretches()))
                .key("expect", about("What must be decided", expect()))
                .key("firmness", about("How firm it must be", byTopic(topic -> SchemaFragments.word(CaseReader.FIRMNESS))))
                .key("fires", about("Rules that must apply", SchemaFragments.oneOrMore(SchemaFragments.text())))
                .key("silent", about("Rules that must not apply", SchemaFragments.oneOrMore(SchemaFragments.text())))
                .required("call")
                .also("anyOf", List.of(SchemaFragments.of("required", List.of("expect")), SchemaFragments.of("required", List.of("firmness")),
                        SchemaFragments.of("required", List.of("fires")), SchemaFragments.of("required", List.of("silent"))))
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
                .key("does", about("All that its checklist item must have", new SchemaFragments.KeyBlock()
                        .key("by", about("By when", SchemaFragments.word(Deadline.allWords())))
                        .key("needs", about("How long it takes to be effective", SchemaFragments.amount(Dimension.TIME)))
                        .key("critical", about("Whether it is safety-critical", SchemaFragments.yesNo()))
                        .key("after", about("Ids of rows to be done before", SchemaFragments.oneOrMore(SchemaFragments.text())))
                        .required("by").shape()))
                .shape();
    }

    private static SchemaFragments.KeyBlock someFacts() {
        SchemaFragments.KeyBlock block = new SchemaFragments.KeyBlock();
        for (Measure measure : Measure.values()) {
            block.key(measure.written(), about(measure.about(), fact(measure.scale())));
        }
        return block.key("decided", byTopic(topic -> fact(TestSubject.of(topic).scale())))
                .key("stretches", stretches())
                .key("rider", about("The rider's name", SchemaFragments.text()))
                .key("rider tag", about("What the rider belongs to", SchemaFragments.oneOrMore(SchemaFragments.text())))
                .key("date", about("The day", SchemaFragments.pattern("[0-9]{4}-[0-9]{2}-[0-9]{2}|unknown")));
    }

    /** One exact value, or that it is not known. */
    private static Map<String, Object> fact(MeasureScale scale) {
        List<Map<String, Object>> shapes = new ArrayList<>();
        String value = SheetSchema.value(scale.withoutBands());
        shapes.add(SchemaFragments.pattern(value + "|unknown"));
        SheetSchema.plain(scale, shapes);
        return shapes.size() == 1 ? shapes.get(0) : SchemaFragments.of("anyOf", shapes);
    }

    private static Map<String, Object> stretches() {
        SchemaFragments.KeyBlock block = new SchemaFragments.KeyBlock();
        for (StretchMeasure measure : StretchMeasure.values()) {
            block.key(measure.written(), about(measure.about(), fact(measure.scale())));
        }
        return SchemaFragments.anyOf(SchemaFragments.oneOrMore(block.required("length").shape()), SchemaFragments.of("const", "unknown"));
    }

    private static Map<String, Object> expect() {
        return byTopic(topic -> SchemaFragments.anyOf(SheetSchema.plainTest(TestSubject.of(topic)), SchemaFragments.of("const", "not applicable")));
    }

    private static Map<String, Object> byTopic(java.util.function.Function<Topic, Map<String, Object>> shape) {
        SchemaFragments.KeyBlock block = new SchemaFragments.KeyBlock();
        for (Topic topic : Topics.all()) {
            block.key(topic.name(), about(topic.about(), shape.apply(topic)));
        }
        for (String name : BothEnds.pairs()) {
            block.key(name, about(SheetSchema.bothEnds(name), shape.apply(BothEnds.topics(name).get(0))));
        }
        return block.shape();
    }
}
