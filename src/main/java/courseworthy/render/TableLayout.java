package courseworthy.render;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Which columns of a table stand side by side in a terminal, and how wide each is. Where not all fit, optional columns are left out
 * first; then cells are wrapped; then the table is shown in parts, each with the key columns; then row by row, without columns.
 */
final class TableLayout {

    /** Columns between two cells. */
    static final int GAP = 2;
    /** No column of words is made narrower than this. */
    private static final int LEAST = 18;
    /** A longer word is cut rather than given a wider column. */
    private static final int LONGEST_WORD = 24;

    /** Columns that stand side by side, with their widths. */
    record TableSlice(List<Integer> columns, List<Integer> widths) {

        int width() {
            int sum = GAP * (widths.size() - 1);
            for (int width : widths) {
                sum += width;
            }
            return sum;
        }
    }

    /**
     * What a column needs.
     *
     * @param natural the width at which nothing is wrapped
     * @param word    the width of its widest word
     * @param cells   the width of its widest cell, the heading aside
     * @param figures the cells are not to be wrapped, although the heading may be
     */
    record ColumnMeasure(int natural, int word, int cells, boolean figures, boolean optional) {

        int least() {
            int wrapped = Math.max(LEAST, Math.min(word, LONGEST_WORD));
            return Math.min(natural, figures ? Math.max(cells, word) : wrapped);
        }
    }

    private final List<ColumnMeasure> columns;
    private final int keys;
    private final int room;

    private TableLayout(List<ColumnMeasure> columns, int keys, int room) {
        this.columns = columns;
        this.keys = keys;
        this.room = room;
    }

    /** The parts to show below each other; none where the rows are to be shown without columns. */
    static List<TableSlice> of(List<ColumnMeasure> columns, int keys, int room) {
        return new TableLayout(columns, keys, room).parts();
    }

    private List<TableSlice> parts() {
        List<Integer> kept = kept();
        return least(kept).width() <= room ? List.of(fitted(kept)) : split(kept);
    }

    /** All columns, without as many optional ones as it takes until nothing has to be wrapped, the rightmost first. */
    private List<Integer> kept() {
        List<Integer> out = new ArrayList<>();
        for (int i = 0; i < columns.size(); i++) {
            out.add(i);
        }
        for (int i = columns.size() - 1; i >= keys && natural(out).width() > room; i--) {
            if (columns.get(i).optional()) {
                out.remove(Integer.valueOf(i));
            }
        }
        return out;
    }

    private List<TableSlice> split(List<Integer> kept) {
        List<Integer> key = kept.subList(0, Math.min(keys, kept.size()));
        List<Integer> others = kept.subList(key.size(), kept.size());
        for (int count = 2; count <= others.size(); count++) {
            List<TableSlice> parts = inParts(key, others, count);
            if (!parts.isEmpty()) {
                return parts;
            }
        }
        return List.of();
    }

    /** Some parts of nearly the same number of columns; none where one of them does not fit. */
    private List<TableSlice> inParts(List<Integer> key, List<Integer> others, int count) {
        List<TableSlice> out = new ArrayList<>();
        int size = (others.size() + count - 1) / count;
        for (int from = 0; from < others.size(); from += size) {
            List<Integer> part = new ArrayList<>(key);
            part.addAll(others.subList(from, Math.min(others.size(), from + size)));
            if (least(part).width() > room) {
                return List.of();
            }
            out.add(fitted(part));
        }
        return out;
    }

    /** The natural widths, the widest made narrower until all fit. */
    private TableSlice fitted(List<Integer> shown) {
        int[] widths = natural(shown).widths().stream().mapToInt(Integer::intValue).toArray();
        int excess = Arrays.stream(widths).sum() + GAP * (widths.length - 1) - room;
        for (; excess > 0; excess--) {
            widths[widestAboveLeast(shown, widths)]--;
        }
        return new TableSlice(shown, Arrays.stream(widths).boxed().toList());
    }

    private int widestAboveLeast(List<Integer> shown, int[] widths) {
        int widest = -1;
        for (int i = 0; i < widths.length; i++) {
            boolean shrinks = widths[i] > columns.get(shown.get(i)).least();
            if (shrinks && (widest < 0 || widths[i] > widths[widest])) {
                widest = i;
            }
        }
        return widest;
    }

    private TableSlice natural(List<Integer> shown) {
        return new TableSlice(shown, shown.stream().map(column -> columns.get(column).natural()).toList());
    }

    private TableSlice least(List<Integer> shown) {
        return new TableSlice(shown, shown.stream().map(column -> columns.get(column).least()).toList());
    }
}
