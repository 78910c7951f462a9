package courseworthy.demand;

import courseworthy.ride.BikeKind;
import courseworthy.ride.Range;
import courseworthy.topic.End;
import courseworthy.topic.SettledTopic;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import courseworthy.units.PressureSteps;
import courseworthy.units.RuleValue;
import java.util.Map;

/** What derived measures are calculated from: what is known and what is settled so far. */
final class SettledInput {

    /** Widths that are tried, mm: those of the topic (computing). */
    private static final int NARROWEST = (int) Topics.FRONT_TYRE_WIDTH.least();
    private static final int WIDEST = (int) Topics.FRONT_TYRE_WIDTH.most();

    private final Demands demands;
    private final Map<Topic, SettledTopic> settled;

    SettledInput(Demands demands, Map<Topic, SettledTopic> settled) {
        this.demands = demands;
        this.settled = settled;
    }

    /** The settled travel of the fork, m, and the most that front and rear may differ by, once added or taken away. */
    Range rearTravel(int times) {
        SettledTopic fork = known(Topics.FORK_TRAVEL);
        return fork == null ? null : Range.exact(fork.topic().resolution().base(fork.value()) + times * RuleValue.TRAVEL_DIFFERENCE.inBase());
    }

    /** The pressure to start from, Pa. */
    Range referencePressure(End end) {
        TyrePressure tyre = tyre(end);
        Range load = load(end);
        return tyre == null || load == null ? null : shown(tyre.reference(load));
    }

    /** The pressure not to go below, Pa. */
    Range pressureFloor(End end) {
        TyrePressure tyre = tyre(end);
        Range load = load(end);
        return tyre == null || load == null ? null : tyre.floor(load, worstRoughness());
    }

    /**
     * The narrowest tyre under the ceiling, m. Casing and insert are not settled then: the casing that asks for most counts, so that no other
     * goes over the ceiling.
     */
    Range narrowestTyre(End end) {
        Range load = load(end);
        Range ceiling = known(Measure.PRESSURE_CEILING);
        if (load == null || ceiling == null) {
            return null;
        }
        int low = narrowest(load.low(), ceiling.mid());
        int mid = narrowest(load.mid(), ceiling.mid());
        int high = narrowest(load.high(), ceiling.mid());
        return mid > WIDEST ? null : new Range(low, mid, Math.min(high, WIDEST)).times(1 / 1000.0);
    }

    private int narrowest(double load, double most) {
        int width = NARROWEST;
        while (width <= WIDEST && shown(new TyrePressure(width / 1000.0, "light", false, offRoad()).reference(load)) > most + 1) {
            width++;
        }
        return width;
    }

    /** A reference as it is shown: of a tyre that is no wider than its ceiling asks, it is never above it. */
    private static double shown(double pascal) {
        return PressureSteps.nearest(pascal);
    }

    private static Range shown(Range pascal) {
        return new Range(shown(pascal.low()), shown(pascal.mid()), shown(pascal.high()));
    }

    /** The tyre that is settled on a wheel; null where its width is not. */
    private TyrePressure tyre(End end) {
        SettledTopic width = known(Topics.FRONT_TYRE_WIDTH.at(end));
        return width == null || width.value() <= 0 ? null : new TyrePressure(width.topic().resolution().base(width.value()),
                word(Topics.FRONT_TYRE_CASING.at(end)), "fitted".equals(word(Topics.FRONT_INSERT.at(end))), offRoad());
    }

    /** On a wheel, kg; null where mass or kind of bike is not known. */
    private Range load(End end) {
        BikeKind kind = kind();
        Range mass = known(Measure.START_LINE_MASS);
        return kind == null || mass == null ? null : mass.times(end == End.FRONT ? kind.frontShare() : 1 - kind.frontShare());
    }

    private BikeKind kind() {
        SettledTopic bike = known(Topics.BIKE);
        if (bike != null) {
            return BikeKind.of(bike.text());
        }
        MeasureValue atHand = demands.get(Measure.BIKE_AT_HAND);
        return atHand == null ? null : BikeKind.of(Measure.BIKE_AT_HAND.scale().words().get((int) atHand.mid()));
    }

    /** What is settled on a topic, or null where it is not, does not apply or is not possible. */
    private SettledTopic known(Topic topic) {
        SettledTopic on = settled.get(topic);
        return on != null && on.known() ? on : null;
    }

    private String word(Topic topic) {
        SettledTopic on = known(topic);
        return on == null ? "" : on.text();
    }

    /** A measure in base units; null where it is unknown. */
    private Range known(Measure measure) {
        MeasureValue value = demands.get(measure);
        return value == null ? null : measure.scale().base(value);
    }

    /** Whether any ground is not hard, which only paved ground is. */
    private boolean offRoad() {
        MeasureValue paved = demands.get(Measure.PAVED_SHARE);
        return paved == null || paved.mid() != Measure.PAVED_SHARE.scale().most();
    }

    private Range worstRoughness() {
        Range worst = known(Measure.WORST_ROUGHNESS);
        return worst == null ? TyrePressure.UNKNOWN_GROUND : worst;
    }
}
