package courseworthy.report;

import courseworthy.problem.TextSanitiser;
import java.util.List;

/**
 * A page for the terminal, {@link Columns#PAGE} columns wide. Whatever is put on it is made harmless first. Emphasis is bold,
 * faint and one colour for what needs attention; without colours the page reads the same.
 */
public final class Page {

    /** How a piece of text stands out. */
    public enum Weight {
        PLAIN(""), BOLD("1"), FAINT("2"), ALERT("1;33");

        private final String code;

        Weight(String code) {
            this.code = code;
        }
    }

    private final StringBuilder out = new StringBuilder(16_384);
    private final boolean colours;

    public Page(boolean colours) {
        this.colours = colours;
    }

    /** An empty line, except at the top. */
    public void gap() {
        if (out.length() > 0) {
            out.append('\n');
        }
    }

    /** A heading, with a gap above it. */
    public void heading(String text) {
        gap();
        styled(Columns.shorten(TextSanitiser.line(text), Columns.PAGE), Weight.BOLD);
        out.append('\n');
    }

    /** A line with something at its right end; the left is shortened where both do not fit. */
    public void spread(String left, String right, Weight weight) {
        String end = Columns.shorten(TextSanitiser.line(right), Columns.PAGE / 2);
        int room = Columns.PAGE - Columns.width(end) - (end.isEmpty() ? 0 : 2);
        String start = Columns.shorten(TextSanitiser.line(left), room);
        styled(start, weight);
        if (!end.isEmpty()) {
            out.append(" ".repeat(Columns.PAGE - Columns.width(start) - Columns.width(end))).append(end);
        }
        out.append('\n');
    }

    /** A paragraph, wrapped: the first line indented by {@code indent}, the others by {@code hang}. */
    public void text(int indent, int hang, String text, Weight weight) {
        paragraph(" ".repeat(indent), hang, text, weight);
    }

    /** A paragraph, wrapped, after a mark of its own. */
    void marked(String mark, String text, Weight weight) {
        paragraph(mark, mark.length(), text, weight);
    }

    /** A paragraph whose first words stand out. */
    void led(int indent, int hang, String lead, String rest) {
        String first = TextSanitiser.line(lead);
        int left = first.length();
        String start = " ".repeat(indent);
        for (String line : Columns.wrap(first + " " + TextSanitiser.line(rest), Columns.PAGE - Math.max(indent, hang))) {
            int bold = Math.min(left, line.length());
            out.append(start);
            styled(line.substring(0, bold), Weight.BOLD);
            out.append(line, bold, line.length()).append('\n');
            left = Math.max(0, left - line.length() - 1);
            start = " ".repeat(hang);
        }
    }

    private void paragraph(String start, int hang, String text, Weight weight) {
        int room = Columns.PAGE - Math.max(start.length(), hang);
        String lead = start;
        for (String line : Columns.wrap(TextSanitiser.line(text), room)) {
            out.append(lead);
            styled(line, weight);
            out.append('\n');
            lead = " ".repeat(hang);
        }
    }

    /**
     * A row of three columns, the middle one wrapped.
     *
     * @param name  what, {@code nameColumns} wide
     * @param value the value
     * @param end   right column; may be empty
     */
    public void row(String name, int nameColumns, String value, Weight weight, String end, int endColumns, Weight endWeight) {
        int room = Columns.PAGE - 2 - nameColumns - endColumns;
        String label = TextSanitiser.line(name);
        if (Columns.width(label) >= nameColumns) {
            text(2, 4, label, Weight.PLAIN);
            label = "";
        }
        String right = TextSanitiser.line(end);
        for (String line : Columns.wrap(TextSanitiser.line(value), room - (endColumns > 0 ? 1 : 0))) {
            out.append("  ");
            styled(label, Weight.PLAIN);
            out.append(" ".repeat(Math.max(1, nameColumns - Columns.width(label))));
            styled(line, weight);
            if (!right.isEmpty()) {
                out.append(" ".repeat(room - Columns.width(line)));
                styled(right, endWeight);
            }
            out.append('\n');
            label = "";
            right = "";
        }
    }

    /** A line drawn by the tool itself. */
    void drawn(String line, Weight weight) {
        styled(line, weight);
        out.append('\n');
    }

    public void texts(String mark, List<String> paragraphs) {
        for (String paragraph : paragraphs) {
            marked(mark, paragraph, Weight.PLAIN);
        }
    }

    private void styled(String text, Weight weight) {
        if (colours && !weight.code.isEmpty() && !text.isEmpty()) {
            out.append("\u001b[").append(weight.code).append('m').append(text).append("\u001b[0m");
        } else {
            out.append(text);
        }
    }

    @Override
    public String toString() {
        return out.toString();
    }
}
