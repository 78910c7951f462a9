package courseworthy.rulebase;

import courseworthy.claim.Where;
import courseworthy.demand.Measure;
import courseworthy.demand.StretchFacts;
import courseworthy.demand.StretchMeasure;
import courseworthy.demand.Value;
import courseworthy.problem.Faults;
import courseworthy.problem.Spelling;
import courseworthy.text.Fields;
import courseworthy.text.Node;
import courseworthy.text.Yaml;
import courseworthy.topic.Settled;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * Reads the cases beside a sheet. The first case under {@code fires} gives its facts in full; all others of that rule give what
 * differs from it ({@code unknown} takes a fact away, {@code stretches} are replaced as a whole).
 */
final class CaseReader {

    private final String file;
    private final Faults faults;
    private final TestReader values;
    private final List<Case> out = new ArrayList<>();

    private CaseReader(String file, Faults faults) {
        this.file = file;
        this.faults = faults;
        this.values = new TestReader(file, faults);
    }

    /** The cases of a file, which must be for a sheet of this title. */
    static List<Case> read(Path path, String shown, String title, Faults faults) {
        Node.Mapping tree = Yaml.read(path, shown, faults);
        if (tree == null) {
            return List.of();
        }
        CaseReader reader = new CaseReader(shown, faults);
        reader.all(new Fields(shown, tree, faults), title);
        return reader.out;
    }

    private void all(Fields fields, String title) {
        String of = fields.required("cases for", "the title of the sheet") == null ? null : fields.prose("cases for");
        if (of != null && !of.equals(title)) {
            fields.fault("cases for", "\"" + of + "\"", "the title of the sheet beside it, \"" + title + "\"", "");
        }
        for (Fields rule : fields.blocks("cases")) {
            ofRule(rule);
        }
        fields.done();
    }

    private void ofRule(Fields fields) {
        String rule = fields.required("rule", "the id of a row of the sheet") == null ? "" : fields.prose("rule");
        CaseFacts base = null;
        for (String key : List.of("fires", "still fires", "silent")) {
            if (!(fields.node(key) instanceof Node.Mapping block)) {
                if (fields.node(key) != null) {
                    fields.fault(key, fields.node(key).describe(), "sentences, each with its facts", "");
                }
                continue;
            }
            for (Node.Entry entry : block.entries()) {
                CaseFacts facts = changed(base == null ? CaseFacts.NONE : base, entry);
                base = base == null && key.equals("fires") ? facts : base;
                out.add(new Case(rule, entry.key().text(), !key.equals("silent"), facts, new Where(file, entry.key().line())));
            }
        }
        fields.done();
    }

    private CaseFacts changed(CaseFacts base, Node.Entry entry) {
        CaseFacts facts = base.copy();
        if (!(entry.value() instanceof Node.Mapping changes)) {
            faults.add(file, entry.value().line(), entry.key().text(), entry.value().describe(), "facts, such as {roughness: 2.4}", "");
            return facts;
        }
        List<StretchFacts> stretches = facts.stretches();
        for (Node.Entry change : changes.entries()) {
            if (change.key().text().equals("stretches")) {
                stretches = stretches(change.value());
            } else if (change.key().text().equals("decided")) {
                decided(change.value(), facts.settled());
            } else {
                measure(change, facts.measures());
            }
        }
        return new CaseFacts(facts.measures(), facts.settled(), stretches);
    }

    private void measure(Node.Entry change, Map<Measure, Value> measures) {
        Measure measure = Measure.find(change.key().text());
        if (measure == null) {
            unknown(change, "a measure, decided or stretches", Measure.names());
        } else if (isUnknown(change.value())) {
            measures.remove(measure);
        } else {
            Long value = values.value(change.value(), Subject.of(measure));
            if (value != null) {
                measures.put(measure, Value.exact(value));
            }
        }
    }

    private void decided(Node node, Map<Topic, Settled> settled) {
        if (!(node instanceof Node.Mapping block)) {
            faults.add(file, node.line(), "decided", node.describe(), "topics, such as {bike: gravel}", "");
            return;
        }
        for (Node.Entry entry : block.entries()) {
            Topic topic = Topics.find(entry.key().text());
            if (topic == null) {
                unknown(entry, "a topic", Topics.names());
            } else if (isUnknown(entry.value())) {
                settled.put(topic, new Settled(topic, false, 0));
            } else {
                Long value = values.value(entry.value(), Subject.of(topic));
                if (value != null) {
                    settled.put(topic, new Settled(topic, true, value));
                }
            }
        }
    }

    private List<StretchFacts> stretches(Node node) {
        List<StretchFacts> out = new ArrayList<>();
        if (isUnknown(node)) {
            return out;
        }
        for (Node item : node instanceof Node.Sequence list ? list.items() : List.of(node)) {
            Map<StretchMeasure, Long> known = new EnumMap<>(StretchMeasure.class);
            if (item instanceof Node.Mapping block) {
                block.entries().forEach(entry -> stretch(entry, known));
            }
            if (known.containsKey(StretchMeasure.LENGTH)) {
                out.add(new StretchFacts(known));
            } else {
                faults.add(file, item.line(), "stretches", item.describe(), "stretches, each with its length, such as {length: 1.5 km}", "");
            }
        }
        return out;
    }

    private void stretch(Node.Entry entry, Map<StretchMeasure, Long> known) {
        StretchMeasure measure = StretchMeasure.find(entry.key().text());
        if (measure == null) {
            unknown(entry, "a property of a stretch", StretchMeasure.names());
        } else if (!isUnknown(entry.value())) {
            Long value = values.value(entry.value(), Subject.of(measure));
            if (value != null) {
                known.put(measure, value);
            }
        }
    }

    private void unknown(Node.Entry entry, String expected, List<String> accepted) {
        faults.add(file, entry.key().line(), "", entry.key().describe(), expected, Spelling.didYouMean(entry.key().text(), accepted));
    }

    private static boolean isUnknown(Node node) {
        return node instanceof Node.Scalar scalar && scalar.text().equals("unknown");
    }
}
