package courseworthy.rulebase.check;

import courseworthy.rulebase.Condition;
import courseworthy.rulebase.ValueTest;
import courseworthy.topic.Topic;
import courseworthy.topic.Topic.Applies;
import courseworthy.topic.Topics;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The situations in which a condition is true, as boxes. Exact where the things asked about are free of each other: what is not known is
 * neither true nor false, and a topic is settled only where it applies.
 */
record Region(List<Box> boxes) {

    /** A condition of more alternatives than this is not reasoned about. */
    static final int MOST_BOXES = 500;
    /** Nor is it where comparing it with another takes more steps than this. */
    private static final int MOST_STEPS = 20_000;

    /** The condition has too many alternatives. */
    static final class TooMany extends Exception {
        private static final long serialVersionUID = 1L;

        TooMany() {
            super("too many alternatives", null, false, false);
        }
    }

    Region {
        boxes = List.copyOf(boxes);
    }

    /** Where a condition is true. */
    static Region of(Condition condition) throws TooMany {
        return of(condition, true);
    }

    private static Region of(Condition condition, boolean truth) throws TooMany {
        if (condition instanceof Condition.Measured measured) {
            Thing thing = Thing.of(measured.measure());
            return of(thing, asked(measured.test(), thing, truth));
        }
        if (condition instanceof Condition.Decided decided) {
            Thing thing = Thing.of(decided.topic());
            return of(thing, asked(decided.test(), thing, truth)).and(applies(decided.topic()));
        }
        if (condition instanceof Condition.Stretches stretches) {
            long value = stretches.any() == truth ? 1 : 0;
            return of(Thing.of(stretches), Values.of(value, value));
        }
        if (condition instanceof Condition.Share share) {
            Thing thing = Thing.of(share);
            return of(thing, asked(share.test(), thing, truth));
        }
        if (condition instanceof Condition.AllOf all) {
            return truth ? all(all.parts(), true) : any(all.parts(), false);
        }
        if (condition instanceof Condition.AnyOf any) {
            return truth ? any(any.parts(), true) : all(any.parts(), false);
        }
        Condition.NoneOf none = (Condition.NoneOf) condition;
        return truth ? all(none.parts(), false) : any(none.parts(), true);
    }

    private static Region all(List<Condition> parts, boolean truth) throws TooMany {
        Region out = new Region(List.of(Box.ANYTHING));
        for (Condition part : parts) {
            out = out.and(of(part, truth));
        }
        return out;
    }

    private static Region any(List<Condition> parts, boolean truth) throws TooMany {
        List<Box> out = new ArrayList<>();
        for (Condition part : parts) {
            out.addAll(of(part, truth).boxes);
        }
        return simple(out);
    }

    private static Region of(Thing thing, Values values) {
        return new Region(values.isEmpty() ? List.of() : List.of(Box.of(thing, values)));
    }

    private static Values asked(ValueTest test, Thing thing, boolean truth) {
        Values passing = new Values(List.of(), false);
        if (test instanceof ValueTest.Within within) {
            passing = Values.of(within.least(), within.most());
        } else if (test instanceof ValueTest.Among among) {
            for (long value : among.values()) {
                passing = passing.or(Values.of(value, value));
            }
        }
        return truth ? thing.known().and(passing) : thing.known().less(passing);
    }

    /** Where a topic applies, so that it can be settled. */
    static Region applies(Topic topic) throws TooMany {
        Region out = new Region(List.of(Box.ANYTHING));
        for (Applies applies : topic.applies()) {
            Topic on = Topics.of(applies.topic());
            Values options = new Values(List.of(), false);
            for (String option : applies.options()) {
                options = options.or(Values.of(on.option(option), on.option(option)));
            }
            out = out.and(of(Thing.of(on), options)).and(applies(on));
        }
        return out;
    }

    boolean isEmpty() {
        return boxes.isEmpty();
    }

    Region and(Region other) throws TooMany {
        List<Box> out = new ArrayList<>();
        for (Box a : boxes) {
            for (Box b : other.boxes) {
                Box both = a.and(b);
                if (both != null) {
                    out.add(both);
                }
            }
            if (out.size() > MOST_BOXES) {
                throw new TooMany();
            }
        }
        return simple(out);
    }

    /** A situation in both; null where there is none. */
    Box common(Region other) {
        for (Box a : boxes) {
            for (Box b : other.boxes) {
                Box both = a.and(b);
                if (both != null) {
                    return both;
                }
            }
        }
        return null;
    }

    /** A situation in this region and not in the other; null where there is none. */
    Box beyond(Region other) throws TooMany {
        int[] left = {MOST_STEPS};
        for (Box box : boxes) {
            Box found = beyond(box, other.boxes, 0, left);
            if (found != null) {
                return found;
            }
        }
        return null;
    }

    /** What is left of a box once the others from a place on are taken away: one piece after the other, to the end. */
    private static Box beyond(Box box, List<Box> others, int from, int[] left) throws TooMany {
        for (int i = from; i < others.size(); i++) {
            if (left[0]-- == 0) {
                throw new TooMany();
            }
            List<Box> pieces = box.less(others.get(i));
            if (pieces.size() == 1 && pieces.get(0) == box) {
                continue;
            }
            for (Box piece : pieces) {
                Box found = beyond(piece, others, i + 1, left);
                if (found != null) {
                    return found;
                }
            }
            return null;
        }
        return box;
    }

    boolean within(Region other) throws TooMany {
        return beyond(other) == null;
    }

    /** Whether it holds every situation in which all it asks about is known. */
    boolean isEverything() throws TooMany {
        Map<Thing, Values> known = new LinkedHashMap<>();
        for (Box box : boxes) {
            for (Thing thing : box.sets().keySet()) {
                known.put(thing, thing.known());
            }
        }
        return new Region(List.of(new Box(known))).within(this);
    }

    /** Without boxes that lie in others. */
    private static Region simple(List<Box> boxes) throws TooMany {
        if (boxes.size() > MOST_BOXES) {
            throw new TooMany();
        }
        List<Box> out = new ArrayList<>();
        for (Box box : boxes) {
            if (out.stream().noneMatch(other -> other.contains(box))) {
                out.removeIf(box::contains);
                out.add(box);
            }
        }
        return new Region(out);
    }
}
