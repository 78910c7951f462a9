package courseworthy.course;

import courseworthy.course.GroundOrigin.ValueProvenance;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** How surely the ground of a stretch is known, by its surface, smoothness, tracktype and mtb:scale. */
public enum GroundCertainty {
    /** All of it stands on the map, or is written besides. */
    MAPPED,
    /** Some of it was inferred from the map, or it may be one of several. */
    INFERRED,
    /** A person wrote it. */
    WRITTEN,
    /** Some of it was taken for want of anything known. */
    ASSUMED,
    UNKNOWN;

    private static final Set<String> TAGS = Set.of("surface", "smoothness", "tracktype", "mtb:scale");

    /** In lower case. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static GroundCertainty of(Stretch stretch) {
        return stretch.assumed() ? ASSUMED : ofWhatIsKnown(stretch);
    }

    /** The same where what was assumed counts as written. */
    public static GroundCertainty ofWhatIsKnown(Stretch stretch) {
        Map<String, String> ground = GroundPairs.of(stretch.ground());
        ground.keySet().retainAll(TAGS);
        boolean mapped = false;
        boolean inferred = !stretch.alternatives().isEmpty();
        for (Map.Entry<String, String> each : ground.entrySet()) {
            ValueProvenance source = stretch.origin() == null ? null : stretch.origin().source(each.getKey(), each.getValue());
            mapped |= source == ValueProvenance.MAPPED;
            inferred |= source == ValueProvenance.INFERRED;
        }
        if (ground.isEmpty()) {
            return inferred ? INFERRED : UNKNOWN;
        }
        return inferred ? INFERRED : mapped ? MAPPED : WRITTEN;
    }
}
