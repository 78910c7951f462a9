package courseworthy.claim;

import java.util.ArrayList;
import java.util.List;

/** By when a thing is to be done, earliest first. */
public enum Deadline {
    WEEK_BEFORE("week before"), TWO_DAYS_BEFORE("two days before"), NIGHT_BEFORE("night before"), RACE_MORNING("race morning"),
    AT_THE_START("at the start"), AFTER_THE_RACE("after the race");

    private final String words;

    Deadline(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    public static List<String> allWords() {
        List<String> out = new ArrayList<>();
        for (Deadline due : values()) {
            out.add(due.words);
        }
        return out;
    }

    /** The due time of these words, or null. */
    public static Deadline of(String words) {
        for (Deadline due : values()) {
            if (due.words.equals(words)) {
                return due;
            }
        }
        return null;
    }
}
