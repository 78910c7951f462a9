package courseworthy.rulebase.check;

import java.util.Arrays;

/** A set of rows of one sheet, by their places; where only the later rows matter, the earlier are left out. */
final class Marks {

    private final long[] words;
    /** Words before this are not looked at. */
    private final int start;

    Marks(int rows) {
        this(new long[(rows + 63) >> 6], 0);
    }

    private Marks(long[] words, int start) {
        this.words = words;
        this.start = start;
    }

    Marks copy() {
        return new Marks(words.clone(), start);
    }

    /** The same rows, of which those long before a place may be left out. */
    Marks from(int row) {
        return new Marks(words.clone(), Math.max(start, row >> 6));
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

    Marks and(Marks other) {
        for (int i = start; i < words.length; i++) {
            words[i] &= other.words[i];
        }
        return this;
    }

    Marks or(Marks other) {
        for (int i = start; i < words.length; i++) {
            words[i] |= other.words[i];
        }
        return this;
    }

    Marks without(Marks other) {
        for (int i = start; i < words.length; i++) {
            words[i] &= ~other.words[i];
        }
        return this;
    }

    /** Takes away what is in one set and not in the other. */
    Marks withoutUnless(Marks one, Marks other) {
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
