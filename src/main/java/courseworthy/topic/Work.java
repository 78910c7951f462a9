package courseworthy.topic;

import java.util.Arrays;
import java.util.List;

/** A kind of work on a bike, or of packing, that a change on a topic means; events say by its word how long it takes. */
public enum Work {
    BIKE("bike"), TRAVEL("fork and rear travel"), SUSPENSION_SETTINGS("suspension settings"), SEATPOST("seatpost"), TYRES("tyres"),
    PRESSURE("pressure"), WHEELS("wheels"), GEARS("gears"), COCKPIT("cockpit"), CONTACT_POINTS("contact points"), ELECTRONICS("electronics"),
    LIGHTS("lights"), BRAKES("brakes"), UPKEEP("upkeep"), CLOTHING("clothing"), CARRY("carry");

    private final String word;

    Work(String word) {
        this.word = word;
    }

    /** As events write it and plans show it. */
    public String word() {
        return word;
    }

    /** The words of all kinds of work. */
    public static List<String> words() {
        return Arrays.stream(values()).map(Work::word).toList();
    }

    /** The kind of work of a word. @throws IllegalArgumentException where there is none */
    public static Work of(String word) {
        return Arrays.stream(values()).filter(each -> each.word.equals(word)).findFirst().orElseThrow(() -> new IllegalArgumentException(word));
    }
}
