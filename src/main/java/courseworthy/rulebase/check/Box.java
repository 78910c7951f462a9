package courseworthy.rulebase.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Situations in which each of some things has a value of its set; a thing that is not named may be anything, or unknown. */
record Box(Map<Thing, Values> sets) {

    static final Box ANYTHING = new Box(Map.of());

    static Box of(Thing thing, Values values) {
        return new Box(Map.of(thing, values));
    }

    Values of(Thing thing) {
        Values values = sets.get(thing);
        return values == null ? thing.all() : values;
    }

    private Box with(Thing thing, Values values) {
        Map<Thing, Values> out = new LinkedHashMap<>(sets);
        out.put(thing, values);
        return new Box(out);
    }

    /** Situations in both; null where there is none. */
    Box and(Box other) {
        Map<Thing, Values> out = new LinkedHashMap<>(sets);
        for (Map.Entry<Thing, Values> entry : other.sets.entrySet()) {
            Values both = of(entry.getKey()).and(entry.getValue());
            if (both.isEmpty()) {
                return null;
            }
            out.put(entry.getKey(), both);
        }
        return new Box(out);
    }

    /** Situations in this and not in the other, as boxes without any in common. */
    List<Box> less(Box other) {
        List<Box> out = new ArrayList<>();
        Box rest = this;
        for (Map.Entry<Thing, Values> entry : other.sets.entrySet()) {
            Thing thing = entry.getKey();
            Values mine = rest.of(thing);
            Values left = mine.less(entry.getValue());
            if (!left.isEmpty()) {
                out.add(rest.with(thing, left));
            }
            Values both = mine.and(entry.getValue());
            if (both.isEmpty()) {
                return List.of(this);
            }
            rest = rest.with(thing, both);
        }
        return out;
    }

    boolean contains(Box other) {
        for (Map.Entry<Thing, Values> entry : sets.entrySet()) {
            if (!entry.getValue().contains(other.of(entry.getKey()))) {
                return false;
            }
        }
        return true;
    }
}
