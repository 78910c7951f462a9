package courseworthy.claim;

import java.util.Objects;

/**
 * A fact on which a rule rested: what was tested, and what was found.
 *
 * @param measure as sheets write it, with {@code decided:} or {@code any stretch:} in front where it is one
 * @param value   what was found, as text with its unit; {@code unknown} where nothing is known
 * @param number  the same as a number in {@code unit}, or null for words
 * @param unit    the JSON unit, empty for words
 * @param test    the test as written, {@code over 18 m}
 * @param met     whether it held
 * @param near    whether the test would turn out otherwise at the low or high end of the measure's range
 */
public record TestedFact(String measure, String value, java.math.BigDecimal number, String unit, String test, boolean met, boolean near) {

    @Override
    public boolean equals(Object other) {
        return this == other || other instanceof TestedFact that && measure.equals(that.measure) && value.equals(that.value)
                && Objects.equals(number, that.number) && unit.equals(that.unit) && test.equals(that.test) && met == that.met
                && near == that.near;
    }

    @Override
    public int hashCode() {
        return (measure.hashCode() * 31 + value.hashCode()) * 31 + test.hashCode();
    }
}
