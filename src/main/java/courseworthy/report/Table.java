package courseworthy.report;

import courseworthy.report.TableColumn.Alignment;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A table.
 *
 * @param caption    what it shows; may be empty
 * @param rows       each with a cell for every column
 * @param keyColumns how many columns from the left say what a row is about; they are repeated where a wide table is shown in parts
 */
public record Table(RichText caption, List<TableColumn> columns, List<List<RichText>> rows, int keyColumns) implements Block {

    public Table {
        columns = List.copyOf(columns);
        List<List<RichText>> copy = new ArrayList<>();
        for (List<RichText> row : rows) {
            if (row.size() != columns.size()) {
                throw new IllegalArgumentException(row.size() + " cells in a table of " + columns.size() + " columns");
            }
            copy.add(List.copyOf(row));
        }
        rows = List.copyOf(copy);
        if (keyColumns < 0 || keyColumns > columns.size()) {
            throw new IllegalArgumentException(keyColumns + " key columns of " + columns.size());
        }
    }

    public static Builder builder() {
        return new Builder();
    }

    @Override
    public void accept(BlockVisitor visitor) {
        visitor.table(this);
    }

    /** Collects columns, then rows. */
    public static final class Builder {
        private RichText caption = RichText.EMPTY;
        private final List<TableColumn> columns = new ArrayList<>();
        private final List<List<RichText>> rows = new ArrayList<>();
        private int keyColumns = 1;

        private Builder() {
        }

        public Builder caption(String words) {
            caption = RichText.of(words);
            return this;
        }

        /** A column of words. */
        public Builder column(String heading) {
            return column(RichText.of(heading), Alignment.LEFT, false);
        }

        /** A column of figures. */
        public Builder figures(String heading) {
            return column(RichText.of(heading), Alignment.RIGHT, false);
        }

        public Builder column(RichText heading, Alignment alignment, boolean optional) {
            columns.add(new TableColumn(heading, alignment, optional));
            return this;
        }

        /** How many columns from the left say what a row is about: one where it is not said. */
        public Builder keyColumns(int count) {
            keyColumns = count;
            return this;
        }

        public Builder row(List<RichText> cells) {
            rows.add(List.copyOf(cells));
            return this;
        }

        public Builder row(RichText... cells) {
            return row(List.of(cells));
        }

        public Builder row(String... cells) {
            List<RichText> out = new ArrayList<>();
            for (String cell : cells) {
                out.add(RichText.of(cell));
            }
            return row(out);
        }

        /** Optional columns in which nothing stands are left out. */
        public Table build() {
            List<Integer> kept = IntStream.range(0, columns.size()).filter(i -> rows.isEmpty() || !columns.get(i).optional() || rows.stream().anyMatch(row -> !row.get(i).isEmpty()))
                    .boxed().toList();
            List<List<RichText>> cells = kept.size() == columns.size() ? rows : rows.stream().map(row -> kept.stream().map(row::get).toList()).toList();
            return new Table(caption, kept.stream().map(columns::get).toList(), cells, Math.min(keyColumns, kept.size()));
        }
    }
}
