package courseworthy.text;

import java.time.DateTimeException;
import java.time.LocalDate;

/**
 * Days as files and options write them: {@code 2026-05-09}. Years run from 1901 to 2099, for which the sun's place is worked out (NOAA solar
 * calculations, spreadsheets "valid for dates between 1901 and 2099"); other years are slips.
 */
public final class Dates {

    /** What is accepted, in words. */
    public static final String EXPECTED = "a day as YYYY-MM-DD, such as 2026-05-09";
    /** The years there are, in words. */
    public static final String YEARS = "Years run from 1901 to 2099.";

    private static final int FIRST_YEAR = 1901;
    private static final int LAST_YEAR = 2099;
    private static final String FORM = "dddd-dd-dd";

    private Dates() {
    }

    /** The day, or null where it has another form, the calendar has none such, or the year is out of range. */
    public static LocalDate of(String text) {
        if (!hasForm(text)) {
            return null;
        }
        int year = number(text, 0, 4);
        try {
            return year < FIRST_YEAR || year > LAST_YEAR ? null : LocalDate.of(year, number(text, 5, 7), number(text, 8, 10));
        } catch (DateTimeException none) {
            return null;
        }
    }

    /** How to mend a text that is no day; empty where its form is another. */
    public static String mend(String text) {
        if (!hasForm(text)) {
            return "";
        }
        int year = number(text, 0, 4);
        return year < FIRST_YEAR || year > LAST_YEAR ? YEARS : "The calendar has no such day.";
    }

    private static boolean hasForm(String text) {
        boolean same = text.length() == FORM.length();
        for (int i = 0; same && i < FORM.length(); i++) {
            char c = text.charAt(i);
            same = FORM.charAt(i) == 'd' ? c >= '0' && c <= '9' : c == FORM.charAt(i);
        }
        return same;
    }

    private static int number(String text, int from, int to) {
        int out = 0;
        for (int i = from; i < to; i++) {
            out = out * 10 + text.charAt(i) - '0';
        }
        return out;
    }
}
