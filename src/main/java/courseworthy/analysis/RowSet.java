package courseworthy.analysis;

/** A set of rows of one sheet, by their places; where only the later rows matter, the earlier are left out. */
final class RowSet {

    private final long[] words;
    /** Words before this are not looked at. */
    private final int start;

    RowSet(int rows) {
        this(new long[(rows + 63) >> 6], 0);
    }

    private RowSet(long[] words, int start) {
        this.words = words;
        this.start = start;
    }

    RowSet copy() {
        return new RowSet(words.clone(), start);
    }

    /** The same rows, of which those long before a place may be left out. */
    RowSet from(int row) {
        return new RowSet(words.clone(), Math.max(start, row >> 6));
    }

    boolean isEmpty() {
        return next(0) < 0;
    }

    void set(int row) {
        words[row >> 6] |= 1L << row;
    }

    void clear(int row) {
        words[row >> 6] &= ~(1L << row);
    }

    boolean has(int row) {
        return (words[row >> 6] & 1L << row) != 0;
    }

    RowSet and(RowSet other) {
        for (int i = start; i < words.length; i++) {
            words[i] &= other.words[i];
        }
        return this;
    }

    RowSet or(RowSet other) {
        for (int i = start; i < words.length; i++) {
            words[i] |= other.words[i];
        }
        return this;
    }

    RowSet without(RowSet other) {
        for (int i = start; i < words.length; i++) {
            words[i] &= ~other.words[i];
        }
        return this;
    }

    /** Takes away what is in one set and not in the other. */
    RowSet withoutUnless(RowSet one, RowSet other) {
        for (int i = start; i < words.length; i++) {
            words[i] &= ~one.words[i] | other.words[i];
        }
        return this;
    }

    int count() {
        int out = 0;
        for (int i = start; i < words.length; i++) {
            out += Long.bitCount(words[i]);
        }
        return out;
    }

    /** The first from a place on, or -1. */
    int next(int from) {
        int at = Math.max(start, from >> 6);
        if (at >= words.length) {
            return -1;
        }
        long word = at > from >> 6 ? words[at] : words[at] & -1L << from;
        while (word == 0) {
            if (++at == words.length) {
                return -1;
            }
            word = words[at];
        }
        return (at << 6) + Long.numberOfTrailingZeros(word);
    }
}
