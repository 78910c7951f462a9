package courseworthy.worth;

import static java.util.Map.entry;

import courseworthy.call.Call;
import courseworthy.claim.Claim;
import courseworthy.claim.Rank;
import courseworthy.claim.Verb;
import courseworthy.decision.Decision;
import courseworthy.demand.Demands;
import courseworthy.demand.EstimatedRide;
import courseworthy.demand.Measure;
import courseworthy.demand.MeasureValue;
import courseworthy.engine.ShippedRules;
import courseworthy.ride.BikeKind;
import courseworthy.ride.DragArea;
import courseworthy.ride.Range;
import courseworthy.topic.Concern;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import courseworthy.topic.Work;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** What the decisions of one call are worth, each worked out when it is asked for. */
public final class WorthCalculator {

    /** Clamp-on extensions with their pads, kg (practice). */
    private static final Range EXTENSIONS_MASS = new Range(0.25, 0.40, 0.60);
    /** On foot with a puncture that cannot be repaired, s (practice). */
    private static final Range ON_FOOT = new Range(1800, 3600, 7200);
    /** How the next size is away: 5 mm of tyre, half a litre (practice). */
    private static final long TYRE_STEP = 5;
    private static final long WATER_STEP = 5;

    /** What is to be said of the figures of one topic. */
    private static final Map<Topic, String> NOTES = Map.ofEntries(entry(Topics.FORK_TRAVEL, FigureNotes.MASS_ONLY),
            entry(Topics.REAR_TRAVEL, FigureNotes.MASS_ONLY), entry(Topics.FORK_CHASSIS, FigureNotes.MASS_ONLY),
            entry(Topics.LOCKOUT, FigureNotes.MASS_ONLY), entry(Topics.SEATPOST, FigureNotes.MASS_ONLY),
            entry(Topics.FRONT_TYRE_TREAD, FigureNotes.GRIP), entry(Topics.REAR_TYRE_TREAD, FigureNotes.GRIP),
            entry(Topics.FRONT_TYRE_WIDTH, FigureNotes.WIDTH), entry(Topics.REAR_TYRE_WIDTH, FigureNotes.WIDTH),
            entry(Topics.FRONT_RIM_DEPTH, FigureNotes.WIND), entry(Topics.REAR_RIM_DEPTH, FigureNotes.WIND),
            entry(Topics.FRONT_ROTOR, FigureNotes.BRAKES), entry(Topics.REAR_ROTOR, FigureNotes.BRAKES),
            entry(Topics.WATER, FigureNotes.WATER), entry(Topics.TUBES, FigureNotes.TUBE), entry(Topics.PLUGS, FigureNotes.PLUG));

    private final Call call;
    private final Demands demands;
    private final EstimatedRide on;
    private final Sensitivity sensitivity;
    private CadenceAnalysis turning;
    private Range lostGroup;

    /**
     * @param call        whose demands may be without an estimate; then nothing is worked out
     * @param sensitivity of the ride the call is for; null where there is no estimate
     */
    public WorthCalculator(Call call, Sensitivity sensitivity) {
        this.call = call;
        this.sensitivity = sensitivity;
        demands = call.demands();
        on = demands.estimated();
    }

    /** Whether anything can be worked out. */
    public boolean known() {
        return on != null;
    }

    /** Whether it may turn out that extensions are advised: a bike that takes them, and an event that allows them. */
    public static boolean mayUseExtensions(Demands demands) {
        MeasureValue allowed = demands.get(Measure.AERO_EXTENSIONS_ALLOWED);
        BikeKind kind = demands.estimated() == null ? null : demands.estimated().estimate().basis().kind();
        return allowed != null && allowed.mid() == 1 && (kind == BikeKind.ROAD || kind == BikeKind.GRAVEL);
    }

    /** Whether some of it is likely to be ridden in a group. */
    public static boolean inCompany(Demands demands) {
        MeasureValue share = demands.get(Measure.GROUP_SHARE);
        return share != null && share.mid() > 0;
    }

    /** What 1 kg less returns over the ride, s. */
    public Range perKilogram() {
        return sensitivity.perKilogram();
    }

    /**
     * Time that one value of a topic returns against another over the ride, s: above 0 where it is faster. Mass, rolling and drag of ordinary
     * parts are in it, and nothing else. Null where nothing can be computed.
     */
    public Range returned(Topic topic, long from, long to) {
        if (on == null || from == to) {
            return on == null ? null : Range.exact(0);
        }
        if (topic == Topics.AERO_EXTENSIONS) {
            Range saved = extensions().saved();
            return topic.text(to).equals("fitted") ? saved : new Range(-saved.high(), -saved.mid(), -saved.low());
        }
        Effect effect = PartEffects.between(topic, from, to);
        return effect == null ? null : sensitivity.saved(effect);
    }

    /** What a value of a topic does to mass, rolling and drag against another; nothing where nothing can be computed. */
    public static Effect effect(Topic topic, long from, long to) {
        Effect effect = from == to ? Effect.NONE : PartEffects.between(topic, from, to);
        return effect == null ? Effect.NONE : effect;
    }

    /** Time that parts return, s: above 0 where they make the ride faster; null where nothing can be worked out. */
    public Range saved(Effect effect) {
        return on == null ? null : sensitivity.saved(effect);
    }

    /** A steep piece in the easiest gear that is decided; null where either is not known. */
    public ClimbInGear climbed(EstimatedRide.Kind kind) {
        Double ratio = ratio(Topics.EASIEST_GEAR);
        EstimatedRide.RidePiece piece = on.piece(kind);
        return ratio == null || piece == null ? null : turning().climbed(piece, ratio);
    }

    /** Speed at which the hardest gear that is decided is spun out, m/s; null where none is decided. */
    public Range topSpeed() {
        Double ratio = ratio(Topics.HARDEST_GEAR);
        return ratio == null ? null : turning().topSpeed(ratio);
    }

    private Double ratio(Topic topic) {
        Decision decision = call.on(topic);
        return decision.value() == null ? null : decision.topic().resolution().base(decision.value());
    }

    private CadenceAnalysis turning() {
        if (turning == null) {
            turning = GearChoice.turning(call);
        }
        return turning;
    }

    /** What a decision is worth; null where nothing can be said. */
    public Worth on(Topic topic) {
        Decision decision = call.on(topic);
        if (on == null || decision.value() == null) {
            return null;
        }
        if (topic.work() == Work.GEARS && topic.kind() == Topic.Kind.QUANTITY) {
            return new Worth(topic.name(), false, List.of(), null, GearChoice.of(call, ShippedRules.realPairs()), List.of());
        }
        return topic == Topics.AERO_EXTENSIONS ? new Worth(topic.name(), false, List.of(), extensions(), null, List.of(FigureNotes.EXTENSIONS))
                : topic == Topics.POWER_METER ? new Worth(topic.name(), false, List.of(), null, null, List.of(FigureNotes.POWER_METER))
                : parts(decision);
    }

    private Worth parts(Decision decision) {
        Decision other = otherEnd(decision);
        List<Alternative> alternatives = new ArrayList<>();
        for (long value : values(decision, other)) {
            Effect effect = effect(decision, other, value);
            if (effect != null && !effect.none()) {
                alternatives.add(alternative(decision, other != null, value, effect));
            }
        }
        return alternatives.isEmpty() ? null : new Worth(decision.topic().name(), other != null, alternatives, null, null,
                notes(decision.topic(), alternatives));
    }

    private static Effect effect(Decision decision, Decision other, long value) {
        Effect one = PartEffects.between(decision.topic(), decision.value(), value);
        return one == null || other == null ? one : one.alike(PartEffects.between(other.topic(), decision.value(), value));
    }

    /** The decision on the other wheel where it is the same, else null. */
    private Decision otherEnd(Decision decision) {
        Topic topic = decision.topic().otherEnd();
        if (topic == null || PartEffects.between(topic, topic.standard(), topic.standard()) == null) {
            return null;
        }
        Decision other = call.on(topic);
        return decision.value().equals(other.value()) ? other : null;
    }

    /** The next values either side, or the other options, that no limit rules out. */
    private static List<Long> values(Decision decision, Decision other) {
        Topic topic = decision.topic();
        List<Long> out = new ArrayList<>();
        if (topic.kind() == Topic.Kind.OPTIONS) {
            for (long value = topic.least(); value <= topic.most(); value++) {
                add(out, decision, other, value);
            }
            return out;
        }
        if (!topic.concerns().contains(Concern.SAFETY)) {
            add(out, decision, other, decision.value() - step(topic));
        }
        add(out, decision, other, decision.value() + step(topic));
        return out;
    }

    private static long step(Topic topic) {
        return SetUpComparison.WIDTHS.contains(topic) ? TYRE_STEP : topic == Topics.WATER ? WATER_STEP : topic.step(topic.standard());
    }

    private static void add(List<Long> out, Decision decision, Decision other, long value) {
        Topic topic = decision.topic();
        if (value != decision.value() && value >= topic.least() && value <= topic.most() && permitted(decision, value)
                && (other == null || permitted(other, value))) {
            out.add(value);
        }
    }

    /** Whether no limit speaks against a value; limits that tie one wheel to the other move with both. */
    private static boolean permitted(Decision decision, long value) {
        for (Claim claim : decision.taken()) {
            boolean limit = claim.origin().rank() == Rank.LIMIT && !claim.origin().rule().startsWith("pairing/");
            if (limit && (claim.verb() == Verb.AT_MOST && value > claim.value() || claim.verb() == Verb.AT_LEAST && value < claim.value()
                    || claim.verb() == Verb.RULE_OUT && value == claim.value())) {
                return false;
            }
        }
        return true;
    }

    private Alternative alternative(Decision decision, boolean both, long value, Effect effect) {
        Range saved = sensitivity.saved(effect);
        Topic topic = decision.topic();
        String now = topic.text(decision.value());
        String then = topic.text(value);
        List<BreakEven> breakEvens = new ArrayList<>();
        boolean faster = saved.mid() > 0;
        Range returns = faster ? saved : new Range(-saved.high(), -saved.mid(), -saved.low());
        for (StopCost stop : stops(topic)) {
            BreakEven even = BreakEven.of(faster ? then : now, faster ? now : then, returns, stop.what, stop.cost, races());
            if (even != null && risks(topic, faster ? value : decision.value(), faster ? decision.value() : value)) {
                breakEvens.add(even);
            }
        }
        return new Alternative(then + (both ? " front and rear" : ""), effect, saved, breakEvens);
    }

    /** Whether the faster value is the one with less to protect it. */
    static boolean risks(Topic topic, long faster, long slower) {
        return faster < slower || topic.kind() == Topic.Kind.OPTIONS;
    }

    /** A stop that the faster option may bring, and its cost, s. */
    private record StopCost(String what, Range cost) {
    }

    private List<StopCost> stops(Topic topic) {
        if (topic.concerns().contains(Concern.PUNCTURES)) {
            return punctures();
        }
        if (topic == Topics.PLUGS) {
            Range more = Range.of(x -> Math.max(1, x[0] - x[1]), range(Measure.TUBE_STOP), range(Measure.PLUG_STOP));
            return List.of(new StopCost("tube stop in place of a plug", more));
        }
        return topic == Topics.TUBES ? List.of(new StopCost("walk", ON_FOOT)) : List.of();
    }

    private List<StopCost> punctures() {
        List<StopCost> out = new ArrayList<>();
        out.add(new StopCost("plug stop", range(Measure.PLUG_STOP)));
        Range tube = range(Measure.TUBE_STOP);
        out.add(new StopCost("tube stop", tube));
        Range group = lostGroup();
        if (group != null && group.high() >= 1) {
            out.add(new StopCost("tube stop that loses the group", tube.plus(group)));
        }
        return out;
    }

    /** As the rider puts it, else for half of what is ridden in a group (none to all of it), s; null where all is ridden alone. */
    private Range lostGroup() {
        if (lostGroup == null) {
            MeasureValue written = demands.get(Measure.LOST_GROUP);
            lostGroup = written != null ? range(Measure.LOST_GROUP) : companyLost();
        }
        return lostGroup;
    }

    private Range companyLost() {
        Range share = range(Measure.GROUP_SHARE);
        if (share.mid() <= 0) {
            return null;
        }
        Range alone = DragArea.alone(on.estimate().basis().kind(), range(Measure.RIDER_MASS).mid());
        double more = alone.mid() / DragArea.over(alone, share.mid()).mid() - 1;
        Range all = sensitivity.perDrag().times(more);
        return new Range(0, all.mid() / 2, Math.max(all.mid() / 2, all.high()));
    }

    /** What all decisions are worth, or why that is not known. */
    public List<DecisionWorth> all() {
        return DecisionWorth.of(call.decisions(), this);
    }

    Integer races() {
        MeasureValue races = demands.get(Measure.RACES_A_YEAR);
        return races == null || races.mid() == 0 ? null : (int) races.mid();
    }

    Range range(Measure measure) {
        MeasureValue value = demands.get(measure);
        var resolution = measure.scale().resolution();
        return new Range(resolution.base(value.low()), resolution.base(value.mid()), resolution.base(value.high()));
    }

    private static List<String> notes(Topic topic, List<Alternative> alternatives) {
        List<String> out = new ArrayList<>();
        if (NOTES.containsKey(topic)) {
            out.add(NOTES.get(topic));
        }
        if (topic != Topics.WATER) {
            out.add(FigureNotes.PARTS);
        }
        boolean risk = false;
        for (Alternative each : alternatives) {
            risk |= !each.breakEvens().isEmpty();
        }
        if (risk) {
            out.add(FigureNotes.STOPS);
        }
        return out;
    }

    /** Ridden on them where they fit against the usual position throughout, the mass of them counted. */
    Extensions extensions() {
        Range share = sensitivity.aeroShare();
        Range drag = Sensitivity.AERO_DRAG;
        Range mass = perKilogram();
        if (share.high() <= 0) {
            return new Extensions(share, drag, EXTENSIONS_MASS, Range.of(x -> -x[0] * x[1], EXTENSIONS_MASS, mass));
        }
        Range saved = Range.of(x -> x[0] * x[1] * (1 - x[2]) / (1 - drag.mid()) - x[3] * x[4], sensitivity.perAeroShare(), share, drag,
                EXTENSIONS_MASS, mass);
        return new Extensions(share, drag, EXTENSIONS_MASS, saved);
    }
}
