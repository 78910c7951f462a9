package courseworthy.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number with its unit, as a user wrote it: {@code 84 km}, {@code 2.25 in}, {@code 6:30 h}, {@code 34x50}, {@code 0.68}.
 *
 * @param base the value in the base unit of the dimension (see {@link Unit})
 * @param unit the unit it was written in
 */
public record Amount(BigDecimal base, Unit unit) {

    /** Digits are counted before they are read: any such number fits where it goes, and to read a million digits takes minutes. */
    private static final String NUMBER = "-?(?:0|[1-9][0-9]{0,8})(?:\\.[0-9]{1,20})?";
    private static final Pattern TOO_MANY_DIGITS = Pattern.compile("-?(?:[0-9]{10}|[0-9]*\\.[0-9]{21})");
    private static final Pattern WITH_UNIT = Pattern.compile("(" + NUMBER + ") ([^ ].*)");
    private static final Pattern CLOCK = Pattern.compile("(0|[1-9][0-9]{0,3}):([0-5][0-9]) h");
    private static final Pattern TEETH = Pattern.compile("([1-9][0-9]?)x([1-9][0-9]?)");
    /** Teeth as they are also written; {@code 50/34} is two chainrings. */
    private static final Pattern OTHER_TEETH = Pattern.compile("([1-9][0-9]?) ?[/xX\u00d7] ?([1-9][0-9]?)");
    private static final Pattern BARE = Pattern.compile(NUMBER);
    /**
     * Units of which thousands are ordinary and thousandths are not, so that the point in {@code 1.500 m} may stand between thousands, as
     * much of the world writes them. Kilometres, miles, kilograms, pounds, litres, hours, bars, degrees and gears have third decimals of
     * sense, and inches are written to the eighth ({@code 1.125 in}); nobody means a thousand of them. Judgement, no source.
     */
    private static final Set<Unit> BY_THE_THOUSAND = EnumSet.of(Unit.M, Unit.FT, Unit.CM, Unit.MM, Unit.G, Unit.W, Unit.ML, Unit.FL_OZ, Unit.S,
            Unit.MIN, Unit.HPA, Unit.KPA, Unit.G_PER_H);
    private static final String GROUPED = "[1-9][0-9]{0,2}\\.[0-9]{3}";
    private static final Pattern IN_GROUPS = Pattern.compile("-?" + GROUPED);

    /** Why a text is not an amount; the message completes "found X, expected ...". */
    public static final class NotAnAmount extends Exception {

        private static final long serialVersionUID = 1L;

        NotAnAmount(String expected) {
            super(expected, null, false, false);
        }
    }

    /**
     * Reads an amount of a dimension: one space between number and unit; a bare number only for {@link Dimension#NUMBER} and
     * {@link Dimension#RATIO}; {@code h:mm h} for times; teeth {@code 34x50} for ratios. Three decimals of a unit that is counted by the
     * thousand are refused, since they may as well be thousands.
     *
     * @throws NotAnAmount with what would be right
     */
    public static Amount parse(String raw, Dimension dimension) throws NotAnAmount {
        if (dimension == Dimension.NUMBER || dimension == Dimension.RATIO) {
            return parseBare(raw, dimension);
        }
        Matcher clock = CLOCK.matcher(raw);
        if (dimension == Dimension.TIME && clock.matches()) {
            long minutes = Long.parseLong(clock.group(1)) * 60 + Long.parseLong(clock.group(2));
            return new Amount(BigDecimal.valueOf(minutes * 60), Unit.H);
        }
        Matcher written = WITH_UNIT.matcher(raw);
        if (!written.matches()) {
            throw new NotAnAmount(expected(dimension));
        }
        Unit unit = Unit.ofSymbol(written.group(2));
        if (unit == null || unit.dimension() != dimension || BY_THE_THOUSAND.contains(unit) && inGroups(written.group(1))) {
            throw new NotAnAmount(expected(dimension));
        }
        return new Amount(unit.toBase(new BigDecimal(written.group(1))), unit);
    }

    /** Whether the point of a number may stand between thousands: one to three digits before it, three behind it. */
    public static boolean inGroups(String number) {
        return IN_GROUPS.matcher(number).matches();
    }

    /** Which of two amounts is meant, {@code Do you mean 1500 m or 1.5 m?}; empty where three decimals leave no doubt. */
    public static String question(String raw) {
        Matcher written = WITH_UNIT.matcher(raw);
        boolean bare = inGroups(raw);
        if (!bare && !(written.matches() && BY_THE_THOUSAND.contains(Unit.ofSymbol(written.group(2))) && inGroups(written.group(1)))) {
            return "";
        }
        String number = bare ? raw : written.group(1);
        String unit = bare ? "" : " " + written.group(2);
        String decimal = new BigDecimal(number).setScale(2, RoundingMode.HALF_UP).stripTrailingZeros().toPlainString();
        return "Do you mean " + number.replace(".", "") + unit + " or " + decimal + unit + "?";
    }

    /** How to write a gear whose teeth were written in another way, {@code Did you mean "34x50"?}; else empty. */
    public static String teethQuestion(String raw) {
        Matcher teeth = OTHER_TEETH.matcher(raw);
        return !TEETH.matcher(raw).matches() && teeth.matches() ? "Did you mean \"" + teeth.group(1) + "x" + teeth.group(2) + "\"?" : "";
    }

    private static Amount parseBare(String raw, Dimension dimension) throws NotAnAmount {
        Matcher teeth = TEETH.matcher(raw);
        if (dimension == Dimension.RATIO && teeth.matches()) {
            BigDecimal ratio = new BigDecimal(teeth.group(1)).divide(new BigDecimal(teeth.group(2)), MathContext.DECIMAL128);
            return new Amount(ratio, Unit.RATIO);
        }
        if (!BARE.matcher(raw).matches()) {
            throw new NotAnAmount(expected(dimension));
        }
        return new Amount(new BigDecimal(raw), dimension == Dimension.RATIO ? Unit.RATIO : Unit.ONE);
    }

    /** Whether a text starts with a number of more digits than are read: nine before the point, twenty after it. */
    public static boolean hasTooManyDigits(String raw) {
        return TOO_MANY_DIGITS.matcher(raw).lookingAt();
    }

    /** A regular expression, in the part that Java and ECMAScript share, for the texts that {@link #parse} accepts. */
    public static String pattern(Dimension dimension) {
        if (dimension == Dimension.NUMBER) {
            return NUMBER;
        }
        if (dimension == Dimension.RATIO) {
            return "(?:" + NUMBER + "|" + bare(TEETH) + ")";
        }
        String withUnit = doubtful(dimension) + NUMBER + " (?:" + String.join("|", Unit.symbolsOf(dimension)) + ")";
        return dimension == Dimension.TIME ? "(?:" + withUnit + "|" + bare(CLOCK) + ")" : withUnit;
    }

    /** Looks ahead for what may be thousands; empty where no unit of the dimension is counted by them. */
    private static String doubtful(Dimension dimension) {
        List<String> symbols = new ArrayList<>();
        for (Unit unit : BY_THE_THOUSAND) {
            if (unit.dimension() == dimension) {
                symbols.add(unit.symbol());
            }
        }
        return symbols.isEmpty() ? "" : "(?!-?" + GROUPED + " (?:" + String.join("|", symbols) + ")(?![a-z/]))";
    }

    private static String bare(Pattern pattern) {
        return pattern.pattern().replace("(?:", "(").replace("(", "(?:");
    }

    /** What is accepted for a dimension, in words, with an example. */
    public static String expected(Dimension dimension) {
        return switch (dimension) {
            case LENGTH -> "a length with its unit, such as 84 km, 52 mi, 1900 m, 6200 ft, 57 mm or 2.25 in";
            case MASS -> "a mass with its unit, such as 64 kg, 141 lb or 50 g";
            case TIME -> "a time with its unit, such as 6:30 h, 4 h, 45 min or 40 s";
            case SPEED -> "a speed with its unit, such as 5 m/s, 20 km/h or 12 mph";
            case PRESSURE -> "a pressure with its unit, such as 1.6 bar or 23 psi";
            case POWER -> "a power with its unit, such as 245 W";
            case TEMPERATURE -> "a temperature with its unit, such as 18 C or 64 F";
            case SHARE -> "a share with its sign, such as 6 %";
            case CADENCE -> "a cadence with its unit, such as 80 rpm";
            case VOLUME -> "a volume with its unit, such as 1.5 L, 750 ml or 24 fl oz";
            case ANGLE -> "an angle with its unit, such as 69 deg";
            case POWER_PER_MASS -> "a power per mass with its unit, such as 3.5 W/kg";
            case MASS_PER_TIME -> "grams an hour with their unit, such as 60 g/h";
            case RATIO -> "a gear as a ratio or as ring by sprocket, such as 0.68 or 34x50";
            case NUMBER -> "a bare number, such as 3";
        };
    }

    public double inBase() {
        return base.doubleValue();
    }
}
