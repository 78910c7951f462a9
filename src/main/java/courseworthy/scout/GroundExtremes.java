package courseworthy.scout;

import courseworthy.course.Course;
import courseworthy.course.Ground;
import courseworthy.course.Stretch;
import courseworthy.ride.Range;
import courseworthy.ride.Roughness;
import java.util.Comparator;

/** A course of which some ground is open, on the smoothest and on the roughest ground that it may have. */
public final class GroundExtremes {

    private static final Comparator<Ground> BY_ROUGHNESS = Comparator.comparingDouble(GroundExtremes::roughness);

    private GroundExtremes() {
    }

    /** Whether the ground of some stretch may be one of several, or is unknown. */
    public static boolean isOpen(Course course) {
        return course.stretches().stream().anyMatch(each -> GroundClass.of(each, 0) != null);
    }

    /** On the smoothest, each stretch by itself. */
    public static Course smoothest(Course course) {
        return on(course, BY_ROUGHNESS);
    }

    /** On the roughest, each stretch by itself. */
    public static Course roughest(Course course) {
        return on(course, BY_ROUGHNESS.reversed());
    }

    private static Course on(Course course, Comparator<Ground> first) {
        return course.with(course.stretches().stream().map(each -> known(each, first)).toList());
    }

    private static Stretch known(Stretch stretch, Comparator<Ground> first) {
        GroundClass open = GroundClass.of(stretch, 0);
        return open == null ? stretch : stretch.known(open.possible().stream().min(first).orElseThrow());
    }

    private static double roughness(Ground ground) {
        Range roughness = Roughness.of(ground);
        return roughness == null ? Roughness.MOST / 2 : roughness.mid();
    }
}
