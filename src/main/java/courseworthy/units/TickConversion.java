package courseworthy.units;

import java.math.BigDecimal;
import java.math.BigInteger;

/**
 * A conversion of whole ticks of one resolution, times a factor, into whole ticks of another: the exact fraction is worked out once, so
 * that each value costs a multiplication and a division of whole numbers.
 */
public final class TickConversion {

    private final Resolution to;
    private final BigInteger slope;
    private final BigInteger offset;
    private final BigInteger divisor;
    /** Whether the three fit into whole numbers that a multiplication by a value below {@link #SMALL} leaves in range. */
    private final boolean small;
    private final long smallSlope;
    private final long smallOffset;
    private final long smallDivisor;

    /** Twice a product of two numbers of 30 bits and a sum with another leave room in 63. */
    private static final long SMALL = 1L << 30;

    /** @param from of the same dimension as {@code to} */
    public TickConversion(Resolution from, BigDecimal factor, Resolution to) {
        this.to = to;
        Unit in = from.unit();
        Unit out = to.unit();
        BigDecimal perBase = in.factor().multiply(factor).multiply(out.divisor());
        BigDecimal rise = from.step().multiply(perBase);
        BigDecimal over = in.divisor().multiply(out.factor());
        BigDecimal start = out.zero().multiply(over).subtract(in.zero().multiply(perBase));
        BigDecimal each = over.multiply(to.step());
        int scale = Math.max(rise.scale(), Math.max(start.scale(), each.scale()));
        BigInteger wholeRise = whole(rise, scale);
        BigInteger wholeStart = whole(start, scale);
        BigInteger wholeEach = whole(each, scale);
        BigInteger common = wholeEach.gcd(wholeRise).gcd(wholeStart);
        slope = wholeRise.divide(common);
        offset = wholeStart.divide(common);
        divisor = wholeEach.divide(common);
        small = isSmall(slope) && isSmall(offset) && isSmall(divisor);
        smallSlope = small ? slope.longValue() : 0;
        smallOffset = small ? offset.longValue() : 0;
        smallDivisor = small ? divisor.longValue() : 1;
    }

    private static BigInteger whole(BigDecimal number, int scale) {
        return number.movePointRight(scale).toBigIntegerExact();
    }

    private static boolean isSmall(BigInteger number) {
        return number.abs().bitLength() <= 30;
    }

    /** Into what it converts. */
    public Resolution to() {
        return to;
    }

    /** The ticks of a value, to the nearest, halves away from nought, and at most so many either way. */
    public long ticks(long value, long most) {
        if (small && value > -SMALL && value < SMALL) {
            long above = smallSlope * value + smallOffset;
            long rounded = (2 * Math.abs(above) + smallDivisor) / (2 * smallDivisor);
            return Math.min(most, rounded) * Long.signum(above);
        }
        BigInteger above = slope.multiply(BigInteger.valueOf(value)).add(offset);
        BigInteger rounded = above.abs().shiftLeft(1).add(divisor).divide(divisor.shiftLeft(1));
        return rounded.min(BigInteger.valueOf(most)).longValueExact() * above.signum();
    }
}
