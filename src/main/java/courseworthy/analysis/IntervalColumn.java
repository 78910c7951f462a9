package courseworthy.analysis;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * What some rows ask of one thing, each one set of values, laid out so that all rows whose values compare so or so with others are found
 * at once: ranges are sorted by their ends, and who comes before every sixty-fourth of them is kept.
 */
final class IntervalColumn {

    /** Rows, up to which each is looked at: sorting would not pay. */
    private static final int FEW = 150;

    /** How the values of a row compare with those that are asked about. */
    enum Comparability {
        MEETING, CONTAINING, WITHIN, EQUAL, JOINED;

        boolean holds(ValueSet row, ValueSet asked) {
            return switch (this) {
                case MEETING -> row.meets(asked);
                case CONTAINING -> row.contains(asked);
                case WITHIN -> asked.contains(row);
                case EQUAL -> row.equals(asked);
                case JOINED -> row.or(asked).spans() == 1;
            };
        }
    }

    /** A row and its values. */
    record Entry(int row, ValueSet values) {
    }

    private final int all;
    private final RowSet asking;
    /** Those to be looked at one by one: of several ranges, or all where there are few. */
    private final List<Entry> single = new ArrayList<>();
    private final SortedIntervals byLeast;
    private final SortedIntervals byMost;

    /** @param all how many rows the sheet has */
    IntervalColumn(int all, List<Entry> entries) {
        this.all = all;
        this.asking = new RowSet(all);
        List<Entry> ranges = new ArrayList<>();
        for (Entry entry : entries) {
            asking.set(entry.row());
            boolean range = entry.values().spans() == 1 && !entry.values().unknown();
            (range && entries.size() > FEW ? ranges : single).add(entry);
        }
        byLeast = new SortedIntervals(all, ranges, true);
        byMost = new SortedIntervals(all, ranges, false);
    }

    /** The rows that ask about it. */
    RowSet asking() {
        return asking;
    }

    /** @param from rows before it need not be told */
    RowSet compared(Comparability how, ValueSet asked, int from) {
        RowSet out = byLeast.keys.length == 0 ? none(from) : ranges(how, asked, from);
        for (Entry entry : single) {
            if (how.holds(entry.values(), asked)) {
                out.set(entry.row());
            }
        }
        return out;
    }

    private RowSet none(int from) {
        return new RowSet(all).from(from);
    }

    private RowSet ranges(Comparability how, ValueSet asked, int from) {
        int spans = asked.spans();
        long least = spans == 0 ? 0 : asked.least(0);
        long most = spans == 0 ? 0 : asked.most(spans - 1);
        switch (how) {
            case CONTAINING:
                return asked.unknown() || spans == 0 ? none(from) : byLeast.upTo(least, from).without(byMost.below(most, from));
            case EQUAL:
                return asked.unknown() || spans != 1 ? none(from)
                        : byLeast.upTo(least, from).without(byLeast.below(least, from)).and(byMost.upTo(most, from)).without(byMost.below(most, from));
            case JOINED:
                return spans == 1 ? byLeast.upTo(most == Long.MAX_VALUE ? most : most + 1, from)
                        .without(byMost.below(least == Long.MIN_VALUE ? least : least - 1, from)) : eachRange(how, asked, from);
            default:
                return eachSpan(how, asked, from);
        }
    }

    /** Of several ranges: a range meets them where it meets one, and lies within them where it lies within one. */
    private RowSet eachSpan(Comparability how, ValueSet asked, int from) {
        RowSet out = none(from);
        for (int i = 0; i < asked.spans(); i++) {
            out.or(how == Comparability.MEETING ? byLeast.upTo(asked.most(i), from).without(byMost.below(asked.least(i), from))
                    : byMost.upTo(asked.most(i), from).without(byLeast.below(asked.least(i), from)));
        }
        return out;
    }

    private RowSet eachRange(Comparability how, ValueSet asked, int from) {
        RowSet out = none(from);
        for (Entry entry : byLeast.entries) {
            if (how.holds(entry.values(), asked)) {
                out.set(entry.row());
            }
        }
        return out;
    }

    /** Rows by one end of their ranges. */
    private static final class SortedIntervals {

        private static final int STRIDE = 64;

        private final int all;
        private final Entry[] entries;
        private final long[] keys;
        /** The first so many of them. */
        private final RowSet[] first;

        SortedIntervals(int all, List<Entry> ranges, boolean least) {
            this.all = all;
            Comparator<Entry> order = Comparator.comparingLong(one -> key(one, least));
            entries = ranges.stream().sorted(order).toArray(Entry[]::new);
            keys = Arrays.stream(entries).mapToLong(one -> key(one, least)).toArray();
            first = new RowSet[entries.length / STRIDE + 1];
            first[0] = new RowSet(all);
            for (int i = 1; i < first.length; i++) {
                first[i] = first(i - 1, i * STRIDE, 0);
            }
        }

        private static long key(Entry entry, boolean least) {
            return least ? entry.values().least(0) : entry.values().most(0);
        }

        private RowSet first(int known, int count, int from) {
            RowSet out = first[known].from(from);
            for (int i = known * STRIDE; i < count; i++) {
                out.set(entries[i].row());
            }
            return out;
        }

        /** Those whose end lies below a value. */
        RowSet below(long value, int from) {
            int low = 0;
            int high = keys.length;
            while (low < high) {
                int middle = (low + high) >>> 1;
                if (keys[middle] < value) {
                    low = middle + 1;
                } else {
                    high = middle;
                }
            }
            return first(low / STRIDE, low, from);
        }

        /** Those whose end lies at a value or below. */
        RowSet upTo(long value, int from) {
            return value == Long.MAX_VALUE ? first(first.length - 1, keys.length, from) : below(value + 1, from);
        }
    }
}
