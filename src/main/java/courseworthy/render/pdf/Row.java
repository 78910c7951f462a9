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
record Row(double gap, double height, double ascent, boolean keep, List<Piece> pieces, List<Mark> marks) {

    Row {
        pieces = List.copyOf(pieces);
        marks = List.copyOf(marks);
    }

    /** Text of one element. */
    record Piece(Tag tag, double x, List<Run> runs) {
        Piece {
            runs = List.copyOf(runs);
        }
    }

    /** Characters in one face and size. */
    record Run(Face face, double size, double x, String text) {
    }

    /**
     * A rectangle.
     *
     * @param tag    what it belongs to; null where it is decoration
     * @param line   width of its outline; 0 where it is filled
     */
    record Mark(Tag tag, double x, double y, double width, double height, double line) {
    }

    Row above(double space) {
        return new Row(space, height, ascent, keep, pieces, marks);
    }

    Row kept(boolean with) {
        return new Row(gap, height, ascent, with, pieces, marks);
    }

    Row taller(double by) {
        return new Row(gap, height + by, ascent, keep, pieces, marks);
    }

    Row with(List<Piece> otherPieces, List<Mark> otherMarks) {
        return new Row(gap, height, ascent, keep, otherPieces, otherMarks);
    }
}
