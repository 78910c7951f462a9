package courseworthy.render.svg;

import courseworthy.render.svg.TextBox.Anchor;
import courseworthy.report.picture.LongSection;
import courseworthy.report.picture.LongSection.CourseMark;
import courseworthy.report.picture.LongSection.CourseMark.Kind;
import java.util.EnumSet;
import java.util.Set;

/** Marks on the base line of a section, each kind of its own shape: water, food, bags, cut-offs. */
final class CourseMarkDrawing {

    /** Of a shape, in pixels. */
    private static final double SIZE = 9;
    private static final int MOST_ROWS = 3;
    private static final double ROW = 14;

    private final SectionFrame frame;
    private final LongSection section;
    private final double top;
    /** Where the last shape of each row ends. */
    private final double[] ends = {-1, -1, -1};
    private int rows;

    private CourseMarkDrawing(SectionFrame frame, LongSection section, double top) {
        this.frame = frame;
        this.section = section;
        this.top = top;
    }

    /** Draws marks in as many rows as it takes. @return where they end */
    static double draw(SectionFrame frame, LongSection section, double top) {
        CourseMarkDrawing drawing = new CourseMarkDrawing(frame, section, top);
        section.marks().forEach(drawing::mark);
        return top + drawing.rows * ROW;
    }

    /** Lines of cut-offs over the field of heights. */
    static void cutOffLines(SectionFrame frame, LongSection section, double top, double bottom) {
        for (CourseMark mark : section.marks()) {
            if (mark.kinds().contains(Kind.CUT_OFF)) {
                double x = frame.at(mark.atMetres());
                frame.canvas().line("limit", x, top, x, bottom);
            }
        }
    }

    /** The kinds of marks that a section has. */
    static Set<Kind> kinds(LongSection section) {
        Set<Kind> out = EnumSet.noneOf(Kind.class);
        section.marks().forEach(each -> out.addAll(each.kinds()));
        return out;
    }

    private void mark(CourseMark mark) {
        double wide = mark.kinds().size() * (SIZE + 2) - 2;
        double left = Math.max(0, Math.min(frame.canvas().width() - wide, frame.at(mark.atMetres()) - wide / 2));
        int row = 0;
        while (row < MOST_ROWS - 1 && ends[row] + 3 > left) {
            row++;
        }
        double x = left;
        for (Kind kind : mark.kinds()) {
            shape(frame.canvas(), kind, x, top + row * ROW + 2);
            x += SIZE + 2;
        }
        ends[row] = left + wide;
        rows = Math.max(rows, row + 1);
        String words = words(mark);
        if (!frame.canvas().narrow() && row == 0 && clear(mark, left + wide, words)
                && frame.canvas().label(TextStyle.PLAIN, Anchor.START, left + wide + 4, top + 11, words)) {
            ends[0] = left + wide + 4 + PictureText.of(words).width(false);
        }
    }

    /** True where the words end before the next mark. */
    private boolean clear(CourseMark mark, double from, String words) {
        int next = section.marks().indexOf(mark) + 1;
        return next == section.marks().size()
                || from + 8 + PictureText.of(words).width(false) < frame.at(section.marks().get(next).atMetres()) - SIZE;
    }

    private String words(CourseMark mark) {
        StringBuilder out = new StringBuilder();
        for (Kind kind : mark.kinds()) {
            out.append(out.isEmpty() ? "" : ", ").append(words(kind));
            if (kind == Kind.CUT_OFF && mark.latestSeconds() != null) {
                out.append(' ').append(MomentText.of(section.startOfDay(), mark.latestSeconds()));
            }
        }
        return out.toString();
    }

    static String words(Kind kind) {
        return switch (kind) {
            case WATER -> "water";
            case FOOD -> "food";
            case BAG -> "bag";
            case CUT_OFF -> "cut-off";
        };
    }

    /** The shape of a kind in a square whose upper left corner is given. */
    static void shape(SvgCanvas canvas, Kind kind, double x, double y) {
        String at = "M" + SvgWriter.number(x) + " " + SvgWriter.number(y);
        switch (kind) {
            case WATER -> canvas.path("mark", at + "h9l-4.5 9z", y + SIZE);
            case FOOD -> canvas.path("mark", at + "m1 1h7v7h-7z", y + SIZE);
            case BAG -> canvas.path("mark open", at + "m4.5 0l4.5 4.5-4.5 4.5-4.5-4.5z", y + SIZE);
            case CUT_OFF -> canvas.path("mark limit-mark", at + "m3 0h3v9h-3z", y + SIZE);
        }
    }

    /** What a shape takes, in pixels. */
    static double size() {
        return SIZE;
    }
}
