package courseworthy.render.svg;

import courseworthy.render.svg.TextBox.Anchor;
import courseworthy.report.picture.Bar;
import courseworthy.report.picture.BarChart;

/** Bars from zero, one below the other, each with its label before it and its value behind it. */
final class BarChartDrawing {

    private static final double ROW = 20;
    private static final double BAR = 11;

    private BarChartDrawing() {
    }

    static void draw(SvgCanvas canvas, BarChart chart) {
        double most = canvas.width() * 0.4;
        double labels = Math.min(most, chart.bars().stream().mapToDouble(each -> PictureText.of(each.label()).width(false)).max().orElse(0)) + 8;
        double values = Math.min(most, chart.bars().stream().mapToDouble(each -> PictureText.of(each.written()).width(true)).max().orElse(0)) + 8;
        double longest = chart.bars().stream().mapToDouble(Bar::value).max().orElse(0);
        Scale across = Scale.linear(0, Math.max(longest, 1e-9), labels, canvas.width() - values);
        double y = 0;
        for (Bar each : chart.bars()) {
            canvas.text(TextStyle.PLAIN, Anchor.END, labels - 8, y + 14, PictureText.of(each.label()).cut(labels - 8, false));
            canvas.rectangle("solid", labels, y + 4, across.at(each.value()) - labels, BAR);
            canvas.text(TextStyle.VALUE, Anchor.START, across.at(each.value()) + 6, y + 14, PictureText.of(each.written()).cut(values - 8, true));
            y += ROW;
        }
        canvas.line("axis", labels, 0, labels, y);
    }
}
