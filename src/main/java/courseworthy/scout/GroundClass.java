package courseworthy.scout;

import courseworthy.course.Ground;
import courseworthy.course.GroundOrigin;
import courseworthy.course.GroundPairs;
import courseworthy.course.Stretch;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What makes pieces of unknown ground one question: the same guess, the same alternatives, the same tags. Places where no way of the map was
 * matched have nothing in common, and each is a question of its own.
 *
 * @param likely       what the ground is taken for
 * @param alternatives what it may be instead
 * @param mapped       tags of the map
 * @param place        tells apart what was not matched, from 1; 0 where the class is one of tags
 */
record GroundClass(Ground likely, List<Ground> alternatives, Map<String, String> mapped, int place) {

    /** What is met most on a course of which nothing is known (common practice, no source): paved, good gravel, gravel, trail, hard trail. */
    private static final List<Map<String, String>> COMMON = List.of(
            Map.of("surface", "asphalt", "smoothness", "good"),
            Map.of("surface", "compacted", "smoothness", "intermediate"),
            Map.of("surface", "gravel", "smoothness", "bad"),
            Map.of("surface", "ground", "smoothness", "very_bad", "mtb:scale", "1"),
            Map.of("surface", "ground", "smoothness", "horrible", "mtb:scale", "2"));

    /** The class of a stretch; null where its ground is known. */
    static GroundClass of(Stretch stretch, int place) {
        if (stretch.isFerried() || isKnown(stretch.ground()) && stretch.alternatives().isEmpty()) {
            return null;
        }
        GroundOrigin origin = stretch.origin();
        boolean unmatched = origin != null && origin.isUnmatched();
        return new GroundClass(stretch.ground(), stretch.alternatives(), origin == null ? Map.of() : origin.mapped(), unmatched ? place : 0);
    }

    /** Whether a tag tells how the ground rides. */
    private static boolean isKnown(Ground ground) {
        return ground.surface() != null || ground.smoothness() != null || ground.trackGrade() != null || ground.mtbScale() != null;
    }

    /** What may be found there, each with what is known already. */
    List<Ground> possible() {
        if (!alternatives.isEmpty()) {
            List<Ground> out = new ArrayList<>();
            if (isKnown(likely)) {
                out.add(likely);
            }
            out.addAll(alternatives);
            return out;
        }
        return COMMON.stream().map(pairs -> likely.orElse(GroundPairs.ground(new LinkedHashMap<>(pairs)))).toList();
    }
}
