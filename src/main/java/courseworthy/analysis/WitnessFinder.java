package courseworthy.analysis;

import courseworthy.analysis.Finding.Fact;
import courseworthy.analysis.Finding.Kind;
import courseworthy.analysis.ReasoningBudget.TooMany;
import courseworthy.demand.DerivedMeasures;
import courseworthy.demand.Measure;
import courseworthy.demand.Occasion;
import courseworthy.sheet.Condition;
import courseworthy.sheet.OccasionCondition;
import courseworthy.sheet.Row;
import courseworthy.sheet.Saying;
import courseworthy.sheet.Situation;
import courseworthy.sheet.Truth;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;

/** Finds for each remark a situation that shows it, and tries each; a remark that none shows is not made. */
final class WitnessFinder {

    /** So many situations are tried for one remark. */
    private static final int MOST_TRIES = 60;
    private static final int MOST_BOXES = 12;
    private static final int MOST_GEARS = 10;

    private final VariableTable things;
    private final Region.RegionReader reader;
    private final Feasibility possible;
    private final WitnessTrial trial;
    private final GearRatios gearing;

    WitnessFinder(VariableTable things, Region.RegionReader reader, Feasibility possible, WitnessTrial trial) {
        this.things = things;
        this.reader = reader;
        this.possible = possible;
        this.trial = trial;
        this.gearing = new GearRatios(things);
    }

    /**
     * A remark that is still to be shown.
     *
     * @param bare     the remark without its example
     * @param speaking the rows that speak in it
     * @param boxes    where it can be seen
     * @param silent   the row that keeps silent in it; null where there is none
     * @param unmet    which of the conditions of that row do not hold; none where the situation tells
     * @param done     the remark with its example, where it was found already
     */
    record Draft(Finding bare, List<Row> speaking, Supplier<List<Box>> boxes, Row silent, Set<Integer> unmet, Finding done) {

        Draft(Finding bare, List<Row> speaking, Supplier<List<Box>> boxes, Row silent, Set<Integer> unmet) {
            this(bare, speaking, boxes, silent, unmet, null);
        }

        Kind kind() {
            return bare.kind();
        }

        Draft as(Finding found) {
            return new Draft(bare, speaking, boxes, silent, unmet, found);
        }
    }

    /** The remark with a situation that shows it; null where none of those tried does. */
    Finding shown(Draft draft) {
        if (draft.done() != null) {
            return draft.done();
        }
        int tries = MOST_TRIES;
        for (Box box : boxes(draft)) {
            Situation situation = tries-- > 0 ? ExampleSituation.of(box) : null;
            if (situation != null) {
                Finding remark = draft.bare().shownBy(new Finding.Witness(facts(box, situation, draft.kind() != Kind.GAP), situation,
                        draft.silent() == null ? null : draft.silent().origin(), unmet(draft, situation)));
                if (trial.shows(remark)) {
                    return remark;
                }
            }
        }
        return null;
    }

    private static Set<Integer> unmet(Draft draft, Situation situation) {
        if (draft.silent() == null || !draft.unmet().isEmpty()) {
            return draft.unmet();
        }
        Set<Integer> out = new LinkedHashSet<>();
        List<Condition> parts = draft.silent().condition().parts();
        for (int i = 0; i < parts.size(); i++) {
            if (parts.get(i).on(situation.after(Topics.LAST_LAYER)) != Truth.TRUE) {
                out.add(i);
            }
        }
        return out;
    }

    /** Boxes to be tried: where the topic applies first, all that is said with a value, and each with one answer after the other. */
    private List<Box> boxes(Draft draft) {
        List<Box> out = new ArrayList<>();
        List<Box> given = draft.boxes().get();
        for (Box box : given.subList(0, Math.min(MOST_BOXES, given.size()))) {
            Box valued = valued(box, draft);
            for (Box applies : applies(draft)) {
                add(valued.and(applies), out);
            }
            add(valued, out);
        }
        return out;
    }

    private void add(Box box, List<Box> out) {
        for (Box some : box == null ? List.<Box>of() : gearing.existing(box, MOST_GEARS)) {
            Box left = possible.left(some);
            if (left != null) {
                answers(left, 0, out);
            }
        }
    }

    private List<Box> applies(Draft draft) {
        if (draft.bare().on().isEmpty() || draft.kind() == Kind.SET_ASIDE) {
            return List.of();
        }
        try {
            List<Box> out = reader.applies(Topics.of(draft.bare().on())).boxes();
            return out.equals(List.of(Box.ANYTHING)) ? List.of() : out;
        } catch (TooMany e) {
            return List.of();
        }
    }

    /** With the measures known from which values come that are said. */
    private Box valued(Box box, Draft draft) {
        Box out = box;
        for (Row row : draft.speaking()) {
            for (Saying saying : row.sayings()) {
                if (saying.source() instanceof Saying.Times times) {
                    Variable thing = things.of(times.measure());
                    Box both = out.and(Box.of(thing, thing.known()));
                    out = both == null ? out : both;
                }
            }
        }
        return out;
    }

    /** The box with each settled topic's first answer, then with others: not all go together. */
    private static void answers(Box box, int from, List<Box> out) {
        if (out.size() >= MOST_TRIES) {
            return;
        }
        for (int i = from; i < box.size(); i++) {
            if (box.thing(i).asked() instanceof Topic topic && box.values(i).spans() > 0) {
                for (long value : some(box.values(i), topic)) {
                    answers(box.and(Box.of(box.thing(i), ValueSet.of(value, value))), i + 1, out);
                }
                return;
            }
        }
        out.add(box);
    }

    private static Set<Long> some(ValueSet values, Topic topic) {
        Set<Long> out = new LinkedHashSet<>();
        out.add(values.example());
        for (long value : new long[] {topic.standard(), topic.most(), topic.least(), (topic.least() + topic.most()) / 2}) {
            if (values.meets(ValueSet.of(value, value))) {
                out.add(value);
            }
        }
        long most = values.most(values.spans() - 1);
        if (most != Long.MAX_VALUE) {
            out.add(most);
        }
        return out;
    }

    /** @param all whether to say of a thing, too, that it has some value, whichever */
    private static List<Fact> facts(Box box, Situation situation, boolean all) {
        List<Fact> out = new ArrayList<>();
        boolean dated = false;
        for (int i = 0; i < box.size(); i++) {
            Object asked = box.thing(i).asked();
            boolean anything = box.values(i).equals(box.thing(i).known());
            boolean day = asked == VariableTable.VariableOwner.DATE || asked == VariableTable.VariableOwner.DAY_OF_YEAR;
            if (day && !dated) {
                dated = true;
                out.add(new Fact(OccasionCondition.Days.KEY, day(situation.occasion())));
            } else if (!day && box.values(i).spans() > 0 && (all || !anything)) {
                out.add(new Fact(box.thing(i).name(), box.thing(i).text(value(box, i, situation))));
            }
        }
        return out;
    }

    /** What derives comes out as it does; else the value is the one that was chosen. */
    private static long value(Box box, int at, Situation situation) {
        if (box.thing(at).asked() instanceof Measure measure && measure.derived()) {
            return DerivedMeasures.after(measure.layer(), situation.demands(), situation.settled()).get(measure).mid();
        }
        return box.values(at).example();
    }

    private static String day(Occasion occasion) {
        return String.valueOf(occasion.date());
    }
}
