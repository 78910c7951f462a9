package courseworthy.task;

import courseworthy.build.Build;
import courseworthy.build.BuildCall;
import courseworthy.build.BuildFinder;
import courseworthy.build.Recommendation;
import courseworthy.build.WorkDeadline;
import courseworthy.call.Call;
import courseworthy.demand.RideInput;
import courseworthy.engine.RuleSet;
import courseworthy.fit.FitRules;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import courseworthy.workshop.Workshop;
import courseworthy.worth.PlanB;
import courseworthy.worth.Sensitivity;
import courseworthy.worth.WorthCalculator;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;

/**
 * What of a workshop's parts changes where the day turns.
 *
 * @param call     of the day as it stands
 * @param build    its build, on a bike
 * @param mounted  the call made anew for that
 * @param workshop the parts that the rider may use
 */
record RefitAfterTurn(RuleSet rules, FitRules fit, Call call, Build build, Call mounted, Workshop workshop, LocalDate date) {

    /** Null where there is no build. */
    static RefitAfterTurn of(RuleSet rules, FitRules fit, Call call, Build build, Call mounted, Workshop workshop, LocalDate date) {
        return build == null || build.bike() == null ? null : new RefitAfterTurn(rules, fit, call, build, mounted, workshop, date);
    }

    /** @param second the call then, of the ride then */
    PlanB of(String turns, Call second, RideInput ride) {
        Build then = build(second, ride);
        Call remounted = BuildCall.of(rules, second, then, ride::on);
        Set<Topic> parts = new HashSet<>(BuildCall.known(build, mounted).keySet());
        parts.retainAll(BuildCall.known(then, remounted).keySet());
        Map<String, String> got = new HashMap<>();
        then.notMet().forEach(each -> got.put(each.topic(), each.got()));
        return PlanB.of(turns, call, second, mounted, remounted, parts).inWordsOf(got);
    }

    /** On the same bike where the same kind is called; the parts stay where no other can be built. */
    private Build build(Call second, RideInput ride) {
        Topic bike = Topics.BIKE;
        boolean same = second.on(bike).text().equals(call.on(bike).text());
        WorthCalculator worths = new WorthCalculator(second, Sensitivity.of(second.demands()));
        Build then = BuildFinder.of(Recommendation.of(rules, second, worths, ride::on), workshop, WorkDeadline.of(date), fit, same ? build.bike().name() : null);
        return then.bike() == null ? build : then;
    }
}
