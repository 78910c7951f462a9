package courseworthy.rulebase.check;

import courseworthy.rulebase.check.Remark.Kind;
import java.util.Arrays;

/**
 * Pairs of rows by kind and by the row a remark would be about: how many, and the first few partners of each. Two tallies of parts of the
 * pairs add up to the tally of all, in any order.
 */
final class Tally {

    /** So many partners of a row are named for each kind. */
    static final int NAMED = 3;

    private final int[][] counts = new int[Kind.values().length][];
    private final int[][] partners = new int[Kind.values().length][];
    private final int rows;

    Tally(int rows) {
        this.rows = rows;
    }

    void add(Kind kind, int row, int partner) {
        room(kind.ordinal());
        counts[kind.ordinal()][row]++;
        name(kind.ordinal(), row, partner);
    }

    private void room(int kind) {
        if (counts[kind] == null) {
            counts[kind] = new int[rows];
            partners[kind] = new int[rows * NAMED];
            Arrays.fill(partners[kind], Integer.MAX_VALUE);
        }
    }

    /** Keeps the first of them, ascending. */
    private void name(int kind, int row, int partner) {
        int[] all = partners[kind];
        int next = partner;
        for (int i = row * NAMED; i < (row + 1) * NAMED; i++) {
            if (next < all[i]) {
                int later = all[i];
                all[i] = next;
                next = later;
            }
        }
    }

    void add(Tally other) {
        for (int kind = 0; kind < counts.length; kind++) {
            if (other.counts[kind] == null) {
                continue;
            }
            room(kind);
            for (int row = 0; row < rows; row++) {
                counts[kind][row] += other.counts[kind][row];
                for (int i = row * NAMED; i < (row + 1) * NAMED && other.partners[kind][i] != Integer.MAX_VALUE; i++) {
                    name(kind, row, other.partners[kind][i]);
                }
            }
        }
    }

    int count(Kind kind, int row) {
        return counts[kind.ordinal()] == null ? 0 : counts[kind.ordinal()][row];
    }

    /** One of the partners that are named, or -1 where there are no more. */
    int partner(Kind kind, int row, int index) {
        return index >= Math.min(NAMED, count(kind, row)) ? -1 : partners[kind.ordinal()][row * NAMED + index];
    }
}
