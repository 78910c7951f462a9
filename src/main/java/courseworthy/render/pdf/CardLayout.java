package courseworthy.render.pdf;

import courseworthy.render.pdf.ColumnFiller.PageColumn;
import courseworthy.render.pdf.ColumnFiller.PlacedRow;
import courseworthy.render.pdf.PdfRow.RowMark;
import courseworthy.report.RichText;
import courseworthy.report.Section;
import java.util.ArrayList;
import java.util.List;

/** A card to cut out and stick to the top tube, 75 by 105 mm, with marks at its corners to cut by. */
final class CardLayout {

    private static final double WIDTH = PaperSize.points(75);
    private static final double HEIGHT = PaperSize.points(105);
    private static final double MARGIN = PaperSize.points(4);
    /** Marks stand off the corner, so that they are cut away. */
    private static final double MARK_GAP = PaperSize.points(1.5);
    private static final double MARK_LENGTH = PaperSize.points(4);
    private static final double MARK_LINE = 0.5;
    private static final double LARGEST = 11;
    private static final double SMALLEST = 5;
    private static final double STEP = 0.25;
    private static final RichText HEADING = RichText.of("For the top tube: cut out, 75 by 105 mm");

    private CardLayout() {
    }

    /** What it takes of a column: the card, its marks, and its heading. */
    static double room() {
        return HEIGHT + 2 * (MARK_GAP + MARK_LENGTH) + MARGIN;
    }

    /** @param at where there is room for it, from its upper left corner; its height is that of the room */
    static List<PlacedRow> placed(Section card, PageColumn at, double width, StructureTag root, Faces faces) {
        StructureTag tag = root.add("Sect");
        List<PlacedRow> out = new ArrayList<>();
        Rows heading = new Rows(faces, 7, width);
        heading.add(heading.lines(tag.add("H2"), HEADING, Rows.TypeStyle.BODY, 0));
        heading.all().forEach(row -> out.add(new PlacedRow(row, at.page(), at.x(), at.top())));
        double left = at.x() + (width - WIDTH) / 2;
        double top = at.top() + room() - HEIGHT - MARK_GAP - MARK_LENGTH;
        marks(out, at.page(), left, top);
        double bottom = top + HEIGHT - MARGIN;
        for (PlacedRow each : fitted(card, new PageColumn(at.page(), left + MARGIN, top + MARGIN, Double.MAX_VALUE), tag, faces)) {
            if (each.top() + each.row().height() <= bottom) {
                out.add(each);
            }
        }
        return out;
    }

    /** In the largest type in which it fits. */
    private static List<PlacedRow> fitted(Section card, PageColumn at, StructureTag parent, Faces faces) {
        int kids = parent.kids().size();
        for (double size = LARGEST; ; size -= STEP) {
            Rows rows = new Rows(faces, size, WIDTH - 2 * MARGIN);
            BlockRows.section(card, 3, parent, rows);
            List<PlacedRow> out = ColumnFiller.fill(rows.all(), column -> at);
            PlacedRow last = out.get(out.size() - 1);
            if (size <= SMALLEST || last.top() + last.row().height() <= at.top() + HEIGHT - 2 * MARGIN) {
                return out;
            }
            parent.kids().remove(kids);
        }
    }

    private static void marks(List<PlacedRow> out, int page, double left, double top) {
        for (double x : new double[] {left, left + WIDTH}) {
            for (double y : new double[] {top, top + HEIGHT}) {
                double across = x == left ? x - MARK_GAP - MARK_LENGTH : x + MARK_GAP;
                double down = y == top ? y - MARK_GAP - MARK_LENGTH : y + MARK_GAP;
                RowMark level = new RowMark(null, across - x, -MARK_LINE / 2, MARK_LENGTH, MARK_LINE, 0);
                RowMark upright = new RowMark(null, -MARK_LINE / 2, down - y, MARK_LINE, MARK_LENGTH, 0);
                out.add(new PlacedRow(new PdfRow(0, 0, 0, false, List.of(), List.of(level, upright)), page, x, y));
            }
        }
    }
}
