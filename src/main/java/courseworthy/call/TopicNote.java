package courseworthy.call;

import courseworthy.problem.FaultList;
import courseworthy.problem.Faults;
import courseworthy.text.FieldReader;
import courseworthy.text.Node;
import courseworthy.text.YamlReader;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;

/**
 * What is published on some topics, where it disagrees, what was not found, and why they stay the same from course to course where they do.
 *
 * @param topics       the topics
 * @param published    facts with their sources; empty where there are none
 * @param disagreement sources that do not agree; empty where they do
 * @param notFound     what was looked for and not found; empty for nothing
 * @param stays        why the decision hardly varies with the course; empty where it does
 */
public record TopicNote(List<Topic> topics, String published, String disagreement, String notFound, String stays) {

    private static final String FILE = "rules/firmness/topics.yaml";
    private static final int LONGEST = 1200;

    public TopicNote {
        topics = List.copyOf(topics);
    }

    private static final class Holder {
        private static final List<TopicNote> SHIPPED = read();
    }

    /** All notes. @throws IllegalStateException where the table is missing or spoilt, which is a fault of the build */
    public static List<TopicNote> all() {
        return Holder.SHIPPED;
    }

    /** The note on a topic; null where there is none. */
    public static TopicNote on(Topic topic) {
        return all().stream().filter(note -> note.topics().contains(topic)).findFirst().orElse(null);
    }

    private static List<TopicNote> read() {
        Faults faults = new Faults();
        try (InputStream in = TopicNote.class.getResourceAsStream("topics.yaml")) {
            if (in == null) {
                throw new IllegalStateException(FILE + " is not in the build");
            }
            List<TopicNote> out = of(YamlReader.read(in.readAllBytes(), FILE, faults), faults);
            if (!faults.faults().isEmpty()) {
                throw new IllegalStateException(FaultList.text(faults.faults()));
            }
            return out;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<TopicNote> of(Node.Mapping tree, Faults faults) {
        FieldReader fields = new FieldReader(FILE, tree, faults);
        fields.line("topics", LONGEST);
        fields.line("about", LONGEST);
        List<TopicNote> out = new ArrayList<>();
        for (FieldReader note : fields.blocks("notes")) {
            List<Topic> topics = note.texts("topics").stream().map(Topics::of).toList();
            out.add(new TopicNote(topics, text(note, "published"), text(note, "disagreement"), text(note, "not found"), text(note, "stays")));
            note.done();
        }
        fields.done();
        return List.copyOf(out);
    }

    private static String text(FieldReader note, String key) {
        return note.has(key) ? note.line(key, LONGEST) : "";
    }
}
