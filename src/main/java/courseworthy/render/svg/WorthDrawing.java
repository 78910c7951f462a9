package courseworthy.render.svg;

import courseworthy.render.svg.TextBox.Anchor;
import courseworthy.report.picture.ValueRange;
import courseworthy.report.picture.WorthChart;
import courseworthy.report.picture.WorthChart.WorthBar;
import java.util.List;

/** Time that alternatives save or cost: a dot a row with its range, over a line at zero; at what odds both are equal is written at the row's end. */
final class WorthDrawing {

    private static final double MINUTE = 60;
    private static final double LABELS = 270;
    private static final double ENDS = 190;
    private static final double PLOT_ROW = 16;
    private static final int MOST_LINES = 3;

    private final SvgCanvas canvas;
    private final WorthChart chart;
    private final double left;
    private final double right;
    private final AxisTicks ticks;
    private final Scale minutes;

    private WorthDrawing(SvgCanvas canvas, WorthChart chart) {
        this.canvas = canvas;
        this.chart = chart;
        left = canvas.narrow() ? 14 : LABELS + 14;
        right = canvas.width() - (canvas.narrow() ? 14 : ENDS + 14);
        double low = Math.min(0, chart.rows().stream().mapToDouble(each -> each.savedSeconds().low()).min().orElse(0));
        double high = Math.max(0, chart.rows().stream().mapToDouble(each -> each.savedSeconds().high()).max().orElse(0));
        ticks = AxisTicks.around(low / MINUTE, Math.max(high, low + 1) / MINUTE, AxisDrawing.MOST_LINES);
        minutes = Scale.linear(ticks.first(), ticks.last(), left, right);
    }

    static void draw(SvgCanvas canvas, WorthChart chart) {
        new WorthDrawing(canvas, chart).draw();
    }

    private void draw() {
        double zero = minutes.at(0);
        canvas.line("zero", zero, 3, zero, 14);
        canvas.label(TextStyle.PALE, Anchor.END, zero - 8, 12, "slower");
        canvas.label(TextStyle.PALE, Anchor.START, zero + 8, 12, "faster");
        double y = 20;
        for (WorthBar each : chart.rows()) {
            y = canvas.narrow() ? narrowRow(each, y) : wideRow(each, y);
        }
        canvas.line("axis", left, y, right, y);
        for (double each : ticks.values()) {
            double x = minutes.at(each);
            canvas.line("axis", x, y, x, y + 4);
            canvas.label(TextStyle.PALE, Anchor.MIDDLE, x, y + 16, NumberText.fixed(each, ticks.decimals()));
        }
        canvas.text(TextStyle.PALE, Anchor.MIDDLE, (left + right) / 2, y + 31, "minutes saved on this course");
        new PictureKey(canvas, 0, y + 40).dot(false, "clear").dot(true, "too close to call");
    }

    private static String alternative(WorthBar row) {
        return row.alternative() + " for " + row.recommended();
    }

    private double wideRow(WorthBar row, double top) {
        List<PictureText> labels = LabelLines.of(alternative(row), LABELS, false, MOST_LINES);
        List<PictureText> ends = row.breakEven().isEmpty() ? List.of() : LabelLines.of(row.breakEven(), ENDS, false, MOST_LINES);
        canvas.text(TextStyle.VALUE, Anchor.START, 0, top + 14, PictureText.of(row.topic()).cut(LABELS, true));
        lines(labels, 0, top + 14 + LabelLines.PITCH);
        lines(ends, right + 14, top + 14);
        double high = Math.max((labels.size() + 1) * LabelLines.PITCH, ends.size() * LabelLines.PITCH) + 10;
        canvas.line("zero", minutes.at(0), top, minutes.at(0), top + high);
        dot(row, top + 10);
        canvas.line("grid", 0, top + high, canvas.width(), top + high);
        return top + high;
    }

    private double narrowRow(WorthBar row, double top) {
        double wide = canvas.width();
        double y = top + 14;
        canvas.text(TextStyle.VALUE, Anchor.START, 0, y, PictureText.of(row.topic()).cut(wide, true));
        y = lines(LabelLines.of(alternative(row), wide, false, MOST_LINES), 0, y + LabelLines.PITCH);
        canvas.line("zero", minutes.at(0), y - 11, minutes.at(0), y + 7);
        dot(row, y - 2);
        y += PLOT_ROW;
        if (!row.breakEven().isEmpty()) {
            y = lines(LabelLines.of(row.breakEven(), wide, false, MOST_LINES), 0, y + 2);
        }
        canvas.line("grid", 0, y - 4, wide, y - 4);
        return y - 4;
    }

    /** @return where the line after the last one would stand */
    private double lines(List<PictureText> lines, double x, double first) {
        double y = first;
        for (PictureText each : lines) {
            canvas.text(TextStyle.PLAIN, Anchor.START, x, y, each);
            y += LabelLines.PITCH;
        }
        return y;
    }

    private void dot(WorthBar row, double y) {
        ValueRange saved = row.savedSeconds();
        double from = minutes.at(saved.low() / MINUTE);
        double to = minutes.at(saved.high() / MINUTE);
        canvas.line("whisker", from, y, to, y);
        canvas.line("whisker", from, y - 4, from, y + 4);
        canvas.line("whisker", to, y - 4, to, y + 4);
        canvas.circle(row.close() ? "dot open" : "dot", minutes.at(saved.mid() / MINUTE), y, 5);
    }
}
