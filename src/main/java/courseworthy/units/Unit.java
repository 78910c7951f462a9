package courseworthy.units;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;

/**
 * A unit that files and output use, with its exact factor to the base unit of its dimension (metre, kilogram, second, metre per
 * second, pascal, watt, degree Celsius, one, per minute, litre, degree of arc). US customary factors are exact by definition:
 * international yard and pound agreement of 1959 (1 ft = 0.3048 m, 1 lb = 0.45359237 kg); 1 psi = 1 lbf/in2 = 6894.757293168 Pa
 * with g = 9.80665 m/s2; 1 US fl oz = 29.5735295625 ml (NIST SP 811, from memory).
 */
public enum Unit {
    KM("km", Dimension.LENGTH, "1000"), MI("mi", Dimension.LENGTH, "1609.344"), M("m", Dimension.LENGTH, "1"),
    FT("ft", Dimension.LENGTH, "0.3048"), CM("cm", Dimension.LENGTH, "0.01"), MM("mm", Dimension.LENGTH, "0.001"),
    IN("in", Dimension.LENGTH, "0.0254"),
    KG("kg", Dimension.MASS, "1"), LB("lb", Dimension.MASS, "0.45359237"), G("g", Dimension.MASS, "0.001"),
    DAYS("days", Dimension.TIME, "86400"), H("h", Dimension.TIME, "3600"), MIN("min", Dimension.TIME, "60"), S("s", Dimension.TIME, "1"),
    M_PER_S("m/s", Dimension.SPEED, "1"), KM_PER_H("km/h", Dimension.SPEED, "1000", "3600"),
    MPH("mph", Dimension.SPEED, "0.44704"),
    BAR("bar", Dimension.PRESSURE, "100000"), PSI("psi", Dimension.PRESSURE, "6894.757293168"),
    KPA("kPa", Dimension.PRESSURE, "1000"), HPA("hPa", Dimension.PRESSURE, "100"),
    W("W", Dimension.POWER, "1"), C("C", Dimension.TEMPERATURE, "1"), F("F", Dimension.TEMPERATURE, "5", "9"),
    PERCENT("%", Dimension.SHARE, "0.01"), ONE("", Dimension.NUMBER, "1"), RATIO("", Dimension.RATIO, "1"),
    RPM("rpm", Dimension.CADENCE, "1"), PER_MIN("/min", Dimension.CADENCE, "1"), L("L", Dimension.VOLUME, "1"), ML("ml", Dimension.VOLUME, "0.001"),
    FL_OZ("fl oz", Dimension.VOLUME, "0.0295735295625"), DEG("deg", Dimension.ANGLE, "1"),
    W_PER_KG("W/kg", Dimension.POWER_PER_MASS, "1"), G_PER_H("g/h", Dimension.MASS_PER_TIME, "1");

    /** 0 degrees Celsius in degrees Fahrenheit, by definition. */
    private static final BigDecimal FREEZING = BigDecimal.valueOf(32);

    private final String symbol;
    private final Dimension dimension;
    private final BigDecimal factor;
    private final BigDecimal divisor;
    /** One over the factor, where that is a power of ten; else null. To multiply is quicker than to divide. */
    private final BigDecimal inverse;

    Unit(String symbol, Dimension dimension, String factor) {
        this(symbol, dimension, factor, "1");
    }

    Unit(String symbol, Dimension dimension, String factor, String divisor) {
        this.symbol = symbol;
        this.dimension = dimension;
        this.factor = new BigDecimal(factor);
        this.divisor = new BigDecimal(divisor);
        this.inverse = inverse(this.factor);
    }

    private static BigDecimal inverse(BigDecimal factor) {
        boolean powerOfTen = factor.stripTrailingZeros().unscaledValue().equals(BigInteger.ONE);
        return powerOfTen ? BigDecimal.ONE.divide(factor) : null;
    }

    public String symbol() {
        return symbol;
    }

    public Dimension dimension() {
        return dimension;
    }

    /** How many base units it is, once divided by {@link #divisor()}. */
    BigDecimal factor() {
        return factor;
    }

    BigDecimal divisor() {
        return divisor;
    }

    /** What is written in this unit for nought base units. */
    BigDecimal zero() {
        return this == F ? FREEZING : BigDecimal.ZERO;
    }

    /** A number in this unit, in the base unit of its dimension; exact except for km/h and F, which keep 34 digits. */
    public BigDecimal toBase(BigDecimal number) {
        BigDecimal shifted = this == F ? number.subtract(FREEZING) : number;
        BigDecimal product = shifted.multiply(factor);
        return divisor.equals(BigDecimal.ONE) ? product : product.divide(divisor, MathContext.DECIMAL128);
    }

    /** A number in the base unit of this dimension, in this unit, to 34 digits. */
    public BigDecimal fromBase(BigDecimal base) {
        BigDecimal product = base.multiply(divisor);
        BigDecimal number = factor.equals(BigDecimal.ONE) ? product
                : inverse == null ? product.divide(factor, MathContext.DECIMAL128) : product.multiply(inverse, MathContext.DECIMAL128);
        return this == F ? number.add(FREEZING) : number;
    }

    /** A number in the base unit of this dimension, in this unit. */
    public double fromBase(double base) {
        double number = base * divisor.doubleValue() / factor.doubleValue();
        return this == F ? number + 32 : number;
    }

    /** A number in this unit, in the base unit of its dimension. */
    public double toBase(double number) {
        return (this == F ? number - 32 : number) * factor.doubleValue() / divisor.doubleValue();
    }

    /** The unit written so, or null. Bare numbers have no symbol and are not found here. */
    public static Unit ofSymbol(String symbol) {
        for (Unit unit : values()) {
            if (!unit.symbol.isEmpty() && unit.symbol.equals(symbol)) {
                return unit;
            }
        }
        return null;
    }

    /** The symbols accepted for a dimension, in the order of declaration. */
    public static List<String> symbolsOf(Dimension dimension) {
        List<String> out = new ArrayList<>();
        for (Unit unit : values()) {
            if (unit.dimension == dimension && !unit.symbol.isEmpty()) {
                out.add(unit.symbol);
            }
        }
        return out;
    }
}
