package courseworthy.course;

/** Lengths and heights in messages and notes. */
final class LengthPhrases {

    private LengthPhrases() {
    }

    /** Metres under 1 km, else kilometres: {@code 850 m}, {@code 84.2 km}. */
    static String length(double metres) {
        return metres < 1000 ? metres(metres) : tenths(metres / 1000) + " km";
    }

    /** Metres under 1 km, else kilometres to 10 m: {@code 850 m}, {@code 84.26 km}. */
    static String exactly(double metres) {
        return metres < 1000 ? metres(metres) : hundredths(metres / 1000) + " km";
    }

    /** Whole metres: {@code 1240 m}. */
    static String metres(double metres) {
        return Math.round(metres) + " m";
    }

    /** To one decimal, with none where it is zero. */
    static String tenths(double value) {
        long tenths = Math.round(Math.abs(value) * 10);
        String sign = value < 0 && tenths > 0 ? "-" : "";
        return sign + tenths / 10 + (tenths % 10 == 0 ? "" : "." + tenths % 10);
    }

    /** To two decimals, not negative: {@code 0.45}. */
    static String hundredths(double value) {
        long hundredths = Math.round(value * 100);
        long rest = hundredths % 100;
        return hundredths / 100 + (rest == 0 ? "" : rest < 10 ? ".0" + rest : "." + (rest % 10 == 0 ? rest / 10 : rest));
    }
}
