package courseworthy.problem;

/** Makes text from files and command lines safe to show: it may carry sequences that a terminal would obey. */
public final class TextSanitiser {

    private TextSanitiser() {
    }

    /**
     * Control characters other than line feed and tab, and the bidirectional controls of Unicode (which reorder what is
     * shown), become {@code \}{@code uXXXX}.
     */
    public static String text(String hostile) {
        StringBuilder out = new StringBuilder(hostile.length());
        for (int i = 0; i < hostile.length(); i++) {
            char c = hostile.charAt(i);
            if (obeyed(c)) {
                String hex = Integer.toHexString(c);
                out.append("\\u").append("0".repeat(4 - hex.length())).append(hex);
            } else {
                out.append(c);
            }
        }
        return out.toString();
    }

    /** As {@link #text}, on one line: line feeds, tabs and runs of spaces become one space; half a surrogate pair becomes U+FFFD. */
    public static String line(String hostile) {
        return text(onOneLine(hostile).strip());
    }

    /** As {@link #line} for a part of a line: a space at its beginning or end is kept. */
    public static String span(String hostile) {
        return text(onOneLine(hostile));
    }

    private static String onOneLine(String hostile) {
        StringBuilder out = new StringBuilder(hostile.length());
        for (int i = 0; i < hostile.length(); i++) {
            char c = hostile.charAt(i);
            boolean space = c == ' ' || c == '\t' || c == '\n' || c == '\r' || c == '\u2028' || c == '\u2029' || c == '\u0085';
            boolean after = out.length() > 0 && out.charAt(out.length() - 1) == ' ';
            if (!space) {
                out.append(paired(hostile, i) ? c : '\ufffd');
            } else if (!after) {
                out.append(' ');
            }
        }
        return out.toString();
    }

    private static boolean paired(String text, int i) {
        char c = text.charAt(i);
        if (Character.isHighSurrogate(c)) {
            return i + 1 < text.length() && Character.isLowSurrogate(text.charAt(i + 1));
        }
        return !Character.isLowSurrogate(c) || i > 0 && Character.isHighSurrogate(text.charAt(i - 1));
    }

    private static boolean obeyed(char c) {
        boolean control = Character.isISOControl(c) && c != '\n' && c != '\t';
        return control || reorders(c);
    }

    /** Whether a character turns or embeds the direction of the text around it (Unicode Standard Annex 9, marks and explicit formatting). */
    public static boolean reorders(int c) {
        return c == 0x200e || c == 0x200f || c == 0x061c || c >= 0x202a && c <= 0x202e || c >= 0x2066 && c <= 0x2069;
    }
}
