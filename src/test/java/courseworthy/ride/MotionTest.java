package courseworthy.ride;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Speed carried over, against the balance it must settle to, against energy, and against very small steps of time. */
class MotionTest {

    private static final double MASS = 85;
    private static final double INERTIA = MASS + PowerBalance.WHEEL_INERTIA_MASS;
    private static final double AIR = 0.5 * 1.2 * (0.32 + PowerBalance.WHEEL_DRAG);

    private static double steady(double gradient) {
        double flat = 1 / Math.sqrt(1 + gradient * gradient);
        return MASS * PowerBalance.GRAVITY * flat * (0.005 + gradient) + PowerBalance.BEARING_FORCE;
    }

    private static Motion from(double speed) {
        Motion motion = new Motion();
        motion.start(speed, INERTIA);
        return motion;
    }

    /** On and on, whatever the piece, the speed settles to that of the power balance. */
    @ParameterizedTest
    @CsvSource({"5, 10", "5, 250", "5, 1000", "20, 10", "20, 250", "20, 1000"})
    void settlesToTheBalance(double start, double piece) {
        for (double gradient : new double[] {-0.06, -0.02, 0, 0.04, 0.12}) {
            Motion motion = from(start);
            for (double gone = 0; gone < 20_000; gone += piece) {
                motion.ride(piece, 200 * PowerBalance.EFFICIENCY, AIR, 1, steady(gradient));
            }
            double balanced = PowerBalance.of(MASS, 0.32, 0.005).speed(200, 1, gradient, 1.2);
            assertThat(motion.speed()).isCloseTo(balanced, within(1e-3 * balanced));
        }
    }

    /** On pieces as long as a track's steps, speed goes from its start towards the balance and never past it by more than 2 %. */
    @ParameterizedTest
    @CsvSource({"1", "5", "10"})
    void neverOvershoots(double piece) {
        for (double gradient : new double[] {-0.10, -0.02, 0, 0.06, 0.20}) {
            double balanced = PowerBalance.of(MASS, 0.32, 0.005).speed(200, 0, gradient, 1.2);
            for (double start : new double[] {1, 4, 9, 18}) {
                Motion motion = from(start);
                motion.ride(piece, 200 * PowerBalance.EFFICIENCY, AIR, 0, steady(gradient));
                assertThat(motion.speed()).isBetween(0.98 * Math.min(start, balanced), 1.02 * Math.max(start, balanced));
            }
        }
    }

    /** Seconds over hills by forward steps of a hundredth of a second, which knows nothing of pieces or weights. */
    private static double inSmallSteps(double length, double start, double watts) {
        double v = start;
        double gone = 0;
        double time = 0;
        double step = 0.01;
        while (gone < length) {
            double force = watts * PowerBalance.EFFICIENCY / v - AIR * v * v - steady(hills(gone)) - PowerBalance.BEARING_SLOPE * v;
            v += step * force / INERTIA;
            gone += v * step;
            time += step;
        }
        return time;
    }

    private static double hills(double at) {
        return 0.05 * Math.sin(at / 150) + 0.02 * Math.sin(at / 40);
    }

    private static double inPieces(double length, double start, double watts, double piece) {
        Motion motion = from(start);
        double time = 0;
        for (double at = 0; at < length; at += piece) {
            motion.ride(piece, watts * PowerBalance.EFFICIENCY, AIR, 0, steady(hills(at + 0.5 * piece)));
            time += motion.seconds;
        }
        return time;
    }

    /** Pieces of 10 m over hills: within 0.1 % of steps of a hundredth of a second; halved, they change by less than 0.1 %. */
    @Test
    void shortPiecesAreExactEnough() {
        double fine = inSmallSteps(12_000, 6, 200);
        double ten = inPieces(12_000, 6, 200, 10);
        double five = inPieces(12_000, 6, 200, 5);
        assertThat(ten / fine).isCloseTo(1, within(1e-3));
        assertThat(five / ten).isCloseTo(1, within(1e-3));
        assertThat(Math.abs(five / fine - 1)).isLessThan(Math.abs(ten / fine - 1) + 2e-4);
    }

    /**
     * Energy over a closed ride of hills, back at its height: work at the wheel is what air, tyres and bearings took and the kinetic energy
     * gained, to 0.1 %. What they took is summed apart, by the trapezium rule over the pieces.
     */
    @Test
    void energyInIsEnergyOut() {
        double watts = 220 * PowerBalance.EFFICIENCY;
        double length = 2 * Math.PI * 150 * 40;
        int pieces = 8000;
        double piece = length / pieces;
        Motion motion = from(3);
        double in = 0;
        double out = 0;
        double climbed = 0;
        for (int i = 0; i < pieces; i++) {
            double gradient = 0.05 * Math.sin((i + 0.5) * piece / 150);
            double before = motion.speed();
            motion.ride(piece, watts, AIR, 0, steady(gradient));
            double after = motion.speed();
            in += watts * motion.seconds;
            double lost = (AIR * (before * before + after * after) + PowerBalance.BEARING_SLOPE * (before + after)) / 2;
            double flat = 1 / Math.sqrt(1 + gradient * gradient);
            double weight = MASS * PowerBalance.GRAVITY * gradient * flat;
            climbed += weight * piece;
            out += (lost + steady(gradient) - weight) * piece;
        }
        double kinetic = 0.5 * INERTIA * (motion.speed() * motion.speed() - 9);
        assertThat(climbed / in).isCloseTo(0, within(1e-6));
        assertThat((out + kinetic) / in).isCloseTo(1, within(1e-3));
    }

    /** A tailwind faster than the rider pushes: coasting on the flat, a rider is blown up to where tyres and bearings balance it. */
    @Test
    void isBlownAlong() {
        Motion motion = from(1);
        for (int i = 0; i < 2000; i++) {
            motion.ride(10, 0, AIR, -12, steady(0));
        }
        assertThat(motion.speed()).isCloseTo(PowerBalance.of(MASS, 0.32, 0.005).speed(0, -12, 0, 1.2), within(0.01));
        assertThat(motion.speed()).isGreaterThan(5);
    }

    /** The weight of a piece's end against 1/2 + (coth x - 1/x)/2 by the library's functions. */
    @ParameterizedTest
    @CsvSource({"0.01", "0.1", "0.5", "1", "3", "10", "100"})
    void weighsTheEndAsTheExponentialDoes(double x) {
        assertThat(Motion.atEnd(x)).isCloseTo(0.5 + 0.5 * (1 / Math.tanh(x) - 1 / x), within(0.025));
    }
}
