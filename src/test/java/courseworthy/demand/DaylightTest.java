package courseworthy.demand;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Light and dark against the sunrise equation and remembered almanac times. */
class DaylightTest {

    private static final double DAY = 86_400;

    /**
     * Sunrise equation (textbook): cos H = (sin h - sin latitude sin declination) / (cos latitude cos declination), with h -0.833 degrees for
     * refraction and the sun's radius. Declination is that of the solstices and equinoxes; it moves by up to 0.4 degrees in a day, which
     * is worth 3 min at these latitudes.
     */
    @ParameterizedTest
    @CsvSource({"2027-06-21, 23.44, 47", "2027-12-22, -23.44, 47", "2027-06-21, 23.44, -30", "2027-03-20, 0, 47", "2027-09-23, 0, 60",
        "2027-06-21, 23.44, 0"})
    void aDayIsAsLongAsTheEquationSays(String date, double declination, double latitude) {
        double h = Math.sin(Math.toRadians(-0.833));
        double d = Math.toRadians(declination);
        double l = Math.toRadians(latitude);
        double angle = Math.acos((h - Math.sin(l) * Math.sin(d)) / (Math.cos(l) * Math.cos(d)));
        double light = angle / Math.PI * DAY;
        Daylight daylight = new Daylight(Instant.parse(date + "T00:00:00Z"), 2 * DAY, latitude, 0);
        assertThat(DAY - daylight.darkUntil(DAY)).isCloseTo(light, within(240.0));
    }

    /** Greenwich on 20 June 2024: sunrise 3:43, sunset 20:21 UTC (almanac, from memory); 2 min. */
    @Test
    void risesWhenTheAlmanacSays() {
        Daylight day = new Daylight(Instant.parse("2024-06-20T00:00:00Z"), DAY, 51.4779, 0);
        double rise = (3 * 60 + 43) * 60;
        double set = (20 * 60 + 21) * 60;
        assertThat(day.dark(rise - 120)).isTrue();
        assertThat(day.dark(rise + 120)).isFalse();
        assertThat(day.dark(set - 120)).isFalse();
        assertThat(day.dark(set + 120)).isTrue();
        assertThat(day.lightLeft(set - 3600)).isCloseTo(3600, within(120.0));
        assertThat(day.lightLeft(set + 600)).isZero();
    }

    /** Over several days each has its light, whatever the hour of the start. */
    @ParameterizedTest
    @CsvSource({"0", "6", "12", "18", "20"})
    void severalDaysAddUp(int hour) {
        Instant start = Instant.parse("2027-05-10T00:00:00Z").plusSeconds(hour * 3600L);
        double one = new Daylight(start, DAY, 47, 8).darkUntil(DAY);
        double three = new Daylight(start, 3 * DAY, 47, 8).darkUntil(3 * DAY);
        assertThat(three).isCloseTo(3 * one, within(20 * 60.0));
        assertThat(one).isBetween(8 * 3600.0, 10 * 3600.0);
    }

    @Test
    void polarDayAndNight() {
        Daylight summer = new Daylight(Instant.parse("2027-06-21T10:00:00Z"), DAY, 72, 20);
        assertThat(summer.darkUntil(DAY)).isZero();
        assertThat(summer.lightLeft(3600)).isEqualTo(DAY);
        Daylight winter = new Daylight(Instant.parse("2027-12-21T10:00:00Z"), DAY, 75, 20);
        assertThat(winter.darkUntil(DAY)).isEqualTo(DAY);
        assertThat(winter.lightLeft(3600)).isZero();
    }
}
