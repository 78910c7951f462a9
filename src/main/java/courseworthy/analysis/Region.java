package courseworthy.analysis;

import courseworthy.analysis.ReasoningBudget.TooMany;
import courseworthy.sheet.Condition;
import courseworthy.sheet.OccasionCondition;
import courseworthy.sheet.ValueTest;
import courseworthy.topic.Topic;
import courseworthy.topic.Topic.Applies;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/**
 * The situations in which a condition is true, as boxes. Exact where the things asked about are free of each other: what is not known is
 * neither true nor false, and a topic is settled only where it applies.
 */
final class Region {

    /** A condition of more alternatives than this is not reasoned about. */
    static final int MOST_BOXES = 500;
    /** Nor is it where comparing it with another takes more steps than this. */
    private static final int MOST_STEPS = 20_000;
    /** Days; a span of fewer has each day of the year once at most. */
    private static final int SHORTEST_YEAR = 365;

    /** So many pairs of boxes are compared without counting. */
    private static final int MOST_AT_A_GLANCE = 64;

    private final Box[] boxes;
    /** Holds all of them: what does not meet it meets none. */
    private final Box hull;

    private Region(List<Box> boxes) {
        this.boxes = boxes.toArray(new Box[0]);
        Box around = boxes.isEmpty() ? Box.ANYTHING : boxes.get(0);
        for (Box box : boxes) {
            around = around == box ? box : around.hull(box);
        }
        this.hull = around;
    }

    /** Works out regions for one check. */
    static final class RegionReader {

        private final VariableTable things;
        private final ReasoningBudget steps;

        /** @param steps may be spent on all of them */
        RegionReader(VariableTable things, ReasoningBudget steps) {
            this.things = things;
            this.steps = steps;
        }

        /** Where a condition is true. */
        Region of(Condition condition) throws TooMany {
            return of(condition, true);
        }

        /** Where it is true, or where it is false. */
        Region of(Condition condition, boolean truth) throws TooMany {
            if (condition instanceof Condition.MeasureCondition measured) {
                Variable thing = things.of(measured.measure());
                return Region.of(thing, asked(measured.test(), thing, truth));
            }
            if (condition instanceof Condition.DecisionCondition decided) {
                Variable thing = things.of(decided.topic());
                return Region.of(thing, asked(decided.test(), thing, truth)).and(applies(decided.topic()), steps);
            }
            if (condition instanceof Condition.Stretches stretches) {
                long value = stretches.any() == truth ? 1 : 0;
                return Region.of(things.of(stretches), ValueSet.of(value, value));
            }
            if (condition instanceof Condition.StretchShareCondition share) {
                Variable thing = things.of(share);
                return Region.of(thing, asked(share.test(), thing, truth));
            }
            if (condition instanceof Condition.OccasionTest one) {
                return occasion(one.test(), truth);
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

        private Region occasion(OccasionCondition test, boolean truth) throws TooMany {
            if (test instanceof OccasionCondition.Riders riders) {
                ValueSet named = ValueSet.NONE;
                for (String name : riders.names()) {
                    named = named.or(ValueSet.of(things.rider(name), things.rider(name)));
                }
                return Region.of(things.rider(), truth ? named : things.rider().known().less(named));
            }
            if (test instanceof OccasionCondition.Tags tags) {
                return tags(tags.tags(), truth);
            }
            if (test instanceof OccasionCondition.Season season) {
                ValueSet within = DaysOfYear.of(season.from(), season.to());
                return Region.of(things.dayOfYear(), truth ? within : things.dayOfYear().known().less(within));
            }
            OccasionCondition.Days days = (OccasionCondition.Days) test;
            ValueSet within = ValueSet.of(days.from().toEpochDay(), days.to().toEpochDay());
            if (!truth) {
                return Region.of(things.date(), things.date().known().less(within));
            }
            boolean inAYear = days.to().toEpochDay() - days.from().toEpochDay() < SHORTEST_YEAR;
            Region span = Region.of(things.date(), within);
            return inAYear ? span.and(Region.of(things.dayOfYear(), DaysOfYear.of(days.from(), days.to())), steps) : span;
        }

        private Region tags(List<String> tags, boolean truth) throws TooMany {
            List<Box> any = new ArrayList<>();
            Region none = new Region(List.of(Box.ANYTHING));
            for (String tag : tags) {
                any.add(Box.of(things.tag(tag), ValueSet.of(1, 1)));
                none = none.and(Region.of(things.tag(tag), ValueSet.of(0, 0)), steps);
            }
            return truth ? simple(any, steps) : none;
        }

        private Region all(List<Condition> parts, boolean truth) throws TooMany {
            Region out = new Region(List.of(Box.ANYTHING));
            for (Condition part : parts) {
                out = out.and(of(part, truth), steps);
            }
            return out;
        }

        private Region any(List<Condition> parts, boolean truth) throws TooMany {
            List<Box> out = new ArrayList<>();
            for (Condition part : parts) {
                out.addAll(List.of(of(part, truth).boxes));
            }
            return simple(out, steps);
        }

        /** Where a topic applies, so that it can be settled. */
        Region applies(Topic topic) throws TooMany {
            Region out = new Region(List.of(Box.ANYTHING));
            for (Applies applies : topic.applies()) {
                Topic on = applies.topic();
                ValueSet options = ValueSet.NONE;
                for (String option : applies.options()) {
                    options = options.or(ValueSet.of(on.option(option), on.option(option)));
                }
                out = out.and(Region.of(things.of(on), options), steps).and(applies(on), steps);
            }
            return out;
        }
    }

    private static Region of(Variable thing, ValueSet values) {
        return new Region(values.isEmpty() ? List.of() : List.of(Box.of(thing, values)));
    }

    private static ValueSet asked(ValueTest test, Variable thing, boolean truth) {
        ValueSet passing = ValueSet.NONE;
        if (test instanceof ValueTest.Within within) {
            passing = ValueSet.of(within.least(), within.most());
        } else if (test instanceof ValueTest.Among among) {
            for (long value : among.values()) {
                passing = passing.or(ValueSet.of(value, value));
            }
        }
        return truth ? thing.known().and(passing) : thing.known().less(passing);
    }

    boolean isEmpty() {
        return boxes.length == 0;
    }

    int size() {
        return boxes.length;
    }

    Box box(int at) {
        return boxes[at];
    }

    /** All of them; not to be changed. */
    Box[] all() {
        return boxes;
    }

    /** The smallest box that holds all of them. */
    Box hull() {
        return hull;
    }

    private Region and(Region other, ReasoningBudget steps) throws TooMany {
        List<Box> out = new ArrayList<>();
        for (Box a : boxes) {
            steps.spend(other.boxes.length);
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
        return simple(out, steps);
    }

    /** Whether some situation is in both. */
    boolean meets(Region other, ReasoningBudget steps) throws TooMany {
        if (!hull.meets(other.hull)) {
            return false;
        }
        if (boxes.length == 1 && other.boxes.length == 1) {
            return true;
        }
        steps.spend((long) boxes.length * other.boxes.length);
        return common(other) != null;
    }

    /** A situation in both; null where there is none. */
    Box common(Region other) {
        for (Box a : boxes) {
            for (Box b : other.boxes) {
                if (a.meets(b)) {
                    return a.and(b);
                }
            }
        }
        return null;
    }

    /** A situation in this region and not in the other; null where there is none. */
    Box beyond(Region other, ReasoningBudget steps) throws TooMany {
        ReasoningBudget part = steps.atMost(MOST_STEPS);
        for (Box box : boxes) {
            Box found = beyond(box, other.boxes, 0, part, any -> true);
            if (found != null) {
                return found;
            }
        }
        return null;
    }

    /** All of some regions, boxes that lie in others included. */
    static Region together(List<Region> regions) {
        List<Box> out = new ArrayList<>();
        for (Region region : regions) {
            out.addAll(List.of(region.boxes));
        }
        return new Region(out);
    }

    /** Situations in both, one box after the other. */
    List<Box> commons(Region other) {
        List<Box> out = new ArrayList<>();
        for (Box a : boxes) {
            for (Box b : other.boxes) {
                Box both = a.and(b);
                if (both != null) {
                    out.add(both);
                }
            }
        }
        return out;
    }

    List<Box> boxes() {
        return List.of(boxes);
    }

    /** These boxes as a region. */
    static Region of(List<Box> boxes) {
        return new Region(boxes);
    }

    /**
     * A situation in this region and not in another, in which all is known that the other asks about; null where there is none.
     *
     * @param steps may be spent
     * @param good  whether one will do
     */
    Box knownBeyond(Region other, ReasoningBudget steps, Predicate<Box> good) throws TooMany {
        Box known = Box.ANYTHING;
        for (Box box : other.boxes) {
            for (int i = 0; i < box.size(); i++) {
                known = known.and(Box.of(box.thing(i), box.thing(i).known()));
            }
        }
        for (Box box : boxes) {
            Box found = beyond(box.and(known), other.boxes, 0, steps, good);
            if (found != null) {
                return found;
            }
        }
        return null;
    }

    /** What is left of a box once the others from a place on are taken away: one piece after the other, to the end. */
    static Box beyond(Box box, Box[] others, int from, ReasoningBudget steps, Predicate<Box> good) throws TooMany {
        for (int i = from; i < others.length; i++) {
            steps.spend(1);
            if (!box.meets(others[i])) {
                continue;
            }
            for (Box piece : box.less(others[i])) {
                Box found = beyond(piece, others, i + 1, steps, good);
                if (found != null) {
                    return found;
                }
            }
            return null;
        }
        return good.test(box) ? box : null;
    }

    boolean within(Region other, ReasoningBudget steps) throws TooMany {
        if (!other.hull.contains(hull)) {
            // The hull of the other holds all of it, so what is not within the hull is not within the region.
            return false;
        }
        if (boxes.length == 1 && other.boxes.length == 1) {
            return true;
        }
        return eachWithinOne(other) || beyond(other, steps) == null;
    }

    /** Whether each box lies within one of the other's; not told where there are too many to see at a glance. */
    private boolean eachWithinOne(Region other) {
        if (boxes.length * other.boxes.length > MOST_AT_A_GLANCE) {
            return false;
        }
        for (Box box : boxes) {
            boolean inside = false;
            for (int i = 0; i < other.boxes.length && !inside; i++) {
                inside = other.boxes[i].contains(box);
            }
            if (!inside) {
                return false;
            }
        }
        return true;
    }

    /** Whether it holds every situation in which all it asks about is known. */
    boolean isEverything(ReasoningBudget steps) throws TooMany {
        Box known = Box.ANYTHING;
        for (Box box : boxes) {
            for (int i = 0; i < box.size(); i++) {
                known = known.and(Box.of(box.thing(i), box.thing(i).known()));
            }
        }
        return new Region(List.of(known)).beyond(this, steps) == null;
    }

    /** Without boxes that lie in others. */
    private static Region simple(List<Box> boxes, ReasoningBudget steps) throws TooMany {
        if (boxes.size() > MOST_BOXES) {
            throw new TooMany();
        }
        steps.spend((long) boxes.size() * boxes.size() / 2);
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
