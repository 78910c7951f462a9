package courseworthy.render.pdf;

import courseworthy.render.pdf.PdfRow.RowMark;
import courseworthy.render.pdf.PdfRow.RowPiece;
import courseworthy.render.pdf.PdfRow.GlyphRun;
import courseworthy.report.RichText;
import courseworthy.report.Table;
import courseworthy.report.TableColumn.Alignment;
import java.util.ArrayList;
import java.util.List;

/** A table as rows of a column: as wide as its words where there is room, else with words broken in the widest of its columns. */
final class TableRows {

    private static final double RULE = 0.5;

    private final Table table;
    private final Rows rows;
    private final double indent;
    private final double between;
    private final double[] widths;

    TableRows(Table table, Rows rows, double indent) {
        this.table = table;
        this.rows = rows;
        this.indent = indent;
        between = rows.size() * 0.9;
        widths = widths();
    }

    void addTo(StructureTag parent) {
        StructureTag whole = parent.add("Table");
        List<RichText> headings = table.columns().stream().map(column -> column.heading()).toList();
        if (headings.stream().anyMatch(heading -> !heading.isEmpty())) {
            List<PdfRow> head = row(headings, whole.add("TR"), true);
            if (!head.isEmpty()) {
                PdfRow last = head.get(head.size() - 1).taller(rows.size() * 0.25);
                double wide = indent + sum() + between * (widths.length - 1);
                head.set(head.size() - 1, last.with(last.pieces(), List.of(new RowMark(null, indent, last.height() - RULE, wide - indent, RULE, 0))));
                rows.add(Rows.above(rows.size() * 0.4, head));
                rows.keepLast();
            }
        }
        for (List<RichText> cells : table.rows()) {
            rows.add(Rows.above(rows.size() * 0.15, row(cells, whole.add("TR"), false)));
        }
    }

    private List<PdfRow> row(List<RichText> cells, StructureTag row, boolean head) {
        List<PdfRow> out = new ArrayList<>();
        double x = indent;
        for (int i = 0; i < cells.size(); i++) {
            boolean key = i < table.keyColumns();
            StructureTag cell = head ? row.add("TH").scope("Column") : key ? row.add("TH").scope("Row") : row.add("TD");
            out = new ArrayList<>(rows.beside(out, cell(cells.get(i), cell, i, x, head)));
            x += widths[i] + between;
        }
        return out;
    }

    private List<PdfRow> cell(RichText text, StructureTag tag, int column, double x, boolean head) {
        List<PdfRow> out = new ArrayList<>();
        boolean right = table.columns().get(column).alignment() == Alignment.RIGHT;
        double size = rows.size();
        for (List<GlyphRun> line : PdfTextLines.of(text, rows.faces(), size, widths[column], head)) {
            GlyphRun last = line.get(line.size() - 1);
            double wide = last.x() + rows.faces().width(last.text().stripTrailing(), last.face(), size);
            double start = right ? x + Math.max(0, widths[column] - wide) : x;
            out.add(new PdfRow(0, size * 1.2, size * 0.95, false, List.of(new RowPiece(tag, start, line)), List.of()));
        }
        return out;
    }

    private double sum() {
        double out = 0;
        for (double each : widths) {
            out += each;
        }
        return out;
    }

    private double[] widths() {
        int count = table.columns().size();
        double[] out = new double[count];
        for (int i = 0; i < count; i++) {
            // A hair more than the words take, since sums of widths are not exact.
            out[i] = PdfTextLines.natural(table.columns().get(i).heading(), rows.faces(), rows.size(), true) + 0.01;
            for (List<RichText> cells : table.rows()) {
                out[i] = Math.max(out[i], PdfTextLines.natural(cells.get(i), rows.faces(), rows.size(), false) + 0.01);
            }
        }
        double room = rows.width() - indent - between * (count - 1);
        while (total(out) > room) {
            narrow(out, room);
        }
        return out;
    }

    /** Takes from the widest column what is too much, but no more than makes it as wide as the next. */
    private static void narrow(double[] widths, double room) {
        int widest = 0;
        for (int i = 1; i < widths.length; i++) {
            widest = widths[i] > widths[widest] ? i : widest;
        }
        double next = 0;
        for (int i = 0; i < widths.length; i++) {
            next = i == widest ? next : Math.max(next, widths[i]);
        }
        double over = total(widths) - room;
        double spare = widths[widest] - next;
        // Columns alike are narrowed in turn, by a little at a time.
        widths[widest] -= Math.min(over + 0.01, Math.max(spare, 1));
    }

    private static double total(double[] widths) {
        double out = 0;
        for (double each : widths) {
            out += each;
        }
        return out;
    }
}
