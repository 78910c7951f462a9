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
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Riders in a gear too hard for the hill: how hard they push to keep their lowest cadence, how low they let it fall, and when they get off (practice,
 * no source, but where it is said). Each on an even hill, looked at where it has been ridden steadily.
 */
class GettingOffTest {

    private static final Ground ROAD = ground(Surface.ASPHALT, Smoothness.GOOD, null, null);
    private static final RideAssumptions RIDER = strongAmateur(BikeKind.ROAD, 1);
    private static final double HOUR_POWER = 3.7 * 75;
    private static final double LOWEST = 60;

    /** A level road that steepens over a kilometre, and is as steep for another at its end. */
    private static RideEstimate hill(double level, double gradient, RideAssumptions rider) {
        double foot = 1000 * level;
        return estimate(InventedCourse.measured(InventedCourse.line(foot + 2000, 10, at -> at < foot ? 300
                : at < foot + 1000 ? 300 + gradient * (at - foot) * (at - foot) / 2000 : 300 + gradient * (at - foot - 500)), ROAD), rider);
    }

    /** In an only gear whose lowest cadence of 60 rpm is a speed, m/s. */
    private static RideTrace inGear(RideEstimate estimate, double slowest) {
        return estimate.trace(RideChange.NONE.withGearing(new Gearing(List.of(1.0), slowest * 60 / LOWEST, LOWEST, 300)));
    }

    /** Who rides at six tenths of what could be held. */
    private static RideAssumptions easily() {
        return new RideAssumptions(RIDER.kind(), RIDER.mass(), RIDER.dragArea(),
                new RideAssumptions.PacingRanges(RIDER.pacing().hourPower(), Range.exact(0.6), RIDER.pacing().training()), RIDER.skill(), RIDER.wetness(),
                RIDER.laps(), RIDER.points(), RIDER.climbing(), RIDER.weather());
    }

    private static double onFoot(RideTrace trace) {
        double sum = 0;
        for (int at = 0; at < trace.size(); at++) {
            sum += trace.onFoot(at);
        }
        return sum;
    }

    /** The step that ends 500 m before the top. */
    private static int uphill(RideEstimate estimate) {
        RideTrace trace = estimate.trace();
        int at = trace.size() - 1;
        while (trace.along(at) > estimate.way().length() - 500) {
            at--;
        }
        return at;
    }

    /** At 12 %, where riding costs less than walking, 0.6 of the lowest cadence is the least: of 60 rpm, 36. At 16.5 %, half-way to 20, 0.8 of it. */
    @ParameterizedTest
    @CsvSource({"0.12, 36", "0.165, 48"})
    void cadenceFallsSoFarAndNoFurther(double gradient, double cadence) {
        RideEstimate estimate = hill(60, gradient, easily());
        int at = uphill(estimate);
        double rides = 1;
        double walks = 12;
        for (int i = 0; i < 14; i++) {
            double between = (rides + walks) / 2;
            boolean off = onFoot(inGear(estimate, between)) > 0;
            walks = off ? between : walks;
            rides = off ? rides : between;
        }
        assertThat(inGear(estimate, rides).speed(at) / rides * LOWEST).isCloseTo(cadence, within(0.7));
    }

    /** To keep the cadence a rider gives a third more than the moment's power, and no more: 1.35 of it, where that is below what an hour's power allows. */
    @Test
    void aRiderPushesAThirdHarderToKeepTheCadence() {
        RideEstimate estimate = hill(60, 0.08, easily());
        RideTrace free = estimate.trace();
        int at = uphill(estimate);
        RideTrace pushed = inGear(estimate, 1.5 * free.speed(at));
        assertThat(onFoot(pushed)).isZero();
        // All that is pushed there has to be saved elsewhere: on the level, where no gear is too hard, that much less than freely.
        double saved = pushed.power(100) / free.power(100);
        assertThat(saved).isBetween(0.9, 1.0);
        assertThat(pushed.power(at) / free.power(at) / saved).isCloseTo(1.35, within(0.01));
        // A gear that the moment's power turns fast enough changes nothing.
        RideTrace easy = inGear(estimate, 0.98 * free.speed(at));
        assertThat(easy.power(at)).isCloseTo(free.power(at), within(0.01 * free.power(at)));
        // A gear just too hard is kept at its cadence by what that asks for.
        RideTrace kept = inGear(estimate, 1.1 * free.speed(at));
        assertThat(kept.speed(at)).isCloseTo(1.1 * free.speed(at), within(0.01 * free.speed(at)));
        assertThat(kept.power(at)).isBetween(1.05 * free.power(at), 1.2 * free.power(at));
    }

    /** Nor, in an hour that is ridden hard anyway, above 1.3 of hour power. */
    @Test
    void nobodyPushesAboveThreeTenthsMoreThanAnHours() {
        RideEstimate estimate = hill(25, 0.08, RIDER);
        RideTrace free = estimate.trace();
        int at = uphill(estimate);
        assertThat(1.33 * free.power(at)).isGreaterThan(1.3 * HOUR_POWER);
        assertThat(inGear(estimate, 1.5 * free.speed(at)).power(at)).isCloseTo(1.3 * HOUR_POWER, within(0.5));
    }

    /**
     * Into a wall of 45 % the run-up carries a rider 15 m, then speed falls to walking over 10 m; the rest is walked, at 0.95 m/s, with no power on
     * the pedals. The wall is 300 m long, so that 275 m are walked.
     */
    @Test
    void aWallIsWalkedButForItsFoot() {
        RideEstimate estimate = estimate(InventedCourse.course(stretch(2, 0, 0, ROAD), stretch(0.3, 135, 0, ROAD), stretch(1, 0, 0, ROAD)), RIDER);
        RideTrace trace = estimate.trace();
        assertThat(onFoot(trace) * 0.95).isCloseTo(275, within(0.5));
        for (int at = 0; at < trace.size(); at++) {
            if (trace.onFoot(at) > 0) {
                assertThat(trace.power(at)).isLessThan(0.1 * trace.power(0));
            }
        }
    }

    /** Down a long hill in a gear that spins out at 10 m/s a rider coasts, and is slower for it; on the flat holds 10 m/s with just what it asks for. */
    @Test
    void aGearThatSpinsOutHoldsARiderBack() {
        RideEstimate estimate = estimate(InventedCourse.course(stretch(5, 0, 0, ROAD), stretch(5, 0, 250, ROAD)), RIDER);
        RideTrace free = estimate.trace();
        RideTrace spun = estimate.trace(RideChange.NONE.withGearing(new Gearing(List.of(1.0), 5, 60, 120)));
        assertThat(free.speed(free.size() / 4)).isGreaterThan(10.2);
        assertThat(spun.speed(spun.size() / 4)).isCloseTo(10, within(0.02));
        assertThat(spun.power(spun.size() / 4)).isLessThan(free.power(free.size() / 4)).isPositive();
        int last = spun.size() - 1;
        assertThat(spun.power(last)).isZero();
        assertThat(spun.speed(last)).isGreaterThan(10).isLessThan(free.speed(last) + 1e-9);
        assertThat(spun.total()).isGreaterThan(free.total());
    }

    /** Walking uphill at 3.4 km/h; 3.0 and 4.2 are Tobler's function on 15 and on 5 %, 6 exp(-3.5 |s + 0.05|) km/h; a bike balances from 4.5 km/h on. */
    @Test
    void walkersAreAsFastAsToblerSays() {
        assertThat(Walking.SPEED.low() * 3.6).isCloseTo(6 * Math.exp(-3.5 * 0.20), within(0.02));
        assertThat(Walking.SPEED.high() * 3.6).isCloseTo(6 * Math.exp(-3.5 * 0.10), within(0.03));
        assertThat(Walking.SPEED.mid() * 3.6).isCloseTo(3.4, within(0.05));
        assertThat(Walking.BALANCED * 3.6).isCloseTo(4.5, within(0.01));
    }

    /** Walking is cheaper from 13 % without a load, from 20 % with a bicycle's (Ardigò, Saibene, Minetti 2003); between them in proportion. */
    @ParameterizedTest
    @CsvSource({"0.129, 0", "0.137, 0.1", "0.165, 0.5", "0.193, 0.9", "0.201, 1"})
    void walkingIsFavouredBetween13And20Percent(double gradient, double share) {
        assertThat(Walking.favoured(gradient)).isCloseTo(share, within(0.005));
        assertThat(Walking.below(gradient)).isCloseTo(0.95 + share * 0.30, within(0.002));
    }

    /** Pandolf's equation reads a third low at the worst (second-hand): the high end. From 5 % on Minetti's curve counts, to the 45 % it was fitted to. */
    @Test
    void walkingCostsAThirdMoreAtTheWorst() {
        assertThat(Walking.power(75, 12, 0.10).high() / Walking.power(75, 12, 0.10).mid()).isCloseTo(1.33, within(0.005));
        double flat = Walking.pandolf(75, 0, 0.95, 0.049);
        assertThat(Walking.power(75, 0, 0.049).low()).isCloseTo(flat, within(1e-9));
        assertThat(Walking.power(75, 0, 0.051).low()).isCloseTo(3.62 * 75 * 0.95, within(2.0));
        assertThat(Walking.power(75, 12, 0.049).mid() / flat).isCloseTo(Walking.pandolf(75, 12, 0.95, 0.049) / flat, within(1e-9));
        assertThat(Walking.cost(0.60)).isCloseTo(17.60, within(0.01));
        assertThat(Walking.cost(-0.60)).isCloseTo(3.61, within(0.01));
        assertThat(Walking.power(75, 0, -0.10).mid()).isCloseTo(Walking.pandolf(75, 0, 0.95, 0), within(1e-9));
    }
}
