package courseworthy.build;

import courseworthy.call.Call;
import courseworthy.call.CallMaker;
import courseworthy.claim.Claim;
import courseworthy.claim.Evidence;
import courseworthy.claim.Force;
import courseworthy.claim.Rank;
import courseworthy.claim.RuleOrigin;
import courseworthy.claim.SourceLocation;
import courseworthy.claim.Verb;
import courseworthy.decision.Decision;
import courseworthy.demand.Demands;
import courseworthy.demand.Measure;
import courseworthy.demand.MeasureValue;
import courseworthy.engine.RuleSet;
import courseworthy.fit.LoadFit;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import courseworthy.units.Amount;
import courseworthy.workshop.MountingPlace;
import courseworthy.workshop.Part;
import courseworthy.workshop.PartDetail;
import courseworthy.worth.Drivetrain;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

/**
 * The call made anew for the parts of a build: what parts realise is as it is mounted, and what hangs on it (sag, clicks, pads to bed
 * in, a lockout to try, what to set and to mind) is settled for that. Markings are those of the build's own tyres, rims and frame.
 */
public final class BuildCall {

    /** What is known of the bike at hand; of the build the workshop says it. */
    private static final Set<Measure> OF_THE_BIKE_AT_HAND = EnumSet.of(Measure.RIM_INNER_WIDTH, Measure.HOOKLESS, Measure.MARKED_TYRE_PRESSURE,
            Measure.MARKED_RIM_PRESSURE, Measure.LOWER_MARKED_PRESSURE, Measure.LEAST_TYRE_WIDTH_ON_THE_RIM, Measure.TYRE_CLEARANCE, Measure.TUBELESS_READY,
            Measure.BIKE_LEDGE_LIMIT, Measure.LEDGE_ABOVE_THE_MARK, Measure.BIKE_MASS_LIMIT, Measure.MASS_ABOVE_THE_MARK, Measure.MOST_FORK_TRAVEL,
            Measure.MOST_ROTOR, Measure.POWER_METER_AT_HAND);
    private static final List<MountingPlace> TYRES = List.of(MountingPlace.FRONT_TYRE, MountingPlace.REAR_TYRE);
    private static final List<MountingPlace> WHEELS = List.of(MountingPlace.FRONT_WHEEL, MountingPlace.REAR_WHEEL);
    private static final RuleOrigin MARKED = new RuleOrigin("workshop/marked-pressure", Rank.LIMIT, 0, Force.MUST, Evidence.PRACTICE, "",
            "The lower of what is marked on this tyre and on this rim.", new SourceLocation("workshop", 0));

    private final Call call;
    private final Build build;
    private final Function<String, Demands> on;
    private final Map<MountingPlace, Part> parts;

    private BuildCall(Call call, Build build, Function<String, Demands> on) {
        this.call = call;
        this.build = build;
        this.on = on;
        this.parts = build.inPlace();
    }

    /**
     * @param build null for none, or one without a bike: then the call as it is
     * @param on    what the same ride asks for on another kind of bike
     */
    public static Call of(RuleSet rules, Call call, Build build, Function<String, Demands> on) {
        return build == null || build.bike() == null ? call : new BuildCall(call, build, on).made(rules);
    }

    /**
     * What a build has on each topic that its parts realise and of which that is known, in the topics' ticks or positions.
     *
     * @param mounted the call made for it
     */
    public static Map<Topic, Long> known(Build build, Call mounted) {
        Map<Topic, Long> out = TopicPlacement.got(build.bike(), build.inPlace());
        out.keySet().removeIf(topic -> mounted.on(topic).value() == null);
        return out;
    }

    /** Compounds of the front and the rear pads where they differ, since the call is made for the front's; empty where not, or not known. */
    public static List<String> padsApart(Build build) {
        Map<MountingPlace, Part> parts = build == null ? Map.of() : build.inPlace();
        Part front = parts.get(MountingPlace.FRONT_PADS);
        Part rear = parts.get(MountingPlace.REAR_PADS);
        String one = front == null ? null : front.word(PartDetail.COMPOUND);
        String other = rear == null ? null : rear.word(PartDetail.COMPOUND);
        return one == null || other == null || one.equals(other) ? List.of() : List.of(one, other);
    }

    /** Rings and cassette of a build; null where there is none or their teeth are not known. */
    public static Drivetrain drivetrain(Build build) {
        Map<MountingPlace, Part> parts = build == null ? Map.of() : build.inPlace();
        List<Integer> rings = teeth(parts.get(MountingPlace.CHAINRING), PartDetail.TEETH);
        List<Integer> sprockets = teeth(parts.get(MountingPlace.CASSETTE), PartDetail.SPROCKETS);
        return rings == null || sprockets == null ? null : new Drivetrain(rings, sprockets);
    }

    private static List<Integer> teeth(Part part, PartDetail detail) {
        int[] teeth = part == null ? null : part.teeth(detail);
        return teeth == null ? null : Arrays.stream(teeth).boxed().toList();
    }

    private Call made(RuleSet rules) {
        Map<Topic, Long> given = new LinkedHashMap<>(TopicPlacement.got(build.bike(), parts));
        given.put(Topics.FRONT_TYRE_PRESSURE, pressure(Topics.FRONT_TYRE_PRESSURE));
        given.put(Topics.REAR_TYRE_PRESSURE, pressure(Topics.REAR_TYRE_PRESSURE));
        Call made = CallMaker.call(rules, demands(), given);
        List<Decision> decisions = new ArrayList<>();
        for (Decision decision : made.decisions()) {
            decisions.add(decision.topic() == Topics.FRONT_TYRE_PRESSURE ? marked(decision, MountingPlace.FRONT_TYRE, MountingPlace.FRONT_WHEEL)
                    : decision.topic() == Topics.REAR_TYRE_PRESSURE ? marked(decision, MountingPlace.REAR_TYRE, MountingPlace.REAR_WHEEL) : withTeeth(decision));
        }
        return new Call(made.demands().with(lowerMarking()), decisions, made.tasks(), made.undetermined());
    }

    /** A gear as the build has it, by its teeth; any other decision as it is. */
    private Decision withTeeth(Decision decision) {
        String label = decision.value() == null ? "" : GearTeeth.label(decision.topic(), parts);
        return label.isEmpty() ? decision : new Decision(decision.topic(), decision.status(), decision.value(), label, decision.consensus(), decision.taken(),
                decision.lost(), decision.why());
    }

    /** The pressure that stands with the build; null where nobody should pump by a number. */
    private Long pressure(Topic topic) {
        try {
            String set = build.set().get(topic.name());
            String metric = set == null ? null : set.replaceFirst(" \\(.*", "");
            return metric == null ? null : Long.valueOf(topic.resolution().ticks(Amount.parse(metric, topic.resolution().unit().dimension())));
        } catch (Amount.NotAnAmount words) {
            return null;
        }
    }

    private Decision marked(Decision pressure, MountingPlace tyre, MountingPlace wheel) {
        Double most = parts.get(tyre) == null ? null : BuildPressures.most(parts.get(tyre), parts.get(wheel));
        if (most == null || pressure.value() == null) {
            return pressure;
        }
        Topic topic = pressure.topic();
        List<Claim> taken = new ArrayList<>(pressure.taken());
        long ticks = (long) Math.floor(most / topic.resolution().base(1) + 1e-6);
        taken.add(0, Claim.of(MARKED, topic, Verb.AT_MOST, ticks, topic.text(ticks), List.of()));
        return new Decision(topic, pressure.status(), pressure.value(), pressure.label(), pressure.consensus(), taken, pressure.lost(), pressure.why());
    }

    private Demands demands() {
        String kind = build.bike().word(PartDetail.KIND);
        Demands own = kind == null || kind.equals(call.demands().ridden()) ? call.demands() : on.apply(kind);
        Map<Measure, MeasureValue> values = new EnumMap<>(Measure.class);
        values.putAll(own.values());
        values.keySet().removeAll(OF_THE_BIKE_AT_HAND);
        Part wheel = parts.get(MountingPlace.FRONT_WHEEL);
        put(values, Measure.RIM_INNER_WIDTH, wheel == null ? null : wheel.number(PartDetail.RIM_INNER_WIDTH));
        yesNo(values, Measure.HOOKLESS, any(WHEELS, PartDetail.HOOKLESS));
        Boolean tubeless = both(all(TYRES, PartDetail.TUBELESS), all(WHEELS, PartDetail.TUBELESS));
        yesNo(values, Measure.TUBELESS_READY, tubeless);
        put(values, Measure.BIKE_LEDGE_LIMIT, LoadFit.ledgeLimit(build.bike()));
        Long power = TopicPlacement.got(build.bike(), parts).get(Topics.POWER_METER);
        yesNo(values, Measure.POWER_METER_AT_HAND, power == null ? null : Boolean.valueOf(power > 0));
        return new Demands(values, own.stretches(), own.assumed(), own.estimated(), own.occasion());
    }

    /** For what is to be minded: not for the call, since each wheel has a lower marked pressure of its own. */
    private Map<Measure, MeasureValue> lowerMarking() {
        Map<Measure, MeasureValue> out = new EnumMap<>(Measure.class);
        Double front = parts.get(MountingPlace.FRONT_TYRE) == null ? null : BuildPressures.most(parts.get(MountingPlace.FRONT_TYRE), parts.get(MountingPlace.FRONT_WHEEL));
        Double rear = parts.get(MountingPlace.REAR_TYRE) == null ? null : BuildPressures.most(parts.get(MountingPlace.REAR_TYRE), parts.get(MountingPlace.REAR_WHEEL));
        put(out, Measure.LOWER_MARKED_PRESSURE, front == null || rear == null ? null : Double.valueOf(Math.min(front, rear)));
        return out;
    }

    private static void put(Map<Measure, MeasureValue> to, Measure measure, Double base) {
        if (base != null) {
            to.put(measure, MeasureValue.exact(measure.scale().resolution().ticks(base)));
        }
    }

    private static void yesNo(Map<Measure, MeasureValue> to, Measure measure, Boolean yes) {
        if (yes != null) {
            to.put(measure, MeasureValue.exact(yes ? 1 : 0));
        }
    }

    /** Whether any part is; null where none is known to be and one does not say. */
    private Boolean any(List<MountingPlace> places, PartDetail detail) {
        Boolean out = Boolean.FALSE;
        for (MountingPlace place : places) {
            Boolean yes = parts.get(place) == null ? null : parts.get(place).yes(detail);
            out = Boolean.TRUE.equals(yes) || Boolean.TRUE.equals(out) ? Boolean.TRUE : yes == null ? null : out;
        }
        return out;
    }

    /** Whether all parts are; null where none is known not to be and one does not say. */
    private Boolean all(List<MountingPlace> places, PartDetail detail) {
        Boolean out = Boolean.TRUE;
        for (MountingPlace place : places) {
            out = both(out, parts.get(place) == null ? null : parts.get(place).yes(detail));
        }
        return out;
    }

    private static Boolean both(Boolean one, Boolean other) {
        if (Boolean.FALSE.equals(one) || Boolean.FALSE.equals(other)) {
            return Boolean.FALSE;
        }
        return one == null || other == null ? null : Boolean.TRUE;
    }
}
