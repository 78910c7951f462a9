package courseworthy.rulebase.check;

import courseworthy.demand.Demands;
import courseworthy.demand.Measure;
import courseworthy.demand.Occasion;
import courseworthy.demand.StretchFacts;
import courseworthy.demand.StretchMeasure;
import courseworthy.demand.Value;
import courseworthy.rulebase.Condition;
import courseworthy.rulebase.OccasionTest;
import courseworthy.rulebase.Situation;
import courseworthy.rulebase.Stage;
import courseworthy.rulebase.StretchSet;
import courseworthy.rulebase.Subject;
import courseworthy.rulebase.Truth;
import courseworthy.rulebase.ValueTest;
import courseworthy.topic.Settled;
import courseworthy.topic.Topic;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Makes a situation of a box: one value for each thing, stretches that are such and such, a rider and a day. What boxes take as free of
 * each other may not go together after all; then there is none.
 */
final class Example {

    /** Whole length of the stretches made up, ticks: 100 km, so that shares come out in whole per cent. */
    private static final long WHOLE = 10_000;
    private static final String NOBODY_NAMED = "someone else";

    private final Map<Measure, Value> measures = new EnumMap<>(Measure.class);
    private final Map<Topic, Settled> settled = new LinkedHashMap<>();
    private final List<Wanted> wanted = new ArrayList<>();
    private final List<OccasionTest> met = new ArrayList<>();
    private final List<OccasionTest> missed = new ArrayList<>();

    /** What is wanted of stretches: that some are such and such, that none are, or a share of them. */
    private record Wanted(StretchSet set, boolean share, long value) {
    }

    private Example(Box box) {
        for (int i = 0; i < box.size(); i++) {
            if (box.values(i).spans() > 0) {
                add(box.thing(i), box.values(i).example());
            }
        }
    }

    /** The situation, in which all conditions hold that led to the box; null where what it asks does not go together. */
    static Situation of(Box box) {
        return new Example(box).situation();
    }

    private void add(Thing thing, long value) {
        Object asked = thing.asked();
        if (asked instanceof Measure measure) {
            measures.put(measure, Value.exact(value));
        } else if (asked instanceof Topic topic) {
            settled.put(topic, new Settled(topic, true, value));
        } else if (asked instanceof OccasionTest test) {
            (value == 1 ? met : missed).add(test);
        } else {
            wanted.add(new Wanted((StretchSet) asked, thing.scale() != null, value));
        }
    }

    private Situation situation() {
        Occasion occasion = occasion();
        List<StretchFacts> stretches = wanted.isEmpty() ? List.of() : stretches();
        return occasion == null || stretches == null ? null : new Situation(measures, settled, stretches, occasion);
    }

    // Whose day, and which --------------------------------------------------------------------------------------------

    private Occasion occasion() {
        String rider = null;
        Set<String> tags = new LinkedHashSet<>();
        for (OccasionTest test : met) {
            if (test instanceof OccasionTest.Riders riders && rider == null) {
                rider = riders.names().get(0);
            } else if (test instanceof OccasionTest.Tags some) {
                tags.add(some.tags().get(0));
            }
        }
        boolean asked = met.stream().anyMatch(test -> !OccasionTest.Days.KEY.equals(test.key()))
                || missed.stream().anyMatch(test -> !OccasionTest.Days.KEY.equals(test.key()));
        String name = rider == null && asked ? NOBODY_NAMED : rider;
        for (LocalDate date : dates()) {
            Occasion out = new Occasion(name, List.copyOf(tags), date);
            if (fits(out)) {
                return out;
            }
        }
        return null;
    }

    private boolean fits(Occasion occasion) {
        return met.stream().allMatch(test -> test.on(occasion) == Truth.TRUE) && missed.stream().allMatch(test -> test.on(occasion) == Truth.FALSE);
    }

    /** Days that may do: the ends of what is asked and those beside them; no day where none is asked for. */
    private List<LocalDate> dates() {
        List<LocalDate> out = new ArrayList<>();
        List<OccasionTest> all = new ArrayList<>(met);
        all.addAll(missed);
        for (OccasionTest test : all) {
            if (test instanceof OccasionTest.Days days) {
                around(days.from(), days.to(), out);
            } else if (test instanceof OccasionTest.Season season) {
                around(day(season.from()), day(season.to()), out);
            }
        }
        if (out.isEmpty()) {
            out.add(null);
        }
        return out;
    }

    private static void around(LocalDate from, LocalDate to, List<LocalDate> out) {
        out.addAll(List.of(from, to, from.minusDays(1), to.plusDays(1)));
    }

    /** In a leap year, which has every day there is. */
    private static LocalDate day(int monthAndDay) {
        return LocalDate.of(2024, monthAndDay / 100, monthAndDay % 100);
    }

    // Stretches -------------------------------------------------------------------------------------------------------

    /** One stretch for each thing that must be found, one between that is like none of them; null where they do not go together. */
    private List<StretchFacts> stretches() {
        Map<StretchMeasure, Long> plain = plain();
        List<StretchFacts> out = new ArrayList<>();
        long left = WHOLE;
        for (Wanted one : wanted) {
            if (one.value() > 0) {
                Map<StretchMeasure, Long> facts = new EnumMap<>(plain);
                facts.remove(StretchMeasure.LENGTH);
                one.set().tests().forEach(test -> facts.put(test.measure(), passing(test.measure(), test.test())));
                if (one.share()) {
                    facts.put(StretchMeasure.LENGTH, WHOLE / 100 * one.value());
                }
                facts.putIfAbsent(StretchMeasure.LENGTH, 100L);
                left -= facts.get(StretchMeasure.LENGTH);
                out.add(new StretchFacts(facts));
                left -= 1;
                out.add(between(plain, 1));
            }
        }
        if (left > 0) {
            out.add(between(plain, left));
        }
        return holds(out) ? out : only(plain);
    }

    /** Where a share is to be all or nothing there is no room for anything between. */
    private List<StretchFacts> only(Map<StretchMeasure, Long> plain) {
        Map<StretchMeasure, Long> facts = new EnumMap<>(plain);
        for (Wanted one : wanted) {
            if (one.value() > 0) {
                one.set().tests().forEach(test -> facts.put(test.measure(), passing(test.measure(), test.test())));
            }
        }
        facts.putIfAbsent(StretchMeasure.LENGTH, WHOLE);
        List<StretchFacts> out = List.of(new StretchFacts(facts));
        return holds(out) ? out : null;
    }

    private static StretchFacts between(Map<StretchMeasure, Long> plain, long length) {
        Map<StretchMeasure, Long> facts = new EnumMap<>(plain);
        facts.put(StretchMeasure.LENGTH, length);
        return new StretchFacts(facts);
    }

    /** Values that no set asks for, as far as there are any. */
    private Map<StretchMeasure, Long> plain() {
        Map<StretchMeasure, Long> out = new EnumMap<>(StretchMeasure.class);
        for (Wanted one : wanted) {
            for (StretchSet.One test : one.set().each()) {
                out.putIfAbsent(test.measure(), failing(test.measure(), test.test()));
            }
        }
        for (Wanted one : wanted) {
            for (StretchSet.One test : one.set().summed()) {
                if (test.measure() != StretchMeasure.LENGTH) {
                    out.putIfAbsent(test.measure(), failing(test.measure(), test.test()));
                }
            }
        }
        return out;
    }

    private static long passing(StretchMeasure measure, ValueTest test) {
        Subject of = Subject.of(measure);
        if (test instanceof ValueTest.Among among) {
            return among.values().get(0);
        }
        ValueTest.Within within = (ValueTest.Within) test;
        long least = Math.max(within.least(), of.least());
        if (measure == StretchMeasure.LENGTH && least <= 0) {
            return Math.min(within.most(), 1);
        }
        return least != Long.MIN_VALUE ? least : Math.min(within.most(), 0);
    }

    private static long failing(StretchMeasure measure, ValueTest test) {
        Subject of = Subject.of(measure);
        long passing = passing(measure, test);
        if (test instanceof ValueTest.Among) {
            for (long value = Math.max(of.least(), 0); value <= Math.min(of.most(), 1_000); value++) {
                if (!test.holds(value)) {
                    return value;
                }
            }
            return passing;
        }
        ValueTest.Within within = (ValueTest.Within) test;
        if (within.least() > of.least()) {
            return within.least() - 1;
        }
        return within.most() < of.most() ? within.most() + 1 : passing;
    }

    private boolean holds(List<StretchFacts> stretches) {
        Stage stage = new Stage(0, new Demands(Map.of(), stretches, List.of()), Map.of());
        for (Wanted one : wanted) {
            Condition asked = one.share() ? new Condition.Share(one.set(), new ValueTest.Within(one.value(), one.value()), "")
                    : new Condition.Stretches(one.value() == 1, one.set());
            if (asked.on(stage) != Truth.TRUE) {
                return false;
            }
        }
        return true;
    }
}
