package courseworthy.render.svg;

import courseworthy.render.svg.TextBox.Anchor;

/** Axes: the height lines of a section, and kilometres along its foot. */
final class AxisDrawing {

    /** Marks of a height axis. */
    static final int MOST_LINES = 6;
    private static final double LABEL_BELOW = 16;

    private AxisDrawing() {
    }

    /** How wide the labels of an axis are. */
    static double labelWidth(AxisTicks ticks, String unit) {
        return ticks.values().stream().mapToDouble(each -> PictureText.number(each, ticks.decimals(), unit, 0).width(false)).max().orElse(0);
    }

    /** Lines across, labelled at their left ends. */
    static void linesAcross(SvgCanvas canvas, AxisTicks ticks, String unit, Scale scale, double left, double right) {
        StringBuilder lines = new StringBuilder();
        ticks.values().forEach(each -> lines.append(LinePath.across(left, right, scale.at(each))));
        canvas.path("grid", lines.toString(), 0);
        for (double each : ticks.values()) {
            canvas.text(TextStyle.PALE, Anchor.END, left - 6, scale.at(each) + 4, PictureText.number(each, ticks.decimals(), unit, 0));
        }
    }

    /** Kilometres along a line. The end is always written, with the unit, and marks that come too near to it are left out. @return what its labels reach down to */
    static double kilometres(SvgCanvas canvas, double kilometres, Scale scale, double y) {
        PictureText end = PictureText.shortest(kilometres, 1, "km");
        double right = scale.at(kilometres);
        StringBuilder lines = new StringBuilder(LinePath.across(scale.at(0), right, y)).append(LinePath.down(right, y, y + 4));
        canvas.text(TextStyle.PALE, Anchor.END, Math.min(canvas.width(), right + 6), y + LABEL_BELOW, end);
        AxisTicks ticks = AxisTicks.within(0, kilometres, canvas.narrow() ? 6 : 12);
        for (double each : ticks.values()) {
            if (canvas.label(TextStyle.PALE, Anchor.MIDDLE, scale.at(each), y + LABEL_BELOW, PictureText.number(each, ticks.decimals(), "km", each == 0 ? 0 : 1))) {
                lines.append(LinePath.down(scale.at(each), y, y + 4));
            }
        }
        canvas.path("axis", lines.toString(), y + 4);
        return y + LABEL_BELOW + TextWidths.DESCENT;
    }
}
