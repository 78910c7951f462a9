package courseworthy.scout;

import courseworthy.course.Ground;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What a scout may find, and what that would mean.
 *
 * @param ground  as found
 * @param seconds the time over the whole course then, s
 * @param changes decisions that would be another one than now by a notch or more, by topic in the order of the catalogue
 */
public record PossibleAnswer(Ground ground, double seconds, Map<String, String> changes) {

    public PossibleAnswer {
        changes = Collections.unmodifiableMap(new LinkedHashMap<>(changes));
    }
}
