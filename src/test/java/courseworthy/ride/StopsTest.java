package courseworthy.ride;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Time off the bike, in minutes as riders tell it (common practice, no source). */
class StopsTest {

    private static final double HOUR = 3600;

    private static void near(Range range, double low, double mid, double high) {
        assertThat(new double[] {range.low() / 60, range.mid() / 60, range.high() / 60}).containsExactly(new double[] {low, mid, high}, within(0.002));
    }

    /** Four hours with three points: a quarter of a minute to four at each in a race, 1:15 as is likely; one to ten in training, four as is likely. */
    @Test
    void atPoints() {
        near(Stops.atPoints(4 * HOUR, 3, false), 3 * 0.25, 3 * 1.25, 3 * 4);
        near(Stops.atPoints(4 * HOUR, 3, true), 3 * 1, 3 * 4, 3 * 10);
        near(Stops.of(4 * HOUR, 3, false), 0.75, 3.75, 12);
        near(Stops.atPoints(8 * HOUR, 1, false), 0.25, 1.25, 4);
        near(Stops.atPoints(8 * HOUR, -1, false), 0, 0, 0);
    }

    /** Two hours are ridden through, four are not, three are half-way. */
    @ParameterizedTest
    @CsvSource({"1, 0", "2, 0", "2.5, 0.25", "3, 0.5", "4, 1", "9, 1"})
    void shortRidesAreRiddenThrough(double hours, double share) {
        near(Stops.atPoints(hours * HOUR, 2, true), 2 * share, 8 * share, 20 * share);
    }

    /** Without points written, ten hours of a race lose none to 6 % of the time, 12 min as is likely; of training none to 10 %, 24 min. */
    @Test
    void withoutPointsAShareOfTheRide() {
        near(Stops.of(10 * HOUR, -1, false), 0, 12, 36);
        near(Stops.of(10 * HOUR, -1, true), 0, 24, 60);
        near(Stops.of(3 * HOUR, -1, true), 0, 0.5 * 7.2, 0.5 * 18);
    }

    /** With points, what is ridden beyond four hours brings clothing and gates besides: of ten hours 2 % of six. */
    @Test
    void longDaysBringMoreBesides() {
        near(Stops.between(10 * HOUR, 3, false), 0, 0.02 * 360, 0.06 * 360);
        near(Stops.between(4 * HOUR, 3, false), 0, 0, 0);
        near(Stops.between(3 * HOUR, 3, false), 0, 0, 0);
        near(Stops.between(10 * HOUR, 0, true), 0, 0.04 * 360, 0.10 * 360);
        near(Stops.of(10 * HOUR, 3, false), 0.75, 3.75 + 7.2, 12 + 21.6);
    }
}
