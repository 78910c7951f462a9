package courseworthy.render;

import courseworthy.report.RichText;
import courseworthy.report.Style;
import courseworthy.report.Table;
import courseworthy.report.TableColumn;
import courseworthy.report.TableColumn.Alignment;
import java.util.ArrayList;
import java.util.List;

/** Writes a table on a page for the terminal. */
final class TerminalTable {

    private final TerminalPage page;
    private final Table table;
    private final int indent;
    private final List<StyledText> headings = new ArrayList<>();
    private final List<List<StyledText>> rows = new ArrayList<>();

    TerminalTable(TerminalPage page, Table table, int indent, FootnoteIndex footnotes) {
        this.page = page;
        this.table = table;
        this.indent = indent;
        for (TableColumn column : table.columns()) {
            headings.add(TerminalText.of(column.heading(), footnotes).in(Style.SECONDARY));
        }
        for (List<RichText> row : table.rows()) {
            rows.add(row.stream().map(cell -> TerminalText.of(cell, footnotes)).toList());
        }
    }

    void write() {
        List<TableLayout.ColumnMeasure> columns = new ArrayList<>();
        for (int i = 0; i < headings.size(); i++) {
            columns.add(column(i));
        }
        List<TableLayout.TableSlice> parts = TableLayout.of(columns, table.keyColumns(), page.width() - indent);
        for (int i = 0; i < parts.size(); i++) {
            if (i > 0) {
                page.blank();
            }
            part(parts.get(i));
        }
        if (parts.isEmpty()) {
            rows.forEach(this::stacked);
        }
    }

    private TableLayout.ColumnMeasure column(int index) {
        StyledText heading = headings.get(index);
        int cells = 0;
        int word = heading.widestWord();
        for (List<StyledText> row : rows) {
            cells = Math.max(cells, row.get(index).width());
            word = Math.max(word, row.get(index).widestWord());
        }
        boolean figures = table.columns().get(index).alignment() == Alignment.RIGHT;
        return new TableLayout.ColumnMeasure(Math.max(cells, heading.width()), word, cells, figures, table.columns().get(index).optional());
    }

    private void part(TableLayout.TableSlice part) {
        if (headings.stream().anyMatch(heading -> !heading.isEmpty())) {
            line(part, headings);
        }
        rows.forEach(row -> line(part, row));
    }

    /** One row, each cell wrapped in its column. */
    private void line(TableLayout.TableSlice part, List<StyledText> cells) {
        List<List<StyledText>> wrapped = new ArrayList<>();
        int most = 0;
        for (int i = 0; i < part.columns().size(); i++) {
            List<StyledText> lines = cells.get(part.columns().get(i)).lines(part.widths().get(i));
            wrapped.add(lines);
            most = Math.max(most, lines.size());
        }
        for (int at = 0; at < most; at++) {
            TerminalPage.TerminalLine row = page.row();
            int column = indent;
            for (int i = 0; i < wrapped.size(); i++) {
                StyledText cell = at < wrapped.get(i).size() ? wrapped.get(i).get(at) : StyledText.EMPTY;
                boolean right = table.columns().get(part.columns().get(i)).alignment() == Alignment.RIGHT;
                row.at(column + (right ? part.widths().get(i) - cell.width() : 0), cell);
                column += part.widths().get(i) + TableLayout.GAP;
            }
            row.end();
        }
    }

    /** One row without columns: its first cell, and below it each other cell after its heading. */
    private void stacked(List<StyledText> cells) {
        page.wrapped(" ".repeat(indent), indent + 2, cells.get(0).in(Style.STRONG));
        for (int i = 1; i < cells.size(); i++) {
            if (!cells.get(i).isEmpty()) {
                page.wrapped(" ".repeat(indent + 2), indent + 4, headings.get(i).labelling(cells.get(i)));
            }
        }
    }
}
