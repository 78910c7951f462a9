package courseworthy.analysis;

import courseworthy.analysis.IntervalColumn.Comparability;
import courseworthy.analysis.IntervalColumn.Entry;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The boxes in which the rows of a sheet speak, laid out so that a box is held against those of all rows at once. The first box of every
 * row is in the first slot, the second, of those that have one, in the second.
 */
final class IntervalIndex {

    private final int all;
    private final List<IndexSlot> slots = new ArrayList<>();

    /** @param boxes of each row; none of those that are left out */
    IntervalIndex(List<Box[]> boxes) {
        all = boxes.size();
        int most = boxes.stream().mapToInt(some -> some.length).max().orElse(0);
        for (int i = 0; i < most; i++) {
            slots.add(new IndexSlot(boxes, i));
        }
    }

    /**
     * Those of some rows some box of which meets one of some boxes.
     *
     * @param from rows before it are not among them
     */
    RowSet meeting(Box[] some, RowSet of, int from) {
        RowSet out = new RowSet(all).from(from);
        for (Box box : some) {
            for (IndexSlot slot : slots) {
                if (of.copy().without(out).isEmpty()) {
                    return out.and(of);
                }
                out.or(slot.meeting(box, from));
            }
        }
        return out.and(of);
    }

    /** Those of some rows that have for each of some boxes one that holds all of it. */
    RowSet containing(Box[] some, RowSet of, int from) {
        RowSet out = of.copy();
        for (Box box : some) {
            if (!out.isEmpty()) {
                RowSet one = new RowSet(all).from(from);
                slots.forEach(slot -> one.or(slot.containing(box, from)));
                out.and(one);
            }
        }
        return out;
    }

    /** Those of some rows each box of which lies within one of some boxes. */
    RowSet within(Box[] some, RowSet of, int from) {
        RowSet out = of.copy();
        for (IndexSlot slot : slots) {
            if (!out.isEmpty()) {
                RowSet inside = new RowSet(all).from(from);
                for (Box box : some) {
                    inside.or(slot.within(box, from));
                }
                out.withoutUnless(slot.having, inside);
            }
        }
        return out;
    }

    /** Rows of one box that asks the same of the same things, but for one, where both are one range together. */
    RowSet besides(Box box, int from) {
        RowSet out = slots.get(0).alike(box, from);
        if (slots.size() > 1) {
            out.without(slots.get(1).having);
        }
        return out;
    }

    private static final class IndexSlot {

        private final int all;
        private final int at;
        private final List<Box[]> boxes;
        private final RowSet having;
        private final Map<Variable, IntervalColumn> common = new LinkedHashMap<>();
        private final Map<Variable, List<Entry>> rare = new HashMap<>();
        private final RowSet askingRare;
        private final boolean askedRarely;
        /** Rows by how many things they ask about. */
        private final Map<Integer, RowSet> bySize = new HashMap<>();

        IndexSlot(List<Box[]> boxes, int at) {
            this.all = boxes.size();
            this.at = at;
            this.boxes = boxes;
            this.having = new RowSet(all);
            this.askingRare = new RowSet(all);
            Map<Variable, List<Entry>> entries = new LinkedHashMap<>();
            for (int row = 0; row < all; row++) {
                if (boxes.get(row).length > at) {
                    having.set(row);
                    Box box = boxes.get(row)[at];
                    bySize.computeIfAbsent(box.size(), size -> new RowSet(all)).set(row);
                    for (int i = 0; i < box.size(); i++) {
                        entries.computeIfAbsent(box.thing(i), thing -> new ArrayList<>()).add(new Entry(row, box.values(i)));
                    }
                }
            }
            entries.forEach(this::add);
            askedRarely = !rare.isEmpty();
        }

        private void add(Variable thing, List<Entry> some) {
            if (some.size() > all / 64) {
                common.put(thing, new IntervalColumn(all, some));
            } else {
                rare.put(thing, some);
                some.forEach(entry -> askingRare.set(entry.row()));
            }
        }

        RowSet meeting(Box box, int from) {
            RowSet out = having.from(from);
            for (int i = 0; i < box.size(); i++) {
                IntervalColumn column = common.get(box.thing(i));
                if (column != null) {
                    out.withoutUnless(column.asking(), column.compared(Comparability.MEETING, box.values(i), from));
                }
                for (Entry entry : rare(box.thing(i))) {
                    if (!entry.values().meets(box.values(i))) {
                        out.clear(entry.row());
                    }
                }
            }
            return out;
        }

        private List<Entry> rare(Variable thing) {
            return askedRarely ? rare.getOrDefault(thing, List.of()) : List.of();
        }

        /** The rows that ask about a thing, and whose values compare so with those that are asked about. */
        private RowSet compared(Variable thing, Comparability how, ValueSet asked, int from) {
            IntervalColumn column = common.get(thing);
            if (column != null) {
                return column.compared(how, asked, from);
            }
            RowSet out = new RowSet(all);
            for (Entry entry : rare(thing)) {
                if (how.holds(entry.values(), asked)) {
                    out.set(entry.row());
                }
            }
            return out;
        }

        private RowSet asking(Variable thing) {
            IntervalColumn column = common.get(thing);
            if (column != null) {
                return column.asking();
            }
            RowSet out = new RowSet(all);
            rare(thing).forEach(entry -> out.set(entry.row()));
            return out;
        }

        RowSet within(Box box, int from) {
            RowSet out = having.from(from);
            for (int i = 0; i < box.size(); i++) {
                out.and(compared(box.thing(i), Comparability.WITHIN, box.values(i), from));
            }
            return out;
        }

        /** What asks about a thing that the box leaves open does not hold it. */
        RowSet containing(Box box, int from) {
            RowSet out = having.from(from).without(askingRare);
            common.forEach((thing, column) -> {
                ValueSet asked = box.asked(thing);
                if (asked == null) {
                    out.without(column.asking());
                } else {
                    out.withoutUnless(column.asking(), column.compared(Comparability.CONTAINING, asked, from));
                }
            });
            for (int i = 0; i < box.size(); i++) {
                for (Entry entry : rare(box.thing(i))) {
                    if (boxes.get(entry.row())[at].contains(box)) {
                        out.set(entry.row());
                    }
                }
            }
            return out;
        }

        RowSet alike(Box box, int from) {
            RowSet out = bySize.containsKey(box.size()) ? bySize.get(box.size()).from(from) : new RowSet(all);
            RowSet once = new RowSet(all);
            RowSet twice = new RowSet(all);
            for (int i = 0; i < box.size(); i++) {
                Variable thing = box.thing(i);
                RowSet asking = asking(thing);
                RowSet other = asking.from(from).without(compared(thing, Comparability.EQUAL, box.values(i), from));
                out.and(asking).withoutUnless(other, compared(thing, Comparability.JOINED, box.values(i), from));
                twice.or(once.copy().and(other));
                once.or(other);
            }
            return out.and(once).without(twice);
        }
    }
}
