package courseworthy.render;

import courseworthy.problem.TextSanitiser;
import courseworthy.report.Style;

/** The lines of a page for the terminal. */
final class TerminalPage {

    private final StringBuilder out = new StringBuilder(16_384);
    private final int width;
    private final boolean colour;

    TerminalPage(int width, boolean colour) {
        this.width = width;
        this.colour = colour;
    }

    int width() {
        return width;
    }

    /** An empty line, except at the top and after another one. */
    void blank() {
        int end = out.length();
        boolean after = end > 1 && out.charAt(end - 1) == '\n' && out.charAt(end - 2) == '\n';
        if (end > 0 && !after) {
            out.append('\n');
        }
    }

    /** A text, wrapped, after something on its first line; the other lines are indented by as much. */
    void wrapped(String before, StyledText text) {
        wrapped(before, TextWidth.of(before), text);
    }

    /** @param hang by how much lines after the first are indented */
    void wrapped(String before, int hang, StyledText text) {
        String start = before;
        for (StyledText line : text.lines(width - Math.max(TextWidth.of(before), hang))) {
            line(start, line);
            start = " ".repeat(hang);
        }
    }

    /** One line, as it is. */
    void line(String before, StyledText text) {
        if (text.isEmpty()) {
            out.append(before.stripTrailing());
        } else {
            out.append(before);
            text.write(out, colour);
        }
        out.append('\n');
    }

    /** A line of a file with its spaces, cut into several where it is wider than the page. */
    void cut(String before, String line) {
        String text = TextSanitiser.text(line.replaceAll("[\n\u2028\u2029]", " ").replace("\t", "    ")).stripTrailing();
        int from = 0;
        do {
            int to = TextWidth.fitting(text, from, width - before.length());
            line(before, StyledText.drawn(text.substring(from, to), Style.PLAIN));
            from = to;
        } while (from < text.length());
    }

    /** Texts at their columns in one line; what lies behind the last is not padded. */
    TerminalLine row() {
        return new TerminalLine();
    }

    /** A text at the left and one at the right end of a line; below each other where one line does not hold both. */
    void spread(StyledText left, StyledText right) {
        if (right.isEmpty() || left.width() + 2 + right.width() > width) {
            wrapped("", left);
            if (!right.isEmpty()) {
                wrapped("", right);
            }
        } else {
            row().at(0, left).at(width - right.width(), right).end();
        }
    }

    @Override
    public String toString() {
        return out.toString();
    }

    /** A line that is put together from the left. */
    final class TerminalLine {
        private int used;

        TerminalLine at(int column, StyledText text) {
            if (!text.isEmpty()) {
                out.append(" ".repeat(Math.max(0, column - used)));
                text.write(out, colour);
                used = Math.max(used, column) + text.width();
            }
            return this;
        }

        void end() {
            out.append('\n');
        }
    }
}
