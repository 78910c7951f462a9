package courseworthy.course;

/** Reads decimal numbers of XML files: {@code xsd:decimal}, and an exponent where a writer used one. */
public final class XmlDecimal {

    /** Powers of ten that a double holds exactly. */
    private static final double[] TENS = new double[23];

    static {
        double ten = 1;
        for (int i = 0; i < TENS.length; i++) {
            TENS[i] = ten;
            ten *= 10;
        }
    }

    private XmlDecimal() {
    }

    /**
     * The number, or NaN where the text is not one or is not finite. Up to 15 digits are read exactly as the nearest double, since
     * both the digits and the power of ten are exact; longer ones by the JDK.
     */
    public static double of(String text) {
        int from = 0;
        int end = text.length();
        while (from < end && text.charAt(from) <= ' ') {
            from++;
        }
        while (end > from && text.charAt(end - 1) <= ' ') {
            end--;
        }
        return of(text, from, end);
    }

    private static double of(String text, int from, int end) {
        int at = from;
        boolean minus = at < end && text.charAt(at) == '-';
        if (minus || at < end && text.charAt(at) == '+') {
            at++;
        }
        long digits = 0;
        int count = 0;
        int places = 0;
        boolean point = false;
        boolean any = false;
        for (; at < end; at++) {
            char c = text.charAt(at);
            if (c == '.' && !point) {
                point = true;
            } else if (c >= '0' && c <= '9') {
                any = true;
                digits = digits * 10 + (c - '0');
                count += digits == 0 ? 0 : 1;
                places += point ? 1 : 0;
                if (count > 15 || places >= TENS.length) {
                    return slow(text.substring(from, end));
                }
            } else {
                return any && (c == 'e' || c == 'E') ? slow(text.substring(from, end)) : Double.NaN;
            }
        }
        if (!any) {
            return Double.NaN;
        }
        double value = digits / TENS[places];
        return minus ? -value : value;
    }

    private static double slow(String text) {
        for (int i = 0; i < text.length(); i++) {
            if ("0123456789+-.eE".indexOf(text.charAt(i)) < 0) {
                return Double.NaN;
            }
        }
        try {
            double value = Double.parseDouble(text);
            return Double.isFinite(value) ? value : Double.NaN;
        } catch (NumberFormatException e) {
            return Double.NaN;
        }
    }
}
