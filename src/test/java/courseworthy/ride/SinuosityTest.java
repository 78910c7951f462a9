package courseworthy.ride;

import static courseworthy.ride.InventedCourse.ground;
import static courseworthy.ride.InventedCourse.stretch;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import courseworthy.course.Course;
import courseworthy.course.Ground;
import courseworthy.course.Surface;
import courseworthy.course.Track;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What winding tells of a trail: the figures on mapped ways, and what is made of them. */
class SinuosityTest {

    private static final Ground TRAIL = ground(Surface.GROUND, null, null, 2.0);
    private static final double CHORD = 20;

    /** How many times a mapped way doubles the least turning, by its own sums: chords of 20 m laid end to end. */
    private static double doublings(MappedTrails.Trail trail) {
        double[] east = trail.east();
        double[] north = trail.north();
        double x = east[0];
        double y = north[0];
        double heading = Double.NaN;
        double turned = 0;
        double due = CHORD;
        for (int i = 1; i < east.length; i++) {
            double long_ = Math.hypot(east[i] - east[i - 1], north[i] - north[i - 1]);
            double at = 0;
            while (long_ - at >= due) {
                at += due;
                double toX = east[i - 1] + at / long_ * (east[i] - east[i - 1]);
                double toY = north[i - 1] + at / long_ * (north[i] - north[i - 1]);
                double now = Math.atan2(toY - y, toX - x);
                turned += Double.isNaN(heading) ? 0 : Math.abs(Math.IEEEremainder(now - heading, 2 * Math.PI));
                heading = now;
                x = toX;
                y = toY;
                due = CHORD;
            }
            due -= long_ - at;
        }
        return Math.log(Math.max(1, turned / trail.length() / Sinuosity.LEAST_TURNING)) / Math.log(2);
    }

    private record Fit(double slope, double[] left, double deviation) {
    }

    /** A straight line through grades by doublings, weighted by length. */
    private static Fit fit(List<MappedTrails.Trail> trails) {
        double whole = 0;
        double x = 0;
        double y = 0;
        for (MappedTrails.Trail trail : trails) {
            whole += trail.length();
            x += trail.length() * doublings(trail);
            y += trail.length() * trail.grade();
        }
        x /= whole;
        y /= whole;
        double both = 0;
        double square = 0;
        for (MappedTrails.Trail trail : trails) {
            double off = doublings(trail) - x;
            both += trail.length() * off * (trail.grade() - y);
            square += trail.length() * off * off;
        }
        double slope = both / square;
        double[] left = new double[trails.size()];
        double sum = 0;
        for (int i = 0; i < left.length; i++) {
            left[i] = trails.get(i).grade() - y - slope * (doublings(trails.get(i)) - x);
            sum += trails.get(i).length() * left[i] * left[i];
        }
        return new Fit(slope, left, Math.sqrt(sum / whole));
    }

    /**
     * The figures of the code are those of the mapped ways, (c) OpenStreetMap contributors: grades for each doubling, what is left, and over what
     * length it is alike. The slope is held to what nine in ten resamples of the ways give.
     */
    @Test
    void gradedWaysWindSo() throws IOException {
        List<MappedTrails.Trail> trails = new ArrayList<>(MappedTrails.of("osm/liechtenstein-2022.osm.pbf"));
        trails.removeIf(trail -> trail.length() < 150);
        assertThat(trails).hasSizeBetween(90, 110);
        Fit fit = fit(trails);
        assertThat(Sinuosity.UNTOLD).isCloseTo(fit.deviation, within(0.05));
        List<Double> slopes = new ArrayList<>();
        Random random = new Random(1);
        for (int i = 0; i < 300; i++) {
            List<MappedTrails.Trail> again = new ArrayList<>();
            trails.forEach(trail -> again.add(trails.get(random.nextInt(trails.size()))));
            slopes.add(fit(again).slope);
        }
        Collections.sort(slopes);
        assertThat(slopes.get(15)).isPositive();
        assertThat(Sinuosity.GRADES_PER_DOUBLING).isBetween(slopes.get(15), slopes.get(284)).isCloseTo(fit.slope, within(0.1));
        assertThat(Sinuosity.ALIKE_OVER).isCloseTo(alikeOver(trails, fit), within(400.0));
    }

    /** From how alike the rests of ways that meet are, and how far apart their middles lie along them. */
    private static double alikeOver(List<MappedTrails.Trail> trails, Fit fit) {
        double alike = 0;
        double apart = 0;
        int pairs = 0;
        for (int i = 0; i < trails.size(); i++) {
            for (int j = 0; j < i; j++) {
                if (!Collections.disjoint(trails.get(i).nodes(), trails.get(j).nodes())) {
                    alike += fit.left[i] * fit.left[j];
                    apart += 0.5 * (trails.get(i).length() + trails.get(j).length());
                    pairs++;
                }
            }
        }
        return -apart / pairs / Math.log(alike / pairs / (fit.deviation * fit.deviation));
    }

    /** The spread of means of a series that is alike so, made 4,000 times (a first-order autoregressive series in steps of 50 m). */
    @Test
    void overLongerPartsItEvensOut() {
        Random random = new Random(5);
        double step = 50;
        double keeps = Math.exp(-step / Sinuosity.ALIKE_OVER);
        for (int steps : new int[] {20, 160, 800}) {
            double squares = 0;
            for (int run = 0; run < 4000; run++) {
                double now = random.nextGaussian();
                double sum = 0;
                for (int i = 0; i < steps; i++) {
                    sum += now / steps;
                    now = keeps * now + Math.sqrt(1 - keeps * keeps) * random.nextGaussian();
                }
                squares += sum * sum / 4000;
            }
            double made = Sinuosity.UNTOLD * Math.sqrt(squares);
            assertThat(Sinuosity.untoldOver(steps * step)).isCloseTo(made, within(0.05 * made));
        }
    }

    /** A way of legs of 40 m that turn left and right by one angle over its first half and by another over its second. */
    private static Track halves(double kilometres, double firstDegrees, double thenDegrees) {
        double[] headings = new double[(int) (kilometres * 100)];
        for (int i = 0; i < headings.length; i++) {
            headings[i] = i / 4 % 2 == 0 ? Math.toRadians(i < headings.length / 2 ? firstDegrees : thenDegrees) : 0;
        }
        return InventedCourse.walked(10, headings);
    }

    private static DiscretisedCourse way(Track track, Ground ground) {
        Course course = InventedCourse.course(InventedCourse.line(track.length(), 10, d -> 500), track,
                List.of(stretch(track.length() / 1000, 0, 0, ground)));
        return DiscretisedCourse.of(course, 0);
    }

    private static double harder(DiscretisedCourse way, double at) {
        int step = 0;
        while (way.along(step) < at) {
            step++;
        }
        return way.harder(way.ground(step));
    }

    /** Twice the turning is 0.8 of a grade harder, in thirds; the mean stays as written; no more than two grades are made of anything. */
    @Test
    void theHalfThatWindsMoreIsTakenAsHarder() {
        DiscretisedCourse doubled = way(halves(8, 20, 40), TRAIL);
        assertThat(harder(doubled, 6000) - harder(doubled, 2000)).isCloseTo(Sinuosity.GRADES_PER_DOUBLING, within(0.34));
        DiscretisedCourse straight = way(halves(8, 0, 70), TRAIL);
        assertThat(harder(straight, 6000)).isBetween(0.9, 2.0);
        assertThat(harder(straight, 2000)).isEqualTo(-harder(straight, 6000));
        double mean = 0;
        for (int i = 0; i < straight.size(); i++) {
            mean += straight.harder(straight.ground(i)) * straight.length(i) / straight.length();
        }
        assertThat(mean).isCloseTo(0, within(0.1));
    }

    /** What winds alike all over, is not graded as a trail, or is too short to be told apart, is as written. */
    @Test
    void elseTheGroundIsAsWritten() {
        for (DiscretisedCourse way : List.of(way(halves(8, 40, 40), TRAIL), way(halves(8, 0, 70), ground(Surface.GRAVEL)),
                way(halves(8, 0, 70), ground(Surface.GROUND, null, null, 0.0)), way(halves(1, 0, 70), TRAIL))) {
            for (int i = 0; i < way.size(); i++) {
                assertThat(way.harder(way.ground(i))).isZero();
                assertThat(way.ground(i)).isEqualTo(way.stretch(i));
            }
        }
    }

    /** A harder place rolls worse and caps speed lower, an easier one the other way round; nothing is smoother than smooth. */
    @Test
    void harderIsRougher() {
        double before = 0;
        double capBefore = 99;
        for (double harder = -2; harder <= 2; harder += 1.0 / 3) {
            double rolls = RollingResistance.of(TRAIL, harder, BikeKind.HARDTAIL, 0).mid();
            double cap = SpeedLimits.cap(TRAIL, harder, BikeKind.HARDTAIL, 2, 0).mid();
            assertThat(rolls).isGreaterThan(before);
            assertThat(cap).isLessThan(capBefore);
            before = rolls;
            capBefore = cap;
        }
        assertThat(RollingResistance.of(TRAIL, 0, BikeKind.HARDTAIL, 0)).isEqualTo(RollingResistance.of(TRAIL, BikeKind.HARDTAIL, 0));
        assertThat(Roughness.of(ground(Surface.GROUND, null, null, 1.0), -5).low()).isZero();
    }
}
