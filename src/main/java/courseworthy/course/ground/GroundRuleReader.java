package courseworthy.course.ground;

import courseworthy.course.Ground;
import courseworthy.course.GroundPairs;
import courseworthy.problem.Faults;
import courseworthy.text.FieldReader;
import courseworthy.text.Node;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads the files of the table that infers ground from tags. */
final class GroundRuleReader {

    private static final List<String> EVIDENCE = List.of("published", "practice");
    private static final int LONGEST = 400;

    private final String file;
    private final Faults faults;

    private GroundRuleReader(String file, Faults faults) {
        this.file = file;
        this.faults = faults;
    }

    /** Adds what one file says to the rules and spellings read so far. */
    static void read(Node.Mapping tree, String file, List<GroundRule> rules, Map<String, Map<String, String>> spellings, Faults faults) {
        GroundRuleReader reader = new GroundRuleReader(file, faults);
        FieldReader fields = new FieldReader(file, tree, faults);
        fields.line("ground", LONGEST);
        fields.line("about", LONGEST);
        for (FieldReader row : fields.blocks("rules")) {
            rules.add(reader.rule(row));
        }
        FieldReader spelt = fields.fields("spellings");
        if (spelt != null) {
            reader.spellings(spelt.block(), spellings);
        }
        fields.done();
    }

    private GroundRule rule(FieldReader row) {
        String id = row.line("id", LONGEST);
        Map<String, List<String>> when = new LinkedHashMap<>();
        if (row.required("when", "tags and their values") instanceof Node.Mapping conditions) {
            for (Node.Entry each : conditions.entries()) {
                when.put(each.key().text(), new FieldReader(file, conditions, faults).texts(each.key().text()));
            }
        }
        Map<String, String> gives = row.has("gives") ? values(row.fields("gives").block()) : Map.of();
        List<Map<String, String>> mayBe = new ArrayList<>();
        for (String pairs : row.texts("may be")) {
            mayBe.add(GroundPairs.read(pairs, file, row.lineOf("may be"), "may be", faults));
        }
        String evidence = row.word("evidence", EVIDENCE);
        String source = row.line("source", LONGEST);
        String because = row.line("because", LONGEST);
        row.done();
        return new GroundRule(id, when, gives, List.copyOf(mayBe), "published".equals(evidence), source == null ? "" : source, because, file, row.line());
    }

    private Map<String, String> values(Node.Mapping block) {
        Map<String, String> out = new LinkedHashMap<>();
        for (Node.Entry each : block.entries()) {
            out.put(each.key().text(), each.value() instanceof Node.Scalar value ? value.text() : each.value().describe());
        }
        Ground ground = GroundPairs.ground(out, file, block.line(), faults);
        return ground == null ? Map.of() : out;
    }

    private void spellings(Node.Mapping keys, Map<String, Map<String, String>> spellings) {
        for (Node.Entry key : keys.entries()) {
            Map<String, String> meanings = spellings.computeIfAbsent(key.key().text(), each -> new LinkedHashMap<>());
            Node.Mapping values = (Node.Mapping) key.value();
            for (Node.Entry value : values.entries()) {
                for (String written : new FieldReader(file, values, faults).texts(value.key().text())) {
                    meanings.put(written, value.key().text());
                }
            }
        }
    }
}
