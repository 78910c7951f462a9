package courseworthy.analysis;

import java.util.Arrays;

/**
 * A set of values of one thing: whole ticks or positions in intervals that neither touch nor overlap, ascending, and whether it may be
 * unknown. Immutable.
 */
final class ValueSet {

    static final ValueSet NONE = new ValueSet(new long[0], false);

    /** The least and the most of each interval, both included. */
    private final long[] ends;
    private final boolean unknown;

    private ValueSet(long[] ends, boolean unknown) {
        this.ends = ends;
        this.unknown = unknown;
    }

    /** From {@code least} to {@code most}, both included; none where there is nothing between. */
    static ValueSet of(long least, long most) {
        return least > most ? NONE : new ValueSet(new long[] {least, most}, false);
    }

    /** The same values, and whether not knowing belongs to them. */
    ValueSet orUnknown(boolean may) {
        return may == unknown ? this : new ValueSet(ends, may);
    }

    boolean isEmpty() {
        return ends.length == 0 && !unknown;
    }

    boolean unknown() {
        return unknown;
    }

    /** How many intervals it has. */
    int spans() {
        return ends.length / 2;
    }

    long least(int span) {
        return ends[2 * span];
    }

    long most(int span) {
        return ends[2 * span + 1];
    }

    boolean holds(long value) {
        for (int i = 0; i < ends.length; i += 2) {
            if (value >= ends[i] && value <= ends[i + 1]) {
                return true;
            }
        }
        return false;
    }

    boolean meets(ValueSet other) {
        if (unknown && other.unknown) {
            return true;
        }
        int i = 0;
        int j = 0;
        while (i < ends.length && j < other.ends.length) {
            if (ends[i + 1] < other.ends[j]) {
                i += 2;
            } else if (other.ends[j + 1] < ends[i]) {
                j += 2;
            } else {
                return true;
            }
        }
        return false;
    }

    ValueSet and(ValueSet other) {
        if (ends.length == 2 && other.ends.length == 2) {
            return of(Math.max(ends[0], other.ends[0]), Math.min(ends[1], other.ends[1])).orUnknown(unknown && other.unknown);
        }
        long[] out = new long[ends.length + other.ends.length];
        int size = 0;
        int i = 0;
        int j = 0;
        while (i < ends.length && j < other.ends.length) {
            long least = Math.max(ends[i], other.ends[j]);
            long most = Math.min(ends[i + 1], other.ends[j + 1]);
            if (least <= most) {
                out[size++] = least;
                out[size++] = most;
            }
            if (ends[i + 1] < other.ends[j + 1]) {
                i += 2;
            } else {
                j += 2;
            }
        }
        return new ValueSet(Arrays.copyOf(out, size), unknown && other.unknown);
    }

    ValueSet or(ValueSet other) {
        long[] out = new long[ends.length + other.ends.length];
        int size = 0;
        int i = 0;
        int j = 0;
        while (i < ends.length || j < other.ends.length) {
            boolean mine = j == other.ends.length || i < ends.length && ends[i] <= other.ends[j];
            long least = mine ? ends[i] : other.ends[j];
            long most = mine ? ends[i + 1] : other.ends[j + 1];
            if (mine) {
                i += 2;
            } else {
                j += 2;
            }
            if (size > 0 && (out[size - 1] == Long.MAX_VALUE || least <= out[size - 1] + 1)) {
                out[size - 1] = Math.max(out[size - 1], most);
            } else {
                out[size++] = least;
                out[size++] = most;
            }
        }
        return new ValueSet(Arrays.copyOf(out, size), unknown || other.unknown);
    }

    /** What is in this set and not in the other. */
    ValueSet less(ValueSet other) {
        long[] out = new long[ends.length + other.ends.length];
        int size = 0;
        int j = 0;
        for (int i = 0; i < ends.length; i += 2) {
            long from = ends[i];
            boolean left = true;
            while (j < other.ends.length && other.ends[j + 1] < from) {
                j += 2;
            }
            for (int k = j; left && k < other.ends.length && other.ends[k] <= ends[i + 1]; k += 2) {
                if (other.ends[k] > from) {
                    out[size++] = from;
                    out[size++] = other.ends[k] - 1;
                }
                left = other.ends[k + 1] < ends[i + 1];
                from = left ? other.ends[k + 1] + 1 : from;
            }
            if (left) {
                out[size++] = from;
                out[size++] = ends[i + 1];
            }
        }
        return new ValueSet(Arrays.copyOf(out, size), unknown && !other.unknown);
    }

    boolean contains(ValueSet other) {
        if (other.unknown && !unknown) {
            return false;
        }
        int i = 0;
        for (int j = 0; j < other.ends.length; j += 2) {
            while (i < ends.length && ends[i + 1] < other.ends[j]) {
                i += 2;
            }
            if (i == ends.length || ends[i] > other.ends[j] || ends[i + 1] < other.ends[j + 1]) {
                return false;
            }
        }
        return true;
    }

    /** One end of it, that which is asked for unless it is the end of all there is. */
    ValueSet end(boolean low, ValueSet all) {
        if (ends.length == 0) {
            return this;
        }
        long least = ends[0];
        long most = ends[ends.length - 1];
        long end = low ? least > all.ends[0] ? least : most : most < all.ends[all.ends.length - 1] ? most : least;
        return of(end, end);
    }

    /** A value to show as an example: an end that is one, the lowest first. */
    long example() {
        if (ends[0] != Long.MIN_VALUE) {
            return ends[0];
        }
        return ends[1] == Long.MAX_VALUE ? 0 : ends[1];
    }

    /** Of these values the one nearest to others, the lower of two; neither set is empty. */
    long nearest(ValueSet others) {
        long best = example();
        long least = Long.MAX_VALUE;
        for (int i = 0; i < ends.length; i += 2) {
            for (int j = 0; j < others.ends.length; j += 2) {
                long at = others.ends[j] > ends[i + 1] ? ends[i + 1] : Math.max(ends[i], Math.min(others.ends[j], ends[i + 1]));
                long below = others.ends[j] > at ? others.ends[j] - at : at > others.ends[j + 1] ? at - others.ends[j + 1] : 0;
                if (below < least) {
                    least = below;
                    best = at;
                }
            }
        }
        return best;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof ValueSet that && unknown == that.unknown && Arrays.equals(ends, that.ends);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(ends);
    }

    @Override
    public String toString() {
        return Arrays.toString(ends) + (unknown ? " or unknown" : "");
    }
}
