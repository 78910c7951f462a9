package courseworthy.render.svg;

import courseworthy.render.svg.TextBox.Anchor;
import java.util.ArrayList;
import java.util.List;

/** The height line of a course over a height axis. */
final class HeightLineDrawing {

    private static final String UNIT = "m";
    /** A level course has to look level: the axis spans at least this, m. Common practice, no source. */
    private static final double LEAST_SPAN_METRES = 100;

    private final double[] metres;
    private final double[] heights;
    private final AxisTicks ticks;

    /**
     * @param metres  from the start, never falling
     * @param heights m, one for each place; NaN where it is not known, but known somewhere
     */
    HeightLineDrawing(double[] metres, double[] heights) {
        this.metres = metres;
        this.heights = heights;
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (double each : heights) {
            low = Double.isNaN(each) ? low : Math.min(low, each);
            high = Double.isNaN(each) ? high : Math.max(high, each);
        }
        double missing = Math.max(0, LEAST_SPAN_METRES - (high - low));
        ticks = AxisTicks.around(low - missing / 2, high + missing / 2, AxisDrawing.MOST_LINES);
    }

    /** What the labels of the height axis take. */
    double labelWidth() {
        return AxisDrawing.labelWidth(ticks, UNIT);
    }

    /** Draws it between two heights of the picture. */
    void draw(SectionFrame frame, double top, double bottom) {
        Scale up = Scale.linear(ticks.first(), ticks.last(), bottom, top);
        AxisDrawing.linesAcross(frame.canvas(), ticks, UNIT, up, frame.left(), frame.right());
        frame.canvas().text(TextStyle.PALE, Anchor.END, frame.left() - 6, top - 12, PictureText.heading("", UNIT));
        int from = 0;
        while (from < heights.length) {
            int to = from;
            while (to < heights.length && !Double.isNaN(heights[to])) {
                to++;
            }
            if (to - from > 1) {
                line(frame, up, from, to, bottom);
            }
            from = to + 1;
        }
    }

    /** A piece of the line, without a gap. */
    private void line(SectionFrame frame, Scale up, int from, int to, double bottom) {
        List<double[]> points = new ArrayList<>();
        for (int i = from; i < to; i++) {
            points.add(new double[] {frame.at(metres[i]), up.at(heights[i])});
        }
        frame.canvas().path("line", LinePath.of(points.stream().mapToDouble(each -> each[0]).toArray(),
                points.stream().mapToDouble(each -> each[1]).toArray()), bottom);
    }
}
