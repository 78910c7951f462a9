package courseworthy.render.svg;

import courseworthy.render.svg.TextBox.Anchor;
import courseworthy.report.picture.GearLadder;
import courseworthy.report.picture.GearLadder.Rung;
import courseworthy.report.picture.GearLadder.SpeedMark;
import courseworthy.report.picture.GearLadder.SteepMark;
import java.util.Comparator;
import java.util.List;

/**
 * The gradients that each gear holds, a bar a gear, on a logarithmic axis; steep pieces of the course as lines across, what no gear holds shaded.
 * Below it the speeds of the hardest gear.
 */
final class GearLadderDrawing {

    /** Flatter than this a gear is no question of the ladder; a logarithmic axis has no zero. Rise over length. */
    private static final double FLATTEST = 0.01;
    /** Where even the easiest gear holds little more, the axis begins flatter, but not flatter than this. */
    private static final double FLATTEST_OF_ALL = 0.001;
    private static final double ROW = 17;
    private static final double BAR = 11;
    private static final int MOST_LABEL_ROWS_WIDE = 3;
    private static final int MOST_LABEL_ROWS_NARROW = 6;
    private static final double MINUTE = 60;

    private final SvgCanvas canvas;
    private final GearLadder ladder;
    private final List<Rung> shown;
    private final boolean oneRing;
    private final double left;
    private final double right;
    private final Scale across;
    private final double flattestAxis;
    private final double steepestAxis;
    /** Rows of words over the gears, and where the gears begin below them. */
    private final int labelRows;
    private final double top;

    private GearLadderDrawing(SvgCanvas canvas, GearLadder ladder) {
        this.canvas = canvas;
        this.ladder = ladder;
        flattestAxis = flattest(ladder.rungs().stream().mapToDouble(Rung::steepestGradient).max().orElse(1));
        shown = ladder.rungs().stream().filter(each -> each.steepestGradient() > flattestAxis * 1.1).toList();
        oneRing = ladder.rungs().stream().map(Rung::ring).distinct().count() <= 1;
        left = 8 + ladder.rungs().stream().mapToDouble(each -> PictureText.of(name(each)).width(true)).max().orElse(20);
        right = canvas.width() - (canvas.narrow() ? 52 : 90);
        labelRows = Math.max(1, Math.min(ladder.steep().size(), canvas.narrow() ? MOST_LABEL_ROWS_NARROW : MOST_LABEL_ROWS_WIDE));
        top = labelRows * LabelLines.PITCH + 10;
        double steepest = Math.max(ladder.rungs().stream().mapToDouble(Rung::steepestGradient).max().orElse(0),
                ladder.steep().stream().mapToDouble(each -> each.gradient().high()).max().orElse(0));
        steepestAxis = Math.max(steepest * 1.15, FLATTEST * 5);
        across = Scale.logarithmic(flattestAxis, steepestAxis, left, right);
    }

    /** 1 %, or a half, a fifth or a tenth of it, so that the easiest gear has a bar. */
    private static double flattest(double held) {
        for (double each : new double[] {FLATTEST, FLATTEST / 2, FLATTEST / 5}) {
            if (held > each * 2) {
                return each;
            }
        }
        return FLATTEST_OF_ALL;
    }

    static void draw(SvgCanvas canvas, GearLadder ladder) {
        new GearLadderDrawing(canvas, ladder).draw();
    }

    private String name(Rung rung) {
        return oneRing ? Integer.toString(rung.sprocket()) : rung.gear().replace('x', '\u00d7');
    }

    private void draw() {
        double bottom = top + shown.size() * ROW;
        double held = Math.max(flattestAxis, ladder.rungs().stream().mapToDouble(Rung::steepestGradient).max().orElse(flattestAxis));
        canvas.shade(across.at(held), top, right - across.at(held), bottom - top);
        axis(bottom);
        for (int i = 0; i < shown.size(); i++) {
            rung(shown.get(i), top + i * ROW);
        }
        canvas.text(TextStyle.PALE, Anchor.END, canvas.width(), top - 10, "in use");
        ladder.steep().stream().sorted(Comparator.comparingDouble((SteepMark each) -> each.gradient().mid()).reversed())
                .forEach(each -> steep(each, bottom));
        double y = bottom + (canvas.narrow() ? 46 : 36);
        PictureKey key = new PictureKey(canvas, 0, y);
        key.shade("held by no gear");
        flatter(key);
        new TopEndDrawing(canvas, ladder, left, right).draw(key.bottom() + 6);
    }

    private void flatter(PictureKey key) {
        int count = ladder.rungs().size() - shown.size();
        if (count > 0) {
            Rung first = ladder.rungs().get(shown.size());
            Rung last = ladder.rungs().get(ladder.rungs().size() - 1);
            key.words((count == 1 ? name(first) : name(first) + " to " + name(last)) + ": flatter than " + NumberText.withUnit(NumberText.shortest(flattestAxis * 100, 1), "%"));
        }
    }

    private void axis(double bottom) {
        canvas.line("axis", left, bottom, right, bottom);
        AxisTicks ticks = AxisTicks.logarithmic(flattestAxis * 100, steepestAxis * 100, canvas.narrow() ? 6 : 10);
        for (double each : ticks.values()) {
            double x = across.at(each / 100);
            canvas.line("grid", x, top, x, bottom + 4);
            canvas.label(TextStyle.PALE, Anchor.MIDDLE, x, bottom + 16, NumberText.shortest(each, 1));
        }
        canvas.text(TextStyle.PALE, Anchor.END, canvas.width(), bottom + (canvas.narrow() ? 31 : 16), "gradient, %");
    }

    private void rung(Rung rung, double rowTop) {
        double from = across.at(rung.flattestGradient());
        double to = across.at(rung.steepestGradient());
        double y = rowTop + (ROW - BAR) / 2;
        if (rung.flattestGradient() < flattestAxis) {
            String open = "M" + SvgWriter.number(from) + " " + SvgWriter.number(y) + "H" + SvgWriter.number(to) + "v" + SvgWriter.number(BAR) + "H"
                    + SvgWriter.number(from);
            canvas.path("bar", open, y + BAR);
        } else {
            canvas.rectangle("bar", from, y, to - from, BAR);
        }
        canvas.text(TextStyle.VALUE, Anchor.END, left - 6, rowTop + 13, name(rung));
        if (rung.usedSeconds() >= MINUTE / 2) {
            canvas.text(TextStyle.PALE, Anchor.END, canvas.width(), rowTop + 13, DurationText.of(rung.usedSeconds()));
        }
    }

    /** A line across all gears; where no gear holds it, with the range of its gradient on top. */
    private void steep(SteepMark piece, double bottom) {
        double x = across.at(piece.gradient().mid());
        String words = piece.label() + " " + NumberText.withUnit(NumberText.shortest(piece.gradient().mid() * 100, 1), "%");
        double from = top - 4;
        for (int row = 0; row < labelRows && from == top - 4; row++) {
            double baseline = top - 10 - row * LabelLines.PITCH;
            from = canvas.labelOver(piece.held() ? TextStyle.PLAIN : TextStyle.WARNING, x, baseline, words) ? baseline : from;
        }
        canvas.line(piece.held() ? "demand" : "demand unmet", x, from, x, bottom);
        if (!piece.held()) {
            canvas.line("demand unmet", across.at(piece.gradient().low()), top - 4, across.at(piece.gradient().high()), top - 4);
        }
    }

    /** The top end: which speeds the hardest gear is turned at, and speeds that matter. */
    private static final class TopEndDrawing {

        private static final double KILOMETRES_AN_HOUR = 3.6;

        private final SvgCanvas canvas;
        private final GearLadder ladder;
        private final double left;
        private final double right;

        TopEndDrawing(SvgCanvas canvas, GearLadder ladder, double left, double right) {
            this.canvas = canvas;
            this.ladder = ladder;
            this.left = left;
            this.right = right;
        }

        void draw(double top) {
            if (ladder.rungs().isEmpty()) {
                return;
            }
            Rung hardest = ladder.rungs().get(ladder.rungs().size() - 1);
            double high = Math.max(hardest.fastest(), ladder.speeds().stream().mapToDouble(each -> each.speed().high()).max().orElse(0));
            double low = Math.min(hardest.slowest(), ladder.speeds().stream().mapToDouble(each -> each.speed().low()).min().orElse(high));
            AxisTicks ticks = AxisTicks.around(low * KILOMETRES_AN_HOUR, high * KILOMETRES_AN_HOUR, 6);
            Scale speeds = Scale.linear(ticks.first() / KILOMETRES_AN_HOUR, ticks.last() / KILOMETRES_AN_HOUR, left, right);
            double y = top + 34;
            for (SpeedMark each : ladder.speeds()) {
                mark(each, speeds, top, y);
            }
            canvas.text(TextStyle.VALUE, Anchor.END, left - 6, y + 13, shortName(hardest));
            canvas.rectangle("bar", speeds.at(hardest.slowest()), y + 3, speeds.at(hardest.fastest()) - speeds.at(hardest.slowest()), BAR);
            canvas.line("axis", left, y + ROW, right, y + ROW);
            for (double each : ticks.values()) {
                double x = speeds.at(each / KILOMETRES_AN_HOUR);
                canvas.line("axis", x, y + ROW, x, y + ROW + 4);
                canvas.text(TextStyle.PALE, Anchor.MIDDLE, x, y + ROW + 16, PictureText.number(each, ticks.decimals(), "km/h", 0));
            }
            canvas.label(TextStyle.PALE, Anchor.END, canvas.width(), y + ROW + 16, PictureText.heading("", "km/h"));
        }

        private String shortName(Rung rung) {
            boolean oneRing = ladder.rungs().stream().map(Rung::ring).distinct().count() <= 1;
            return oneRing ? Integer.toString(rung.sprocket()) : rung.gear().replace('x', '\u00d7');
        }

        private void mark(SpeedMark mark, Scale speeds, double top, double y) {
            double x = speeds.at(mark.speed().mid());
            PictureText words = PictureText.shortest(mark.speed().mid() * KILOMETRES_AN_HOUR, 0, "km/h").after(mark.label() + " ");
            double baseline = canvas.labelOver(TextStyle.PLAIN, x, top + 26, words) ? top + 26 : top + 11;
            if (baseline < top + 26) {
                canvas.labelOver(TextStyle.PLAIN, x, baseline, words);
            }
            canvas.line("demand", x, baseline, x, y + ROW);
            canvas.line("whisker", speeds.at(mark.speed().low()), y - 1, speeds.at(mark.speed().high()), y - 1);
        }
    }
}
