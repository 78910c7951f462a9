package courseworthy.render;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A figure with its unit in a line of text, such as {@code 1.20 bar}, {@code 10 to 19 C} or {@code 23 km/h (21 to 25)}.
 *
 * @param start   where it begins in the line
 * @param end     where it ends
 * @param metric  as it stands there, but with a narrow space before the unit and a true minus
 * @param spread  the range in brackets after it, written alike; empty where there is none
 * @param customary the same in customary units of the United States, without the range; empty where those who use them set and read it in metric ones
 * @param customarySpread the range in those units
 */
public record Quantity(int start, int end, String metric, String spread, String customary, String customarySpread) {

    private static final String NUMBER = "[-\u2212]?\\d{1,9}(?:\\.\\d{1,6})?";
    /** A figure, perhaps up to another; its unit; the same pressure in psi, or the range of the figure, in brackets. */
    private static final Pattern FIGURE = Pattern.compile("(?<![\\w.,:\u2212-])(" + NUMBER + ")(?: to (" + NUMBER + "))? (bar|km/h|km|mm|m|kg|L|C|W|N m|rpm|%|min|h|s|g/h|g)"
            + "(?![\\w/])(?: \\((?:(\\d{1,4}(?:\\.\\d)?) psi|(" + NUMBER + ") to (" + NUMBER + "))\\))?");

    /** A place along a course, perhaps up to another. */
    private static final Pattern PLACE = Pattern.compile("(?<![\\w.])km (" + NUMBER + ")(?: to (" + NUMBER + "))?(?![\\w.]*\\w)");
    private static final Pattern NUMBERS = Pattern.compile("(" + NUMBER + ")(?: to (" + NUMBER + "))?");
    /** What a column heads: a unit alone, or behind a name. */
    private static final Pattern HEADING = Pattern.compile("(?:.*, )?(bar|km/h|km|m|kg|L|C)");

    /** Room for the unit that no line break may part from its figure: U+202F. */
    private static final String NARROW_SPACE = "\u202f";

    private static final Map<String, Conversion> CONVERSIONS = new HashMap<>();

    static {
        // NIST Special Publication 811 (2008), appendix B.8: exact but for the pound-force per square inch, given there to 7 digits.
        CONVERSIONS.put("bar", new Conversion("psi", 1 / 0.06894757, 0));
        CONVERSIONS.put("km/h", new Conversion("mph", 1 / 1.609344, 0));
        CONVERSIONS.put("km", new Conversion("mi", 1 / 1.609344, 0));
        CONVERSIONS.put("m", new Conversion("ft", 1 / 0.3048, 0));
        CONVERSIONS.put("kg", new Conversion("lb", 1 / 0.45359237, 0));
        CONVERSIONS.put("L", new Conversion("fl oz", 1 / 0.02957353, 0));
        CONVERSIONS.put("C", new Conversion("F", 1.8, 32));
    }

    /** The next quantity at or after a place in a line; null where there is none. */
    public static Quantity next(String line, int from) {
        Matcher figure = FIGURE.matcher(line);
        Matcher place = PLACE.matcher(line);
        boolean isFigure = figure.find(from);
        if (place.find(from) && (!isFigure || place.start() < figure.start())) {
            return new Quantity(place.start(), place.end(), place.group(), "", "mile " + places(place.group(1), place.group(2)), "");
        }
        return isFigure ? of(figure) : null;
    }

    /** Kilometres as miles, a digit finer: a place is looked for on the ground. */
    private static String places(String from, String to) {
        return upTo(place(from), to == null ? null : place(to));
    }

    private static String place(String kilometres) {
        BigDecimal number = new BigDecimal(kilometres);
        return BigDecimal.valueOf(inCustomaryUnit(number.doubleValue(), "km")).setScale(Math.max(1, number.scale()), RoundingMode.HALF_EVEN).toPlainString();
    }

    /** The metric unit that the numbers of a column are in, by its heading; empty where it is not exchanged for another. */
    public static String unitOfColumn(String heading) {
        Matcher matcher = HEADING.matcher(heading);
        return matcher.matches() ? matcher.group(1) : "";
    }

    /** A number without its unit, perhaps up to another, in the customary unit; empty where the text is no such number. */
    public static String customaryNumber(String text, String unit) {
        Matcher matcher = NUMBERS.matcher(text);
        if (!matcher.matches()) {
            return "";
        }
        if (unit.equals("km")) {
            return places(matcher.group(1), matcher.group(2));
        }
        Conversion conversion = CONVERSIONS.get(unit);
        return upTo(conversion.of(matcher.group(1)), matcher.group(2) == null ? null : conversion.of(matcher.group(2)));
    }

    /** A line of text with all its figures as they are shown, no line break between a figure and its unit. */
    public static String unbroken(String line) {
        StringBuilder out = new StringBuilder();
        int at = 0;
        for (Quantity each = next(line, 0); each != null; each = next(line, at)) {
            out.append(line, at, each.start).append(each.metric.replace(' ', '\u00a0')).append(each.spread.isEmpty() ? "" : " (" + each.spread + ")");
            at = each.end;
        }
        return out.append(line.substring(at)).toString();
    }

    /** A line of text with all its figures in customary units; the line itself where it has none that differ. */
    public static String customary(String line) {
        String plain = line.replace('\u2009', ' ').replace(NARROW_SPACE, " ");
        StringBuilder out = new StringBuilder();
        int at = 0;
        for (Quantity each = next(plain, 0); each != null; each = next(plain, at)) {
            out.append(plain, at, each.start);
            if (each.customary.isEmpty()) {
                out.append(line, each.start, each.end);
            } else {
                out.append(each.customary).append(each.customarySpread.isEmpty() ? "" : " (" + each.customarySpread + ")");
            }
            at = each.end;
        }
        return at == 0 ? line : out.append(line, at, line.length()).toString();
    }

    /** The customary unit for a metric one; the same where there is no other. */
    public static String customaryUnit(String metric) {
        Conversion conversion = CONVERSIONS.get(metric);
        return conversion == null ? metric : conversion.unit();
    }

    /** A number of a metric unit as one of the customary unit, however many decimals it has. */
    public static double inCustomaryUnit(double number, String metric) {
        Conversion conversion = CONVERSIONS.get(metric);
        return conversion == null ? number : number * conversion.factor() + conversion.offset();
    }

    private static Quantity of(Matcher found) {
        String unit = found.group(3);
        Conversion conversion = CONVERSIONS.get(unit);
        String metric = upTo(minus(found.group(1)), minus(found.group(2))) + NARROW_SPACE + unit;
        String spread = found.group(5) == null ? "" : upTo(minus(found.group(5)), minus(found.group(6)));
        if (conversion == null) {
            return new Quantity(found.start(), found.end(), metric, spread, "", "");
        }
        String customary = found.group(4) != null ? found.group(4)
                : upTo(conversion.of(found.group(1)), found.group(2) == null ? null : conversion.of(found.group(2)));
        String customarySpread = spread.isEmpty() ? "" : upTo(conversion.of(found.group(5)), conversion.of(found.group(6)));
        return new Quantity(found.start(), found.end(), metric, spread, customary + NARROW_SPACE + conversion.unit(), customarySpread);
    }

    private static String upTo(String from, String to) {
        return to == null ? from : from + " to " + to;
    }

    private static String minus(String number) {
        return number == null ? null : number.replace('-', '\u2212');
    }

    /**
     * A unit that is exchanged for another.
     *
     * @param factor how many of the other unit one is, before the offset is added
     */
    private record Conversion(String unit, double factor, double offset) {

        /** Below this the next smaller power of ten is taken for the step: a step of 1 m is one of 1 ft, one of 0.1 km one of 0.1 mi. */
        private static final double ROUND_UP = 0.4;

        /** As finely as the figure was written, and no finer: a figure that ends in zeros is taken for one of tens. */
        String of(String written) {
            BigDecimal number = new BigDecimal(written.replace('\u2212', '-'));
            int scale = number.scale() > 0 ? number.scale() : number.signum() != 0 && number.unscaledValue().intValue() % 10 == 0 ? -1 : 0;
            int step = (int) Math.floor(Math.log10(Math.pow(10, -scale) * factor) + ROUND_UP);
            BigDecimal converted = BigDecimal.valueOf(number.doubleValue() * factor + offset).setScale(-step, RoundingMode.HALF_EVEN);
            return minus(converted.setScale(Math.max(0, converted.scale()), RoundingMode.UNNECESSARY).toPlainString());
        }
    }
}
