package courseworthy.rulebase.check;

import courseworthy.demand.Demands;
import courseworthy.demand.Derived;
import courseworthy.demand.Measure;
import courseworthy.demand.Occasion;
import courseworthy.demand.StretchFacts;
import courseworthy.demand.Value;
import courseworthy.rulebase.Situation;
import courseworthy.rulebase.StretchSet;
import courseworthy.topic.Settled;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Makes a situation of a box: one value for each thing, stretches that are such and such, a rider and a day. What boxes take as free of
 * each other may not go together after all; then there is none.
 */
final class Example {

    private static final String NOBODY_NAMED = "someone else";

    private final Map<Measure, Value> measures = new EnumMap<>(Measure.class);
    private final Map<Measure, Values> derived = new EnumMap<>(Measure.class);
    private final Map<Measure, Values> travel = new EnumMap<>(Measure.class);
    private final Map<Topic, Settled> settled = new LinkedHashMap<>();
    private final List<MadeUpStretches.Wanted> wanted = new ArrayList<>();
    private final List<String> tags = new ArrayList<>();
    private String rider;
    private Values dates;
    private Values daysOfYear;

    private Example(Box box) {
        for (int i = 0; i < box.size(); i++) {
            if (box.values(i).spans() > 0) {
                add(box.thing(i), box.values(i));
            }
        }
    }

    /** The situation, in which all conditions hold that led to the box; null where what it asks does not go together. */
    static Situation of(Box box) {
        return new Example(box).situation(box);
    }

    private void add(Thing thing, Values values) {
        Object asked = thing.asked();
        if (asked instanceof Measure measure) {
            if (measure.derived()) {
                (Derived.readsMeasures(measure) ? derived : travel).put(measure, values);
            } else {
                measures.put(measure, Value.exact(values.example()));
            }
        } else if (asked instanceof Topic topic) {
            settled.put(topic, new Settled(topic, true, values.example()));
        } else if (asked instanceof StretchSet set) {
            wanted.add(new MadeUpStretches.Wanted(set, thing.scale() != null, values));
        } else {
            occasion(thing, values);
        }
    }

    private void occasion(Thing thing, Values values) {
        if (thing.asked() instanceof Things.Tag tag) {
            rider = rider == null ? NOBODY_NAMED : rider;
            if (values.example() == 1) {
                tags.add(tag.name());
            }
        } else if (thing.asked() == Things.Whose.RIDER) {
            rider = thing.text(values.example());
        } else if (thing.asked() == Things.Whose.DATE) {
            dates = values;
        } else {
            daysOfYear = values;
        }
    }

    private Situation situation(Box box) {
        List<StretchFacts> stretches = wanted.isEmpty() ? List.of() : MadeUpStretches.of(wanted);
        boolean dated = dates != null || daysOfYear != null;
        LocalDate date = dated ? date() : null;
        if (stretches == null || dated && date == null || !travel.isEmpty() && !bringTravel() || !derived.isEmpty() && !Pressures.bring(box, derived, measures, settled)) {
            return null;
        }
        return new Situation(measures, settled, stretches, new Occasion(rider, tags, date));
    }

    /** Settles the fork's travel so that what derives from it is as it is wanted. @return whether any travel does */
    private boolean bringTravel() {
        Topic fork = Topics.of("fork travel");
        Settled given = settled.get(fork);
        for (long ticks = fork.least(); ticks <= fork.most(); ticks++) {
            Map<Topic, Settled> tried = Map.of(fork, given != null ? given : new Settled(fork, true, ticks));
            Map<Measure, Value> brought = Derived.after(fork.layer(), new Demands(Map.of(), List.of(), List.of()), tried);
            if (travel.entrySet().stream().allMatch(one -> meets(one.getValue(), brought.get(one.getKey())))) {
                settled.putAll(tried);
                return true;
            }
        }
        return false;
    }

    private static boolean meets(Values wanted, Value brought) {
        return brought != null && wanted.meets(Values.of(brought.mid(), brought.mid()));
    }

    private LocalDate date() {
        Values any = Values.of(Things.FIRST_DAY.toEpochDay(), Things.LAST_DAY.toEpochDay());
        return Days.both(dates == null ? any : dates, daysOfYear == null ? Values.of(Days.FIRST, Days.LAST) : daysOfYear);
    }
}
