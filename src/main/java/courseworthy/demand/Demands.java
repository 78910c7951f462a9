package courseworthy.demand;

import courseworthy.topic.SettledTopic;
import courseworthy.topic.Topic;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** What one course, rider and day ask for. A measure that is not in it is unknown. Immutable. */
public final class Demands {

    private static final Measure[] MEASURES = Measure.values();
    private static final List<Measure> OF_THE_BIKE = Arrays.stream(MEASURES).filter(Measure::ofTheBike).toList();
    private static final List<Measure> DERIVED = Arrays.stream(MEASURES).filter(Measure::derived).toList();

    /** By the measures' positions, null where unknown: every row of every sheet looks here. */
    private final MeasureValue[] byPosition;
    private final List<StretchFacts> stretches;
    private final List<AssumedInput> assumed;
    private final EstimatedRide estimated;
    private final Occasion occasion;
    private final SetAsideMeasures atHand;

    /**
     * The bike at hand beside the bike that is called.
     *
     * @param kind     position of the kind that figures of the bike belong to; null where they hold for whatever is called
     * @param setAside figures that do not hold, since another kind is called
     * @param choosing what is asked for on the bike at hand, by which the kind is chosen; null where that is the same
     */
    private record SetAsideMeasures(Long kind, Map<Measure, MeasureValue> setAside, Demands choosing) {
        static final SetAsideMeasures ANY = new SetAsideMeasures(null, Map.of(), null);
    }

    /**
     * Something that was not written and was therefore assumed.
     *
     * @param what  in words
     * @param value with its unit, in words
     */
    public record AssumedInput(String what, String value) {
    }

    public Demands(Map<Measure, MeasureValue> values, List<StretchFacts> stretches, List<AssumedInput> assumed) {
        this(values, stretches, assumed, null);
    }

    /** @param estimated what lies behind the measures, null where they were not surveyed */
    public Demands(Map<Measure, MeasureValue> values, List<StretchFacts> stretches, List<AssumedInput> assumed, EstimatedRide estimated) {
        this(values, stretches, assumed, estimated, Occasion.UNKNOWN);
    }

    /** @param occasion whose day it is, and which */
    public Demands(Map<Measure, MeasureValue> values, List<StretchFacts> stretches, List<AssumedInput> assumed, EstimatedRide estimated, Occasion occasion) {
        this(values, stretches, assumed, estimated, occasion, SetAsideMeasures.ANY);
    }

    private Demands(Map<Measure, MeasureValue> values, List<StretchFacts> stretches, List<AssumedInput> assumed, EstimatedRide estimated, Occasion occasion,
            SetAsideMeasures atHand) {
        this(put(values, new MeasureValue[MEASURES.length]), List.copyOf(stretches), List.copyOf(assumed), estimated, occasion, atHand);
    }

    /** @param byPosition which nobody else changes */
    private Demands(MeasureValue[] byPosition, List<StretchFacts> stretches, List<AssumedInput> assumed, EstimatedRide estimated, Occasion occasion,
            SetAsideMeasures atHand) {
        this.byPosition = byPosition;
        this.atHand = atHand;
        this.stretches = stretches;
        this.assumed = assumed;
        this.estimated = estimated;
        this.occasion = occasion;
    }

    private static MeasureValue[] put(Map<Measure, MeasureValue> values, MeasureValue[] out) {
        values.forEach((measure, value) -> out[measure.ordinal()] = value);
        return out;
    }

    /** The value with its range, or null where unknown. */
    public MeasureValue get(Measure measure) {
        return byPosition[measure.ordinal()];
    }

    public boolean known(Measure measure) {
        return get(measure) != null;
    }

    /** Whether what a measure is worked out from is known, and there is no such thing: no long climb on a flat course. */
    public boolean isAbsent(Measure measure) {
        return !known(measure) && measure.input().equals(Measure.ASCENT.input()) && known(Measure.ASCENT) && known(Measure.DESCENT);
    }

    /** All that is known, in the order of the catalogue. */
    public Map<Measure, MeasureValue> values() {
        Map<Measure, MeasureValue> out = new EnumMap<>(Measure.class);
        for (Measure measure : MEASURES) {
            if (known(measure)) {
                out.put(measure, get(measure));
            }
        }
        return Collections.unmodifiableMap(out);
    }

    /** The stretches of one lap, in order. */
    public List<StretchFacts> stretches() {
        return stretches;
    }

    public List<AssumedInput> assumed() {
        return assumed;
    }

    /** The estimate of the ride behind the measures, null where they were not surveyed. */
    public EstimatedRide estimated() {
        return estimated;
    }

    /** Whose day it is, and which. */
    public Occasion occasion() {
        return occasion;
    }

    /**
     * These demands with some measures changed or added. What the kind of bike is chosen by changes with them, but for what differs there.
     */
    public Demands with(Map<Measure, MeasureValue> changes) {
        return other(put(changes, byPosition.clone()), new SetAsideMeasures(atHand.kind, atHand.setAside, choosingWith(changes)));
    }

    private Demands choosingWith(Map<Measure, MeasureValue> changes) {
        Demands choosing = atHand.choosing;
        if (choosing == null) {
            return null;
        }
        Map<Measure, MeasureValue> alike = new EnumMap<>(Measure.class);
        changes.forEach((measure, value) -> {
            if (Objects.equals(choosing.get(measure), get(measure))) {
                alike.put(measure, value);
            }
        });
        return choosing.with(alike);
    }

    /** These demands without a measure. */
    public Demands without(Measure measure) {
        MeasureValue[] left = byPosition.clone();
        left[measure.ordinal()] = null;
        return other(left, atHand);
    }

    private Demands other(MeasureValue[] others, SetAsideMeasures bike) {
        return new Demands(others, stretches, assumed, estimated, occasion, bike);
    }

    // The bike at hand and the bike that is called

    /** These demands, whose figures of the bike belong to one kind. @param kind as the topic bike writes it; null where none is known */
    Demands ofBike(String kind) {
        return kind == null ? this : other(byPosition, new SetAsideMeasures((long) Measure.BIKE_AT_HAND.scale().words().indexOf(kind), Map.of(), null));
    }

    /** These demands of a ride on a bike that was called by what was asked for on the bike at hand. */
    public Demands chosenBy(Demands choosing) {
        return other(byPosition, new SetAsideMeasures(atHand.kind, atHand.setAside, choosing));
    }

    /** What the kind of bike was chosen by; null where that is what is asked for here. */
    public Demands choosing() {
        return atHand.choosing;
    }

    /** What is known where a topic is settled: the kind of bike is chosen on the bike at hand, all else on the bike that is called. */
    public Demands settling(Topic topic) {
        return atHand.choosing != null && topic.layer() == Measure.TYRE_CLEARANCE.layer() ? atHand.choosing : this;
    }

    /** The kind of bike the ride was estimated on; null where it was not. */
    public String ridden() {
        return estimated == null ? null : estimated.estimate().basis().kind().written();
    }

    /** What holds once the kind of bike is settled: figures of the bike at hand where it is of that kind, or none is called. */
    public Demands calling(SettledTopic bike) {
        boolean holds = atHand.kind == null || bike == null || !bike.known() || bike.value() == atHand.kind;
        return holds ? withFiguresOfTheBike() : withoutFiguresOfTheBike();
    }

    private Demands withFiguresOfTheBike() {
        for (Measure measure : atHand.setAside.keySet()) {
            if (!known(measure)) {
                return other(put(atHand.setAside, byPosition.clone()), new SetAsideMeasures(atHand.kind, Map.of(), atHand.choosing));
            }
        }
        return this;
    }

    private Demands withoutFiguresOfTheBike() {
        MeasureValue[] left = byPosition.clone();
        Map<Measure, MeasureValue> aside = new EnumMap<>(Measure.class);
        aside.putAll(atHand.setAside);
        boolean same = true;
        for (Measure measure : OF_THE_BIKE) {
            if (known(measure)) {
                aside.put(measure, get(measure));
                left[measure.ordinal()] = null;
                same = false;
            }
        }
        return same ? this : other(left, new SetAsideMeasures(atHand.kind, aside, atHand.choosing));
    }

    /** Whether figures of the bike at hand are written that do not hold, since another kind is called. */
    public boolean setsFiguresAside() {
        return !atHand.setAside.isEmpty();
    }

    /** What was stated, before anything is settled. */
    public Demands stated() {
        MeasureValue[] out = put(atHand.setAside, byPosition.clone());
        for (Measure measure : DERIVED) {
            out[measure.ordinal()] = null;
        }
        return other(out, new SetAsideMeasures(atHand.kind, Map.of(), atHand.choosing));
    }
}
