package courseworthy.engine;

import courseworthy.topic.SettledTopic;
import org.kie.api.definition.type.ClassReactive;

/** A topic that is settled, as joins see it. */
@ClassReactive
public final class SettledTopicFact {

    private final SettledTopic settled;

    SettledTopicFact(SettledTopic settled) {
        this.settled = settled;
    }

    /** The topic's name. */
    public String getTopic() {
        return settled.topic().name();
    }

    /** The value in the topic's ticks, or the position of the option. */
    public long getValue() {
        return settled.value();
    }

    /** The option's word, or the quantity's text. */
    public String getWord() {
        return settled.text();
    }

    SettledTopic settled() {
        return settled;
    }
}
