package courseworthy.render.svg;

import courseworthy.render.svg.TextBox.Anchor;
import courseworthy.report.picture.GroundMaterial;
import courseworthy.report.picture.LongSection.CourseMark.Kind;
import java.util.Collection;

/** A row of shapes and hatches with their words below a picture, for those that found no room for words where they stand. */
final class PictureKey {

    private static final double SWATCH = 28;
    private static final double SWATCH_HEIGHT = 20;
    private static final double ROW = 26;
    /** Of words, below the top of their row. */
    private static final double BASELINE = 14;
    private static final double BETWEEN = 14;

    private final SvgCanvas canvas;
    private final double left;
    private double x;
    private double y;
    private boolean empty = true;

    PictureKey(SvgCanvas canvas, double left, double top) {
        this.canvas = canvas;
        this.left = left;
        this.x = left;
        this.y = top;
    }

    PictureKey ground(GroundMaterial material, String words) {
        double at = next(SWATCH, words.isEmpty() ? GroundWords.of(material) : words);
        canvas.hatch(material, at, y, SWATCH, SWATCH_HEIGHT);
        if (material == GroundMaterial.UNKNOWN) {
            canvas.text(TextStyle.VALUE, Anchor.MIDDLE, at + SWATCH / 2, y + BASELINE, "?");
        }
        return this;
    }

    PictureKey marks(Collection<Kind> kinds) {
        for (Kind each : kinds) {
            double size = CourseMarkDrawing.size();
            double at = next(size, CourseMarkDrawing.words(each));
            CourseMarkDrawing.shape(canvas, each, at, y + 6);
        }
        return this;
    }

    /** A dot, filled or open. */
    PictureKey dot(boolean open, String words) {
        double at = next(12, words);
        canvas.circle(open ? "dot open" : "dot", at + 6, y + 10, 5);
        return this;
    }

    /** A bar of work. */
    PictureKey work(String words) {
        canvas.rectangle("solid", next(SWATCH, words), y + 4, SWATCH, 12);
        return this;
    }

    PictureKey lastMoment(String words) {
        double at = next(10, words);
        canvas.path("mark limit-mark", "M" + SvgWriter.number(at + 9) + " " + SvgWriter.number(y + 3) + "v14l-9-7z", y + SWATCH_HEIGHT);
        return this;
    }

    /** A line on a ground, as on a track. */
    PictureKey tracks(Collection<GroundMaterial> grounds) {
        for (GroundMaterial each : grounds) {
            double at = next(SWATCH, GroundWords.of(each));
            canvas.line("bed", at, y + 10, at + SWATCH, y + 10);
            canvas.line("track " + HatchPattern.of(each).styleClass(), at, y + 10, at + SWATCH, y + 10);
        }
        return this;
    }

    /** What is shaded. */
    PictureKey shade(String words) {
        double at = next(SWATCH, words);
        canvas.shade(at, y, SWATCH, SWATCH_HEIGHT);
        return this;
    }

    /** Words that say what something in the picture means. */
    PictureKey words(String words) {
        next(0, words);
        return this;
    }

    /** Where the key ends. */
    double bottom() {
        return empty ? y : y + ROW;
    }

    /** Makes room for a shape and its words, and writes these. @return the left side of the shape */
    private double next(double shape, String words) {
        double gap = shape > 0 ? 5 : 0;
        double wide = shape + gap + PictureText.of(words).width(false);
        if (!empty && x + wide > canvas.width()) {
            x = left;
            y += ROW;
        }
        double at = x;
        PictureText shown = PictureText.of(words).cut(canvas.width() - at - shape - gap, false);
        canvas.text(TextStyle.PLAIN, Anchor.START, at + shape + gap, y + BASELINE, shown);
        x += wide + BETWEEN;
        empty = false;
        return at;
    }
}
