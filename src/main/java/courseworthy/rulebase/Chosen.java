package courseworthy.rulebase;

import courseworthy.topic.Settled;
import org.kie.api.definition.type.ClassReactive;

/** A topic that is settled, as joins see it. */
@ClassReactive
public final class Chosen {

    private final Settled settled;

    Chosen(Settled settled) {
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

    Settled settled() {
        return settled;
    }
}
