package courseworthy.render.calendar;

import courseworthy.problem.TextSanitiser;
import java.nio.charset.StandardCharsets;

/** Content lines of RFC 5545 (section 3.1): name, value, CR LF, folded so that none is longer than 75 octets of UTF-8. */
final class ContentLines {

    /** Most octets of a line, its end not counted. */
    private static final int LONGEST = 75;
    private static final String FOLD = "\r\n ";

    private final StringBuilder out = new StringBuilder();

    /** A line whose value is ours and needs no escape. */
    void value(String name, String value) {
        fold(name + ":" + value);
    }

    /** A line whose value is of the type TEXT (section 3.3.11), whatever stands in it. */
    void text(String name, String text) {
        fold(name + ":" + escaped(text));
    }

    /** Text without anything that would end its line. */
    static String onOneLine(String text) {
        StringBuilder line = new StringBuilder(text.length());
        text.codePoints().forEach(c -> line.appendCodePoint(c == '\n' || c == '\r' || c == '\t' || c == 0x85 || c == 0x2028 || c == 0x2029 ? ' ' : c));
        return line.toString();
    }

    private static String escaped(String text) {
        StringBuilder value = new StringBuilder(text.length());
        text.codePoints().forEach(c -> {
            if (c == '\n') {
                value.append("\\n");
            } else if (c == '\\' || c == ';' || c == ',') {
                value.append('\\').append((char) c);
            } else if (Character.getType(c) == Character.SURROGATE) {
                value.append('\ufffd');
            } else if (!isDropped(c)) {
                value.appendCodePoint(c);
            }
        });
        return value.toString();
    }

    /** Control characters, which the grammar does not allow, and those that turn or embed the direction of the text around them. */
    private static boolean isDropped(int c) {
        return Character.isISOControl(c) || TextSanitiser.reorders(c);
    }

    private void fold(String line) {
        int octets = 0;
        for (int i = 0; i < line.length(); ) {
            int c = line.codePointAt(i);
            int size = Character.toString(c).getBytes(StandardCharsets.UTF_8).length;
            if (octets + size > LONGEST) {
                out.append(FOLD);
                octets = 1;
            }
            out.appendCodePoint(c);
            octets += size;
            i += Character.charCount(c);
        }
        out.append("\r\n");
    }

    @Override
    public String toString() {
        return out.toString();
    }
}
