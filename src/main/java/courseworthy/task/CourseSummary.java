package courseworthy.task;

import courseworthy.course.Climbing;
import courseworthy.course.Course;
import courseworthy.course.ElevationLine;
import courseworthy.course.TrackRepair;
import courseworthy.course.Stretch;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

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
        GroundSummary ground, ElevationLine line, List<TrackRepair> repairs, List<String> assumed, List<String> notes) {

    /** Stands for ground without a surface. */
    public static final String UNKNOWN = "unknown";

    /**
     * A surface and its share of the length, 0 to 1, to four decimals.
     *
     * @param share  where it is sure
     * @param atMost with the parts of which it is one of several possible surfaces
     */
    public record SurfaceShare(String surface, BigDecimal share, BigDecimal atMost) {
    }

    /**
     * What a course is ridden on.
     *
     * @param surfaces    by share of the length, largest first; where none is sure it is {@code unknown}
     * @param narrowed    share of the length of which no surface is sure, but several possible ones are known, 0 to 1
     * @param basis       where it is known from; null where none of it comes from a map
     * @param attribution who must be named in what is made from the course; empty for nobody
     */
    public record GroundSummary(List<SurfaceShare> surfaces, BigDecimal narrowed, GroundBasis basis, String attribution) {

        /** Share of the length of which nothing is known of the surface, 0 to 1. */
        public BigDecimal unknown() {
            return surfaces.stream().filter(each -> each.surface().equals(UNKNOWN)).map(SurfaceShare::share).reduce(BigDecimal.ZERO, BigDecimal::add)
                    .subtract(narrowed).max(BigDecimal.ZERO);
        }

        static final GroundSummary NONE = new GroundSummary(List.of(), BigDecimal.ZERO, null, "");
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
        return new CourseSummary(course.name(), course.summary(), course.file(), course.length(), course.climbing(), ground(course), course.line(),
                course.repairs(), course.assumed(), course.notes());
    }

    private static GroundSummary ground(Course course) {
        Map<String, Double> sure = new TreeMap<>();
        Map<String, Double> possible = new TreeMap<>();
        double narrowed = 0;
        for (Stretch stretch : course.stretches()) {
            Set<String> surfaces = new TreeSet<>();
            stretch.possible().stream().filter(each -> each.surface() != null).forEach(each -> surfaces.add(each.surface().tag()));
            sure.merge(surfaces.size() == 1 ? surfaces.iterator().next() : UNKNOWN, stretch.length(), Double::sum);
            surfaces.forEach(each -> possible.merge(each, stretch.length(), Double::sum));
            narrowed += surfaces.size() > 1 ? stretch.length() : 0;
        }
        List<SurfaceShare> out = new ArrayList<>();
        possible.forEach((surface, length) -> out.add(new SurfaceShare(surface, share(sure.getOrDefault(surface, 0.0), course), share(length, course))));
        if (sure.containsKey(UNKNOWN)) {
            BigDecimal unknown = share(sure.get(UNKNOWN), course);
            out.add(new SurfaceShare(UNKNOWN, unknown, unknown));
        }
        out.sort(Comparator.comparing(SurfaceShare::share).thenComparing(SurfaceShare::atMost).reversed().thenComparing(SurfaceShare::surface));
        return new GroundSummary(List.copyOf(out), share(narrowed, course), GroundBasis.of(course.stretches()), course.attribution());
    }

    private static BigDecimal share(double length, Course course) {
        return BigDecimal.valueOf(course.length() > 0 ? length / course.length() : 0).setScale(4, RoundingMode.HALF_UP);
    }
}
