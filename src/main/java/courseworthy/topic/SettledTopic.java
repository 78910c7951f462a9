package courseworthy.topic;

/**
 * What is settled on a topic, as rules of later layers see it.
 *
 * @param topic the topic
 * @param known false where the topic does not apply or nothing was possible; then a test on it is unknown
 * @param value the value, meaningless where not known
 */
public record SettledTopic(Topic topic, boolean known, long value) {

    /** The option's word, the quantity's text, or an empty text where not known. */
    public String text() {
        return known ? topic.text(value) : "";
    }
}
