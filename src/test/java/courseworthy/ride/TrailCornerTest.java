package courseworthy.ride;

import static courseworthy.ride.InventedCourse.estimate;
import static courseworthy.ride.InventedCourse.ground;
import static courseworthy.ride.InventedCourse.stretch;
import static courseworthy.ride.InventedCourse.strongAmateur;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import courseworthy.course.Course;
import courseworthy.course.Ground;
import courseworthy.course.Surface;
import courseworthy.course.Track;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Turns of a trail that are sharper than its track shows. */
class TrailCornerTest {

    private static final Ground TRAIL = ground(Surface.GROUND, null, null, 1.0);
    private static final Ground FOREST_ROAD = ground(Surface.GROUND, null, null, 0.0);

    /**
     * The widest line through a turn, found by trying: of all circles about points on the line that halves the turn that touch no outer edge and
     * clear the inside, the largest. The inner edge is an arc of 2 m, the tread 1 m wide.
     */
    @ParameterizedTest
    @ValueSource(doubles = {40, 60, 90, 120, 160})
    void theWidestLineThroughATurn(double degrees) {
        double inside = 2;
        double tread = 1;
        double half = Math.toRadians(degrees) / 2;
        double widest = 0;
        for (double back = 0; back < 60; back += 0.001) {
            double toTheOuterEdge = inside + tread + back * Math.cos(half);
            double toTheApex = back + inside;
            widest = toTheOuterEdge >= toTheApex ? toTheApex : widest;
        }
        assertThat(inside + tread * TrailCorner.cut(2 * half)).isCloseTo(widest, within(0.01));
    }

    /** Straight legs that turn by an angle left and right in turn, as a track with a point every 5 m. */
    private static Track legs(int legs, double leg, double degrees) {
        double[] headings = new double[(int) (legs * leg / 5)];
        for (int i = 0; i < headings.length; i++) {
            headings[i] = (int) (i * 5 / leg) % 2 == 0 ? Math.toRadians(degrees) : 0;
        }
        return InventedCourse.walked(5, headings);
    }

    /** The same track with each point read some metres off (standard deviation, either way). */
    private static Track misread(Track track, double metres) {
        Random random = new Random(3);
        Track.TrackPiece piece = track.pieces().get(0);
        double[] lat = piece.lat().clone();
        double[] lon = piece.lon().clone();
        for (int i = 0; i < lat.length; i++) {
            lat[i] += metres * random.nextGaussian() / 111_195;
            lon[i] += metres * random.nextGaussian() / 111_195 / Math.cos(Math.toRadians(47));
        }
        return new Track(List.of(new Track.TrackPiece(lat, lon, piece.distance(), piece.elevation())), track.elevation());
    }

    private static Course on(Track track, Ground ground, double gradient) {
        double rise = gradient * track.length();
        return InventedCourse.course(InventedCourse.line(track.length(), 10, d -> 500 + gradient * d), track,
                List.of(stretch(track.length() / 1000, Math.max(0, rise), Math.max(0, -rise), ground)));
    }

    private static int corners(Track track, Ground ground) {
        DiscretisedCourse way = DiscretisedCourse.of(on(track, ground, 0), 0);
        int corners = 0;
        for (int i = 0; i < way.size(); i++) {
            corners += way.corner(i) > 0 ? 1 : 0;
        }
        return corners;
    }

    /** Every turn at a point is one, on a trail that turns narrowly; on a wide way, whose bends the track shows, none is. */
    @Test
    void turnsAtAPointAreSharp() {
        Track track = legs(40, 60, 80);
        assertThat(corners(track, TRAIL)).isEqualTo(39);
        assertThat(corners(track, FOREST_ROAD)).isZero();
        assertThat(corners(track, ground(Surface.ASPHALT))).isZero();
    }

    /** Along a curve a way turns everywhere, so nowhere sharply; and a straight trail read a metre off at each point shows next to none. */
    @Test
    void curvesAndNoiseAreNot() {
        assertThat(corners(legs(200, 10, 0), TRAIL)).isZero();
        assertThat(corners(curve(25), TRAIL)).isLessThanOrEqualTo(1);
        Track noisy = misread(legs(40, 60, 0), 1.0);
        assertThat(corners(noisy, TRAIL) / (noisy.length() / 1000)).isLessThan(8);
    }

    private static Track curve(double radius) {
        double[] headings = new double[39];
        for (int i = 0; i < headings.length; i++) {
            headings[i] = (i + 0.5) * 5 / radius;
        }
        return InventedCourse.walked(5, headings);
    }

    /** How much longer a trail of 3 km takes with its turns than as straight, at a gradient. */
    private static double longer(double leg, double gradient) {
        Track turning = legs((int) (3000 / leg), leg, 90);
        Track straight = legs((int) (3000 / leg), leg, 0);
        RideAssumptions basis = strongAmateur(BikeKind.HARDTAIL, 2);
        return estimate(on(turning, TRAIL, gradient), basis).riding().mid() / estimate(on(straight, TRAIL, gradient), basis).riding().mid() - 1;
    }

    /**
     * Right angles cost much on the level and downhill, where the rider brakes to them, and next to nothing on a climb that is ridden no faster
     * than they can be turned at; more of them never cost less (mechanics).
     */
    @Test
    void turnsCostWhereTheyAreBrakedFor() {
        assertThat(longer(50, 0.12)).isBetween(-1e-3, 0.03);
        double wide = longer(150, 0);
        double narrow = longer(50, 0);
        assertThat(wide).isGreaterThan(0.02);
        assertThat(narrow).isBetween(wide, 0.8);
        assertThat(longer(50, -0.05)).isGreaterThan(0.3);
    }
}
