package courseworthy.units;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * The declared resolution of a measure or topic: values are whole ticks of a step, so that comparison is exact.
 *
 * @param unit     the unit in which values are shown
 * @param step     one tick, in that unit
 * @param decimals decimals shown
 */
public record Resolution(Unit unit, BigDecimal step, int decimals) {

    /** From here on pressures are told in tenths of a bar, see {@link PressureSteps}. */
    private static final BigDecimal TENTHS_FROM = new BigDecimal("2.5");

    public static Resolution of(Unit unit, String step) {
        BigDecimal exact = new BigDecimal(step);
        return new Resolution(unit, exact, Math.max(0, exact.stripTrailingZeros().scale()));
    }

    @Override
    public boolean equals(Object other) {
        return this == other || other instanceof Resolution that && unit == that.unit && step.equals(that.step)
                && decimals == that.decimals;
    }

    @Override
    public int hashCode() {
        return unit.hashCode() * 31 + step.hashCode();
    }

    /** The unit of this value in JSON: SI, fixed by the shown unit ({@code mm} stays, since it is SI). */
    public Unit jsonUnit() {
        if (unit == Unit.MM || unit == Unit.W || unit == Unit.DEG) {
            return unit;
        }
        return switch (unit.dimension()) {
            case LENGTH -> Unit.M;
            case MASS -> Unit.KG;
            case TIME -> Unit.S;
            case SPEED -> Unit.M_PER_S;
            case PRESSURE -> Unit.KPA;
            case TEMPERATURE -> Unit.C;
            case VOLUME -> Unit.L;
            case SHARE -> Unit.ONE;
            default -> unit;
        };
    }

    /** The value of a number of ticks in the JSON unit; a share is a fraction of one. */
    public BigDecimal json(long ticks) {
        BigDecimal base = unit.toBase(step.multiply(BigDecimal.valueOf(ticks)));
        Unit to = jsonUnit();
        BigDecimal value = to == Unit.ONE ? base : to.fromBase(base);
        BigDecimal plain = value.round(new java.math.MathContext(12)).stripTrailingZeros();
        return plain.scale() < 0 ? plain.setScale(0) : plain;
    }

    /** Ticks of an amount written by a user, to the nearest tick, halves up. */
    public long ticks(Amount amount) {
        return unit.fromBase(amount.base()).divide(step, 0, RoundingMode.HALF_UP).longValueExact();
    }

    /** Ticks of a value in the base unit, to the nearest tick. @throws IllegalArgumentException where it is not finite */
    public long ticks(double base) {
        if (!Double.isFinite(base)) {
            throw new IllegalArgumentException("not finite: " + base);
        }
        return Math.round(unit.fromBase(base) / step.doubleValue());
    }

    /** The value of a number of ticks, in the shown unit. */
    public double shown(long ticks) {
        return step.multiply(BigDecimal.valueOf(ticks)).doubleValue();
    }

    /** The value of a number of ticks, in the base unit of the dimension. */
    public double base(long ticks) {
        return unit.toBase(step.multiply(BigDecimal.valueOf(ticks))).doubleValue();
    }

    /** The value as text with its unit, minutes as hours and minutes: {@code 84.0 km}, {@code 6:30 h}, {@code 12 %}. */
    public String text(long ticks) {
        if (unit == Unit.MIN) {
            return clock(ticks);
        }
        String number = number(ticks);
        return unit.symbol().isEmpty() ? number : number + " " + unit.symbol();
    }

    /** The bare number as text, without its unit. */
    public String number(long ticks) {
        BigDecimal value = step.multiply(BigDecimal.valueOf(ticks));
        boolean tenths = unit == Unit.BAR && value.compareTo(TENTHS_FROM) >= 0 && value.stripTrailingZeros().scale() <= 1;
        return value.setScale(tenths ? 1 : decimals, RoundingMode.HALF_UP).toPlainString();
    }

    private String clock(long ticks) {
        long minutes = Math.round(Math.abs(base(ticks)) / 60);
        long rest = minutes % 60;
        return (ticks < 0 ? "-" : "") + minutes / 60 + (rest < 10 ? ":0" : ":") + rest + " h";
    }
}
