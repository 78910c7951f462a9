package courseworthy.brief;

import courseworthy.problem.Harmless;
import java.util.List;

/** A Markdown page (CommonMark with tables). Text from files is escaped, so that it shows as it was written and nothing else. */
final class Marked {

    private static final String ALWAYS = "\\`*_[]{}>|~$";

    private final StringBuilder out = new StringBuilder(16_384);

    void heading(int level, String text) {
        if (out.length() > 0) {
            out.append('\n');
        }
        out.append("#".repeat(level)).append(' ').append(safe(text)).append("\n\n");
    }

    void paragraph(String text) {
        out.append(safe(text)).append("\n\n");
    }

    void emphasised(String text) {
        out.append('_').append(safe(text)).append("_\n\n");
    }

    void bullet(String text) {
        out.append("- ").append(safe(text)).append('\n');
    }

    /** A bullet whose first words stand out. */
    void bullet(String bold, String text) {
        out.append("- **").append(safe(bold)).append("** ").append(safe(text)).append('\n');
    }

    /** A box to tick, the value to find below it. */
    void box(String bold, List<String> below) {
        out.append("- [ ] **").append(safe(bold)).append("**");
        for (String line : below) {
            out.append("  \n  ").append(safe(line));
        }
        out.append('\n');
    }

    void tableHead(String... cells) {
        tableRow(cells);
        out.append("|").append(" --- |".repeat(cells.length)).append('\n');
    }

    void tableRow(String... cells) {
        out.append('|');
        for (String cell : cells) {
            out.append(' ').append(safe(cell)).append(" |");
        }
        out.append('\n');
    }

    void gap() {
        out.append('\n');
    }

    /** The text on one line, with every character that Markdown or HTML could take for its own escaped. */
    static String safe(String text) {
        String line = Harmless.line(text);
        StringBuilder out = new StringBuilder(line.length() + 8);
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            if (c == '<') {
                out.append("&lt;");
            } else if (c == '&') {
                out.append("&amp;");
            } else {
                out.append(ALWAYS.indexOf(c) >= 0 || opens(line, i) || links(line, i) ? "\\" : "").append(c);
            }
        }
        return out.toString();
    }

    /** Whether the character would open a heading, a list or a quote: at the front, or after digits there. */
    private static boolean opens(String line, int i) {
        char c = line.charAt(i);
        if (i == 0) {
            return c == '#' || c == '+' || c == '-' || c == '=' || c == '>';
        }
        return (c == '.' || c == ')') && digits(line, i);
    }

    private static boolean digits(String line, int to) {
        for (int i = 0; i < to; i++) {
            if (line.charAt(i) < '0' || line.charAt(i) > '9') {
                return false;
            }
        }
        return true;
    }

    /** Whether the character would make a plain address a link. */
    private static boolean links(String line, int i) {
        char c = line.charAt(i);
        return c == '@' || c == ':' && line.startsWith("//", i + 1) || c == '.' && i >= 3 && line.regionMatches(true, i - 3, "www", 0, 3);
    }

    @Override
    public String toString() {
        return out.toString();
    }
}
