package courseworthy.demand;

import courseworthy.course.CourseReader;
import courseworthy.course.GroundReader;
import courseworthy.event.EventReader;
import courseworthy.rider.BikeReader;
import courseworthy.rider.RiderReader;
import java.util.ArrayList;
import java.util.List;

/**
 * What a user writes to make a measure known.
 *
 * @param place where it is written; null where nothing has to be
 * @param keys  the keys to write there
 */
public record InputKeys(InputPlace place, List<String> keys) {

    /** Known of every course, or following from what is assumed where it is not written. */
    public static final InputKeys ALWAYS = new InputKeys(null, List.of());

    /** Where things are written, with the keys there are, in the order in which the file lists them. */
    public enum InputPlace {
        GROUND("ground", GroundReader.KEYS),
        CLIMBING("climbing", and(CourseReader.STRETCH_KEYS, "a track", "start height")),
        RIDER("rider", RiderReader.KEYS),
        EVENT("event", EventReader.KEYS),
        BIKE("bike", BikeReader.KEYS);

        private final String word;
        private final List<String> keys;

        InputPlace(String word, List<String> keys) {
            this.word = word;
            this.keys = keys;
        }

        public String word() {
            return word;
        }

        public List<String> keys() {
            return keys;
        }

        private static List<String> and(List<String> keys, String... more) {
            List<String> out = new ArrayList<>(keys);
            out.addAll(List.of(more));
            return List.copyOf(out);
        }
    }

    public InputKeys {
        keys = List.copyOf(keys);
        if (place != null && !place.keys.containsAll(keys)) {
            throw new IllegalArgumentException(place + " has not all of " + keys);
        }
    }

    public static InputKeys ground(String... keys) {
        return new InputKeys(InputPlace.GROUND, List.of(keys));
    }

    public static InputKeys climbing(String... keys) {
        return new InputKeys(InputPlace.CLIMBING, List.of(keys));
    }

    public static InputKeys rider(String... keys) {
        return new InputKeys(InputPlace.RIDER, List.of(keys));
    }

    public static InputKeys event(String... keys) {
        return new InputKeys(InputPlace.EVENT, List.of(keys));
    }

    public static InputKeys bike(String... keys) {
        return new InputKeys(InputPlace.BIKE, List.of(keys));
    }
}
