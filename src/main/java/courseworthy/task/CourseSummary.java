package courseworthy.task;

import courseworthy.course.Climbing;
import courseworthy.course.Course;
import courseworthy.course.ElevationLine;
import courseworthy.course.Repair;
import courseworthy.course.Stretch;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The course as a brief shows it: one lap.
 *
 * @param name     as written
 * @param summary  one line, may be empty
 * @param file     the path as typed
 * @param distance m
 * @param climbing null where unknown
 * @param ground   what it is ridden on, and where that is known from
 * @param line     elevation along the course; null where unknown
 * @param repairs  what was mended while reading
 * @param assumed  ground that was filled in
 * @param notes    what else the user should know
 */
public record CourseSummary(String name, String summary, String file, double distance, Climbing climbing,
        Ground ground, ElevationLine line, List<Repair> repairs, List<String> assumed, List<String> notes) {

    /** Stands for ground without a surface. */
    public static final String UNKNOWN = "unknown";

    /** A surface and its share of the length, 0 to 1, to four decimals. */
    public record SurfaceShare(String surface, BigDecimal share) {
    }

    /**
     * What a course is ridden on.
     *
     * @param surfaces    by share of the length, largest first; what has no surface written is {@code unknown}
     * @param basis       where it is known from; null where none of it comes from a map
     * @param attribution who must be named in what is made from the course; empty for nobody
     */
    public record Ground(List<SurfaceShare> surfaces, GroundBasis basis, String attribution) {

        static final Ground NONE = new Ground(List.of(), null, "");
    }

    public List<SurfaceShare> surfaces() {
        return ground.surfaces();
    }

    public GroundBasis basis() {
        return ground.basis();
    }

    public String attribution() {
        return ground.attribution();
    }

    public static CourseSummary of(Course course) {
        return new CourseSummary(course.name(), course.summary(), course.file(), course.length(), course.climbing(),
                new Ground(surfaces(course), GroundBasis.of(course.stretches()), course.attribution()), course.line(), course.repairs(), course.assumed(),
                course.notes());
    }

    private static List<SurfaceShare> surfaces(Course course) {
        Map<String, Double> lengths = new LinkedHashMap<>();
        for (Stretch stretch : course.stretches()) {
            String surface = stretch.ground().surface() == null ? UNKNOWN : stretch.ground().surface().tag();
            lengths.merge(surface, stretch.length(), Double::sum);
        }
        List<SurfaceShare> out = new ArrayList<>();
        lengths.forEach((surface, length) -> out.add(new SurfaceShare(surface, share(length, course.length()))));
        out.sort((a, b) -> b.share().equals(a.share()) ? a.surface().compareTo(b.surface()) : b.share().compareTo(a.share()));
        return List.copyOf(out);
    }

    private static BigDecimal share(double length, double whole) {
        return BigDecimal.valueOf(whole > 0 ? length / whole : 0).setScale(4, RoundingMode.HALF_UP);
    }
}
