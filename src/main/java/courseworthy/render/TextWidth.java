package courseworthy.render;

/** The width of text in a terminal, in columns. */
public final class TextWidth {

    private TextWidth() {
    }

    /** Columns of a text: combining marks take none, East Asian wide characters and pictographs take two. */
    public static int of(CharSequence text) {
        int sum = 0;
        for (int i = 0; i < text.length(); ) {
            int c = Character.codePointAt(text, i);
            sum += of(c);
            i += Character.charCount(c);
        }
        return sum;
    }

    private static int of(int c) {
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

    /** The index after the last character that fits into some columns; after the first one at least. */
    static int fitting(CharSequence text, int from, int columns) {
        int used = 0;
        int at = from;
        while (at < text.length()) {
            int c = Character.codePointAt(text, at);
            used += of(c);
            if (used > columns && at > from) {
                break;
            }
            at += Character.charCount(c);
        }
        return at;
    }
}
