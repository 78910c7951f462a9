package courseworthy.worth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import courseworthy.call.Call;
import courseworthy.demand.EstimatedRide.Kind;
import courseworthy.ride.RideEstimate;
import courseworthy.topic.Topics;
import courseworthy.worth.HeldGradients.HeldGear;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What gradients gears hold, against a power balance worked out by hand. */
class HeldGradientsTest {

    private static final String RIDER = """
            name: Alex
            mass: 75 kg
            power: 250 W
            held for: 1:00 h
            climbing cadence: 60 rpm
            highest cadence: 100 rpm
            bike: {kind: gravel, mass: 9 kg}
            """;
    private static final String COURSE = """
            name: Up and Down
            stretches:
              - {length: 6 km, ascent: 20 m, descent: 20 m, surface: asphalt, smoothness: good}
              - {length: 4 km, ascent: 300 m, descent: 0 m, surface: gravel, smoothness: bad}
              - {length: 4 km, ascent: 0 m, descent: 300 m, surface: gravel, smoothness: bad}
            """;
    private static final Drivetrain GEARS = new Drivetrain(List.of(40), List.of(11, 13, 15, 17, 19, 21, 24, 28, 32, 37, 42));

    @TempDir
    private Path folder;

    private HeldGradients held(Call call) {
        return HeldGradients.of(call, GEARS);
    }

    /**
     * Gravity, rolling, air, bearings and drive with the coefficients of Martin and others (1998), J. Appl. Biomech. 14:276-291, written out: 9.80665,
     * 0.0044 m² for the wheels, 91 mN and 8.7 mN s/m, 0.97698.
     */
    @Test
    void theBalanceByHandHoldsThemToo() {
        Call call = CallFixture.call(folder, COURSE, RIDER, "");
        HeldGradients held = held(call);
        RideEstimate estimate = call.demands().estimated().estimate();
        double mass = estimate.basis().mass().mid();
        double area = estimate.basis().dragArea().mid() + 0.0044;
        for (HeldGear each : held.gears()) {
            for (double[] end : new double[][] {{each.slowest(), each.steepest()}, {each.fastest(), each.flattest()}}) {
                double v = end[0];
                double angle = Math.atan(end[1]);
                double force = mass * 9.80665 * (Math.sin(angle) + held.rolling() * Math.cos(angle)) + estimate.density() / 2 * area * v * v + 0.091 + 0.0087 * v;
                assertThat(force * v / 0.97698).as(each.gear().teeth()).isCloseTo(held.power().mid(), within(0.01));
            }
        }
    }

    /** A wheel of 622 mm with a tyre of 45 mm on it rolls 2.24 m a turn: 40x42 at 60 rpm is 2.1 m/s, and at 100 rpm 3.5 m/s. */
    @Test
    void speedsAreThoseOfTheCadences() {
        Call call = CallFixture.call(folder, COURSE, RIDER, "");
        HeldGear easiest = held(call).gears().get(0);
        double width = call.on(Topics.REAR_TYRE_WIDTH).value() / 1000.0;
        double turn = Math.PI * (0.622 + 2 * width);
        assertThat(easiest.slowest()).isCloseTo(40.0 / 42 * turn, within(0.02 * turn));
        assertThat(easiest.fastest() / easiest.slowest()).isCloseTo(100.0 / 60, within(1e-9));
        assertThat(held(call).topSpeed().mid()).isCloseTo(held(call).gears().get(10).fastest(), within(1e-9));
    }

    /** Fading by the end, so no more than the mean of the ride, and no less than a sixth below it. */
    @Test
    void thePowerIsWhatIsLeft() {
        Call call = CallFixture.call(folder, COURSE, RIDER, "name: Long\nlaps: 6\n");
        double uphill = call.demands().estimated().estimate().uphill();
        assertThat(held(call).power().mid()).isBetween(0.84 * uphill, 0.995 * uphill);
    }

    /** Some 10 % at 250 W and 84 kg is ridden at about 9 km/h: 68 rpm in 40x42, 18 rpm in 40x11. */
    @Test
    void aPieceIsHeldAtTheLowestCadenceOrFaster() {
        Call call = CallFixture.call(folder, COURSE, RIDER, "");
        assertThat(on(call, 42)).isTrue();
        assertThat(on(call, 11)).isFalse();
    }

    private static boolean on(Call call, int sprocket) {
        return HeldGradients.of(call, new Drivetrain(List.of(40), List.of(10, sprocket))).steep().stream()
                .filter(each -> each.piece().kind() == Kind.HUNDRED).findFirst().orElseThrow().held();
    }
}
