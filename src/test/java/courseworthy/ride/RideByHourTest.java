package courseworthy.ride;

import static courseworthy.ride.InventedCourse.estimate;
import static courseworthy.ride.InventedCourse.stretch;
import static courseworthy.ride.InventedCourse.strongAmateur;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import courseworthy.course.Course;
import courseworthy.course.Ground;
import courseworthy.course.Surface;
import courseworthy.course.Track;
import courseworthy.event.WeatherHour;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleFunction;
import org.junit.jupiter.api.Test;

/** A ride under a forecast by the hour. It starts at 9:00. */
class RideByHourTest {

    private static final double HOUR = 3600;
    private static final double START = 9 * HOUR;
    private static final double METRES = 170_000;
    private static final Ground ROAD = Ground.builder().surface(Surface.ASPHALT).build();
    private static final Ground CLAY = Ground.builder().surface(Surface.CLAY).build();
    private static final Ground GRAVEL = Ground.builder().surface(Surface.GRAVEL).build();

    /** Straight to the north, level. */
    private static Course north(Ground ground, double metres) {
        double[] headings = new double[(int) (metres / 100)];
        Arrays.fill(headings, Math.PI / 2);
        Track track = InventedCourse.walked(100, headings);
        return InventedCourse.course(InventedCourse.line(metres, 100, x -> 300), track, List.of(stretch(metres / 1000, 0, 0, ground)));
    }

    private static RideAssumptions.WeatherAssumptions hours(DoubleFunction<WeatherHour> at) {
        List<WeatherHour> out = new ArrayList<>();
        for (int hour = 9; hour < 20; hour++) {
            out.add(at.apply(hour));
        }
        HourlyWeather hourly = new HourlyWeather(out, START, null, null, 0);
        boolean wind = hourly.hasWind();
        return new RideAssumptions.WeatherAssumptions(18, 300, true, wind ? hourly.meanWind(0, 9 * HOUR) : 0, wind ? hourly.meanFrom(0, 9 * HOUR) : Double.NaN, null,
                0.5, Air.STANDARD_PRESSURE, false, hourly);
    }

    private static RideAssumptions.WeatherAssumptions wind(DoubleFunction<Double> from) {
        return hours(hour -> new WeatherHour(hour * HOUR, null, 5.0, null, from.apply(hour), null, null));
    }

    private static RideEstimate ride(Course course, RideAssumptions.WeatherAssumptions weather) {
        return estimate(course, InventedCourse.with(strongAmateur(BikeKind.GRAVEL, 1), weather));
    }

    @Test
    void constantHoursAreAForecastWhoseLowIsItsHigh() {
        for (double from : new double[] {0, 70, 180}) {
            Course course = north(GRAVEL, METRES);
            RideEstimate hours = ride(course, hours(hour -> new WeatherHour(hour * HOUR, 18.0, 5.0, null, from, 0.0, null)));
            RideEstimate day = ride(course, new RideAssumptions.WeatherAssumptions(18, 300, true, 5, Math.toRadians(from),
                    new RideAssumptions.Hours(START, 18, 18, Double.NaN, Double.NaN), 0.5, Air.STANDARD_PRESSURE, false));
            assertThat(hours.riding().mid() / day.riding().mid()).isCloseTo(1, within(0.001));
            assertThat(hours.riding().low() / day.riding().low()).isCloseTo(1, within(0.001));
            assertThat(hours.riding().high() / day.riding().high()).isCloseTo(1, within(0.001));
            assertThat(hours.arrivals(METRES / 3).mid() / day.arrivals(METRES / 3).mid()).isCloseTo(1, within(0.001));
        }
    }

    /** The wind that pushed until noon blows against the rider after it: splits are those of the one before it, and those of the other after it. */
    @Test
    void aWindThatTurnsAtNoonSlowsWhatComesAfterIt() {
        Course course = north(ROAD, METRES);
        RideEstimate turning = ride(course, wind(hour -> hour < 12 ? 180.0 : 0.0));
        RideEstimate behind = ride(course, wind(hour -> 180.0));
        RideEstimate against = ride(course, wind(hour -> 0.0));
        double noon = 12 * HOUR - START;
        double reached = 0;
        double first = 0;
        double last = 0;
        for (int i = 0; i < turning.way().size(); i++) {
            double clock = turning.arrival(0, i) * turning.total().mid() / turning.riding().mid();
            assertThat(turning.conditions().headwind(i)).isCloseTo(clock < noon - 60 ? -5 : clock > noon + 60 ? 5 : turning.conditions().headwind(i), within(0.05));
            reached = clock < noon ? turning.way().along(i) : reached;
            first = Math.max(first, clock < noon - 120 ? turning.speed(0, i) : 0);
            last = turning.speed(0, i);
        }
        assertThat(reached).isBetween(0.6 * METRES, 0.95 * METRES);
        assertThat(turning.arrivalAt(reached) / behind.arrivalAt(reached)).isCloseTo(1, within(0.03));
        double after = turning.riding().mid() - turning.arrivalAt(reached);
        double afterAgainst = against.riding().mid() - against.arrivalAt(reached);
        double afterBehind = behind.riding().mid() - behind.arrivalAt(reached);
        assertThat(after / afterAgainst).isCloseTo(1, within(0.08));
        assertThat(after).isGreaterThan(1.3 * afterBehind);
        assertThat(first).isGreaterThan(1.3 * last);
    }

    /** With rain from the third hour on, all before it is as on a dry day, and clay is wet soon after it begins. */
    @Test
    void rainFromTheThirdHourChangesTheGoingOnlyAfterIt() {
        Course course = north(CLAY, METRES);
        DoubleFunction<WeatherHour> rain = hour -> new WeatherHour(hour * HOUR, null, null, null, null, hour < 12 ? 0 : 0.003, null);
        RideEstimate wet = ride(course, hours(rain));
        RideEstimate dry = ride(course, hours(hour -> new WeatherHour(hour * HOUR, null, null, null, null, 0.0, null)));
        double pauses = wet.total().mid() / wet.riding().mid();
        int after = 0;
        for (int i = 0; i < wet.way().size(); i++) {
            double clock = wet.arrival(0, i) * pauses;
            if (clock < 3 * HOUR - 60) {
                assertThat(wet.conditions().wetness(i)).as("at %.0f s", clock).isZero();
                assertThat(wet.arrival(0, i) / dry.arrival(0, i)).isCloseTo(1, within(0.02));
            }
            // 3 mm an hour less 0.15 that drain: 1.5 mm, from which clay is wet, after 32 minutes.
            assertThat(wet.conditions().wetness(i)).as("at %.0f s", clock).isEqualTo(clock > 3.7 * HOUR ? 2 : wet.conditions().wetness(i));
            after += clock > 3.7 * HOUR ? 1 : 0;
        }
        assertThat(after).isGreaterThan(50);
        assertThat(wet.riding().mid()).isGreaterThan(dry.riding().mid() * 1.01);
        RideEstimate gravel = ride(north(GRAVEL, METRES), hours(rain));
        for (int i = 0; i < gravel.way().size(); i++) {
            assertThat(gravel.conditions().wetness(i)).isLessThan(2);
        }
    }

    /** Ground as wet from the first to the last hour is the same ride as under a forecast of that going. */
    @Test
    void rainAllDayIsAWetDay() {
        Course course = north(CLAY, METRES);
        List<WeatherHour> rain = List.of(new WeatherHour(START, null, null, null, null, 0.003, null));
        RideAssumptions.WeatherAssumptions weather = new RideAssumptions.WeatherAssumptions(18, 300, true, 0, Double.NaN, null, 0.5, Air.STANDARD_PRESSURE, false,
                new HourlyWeather(rain, START, null, null, 2));
        RideAssumptions basis = InventedCourse.with(strongAmateur(BikeKind.GRAVEL, 1), weather);
        RideAssumptions wet = new RideAssumptions(basis.kind(), basis.mass(), basis.dragArea(), basis.pacing(), basis.skill(), 2, 1, -1, basis.climbing(),
                InventedCourse.calm());
        assertThat(estimate(course, basis).riding().mid() / estimate(course, wet).riding().mid()).isCloseTo(1, within(0.001));
        assertThat(estimate(course, basis).rolling(0).mid()).isEqualTo(estimate(course, wet).rolling(0).mid());
    }

    /** A second lap meets the weather of its own hours. */
    @Test
    void eachLapMeetsItsOwnHours() {
        Course course = north(ROAD, 45_000);
        RideAssumptions basis = InventedCourse.with(strongAmateur(BikeKind.GRAVEL, 2), wind(hour -> hour < 11 ? 0.0 : 180.0));
        RideEstimate two = estimate(course, basis);
        assertThat(two.arrival(0, two.way().size() - 1)).isGreaterThan(1.2 * (two.riding().mid() - two.arrival(0, two.way().size() - 1)));
    }

    /** Without a track nobody knows the headings: strength alone counts, hour by hour, and slows more than it helps. */
    @Test
    void withoutATrackTheStrengthOfTheHourCounts() {
        Course course = InventedCourse.course(stretch(100, 0, 0, ROAD));
        RideEstimate calm = ride(course, hours(hour -> new WeatherHour(hour * HOUR, null, 0.0, null, null, null, null)));
        RideEstimate late = ride(course, hours(hour -> new WeatherHour(hour * HOUR, null, hour < 11 ? 0.0 : 8.0, null, 0.0, null, null)));
        assertThat(late.arrivalAt(40_000) / calm.arrivalAt(40_000)).isCloseTo(1, within(0.02));
        assertThat(late.riding().mid() - late.arrivalAt(60_000)).isGreaterThan(1.02 * (calm.riding().mid() - calm.arrivalAt(60_000)));
        assertThat(late.conditions().headwind(0)).isNaN();
    }

    /** Warmer and moister air is thinner: what the density of each hour does is what it does on a day of that density (CIPM-2007, see Air). */
    @Test
    void humidityByTheHourCounts() {
        Course course = north(ROAD, METRES);
        RideEstimate dry = ride(course, hours(hour -> new WeatherHour(hour * HOUR, 35.0, null, null, null, null, 0.0)));
        RideEstimate moist = ride(course, hours(hour -> new WeatherHour(hour * HOUR, 35.0, null, null, null, null, 1.0)));
        double density = Air.density(101_325, 35, 1) / Air.density(101_325, 35, 0);
        assertThat(moist.riding().mid() / dry.riding().mid()).isBetween(Math.cbrt(density) - 0.002, 0.9995);
    }

    @Test
    void meansOfTheHoursAreWeighedByTheirTime() {
        HourlyWeather weather = new HourlyWeather(List.of(new WeatherHour(START - HOUR, 10.0, 2.0, 4.0, 90.0, 0.001, null),
                new WeatherHour(START + HOUR, 20.0, 6.0, 12.0, 180.0, 0.004, null)), START, null, null, null);
        assertThat(weather.temperature(0)).isEqualTo(15);
        assertThat(weather.temperature(5 * HOUR)).isEqualTo(20);
        assertThat(weather.meanWind(0, 4 * HOUR)).isCloseTo(5, within(1e-9));
        assertThat(weather.rainBetween(0, 3 * HOUR)).isCloseTo(0.009, within(1e-12));
        assertThat(weather.mostWind(0, HOUR / 2)).isEqualTo(2);
        assertThat(weather.most(0, 2 * HOUR, WeatherHour::gust)).isEqualTo(12);
        assertThat(weather.leastWind(0, 2 * HOUR)).isEqualTo(2);
        assertThat(Math.toDegrees(weather.meanFrom(0, 2 * HOUR))).isCloseTo(Math.toDegrees(Math.atan2(2, -6)), within(1e-6));
    }
}
