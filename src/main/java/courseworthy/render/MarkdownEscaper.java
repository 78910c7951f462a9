package courseworthy.render;

import java.nio.charset.StandardCharsets;
import java.util.Locale;

/** Escapes whatever CommonMark, its tables or HTML would take for markup, so that text shows as it was written. */
final class MarkdownEscaper {

    private static final String ALWAYS = "\\`*_[]{}>|~$";
    private static final String IN_ADDRESSES = "-._~:/?#@!$&'*+,;=%";

    private MarkdownEscaper() {
    }

    /** Text within a line. */
    static String text(String harmless) {
        StringBuilder out = new StringBuilder(harmless.length() + 8);
        for (int i = 0; i < harmless.length(); i++) {
            char c = harmless.charAt(i);
            if (c == '<') {
                out.append("&lt;");
            } else if (c == '&') {
                out.append("&amp;");
            } else {
                out.append(ALWAYS.indexOf(c) >= 0 || beginsAddress(harmless, i) ? "\\" : "").append(c);
            }
        }
        return out.toString();
    }

    /** Whether the character would make a plain address a link. */
    private static boolean beginsAddress(String line, int i) {
        char c = line.charAt(i);
        return c == '@' || c == ':' && line.startsWith("//", i + 1) || c == '.' && i >= 3 && line.regionMatches(true, i - 3, "www", 0, 3);
    }

    /** A line of Markdown whose first characters may not open a heading, a list or an underline. */
    static String lineStart(String markdown) {
        int opening = opening(markdown);
        return opening < 0 ? markdown : markdown.substring(0, opening) + "\\" + markdown.substring(opening);
    }

    private static int opening(String line) {
        if (!line.isEmpty() && "#+-=".indexOf(line.charAt(0)) >= 0) {
            return 0;
        }
        int digits = 0;
        while (digits < line.length() && line.charAt(digits) >= '0' && line.charAt(digits) <= '9') {
            digits++;
        }
        boolean mark = digits > 0 && digits < line.length() && (line.charAt(digits) == '.' || line.charAt(digits) == ')');
        return mark && (digits + 1 == line.length() || line.charAt(digits + 1) == ' ') ? digits : -1;
    }

    /** A fence of backticks longer than any in a text. */
    static String fence(String text, int least) {
        int longest = 0;
        int run = 0;
        for (int i = 0; i < text.length(); i++) {
            run = text.charAt(i) == '`' ? run + 1 : 0;
            longest = Math.max(longest, run);
        }
        return "`".repeat(Math.max(least, longest + 1));
    }

    /** The target of a link; what may not stand in an address is written in per cent signs (RFC 3986, section 2.1). */
    static String target(String target) {
        StringBuilder out = new StringBuilder();
        for (byte each : target.getBytes(StandardCharsets.UTF_8)) {
            char c = (char) (each & 0xff);
            boolean plain = c < 0x80 && Character.isLetterOrDigit(c) || IN_ADDRESSES.indexOf(c) >= 0;
            out.append(plain ? String.valueOf(c) : "%" + hex(c >> 4) + hex(c & 0xf));
        }
        return out.toString();
    }

    private static String hex(int digit) {
        return Integer.toHexString(digit).toUpperCase(Locale.ROOT);
    }
}
