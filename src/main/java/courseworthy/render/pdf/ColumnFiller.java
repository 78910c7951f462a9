package courseworthy.render.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;

/** Puts rows into columns, one after another: rows that belong together go to the next column together. */
final class ColumnFiller {

    private final IntFunction<PageColumn> columns;
    private final List<PlacedRow> placed = new ArrayList<>();
    private int at;
    private double used;

    private ColumnFiller(IntFunction<PageColumn> columns) {
        this.columns = columns;
    }

    /** A column of a page: its upper left corner, from the upper left corner of the page, and how much it holds, in points. */
    record PageColumn(int page, double x, double top, double height) {
    }

    /** A row in its place: its upper left corner, from the upper left corner of the page. */
    record PlacedRow(PdfRow row, int page, double x, double top) {
    }

    /** @param columns each column by its number, as many as may be needed */
    static List<PlacedRow> fill(List<PdfRow> rows, IntFunction<PageColumn> columns) {
        ColumnFiller filler = new ColumnFiller(columns);
        int from = 0;
        while (from < rows.size()) {
            int to = from + 1;
            while (to < rows.size() && rows.get(to - 1).keep()) {
                to++;
            }
            filler.add(rows.subList(from, to));
            from = to;
        }
        return filler.placed;
    }

    private void add(List<PdfRow> group) {
        double height = height(group);
        double room = columns.apply(at).height();
        if (used > 0 && used + group.get(0).gap() + height > room) {
            next();
        }
        for (PdfRow row : group) {
            if (used > 0 && used + row.gap() + row.height() > columns.apply(at).height()) {
                next();
            }
            PageColumn column = columns.apply(at);
            used += used > 0 ? row.gap() : 0;
            placed.add(new PlacedRow(row, column.page(), column.x(), column.top() + used));
            used += row.height();
        }
    }

    private void next() {
        at++;
        used = 0;
    }

    /** What rows take of a column that begins with them. */
    static double height(List<PdfRow> group) {
        double out = group.isEmpty() ? 0 : -group.get(0).gap();
        for (PdfRow row : group) {
            out += row.gap() + row.height();
        }
        return out;
    }
}
