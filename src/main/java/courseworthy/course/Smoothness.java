package courseworthy.course;

import java.util.ArrayList;
import java.util.List;

/** Which wheels the ground lets roll, best first: the values of the OpenStreetMap key {@code smoothness} (wiki.openstreetmap.org). */
public enum Smoothness {
    EXCELLENT, GOOD, INTERMEDIATE, BAD, VERY_BAD, HORRIBLE, VERY_HORRIBLE, IMPASSABLE;

    public String tag() {
        return name().toLowerCase(java.util.Locale.ROOT);
    }

    public static List<String> tags() {
        List<String> out = new ArrayList<>();
        for (Smoothness smoothness : values()) {
            out.add(smoothness.tag());
        }
        return out;
    }

    /** The smoothness of a tag, or null. */
    public static Smoothness of(String tag) {
        for (Smoothness smoothness : values()) {
            if (smoothness.tag().equals(tag)) {
                return smoothness;
            }
        }
        return null;
    }
}
