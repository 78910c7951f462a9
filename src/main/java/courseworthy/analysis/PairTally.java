package courseworthy.analysis;

import courseworthy.analysis.Finding.Kind;
import java.util.Arrays;

/**
 * Pairs of rows by kind and by the row a remark would be about: how many, and the first few partners of each. Two tallies of parts of the
 * pairs add up to the tally of all, in any order.
 */
final class PairTally {

    private final int[][] counts = new int[Kind.values().length][];
    /** By kind and row the first partners, ascending, and then room for more. */
    private final int[][][] partners = new int[Kind.values().length][][];
    private final int rows;
    private final int named;

    /** @param named so many partners of a row are named for each kind */
    PairTally(int rows, int named) {
        this.rows = rows;
        this.named = named;
    }

    void add(Kind kind, int row, int partner) {
        room(kind.ordinal());
        name(kind.ordinal(), row, partner);
        counts[kind.ordinal()][row]++;
    }

    /** With each of some partners. */
    void add(Kind kind, int row, RowSet with) {
        int count = with.count();
        if (count > 0) {
            int next = with.next(0);
            int first = Math.min(named, count);
            for (int i = 0; i < first; i++) {
                add(kind, row, next);
                next = with.next(next + 1);
            }
            counts[kind.ordinal()][row] += count - first;
        }
    }

    private void room(int kind) {
        if (counts[kind] == null) {
            counts[kind] = new int[rows];
            partners[kind] = new int[rows][];
        }
    }

    /** Keeps the first of them, ascending. */
    private void name(int kind, int row, int partner) {
        int size = Math.min(named, counts[kind][row]);
        int[] all = partners[kind][row] == null ? new int[Math.min(named, 4)] : partners[kind][row];
        if (size == named && partner > all[size - 1]) {
            return;
        }
        if (size < named && size == all.length) {
            all = Arrays.copyOf(all, Math.min(named, 2 * size));
        }
        int at = size < named ? size : size - 1;
        for (; at > 0 && all[at - 1] > partner; at--) {
            all[at] = all[at - 1];
        }
        all[at] = partner;
        partners[kind][row] = all;
    }

    void add(PairTally other) {
        for (int kind = 0; kind < counts.length; kind++) {
            if (other.counts[kind] == null) {
                continue;
            }
            room(kind);
            for (int row = 0; row < rows; row++) {
                int theirs = Math.min(named, other.counts[kind][row]);
                for (int i = 0; i < theirs; i++) {
                    name(kind, row, other.partners[kind][row][i]);
                    counts[kind][row]++;
                }
                counts[kind][row] += other.counts[kind][row] - theirs;
            }
        }
    }

    int count(Kind kind, int row) {
        return counts[kind.ordinal()] == null ? 0 : counts[kind.ordinal()][row];
    }

    /** One of the partners that are named, or -1 where there are no more. */
    int partner(Kind kind, int row, int index) {
        return index >= Math.min(named, count(kind, row)) ? -1 : partners[kind.ordinal()][row][index];
    }
}
