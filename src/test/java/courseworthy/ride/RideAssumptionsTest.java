package courseworthy.ride;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import courseworthy.ride.RideAssumptions.WeatherAssumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is taken of air, wind, wheels and trail turns where nobody measured them on the day. */
class RideAssumptionsTest {

    private static final WeatherAssumptions FORECAST = new WeatherAssumptions(20, 300, true, 5, 0, null, 0.5, 101_325, true);
    private static final WeatherAssumptions UNKNOWN = new WeatherAssumptions(20, 300, false, 0, Double.NaN);

    /**
     * By the logarithmic profile a rider at 1.2 m over open grass (roughness length 0.03 m) meets ln(1.2 / 0.03) / ln(10 / 0.03) = 0.635 of the wind
     * at 10 m; among trees and hedges less: 0.6. A forecast of the mean wind is good to 40 % (common practice, no source).
     */
    @Test
    void aRiderMeetsSixTenthsOfTheWind() {
        assertThat(Math.log(1.2 / 0.03) / Math.log(10 / 0.03)).isCloseTo(0.635, within(0.001));
        assertThat(FORECAST.atRider() / 5).isCloseTo(0.60, within(0.005)).isLessThan(0.635);
        assertThat(FORECAST.windAtRider().low()).isCloseTo(0.6 * 3, within(0.01));
        assertThat(FORECAST.windAtRider().mid()).isCloseTo(3, within(0.01));
        assertThat(FORECAST.windAtRider().high()).isCloseTo(1.4 * 3, within(0.01));
    }

    /** Without a forecast none to 3 m/s at 10 m, a light breeze (Beaufort 2, 1.6 to 3.3 m/s), of which a rider meets 1.8. */
    @Test
    void withoutAForecastThereMayBeALightBreeze() {
        assertThat(UNKNOWN.atRider()).isZero();
        assertThat(UNKNOWN.windAtRider().low()).isZero();
        assertThat(UNKNOWN.windAtRider().mid()).isZero();
        assertThat(UNKNOWN.windAtRider().high()).isCloseTo(1.8, within(0.01));
    }

    /** Pressure at sea level stays within 2 % of the standard's, 993 to 1034 hPa (practice); as forecast 1.5 K of temperature are left, 0.5 % at 293 K. */
    @Test
    void densityIsKnownToTwoPercentOrAHalf() {
        assertThat(UNKNOWN.densityOff().high() - 1).isCloseTo(0.02, within(0.0005));
        assertThat(1 - UNKNOWN.densityOff().low()).isCloseTo(0.02, within(0.0005));
        assertThat(FORECAST.densityOff().high() - 1).isCloseTo(1.5 / 293.15, within(0.0002));
        assertThat(1 - FORECAST.densityOff().low()).isCloseTo(1.5 / 293.15, within(0.0002));
    }

    /** Half-moist air where none is forecast lies in the middle between dry and moist (CIPM-2007): at 30 C 0.8 % from either. */
    @Test
    void airIsTakenAsHalfMoist() {
        double taken = new WeatherAssumptions(30, 0, true, 0, Double.NaN).density(0);
        double dry = new WeatherAssumptions(30, 0, true, 0, Double.NaN, null, 0, 101_325, false).density(0);
        double moist = new WeatherAssumptions(30, 0, true, 0, Double.NaN, null, 1, 101_325, false).density(0);
        assertThat(taken).isCloseTo((dry + moist) / 2, within(0.00015));
    }

    /** With height pressure and temperature fall as in the standard atmosphere (ISO 2533): 15 C at sea level give 1.112 kg/m³ at 1000 m, dry. */
    @Test
    void airThinsWithHeight() {
        WeatherAssumptions standard = new WeatherAssumptions(15, 0, true, 0, Double.NaN, null, 0, 101_325, true);
        assertThat(standard.density(0)).isCloseTo(1.225, within(0.001));
        assertThat(standard.density(1000)).isCloseTo(1.1117, within(0.001));
        assertThat(standard.density(2000)).isCloseTo(1.0066, within(0.001));
        assertThat(new WeatherAssumptions(8.5, 1000, true, 0, Double.NaN, null, 0, 101_325, true).density(1000)).isCloseTo(1.1117, within(0.001));
    }

    /** Wheels of 0.14 kg m² on 0.311 m count as 1.447 kg (Martin et al. 1998, from memory): 10 m/s from rest takes half of 100 times that more energy. */
    @Test
    void turningWheelsCountAsMass() {
        assertThat(PowerBalance.WHEEL_INERTIA_MASS).isCloseTo(1.447, within(0.001));
        PowerBalance bare = new PowerBalance(80, 0, 0, 0, false, 1);
        assertThat(bare.power(0, 10, 1, 0, 0, 1.2)).isCloseTo(50 * 81.447, within(0.1));
    }

    /** Turns of a trail: 0.9 to 2.4 m to the inner edge, 1.5 as is likely, on a tread of 0.3 to 0.9 m, 55 cm as is likely (common practice, no source). */
    @Test
    void trailTurnsAreNarrow() {
        assertThat(new double[] {TrailCorner.INSIDE.low(), TrailCorner.INSIDE.mid(), TrailCorner.INSIDE.high()}).containsExactly(new double[] {0.9, 1.5, 2.4}, within(0.02));
        assertThat(new double[] {TrailCorner.TREAD.low(), TrailCorner.TREAD.mid(), TrailCorner.TREAD.high()}).containsExactly(new double[] {0.3, 0.55, 0.9}, within(0.01));
        assertThat(TrailCorner.on(1.0, 0)).isTrue();
        assertThat(TrailCorner.on(0.95, 0)).isFalse();
        assertThat(TrailCorner.on(2 / 3.0, 1 / 3.0)).isTrue();
        assertThat(TrailCorner.on(null, 3)).isFalse();
    }

    /** A turn is sharp from 30 degrees on, where no neighbour turns more, and two steps away the way turns the same way by half of it at most. */
    @ParameterizedTest
    @CsvSource({"30, 0, 0, 0, 0, true", "29, 0, 0, 0, 0, false", "-40, 0, 0, 0, 0, true", "40, 20, 30, 30, 20, true", "40, 21, 30, 30, 20, false", "40, 20, 30, 30, 21, false",
        "40, 0, 40, 0, 0, true", "40, 0, 0, 40, 0, false", "40, 0, 41, 0, 0, false", "-40, -21, 0, 0, 0, false", "-40, 60, 60, 60, 60, true"})
    void sharpTurnsStandAlone(double turn, double twoBefore, double before, double after, double twoAfter, boolean sharp) {
        double[] turned = {twoBefore, before, turn, after, twoAfter};
        for (int i = 0; i < turned.length; i++) {
            turned[i] = Math.toRadians(turned[i]);
        }
        assertThat(TrailCorner.at(turned, 2)).isEqualTo(sharp);
    }

    /** Thirds of a grade are the plus and minus of the mtb:scale (wiki.openstreetmap.org): two of them harder is 0.67. */
    @Test
    void groundsGoByThirdsOfAGrade() {
        GroundClasses grounds = new GroundClasses(2);
        assertThat(grounds.of(1, 0)).isEqualTo(1);
        int harder = grounds.of(1, 2);
        assertThat(harder).isEqualTo(2);
        assertThat(grounds.of(1, 2)).isEqualTo(2);
        assertThat(grounds.of(0, 2)).isEqualTo(3);
        assertThat(grounds.harder(harder)).isCloseTo(0.667, within(0.001));
        assertThat(grounds.harder(1)).isZero();
        assertThat(grounds.stretch(harder)).isEqualTo(1);
        assertThat(grounds.size()).isEqualTo(4);
    }
}
