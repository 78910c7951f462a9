package courseworthy.ride;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import courseworthy.rider.Rider.MaximalEffort;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What can be held for how long, worked out by hand from the published laws. */
class EnduranceBandTest {

    private static final double HOUR = 3600;

    /** The likely share lies in the middle of the published band, to half a percent of hour power. */
    @ParameterizedTest
    @CsvSource({"1", "2", "4", "8", "12", "24"})
    void theLikelyShareIsTheMiddleOfTheBand(double hours) {
        Range share = Endurance.share(hours * HOUR);
        assertThat(share.mid()).isCloseTo((share.low() + share.high()) / 2, within(0.0051));
    }

    /** Between two hours of the band shares go with the logarithm of time: half-way from 4 h at 0.81 to 8 h at 0.725 is 5.66 h. */
    @Test
    void betweenHoursItGoesWithTheLogarithm() {
        assertThat(Endurance.share(4 * Math.sqrt(2) * HOUR).mid()).isCloseTo((0.81 + 0.725) / 2, within(1e-6));
        assertThat(Endurance.share(12 * Math.sqrt(2) * HOUR).mid()).isCloseTo((0.665 + 0.575) / 2, within(1e-6));
        // And so on beyond a day: two days are as far again, but nobody is planned to ride below two fifths.
        assertThat(Endurance.share(48 * HOUR).mid()).isCloseTo(0.575 - (0.665 - 0.575), within(1e-6));
        assertThat(Endurance.share(1000 * HOUR)).isEqualTo(Range.exact(0.40));
    }

    /**
     * Within the hour power falls as time to the power of 0.07 (Riegel 1981 gives the form, for cycling 0.05 to 0.08): half an hour at 1.0497, six
     * minutes at 1.175. The careful end is the flatter law of 0.0467, 1.0329 and 1.1136; the hopeful end the record profile, by which a share of
     * 0.0953 of maximal aerobic power goes for each unit of ln t from 4.13 min on (Pinot and Grappe 2014): (1 - 0.0953 ln (30/4.13)) over
     * (1 - 0.0953 ln (60/4.13)) = 0.8110 / 0.7450 = 1.0887 in half an hour.
     */
    @Test
    void withinTheHourThePowerLawHolds() {
        Range half = Endurance.share(HOUR / 2);
        assertThat(half.mid()).isCloseTo(1.0497, within(0.0002));
        assertThat(half.low()).isCloseTo(1.0329, within(0.0002));
        assertThat(half.high()).isCloseTo(1.0887, within(0.0004));
        assertThat(Endurance.share(HOUR / 10).mid()).isCloseTo(1.1749, within(0.0003));
        assertThat(Endurance.share(HOUR / 10).low()).isCloseTo(1.1136, within(0.0003));
    }

    /** Efforts that fall off slower than 0.04 or faster than 0.12 a unit of ln t are no law of one rider (judgement): the ends are taken. */
    @Test
    void aFittedExponentHasEnds() {
        Range flat = Endurance.hourPower(List.of(new MaximalEffort(600, 250), new MaximalEffort(1800, 250)));
        assertThat(flat.mid()).isCloseTo(250 * Math.pow(2, -0.04), within(0.05));
        Range steep = Endurance.hourPower(List.of(new MaximalEffort(600, 400), new MaximalEffort(1800, 250)));
        assertThat(steep.mid()).isCloseTo(250 * Math.pow(2, -0.12), within(0.05));
        // Three efforts on one line of 0.08 give that line.
        Range fitted = Endurance.hourPower(List.of(new MaximalEffort(600, 250 * Math.pow(3, 0.08)), new MaximalEffort(1800, 250), new MaximalEffort(900, 250 * Math.pow(2, 0.08))));
        assertThat(fitted.mid()).isCloseTo(250 * Math.pow(2, -0.08), within(0.05));
        // Two efforts of one length have no slope: the usual 0.07.
        assertThat(Endurance.hourPower(List.of(new MaximalEffort(1800, 250), new MaximalEffort(1800, 250))).mid()).isCloseTo(250 * Math.pow(2, -0.07), within(0.05));
    }

    /** From 20 min at 300 W by hand: 0.07 gives 277.8 W, 0.0467 285.0, the record profile 300 x 0.7450 / 0.8496 = 263.0; besides, 2 % of the meter. */
    @Test
    void hourPowerFromTwentyMinutes() {
        Range hour = Endurance.hourPower(List.of(new MaximalEffort(1200, 300)));
        double mid = 300 * Math.pow(3, -0.07);
        assertThat(hour.mid()).isCloseTo(mid, within(1e-6));
        assertThat(mid).isCloseTo(277.8, within(0.1));
        assertThat(hour.high() - mid).isCloseTo(Math.hypot(285.0 - mid, 0.02 * mid), within(0.15));
        assertThat(mid - hour.low()).isCloseTo(Math.hypot(mid - 263.0, 0.02 * mid), within(0.15));
    }

    /** Eight hours and more count by the band alone: 200 W over 8 h at 0.65, 0.725 and 0.80 of hour power. */
    @Test
    void aLongEffortCountsByTheBand() {
        Range hour = Endurance.hourPower(List.of(new MaximalEffort(8 * HOUR, 200)));
        double mid = 200 / 0.725;
        assertThat(hour.mid()).isCloseTo(mid, within(1e-6));
        assertThat(hour.low()).isCloseTo(mid - Math.hypot(mid - 200 / 0.80, 0.02 * mid), within(1e-6));
        assertThat(hour.high()).isCloseTo(mid + Math.hypot(200 / 0.65 - mid, 0.02 * mid), within(1e-6));
    }

    /**
     * Riders lose 1.2 % of their mean power an hour: heart rate fell by a tenth in 10 h (Neumayr 2002, 2004), and 17 % of speed from one lap of 10 h
     * to the next; half of it to one and a half about that, and 16 % in all at the most.
     */
    @Test
    void ridersTire() {
        Range ten = Endurance.fade(10 * HOUR);
        assertThat(ten.mid()).isCloseTo(0.12, within(1e-9));
        assertThat(ten.low()).isCloseTo(0.06, within(1e-9));
        assertThat(ten.high()).isCloseTo(0.18, within(1e-9));
        assertThat(Endurance.fade(2 * HOUR).mid()).isCloseTo(0.024, within(1e-9));
        assertThat(Endurance.fade(24 * HOUR).mid()).isCloseTo(0.16, within(1e-9));
        assertThat(Endurance.fade(24 * HOUR).low()).isCloseTo(0.08, within(1e-9));
    }
}
