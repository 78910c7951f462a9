package courseworthy.ride;

import static courseworthy.ride.InventedCourse.ground;
import static courseworthy.ride.InventedCourse.stretch;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import courseworthy.course.Course;
import courseworthy.course.Ground;
import courseworthy.course.Smoothness;
import courseworthy.course.Stretch;
import courseworthy.course.Surface;
import courseworthy.course.Track;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Steps, hills, bends and headings of ways whose shape is known by construction; the angles and lengths are plain geometry. */
class WayGeometryTest {

    private static final Ground ROAD = ground(Surface.ASPHALT, Smoothness.GOOD, null, null);

    private static DiscretisedCourse drawn(Stretch... stretches) {
        return DiscretisedCourse.of(InventedCourse.course(stretches), 300);
    }

    private static DiscretisedCourse along(Track track) {
        return DiscretisedCourse.of(InventedCourse.course(InventedCourse.line(track.length(), track.length() / (track.pieces().get(0).size() - 1), at -> 300), track,
                List.of(stretch(track.length() / 1000, 0, 0, ROAD))), 300);
    }

    /** Steps of a track so far apart that turn by so many degrees each, one after the other. */
    private static Track track(double step, double... turns) {
        double[] headings = new double[turns.length];
        double heading = 0;
        for (int i = 0; i < turns.length; i++) {
            heading += Math.toRadians(turns[i]);
            headings[i] = heading;
        }
        return InventedCourse.walked(step, headings);
    }

    /** No road or trail is steeper than 60 %: more is a fault of the elevation. */
    @Test
    void steeperThanSixtyPercentIsAFault() {
        double[] heights = {300, 355, 435, 375, 295};
        DiscretisedCourse way = DiscretisedCourse.of(InventedCourse.measured(InventedCourse.line(400, 100, at -> heights[(int) Math.round(at / 100)]), ROAD), 0);
        assertThat(new double[] {way.gradient(0), way.gradient(1), way.gradient(2), way.gradient(3)}).containsExactly(new double[] {0.55, 0.60, -0.60, -0.60}, within(1e-9));
        assertThat(way.height(0)).isCloseTo(327.5, within(1e-9));
    }

    /** Drawn steps are at most a kilometre long: 2 km are two, 2.001 km three, each as long. */
    @ParameterizedTest
    @CsvSource({"1, 1", "2, 2", "2.001, 3", "5.5, 6"})
    void drawnStepsAreAtMostAKilometre(double kilometres, int steps) {
        DiscretisedCourse way = drawn(stretch(kilometres, 0, 0, ROAD));
        assertThat(way.size()).isEqualTo(steps);
        assertThat(way.length(0)).isCloseTo(1000 * kilometres / steps, within(1e-9));
        assertThat(way.length()).isCloseTo(1000 * kilometres, within(1e-9));
    }

    /** Hills of 60 m at most (practice): as much climbed as dropped, 60 m are one, 61 two, 121 three; where only 30 m are dropped again it is one. */
    @ParameterizedTest
    @CsvSource({"60, 60, 1", "61, 61, 2", "120, 120, 2", "121, 121, 3", "200, 30, 1", "61, 200, 2"})
    void hillsAreSixtyMetresHigh(double rise, double drop, int hills) {
        DiscretisedCourse way = drawn(stretch(5, rise, drop, ROAD));
        int climbs = 0;
        for (int i = 0; i < way.size(); i++) {
            climbs += way.gradient(i) > 0 && (i == 0 || way.gradient(i - 1) <= 0) ? 1 : 0;
        }
        assertThat(climbs).isEqualTo(hills);
        int last = way.size() - 1;
        double end = way.height(last) + way.gradient(last) * way.length(last) / 2;
        assertThat(end).isCloseTo(300 + rise - drop, within(1e-6));
    }

    /**
     * Where as much is climbed as dropped slopes are half as steep again as both over the length, the rest flat (practice): 100 and 100 m in 10 km
     * at 3 %, a third of the way flat. Where three times as much is climbed, a quarter steeper; where nothing is dropped, no steeper.
     */
    @ParameterizedTest
    @CsvSource({"100, 100, , 0.03", "300, 100, , 0.05", "200, 0, , 0.02", "0, 200, , 0.02", "100, 100, 0.025, 0.025", "100, 100, 0.01, 0.02", "100, 100, 0.05, 0.03"})
    void rollingGroundIsSteeper(double rise, double drop, Double steepest, double slope) {
        DiscretisedCourse way = drawn(new Stretch(10_000, rise, drop, steepest, ROAD, 1));
        double up = 0;
        double down = 0;
        for (int i = 0; i < way.size(); i++) {
            if (way.gradient(i) != 0) {
                assertThat(Math.abs(way.gradient(i))).isCloseTo(slope, within(1e-9));
            }
            up += Math.max(0, way.gradient(i)) * way.length(i);
            down += Math.max(0, -way.gradient(i)) * way.length(i);
        }
        assertThat(up).isCloseTo(rise, within(1e-6));
        assertThat(down).isCloseTo(drop, within(1e-6));
        assertThat(way.length()).isCloseTo(10_000, within(1e-6));
    }

    /** Where nothing is said of climbing, 10 m up and 10 m down a kilometre (judgement). */
    @Test
    void silentStretchesClimbTenMetresAKilometre() {
        DiscretisedCourse way = drawn(new Stretch(4000, null, null, null, ROAD, 1));
        double up = 0;
        for (int i = 0; i < way.size(); i++) {
            up += Math.max(0, way.gradient(i)) * way.length(i);
        }
        assertThat(up).isCloseTo(40, within(1e-9));
        assertThat(DiscretisedCourse.saysClimbing(List.of(stretch(1, 0, 0, ROAD), new Stretch(1, 5.0, null, null, ROAD, 1)))).isTrue();
        assertThat(DiscretisedCourse.saysClimbing(List.of(stretch(1, 0, 0, ROAD), new Stretch(1, null, null, null, ROAD, 1)))).isFalse();
    }

    /** A stretch written in parts is drawn as one, and each step lies on the part its middle is in. */
    @Test
    void partsOfAStretchAreDrawnAsOne() {
        DiscretisedCourse whole = drawn(stretch(4, 80, 80, ROAD));
        DiscretisedCourse parts = drawn(stretch(1, 20, 20, ROAD), stretch(3, 60, 60, ROAD));
        assertThat(parts.size()).isEqualTo(whole.size());
        for (int i = 0; i < parts.size(); i++) {
            assertThat(parts.gradient(i)).isCloseTo(whole.gradient(i), within(1e-9));
            assertThat(parts.stretch(i)).isEqualTo(parts.along(i) - parts.length(i) / 2 > 1000 ? 1 : 0);
        }
    }

    /** Neighbours join while their gradients are within 2.5 %, they head the same way within 45 degrees, and are together at most a kilometre. */
    @ParameterizedTest
    @CsvSource({"0.024, 1", "0.026, 2", "-0.024, 1", "-0.026, 2"})
    void neighboursJoinByGradient(double steeper, int steps) {
        double[] heights = {300, 302, 304 + 100 * steeper};
        DiscretisedCourse way = DiscretisedCourse.of(InventedCourse.measured(InventedCourse.line(200, 100, at -> heights[(int) Math.round(at / 100)]), ROAD), 0);
        DiscretisedCourse thinned = way.thinned();
        assertThat(thinned.size()).isEqualTo(steps);
        assertThat(thinned.length()).isCloseTo(200, within(1e-9));
        if (steps == 1) {
            assertThat(thinned.gradient(0)).isCloseTo(0.02 + steeper / 2, within(1e-9));
            assertThat(thinned.height(0)).isCloseTo((way.height(0) + way.height(1)) / 2, within(1e-9));
        }
    }

    @ParameterizedTest
    @CsvSource({"43, 1", "47, 2", "-43, 1", "-47, 2"})
    void neighboursJoinByHeading(double turn, int steps) {
        assertThat(along(track(200, 0, turn)).thinned().size()).isEqualTo(steps);
    }

    @Test
    void joinedStepsAreAtMostAKilometre() {
        DiscretisedCourse thinned = along(track(100, new double[25])).thinned();
        assertThat(thinned.size()).isEqualTo(3);
        assertThat(thinned.length(0)).isCloseTo(1000, within(1.0));
        assertThat(thinned.length(2)).isCloseTo(500, within(1.0));
    }

    /** A turn of more than 20 degrees within 50 m either way, five steps of 10 m, is not straight; of less it is. */
    @Test
    void straightIsTwentyDegreesOverFiftyMetres() {
        double[] turns = new double[40];
        turns[20] = 30;
        DiscretisedCourse way = along(track(10, turns));
        for (int i = 6; i < 34; i++) {
            assertThat(way.straight(i)).as("step %s", i).isEqualTo(i < 15 || i > 24);
        }
        turns[20] = 19;
        assertThat(along(track(10, turns)).straight(20)).isTrue();
        turns[20] = -20.5;
        assertThat(along(track(10, turns)).straight(20)).isFalse();
    }

    /** Bends of a metre a step: so many straight, so many on a circle, so many straight. */
    private static DiscretisedCourse bend(double radius, int arc) {
        double[] turns = new double[60 + arc + 60];
        Arrays.fill(turns, 60, 60 + arc, Math.toDegrees(1 / radius));
        return along(track(1, turns));
    }

    /** The middle of a long bend is told exactly; wider than about 60 m nobody is slowed (the tangent over 21 m puts it at 62). */
    @ParameterizedTest
    @CsvSource({"10", "15", "25", "40", "57"})
    void aLongBendHasItsRadius(double radius) {
        assertThat(bend(radius, 60).radius(90)).isCloseTo(radius, within(0.02 * radius));
        assertThat(bend(-radius, 60).radius(90)).isCloseTo(radius, within(0.02 * radius));
    }

    @Test
    void aWideBendIsStraight() {
        assertThat(bend(60, 60).radius(90)).isFinite();
        assertThat(bend(65, 60).radius(90)).isInfinite();
        assertThat(bend(30, 60).radius(20)).isInfinite();
    }

    /** A bend is told from 20 m before a step to 20 m after it: a corner of 30 degrees is seen over 21 m from middle to middle, as 40 m of radius. */
    @Test
    void aCornerIsSeenOverTwentyMetresEitherWay() {
        double[] turns = new double[120];
        turns[60] = 30;
        DiscretisedCourse way = along(track(1, turns));
        assertThat(way.radius(59)).isCloseTo(21 / Math.toRadians(30), within(0.1));
        assertThat(way.radius(60)).isCloseTo(21 / Math.toRadians(30), within(0.1));
        assertThat(way.radius(38)).isInfinite();
        assertThat(way.radius(82)).isInfinite();
    }

    /** A circle of 100 m turns by 10 mrad a metre (the radius of the earth 6371 km, so that a degree of latitude is 111.195 km). */
    @Test
    void aCircleTurnsEvenly() {
        double[] turns = new double[100];
        Arrays.fill(turns, Math.toDegrees(2 / 100.0));
        Track track = track(2, turns);
        double[] lengths = new double[100];
        Arrays.fill(lengths, 2);
        double[] turning = new CourseShape(track, 100, lengths).turning(2);
        assertThat(turning[50]).isCloseTo(1 / 100.0, within(0.0001));
        assertThat(turning[0]).isZero();
        assertThat(turning[1]).isZero();
        assertThat(turning[98]).isCloseTo(0.01, within(0.0001));
        assertThat(turning[99]).isZero();
    }

    /** Over the line where the day changes, from 179.9995 E to 179.9995 W on the equator, the way heads east; back again, west. */
    @Test
    void headingsHoldOverTheDateLine() {
        for (double side : new double[] {1, -1}) {
            Track track = new Track(List.of(new Track.TrackPiece(new double[] {0, 0, 0}, new double[] {side * 179.9985, side * 179.9995, -side * 179.9995},
                    new double[] {0, 111.2, 222.4}, new double[3])), Track.Elevation.KNOWN);
            DiscretisedCourse way = along(track);
            for (int i = 0; i < way.size(); i++) {
                assertThat(Math.toDegrees(way.bearing(i))).isCloseTo(side * 90, within(0.01));
            }
        }
    }

    /** Turns that a profile counts are as tight as 20 m: of three half circles each those of 19.5 m count, those of 20.7 m do not. */
    @ParameterizedTest
    @CsvSource({"15, 3", "19.5, 3", "20.7, 0", "30, 0"})
    void tightTurnsAreCounted(double radius, int tight) {
        List<Double> turns = new ArrayList<>();
        int arc = (int) Math.round(Math.PI * radius);
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 60; j++) {
                turns.add(0.0);
            }
            for (int j = 0; j < arc; j++) {
                turns.add((i % 2 == 0 ? 1 : -1) * Math.toDegrees(1 / radius));
            }
        }
        DiscretisedCourse way = along(track(1, turns.stream().mapToDouble(each -> each).toArray()));
        assertThat(way.turnsShown(0) * way.length()).isCloseTo(tight, within(1e-6));
    }

    /**
     * Where only the wind's strength is known it is ridden against, across, with and across, a quarter of a kilometre each (computing): over each
     * kilometre nothing on the mean, and half of it on the mean square, as over all directions.
     */
    @Test
    void windFromAnywhereTurnsEachQuarterKilometre() {
        CoursePieces pieces = new CoursePieces(drawn(stretch(4, 0, 0, ROAD)), true, Double.NaN, new double[] {0}, 15, 1.6);
        double at = 0;
        double mean = 0;
        double square = 0;
        double[] expected = {1, 0, -1, 0};
        for (int i = 0; i < pieces.size; i++) {
            int quarter = (int) ((at + pieces.length[i] / 2) / 250) % 4;
            assertThat(pieces.head[i]).isEqualTo(expected[quarter]);
            assertThat(Math.floor((at + 1e-6) / 250)).isEqualTo(Math.floor((at + pieces.length[i] - 1e-6) / 250));
            mean += pieces.head[i] * pieces.length[i];
            square += pieces.head[i] * pieces.head[i] * pieces.length[i];
            at += pieces.length[i];
        }
        assertThat(at).isCloseTo(4000, within(1e-6));
        assertThat(mean / at).isCloseTo(0, within(1e-9));
        assertThat(square / at).isCloseTo(0.5, within(1e-9));
    }

    /** Pieces of a step begin with the first length and grow; what would leave less than half a piece is taken into the last. */
    @Test
    void piecesGrowFromTheStartOfAStep() {
        CoursePieces pieces = new CoursePieces(drawn(stretch(0.1, 0, 0, ROAD)), false, Double.NaN, new double[] {0}, 15, 1.6);
        assertThat(Arrays.copyOf(pieces.length, pieces.size)).containsExactly(new double[] {15, 24, 38.4, 22.6}, within(1e-9));
        double sum = 0;
        for (int i = 0; i < pieces.size; i++) {
            sum += pieces.length[i];
        }
        assertThat(sum).isCloseTo(100, within(1e-9));
        assertThat(new CoursePieces(drawn(stretch(0.0224, 0, 0, ROAD)), false, Double.NaN, new double[] {0}, 15, 1.6).size).isEqualTo(1);
        assertThat(new CoursePieces(drawn(stretch(0.0226, 0, 0, ROAD)), false, Double.NaN, new double[] {0}, 15, 1.6).size).isEqualTo(2);
    }
}
