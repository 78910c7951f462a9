package courseworthy.report;

import courseworthy.problem.TextSanitiser;
import java.util.List;

/** A Markdown page (CommonMark with tables). Text from files is escaped, so that it shows as it was written and nothing else. */
public final class Marked {

    private static final String ALWAYS = "\\`*_[]{}>|~$";

    private final StringBuilder out = new StringBuilder(16_384);

    public void heading(int level, String text) {
        int end = out.length();
        if (end > 0 && !(end > 1 && out.charAt(end - 1) == '\n' && out.charAt(end - 2) == '\n')) {
            out.append('\n');
        }
        out.append("#".repeat(level)).append(' ').append(safe(text)).append("\n\n");
    }

    public void paragraph(String text) {
        out.append(safe(text)).append("\n\n");
    }

    public void emphasised(String text) {
        out.append('_').append(inside(text)).append("_\n\n");
    }

    public void bullet(String text) {
        out.append("- ").append(safe(text)).append('\n');
    }

    /** A bullet whose first words stand out. */
    void bullet(String bold, String text) {
        out.append("- **").append(inside(bold)).append("** ").append(inside(text)).append('\n');
    }

    /** A bullet that begins with a link. */
    void link(String text, String to, String about) {
        out.append("- [").append(inside(text)).append("](").append(to).append("): ").append(inside(about)).append('\n');
    }

    /** Lines of a file, as they are. */
    void code(String lines) {
        out.append("```yaml\n").append(lines).append("\n```\n\n");
    }

    /** A bullet with bullets below it. */
    public void bullet(String text, List<String> below) {
        bullet(text);
        for (String line : below) {
            out.append("  - ").append(safe(line)).append('\n');
        }
    }

    /** A box to tick, the value to find below it. */
    void box(String bold, List<String> below) {
        out.append("- [ ] **").append(inside(bold)).append("**");
        for (String line : below) {
            out.append("  \n  ").append(safe(line));
        }
        out.append('\n');
    }

    public void tableHead(String... cells) {
        tableRow(cells);
        out.append("|").append(" --- |".repeat(cells.length)).append('\n');
    }

    public void tableRow(String... cells) {
        out.append('|');
        for (String cell : cells) {
            out.append(' ').append(inside(cell)).append(" |");
        }
        out.append('\n');
    }

    public void gap() {
        out.append('\n');
    }

    /** The text on one line, with every character that Markdown or HTML could take for its own escaped. */
    static String safe(String text) {
        String line = TextSanitiser.line(text);
        int opening = opening(line);
        return opening < 0 ? escaped(line) : escaped(line.substring(0, opening)) + "\\" + escaped(line.substring(opening));
    }

    /** As {@link #safe}, where something of ours stands before it in the same line. */
    private static String inside(String text) {
        return escaped(TextSanitiser.line(text));
    }

    private static String escaped(String line) {
        StringBuilder out = new StringBuilder(line.length() + 8);
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            if (c == '<') {
                out.append("&lt;");
            } else if (c == '&') {
                out.append("&amp;");
            } else {
                out.append(ALWAYS.indexOf(c) >= 0 || links(line, i) ? "\\" : "").append(c);
            }
        }
        return out.toString();
    }

    /** Where the character stands that would open a heading or a list, -1 where none does. */
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
