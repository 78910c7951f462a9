package courseworthy.ride;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Temperature by hour and height. */
class DayTest {

    /** From 7:00 to 15:00 the cosine rises throughout: lowest at the start, highest at the end, 5 min of the table apart. */
    @Test
    void risesTowardsTheAfternoon() {
        Day day = new Day(7 * 3600, 8 * 3600, 9, 24);
        assertThat(day.temperature(0, 0)).isCloseTo(9, within(1e-9));
        assertThat(day.temperature(8 * 3600, 0)).isCloseTo(24, within(0.05));
        assertThat(day.temperature(4 * 3600, 0)).isBetween(9.0, 24.0);
        assertThat(day.temperature(5 * 3600, 0)).isGreaterThan(day.temperature(4 * 3600, 0));
    }

    /** A whole day reaches its bottom at 3:00 and its top at 15:00. */
    @Test
    void isColdestBeforeDawn() {
        Day day = new Day(18 * 3600, 24 * 3600, 4, 20);
        assertThat(day.temperature(9 * 3600, 0)).isCloseTo(4, within(1e-6));
        assertThat(day.temperature(21 * 3600, 0)).isCloseTo(20, within(1e-6));
    }

    /** 6.5 K per km (ISO 2533:1975): 1000 m higher is 6.5 °C colder, by hand. */
    @Test
    void isColderHigherUp() {
        Day day = new Day(8 * 3600, 4 * 3600, 12, 12);
        assertThat(day.temperature(3600, 0)).isCloseTo(12, within(1e-9));
        assertThat(day.temperature(3600, 1000)).isCloseTo(5.5, within(1e-9));
        assertThat(day.temperature(3600, -400)).isCloseTo(14.6, within(1e-9));
    }
}
