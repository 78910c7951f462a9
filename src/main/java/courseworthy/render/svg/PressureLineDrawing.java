package courseworthy.render.svg;

import courseworthy.render.svg.TextBox.Anchor;
import courseworthy.report.picture.PressureLine;
import courseworthy.report.picture.PressureLine.Wheel;
import courseworthy.units.PressureSteps;

/** Tyre pressures, a number line a wheel: where rims strike, the range worth trying, the value to set, wet ground, the limit from above. */
final class PressureLineDrawing {

    private static final double PASCALS_OF_A_BAR = 1e5;
    /** NIST Special Publication 811 (2008), appendix B.8. */
    private static final double PASCALS_OF_A_PSI = 6894.757;
    /** From the top of a wheel to its line, and rows of words under that. */
    private static final double LINE = 40;
    private static final double[] ROWS = {19, 34, 49};
    private static final double BETWEEN = 12;
    private static final double RIGHT_MARGIN = 26;

    private final SvgCanvas canvas;
    private final PressureLine line;
    private final double left;
    private final double right;
    /** Where the line ends, bar. */
    private final double end;
    private final AxisTicks ticks;
    private final Scale bars;

    private PressureLineDrawing(SvgCanvas canvas, PressureLine line) {
        this.canvas = canvas;
        this.line = line;
        left = 14 + line.wheels().stream().mapToDouble(each -> label(each).width(true)).max().orElse(0);
        right = canvas.width() - RIGHT_MARGIN;
        double low = line.wheels().stream().mapToDouble(Wheel::floorPascals).min().orElse(0);
        double high = line.wheels().stream().mapToDouble(PressureLineDrawing::highest).max().orElse(PASCALS_OF_A_BAR);
        double margin = (high - low) * 0.1;
        double from = Math.max(0, low - margin) / PASCALS_OF_A_BAR;
        end = Math.max((high + margin) / PASCALS_OF_A_BAR, from + 0.1);
        ticks = AxisTicks.within(from, end, canvas.narrow() ? 6 : 12);
        bars = Scale.linear(from, end, left, right);
    }

    static void draw(SvgCanvas canvas, PressureLine line) {
        if (!line.wheels().isEmpty()) {
            new PressureLineDrawing(canvas, line).draw();
        }
    }

    /** A limit far above would press all else together: it is shown by an arrow where it is more than twice as far as what is worth trying. */
    private static double highest(Wheel wheel) {
        double top = Math.max(wheel.highPascals(), Math.max(wheel.gaugePascals(), wheel.startPascals()));
        double near = wheel.lowPascals() + 2 * (top - Math.min(wheel.lowPascals(), wheel.floorPascals()));
        return wheel.ceilingPascals() == null ? top : Math.min(Math.max(top, wheel.ceilingPascals()), near);
    }

    private PictureText label(Wheel wheel) {
        return PictureText.of(wheel.label()).cut(canvas.narrow() ? 60 : 120, true);
    }

    private double at(double pascals) {
        return bars.at(pascals / PASCALS_OF_A_BAR);
    }

    private static String bar(double pascals) {
        return NumberText.fixed(pascals / PASCALS_OF_A_BAR, 2);
    }

    private static PictureText pressure(String before, double pascals, Double ceiling) {
        return new PictureText(before + bar(pascals), before + PressureSteps.psi(pascals, ceiling));
    }

    private void draw() {
        double y = 0;
        for (Wheel each : line.wheels()) {
            wheel(each, y);
            y = canvas.height() + BETWEEN;
        }
        canvas.line("axis", left, y, right, y);
        for (double each : ticks.values()) {
            double x = bars.at(each);
            canvas.line("axis", x, y, x, y + 4);
            canvas.text(TextStyle.PALE, Anchor.MIDDLE, x, y + 16, NumberText.fixed(each, ticks.decimals()));
            canvas.label(TextStyle.PALE, Anchor.MIDDLE, x, y + 31, NumberText.fixed(each * PASCALS_OF_A_BAR / PASCALS_OF_A_PSI, 0));
        }
        canvas.label(TextStyle.PALE, Anchor.END, left - 16, y + 16, "bar");
        canvas.label(TextStyle.PALE, Anchor.END, left - 16, y + 31, "psi");
    }

    private void wheel(Wheel wheel, double top) {
        double y = top + LINE;
        canvas.text(TextStyle.VALUE, Anchor.START, 0, y + 4, label(wheel));
        double floor = at(wheel.floorPascals());
        canvas.shade(left, y - 7, floor - left, 14);
        double ceiling = wheel.ceilingPascals() == null ? right : at(wheel.ceilingPascals());
        canvas.line("axis", floor, y, ceiling, y);
        canvas.rectangle("bar", at(wheel.lowPascals()), y - 6, at(wheel.highPascals()) - at(wheel.lowPascals()), 12);
        double set = at(wheel.startPascals());
        canvas.path("mark", "M" + SvgWriter.number(set - 6) + " " + SvgWriter.number(y - 15) + "h12l-6 9z", y);
        canvas.line("mark-line", set, y - 7, set, y + 7);
        boolean gauge = !bar(wheel.gaugePascals()).equals(bar(wheel.startPascals()));
        PictureText start = pressure("set ", wheel.startPascals(), wheel.ceilingPascals());
        PictureText words = gauge ? pressure(", gauge ", wheel.gaugePascals(), wheel.ceilingPascals()).after(start) : start;
        canvas.labelInside(TextStyle.VALUE, set, y - 19, words);
        ends(wheel, y);
        if (wheel.wetPascals() != null) {
            canvas.circle("dot open", at(wheel.wetPascals()), y, 4);
            under(TextStyle.PLAIN, at(wheel.wetPascals()), y, 1, pressure("wet ", wheel.wetPascals(), wheel.ceilingPascals()));
        }
        PictureText strikes = pressure("rim strikes under ", wheel.floorPascals(), null);
        under(TextStyle.PALE, floor - strikes.width(false) / 2, y, 1, strikes);
        limit(wheel, ceiling, y);
    }

    /** The ends of the range, beside it rather than under it, so that a narrow range leaves them apart. */
    private void ends(Wheel wheel, double y) {
        PictureText low = pressure("", wheel.lowPascals(), wheel.ceilingPascals());
        PictureText high = pressure("", wheel.highPascals(), wheel.ceilingPascals());
        canvas.label(TextStyle.PALE, Anchor.END, at(wheel.lowPascals()) + 4, y + ROWS[0], low);
        if (!high.equals(low)) {
            canvas.label(TextStyle.PALE, Anchor.START, at(wheel.highPascals()) - 4, y + ROWS[0], high);
        }
    }

    /** The limit from above: shaded beyond it, or an arrow where it lies beyond the line. */
    private void limit(Wheel wheel, double ceiling, double y) {
        if (wheel.ceilingPascals() == null) {
            return;
        }
        boolean beyond = wheel.ceilingPascals() / PASCALS_OF_A_BAR > end;
        if (beyond) {
            canvas.path("arrow", "M" + SvgWriter.number(right) + " " + SvgWriter.number(y) + "h14m-7-4l7 4-7 4", y + 4);
        } else {
            canvas.shade(ceiling, y - 7, right - ceiling, 14);
        }
        under(TextStyle.PALE, ceiling, y, 0, pressure("limit ", wheel.ceilingPascals(), wheel.ceilingPascals()));
    }

    /** Words as near under a place as there is room. */
    private void under(TextStyle style, double x, double y, int firstRow, PictureText words) {
        for (int row = firstRow; row < ROWS.length; row++) {
            if (canvas.labelOver(style, x, y + ROWS[row], words)) {
                return;
            }
        }
    }
}
