package courseworthy.worth;

import courseworthy.call.Call;
import courseworthy.call.CallMaker;
import courseworthy.decision.Decision;
import courseworthy.decision.Decision.LosingClaim;
import courseworthy.decision.Decision.Status;
import courseworthy.demand.Demands;
import courseworthy.demand.Measure;
import courseworthy.demand.MeasureValue;
import courseworthy.engine.RuleSet;
import courseworthy.ride.Range;
import courseworthy.ride.RideEstimate;
import courseworthy.ride.RideTrace;
import courseworthy.ride.SampledEstimate;
import courseworthy.topic.Concern;
import courseworthy.topic.End;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

/** Makes set-ups to stand beside the recommended one: the whole call is made anew with what was asked for fixed. */
public final class SetUpComparison {

    static final String RECOMMENDED = "recommended";
    static final Set<Topic> WIDTHS = Set.of(Topics.FRONT_TYRE_WIDTH, Topics.REAR_TYRE_WIDTH);
    /** The model does not ride these, though they change the ride. */
    private static final Set<Topic> NOT_RIDDEN = Set.of(Topics.FRONT_TYRE_PRESSURE, Topics.REAR_TYRE_PRESSURE, Topics.BAR_WIDTH, Topics.BAR_HEIGHT,
            Topics.FRONT_SEALANT, Topics.REAR_SEALANT);

    private final RuleSet rules;
    private final Call recommended;
    private final Demands ridden;
    private final Sensitivity sensitivity;
    private final WorthCalculator worths;
    private final double riding;
    private final double work;
    private final Function<String, Demands> onAnother;

    /**
     * @param recommended a call with an estimate, of the bike that is called
     * @param onAnother   the demands of the same ride on another kind of bike
     */
    public SetUpComparison(RuleSet rules, Call recommended, Function<String, Demands> onAnother) {
        this.onAnother = onAnother;
        this.rules = rules;
        this.recommended = recommended;
        Decision bike = recommended.on(Topics.BIKE);
        this.ridden = bike.value() == null ? recommended.demands() : on(bike.text());
        this.sensitivity = Sensitivity.of(ridden);
        this.worths = new WorthCalculator(riding(recommended), sensitivity);
        RideTrace trace = ridden.estimated().estimate().trace();
        riding = trace.total();
        work = work(trace);
    }

    private static double work(RideTrace trace) {
        double sum = 0;
        for (int i = 0; i < trace.size(); i++) {
            sum += trace.power(i) * trace.seconds(i);
        }
        return sum;
    }

    /** The demands on a kind of bike: those of the bike at hand, with all that is known of it, where it is of that kind. */
    private Demands on(String kind) {
        Demands atHand = recommended.demands();
        return atHand.estimated().estimate().basis().kind().written().equals(kind) ? atHand : onAnother.apply(kind);
    }

    /** A call as it is ridden on the recommended bike: what follows from its decisions stays. */
    private Call riding(Call call) {
        Map<Measure, MeasureValue> derived = new EnumMap<>(Measure.class);
        for (Map.Entry<Measure, MeasureValue> each : call.demands().values().entrySet()) {
            if (each.getKey().derived()) {
                derived.put(each.getKey(), each.getValue());
            }
        }
        return new Call(ridden.with(derived), call.decisions(), call.tasks(), call.undetermined());
    }

    /** The recommended set-up. */
    public SetUp recommended() {
        return new SetUp(RECOMMENDED, List.of(), List.of(), Effect.NONE, Range.exact(0), riding, work, SetUp.Gears.of(worths), null, List.of());
    }

    /**
     * A set-up with some topics fixed.
     *
     * @param written as the user wrote it
     * @param values  in the topics' ticks or positions
     */
    public SetUp of(String written, Map<Topic, Long> values) {
        RulesWithFixedTopics fixed = new RulesWithFixedTopics(rules, values);
        Call call = CallMaker.call(fixed, recommended.demands());
        Call there = onAnotherBike(call) ? CallMaker.call(fixed, on(call.on(Topics.BIKE).text())) : call;
        return of(written, there, values.keySet(), refused(there, values));
    }

    /**
     * A set-up as it is mounted, whatever rules say of its parts.
     *
     * @param written its name
     * @param mounted the call made for it
     * @param by      topics that its parts realise; the others follow
     */
    public SetUp mounted(String written, Call mounted, Set<Topic> by) {
        return of(written, mounted, by, List.of());
    }

    private boolean onAnotherBike(Call call) {
        Decision bike = call.on(Topics.BIKE);
        return bike.value() != null && !bike.text().equals(recommended.on(Topics.BIKE).text());
    }

    private SetUp of(String written, Call call, Set<Topic> asked, List<SetUp.RefusedValue> refused) {
        List<String> uncounted = new ArrayList<>();
        List<SetUp.SetUpDifference> changes = changes(call, asked, uncounted);
        if (onAnotherBike(call)) {
            return onAnother(written, call, changes, refused, uncounted);
        }
        Effect effect = effect(call);
        WorthCalculator here = new WorthCalculator(riding(call), sensitivity);
        Range saved = sensitivity.saved(effect).plus(extensions(call)).plus(spinning(call));
        Range returned = narrower(call) ? Sinkage.narrower(saved, ridden) : saved;
        double takes = riding - returned.mid();
        return new SetUp(written, changes, refused, effect, returned, takes, work * takes / riding, SetUp.Gears.of(here), breakEven(call, written, returned), uncounted);
    }

    /** What differs from the recommended, the asked for first; adds what of it no figure counts. */
    private List<SetUp.SetUpDifference> changes(Call call, Set<Topic> asked, List<String> uncounted) {
        List<SetUp.SetUpDifference> changes = new ArrayList<>();
        for (Topic topic : Topics.all()) {
            Decision before = recommended.on(topic);
            Decision after = call.on(topic);
            if (!before.text().equals(after.text())) {
                changes.add(asked.contains(topic) ? changes.size() - follow(changes) : changes.size(),
                        new SetUp.SetUpDifference(topic, before.phrase(), after.phrase(), asked.contains(topic)));
                if (NOT_RIDDEN.contains(topic)) {
                    uncounted.add(topic.name());
                }
            }
        }
        return changes;
    }

    /** The same ride on another kind of bike: with the usual mass, tyres and position of its kind, since no more of it is known. */
    private SetUp onAnother(String written, Call call, List<SetUp.SetUpDifference> changes, List<SetUp.RefusedValue> refused, List<String> uncounted) {
        RideEstimate there = call.demands().estimated().estimate();
        Range returned = Sinkage.between(SampledEstimate.of(ridden.estimated().estimate()).savedBy(SampledEstimate.of(there)), ridden, call.demands());
        WorthCalculator here = new WorthCalculator(call, Sensitivity.of(call.demands()));
        return new SetUp(written, changes, refused, Effect.NONE, returned, there.trace().total(), work(there.trace()),
                SetUp.Gears.of(here), null, uncounted);
    }

    /** How many of the differences only follow. */
    private static int follow(List<SetUp.SetUpDifference> changes) {
        int count = 0;
        for (SetUp.SetUpDifference each : changes) {
            count += each.asked() ? 0 : 1;
        }
        return count;
    }

    private Effect effect(Call call) {
        Effect sum = Effect.NONE;
        for (Topic topic : Topics.all()) {
            Topic other = topic.otherEnd();
            if (other == null || topic.end() == End.FRONT) {
                sum = sum.and(effect(call, topic).alike(other == null ? Effect.NONE : effect(call, other)));
            }
        }
        return sum;
    }

    private Effect effect(Call call, Topic topic) {
        Long before = recommended.on(topic).value();
        Long after = call.on(topic).value();
        if (before == null || after == null || before.equals(after)) {
            return Effect.NONE;
        }
        Effect effect = PartEffects.between(topic, before, after);
        return effect == null ? Effect.NONE : effect;
    }

    /** Whether either tyre is narrower than recommended. */
    private boolean narrower(Call call) {
        for (Topic topic : WIDTHS) {
            Long before = recommended.on(topic).value();
            Long after = call.on(topic).value();
            if (before != null && after != null && after < before) {
                return true;
            }
        }
        return false;
    }

    /** What having or not having aero extensions returns against the recommended, s. */
    private Range extensions(Call call) {
        Topic topic = Topics.AERO_EXTENSIONS;
        boolean before = on(recommended, topic);
        boolean after = on(call, topic);
        if (before == after) {
            return Range.exact(0);
        }
        Range saved = worths.extensions().saved();
        return after ? saved : new Range(-saved.high(), -saved.mid(), -saved.low());
    }

    private static boolean on(Call call, Topic topic) {
        Decision decision = call.on(topic);
        return decision.status() == Status.SETTLED && topic.text(decision.value()).equals("fitted");
    }

    /** What less spinning out returns, s: alone and in a group by the share of each. */
    private Range spinning(Call call) {
        Topic hardest = Topics.HARDEST_GEAR;
        Long before = recommended.on(hardest).value();
        Long after = call.on(hardest).value();
        boolean sameWheel = recommended.on(Topics.REAR_TYRE_WIDTH).text().equals(call.on(Topics.REAR_TYRE_WIDTH).text());
        if (before == null || after == null || before.equals(after) && sameWheel) {
            return Range.exact(0);
        }
        MeasureValue share = ridden.get(Measure.GROUP_SHARE);
        double group = Measure.GROUP_SHARE.scale().resolution().base(share.mid());
        Range cost = GearChoice.turning(riding(call)).costOfSpinning(hardest.resolution().base(after), group);
        Range was = GearChoice.turning(riding(recommended)).costOfSpinning(hardest.resolution().base(before), group);
        return Range.around(was.low() - cost.low(), was.mid() - cost.mid(), was.high() - cost.high());
    }

    private static List<SetUp.RefusedValue> refused(Call call, Map<Topic, Long> values) {
        List<SetUp.RefusedValue> out = new ArrayList<>();
        values.forEach((topic, value) -> {
            Decision decision = call.on(topic);
            if (decision.value() == null || !decision.value().equals(value)) {
                out.add(new SetUp.RefusedValue(topic, topic.phrase(value), decision.phrase(), against(decision)));
            }
        });
        return out;
    }

    /** The rules that stand against what was asked for. */
    private static List<String> against(Decision decision) {
        List<String> out = new ArrayList<>();
        for (LosingClaim lost : decision.lost()) {
            if (lost.claim().origin().rule().startsWith(RulesWithFixedTopics.SHEET)) {
                for (String rule : lost.by()) {
                    if (!rule.startsWith(RulesWithFixedTopics.SHEET) && !out.contains(rule)) {
                        out.add(rule);
                    }
                }
            }
        }
        return out;
    }

    /** Whether the faster of two set-ups has less to protect it from punctures by a topic. */
    private static boolean risks(Topic topic, Call faster, Call slower) {
        Long first = faster.on(topic).value();
        Long second = slower.on(topic).value();
        return topic.concerns().contains(Concern.PUNCTURES) && first != null && second != null && !first.equals(second)
                && WorthCalculator.risks(topic, first, second);
    }

    private BreakEven breakEven(Call call, String written, Range returned) {
        boolean faster = returned.mid() > 0;
        if (Topics.all().stream().noneMatch(topic -> risks(topic, faster ? call : recommended, faster ? recommended : call))) {
            return null;
        }
        Range returns = faster ? returned : new Range(-returned.high(), -returned.mid(), -returned.low());
        return BreakEven.of(faster ? written : RECOMMENDED, faster ? RECOMMENDED : written, returns, "tube stop", worths.range(Measure.TUBE_STOP),
                worths.races());
    }
}
