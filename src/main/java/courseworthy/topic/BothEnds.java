package courseworthy.topic;

import java.util.ArrayList;
import java.util.List;

/** Names that stand for the front and the rear topic at once: {@code front and rear tyre casing}. */
public final class BothEnds {

    /** The words in a name, or in the name of a measure that is its value, that stand for each end in turn. */
    public static final String WORDS = "front and rear";

    private BothEnds() {
    }

    /** The topics that a name stands for: one, those of front and rear, in that order, or none where there is no such topic. */
    public static List<Topic> topics(String name) {
        Topic one = Topics.find(name);
        if (one != null) {
            return List.of(one);
        }
        Topic front = name.startsWith(WORDS + " ") ? Topics.find(at(End.FRONT, name)) : null;
        return front == null || front.otherEnd() == null ? List.of() : List.of(front, front.otherEnd());
    }

    /** Every name of a topic, and after them those that stand for two. */
    public static List<String> names() {
        List<String> out = new ArrayList<>(Topics.names());
        out.addAll(pairs());
        return out;
    }

    /** The names that stand for two topics, in the order of the catalogue. */
    public static List<String> pairs() {
        List<String> out = new ArrayList<>();
        for (Topic topic : Topics.all()) {
            if (topic.end() == End.FRONT && topic.otherEnd() != null) {
                out.add(name(topic));
            }
        }
        return out;
    }

    /** The name that stands for a topic and for the same at the other end: {@code front and rear tyre width}. */
    public static String name(Topic topic) {
        return WORDS + " " + topic.plain();
    }

    /** Whether a name stands for two topics. */
    public static boolean isPair(String name) {
        return topics(name).size() > 1;
    }

    /** What a text on both ends says of the end of a topic; unchanged where it does not name both. */
    public static String at(Topic topic, String text) {
        return at(topic.end() == End.REAR ? End.REAR : End.FRONT, text);
    }

    private static String at(End end, String text) {
        return text.replace(WORDS, end.word());
    }
}
