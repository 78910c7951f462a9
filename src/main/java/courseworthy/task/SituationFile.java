package courseworthy.task;

import courseworthy.claim.Evidence;
import courseworthy.claim.Force;
import courseworthy.claim.Rank;
import courseworthy.claim.RuleOrigin;
import courseworthy.claim.SourceLocation;
import courseworthy.claim.Verb;
import courseworthy.problem.Faults;
import courseworthy.sheet.Condition;
import courseworthy.sheet.Row;
import courseworthy.sheet.Saying;
import courseworthy.sheet.Situation;
import courseworthy.sheet.SituationReader;
import courseworthy.text.Node;
import courseworthy.text.YamlReader;
import courseworthy.topic.SettledTopic;
import courseworthy.topic.Topic;
import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * A file that gives measures in place of a course, a rider and a day.
 *
 * @param title     what it shows
 * @param file      the path as typed
 * @param situation what is known
 */
public record SituationFile(String title, String file, Situation situation) {

    static final String KEY = "situation";

    /** Whether a file is one: its first line that is no comment says so. A file that cannot be read is none. */
    static boolean isOne(Path path) {
        if (!Files.isRegularFile(path)) {
            return false;
        }
        try (BufferedReader lines = Files.newBufferedReader(path, StandardCharsets.ISO_8859_1)) {
            String line = lines.readLine();
            while (line != null && (line.isBlank() || line.startsWith("#"))) {
                line = lines.readLine();
            }
            return line != null && line.startsWith(KEY + ":");
        } catch (IOException e) {
            return false;
        }
    }

    /** @return null where it cannot be used; the faults say why */
    public static SituationFile read(Path path, String typed, Faults faults) {
        Node.Mapping root = YamlReader.read(path, typed, faults);
        if (root == null) {
            return null;
        }
        String title = "";
        List<Node.Entry> facts = new ArrayList<>();
        for (Node.Entry entry : root.entries()) {
            if (!entry.key().text().equals(KEY)) {
                facts.add(entry);
            } else if (entry.value() instanceof Node.Scalar scalar) {
                title = scalar.text();
            } else {
                faults.add(typed, entry.value().line(), KEY, entry.value().describe(), "what it shows, in one line", "");
            }
        }
        SituationReader reader = new SituationReader(typed, faults);
        Situation situation = reader.called(Situation.NONE, KEY, new Node.Mapping(facts, root.line(), root.column()));
        return faults.stop() ? null : new SituationFile(title, typed, situation);
    }

    /** What is settled in it, as rows that leave no other choice. */
    List<Row> given() {
        List<Row> out = new ArrayList<>();
        for (SettledTopic settled : situation.settled().values()) {
            if (settled.known()) {
                out.add(given(settled, file));
            }
        }
        return out;
    }

    private static Row given(SettledTopic settled, String file) {
        Topic topic = settled.topic();
        RuleOrigin author = new RuleOrigin("given/" + topic.name().replace(' ', '-'), Rank.LIMIT, 0, Force.MUST, Evidence.OPINION, "",
                "The situation has it so.", new SourceLocation(file, 1));
        List<Saying> sayings = new ArrayList<>();
        if (topic.kind() == Topic.Kind.OPTIONS) {
            for (long option = topic.least(); option <= topic.most(); option++) {
                if (option != settled.value()) {
                    sayings.add(saying(topic, Verb.RULE_OUT, option));
                }
            }
        } else {
            sayings.add(saying(topic, Verb.AT_LEAST, settled.value()));
            sayings.add(saying(topic, Verb.AT_MOST, settled.value()));
        }
        return new Row(author, new Condition.AllOf(List.of()), sayings, null);
    }

    private static Saying saying(Topic topic, Verb verb, long value) {
        return new Saying(topic, verb, new Saying.Literal(value), topic.text(value));
    }
}
