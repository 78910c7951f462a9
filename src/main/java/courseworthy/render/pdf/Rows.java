package courseworthy.render.pdf;

import courseworthy.render.pdf.PdfRow.RowMark;
import courseworthy.render.pdf.PdfRow.RowPiece;
import courseworthy.render.pdf.PdfRow.GlyphRun;
import courseworthy.report.RichText;
import java.util.ArrayList;
import java.util.List;

/** Rows of one column in one size of type, as they are collected from the top down. */
final class Rows {

    /** Height of a line and of what stands above its base line, of the size of type. */
    private static final double LEADING = 1.2;
    private static final double ASCENT = 0.95;

    private final Faces faces;
    private final double size;
    private final double width;
    private final List<PdfRow> rows = new ArrayList<>();

    /** @param size of the text, in points; all else follows from it */
    Rows(Faces faces, double size, double width) {
        this.faces = faces;
        this.size = size;
        this.width = width;
    }

    List<PdfRow> all() {
        return rows;
    }

    Faces faces() {
        return faces;
    }

    double size() {
        return size;
    }

    double width() {
        return width;
    }

    void add(List<PdfRow> more) {
        rows.addAll(more);
    }

    /** The last row and the next one stay together. */
    void keepLast() {
        rows.set(rows.size() - 1, rows.get(rows.size() - 1).kept(true));
    }

    /** Text as rows of their own, which are not added yet. */
    List<PdfRow> lines(StructureTag tag, RichText text, TypeStyle type, double x) {
        List<PdfRow> out = new ArrayList<>();
        double points = size * type.scale();
        List<List<GlyphRun>> lines = PdfTextLines.of(text, faces, points, width - x, type.bold());
        for (List<GlyphRun> line : lines) {
            out.add(new PdfRow(0, points * LEADING, points * ASCENT, false, List.of(new RowPiece(tag, x, line)), List.of()));
        }
        return together(out);
    }

    /** Several texts side by side, their lines level with each other; columns by where they begin. */
    List<PdfRow> beside(List<PdfRow> left, List<PdfRow> right) {
        List<PdfRow> out = new ArrayList<>();
        for (int i = 0; i < Math.max(left.size(), right.size()); i++) {
            if (i >= left.size()) {
                out.add(right.get(i));
            } else if (i >= right.size()) {
                out.add(left.get(i));
            } else {
                out.add(joined(left.get(i), right.get(i)));
            }
        }
        return together(out);
    }

    private static PdfRow joined(PdfRow one, PdfRow other) {
        List<RowPiece> pieces = new ArrayList<>(one.pieces());
        pieces.addAll(other.pieces());
        List<RowMark> marks = new ArrayList<>(one.marks());
        marks.addAll(other.marks());
        return new PdfRow(Math.max(one.gap(), other.gap()), Math.max(one.height(), other.height()), Math.max(one.ascent(), other.ascent()), one.keep(), pieces, marks);
    }

    /** The same rows, none of them parted from the next. */
    static List<PdfRow> together(List<PdfRow> rows) {
        List<PdfRow> out = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            out.add(rows.get(i).kept(i + 1 < rows.size()));
        }
        return out;
    }

    /** The same rows with space above the first. */
    static List<PdfRow> above(double space, List<PdfRow> rows) {
        List<PdfRow> out = new ArrayList<>(rows);
        if (!out.isEmpty()) {
            out.set(0, out.get(0).above(space));
        }
        return out;
    }

    /** A way to set text. */
    enum TypeStyle {
        BODY(1, false), STRONG(1, true), SMALL(0.85, false), HEADING(1.25, true), SUBHEADING(1.05, true), VALUE(1.5, true), TITLE(2, true);

        private final double scale;
        private final boolean bold;

        TypeStyle(double scale, boolean bold) {
            this.scale = scale;
            this.bold = bold;
        }

        /** Of the size of the text. */
        double scale() {
            return scale;
        }

        boolean bold() {
            return bold;
        }
    }
}
