package courseworthy.analysis;

import courseworthy.demand.Demands;
import courseworthy.demand.DerivedMeasures;
import courseworthy.demand.Measure;
import courseworthy.demand.MeasureValue;
import courseworthy.demand.Occasion;
import courseworthy.demand.StretchFacts;
import courseworthy.sheet.Situation;
import courseworthy.sheet.StretchConditions;
import courseworthy.topic.SettledTopic;
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
final class ExampleSituation {

    private static final String NOBODY_NAMED = "someone else";

    private final Map<Measure, MeasureValue> measures = new EnumMap<>(Measure.class);
    private final Map<Measure, ValueSet> derived = new EnumMap<>(Measure.class);
    private final Map<Measure, ValueSet> travel = new EnumMap<>(Measure.class);
    private final Map<Topic, SettledTopic> settled = new LinkedHashMap<>();
    private final List<GeneratedStretches.StretchRequirement> wanted = new ArrayList<>();
    private final List<String> tags = new ArrayList<>();
    private String rider;
    private ValueSet dates;
    private ValueSet daysOfYear;

    private ExampleSituation(Box box) {
        for (int i = 0; i < box.size(); i++) {
            if (box.values(i).spans() > 0) {
                add(box.thing(i), box.values(i));
            }
        }
    }

    /** The situation, in which all conditions hold that led to the box; null where what it asks does not go together. */
    static Situation of(Box box) {
        return new ExampleSituation(box).situation(box);
    }

    private void add(Variable thing, ValueSet values) {
        Object asked = thing.asked();
        if (asked instanceof Measure measure) {
            if (measure.derived()) {
                (DerivedMeasures.readsMeasures(measure) ? derived : travel).put(measure, values);
            } else {
                measures.put(measure, MeasureValue.exact(values.example()));
            }
        } else if (asked instanceof Topic topic) {
            settled.put(topic, new SettledTopic(topic, true, values.example()));
        } else if (asked instanceof StretchConditions set) {
            wanted.add(new GeneratedStretches.StretchRequirement(set, thing.scale() != null, values));
        } else {
            occasion(thing, values);
        }
    }

    private void occasion(Variable thing, ValueSet values) {
        if (thing.asked() instanceof VariableTable.TagVariable tag) {
            rider = rider == null ? NOBODY_NAMED : rider;
            if (values.example() == 1) {
                tags.add(tag.name());
            }
        } else if (thing.asked() == VariableTable.VariableOwner.RIDER) {
            rider = thing.text(values.example());
        } else if (thing.asked() == VariableTable.VariableOwner.DATE) {
            dates = values;
        } else {
            daysOfYear = values;
        }
    }

    private Situation situation(Box box) {
        List<StretchFacts> stretches = wanted.isEmpty() ? List.of() : GeneratedStretches.of(wanted);
        boolean dated = dates != null || daysOfYear != null;
        LocalDate date = dated ? date() : null;
        if (stretches == null || dated && date == null || !travel.isEmpty() && !bringTravel() || !derived.isEmpty() && !PressureRanges.bring(box, derived, measures, settled)) {
            return null;
        }
        return new Situation(measures, settled, stretches, new Occasion(rider, tags, date));
    }

    /** Settles the fork's travel so that what derives from it is as it is wanted. @return whether any travel does */
    private boolean bringTravel() {
        Topic fork = Topics.FORK_TRAVEL;
        SettledTopic given = settled.get(fork);
        for (long ticks = fork.least(); ticks <= fork.most(); ticks++) {
            Map<Topic, SettledTopic> tried = Map.of(fork, given != null ? given : new SettledTopic(fork, true, ticks));
            Map<Measure, MeasureValue> brought = DerivedMeasures.after(fork.layer(), new Demands(Map.of(), List.of(), List.of()), tried);
            if (travel.entrySet().stream().allMatch(one -> meets(one.getValue(), brought.get(one.getKey())))) {
                settled.putAll(tried);
                return true;
            }
        }
        return false;
    }

    private static boolean meets(ValueSet wanted, MeasureValue brought) {
        return brought != null && wanted.meets(ValueSet.of(brought.mid(), brought.mid()));
    }

    private LocalDate date() {
        ValueSet any = ValueSet.of(VariableTable.FIRST_DAY.toEpochDay(), VariableTable.LAST_DAY.toEpochDay());
        return DaysOfYear.both(dates == null ? any : dates, daysOfYear == null ? ValueSet.of(DaysOfYear.FIRST, DaysOfYear.LAST) : daysOfYear);
    }
}
