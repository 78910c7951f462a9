package courseworthy.render.pdf;

import java.util.Locale;

/** A size of paper, in mm (ISO 216; ANSI Y14.1). */
public enum PaperSize {
    A4(210, 297), LETTER(215.9, 279.4);

    private static final double POINTS_PER_MM = 72 / 25.4;

    private final double width;
    private final double height;

    PaperSize(double width, double height) {
        this.width = width;
        this.height = height;
    }

    /** In points of 1/72 inch, the unit of PDF. */
    double width() {
        return points(width);
    }

    double height() {
        return points(height);
    }

    static double points(double mm) {
        return mm * POINTS_PER_MM;
    }

    /** As it is typed. */
    @Override
    public String toString() {
        return name().toLowerCase(Locale.ROOT);
    }
}
