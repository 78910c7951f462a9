package courseworthy.render.svg;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers and times as they stand in pictures: a true minus, a thin space before the unit, the same in every locale. */
final class NumberText {

    private static final char MINUS = '\u2212';
    private static final char THIN_SPACE = '\u2009';
    private static final int MINUTES_OF_A_DAY = 24 * 60;

    private NumberText() {
    }

    /** With all its decimals: {@code 1.30}. */
    static String fixed(double value, int decimals) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
        String digits = rounded.abs().toPlainString();
        return rounded.signum() < 0 ? MINUS + digits : digits;
    }

    /** With as few decimals as it needs, up to a number of them: {@code 1.3}. */
    static String shortest(double value, int decimals) {
        return SvgWriter.fixed(value, decimals).replace('-', MINUS);
    }

    static String withUnit(String number, String unit) {
        return unit.isEmpty() ? number : number + THIN_SPACE + unit;
    }

    /** A time of day by its minutes from midnight: {@code 07:05}. The days before and after count from their own midnights. */
    static String clock(double minutes) {
        int ofDay = Math.floorMod((int) Math.round(minutes), MINUTES_OF_A_DAY);
        return twoDigits(ofDay / 60) + ":" + twoDigits(ofDay % 60);
    }

    private static String twoDigits(int number) {
        return number < 10 ? "0" + number : Integer.toString(number);
    }
}
