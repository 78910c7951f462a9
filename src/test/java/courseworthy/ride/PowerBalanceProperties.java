package courseworthy.ride;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

/** Directions that hold whatever the rider, the air and the slope. */
class PowerBalanceProperties {

    /** The solver stops where a Newton step is below 1e-6 of the speed; its error then is that squared, far below the 1e-6 asked for. */
    @Property(seed = "20261129")
    void speedAndPowerAreInverse(@ForAll @DoubleRange(min = 1, max = 1500) double power,
            @ForAll @DoubleRange(min = -15, max = 15) double headwind, @ForAll @DoubleRange(min = -0.25, max = 0.30) double gradient,
            @ForAll @DoubleRange(min = 0.8, max = 1.3) double density, @ForAll @DoubleRange(min = 45, max = 150) double mass,
            @ForAll @DoubleRange(min = 0.2, max = 0.6) double dragArea, @ForAll @DoubleRange(min = 0.002, max = 0.1) @Scale(4) double rolling) {
        PowerBalance balance = PowerBalance.of(mass, dragArea, rolling);
        double speed = balance.speed(power, headwind, gradient, density);
        assertThat(balance.power(speed, headwind, gradient, density)).isCloseTo(power, within(1e-6 * Math.max(1, power)));
    }

    @Property(seed = "20261129")
    void heavierIsNeverFasterUphill(@ForAll @DoubleRange(min = 50, max = 600) double power,
            @ForAll @DoubleRange(min = 0, max = 0.3) double gradient, @ForAll @DoubleRange(min = 45, max = 150) double mass,
            @ForAll @DoubleRange(min = 0.1, max = 30) double more) {
        double light = PowerBalance.of(mass, 0.35, 0.01).speed(power, 0, gradient, 1.2);
        double heavy = PowerBalance.of(mass + more, 0.35, 0.01).speed(power, 0, gradient, 1.2);
        assertThat(heavy).isLessThan(light);
    }

    @Property(seed = "20261129")
    void whateverHoldsBackMakesSlower(@ForAll @DoubleRange(min = 50, max = 600) double power,
            @ForAll @DoubleRange(min = -0.05, max = 0.2) double gradient, @ForAll @DoubleRange(min = 0.001, max = 0.05) @Scale(4) double more) {
        double plain = PowerBalance.of(85, 0.35, 0.01).speed(power, 0, gradient, 1.2);
        assertThat(PowerBalance.of(85, 0.35 + more, 0.01).speed(power, 0, gradient, 1.2)).isLessThan(plain);
        assertThat(PowerBalance.of(85, 0.35, 0.01 + more).speed(power, 0, gradient, 1.2)).isLessThan(plain);
        assertThat(PowerBalance.of(85, 0.35, 0.01).speed(power, more * 100, gradient, 1.2)).isLessThan(plain);
        assertThat(PowerBalance.of(85, 0.35, 0.01).speed(power, 0, gradient + more, 1.2)).isLessThan(plain);
        assertThat(PowerBalance.of(85, 0.35, 0.01).speed(power + 100 * more, 0, gradient, 1.2)).isGreaterThan(plain);
    }
}
