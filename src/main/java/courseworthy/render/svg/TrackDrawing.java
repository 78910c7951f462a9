package courseworthy.render.svg;

import courseworthy.render.svg.TextBox.Anchor;
import courseworthy.report.picture.GroundMaterial;
import courseworthy.report.picture.TrackPlan;
import courseworthy.report.picture.TrackPlan.KilometreMark;
import courseworthy.report.picture.TrackPlan.TrackLeg;
import courseworthy.report.picture.TrackPlan.PlanPoint;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** The line of a course from above, north up: strokes by ground along it, numbered kilometres, start, finish and a scale bar; nothing behind it. */
final class TrackDrawing {

    /** So many say where the kilometres are; more, of uneven distances, only fill the picture (judgement). */
    private static final int ENOUGH_NUMBERS = 6;
    private static final double MARGIN = 26;
    private static final double MOST_HEIGHT = 560;
    /** Of the longest scale bar, in parts of the width. */
    private static final double SCALE_BAR = 0.25;
    private static final double[][] BESIDE = {{14, 4}, {-14, 4}, {0, -8}, {0, 17}, {12, -6}, {-12, -6}, {12, 14}, {-12, 14}};

    private final SvgCanvas canvas;
    private final TrackPlan plan;
    private final double west;
    private final double north;
    private final double pixelsOfAMetre;
    private final double shift;
    private final double bottom;
    private final List<KilometreMark> ticks = new ArrayList<>();

    private TrackDrawing(SvgCanvas canvas, TrackPlan plan) {
        this.canvas = canvas;
        this.plan = plan;
        List<PlanPoint> all = plan.legs().stream().flatMap(each -> each.points().stream()).toList();
        west = all.stream().mapToDouble(PlanPoint::eastMetres).min().orElse(0);
        north = all.stream().mapToDouble(PlanPoint::northMetres).max().orElse(0);
        double wide = Math.max(1, all.stream().mapToDouble(PlanPoint::eastMetres).max().orElse(0) - west);
        double high = Math.max(1, north - all.stream().mapToDouble(PlanPoint::northMetres).min().orElse(0));
        double room = canvas.width() - 2 * MARGIN;
        pixelsOfAMetre = Math.min(room / wide, (canvas.narrow() ? room * 1.3 : MOST_HEIGHT) / high);
        shift = MARGIN + (room - wide * pixelsOfAMetre) / 2;
        bottom = MARGIN + high * pixelsOfAMetre;
    }

    static void draw(SvgCanvas canvas, TrackPlan plan) {
        new TrackDrawing(canvas, plan).draw();
    }

    private double x(PlanPoint point) {
        return shift + (point.eastMetres() - west) * pixelsOfAMetre;
    }

    private double y(PlanPoint point) {
        return MARGIN + (north - point.northMetres()) * pixelsOfAMetre;
    }

    private void draw() {
        Set<GroundMaterial> grounds = EnumSet.noneOf(GroundMaterial.class);
        for (TrackLeg each : plan.legs()) {
            String path = LinePath.of(each.points().stream().mapToDouble(this::x).toArray(), each.points().stream().mapToDouble(this::y).toArray());
            canvas.path("bed", path, bottom);
            canvas.path("track " + HatchPattern.of(each.material()).styleClass(), path, bottom);
            grounds.add(each.material());
        }
        ends();
        kilometres();
        double y = bottom + MARGIN;
        scaleBar(y);
        north(canvas.width() - 14, 8);
        new PictureKey(canvas, 0, y + 14).tracks(grounds);
    }

    private void ends() {
        double startX = x(plan.start());
        double startY = y(plan.start());
        double finishX = x(plan.finish());
        double finishY = y(plan.finish());
        boolean loop = Math.hypot(startX - finishX, startY - finishY) < 12;
        canvas.circle("place", startX, startY, 5);
        beside(TextStyle.VALUE, startX, startY, PictureText.of(loop ? "start, finish" : "start"));
        if (!loop) {
            canvas.rectangle("place", finishX - 4.5, finishY - 4.5, 9, 9);
            beside(TextStyle.VALUE, finishX, finishY, PictureText.of("finish"));
        }
    }

    /** The rounder numbers first, and finer ones until there are enough; those that find room. */
    private void kilometres() {
        for (int step : new int[] {100, 50, 20, 10, 5, 2, 1}) {
            if (ticks.size() >= ENOUGH_NUMBERS) {
                return;
            }
            for (KilometreMark each : plan.kilometres()) {
                if (each.kilometre() % step == 0 && each.kilometre() > 0 && firstAt(each.kilometre(), step) && clearOfTicks(each)
                        && beside(TextStyle.PLAIN, x(each.at()), y(each.at()), PictureText.number(each.kilometre(), 0, "km", 1))) {
                    canvas.circle("tick", x(each.at()), y(each.at()), 2.5);
                    ticks.add(each);
                }
            }
        }
    }

    /** True where no rounder step has taken it already. */
    private static boolean firstAt(int kilometre, int step) {
        for (int rounder : new int[] {100, 50, 20, 10, 5, 2}) {
            if (rounder > step && kilometre % rounder == 0) {
                return false;
            }
        }
        return true;
    }

    private boolean clearOfTicks(KilometreMark mark) {
        return ticks.stream().allMatch(each -> Math.hypot(x(each.at()) - x(mark.at()), y(each.at()) - y(mark.at())) > 40);
    }

    /** Words beside a place: where they stand off the line if there is such a side, else over it on a plate. */
    private boolean beside(TextStyle style, double x, double y, PictureText words) {
        for (boolean clear : new boolean[] {true, false}) {
            for (double[] each : BESIDE) {
                double half = words.width(style.bold()) / 2;
                double middle = x + Math.signum(each[0]) * (half + Math.abs(each[0]) - 5);
                if ((!clear || isOffTheLine(TextBox.of(words, style, Anchor.MIDDLE, middle, y + each[1])))
                        && canvas.labelOver(style, middle, y + each[1], words)) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Whether a piece of the line comes into a box, by the pieces' own bounds: they are short, so that these are close enough. */
    private boolean crosses(PlanPoint from, PlanPoint to, TextBox box) {
        return Math.max(x(from), x(to)) > box.left() && Math.min(x(from), x(to)) < box.right()
                && Math.max(y(from), y(to)) > box.top() && Math.min(y(from), y(to)) < box.bottom();
    }

    private boolean isOffTheLine(TextBox box) {
        for (TrackLeg leg : plan.legs()) {
            for (int i = 1; i < leg.points().size(); i++) {
                if (crosses(leg.points().get(i - 1), leg.points().get(i), box)) {
                    return false;
                }
            }
        }
        return true;
    }

    private void scaleBar(double y) {
        AxisTicks ticks = AxisTicks.within(0, canvas.width() * SCALE_BAR / pixelsOfAMetre, 2);
        double metres = ticks.last();
        double wide = metres * pixelsOfAMetre;
        canvas.path("axis", "M1 " + SvgWriter.number(y - 5) + "v5h" + SvgWriter.number(wide) + "v-5", y);
        PictureText words = metres >= 1000 ? PictureText.shortest(metres / 1000, 1, "km") : PictureText.shortest(metres, 0, "m");
        canvas.label(TextStyle.PALE, Anchor.START, wide + 8, y, words);
    }

    private void north(double x, double y) {
        canvas.path("arrow", "M" + SvgWriter.number(x) + " " + SvgWriter.number(y + 20) + "v-20m-5 7l5-7 5 7", y + 20);
        canvas.label(TextStyle.PALE, Anchor.MIDDLE, x, y + 34, "N");
    }
}
