package courseworthy.sheet;

import courseworthy.claim.Deadline;
import courseworthy.problem.Faults;
import courseworthy.text.FieldReader;
import courseworthy.text.Node;
import courseworthy.units.Amount;
import courseworthy.units.Dimension;
import java.util.ArrayList;
import java.util.List;

/** Reads what must come of a rule in a case: {@code says} for topics, {@code does} for its checklist item. */
final class ExpectationReader {

    static final String SAYS = "says";
    static final String DOES = "does";

    private final String file;
    private final Faults faults;

    ExpectationReader(String file, Faults faults) {
        this.file = file;
        this.faults = faults;
    }

    /** The facts of a case without what must come of it. */
    static Node factsOf(Node node) {
        if (!(node instanceof Node.Mapping block)) {
            return node;
        }
        List<Node.Entry> facts = block.entries().stream().filter(entry -> !entry.key().text().equals(SAYS) && !entry.key().text().equals(DOES)).toList();
        return new Node.Mapping(facts, block.line(), block.column());
    }

    /** All that is expected on topics; null where nothing is written of it. */
    List<String> says(Node node) {
        Node.Entry entry = entry(node, SAYS);
        if (entry == null) {
            return null;
        }
        List<String> out = new ArrayList<>();
        for (Saying saying : new SayingReader(file, faults, new NamedValues()).read(entry.value())) {
            if (saying.source() instanceof Saying.Literal literal) {
                out.add(RowOutput.line(saying.topic(), saying.verb(), literal.value()));
            } else {
                faults.add(file, entry.value().line(), saying.topic().name(), "\"" + saying.written() + "\"", "the value that comes of it in this case",
                        "Give the measure among the facts, and work the value out.");
            }
        }
        return new RowOutput(out, List.of()).says();
    }

    /** All that is expected of the checklist item; null where nothing is written of it. */
    List<String> does(Node node) {
        Node.Entry entry = entry(node, DOES);
        if (entry == null) {
            return null;
        }
        if (!(entry.value() instanceof Node.Mapping block)) {
            faults.add(file, entry.value().line(), DOES, entry.value().describe(), "by, needs, critical and after, such as {by: night before}", "");
            return null;
        }
        FieldReader fields = new FieldReader(file, block, faults);
        List<String> out = new ArrayList<>();
        String by = fields.required("by", "one of: " + String.join(", ", Deadline.allWords())) == null ? null : fields.word("by", Deadline.allWords());
        out.add("by: " + by);
        Amount needs = fields.has("needs") ? fields.amount("needs", Dimension.TIME) : null;
        if (needs != null) {
            out.add("needs: " + RowOutput.time(Math.round(needs.inBase())));
        }
        if (fields.has("critical") && Boolean.TRUE.equals(fields.yesNo("critical"))) {
            out.add("critical: yes");
        }
        fields.texts("after").forEach(id -> out.add("after: " + id));
        fields.done();
        return new RowOutput(List.of(), out).does();
    }

    private static Node.Entry entry(Node node, String key) {
        if (node instanceof Node.Mapping block) {
            for (Node.Entry entry : block.entries()) {
                if (entry.key().text().equals(key)) {
                    return entry;
                }
            }
        }
        return null;
    }
}
