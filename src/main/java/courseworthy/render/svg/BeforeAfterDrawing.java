package courseworthy.render.svg;

import courseworthy.render.svg.TextBox.Anchor;
import courseworthy.report.picture.BeforeAfter;
import courseworthy.report.picture.BeforeAfter.PlaceComparison;
import java.util.List;

/** The parts of a bike in two columns, now and for the day: what changes in bold, with arrows from and to other bikes. */
final class BeforeAfterDrawing {

    private static final double PLACE = 150;
    private static final double GAP = 16;
    private static final double ARROW = 26;
    private static final int MOST_LINES = 3;
    private static final String NOTHING = "\u2013";

    private final SvgCanvas canvas;
    private final BeforeAfter parts;
    private final double beforeLeft;
    private final double afterLeft;
    private final double column;
    private double y;

    private BeforeAfterDrawing(SvgCanvas canvas, BeforeAfter parts) {
        this.canvas = canvas;
        this.parts = parts;
        beforeLeft = canvas.narrow() ? 0 : PLACE + GAP;
        column = (canvas.width() - beforeLeft - ARROW - 2 * GAP) / 2;
        afterLeft = beforeLeft + column + ARROW + 2 * GAP;
    }

    static void draw(SvgCanvas canvas, BeforeAfter parts) {
        new BeforeAfterDrawing(canvas, parts).draw();
    }

    private void draw() {
        y = 12;
        canvas.text(TextStyle.PALE, Anchor.START, beforeLeft, y, "now");
        canvas.text(TextStyle.PALE, Anchor.START, afterLeft, y, "for the day");
        y += 8;
        canvas.line("axis", 0, y, canvas.width(), y);
        parts.rows().forEach(this::row);
    }

    private void row(PlaceComparison row) {
        TextStyle style = row.changed() ? TextStyle.VALUE : TextStyle.PALE;
        double first = y + 15;
        if (canvas.narrow()) {
            canvas.text(TextStyle.PALE, Anchor.START, 0, first, PictureText.of(row.place()).cut(canvas.width(), false));
            first += LabelLines.PITCH;
        } else {
            canvas.text(TextStyle.PALE, Anchor.START, 0, first, PictureText.of(row.place()).cut(PLACE, false));
        }
        double before = part(style, row.before(), beforeLeft, first);
        double after = part(style, row.after(), afterLeft, first);
        if (row.changed()) {
            arrow(beforeLeft + column + GAP, first - 4);
            before = remark(row.to().isEmpty() ? "" : "\u2192 to " + row.to(), beforeLeft, before);
            after = remark(row.from().isEmpty() ? "" : "\u2190 from " + row.from(), afterLeft, after);
        }
        y = Math.max(before, after) - LabelLines.PITCH + 8;
        canvas.line("grid", 0, y, canvas.width(), y);
    }

    /** @return where the line after the last one would stand */
    private double part(TextStyle style, String part, double left, double first) {
        return lines(style, LabelLines.of(part.isEmpty() ? NOTHING : part, column, style.bold(), MOST_LINES), left, first);
    }

    private double remark(String words, double left, double first) {
        return words.isEmpty() ? first : lines(TextStyle.PLAIN, LabelLines.of(words, column, false, 2), left, first);
    }

    private double lines(TextStyle style, List<PictureText> lines, double left, double first) {
        double at = first;
        for (PictureText each : lines) {
            canvas.text(style, Anchor.START, left, at, each);
            at += LabelLines.PITCH;
        }
        return at;
    }

    private void arrow(double x, double middle) {
        canvas.path("arrow", "M" + SvgWriter.number(x) + " " + SvgWriter.number(middle) + "h" + SvgWriter.number(ARROW) + "m-7-4l7 4-7 4", middle + 4);
    }
}
