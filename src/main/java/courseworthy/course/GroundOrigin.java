package courseworthy.course;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Where the ground of a stretch comes from, where it was taken from a map: values by key as a profile writes them. A value that is
 * otherwise now was written by a person.
 *
 * @param way      name or number of the way; empty where none was matched
 * @param mapped   values that the way's tags have
 * @param inferred values that were inferred, by the rule that did so; a rule that says only what the ground may be has none
 */
public record GroundOrigin(String way, Map<String, String> mapped, Map<String, Map<String, String>> inferred) {

    /** Stands in a profile for a rule that says only what the ground may be. */
    public static final String RANGE_ALONE = "a range";

    /** Stands in a profile between what was inferred and the rule that did so. */
    public static final String BY = " by ";

    /** Of ground where no way was matched for sure. */
    public static final GroundOrigin UNMATCHED = new GroundOrigin("", Map.of(), Map.of());

    /** Whether no way of the map was matched for sure. */
    public boolean isUnmatched() {
        return way.isEmpty();
    }

    /** Whether another stretch has the same values from the same rules. */
    public boolean sameBasis(GroundOrigin other) {
        return mapped.equals(other.mapped) && inferred.equals(other.inferred);
    }

    /** What was taken from the map, mapped and inferred. */
    public Map<String, String> imported() {
        Map<String, String> out = new LinkedHashMap<>(mapped);
        inferred.values().forEach(each -> each.forEach(out::putIfAbsent));
        return out;
    }

    /** Where a value comes from; null where a person wrote it. */
    public ValueProvenance source(String key, String value) {
        if (value.equals(mapped.get(key))) {
            return ValueProvenance.MAPPED;
        }
        return value.equals(imported().get(key)) ? ValueProvenance.INFERRED : null;
    }

    /** Whether a value stands on the map or was inferred from it. */
    public enum ValueProvenance { MAPPED, INFERRED }
}
