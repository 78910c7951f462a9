package courseworthy.ride;

import static courseworthy.ride.InventedCourse.estimate;
import static courseworthy.ride.InventedCourse.ground;
import static courseworthy.ride.InventedCourse.stretch;
import static courseworthy.ride.InventedCourse.strongAmateur;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import courseworthy.course.Ground;
import courseworthy.course.Smoothness;
import courseworthy.course.Surface;
import courseworthy.course.Track;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How power is shared out, and what bends, hours and winds make of a ride. */
class PacingTest {

    private static final Ground ROAD = ground(Surface.ASPHALT, Smoothness.GOOD, null, null);

    private static double steady(double gradient) {
        double flat = 1 / Math.sqrt(1 + gradient * gradient);
        return 85 * PowerBalance.GRAVITY * flat * (0.005 + gradient) + PowerBalance.BEARING_FORCE;
    }

    private static double seconds(double length, double watts, double gradient) {
        return length / PowerBalance.of(85, 0.32, 0.005).speed(watts, 0, gradient, 1.2);
    }

    /** Time for a climb and the way down at a share of the climb's power, both at one fourth-power mean of 250 W. */
    private static double whole(double share, double up, double down) {
        double low = 100;
        double high = 800;
        for (int i = 0; i < 60; i++) {
            double watts = (low + high) / 2;
            double climb = seconds(5000, watts, up);
            double rest = seconds(12_000, watts * share, down);
            double mean = watts * Math.pow((climb + Math.pow(share, 4) * rest) / (climb + rest), 0.25);
            low = mean < 250 ? watts : low;
            high = mean < 250 ? high : watts;
        }
        return seconds(5000, low, up) + seconds(12_000, low * share, down);
    }

    /** No other share between a climb and what follows is quicker by more than a ten-thousandth: searched for by brute force. */
    @ParameterizedTest
    @CsvSource({"0.08, 0", "0.08, -0.02", "0.04, -0.03", "0.12, 0.01"})
    void noOtherShareIsQuicker(double up, double down) {
        double air = 0.5 * 1.2 * (0.32 + PowerBalance.WHEEL_DRAG);
        double wheel = 270 * PowerBalance.EFFICIENCY;
        double share = Pacing.share(wheel, air, 0, steady(down), 6) / Pacing.share(wheel, air, 0, steady(up), 6);
        double paced = whole(share, up, down);
        for (double other = 0.25; other <= 1.3; other += 0.01) {
            assertThat(whole(other, up, down)).as("share %s", other).isGreaterThan(paced * (1 - 1e-4));
        }
        assertThat(share).isLessThan(1);
    }

    /** Steeper is harder, faster is easier; nothing is ridden above the power uphill. */
    @Test
    void harderUphillAndEasingDownhill() {
        double air = 0.5 * 1.2 * 0.32;
        double before = 0;
        for (double gradient = -0.10; gradient <= 0.15; gradient += 0.005) {
            double share = Pacing.share(240, air, 0, steady(gradient), 6);
            assertThat(share).isBetween(before, 1.0);
            before = share;
        }
        assertThat(Pacing.share(240, air, 0, steady(0), 6)).isBetween(0.65, 0.80);
        assertThat(Pacing.share(240, air, 3, steady(0), 6)).isGreaterThan(Pacing.share(240, air, 0, steady(0), 6));
    }

    /** In the ride itself: the climb above the mean, the descent below it, and the same climb later on less than before. */
    @Test
    void theRideIsPacedSo() {
        RideEstimate estimate = estimate(InventedCourse.course(stretch(10, 600, 0, ROAD), stretch(15, 0, 0, ROAD), stretch(15, 0, 600, ROAD)),
                strongAmateur(BikeKind.ROAD, 3));
        RideTrace trace = estimate.trace();
        int lap = trace.size() / 3;
        double climb = trace.power(5);
        assertThat(trace.power(20)).isLessThan(climb);
        assertThat(trace.power(35)).isLessThan(trace.power(20));
        assertThat(trace.power(2 * lap + 5)).isLessThan(climb);
        assertThat(climb).isGreaterThan(estimate.meanPower());
        assertThat(estimate.powerOn(0.02, 1).mid()).isBetween(estimate.powerOn(-0.01, 0.01).mid(), estimate.uphill());
        assertThat(estimate.powerOn(-1, -0.02).mid()).isLessThan(estimate.powerOn(-0.01, 0.01).mid());
        assertThat(estimate.powerOn(0.2, 1)).isNull();
    }

    private static final int HAIRPINS = 40;

    /** A track that runs 100 m one way and, round a half circle, 100 m back. */
    private static Track zigzag(double radius) {
        int arcs = 8;
        int points = HAIRPINS * (arcs + 10) + 1;
        double[] lat = new double[points];
        double[] lon = new double[points];
        double[] distance = new double[points];
        double[] height = new double[points];
        double x = 0;
        double y = 0;
        double heading = 0;
        for (int i = 0; i < points; i++) {
            lat[i] = 47 + y / 111_195;
            lon[i] = 8 + x / 111_195 / Math.cos(Math.toRadians(47));
            int in = i % (arcs + 10);
            double step = in < 10 ? 10 : Math.PI * radius / arcs;
            double turned = in < 10 ? 0 : Math.PI / arcs * (i / (arcs + 10) % 2 == 0 ? 1 : -1);
            heading += turned / 2;
            x += step * Math.cos(heading);
            y += step * Math.sin(heading);
            heading += turned / 2;
            distance[i] = i == 0 ? 0 : distance[i - 1] + (((i - 1) % (arcs + 10)) < 10 ? 10 : Math.PI * radius / arcs);
        }
        return new Track(List.of(new Track.TrackPiece(lat, lon, distance, height)), Track.Elevation.KNOWN);
    }

    /** A half circle is told to within a third: its arms reach beyond it into the straights. Straights are straight. */
    @ParameterizedTest
    @CsvSource({"10", "15", "25"})
    void bendsAreTold(double radius) {
        Track track = zigzag(radius);
        DiscretisedCourse way = DiscretisedCourse.of(InventedCourse.course(InventedCourse.line(track.length(), 5, d -> 800 - 0.06 * d), track,
                List.of(stretch(track.length() / 1000, 0, 0.06 * track.length(), ROAD))), 0);
        double tightest = Double.MAX_VALUE;
        int straight = 0;
        for (int i = 0; i < way.size(); i++) {
            tightest = Math.min(tightest, way.radius(i));
            straight += Double.isInfinite(way.radius(i)) ? 1 : 0;
        }
        assertThat(tightest).isCloseTo(radius, within(radius / 3));
        assertThat(straight / (double) way.size()).isBetween(0.3, 0.8);
    }

    /** Down hairpins nobody is faster than grip and lean allow: at 4 m/s² and 15 m, 7.7 m/s; straight down the same drop is quicker. */
    @Test
    void hairpinsSlowADescent() {
        Track track = zigzag(15);
        List<courseworthy.course.Stretch> down = List.of(stretch(track.length() / 1000, 0, 0.08 * track.length(), ROAD));
        var line = InventedCourse.line(track.length(), 5, d -> 800 - 0.08 * d);
        RideAssumptions basis = strongAmateur(BikeKind.ROAD, 1);
        RideEstimate bends = estimate(InventedCourse.course(line, track, down), basis);
        RideEstimate straight = estimate(InventedCourse.course(line, null, down), basis);
        for (int i = 0; i < bends.way().size(); i++) {
            if (bends.way().radius(i) < 16) {
                assertThat(bends.speed(0, i)).isLessThan(Math.sqrt(4 * 16) + 0.1);
            }
        }
        assertThat(bends.riding().mid()).isGreaterThan(1.15 * straight.riding().mid());
    }

    /** Turns that a profile counts and its track shows are braked for once: a few written ones change nothing, many do. */
    @Test
    void turnsOfTheTrackCountOnce() {
        Track track = zigzag(15);
        var line = InventedCourse.line(track.length(), 5, d -> 800 - 0.05 * d);
        double[] seconds = new double[3];
        double[] written = {0, 4, 20};
        for (int i = 0; i < 3; i++) {
            Ground ground = written[i] == 0 ? ROAD : InventedCourse.turning(ROAD, written[i]);
            seconds[i] = estimate(InventedCourse.course(line, track, List.of(stretch(track.length() / 1000, 0, 0.05 * track.length(), ground))),
                    strongAmateur(BikeKind.ROAD, 1)).riding().mid();
        }
        assertThat(seconds[1]).isEqualTo(seconds[0]);
        assertThat(seconds[2]).isGreaterThan(1.05 * seconds[0]);
    }

    /** Wet and unskilled take bends slower, paved faster than loose. */
    @Test
    void gripGoesWithGroundAndSkill() {
        Ground gravel = ground(Surface.GRAVEL, Smoothness.BAD, null, null);
        assertThat(SpeedLimits.sideways(gravel, 2, 0).mid()).isLessThan(SpeedLimits.sideways(ROAD, 2, 0).mid());
        assertThat(SpeedLimits.sideways(ROAD, 2, 2).mid()).isLessThan(SpeedLimits.sideways(ROAD, 2, 0).mid());
        assertThat(SpeedLimits.sideways(ROAD, 0, 0).mid()).isLessThan(SpeedLimits.sideways(ROAD, 2, 0).mid());
        assertThat(SpeedLimits.sideways(Ground.UNKNOWN, 2, 0).low()).isEqualTo(SpeedLimits.sideways(gravel, 2, 0).low());
        assertThat(SpeedLimits.sideways(Ground.UNKNOWN, 2, 0).high()).isEqualTo(SpeedLimits.sideways(ROAD, 2, 0).high());
    }

    /**
     * A hot afternoon's air is thinner than a cold morning's: 20 degrees are 7 % of density by the gas law, on the flat a third of that of the time,
     * 2.3 %, less what tyres take of the power, and more by what a longer ride takes of what can be held. Held at the mean or run by the hour about the same mean, the time is the same to 0.2 %.
     */
    @Test
    void airGoesWithTheHour() {
        RideAssumptions basis = strongAmateur(BikeKind.ROAD, 1);
        var flat = InventedCourse.course(stretch(120, 0, 0, ROAD));
        double held = estimate(flat, InventedCourse.with(basis, weather(18, null))).riding().mid();
        double hourly = estimate(flat, InventedCourse.with(basis, weather(18, new RideAssumptions.Hours(8 * 3600, 8, 28, Double.NaN, Double.NaN)))).riding().mid();
        double cold = estimate(flat, InventedCourse.with(basis, weather(8, null))).riding().mid();
        double hot = estimate(flat, InventedCourse.with(basis, weather(28, null))).riding().mid();
        assertThat(hourly / held).isCloseTo(1, within(0.002));
        assertThat(cold / hot).isBetween(1.015, 1.027);
        double morning = speed(flat, InventedCourse.with(basis, weather(18, new RideAssumptions.Hours(8 * 3600, 8, 28, Double.NaN, Double.NaN))), 10);
        assertThat(morning).isLessThan(speed(flat, InventedCourse.with(basis, weather(18, null)), 10));
    }

    private static double speed(courseworthy.course.Course course, RideAssumptions basis, int step) {
        return estimate(course, basis).speed(0, step);
    }

    private static RideAssumptions.WeatherAssumptions weather(double temperature, RideAssumptions.Hours hours) {
        return new RideAssumptions.WeatherAssumptions(temperature, 300, true, 0, Double.NaN, hours, 0.5, Air.STANDARD_PRESSURE, false);
    }

    /** Moist air and low pressure are thinner (published: 0.9 % for moisture at 20 °C), so quicker. */
    @Test
    void airGoesWithMoistureAndPressure() {
        RideAssumptions.WeatherAssumptions dry = new RideAssumptions.WeatherAssumptions(20, 0, true, 0, Double.NaN, null, 0, 101_325, true);
        RideAssumptions.WeatherAssumptions moist = new RideAssumptions.WeatherAssumptions(20, 0, true, 0, Double.NaN, null, 1, 101_325, true);
        RideAssumptions.WeatherAssumptions low = new RideAssumptions.WeatherAssumptions(20, 0, true, 0, Double.NaN, null, 0, 98_000, true);
        assertThat(moist.density(0) / dry.density(0)).isCloseTo(0.991, within(0.001));
        assertThat(low.density(0) / dry.density(0)).isCloseTo(98_000 / 101_325.0, within(0.0005));
    }
}
