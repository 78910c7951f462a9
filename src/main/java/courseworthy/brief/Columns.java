package courseworthy.brief;

import java.util.ArrayList;
import java.util.List;

/** How wide text is in a terminal, and where it breaks. */
final class Columns {

    /** Width of a page in columns. */
    static final int PAGE = 80;

    private Columns() {
    }

    /** Columns of a text: combining marks take none, East Asian wide characters and pictographs take two. */
    static int width(String text) {
        int sum = 0;
        for (int i = 0; i < text.length(); ) {
            int c = text.codePointAt(i);
            sum += width(c);
            i += Character.charCount(c);
        }
        return sum;
    }

    private static int width(int c) {
        if (c < 0x300) {
            return 1;
        }
        int type = Character.getType(c);
        if (type == Character.NON_SPACING_MARK || type == Character.ENCLOSING_MARK || type == Character.FORMAT) {
            return 0;
        }
        boolean wide = c >= 0x1100 && c <= 0x115f || c >= 0x2e80 && c <= 0xa4cf || c >= 0xac00 && c <= 0xd7a3
                || c >= 0xf900 && c <= 0xfaff || c >= 0xfe30 && c <= 0xfe6f || c >= 0xff00 && c <= 0xff60
                || c >= 0xffe0 && c <= 0xffe6 || c >= 0x1f300 && c <= 0x1faff || c >= 0x20000 && c <= 0x3fffd;
        return wide ? 2 : 1;
    }

    /** The text broken at spaces into lines of at most some columns; a word that is too long is cut. */
    static List<String> wrap(String text, int columns) {
        List<String> out = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        int used = 0;
        int from = 0;
        while (from <= text.length()) {
            int space = text.indexOf(' ', from);
            int to = space < 0 ? text.length() : space;
            String word = text.substring(from, to);
            int wide = width(word);
            if (used > 0 && used + 1 + wide > columns) {
                out.add(line.toString());
                line.setLength(0);
                used = 0;
            }
            while (wide > columns) {
                int cut = fitting(word, columns);
                out.add(word.substring(0, cut));
                word = word.substring(cut);
                wide = width(word);
            }
            if (used > 0) {
                line.append(' ');
                used++;
            }
            line.append(word);
            used += wide;
            from = to + 1;
        }
        if (used > 0 || out.isEmpty()) {
            out.add(line.toString());
        }
        return out;
    }

    /** The text, or as much of it as fits with an ellipsis. */
    static String shorten(String text, int columns) {
        return width(text) <= columns ? text : text.substring(0, fitting(text, columns - 1)) + "\u2026";
    }

    /** How many characters from the front fit; at least one code point. */
    private static int fitting(String text, int columns) {
        int used = 0;
        int at = 0;
        while (at < text.length()) {
            int c = text.codePointAt(at);
            used += width(c);
            if (used > columns && at > 0) {
                break;
            }
            at += Character.charCount(c);
        }
        return at;
    }
}
