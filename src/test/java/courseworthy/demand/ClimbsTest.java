package courseworthy.demand;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import courseworthy.course.Course;
import courseworthy.course.ElevationLine;
import courseworthy.course.Ground;
import courseworthy.course.Stretch;
import courseworthy.ride.InventedCourse;
import courseworthy.ride.Range;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** Climbs and steepest pieces of lines whose answer is known by construction. */
class ClimbsTest {

    /** Straight between the given distances and heights, m. */
    private static ElevationLine line(double... pairs) {
        DoubleUnaryOperator height = d -> {
            int i = 0;
            while (i < pairs.length - 4 && d > pairs[i + 2]) {
                i += 2;
            }
            return pairs[i + 1] + (pairs[i + 3] - pairs[i + 1]) * (d - pairs[i]) / (pairs[i + 2] - pairs[i]);
        };
        return InventedCourse.line(pairs[pairs.length - 2], 10, height);
    }

    @Test
    void findsARampBetweenFlats() {
        List<Climbs.Climb> climbs = Climbs.of(line(0, 100, 3000, 100, 5000, 220, 9000, 220));
        assertThat(climbs).hasSize(1);
        assertThat(climbs.get(0).from()).isEqualTo(3000);
        assertThat(climbs.get(0).length()).isEqualTo(2000);
        assertThat(climbs.get(0).rise()).isCloseTo(120, within(1e-6));
        assertThat(climbs.get(0).gradient()).isCloseTo(0.06, within(1e-9));
    }

    /** 30 m at 3 % is a climb; 29 m is not, nor are 60 m at 2 %. */
    @Test
    void needsThirtyMetresAtThreePercent() {
        assertThat(Climbs.of(line(0, 100, 1000, 130, 2000, 100))).hasSize(1);
        assertThat(Climbs.of(line(0, 100, 960, 129, 2000, 100))).isEmpty();
        assertThat(Climbs.of(line(0, 100, 3000, 160, 4000, 100))).isEmpty();
    }

    /** A dip of 9 m in a climb of 200 m belongs to it; one of 60 m parts two climbs. */
    @Test
    void keepsShortDipsAndPartsAtLongOnes() {
        assertThat(Climbs.of(line(0, 0, 1500, 100, 1600, 92, 3100, 200, 4000, 200))).hasSize(1);
        assertThat(Climbs.of(line(0, 0, 1500, 100, 2500, 40, 4000, 140, 5000, 140))).hasSize(2);
    }

    @Test
    void namesTheLongestAndTheLastLong() {
        List<Climbs.Climb> climbs = Climbs.of(line(0, 0, 4000, 300, 7000, 0, 10_000, 160, 12_000, 0, 13_000, 60, 14_000, 0));
        assertThat(climbs).hasSize(3);
        assertThat(Climbs.longest(climbs).rise()).isCloseTo(300, within(1e-6));
        assertThat(Climbs.lastLong(climbs).rise()).isCloseTo(160, within(1e-6));
        assertThat(Climbs.lastLong(List.of())).isNull();
    }

    @Test
    void neverClimbsOverABreak() {
        double[] distance = {0, 500, 1000, 1000, 1500, 2000};
        double[] elevation = {100, 105, 110, 300, 305, 310};
        assertThat(Climbs.of(new ElevationLine(distance, elevation, true, true))).isEmpty();
    }

    private static Steepness steepness(ElevationLine line) {
        double length = line.distance()[line.size() - 1];
        return new Steepness(InventedCourse.course(line, null, List.of(InventedCourse.stretch(length / 1000, 0, 0, Ground.UNKNOWN))));
    }

    /** 100 m at 15 % inside 5 %: by hand 15 %, over 500 m (15 + 4 x 5) / 5 = 7 %, over 1 km 6 %. */
    @Test
    void slidesAWindow() {
        Steepness steep = steepness(line(0, 0, 2000, 100, 2100, 115, 4000, 210));
        assertThat(steep.over(100).gradient().mid()).isCloseTo(0.15, within(1e-9));
        assertThat(steep.over(100).middle()).isCloseTo(2050, within(1e-6));
        assertThat(steep.over(500).gradient().mid()).isCloseTo(0.07, within(1e-9));
        assertThat(steep.over(1000).gradient().mid()).isCloseTo(0.06, within(1e-9));
        assertThat(steep.ramp().mid()).isCloseTo(0.15, within(1e-9));
        assertThat(steepness(line(0, 100, 400, 120)).over(500)).isNull();
    }

    @Test
    void neverSlidesOverABreak() {
        double[] distance = {0, 50, 100, 100, 150, 200};
        double[] elevation = {100, 101, 102, 300, 301, 302};
        Steepness steep = steepness(new ElevationLine(distance, elevation, true, true));
        assertThat(steep.over(100).gradient().mid()).isCloseTo(0.02, within(1e-9));
    }

    /** A profile without a track: what a stretch says is steepest bounds it; else the mean of the stretch does from below. */
    @Test
    void profilesKnowRangesAlone() {
        ElevationLine drawn = new ElevationLine(new double[] {0, 1000, 2000, 3000}, new double[] {0, 0, 80, 80}, false, false);
        Stretch climb = InventedCourse.stretch(1, 80, 0, Ground.UNKNOWN);
        Course silent = InventedCourse.course(drawn, null, List.of(climb));
        assertThat(new Steepness(silent).ramp()).isNull();
        assertThat(new Steepness(silent).over(100).gradient().low()).isGreaterThan(0.08);
        assertThat(new Steepness(silent).over(100).gradient().mid()).isBetween(0.08, 0.16);
        assertThat(new Steepness(silent).over(1000).gradient().low()).isCloseTo(0.08, within(1e-9));
        Stretch written = new Stretch(1000, 80.0, 0.0, 0.17, Ground.UNKNOWN, 1);
        Steepness told = new Steepness(InventedCourse.course(drawn, null, List.of(written)));
        assertThat(told.ramp()).isEqualTo(Range.exact(0.17));
        assertThat(told.over(100).gradient().low()).isGreaterThan(0.08);
        assertThat(told.over(100).gradient().high()).isLessThan(0.17);
        assertThat(told.over(100).middle()).isEqualTo(500);
        assertThat(told.over(1000).gradient().mid()).isLessThan(told.over(100).gradient().mid());
    }

    /** A stretch that drops more than it climbs writes the steepness of its descent, which is no climb. */
    @Test
    void theSteepestOfADescentIsNoClimb() {
        ElevationLine drawn = new ElevationLine(new double[] {0, 2000, 4000}, new double[] {0, 100, 0}, false, false);
        Stretch up = InventedCourse.stretch(2, 100, 0, Ground.UNKNOWN);
        Stretch down = new Stretch(2000, 10.0, 110.0, 0.30, Ground.UNKNOWN, 2);
        Steepness steep = new Steepness(InventedCourse.course(drawn, null, List.of(up, down)));
        assertThat(steep.ramp()).isNull();
        assertThat(steep.over(100).gradient().high()).isLessThan(0.15);
        assertThat(steep.over(100).middle()).isEqualTo(1000);
    }

    /** Rolling ground hides steeper pieces behind one mean than a ramp does (practice). */
    @Test
    void rollingGroundIsSteeperThanItsMean() {
        ElevationLine drawn = new ElevationLine(new double[] {0, 2000, 4000}, new double[] {0, 60, 0}, false, false);
        Stretch ramp = InventedCourse.stretch(4, 120, 0, Ground.UNKNOWN);
        Stretch rolling = InventedCourse.stretch(4, 60, 60, Ground.UNKNOWN);
        double ofRamp = new Steepness(InventedCourse.course(drawn, null, List.of(ramp))).over(100).gradient().mid();
        double ofRolling = new Steepness(InventedCourse.course(drawn, null, List.of(rolling))).over(100).gradient().mid();
        assertThat(ofRolling).isGreaterThan(ofRamp);
    }
}
