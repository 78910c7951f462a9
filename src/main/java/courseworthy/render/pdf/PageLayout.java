package courseworthy.render.pdf;

import courseworthy.render.pdf.ColumnFiller.Column;
import courseworthy.render.pdf.ColumnFiller.Placed;
import courseworthy.render.pdf.Rows.Type;
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
    record Result(List<Placed> rows, Tag root, int pages) {
    }

    Result made() {
        Result out = laidOut();
        if (faces.areLacking()) {
            note = List.of(Section.builder("faces", "Names").remark(LACKING).build());
            out = laidOut();
        }
        return out;
    }

    private Result laidOut() {
        for (double size = LARGEST; size >= SMALLEST; size -= STEP) {
            Result out = report.sides().size() == 1 ? oneOrTwoSides(size) : givenSides(size);
            if (out != null) {
                return out;
            }
        }
        return flowing();
    }

    private Result oneOrTwoSides(double size) {
        List<Section> all = new ArrayList<>(report.sides().get(0));
        all.addAll(note);
        Result one = size >= ONE_SIDE ? sides(List.of(all), size) : null;
        if (one != null) {
            return one;
        }
        Result best = null;
        double leastUneven = Double.MAX_VALUE;
        for (int i = 1; i < all.size(); i++) {
            Result two = sides(List.of(all.subList(0, i), all.subList(i, all.size())), size);
            double uneven = two == null ? Double.MAX_VALUE : unevenness(two);
            if (uneven < leastUneven) {
                best = two;
                leastUneven = uneven;
            }
        }
        return best;
    }

    private Result givenSides(double size) {
        List<List<Section>> out = new ArrayList<>(report.sides());
        List<Section> last = new ArrayList<>(out.get(out.size() - 1));
        last.addAll(note);
        out.set(out.size() - 1, last);
        return sides(out, size);
    }

    private static double unevenness(Result two) {
        double difference = 0;
        for (Placed each : two.rows()) {
            difference += (each.page() == 0 ? 1 : -1) * (each.row().gap() + each.row().height());
        }
        return Math.abs(difference);
    }

    /** Each list of sections on a side of its own; null where one does not fit. */
    private Result sides(List<List<Section>> sides, double size) {
        Tag root = Tag.document();
        List<Placed> out = new ArrayList<>(head(root));
        if (out.isEmpty()) {
            return null;
        }
        double below = bottom(out);
        for (int page = 0; page < sides.size(); page++) {
            List<List<Row>> sections = new ArrayList<>();
            for (Section section : sides.get(page)) {
                Rows rows = new Rows(faces, size, width);
                BlockRows.section(section, 2, root, rows);
                sections.add(rows.all());
            }
            double card = report.card() != null && page == sides.size() - 1 ? CardLayout.room() : 0;
            List<Placed> placed = side(sections, page, page == 0 ? below : MARGIN, card);
            if (placed == null) {
                return null;
            }
            out.addAll(placed);
        }
        addCard(out, root, new Column(sides.size() - 1, x(1), bottom() - CardLayout.room(), CardLayout.room()));
        return new Result(out, root, sides.size());
    }

    /**
     * One side: the right column begins with a section where that is possible, and the columns are then as even as they can be.
     *
     * @param card room to be left at the end of the right column
     * @return null where it does not fit
     */
    private List<Placed> side(List<List<Row>> sections, int page, double top, double card) {
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
            List<Placed> out = new ArrayList<>(ColumnFiller.fill(joined(sections.subList(0, best)), column -> new Column(page, x(0), top, room)));
            out.addAll(ColumnFiller.fill(joined(sections.subList(best, sections.size())), column -> new Column(page, x(1), top, room)));
            return out;
        }
        List<Placed> out = ColumnFiller.fill(joined(sections), column -> new Column(page + column / 2, x(column), column < 2 ? top : MARGIN,
                column == 1 ? room - card : column == 0 ? room : bottom() - MARGIN));
        boolean over = out.stream().anyMatch(each -> each.page() != page || each.top() + each.row().height() > bottom() - (each.x() > MARGIN ? card : 0) + 1);
        return over ? null : out;
    }

    private static List<Row> joined(List<List<Row>> sections) {
        return sections.stream().flatMap(List::stream).toList();
    }

    private void addCard(List<Placed> out, Tag root, Column at) {
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

    private Result flowing() {
        Tag root = Tag.document();
        List<Placed> out = new ArrayList<>(head(root));
        double below = bottom(out);
        Rows rows = new Rows(faces, SMALLEST, width);
        if (out.isEmpty()) {
            rows.add(rows.lines(root.add("H1"), report.title(), Type.SUBHEADING, 0));
            rows.add(rows.lines(root.add("P"), report.subtitle(), Type.BODY, 0));
        }
        report.sides().forEach(side -> side.forEach(section -> BlockRows.section(section, 2, root, rows)));
        note.forEach(section -> BlockRows.section(section, 2, root, rows));
        out.addAll(ColumnFiller.fill(rows.all(), column -> new Column(column / 2, x(column), column < 2 ? below : MARGIN, bottom() - (column < 2 ? below : MARGIN))));
        int pages = out.stream().mapToInt(Placed::page).max().orElse(0) + 1;
        addCard(out, root, new Column(pages, MARGIN, MARGIN, CardLayout.room()));
        return new Result(out, root, report.card() == null ? pages : pages + 1);
    }

    /** The title across the page; nothing where it is longer than a title is, and so stands with the text. */
    private List<Placed> head(Tag root) {
        Rows rows = new Rows(faces, TITLE, paper.width() - 2 * MARGIN);
        Tag title = root.add("H1");
        rows.add(rows.lines(title, report.title(), Type.TITLE, 0));
        rows.add(rows.lines(root.add("P"), report.subtitle(), Type.HEADING, 0));
        if (rows.all().size() > MOST_TITLE_LINES) {
            root.kids().clear();
            return List.of();
        }
        return ColumnFiller.fill(rows.all(), column -> new Column(0, MARGIN, MARGIN, Double.MAX_VALUE));
    }

    private double bottom(List<Placed> head) {
        return head.isEmpty() ? MARGIN : head.get(head.size() - 1).top() + head.get(head.size() - 1).row().height() + PaperSize.points(3);
    }

    /** Where the foot of a side stands: its upper left corner, and how wide it is. */
    Column foot(int page) {
        return new Column(page, MARGIN, paper.height() - MARGIN - FOOT + PaperSize.points(4), FOOT);
    }
}
