package courseworthy.rulebase.check;

import courseworthy.rulebase.check.Column.Compared;
import courseworthy.rulebase.check.Column.Entry;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The boxes in which the rows of a sheet speak, laid out so that a box is held against those of all rows at once. The first box of every
 * row is in the first slot, the second, of those that have one, in the second.
 */
final class Slots {

    private final int all;
    private final List<Slot> slots = new ArrayList<>();

    /** @param boxes of each row; none of those that are left out */
    Slots(List<Box[]> boxes) {
        all = boxes.size();
        int most = boxes.stream().mapToInt(some -> some.length).max().orElse(0);
        for (int i = 0; i < most; i++) {
            slots.add(new Slot(boxes, i));
        }
    }

    /**
     * Those of some rows some box of which meets one of some boxes.
     *
     * @param from rows before it are not among them
     */
    Marks meeting(Box[] some, Marks of, int from) {
        Marks out = new Marks(all).from(from);
        for (Box box : some) {
            for (Slot slot : slots) {
                if (of.copy().without(out).isEmpty()) {
                    return out.and(of);
                }
                out.or(slot.meeting(box, from));
            }
        }
        return out.and(of);
    }

    /** Those of some rows that have for each of some boxes one that holds all of it. */
    Marks containing(Box[] some, Marks of, int from) {
        Marks out = of.copy();
        for (Box box : some) {
            if (!out.isEmpty()) {
                Marks one = new Marks(all).from(from);
                slots.forEach(slot -> one.or(slot.containing(box, from)));
                out.and(one);
            }
        }
        return out;
    }

    /** Those of some rows each box of which lies within one of some boxes. */
    Marks within(Box[] some, Marks of, int from) {
        Marks out = of.copy();
        for (Slot slot : slots) {
            if (!out.isEmpty()) {
                Marks inside = new Marks(all).from(from);
                for (Box box : some) {
                    inside.or(slot.within(box, from));
                }
                out.withoutUnless(slot.having, inside);
            }
        }
        return out;
    }

    /** Rows of one box that asks the same of the same things, but for one, where both are one range together. */
    Marks besides(Box box, int from) {
        Marks out = slots.get(0).alike(box, from);
        if (slots.size() > 1) {
            out.without(slots.get(1).having);
        }
        return out;
    }

    private static final class Slot {

        private final int all;
        private final int at;
        private final List<Box[]> boxes;
        private final Marks having;
        private final Map<Thing, Column> common = new LinkedHashMap<>();
        private final Map<Thing, List<Entry>> rare = new HashMap<>();
        private final Marks askingRare;
        private final boolean askedRarely;
        /** Rows by how many things they ask about. */
        private final Map<Integer, Marks> bySize = new HashMap<>();

        Slot(List<Box[]> boxes, int at) {
            this.all = boxes.size();
            this.at = at;
            this.boxes = boxes;
            this.having = new Marks(all);
            this.askingRare = new Marks(all);
            Map<Thing, List<Entry>> entries = new LinkedHashMap<>();
            for (int row = 0; row < all; row++) {
                if (boxes.get(row).length > at) {
                    having.set(row);
                    Box box = boxes.get(row)[at];
                    bySize.computeIfAbsent(box.size(), size -> new Marks(all)).set(row);
                    for (int i = 0; i < box.size(); i++) {
                        entries.computeIfAbsent(box.thing(i), thing -> new ArrayList<>()).add(new Entry(row, box.values(i)));
                    }
                }
            }
            entries.forEach(this::add);
            askedRarely = !rare.isEmpty();
        }

        private void add(Thing thing, List<Entry> some) {
            if (some.size() > all / 64) {
                common.put(thing, new Column(all, some));
            } else {
                rare.put(thing, some);
                some.forEach(entry -> askingRare.set(entry.row()));
            }
        }

        Marks meeting(Box box, int from) {
            Marks out = having.from(from);
            for (int i = 0; i < box.size(); i++) {
                Column column = common.get(box.thing(i));
                if (column != null) {
                    out.withoutUnless(column.asking(), column.compared(Compared.MEETING, box.values(i), from));
                }
                for (Entry entry : rare(box.thing(i))) {
                    if (!entry.values().meets(box.values(i))) {
                        out.clear(entry.row());
                    }
                }
            }
            return out;
        }

        private List<Entry> rare(Thing thing) {
            return askedRarely ? rare.getOrDefault(thing, List.of()) : List.of();
        }

        /** The rows that ask about a thing, and whose values compare so with those that are asked about. */
        private Marks compared(Thing thing, Compared how, Values asked, int from) {
            Column column = common.get(thing);
            if (column != null) {
                return column.compared(how, asked, from);
            }
            Marks out = new Marks(all);
            for (Entry entry : rare(thing)) {
                if (how.holds(entry.values(), asked)) {
                    out.set(entry.row());
                }
            }
            return out;
        }

        private Marks asking(Thing thing) {
            Column column = common.get(thing);
            if (column != null) {
                return column.asking();
            }
            Marks out = new Marks(all);
            rare(thing).forEach(entry -> out.set(entry.row()));
            return out;
        }

        Marks within(Box box, int from) {
            Marks out = having.from(from);
            for (int i = 0; i < box.size(); i++) {
                out.and(compared(box.thing(i), Compared.WITHIN, box.values(i), from));
            }
            return out;
        }

        /** What asks about a thing that the box leaves open does not hold it. */
        Marks containing(Box box, int from) {
            Marks out = having.from(from).without(askingRare);
            common.forEach((thing, column) -> {
                Values asked = box.asked(thing);
                if (asked == null) {
                    out.without(column.asking());
                } else {
                    out.withoutUnless(column.asking(), column.compared(Compared.CONTAINING, asked, from));
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

        Marks alike(Box box, int from) {
            Marks out = bySize.containsKey(box.size()) ? bySize.get(box.size()).from(from) : new Marks(all);
            Marks once = new Marks(all);
            Marks twice = new Marks(all);
            for (int i = 0; i < box.size(); i++) {
                Thing thing = box.thing(i);
                Marks asking = asking(thing);
                Marks other = asking.from(from).without(compared(thing, Compared.EQUAL, box.values(i), from));
                out.and(asking).withoutUnless(other, compared(thing, Compared.JOINED, box.values(i), from));
                twice.or(once.copy().and(other));
                once.or(other);
            }
            return out.and(once).without(twice);
        }
    }
}
