package courseworthy.topic;

import java.util.Locale;

/** The front or the rear of the bike: the first word of the name of a topic that each has of its own. */
public enum End {
    FRONT, REAR;

    /** As names and files write it. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The end of that word. @throws IllegalArgumentException where there is none */
    public static End of(String word) {
        return valueOf(word.toUpperCase(Locale.ROOT));
    }

    public End other() {
        return this == FRONT ? REAR : FRONT;
    }

    /** The end whose word a name begins with, or null. */
    static End in(String name) {
        return name.startsWith("front ") ? FRONT : name.startsWith("rear ") ? REAR : null;
    }
}
