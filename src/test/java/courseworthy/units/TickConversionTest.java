package courseworthy.units;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Conversions of ticks, against factors that are exact by definition and against decimal arithmetic of 34 digits and more. */
class TickConversionTest {

    private static final long MOST = 1_000_000_000_000L;
    private static final List<String> STEPS = List.of("1", "0.1", "0.01", "5", "0.25");
    private static final List<String> FACTORS = List.of("1", "0.95", "0.333", "-1", "1.22", "12.5", "0.000001");

    /** 1 in = 25.4 mm, 1 mi = 1609.344 m, 1 lb = 0.45359237 kg, 1 psi = 6894.757293168 Pa (exact); 0 C = 32 F; 36 km/h = 10 m/s. */
    @ParameterizedTest
    @CsvSource({"IN,0.1,22,1,MM,1,56", "MI,1,2,1,M,1,3219", "LB,1,100,1,KG,0.01,4536", "PSI,1,30,1,BAR,0.01,207", "F,1,32,1,C,0.1,0",
            "C,1,-40,1,F,1,-40", "KM_PER_H,1,36,1,M_PER_S,0.1,100", "MIN,1,90,1,H,0.1,15", "RATIO,0.001,1000,0.95,RATIO,0.01,95",
            "MM,1,5,0.5,MM,1,3", "MM,1,-5,0.5,MM,1,-3", "KM,1,2000000,1,MM,1,1000000000000", "KM,1,-2000000,1,MM,1,-1000000000000"})
    void toTheNearestTick(Unit from, String step, long value, String factor, Unit to, String toStep, long expected) {
        TickConversion conversion = new TickConversion(Resolution.of(from, step), new BigDecimal(factor), Resolution.of(to, toStep));
        assertThat(conversion.ticks(value, MOST)).isEqualTo(expected);
    }

    @ParameterizedTest
    @EnumSource(Unit.class)
    void asDecimalArithmeticHasIt(Unit from) {
        SplittableRandom chance = new SplittableRandom(from.ordinal());
        for (Unit to : Unit.values()) {
            if (to.dimension() == from.dimension()) {
                for (String factor : FACTORS) {
                    Resolution out = Resolution.of(to, STEPS.get(chance.nextInt(STEPS.size())));
                    agree(Resolution.of(from, STEPS.get(chance.nextInt(STEPS.size()))), new BigDecimal(factor), out, chance);
                }
            }
        }
    }

    private static void agree(Resolution from, BigDecimal factor, Resolution to, SplittableRandom chance) {
        TickConversion conversion = new TickConversion(from, factor, to);
        assertThat(conversion.to()).isEqualTo(to);
        for (int i = 0; i < 200; i++) {
            long value = i < 100 ? i - 50 : chance.nextLong(-1L << chance.nextInt(1, 40), 1L << chance.nextInt(1, 40));
            BigDecimal ticks = to.unit().fromBase(from.unit().toBase(from.step().multiply(BigDecimal.valueOf(value))).multiply(factor))
                    .divide(to.step(), new MathContext(30, RoundingMode.HALF_UP)).setScale(0, RoundingMode.HALF_UP);
            long expected = ticks.max(BigDecimal.valueOf(-MOST)).min(BigDecimal.valueOf(MOST)).longValueExact();
            assertThat(conversion.ticks(value, MOST)).as("%s of %s times %s in %s", value, from, factor, to).isEqualTo(expected);
        }
    }

    @Test
    void neverMoreThanAsked() {
        TickConversion conversion = new TickConversion(Resolution.of(Unit.M, "1"), BigDecimal.ONE, Resolution.of(Unit.MM, "1"));
        assertThat(conversion.ticks(7, 5_000)).isEqualTo(5_000);
        assertThat(conversion.ticks(-7, 5_000)).isEqualTo(-5_000);
    }
}
