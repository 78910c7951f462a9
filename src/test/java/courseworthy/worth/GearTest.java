package courseworthy.worth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import courseworthy.ride.BikeKind;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Development, cadence and torque against standards, handbook values and plain arithmetic. */
class GearTest {

    /** Nominal circumference pi (bead seat + 2 widths), ISO 5775-1; 28-622 as handbooks print it. */
    private static double wheel(double width) {
        return BikeKind.circumference(0.622, width / 1000);
    }

    /** 16 CFR 1512.5, footnote: development is the distance travelled in one turn of the crank; 24 km/h at 60 rpm is 6.667 m. */
    @Test
    void aTurnASecondTravelsTheDevelopment() {
        Gear direct = new Gear(30, 30);
        assertThat(direct.speed(60, 6.667) * 3.6).isCloseTo(24.0, within(0.01));
        assertThat(direct.cadence(24 / 3.6, 20.0 / 3)).isCloseTo(60, within(1e-9));
    }

    /** 48 x 16 on a 27-inch wheel is 81 gear inches, 6.463 m (classical handbook value: 81 in times pi). */
    @Test
    void gearInchesAgree() {
        assertThat(new Gear(48, 16).development(Math.PI * 27 * 0.0254)).isCloseTo(6.463, within(0.001));
    }

    /** Worked out by hand from ratio, circumference and cadence; half a percent, since circumferences are nominal. */
    @ParameterizedTest
    @CsvSource({"50,11,28,9.682,90,52.3", "34,34,28,2.130,60,7.67", "34,34,28,2.130,90,11.5", "40,42,40,2.100,60,7.56", "40,11,40,8.020,60,28.87",
        "32,52,57,1.423,60,5.12", "32,10,57,7.399,90,39.96", "30,50,57,1.387,60,4.99"})
    void developmentAndSpeed(int ring, int sprocket, double width, double development, double cadence, double kmh) {
        Gear gear = new Gear(ring, sprocket);
        assertThat(gear.development(wheel(width))).isCloseTo(development, within(0.005 * development));
        assertThat(gear.speed(cadence, wheel(width)) * 3.6).isCloseTo(kmh, within(0.005 * kmh));
        assertThat(gear.cadence(kmh / 3.6, wheel(width))).isCloseTo(cadence, within(0.005 * cadence));
    }

    /** Power over angular velocity: 250 W is 47.7, 39.8 and 31.8 N m at 50, 60 and 75 turns a minute. */
    @ParameterizedTest
    @CsvSource({"50,47.7", "60,39.8", "75,31.8"})
    void torque(double cadence, double newtonMetres) {
        assertThat(Gear.torque(250, cadence)).isCloseTo(newtonMetres, within(0.06));
    }

    /** The gear for a climb: 6 km/h at 60 rpm and 7 km/h at 70 rpm ask for 1.667 m, 10 km/h at 70 rpm for 2.381 m. */
    @ParameterizedTest
    @CsvSource({"6,60,1.667", "7,70,1.667", "8,70,1.905", "10,70,2.381"})
    void aClimbAsksForADevelopment(double kmh, double cadence, double development) {
        assertThat(new Gear(1, 1).cadence(kmh / 3.6, development)).isCloseTo(cadence, within(0.03));
    }

    @Test
    void twoRingsAreRiddenOneAfterTheOther() {
        Drivetrain drivetrain = new Drivetrain(List.of(46, 30), List.of(11, 13, 15, 17, 19, 22, 25, 28, 32));
        List<Gear> used = drivetrain.used();
        for (int i = 1; i < used.size(); i++) {
            assertThat(used.get(i).ratio()).isGreaterThan(used.get(i - 1).ratio());
        }
        assertThat(used.get(0)).isEqualTo(drivetrain.easiest()).isEqualTo(new Gear(30, 32));
        assertThat(used.get(used.size() - 1)).isEqualTo(drivetrain.hardest()).isEqualTo(new Gear(46, 11));
        assertThat(used).doesNotContain(new Gear(46, 32), new Gear(46, 28), new Gear(30, 11));
    }

    @Test
    void theLargestStepIsBetweenNeighbours() {
        assertThat(new Drivetrain(List.of(34), List.of(10, 12, 14, 17)).largestStep()).isCloseTo(3.0 / 14, within(1e-12));
        assertThat(new Drivetrain(List.of(34), List.of(10, 11, 12, 13, 17)).largestStep()).isCloseTo(4.0 / 13, within(1e-12));
    }
}
