package courseworthy.render.pdf;

import java.util.List;

/**
 * A line of a column: all its text stands on one base line. Measures are points; across from the column's left edge, down from the row's top.
 *
 * @param gap    empty space above it, unless it is the first of its column
 * @param height to the top of the next row
 * @param ascent to the base line
 * @param keep   whether the next row has to stand in the same column
 * @param pieces its text
 * @param marks  its rules and boxes
 */
record PdfRow(double gap, double height, double ascent, boolean keep, List<RowPiece> pieces, List<RowMark> marks) {

    PdfRow {
        pieces = List.copyOf(pieces);
        marks = List.copyOf(marks);
    }

    /** Text of one element. */
    record RowPiece(StructureTag tag, double x, List<GlyphRun> runs) {
        RowPiece {
            runs = List.copyOf(runs);
        }
    }

    /** Characters in one face and size. */
    record GlyphRun(Face face, double size, double x, String text) {
    }

    /**
     * A rectangle.
     *
     * @param tag    what it belongs to; null where it is decoration
     * @param line   width of its outline; 0 where it is filled
     */
    record RowMark(StructureTag tag, double x, double y, double width, double height, double line) {
    }

    PdfRow above(double space) {
        return new PdfRow(space, height, ascent, keep, pieces, marks);
    }

    PdfRow kept(boolean with) {
        return new PdfRow(gap, height, ascent, with, pieces, marks);
    }

    PdfRow taller(double by) {
        return new PdfRow(gap, height + by, ascent, keep, pieces, marks);
    }

    PdfRow with(List<RowPiece> otherPieces, List<RowMark> otherMarks) {
        return new PdfRow(gap, height, ascent, keep, otherPieces, otherMarks);
    }
}
