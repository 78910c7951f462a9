package courseworthy.worth;

import courseworthy.call.Call;
import courseworthy.call.CallMaker;
import courseworthy.claim.Claim;
import courseworthy.claim.Verb;
import courseworthy.decision.Decision;
import courseworthy.demand.Demands;
import courseworthy.demand.Measure;
import courseworthy.demand.MeasureValue;
import courseworthy.engine.RuleSet;
import courseworthy.ride.Range;
import courseworthy.ride.SampledEstimate;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * The bike at hand set up for the day, where another kind is called: the whole call made with its kind fixed and all that is written of it.
 *
 * @param call    that call; of another kind, or of none, where a limit rules this one out
 * @param called  the kind that is called instead
 * @param against what was said against this kind when the other was called
 * @param costs   time it takes more than the bike that is called, s, below 0 where it is the faster; null where a limit rules it out
 */
public record BikeAtHand(Call call, String called, List<Claim> against, Range costs) {

    private static final Topic BIKE = Topics.BIKE;

    public BikeAtHand {
        against = List.copyOf(against);
    }

    /** The bike at hand of a call; null where none is written, it is the one that is called, or none is called. */
    public static BikeAtHand of(RuleSet rules, Call call) {
        Demands atHand = call.demands().choosing();
        MeasureValue kind = call.demands().get(Measure.BIKE_AT_HAND);
        Decision bike = call.on(BIKE);
        if (atHand == null || kind == null || bike.value() == null) {
            return null;
        }
        Call own = CallMaker.call(new RulesWithFixedTopics(rules, Map.of(BIKE, kind.mid())), atHand);
        List<Claim> against = new ArrayList<>();
        for (Claim claim : bike.taken()) {
            if ((claim.verb() == Verb.RULE_OUT || claim.verb() == Verb.AVOID) && claim.value() == kind.mid()) {
                against.add(claim);
            }
        }
        Long settled = own.on(BIKE).value();
        return new BikeAtHand(own, bike.text(), against, settled == null || settled != kind.mid() ? null : costs(call, own));
    }

    private static Range costs(Call call, Call own) {
        Range saved = Sinkage.between(SampledEstimate.of(call.demands().estimated().estimate()).savedBy(SampledEstimate.of(own.demands().estimated().estimate())),
                call.demands(), own.demands());
        return new Range(-saved.high(), -saved.mid(), -saved.low());
    }

    /** Its kind, as the topic bike writes it. */
    public String kind() {
        return call.demands().ridden();
    }

    /** Whether it may be ridden at all. */
    public boolean possible() {
        return costs != null;
    }

    /** Riding and stopping, s. */
    public Range time() {
        return call.demands().estimated().estimate().total();
    }
}
