package courseworthy.worth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import courseworthy.demand.Demands;
import courseworthy.ride.Range;
import courseworthy.worth.DayPlan.PlanHour;
import courseworthy.worth.DayPlan.Kind;
import courseworthy.worth.DayPlan.Split;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What of a day is worth a word in its plan (judgement, but where it is said). */
class PlanLimitsTest {

    private static final String RIDER = "name: Alex\nmass: 75 kg\npower: 250 W\nheld for: 1:00 h\nbike: {kind: gravel}\n";
    private static final String DAY = "name: A Day\nrole: race\naim: time\ngroup share: 0 %\nforecast: {going: dry, wind: 0 m/s}\n";

    @TempDir
    private Path folder;

    private DayPlan plan(String stretches) {
        Demands demands = RideFixture.demands(folder, "name: Course\nstretches:\n" + stretches, RIDER, DAY);
        return DayPlan.of(new HandMadeCall(demands).call());
    }

    private static String hill(double rise) {
        return String.format(Locale.ROOT, "  - {length: %.2f km, ascent: %.0f m, descent: 0 m, surface: asphalt}\n  - {length: %.2f km, ascent: 0 m, descent: %.0f m, surface: asphalt}\n"
                + "  - {length: 3 km, ascent: 0 m, descent: 0 m, surface: asphalt}\n", rise / 80, rise, rise / 80, rise);
    }

    private static List<Long> mainClimbs(DayPlan plan) {
        return plan.splits().stream().filter(split -> split.kind() == Kind.TOP).map(split -> Math.round(split.climb().rise())).toList();
    }

    /** Three climbs at most, the biggest, the earlier of two as big; none of less than a quarter of the biggest. */
    @Test
    void theMainClimbsStandInTheShortPlan() {
        assertThat(mainClimbs(plan(hill(400) + hill(110) + hill(90)))).hasSize(2).first().satisfies(rise -> assertThat(rise).isBetween(390L, 410L));
        DayPlan four = plan(hill(200) + hill(150) + hill(160) + hill(170));
        assertThat(mainClimbs(four)).hasSize(3);
        assertThat(mainClimbs(four).get(1)).isBetween(155L, 165L);
        assertThat(four.every().all().stream().filter(split -> split.kind() == Kind.TOP)).hasSize(4);
        List<Split> alike = plan(hill(200) + hill(200) + hill(200) + hill(200)).splits().stream().filter(split -> split.kind() == Kind.FOOT).toList();
        assertThat(alike).hasSize(3);
        assertThat(alike.get(2).at()).isCloseTo(2 * 8000, within(200.0));
    }

    /** A last hour of under a quarter of an hour belongs to the one before: none is shorter, and none longer than an hour and a quarter. */
    @Test
    void theLastHourIsAtLeastAQuarter() {
        int merged = 0;
        for (double kilometres = 30; kilometres < 38; kilometres += 0.5) {
            List<PlanHour> hours = plan(String.format(Locale.ROOT, "  - {length: %.2f km, ascent: 300 m, descent: 300 m, surface: fine_gravel, smoothness: good}\n", kilometres)).hours();
            PlanHour last = hours.get(hours.size() - 1);
            double length = last.to() - last.from();
            assertThat(length).as("%s km", kilometres).isLessThanOrEqualTo(75 * 60);
            if (hours.size() > 1) {
                assertThat(length).as("%s km", kilometres).isGreaterThan(15 * 60);
            }
            merged += length > 3600 ? 1 : 0;
        }
        assertThat(merged).isPositive();
    }

    /** Half a minute beside the bike is worth a word. */
    @ParameterizedTest
    @CsvSource({"0, false", "29.9, false", "30, true", "300, true"})
    void halfAMinuteOnFootIsTold(double seconds, boolean told) {
        assertThat(DayPlan.walks(seconds)).isEqualTo(told);
    }

    private static TyreSetting tyre(double start, Double ceiling, double most) {
        return new TyreSetting(Range.exact(45), new TyreSetting.Tyre(0.040, null, 0, true), start, start, Range.exact(start), 150_000, ceiling, null, false, most);
    }

    /** A gauge of 0.05 bar shows what rises by half of that; over a ceiling what passes it by 0.04 bar, and is shown so. */
    @Test
    void pressureThatRisesIsToldFromWhatAGaugeShows() {
        assertThat(tyre(200_000, null, 202_400).risesOnTheWay()).isFalse();
        assertThat(tyre(200_000, null, 202_600).risesOnTheWay()).isTrue();
        assertThat(tyre(200_000, null, 250_000).risesOverCeiling()).isFalse();
        assertThat(tyre(200_000, 200_000.0, 203_900).risesOverCeiling()).isFalse();
        assertThat(tyre(200_000, 200_000.0, 204_100).risesOverCeiling()).isTrue();
        assertThat(tyre(200_000, 300_000.0, 204_100).risesOverCeiling()).isFalse();
    }

    /** 0 C is 273.15 K: a filling of 3 bar over 1 bar of air loses a tenth of the 4 bar from 30 C to 2.8 C (gas law, by hand). */
    @Test
    void coldTakesPressureByTheGasLaw() {
        double there = PressureCorrection.elsewhere(300_000, 29.9, 0, 2.595, 0);
        assertThat((there + 101_325) / 401_325).isCloseTo(275.745 / 303.05, within(1e-6));
        assertThat(there).isCloseTo(300_000 - 401_325 * 0.0901, within(30.0));
    }

    /** A sprint is 200 m (common practice, no source): at 15 and at 12 m/s it takes 13.3 and 16.7 s. */
    @Test
    void aSprintIsTwoHundredMetres() {
        assertThat(Sprint.LENGTH / 15).isCloseTo(13.33, within(0.01));
        assertThat(Sprint.LENGTH / 12).isCloseTo(16.67, within(0.01));
    }
}
