package courseworthy.render.pdf;

import courseworthy.render.pdf.ColumnFiller.PageColumn;
import courseworthy.render.pdf.ColumnFiller.PlacedRow;
import courseworthy.render.pdf.Rows.TypeStyle;
import courseworthy.report.PrintedReport;
import courseworthy.report.RichText;
import courseworthy.report.Section;
import java.util.ArrayList;
import java.util.List;

/**
 * A printed report laid out in two columns a side, in the largest type that fits on the sides it may take. Where even the smallest does
 * not fit, it goes on to further sides rather than lose a word.
 */
final class PageLayout {

    /** Sizes of type, in points: below about seven, text on a wall is not read (judgement). */
    private static final double LARGEST = 10;
    private static final double SMALLEST = 7;
    private static final double STEP = 0.25;
    /** One side is enough only where it can be read from the stand. */
    private static final double ONE_SIDE = 8.5;
    private static final double TITLE = 8;
    private static final double MARGIN = PaperSize.points(11);
    private static final double FOOT = PaperSize.points(8);
    private static final double GUTTER = PaperSize.points(7);
    private static final int MOST_TITLE_LINES = 3;
    private static final String LACKING = "An empty square stands for a character that this PDF has no typeface for; the page (--format html) shows it.";

    private final PrintedReport report;
    private final Faces faces;
    private final PaperSize paper;
    private final double width;
    /** What is to be said at the end; empty for nothing. */
    private List<Section> note = List.of();

    PageLayout(PrintedReport report, Faces faces, PaperSize paper) {
        this.report = report;
        this.faces = faces;
        this.paper = paper;
        width = (paper.width() - 2 * MARGIN - GUTTER) / 2;
    }

    /**
     * What stands where.
     *
     * @param root the structure of it
     */
    record LaidOutPages(List<PlacedRow> rows, StructureTag root, int pages) {
    }

    LaidOutPages made() {
        LaidOutPages out = laidOut();
        if (faces.areLacking()) {
            note = List.of(Section.builder("faces", "Names").remark(LACKING).build());
            out = laidOut();
        }
        return out;
    }

    private LaidOutPages laidOut() {
        for (double size = LARGEST; size >= SMALLEST; size -= STEP) {
            LaidOutPages out = report.sides().size() == 1 ? oneOrTwoSides(size) : givenSides(size);
            if (out != null) {
                return out;
            }
        }
        return flowing();
    }

    private LaidOutPages oneOrTwoSides(double size) {
        List<Section> all = new ArrayList<>(report.sides().get(0));
        all.addAll(note);
        LaidOutPages one = size >= ONE_SIDE ? sides(List.of(all), size) : null;
        if (one != null) {
            return one;
        }
        LaidOutPages best = null;
        double leastUneven = Double.MAX_VALUE;
        for (int i = 1; i < all.size(); i++) {
            LaidOutPages two = sides(List.of(all.subList(0, i), all.subList(i, all.size())), size);
            double uneven = two == null ? Double.MAX_VALUE : unevenness(two);
            if (uneven < leastUneven) {
                best = two;
                leastUneven = uneven;
            }
        }
        return best;
    }

    private LaidOutPages givenSides(double size) {
        List<List<Section>> out = new ArrayList<>(report.sides());
        List<Section> last = new ArrayList<>(out.get(out.size() - 1));
        last.addAll(note);
        out.set(out.size() - 1, last);
        return sides(out, size);
    }

    private static double unevenness(LaidOutPages two) {
        double difference = 0;
        for (PlacedRow each : two.rows()) {
            difference += (each.page() == 0 ? 1 : -1) * (each.row().gap() + each.row().height());
        }
        return Math.abs(difference);
    }

    /** Each list of sections on a side of its own; null where one does not fit. */
    private LaidOutPages sides(List<List<Section>> sides, double size) {
        StructureTag root = StructureTag.document();
        List<PlacedRow> out = new ArrayList<>(head(root));
        if (out.isEmpty()) {
            return null;
        }
        double below = bottom(out);
        for (int page = 0; page < sides.size(); page++) {
            List<List<PdfRow>> sections = new ArrayList<>();
            for (Section section : sides.get(page)) {
                Rows rows = new Rows(faces, size, width);
                BlockRows.section(section, 2, root, rows);
                sections.add(rows.all());
            }
            double card = report.card() != null && page == sides.size() - 1 ? CardLayout.room() : 0;
            List<PlacedRow> placed = side(sections, page, page == 0 ? below : MARGIN, card);
            if (placed == null) {
                return null;
            }
            out.addAll(placed);
        }
        addCard(out, root, new PageColumn(sides.size() - 1, x(1), bottom() - CardLayout.room(), CardLayout.room()));
        return new LaidOutPages(out, root, sides.size());
    }

    /**
     * One side: the right column begins with a section where that is possible, and the columns are then as even as they can be.
     *
     * @param card room to be left at the end of the right column
     * @return null where it does not fit
     */
    private List<PlacedRow> side(List<List<PdfRow>> sections, int page, double top, double card) {
        double room = bottom() - top;
        int best = -1;
        double lowest = Double.MAX_VALUE;
        for (int left = 1; left <= sections.size(); left++) {
            double first = ColumnFiller.height(joined(sections.subList(0, left)));
            double second = ColumnFiller.height(joined(sections.subList(left, sections.size())));
            if (first <= room && second <= room - card && Math.max(first, second) < lowest) {
                best = left;
                lowest = Math.max(first, second);
            }
        }
        if (best > 0) {
            List<PlacedRow> out = new ArrayList<>(ColumnFiller.fill(joined(sections.subList(0, best)), column -> new PageColumn(page, x(0), top, room)));
            out.addAll(ColumnFiller.fill(joined(sections.subList(best, sections.size())), column -> new PageColumn(page, x(1), top, room)));
            return out;
        }
        List<PlacedRow> out = ColumnFiller.fill(joined(sections), column -> new PageColumn(page + column / 2, x(column), column < 2 ? top : MARGIN,
                column == 1 ? room - card : column == 0 ? room : bottom() - MARGIN));
        boolean over = out.stream().anyMatch(each -> each.page() != page || each.top() + each.row().height() > bottom() - (each.x() > MARGIN ? card : 0) + 1);
        return over ? null : out;
    }

    private static List<PdfRow> joined(List<List<PdfRow>> sections) {
        return sections.stream().flatMap(List::stream).toList();
    }

    private void addCard(List<PlacedRow> out, StructureTag root, PageColumn at) {
        if (report.card() != null) {
            out.addAll(CardLayout.placed(report.card(), at, width, root, faces));
        }
    }

    /** Where text ends on each side. */
    private double bottom() {
        return paper.height() - MARGIN - FOOT;
    }

    private double x(int column) {
        return MARGIN + column % 2 * (width + GUTTER);
    }

    private LaidOutPages flowing() {
        StructureTag root = StructureTag.document();
        List<PlacedRow> out = new ArrayList<>(head(root));
        double below = bottom(out);
        Rows rows = new Rows(faces, SMALLEST, width);
        if (out.isEmpty()) {
            rows.add(rows.lines(root.add("H1"), report.title(), TypeStyle.SUBHEADING, 0));
            rows.add(rows.lines(root.add("P"), report.subtitle(), TypeStyle.BODY, 0));
        }
        report.sides().forEach(side -> side.forEach(section -> BlockRows.section(section, 2, root, rows)));
        note.forEach(section -> BlockRows.section(section, 2, root, rows));
        out.addAll(ColumnFiller.fill(rows.all(), column -> new PageColumn(column / 2, x(column), column < 2 ? below : MARGIN, bottom() - (column < 2 ? below : MARGIN))));
        int pages = out.stream().mapToInt(PlacedRow::page).max().orElse(0) + 1;
        addCard(out, root, new PageColumn(pages, MARGIN, MARGIN, CardLayout.room()));
        return new LaidOutPages(out, root, report.card() == null ? pages : pages + 1);
    }

    /** The title across the page; nothing where it is longer than a title is, and so stands with the text. */
    private List<PlacedRow> head(StructureTag root) {
        Rows rows = new Rows(faces, TITLE, paper.width() - 2 * MARGIN);
        StructureTag title = root.add("H1");
        rows.add(rows.lines(title, report.title(), TypeStyle.TITLE, 0));
        rows.add(rows.lines(root.add("P"), report.subtitle(), TypeStyle.HEADING, 0));
        if (rows.all().size() > MOST_TITLE_LINES) {
            root.kids().clear();
            return List.of();
        }
        return ColumnFiller.fill(rows.all(), column -> new PageColumn(0, MARGIN, MARGIN, Double.MAX_VALUE));
    }

    private double bottom(List<PlacedRow> head) {
        return head.isEmpty() ? MARGIN : head.get(head.size() - 1).top() + head.get(head.size() - 1).row().height() + PaperSize.points(3);
    }

    /** Where the foot of a side stands: its upper left corner, and how wide it is. */
    PageColumn foot(int page) {
        return new PageColumn(page, MARGIN, paper.height() - MARGIN - FOOT + PaperSize.points(4), FOOT);
    }
}
