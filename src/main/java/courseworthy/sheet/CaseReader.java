package courseworthy.sheet;

import courseworthy.claim.SourceLocation;
import courseworthy.problem.Faults;
import courseworthy.problem.Spelling;
import courseworthy.text.FieldReader;
import courseworthy.text.Node;
import courseworthy.text.YamlReader;
import courseworthy.topic.BothEnds;
import courseworthy.topic.Topic;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;

/**
 * Reads the cases beside a sheet: of a row alone, or of a whole day. The first case under {@code fires} gives its facts in full; all
 * others of that rule give what differs from it.
 */
public final class CaseReader {

    /** The words for how sure a decision is, surest first. */
    public static final List<String> FIRMNESS = List.of("firm", "fair", "thin");

    private static final List<String> OF_A_RULE = List.of("fires", "still fires", "silent");

    private final String file;
    private final Faults faults;
    private final SituationReader situations;
    private final ExpectationReader expectations;
    private final List<RuleCase> ofRules = new ArrayList<>();
    private final List<CallCase> calls = new ArrayList<>();

    private CaseReader(String file, Faults faults) {
        this.file = file;
        this.faults = faults;
        this.situations = new SituationReader(file, faults);
        this.expectations = new ExpectationReader(file, faults);
    }

    /**
     * The cases of a file.
     *
     * @param shown its path as the user typed it
     * @param title the title of the sheet that they must be for
     */
    public static Cases read(Path path, String shown, String title, Faults faults) {
        Node.Mapping tree = YamlReader.read(path, shown, faults);
        CaseReader reader = new CaseReader(shown, faults);
        if (tree != null) {
            reader.all(new FieldReader(shown, tree, faults), title);
        }
        return new Cases(reader.ofRules, reader.calls);
    }

    private void all(FieldReader fields, String title) {
        String of = fields.required("cases for", "the title of the sheet") == null ? null : fields.prose("cases for");
        if (of != null && !of.equals(title)) {
            fields.fault("cases for", "\"" + of + "\"", "the title of the sheet beside it, \"" + title + "\"", "");
        }
        fields.required("cases", "a list of cases");
        for (FieldReader each : fields.blocks("cases")) {
            if (each.block().get("call") != null) {
                call(each);
            } else {
                ofRule(each);
            }
        }
        fields.done();
    }

    private void ofRule(FieldReader fields) {
        String named = fields.required("rule", "the id of a row of the sheet, or call for a whole day") == null ? null : fields.prose("rule");
        String rule = named == null ? "" : named;
        Situation base = null;
        for (String key : OF_A_RULE) {
            if (!(fields.node(key) instanceof Node.Mapping block)) {
                if (fields.node(key) != null) {
                    fields.fault(key, fields.node(key).describe(), "sentences, each with its facts", "");
                }
                continue;
            }
            for (Node.Entry entry : block.entries()) {
                Situation facts = situations.changed(base == null ? Situation.NONE : base, entry.key().text(), ExpectationReader.factsOf(entry.value()));
                base = base == null && key.equals("fires") ? facts : base;
                ofRules.add(ofRule(rule, entry, !key.equals("silent"), facts));
            }
        }
        fields.done();
    }

    private RuleCase ofRule(String rule, Node.Entry entry, boolean fires, Situation facts) {
        RuleCase read = new RuleCase(rule, entry.key().text(), fires, facts, expectations.says(entry.value()), expectations.does(entry.value()),
                new SourceLocation(file, entry.key().line()));
        if (!fires && read.expects()) {
            faults.add(file, entry.key().line(), entry.key().text(), "what comes of it where it must not apply", "facts alone",
                    "Move says and does to a case under fires or still fires.");
        }
        return read;
    }

    private void call(FieldReader fields) {
        String sentence = fields.prose("call");
        Node.Scalar course = fields.scalar("course", "a shipped course, or a file beside this one");
        Node.Scalar ground = fields.scalar("ground", "a text");
        Node rider = textOrBlock(fields, "rider");
        Node event = textOrBlock(fields, "event");
        Situation situation = situation(fields);
        Map<Topic, CallCase.ExpectedValue> expect = new LinkedHashMap<>();
        byTopic(fields, "expect", (topic, value) -> {
            CallCase.ExpectedValue expected = expected(topic, value);
            if (expected != null) {
                expect.put(topic, expected);
            }
        });
        Map<Topic, String> firmness = new LinkedHashMap<>();
        byTopic(fields, "firmness", (topic, value) -> {
            String word = value instanceof Node.Scalar scalar ? fields.word("firmness", scalar, FIRMNESS) : null;
            if (word != null) {
                firmness.put(topic, word);
            }
        });
        List<CallCase.RuleReference> fires = named(fields, "fires");
        List<CallCase.RuleReference> silent = named(fields, "silent");
        fields.done();
        sources(fields, course);
        if (!fields.has("expect") && !fields.has("firmness") && !fields.has("fires") && !fields.has("silent")) {
            faults.add(file, fields.line(), "call", "nothing that must come of it", "expect, firmness, fires or silent", "");
        }
        calls.add(new CallCase(sentence == null ? "" : sentence, new SourceLocation(file, fields.lineOf("call")),
                course == null ? null : new CallCase.RideSources(course, ground, rider, event), situation, expect, firmness, fires, silent));
    }

    /** A course with its rider and day, or measures in their stead. */
    private void sources(FieldReader fields, Node.Scalar course) {
        boolean measured = fields.has("measures") || fields.has("stretches");
        if (course == null && !measured && fields.block().get("course") == null) {
            faults.add(file, fields.line(), "call", "no course", "course, or measures", "Add a line \"course: ...\".");
        } else if (course != null && measured) {
            fields.fault(fields.has("measures") ? "measures" : "stretches", "a course besides", "either a course or measures", "");
        }
        for (String key : List.of("rider", "event", "ground")) {
            if (course == null && fields.has(key)) {
                fields.fault(key, "no course for it", "only measures, or a course too", "Write what is known of rider and day under measures.");
            }
        }
    }

    private Situation situation(FieldReader fields) {
        Situation out = Situation.NONE;
        Node measures = fields.node("measures");
        if (measures != null) {
            out = situations.called(out, "measures", measures);
        }
        Node stretches = fields.node("stretches");
        return stretches == null ? out : new Situation(out.measures(), out.settled(), situations.stretches(stretches), out.occasion());
    }

    private Node textOrBlock(FieldReader fields, String key) {
        Node node = fields.node(key);
        if (node instanceof Node.Sequence) {
            fields.fault(key, node.describe(), "a file beside this one, or what would stand in it", "");
            return null;
        }
        return node;
    }

    private void byTopic(FieldReader fields, String key, BiConsumer<Topic, Node> each) {
        FieldReader block = fields.has(key) ? fields.fields(key) : null;
        for (Node.Entry entry : block == null ? List.<Node.Entry>of() : block.block().entries()) {
            List<Topic> topics = BothEnds.topics(entry.key().text());
            if (topics.isEmpty()) {
                faults.add(file, entry.key().line(), key, entry.key().describe(), "a topic",
                        Spelling.didYouMean(entry.key().text(), BothEnds.names()));
            }
            for (Topic topic : topics) {
                each.accept(topic, entry.value());
            }
        }
    }

    private CallCase.ExpectedValue expected(Topic topic, Node value) {
        if (value instanceof Node.Scalar scalar && scalar.text().equals(CallCase.NOT_APPLICABLE)) {
            return new CallCase.ExpectedValue(null, CallCase.NOT_APPLICABLE);
        }
        ValueTest test = new ValueTestReader(file, faults).test(value, TestSubject.of(topic));
        return test == null ? null : new CallCase.ExpectedValue(test, ValueTestReader.written(value));
    }

    private List<CallCase.RuleReference> named(FieldReader fields, String key) {
        List<CallCase.RuleReference> out = new ArrayList<>();
        for (Node item : fields.items(key)) {
            if (item instanceof Node.Scalar scalar) {
                out.add(new CallCase.RuleReference(scalar.text(), scalar.line()));
            } else {
                faults.add(file, item.line(), key, item.describe(), "ids of rules", "");
            }
        }
        return out;
    }
}
