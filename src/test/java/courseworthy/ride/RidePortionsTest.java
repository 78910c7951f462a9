package courseworthy.ride;

import static courseworthy.ride.InventedCourse.course;
import static courseworthy.ride.InventedCourse.estimate;
import static courseworthy.ride.InventedCourse.ground;
import static courseworthy.ride.InventedCourse.stretch;
import static courseworthy.ride.InventedCourse.strongAmateur;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import courseworthy.course.Ground;
import courseworthy.course.Smoothness;
import courseworthy.course.Surface;
import org.junit.jupiter.api.Test;

/** Times of parts of a ride: what must hold of any, and of which it is surer. */
class RidePortionsTest {

    private static final Ground ROAD = ground(Surface.ASPHALT, Smoothness.GOOD, null, null);
    private static final Ground TRAIL = ground(Surface.GROUND, Smoothness.VERY_BAD, null, 1.0);

    private static double width(Range range) {
        return (range.high() - range.low()) / range.mid();
    }

    @Test
    void partsAddUpToTheWhole() {
        RideEstimate ride = estimate(course(stretch(20, 300, 300, ROAD), stretch(20, 100, 100, ROAD)), strongAmateur(BikeKind.ROAD, 2));
        double whole = 0;
        for (int part = 0; part < 8; part++) {
            whole += ride.between(part * 10_000, (part + 1) * 10_000).mid();
        }
        assertThat(whole).isCloseTo(ride.riding().mid(), within(1.0));
        assertThat(ride.between(5000, 5000)).isEqualTo(Range.exact(0));
        assertThat(ride.arrivals(80_000).mid()).isCloseTo(ride.riding().mid(), within(1.0));
        assertThat(width(ride.between(0, 80_000))).isCloseTo(width(ride.riding()), within(0.15 * width(ride.riding())));
    }

    /** A single part is off by up to 10 % either way more than the whole (Millet, Tronche, Grappe 2014), which evens out over longer parts. */
    @Test
    void aShortPartIsLessSureThanTheWhole() {
        RideEstimate ride = estimate(course(stretch(40, 400, 400, ROAD)), strongAmateur(BikeKind.ROAD, 1));
        Range part = ride.between(10_000, 12_000);
        Range longer = ride.between(5000, 35_000);
        assertThat(width(part)).isGreaterThan(width(longer)).isGreaterThan(width(ride.riding()));
        assertThat(part.mid() - part.low()).isGreaterThan(0.08 * part.mid());
        Range known = ride.betweenOfAKnownTotal(10_000, 12_000);
        assertThat(known.mid()).isEqualTo(part.mid());
        assertThat(width(known)).as("the time of the whole being known").isLessThan(width(part)).isGreaterThan(0.15);
    }

    /** A trail may be a grade harder or easier there than is told of it, a road not. */
    @Test
    void aTrailIsLessSureThanARoad() {
        RideEstimate ride = estimate(course(stretch(10, 100, 100, ROAD), stretch(10, 100, 100, TRAIL)), strongAmateur(BikeKind.HARDTAIL, 1));
        assertThat(width(ride.betweenOfAKnownTotal(12_000, 14_000))).isGreaterThan(1.05 * width(ride.betweenOfAKnownTotal(2000, 4000)));
    }

    /** Nobody knows how fast a ride is begun: to an early place it is less sure than over a part of that length, at the end as sure as the whole. */
    @Test
    void theStartIsLessSureThanAPart() {
        RideEstimate ride = estimate(course(stretch(40, 400, 400, ROAD)), strongAmateur(BikeKind.ROAD, 1));
        assertThat(width(ride.arrivals(2000))).isGreaterThan(width(ride.between(0, 2000)));
        assertThat(ride.arrivals(2000).mid()).isEqualTo(ride.between(0, 2000).mid());
    }
}
