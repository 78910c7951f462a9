package courseworthy.render;

import courseworthy.problem.TextSanitiser;
import courseworthy.report.picture.Bar;
import courseworthy.report.picture.BarChart;
import courseworthy.report.picture.ElevationProfile;
import courseworthy.report.Style;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/** Draws pictures on a page for the terminal with block characters. */
final class TerminalFigure {

    private static final int ROWS = 8;
    /** Columns left of a profile for its heights. */
    private static final int AXIS = 8;
    private static final int LONGEST_BAR = 40;
    private static final int WIDEST_LABEL = 24;

    private final TerminalPage page;
    private final int indent;

    TerminalFigure(TerminalPage page, int indent) {
        this.page = page;
        this.indent = indent;
    }

    /** Over the whole width of the page: one row where it is to be small, else eight with heights and distances. */
    void elevation(ElevationProfile profile) {
        if (profile.compact()) {
            page.line("", StyledText.drawn(new ElevationSketch(profile, page.width()).rows(1, 1).get(0), Style.SECONDARY));
            return;
        }
        ElevationSketch sketch = new ElevationSketch(profile, page.width() - AXIS);
        List<String> rows = sketch.rows(ROWS, 1);
        for (int i = 0; i < rows.size(); i++) {
            String label = i == 0 ? metres(sketch.highest()) : i == rows.size() - 1 ? metres(sketch.lowest()) : "";
            page.row().at(AXIS - 1 - label.length(), StyledText.drawn(label, Style.PLAIN))
                    .at(AXIS, StyledText.drawn(rows.get(i), Style.PLAIN)).end();
        }
        String end = number(profile.length() / 1000, 1) + " km";
        page.row().at(AXIS, StyledText.drawn("0 km", Style.SECONDARY))
                .at(page.width() - end.length(), StyledText.drawn(end, Style.SECONDARY)).end();
    }

    /** Each with its label at the left, its value flush right, and the bar. */
    void bars(BarChart chart) {
        double most = 0;
        int label = 0;
        int written = 0;
        for (Bar bar : chart.bars()) {
            most = Math.max(most, bar.value());
            label = Math.max(label, Math.min(WIDEST_LABEL, TextWidth.of(TextSanitiser.line(bar.label()))));
            written = Math.max(written, TextWidth.of(TextSanitiser.line(bar.written())));
        }
        int room = Math.max(1, Math.min(LONGEST_BAR, page.width() - indent - label - written - 2 * TableLayout.GAP));
        for (Bar bar : chart.bars()) {
            StyledText value = StyledText.drawn(TextSanitiser.line(bar.written()), Style.PLAIN);
            List<StyledText> labels = StyledText.drawn(TextSanitiser.line(bar.label()), Style.PLAIN).lines(WIDEST_LABEL);
            int at = indent + label + TableLayout.GAP;
            int length = most > 0 ? (int) Math.round(room * bar.value() / most) : 0;
            page.row().at(indent, labels.get(0)).at(at + written - value.width(), value)
                    .at(at + written + TableLayout.GAP, StyledText.drawn("\u2588".repeat(length), Style.PLAIN)).end();
            labels.subList(1, labels.size()).forEach(line -> page.row().at(indent, line).end());
        }
    }

    private static String metres(double height) {
        return number(height, 0) + " m";
    }

    private static String number(double value, int decimals) {
        return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP).toPlainString();
    }
}
