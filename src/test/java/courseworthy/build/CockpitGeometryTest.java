package courseworthy.build;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The trigonometry of bar and stem, in mm, against cases worked by hand and against the class library's plane transformations. */
class CockpitGeometryTest {

    /** Worked by hand to a hundredth; rounding of the table values used leaves less than this, mm. */
    private static final double BY_HAND = 0.01;

    private static CockpitGeometry cockpit(double reach, double stack, double head, double under, double clamp, double stem, double angle, double barReach,
            double rise) {
        return new CockpitGeometry(reach, stack, head, under, clamp, stem, angle, barReach, rise);
    }

    private static void isAt(Point point, double forward, double up) {
        assertThat(point.forward()).isCloseTo(forward, within(BY_HAND));
        assertThat(point.up()).isCloseTo(up, within(BY_HAND));
    }

    /**
     * A stem of -17 degrees at a head angle of 73 degrees is level (common knowledge of the trade). Along the steerer
     * 10 + 20 + 40 / 2 = 50 mm: 50 cos 73 = 14.62 back, 50 sin 73 = 47.82 up. Then 100 mm level, then 80 mm to the hoods:
     * 380 - 14.62 + 100 + 80 = 545.38 forward, 560 + 47.82 = 607.82 up.
     */
    @Test
    void aLevelStem() {
        CockpitGeometry road = cockpit(380, 560, 73, 30, 40, 100, -17, 80, 0);
        isAt(road.bar(), 465.38, 607.82);
        isAt(road.hands(), 545.38, 607.82);
    }

    /**
     * A rising stem on a slack head tube. Along the steerer 6 + 15 + 20 = 41 mm: 41 cos 67 = 16.02 back, 41 sin 67 = 37.74 up. The stem
     * rises by 90 - 67 + 6 = 29 degrees: 60 cos 29 = 52.48 ahead, 60 sin 29 = 29.09 up. The grips lie 45 mm behind the clamp and 20 mm
     * above it: 450 - 16.02 + 52.48 - 45 = 441.46 forward, 600 + 37.74 + 29.09 + 20 = 686.83 up.
     */
    @Test
    void aRisingStemAndASweptBar() {
        isAt(cockpit(450, 600, 67, 21, 40, 60, 6, -45, 20).hands(), 441.46, 686.83);
    }

    /** A bar that drops: 30 mm below the same clamp is 50 mm below a rise of 20 mm. */
    @Test
    void aNegativeRiseLowersTheHands() {
        isAt(cockpit(450, 600, 67, 21, 40, 60, 6, -45, -30).hands(), 441.46, 636.83);
    }

    /** 10 mm of spacers at 73 degrees: 10 cos 73 = 2.92 mm back and 10 sin 73 = 9.56 mm up (common practice: about 3 mm back). */
    @Test
    void spacersRaiseAndBringBack() {
        Point low = cockpit(380, 560, 73, 10, 40, 100, -6, 80, 0).hands();
        Point high = cockpit(380, 560, 73, 20, 40, 100, -6, 80, 0).hands();
        isAt(new Point(high.forward() - low.forward(), high.up() - low.up()), -2.92, 9.56);
    }

    /** Turned over, 100 mm at 73 degrees: 100 (sin 23 - sin 11) = 19.99 up, 100 (cos 23 - cos 11) = -6.11 forward. */
    @Test
    void aStemTurnedOver() {
        Point under = cockpit(380, 560, 73, 10, 40, 100, -6, 80, 0).hands();
        Point over = cockpit(380, 560, 73, 10, 40, 100, 6, 80, 0).hands();
        isAt(new Point(over.forward() - under.forward(), over.up() - under.up()), -6.11, 19.99);
    }

    /** A fork that is 20 mm longer at a wheelbase of 1150 mm and 69 degrees: asin(20 sin 69 / 1150) = 0.930 degrees, front up. */
    @Test
    void aLongerForkTurnsWhatIsMeasuredFromTheBottomBracket() {
        isAt(new Point(450, 600).turned(0.930), 440.20, 607.22);
    }

    /** The same path as turns and shifts of a coordinate system, by the class library. */
    @Test
    void agreesWithPlaneTransformations() {
        Random random = new Random(7);
        for (int i = 0; i < 2000; i++) {
            CockpitGeometry c = cockpit(300 + random.nextInt(200), 500 + random.nextInt(150), 60 + random.nextDouble() * 15, random.nextInt(60),
                    30 + random.nextInt(20), 30 + random.nextInt(100), random.nextInt(61) - 30, random.nextInt(160) - 60, random.nextInt(120) - 60);
            AffineTransform at = AffineTransform.getTranslateInstance(c.reach(), c.stack());
            at.rotate(Math.toRadians(-c.headAngle()));
            // Ahead is now down the steerer.
            at.translate(-(c.under() + c.clamp() / 2), 0);
            at.rotate(Math.toRadians(90 + c.stemAngle()));
            Point2D bar = at.transform(new Point2D.Double(c.stem(), 0), null);
            assertThat(c.hands().forward()).isCloseTo(bar.getX() + c.barReach(), within(1e-9));
            assertThat(c.hands().up()).isCloseTo(bar.getY() + c.barRise(), within(1e-9));
        }
    }
}
