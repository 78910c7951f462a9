package courseworthy.analysis;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Situations in which each of some things has a value of its set; a thing that is not named may be anything, or unknown. Immutable. */
final class Box {

    static final Box ANYTHING = new Box(new Variable[0], new ValueSet[0]);

    /** By number, ascending. */
    private final Variable[] things;
    private final ValueSet[] values;

    private Box(Variable[] things, ValueSet[] values) {
        this.things = things;
        this.values = values;
    }

    static Box of(Variable thing, ValueSet values) {
        return new Box(new Variable[] {thing}, new ValueSet[] {values});
    }

    int size() {
        return things.length;
    }

    Variable thing(int at) {
        return things[at];
    }

    ValueSet values(int at) {
        return values[at];
    }

    private int at(Variable thing) {
        for (int i = 0; i < things.length; i++) {
            if (things[i] == thing) {
                return i;
            }
        }
        return -1;
    }

    /** Whether it names every thing that another names. */
    boolean names(Box other) {
        for (Variable thing : other.things) {
            if (at(thing) < 0) {
                return false;
            }
        }
        return true;
    }

    ValueSet of(Variable thing) {
        int at = at(thing);
        return at < 0 ? thing.all() : values[at];
    }

    /** What it asks of a thing; null where it leaves that open. */
    ValueSet asked(Variable thing) {
        int at = at(thing);
        return at < 0 ? null : values[at];
    }

    /** One situation in it, at one end of each range: the lower where that is asked for, unless no lower one is possible at all. */
    Box corner(boolean low) {
        ValueSet[] at = new ValueSet[values.length];
        for (int i = 0; i < at.length; i++) {
            at[i] = values[i].end(low, things[i].all());
        }
        return new Box(things, at);
    }

    private Box with(Variable thing, ValueSet set) {
        int at = at(thing);
        if (at >= 0) {
            ValueSet[] changed = values.clone();
            changed[at] = set;
            return new Box(things, changed);
        }
        return and(Box.of(thing, set));
    }

    /** Whether some situation is in both. */
    boolean meets(Box other) {
        int i = 0;
        int j = 0;
        while (i < things.length && j < other.things.length) {
            int apart = things[i].number() - other.things[j].number();
            if (apart == 0 && !values[i].meets(other.values[j])) {
                return false;
            }
            i += apart <= 0 ? 1 : 0;
            j += apart >= 0 ? 1 : 0;
        }
        return true;
    }

    /** Situations in both; null where there is none. */
    Box and(Box other) {
        if (!meets(other)) {
            return null;
        }
        Variable[] both = new Variable[things.length + other.things.length];
        ValueSet[] sets = new ValueSet[both.length];
        int size = 0;
        int i = 0;
        int j = 0;
        while (i < things.length || j < other.things.length) {
            int apart = i == things.length ? 1 : j == other.things.length ? -1 : things[i].number() - other.things[j].number();
            both[size] = apart <= 0 ? things[i] : other.things[j];
            sets[size++] = apart < 0 ? values[i] : apart > 0 ? other.values[j] : values[i].and(other.values[j]);
            i += apart <= 0 ? 1 : 0;
            j += apart >= 0 ? 1 : 0;
        }
        return size == both.length ? new Box(both, sets) : new Box(Arrays.copyOf(both, size), Arrays.copyOf(sets, size));
    }

    /** The smallest box that holds both. */
    Box hull(Box other) {
        Box out = ANYTHING;
        for (int i = 0; i < things.length; i++) {
            int at = other.at(things[i]);
            if (at >= 0) {
                out = out.with(things[i], values[i].or(other.values[at]));
            }
        }
        return out;
    }

    /** Situations in this and not in the other, as boxes without any in common; this box alone where they do not meet. */
    List<Box> less(Box other) {
        if (!meets(other)) {
            return List.of(this);
        }
        List<Box> out = new ArrayList<>();
        Box rest = this;
        for (int i = 0; i < other.things.length; i++) {
            Variable thing = other.things[i];
            ValueSet mine = rest.of(thing);
            ValueSet left = mine.less(other.values[i]);
            if (!left.isEmpty()) {
                out.add(rest.with(thing, left));
                rest = rest.with(thing, mine.and(other.values[i]));
            }
        }
        return out;
    }

    boolean contains(Box other) {
        for (int i = 0; i < things.length; i++) {
            if (!values[i].contains(other.of(things[i]))) {
                return false;
            }
        }
        return true;
    }

    /** The one thing that two boxes ask otherwise; null where they ask of other things, or several otherwise. */
    Variable differing(Box other) {
        if (things.length != other.things.length) {
            return null;
        }
        Variable out = null;
        for (int i = 0; i < things.length; i++) {
            if (things[i] != other.things[i]) {
                return null;
            }
            if (!values[i].equals(other.values[i])) {
                if (out != null) {
                    return null;
                }
                out = things[i];
            }
        }
        return out;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Box that && Arrays.equals(things, that.things) && Arrays.equals(values, that.values);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(values);
    }

    @Override
    public String toString() {
        StringBuilder out = new StringBuilder();
        for (int i = 0; i < things.length; i++) {
            out.append(i == 0 ? "" : ", ").append(things[i].name()).append(' ').append(values[i]);
        }
        return out.toString();
    }
}
