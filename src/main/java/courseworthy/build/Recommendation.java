package courseworthy.build;

import courseworthy.call.Call;
import courseworthy.call.CallMaker;
import courseworthy.demand.Demands;
import courseworthy.engine.RuleSet;
import courseworthy.topic.Topics;
import courseworthy.worth.Sensitivity;
import courseworthy.worth.WorthCalculator;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;

/**
 * What is recommended for a ride, and what would be recommended on a bike of another kind than the recommended one.
 *
 * @param call   what is decided
 * @param worths of the call; null where no ride was estimated, and then time counts for nothing
 * @param onKind the same for a kind of bike; null where it cannot be worked out
 * @param others what is recommended for other days on which the same build is ridden; empty where it is ridden on one day
 */
public record Recommendation(Call call, WorthCalculator worths, Function<String, Recommendation> onKind, List<Recommendation> others) {

    public Recommendation {
        others = List.copyOf(others);
    }

    /** For one day. */
    Recommendation(Call call, WorthCalculator worths, Function<String, Recommendation> onKind) {
        this(call, worths, onKind, List.of());
    }

    /** For the recommended kind of bike alone. */
    public static Recommendation of(Call call, WorthCalculator worths) {
        return new Recommendation(call, worths, null);
    }

    /**
     * What is worked out for a kind of bike is kept: a season asks for it again with each set of parts.
     *
     * @param on what the same ride demands on another kind of bike
     */
    public static Recommendation of(RuleSet rules, Call call, WorthCalculator worths, Function<String, Demands> on) {
        Map<String, Recommendation> known = new ConcurrentHashMap<>();
        return new Recommendation(call, worths, kind -> known.computeIfAbsent(kind, each -> {
            Call other = CallMaker.call(rules, on.apply(each), Map.of(Topics.BIKE, (long) Topics.BIKE.option(each)));
            return of(other, worths == null ? null : new WorthCalculator(other, Sensitivity.of(other.demands())));
        }));
    }

    /**
     * For one build that is ridden on several days: its parts are chosen for all of them, its work and its worth are given for one.
     *
     * @param days of each day
     * @param main the place of the day for which work and worth are given
     */
    public static Recommendation overDays(List<Recommendation> days, int main) {
        List<Recommendation> others = new ArrayList<>(days);
        Recommendation day = others.remove(main);
        boolean anyKind = days.stream().allMatch(each -> each.onKind() != null);
        return new Recommendation(day.call(), day.worths(), anyKind ? kind -> overDays(days.stream().map(each -> each.onKind().apply(kind)).toList(), main) : null, others);
    }

    /** The day for which work and worth are given, then the others. */
    List<Recommendation> days() {
        List<Recommendation> out = new ArrayList<>(List.of(this));
        out.addAll(others);
        return out;
    }
}
