package courseworthy.analysis;

import courseworthy.analysis.ReasoningBudget.TooMany;
import courseworthy.sheet.Condition;
import courseworthy.sheet.Row;
import courseworthy.sheet.ValueTest;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** How near a row that can never apply can come to it: all its conditions hold but the fewest that must give way. */
final class NearMiss {

    private final List<Condition> parts;
    private final Region.RegionReader reader;
    private final Feasibility possible;
    private final List<Condition> conflict;
    private final TreeSet<String> limits = new TreeSet<>();
    private final Set<Integer> unmet = new LinkedHashSet<>();

    NearMiss(Row row, Region.RegionReader reader, Feasibility possible) throws TooMany {
        this.parts = row.condition().parts();
        this.reader = reader;
        this.possible = possible;
        this.conflict = conflict(parts);
        Region free = reader.of(new Condition.AllOf(conflict));
        free.boxes().forEach(box -> limits.addAll(possible.limits(box)));
        List<Condition> left = new ArrayList<>(parts);
        while (region(left).isEmpty()) {
            Condition giving = giving(conflict(left));
            unmet.add(place(giving));
            left.remove(giving);
        }
    }

    /** The fewest conditions that cannot hold together. */
    List<Condition> conflict() {
        return conflict;
    }

    /** The limits for which they cannot, by id; none where they exclude each other. */
    TreeSet<String> limits() {
        return limits;
    }

    /** Which conditions give way, from 0 in the order written. */
    Set<Integer> unmet() {
        return unmet;
    }

    private Region region(List<Condition> some) throws TooMany {
        return possible.left(reader.of(new Condition.AllOf(some)));
    }

    private List<Condition> conflict(List<Condition> some) throws TooMany {
        List<Condition> needed = new ArrayList<>(some);
        for (int i = needed.size() - 1; i >= 0; i--) {
            List<Condition> fewer = new ArrayList<>(needed);
            fewer.remove(i);
            if (region(fewer).isEmpty()) {
                needed = fewer;
            }
        }
        return needed;
    }

    /** Of conditions that cannot hold together the one that shows best how far it is from holding: the last that tests one value. */
    private static Condition giving(List<Condition> some) {
        Condition out = some.get(some.size() - 1);
        for (Condition one : some) {
            if (rank(one) >= rank(out)) {
                out = one;
            }
        }
        return out;
    }

    private static int rank(Condition one) {
        if (one instanceof Condition.MeasureCondition) {
            return 3;
        }
        return one instanceof Condition.StretchShareCondition ? 2 : one instanceof Condition.DecisionCondition ? 1 : 0;
    }

    private int place(Condition one) {
        for (int i = 0; i < parts.size(); i++) {
            if (parts.get(i) == one && !unmet.contains(i)) {
                return i;
            }
        }
        throw new IllegalArgumentException(one.canonical());
    }

    /** Where all others hold, with what gives way as near to holding as it can be. */
    List<Box> boxes() {
        try {
            Region rest = region(holding());
            Region known = rest;
            for (int place : unmet) {
                known = Region.of(known.commons(reader.of(parts.get(place), false)));
            }
            List<Box> out = new ArrayList<>();
            for (Box box : known.boxes()) {
                Box left = possible.left(box);
                if (left != null) {
                    out.add(near(left));
                    out.add(left);
                }
            }
            out.addAll(rest.boxes());
            return out;
        } catch (TooMany e) {
            return List.of();
        }
    }

    private List<Condition> holding() {
        List<Condition> out = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            if (!unmet.contains(i)) {
                out.add(parts.get(i));
            }
        }
        return out;
    }

    private Box near(Box box) throws TooMany {
        Box out = box;
        for (int place : unmet) {
            Variable thing = thing(parts.get(place), out);
            ValueSet wanted = thing == null ? ValueSet.NONE : wanted(parts.get(place));
            if (thing != null && wanted.spans() > 0 && out.of(thing).spans() > 0) {
                long nearest = out.of(thing).nearest(wanted);
                out = out.and(Box.of(thing, ValueSet.of(nearest, nearest)));
            }
        }
        return out;
    }

    /** The values that one test of a value asks for; none where it is something else. */
    private static ValueSet wanted(Condition one) {
        ValueTest test = one instanceof Condition.MeasureCondition measured ? measured.test()
                : one instanceof Condition.DecisionCondition decided ? decided.test() : one instanceof Condition.StretchShareCondition share ? share.test() : null;
        return test instanceof ValueTest.Within within ? ValueSet.of(within.least(), within.most()) : ValueSet.NONE;
    }

    private Variable thing(Condition one, Box box) throws TooMany {
        if (wanted(one).spans() == 0) {
            return null;
        }
        for (Box where : reader.of(one, false).boxes()) {
            for (int i = 0; i < where.size(); i++) {
                if (about(one, where.thing(i)) && box.of(where.thing(i)).spans() > 0) {
                    return where.thing(i);
                }
            }
        }
        return null;
    }

    private static boolean about(Condition one, Variable thing) {
        Object asked = one instanceof Condition.MeasureCondition measured ? measured.measure()
                : one instanceof Condition.DecisionCondition decided ? decided.topic() : ((Condition.StretchShareCondition) one).where();
        return thing.asked().equals(asked);
    }
}
