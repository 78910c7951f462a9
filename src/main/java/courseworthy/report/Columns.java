package courseworthy.report;

import courseworthy.units.Unit;
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

    /** The text broken at spaces into lines of at most some columns; a number keeps its unit, a word that is too long is cut. */
    static List<String> wrap(String text, int columns) {
        List<String> out = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : words(text)) {
            if (line.length() > 0 && width(line.toString()) + 1 + width(word) > columns) {
                out.add(line.toString());
                line.setLength(0);
            }
            String rest = word;
            while (width(rest) > columns) {
                int cut = fitting(rest, columns);
                out.add(rest.substring(0, cut));
                rest = rest.substring(cut);
            }
            line.append(line.length() == 0 ? "" : " ").append(rest);
        }
        if (line.length() > 0 || out.isEmpty()) {
            out.add(line.toString());
        }
        return out;
    }

    private static List<String> words(String text) {
        List<String> out = new ArrayList<>();
        int from = 0;
        while (from <= text.length()) {
            int space = text.indexOf(' ', from);
            int to = space < 0 ? text.length() : space;
            String word = text.substring(from, to);
            int last = out.size() - 1;
            if (last >= 0 && isUnit(word) && endsInDigit(out.get(last))) {
                out.set(last, out.get(last) + " " + word);
            } else {
                out.add(word);
            }
            from = to + 1;
        }
        return out;
    }

    private static boolean isUnit(String word) {
        int end = word.length();
        while (end > 0 && ".,;:)".indexOf(word.charAt(end - 1)) >= 0) {
            end--;
        }
        return Unit.ofSymbol(word.substring(0, end)) != null;
    }

    private static boolean endsInDigit(String word) {
        return !word.isEmpty() && word.charAt(word.length() - 1) >= '0' && word.charAt(word.length() - 1) <= '9';
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
