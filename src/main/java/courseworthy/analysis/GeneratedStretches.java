package courseworthy.analysis;

import courseworthy.demand.Demands;
import courseworthy.demand.StretchFacts;
import courseworthy.demand.StretchMeasure;
import courseworthy.sheet.Condition;
import courseworthy.sheet.Stage;
import courseworthy.sheet.StretchConditions;
import courseworthy.sheet.TestSubject;
import courseworthy.sheet.Truth;
import courseworthy.sheet.ValueTest;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Makes up stretches of which some are such and such, none are, or a share of the course is. Stretches of every kind that the conditions
 * tell apart are at hand; a few of them are laid one after the other, and what comes out is held against what is wanted.
 */
final class GeneratedStretches {

    /** Whole length of the stretches made up, ticks: 100 km, so that shares come out in whole per cent. */
    private static final long WHOLE = 10_000;
    private static final long PER_CENT = WHOLE / 100;
    /** More kinds of stretches are not looked at, nor more ways to lay them. */
    private static final int MOST_KINDS = 2_000;
    private static final int MOST_TRIES = 20_000;

    /** What is wanted: that some stretch is such and such (1) or none is (0), or a share of the course in per cent. */
    record StretchRequirement(StretchConditions set, boolean share, ValueSet values) {

        boolean on(List<StretchFacts> stretches) {
            Stage stage = new Stage(0, new Demands(Map.of(), stretches, List.of()), Map.of());
            for (int i = 0; i < values.spans(); i++) {
                ValueTest test = new ValueTest.Within(values.least(i), values.most(i));
                Condition asked = share ? new Condition.StretchShareCondition(set, test, "") : new Condition.Stretches(values.least(i) == 1, set);
                if (asked.on(stage) == Truth.TRUE) {
                    return true;
                }
            }
            return false;
        }
    }

    private final List<StretchRequirement> wanted;
    private final List<StretchRequirement> shares = new ArrayList<>();
    private final List<Map<StretchMeasure, Long>> kinds = new ArrayList<>();
    private int tries = MOST_TRIES;

    private GeneratedStretches(List<StretchRequirement> wanted) {
        this.wanted = wanted;
        for (StretchRequirement one : wanted) {
            if (one.share()) {
                shares.add(one);
            }
        }
    }

    /** Stretches that are as wanted; null where none are found. */
    static List<StretchFacts> of(List<StretchRequirement> wanted) {
        GeneratedStretches made = new GeneratedStretches(wanted);
        made.kinds(new ArrayList<>(made.asked()), new EnumMap<>(StretchMeasure.class));
        return made.filled(0, new ArrayList<>());
    }

    // Kinds of stretches ----------------------------------------------------------------------------------------------

    /** What is asked of each stretch, those of a run left out. */
    private Set<StretchMeasure> asked() {
        Set<StretchMeasure> out = new LinkedHashSet<>();
        wanted.forEach(one -> one.set().each().forEach(test -> out.add(test.measure())));
        return out;
    }

    private void kinds(List<StretchMeasure> left, Map<StretchMeasure, Long> facts) {
        if (kinds.size() >= MOST_KINDS) {
            return;
        }
        if (left.isEmpty()) {
            kinds.add(new EnumMap<>(facts));
            return;
        }
        for (long value : values(left.get(0))) {
            facts.put(left.get(0), value);
            kinds(left.subList(1, left.size()), facts);
            facts.remove(left.get(0));
        }
    }

    /** A value on each side of every threshold, the lowest first. */
    private Set<Long> values(StretchMeasure measure) {
        TestSubject of = TestSubject.of(measure);
        Set<Long> out = new LinkedHashSet<>();
        for (StretchRequirement one : wanted) {
            for (StretchConditions.One test : one.set().each()) {
                if (test.measure() == measure) {
                    around(test.test(), of, out);
                }
            }
        }
        return out;
    }

    private static void around(ValueTest test, TestSubject of, Set<Long> out) {
        if (test instanceof ValueTest.Among among) {
            out.addAll(among.values());
            for (long value = Math.max(of.least(), 0); value <= Math.min(of.most(), 1_000); value++) {
                if (!test.holds(value)) {
                    out.add(value);
                    return;
                }
            }
            return;
        }
        ValueTest.Within within = (ValueTest.Within) test;
        if (within.least() > of.least()) {
            out.add(within.least() - 1);
            out.add(within.least());
        }
        if (within.most() < of.most()) {
            out.add(within.most());
            out.add(within.most() + 1);
        }
    }

    // Laying them -----------------------------------------------------------------------------------------------------

    /**
     * Adds stretches for what is wanted from a place on, then fills what is left of the course.
     *
     * @param stretches what is laid already
     */
    private List<StretchFacts> filled(int from, List<StretchFacts> stretches) {
        int at = from;
        while (at < wanted.size() && (wanted.get(at).share() || wanted.get(at).values().least(0) != 1)) {
            at++;
        }
        if (at == wanted.size()) {
            return rest(stretches);
        }
        for (Map<StretchMeasure, Long> kind : kinds) {
            StretchFacts one = run(kind, wanted.get(at).set());
            if (one != null && tries > 0) {
                List<StretchFacts> with = new ArrayList<>(stretches);
                with.add(one);
                List<StretchFacts> out = filled(at + 1, with);
                if (out != null) {
                    return out;
                }
            }
        }
        return null;
    }

    /** A stretch that is a whole run of a set; null where this kind is none. */
    private static StretchFacts run(Map<StretchMeasure, Long> kind, StretchConditions set) {
        Map<StretchMeasure, Long> facts = new EnumMap<>(kind);
        set.summed().forEach(one -> facts.put(one.measure(), least(one)));
        facts.putIfAbsent(StretchMeasure.LENGTH, PER_CENT);
        facts.merge(StretchMeasure.LENGTH, climbed(facts), Math::max);
        StretchFacts out = new StretchFacts(facts);
        return new StretchRequirement(set, false, ValueSet.of(1, 1)).on(List.of(out)) ? out : null;
    }

    /** A length, in its ticks, over which a stretch can climb what it is to climb. */
    private static long climbed(Map<StretchMeasure, Long> facts) {
        double metres = StretchMeasure.ASCENT.scale().resolution().base(facts.getOrDefault(StretchMeasure.ASCENT, 0L))
                + StretchMeasure.DESCENT.scale().resolution().base(facts.getOrDefault(StretchMeasure.DESCENT, 0L));
        return StretchMeasure.LENGTH.scale().resolution().ticks(metres);
    }

    private static long least(StretchConditions.One one) {
        ValueTest.Within within = one.test() instanceof ValueTest.Among among
                ? new ValueTest.Within(among.values().get(0), among.values().get(0)) : (ValueTest.Within) one.test();
        long floor = one.measure() == StretchMeasure.LENGTH ? 1 : 0;
        return Math.min(Math.max(within.least(), floor), within.most());
    }

    /** Lays one more kind beside what is there, or two, so that the shares come out. */
    private List<StretchFacts> rest(List<StretchFacts> stretches) {
        for (Map<StretchMeasure, Long> one : kinds) {
            List<StretchFacts> out = laid(stretches, one, WHOLE, one);
            if (out != null) {
                return out;
            }
        }
        if (shares.isEmpty()) {
            return null;
        }
        for (long share : turning()) {
            for (Map<StretchMeasure, Long> one : kinds) {
                for (Map<StretchMeasure, Long> other : kinds) {
                    List<StretchFacts> out = tries <= 0 || one == other ? null : laid(stretches, one, share * PER_CENT, other);
                    if (out != null) {
                        return out;
                    }
                }
            }
        }
        return null;
    }

    /** Shares that may do, per cent: the ends of those that are wanted, and a little beyond. */
    private Set<Long> turning() {
        Set<Long> out = new LinkedHashSet<>();
        for (StretchRequirement one : shares) {
            for (int i = 0; i < one.values().spans(); i++) {
                out.add(Math.max(0, one.values().least(i)));
                out.add(Math.min(100, one.values().most(i)));
                out.add(100 - Math.max(0, one.values().least(i)));
            }
        }
        return out;
    }

    /** What is there, made as long as a part of one kind leaves it, that part, and the rest of another kind; null where it is not as wanted. */
    private List<StretchFacts> laid(List<StretchFacts> stretches, Map<StretchMeasure, Long> one, long part, Map<StretchMeasure, Long> other) {
        tries--;
        List<StretchFacts> out = new ArrayList<>();
        long used = 0;
        for (StretchFacts laid : stretches) {
            out.add(laid);
            used += laid.get(StretchMeasure.LENGTH);
            out.add(with(other, 1));
            used++;
        }
        add(one, part - (one == other ? used : 0), out);
        add(other, one == other ? 0 : WHOLE - used - part, out);
        return used < WHOLE && !out.isEmpty() && asWanted(out) ? List.copyOf(out) : null;
    }

    private static void add(Map<StretchMeasure, Long> kind, long length, List<StretchFacts> out) {
        if (length > 0) {
            out.add(with(kind, length));
        }
    }

    /** Level, unless something is asked of its rise. */
    private static StretchFacts with(Map<StretchMeasure, Long> kind, long length) {
        Map<StretchMeasure, Long> facts = new EnumMap<>(kind);
        facts.put(StretchMeasure.LENGTH, length);
        facts.put(StretchMeasure.ASCENT, 0L);
        facts.put(StretchMeasure.DESCENT, 0L);
        return new StretchFacts(facts);
    }

    private boolean asWanted(List<StretchFacts> stretches) {
        return wanted.stream().allMatch(one -> one.on(stretches));
    }
}
