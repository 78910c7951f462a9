package courseworthy.render.svg;

import courseworthy.render.svg.TextBox.Anchor;
import courseworthy.report.picture.LongSection;
import courseworthy.report.picture.LongSection.CourseMark.Kind;
import java.util.List;
import java.util.Set;

/** A long section: the height line with its climbs, bands of ground and gears along the same kilometres, times, and marks on the base line. */
final class LongSectionDrawing {

    private static final double NAMES_OF_BANDS = 82;
    private static final double LEAST_GUTTER = 30;
    private static final double RIGHT_MARGIN = 14;
    private static final double HEIGHTS_WIDE = 170;
    private static final double HEIGHTS_NARROW = 120;

    private final SvgCanvas canvas;
    private final LongSection section;
    private final HeightLineDrawing heights;
    private final SectionFrame frame;

    private LongSectionDrawing(SvgCanvas canvas, LongSection section) {
        this.canvas = canvas;
        this.section = section;
        heights = section.heights() == null || section.heights().points().isEmpty() ? null
                : new HeightLineDrawing(section.heights().points().stream().mapToDouble(LongSection.HeightPoint::atMetres).toArray(),
                        section.heights().points().stream().mapToDouble(LongSection.HeightPoint::heightMetres).toArray());
        double gutter = canvas.narrow() ? LEAST_GUTTER : NAMES_OF_BANDS;
        gutter = heights == null ? gutter : Math.max(gutter, heights.labelWidth() + 8);
        double right = canvas.width() - (canvas.narrow() ? 6 : RIGHT_MARGIN);
        frame = SectionFrame.of(canvas, section.lengthMetres(), gutter, right);
    }

    static void draw(SvgCanvas canvas, LongSection section) {
        new LongSectionDrawing(canvas, section).draw();
    }

    private void draw() {
        canvas.figure("length-m", section.lengthMetres());
        canvas.pixels("left", frame.left());
        canvas.pixels("right", frame.right());
        if (canvas.narrow()) {
            readings();
        }
        double y = heightField();
        SectionBands bands = new SectionBands(frame, section, y);
        y = bands.draw();
        if (!canvas.narrow()) {
            y = ClockBand.draw(frame, section, y);
        }
        y = CourseMarkDrawing.draw(frame, section, y);
        y = AxisDrawing.kilometres(canvas, section.lengthMetres() / 1000, frame.kilometres(), y + 2);
        key(bands, y + 8);
    }

    /** What the page's script reads out along the course, once for both widths: when the rider is where, and how high that is. */
    private void readings() {
        canvas.figures("passages-at-m", FigureList.of(section.passages(), each -> each.atMetres(), 1));
        canvas.figures("passages-s", FigureList.of(section.passages(), each -> each.afterSeconds().mid(), 0));
        if (section.heights() != null) {
            canvas.figures("passages-height-m", FigureList.of(section.passages(), each -> height(each.atMetres()), 1));
        }
        if (section.startOfDay() != null) {
            canvas.figure("start-s", section.startOfDay());
        }
    }

    /** On the straight line between two neighbours; at an end that of the end. */
    private double height(double at) {
        List<LongSection.HeightPoint> points = section.heights().points();
        for (int i = 1; i < points.size(); i++) {
            LongSection.HeightPoint from = points.get(i - 1);
            LongSection.HeightPoint to = points.get(i);
            if (at <= to.atMetres()) {
                double length = to.atMetres() - from.atMetres();
                return length == 0 ? to.heightMetres() : from.heightMetres() + (to.heightMetres() - from.heightMetres()) * Math.max(0, at - from.atMetres()) / length;
            }
        }
        return points.get(points.size() - 1).heightMetres();
    }

    /** Climbs and the height line. @return where the bands begin */
    private double heightField() {
        double top = section.climbs().isEmpty() ? 24 : ClimbLabels.HEIGHT + 8;
        if (heights == null) {
            canvas.text(TextStyle.PALE, Anchor.START, frame.left(), 14, "Heights are not known.");
            return 26;
        }
        double bottom = top + (canvas.narrow() ? HEIGHTS_NARROW : HEIGHTS_WIDE);
        heights.draw(frame, top, bottom);
        CourseMarkDrawing.cutOffLines(frame, section, top, bottom);
        ClimbLabels.draw(frame, section.climbs(), 0);
        return bottom + 10;
    }

    private void key(SectionBands bands, double top) {
        PictureKey key = new PictureKey(canvas, canvas.narrow() ? 1 : frame.left(), top);
        bands.addTo(key);
        Set<Kind> kinds = CourseMarkDrawing.kinds(section);
        if (canvas.narrow() || section.marks().size() > 1) {
            key.marks(kinds);
        }
        bands.addRemarksTo(key);
        canvas.reach(key.bottom());
    }
}
