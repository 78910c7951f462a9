package courseworthy.stage;

import courseworthy.claim.Claim;
import courseworthy.claim.Force;
import courseworthy.claim.Rank;
import courseworthy.claim.Verb;
import courseworthy.decision.Decision;
import courseworthy.decision.Settler;
import courseworthy.ride.Range;
import courseworthy.stage.StageSetUp.ValueReason;
import courseworthy.stage.StageSetUp.RaceTopic;
import courseworthy.topic.Concern;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * Settles one topic for all days: within what every day must have, on the safe side of what the days want where the topic has one, where the
 * least time is lost over all days, and else where most of the hours are.
 */
final class RaceTopicSettler {

    /** Losses that differ by less than this are alike, s (computing). */
    private static final double ALIKE = 0.05;

    private final Topic topic;
    private final List<StageDay> days;
    private final List<Decision> here;

    /** @param here the decision of each day with what is settled for the race before */
    RaceTopicSettler(Topic topic, List<StageDay> days, List<Decision> here) {
        this.topic = topic;
        this.days = days;
        this.here = here;
    }

    /** Null where the topic applies on no day, or no value keeps the limits of all days. */
    RaceTopic settle() {
        SortedSet<Long> known = candidates();
        List<Long> allowed = allowed(known);
        if (allowed.isEmpty()) {
            return null;
        }
        boolean limited = allowed.size() < known.size();
        Long agreed = agreed();
        if (agreed != null && allowed.contains(agreed)) {
            return of(agreed, ValueReason.AGREED);
        }
        List<Long> left = safest(allowed);
        long best = left.get(0);
        for (long each : left) {
            best = better(each, best) ? each : best;
        }
        boolean timed = allowed.stream().anyMatch(each -> lost(each) > ALIKE);
        ValueReason ground = left.size() == 1 && limited && allowed.size() == 1 ? ValueReason.LIMIT : side() != Topic.Safe.NONE ? ValueReason.SAFE : timed ? ValueReason.TIME : ValueReason.HOURS;
        return of(best, ground);
    }

    /** As a value that was found before for all days together, by their time. */
    RaceTopic settleAs(long value) {
        List<Long> allowed = allowed(candidates());
        Long agreed = agreed();
        boolean alone = allowed.size() == 1 && allowed.get(0) == value && allowed.size() < candidates().size();
        return of(value, agreed != null && agreed == value ? ValueReason.AGREED : alone ? ValueReason.LIMIT : ValueReason.TIME);
    }

    /** Whether it applies on any day. */
    boolean applies() {
        return !candidates().isEmpty();
    }

    private SortedSet<Long> candidates() {
        SortedSet<Long> out = new TreeSet<>();
        for (int i = 0; i < here.size(); i++) {
            Decision decision = here.get(i);
            if (decision.value() != null) {
                out.add(decision.value());
                Long alone = days.get(i).alone().on(topic).value();
                if (alone != null) {
                    out.add(alone);
                }
                decision.taken().stream().filter(claim -> claim.verb() == Verb.AT_LEAST || claim.verb() == Verb.AT_MOST)
                        .map(Claim::value).filter(each -> each >= topic.least() && each <= topic.most()).forEach(out::add);
            }
        }
        return out;
    }

    /** Those that keep what every day must have; where none keeps all of it, those that keep the strongest of it. */
    private List<Long> allowed(SortedSet<Long> of) {
        for (int level = 0; level < 3; level++) {
            int least = level;
            List<Long> out = of.stream().filter(each -> keeps(each, least)).toList();
            if (!out.isEmpty()) {
                return out;
            }
        }
        return List.of();
    }

    private boolean keeps(long value, int least) {
        return here.stream().allMatch(each -> keeps(each, value, least));
    }

    /** Whether a value keeps the bounds that a decision rests on. @param least 0 for all of them, 1 for musts and the rider's own, 2 for limits alone */
    static boolean keeps(Decision decision, long value, int least) {
        if (decision.value() == null || decision.value() == value) {
            return true;
        }
        List<Claim> bounds = decision.taken().stream().filter(claim -> claim.verb() != Verb.PREFER && claim.verb() != Verb.AVOID && strength(claim) >= least).toList();
        return Settler.given(decision.topic(), bounds, value).lost().isEmpty();
    }

    private static int strength(Claim claim) {
        Rank rank = claim.origin().rank();
        return rank == Rank.LIMIT ? 2 : rank == Rank.RIDER || claim.origin().force() == Force.MUST ? 1 : 0;
    }

    private Long agreed() {
        Long out = null;
        for (int i = 0; i < here.size(); i++) {
            Long each = here.get(i).value() == null ? null : days.get(i).alone().on(topic).value();
            if (here.get(i).value() != null && (each == null || out != null && !each.equals(out))) {
                return null;
            }
            out = each == null ? out : each;
        }
        return out;
    }

    /**
     * The side on which an error hurts least; of protection, more of it. Pads that one wet day asks for also serve on the dry ones, and a
     * dropper that one day's descents ask for is safer there than the seconds its weight costs elsewhere (common practice, no source).
     */
    static Topic.Safe side(Topic topic) {
        boolean guards = topic.concerns().contains(Concern.PUNCTURES) || topic.concerns().contains(Concern.SAFETY) || topic == Topics.PAD_COMPOUND || topic == Topics.SEATPOST;
        return topic.safe() == Topic.Safe.NONE && guards ? Topic.Safe.UP : topic.safe();
    }

    private Topic.Safe side() {
        return side(topic);
    }

    /** Those that are no less safe than any day wants; where there are none, the safest. */
    private List<Long> safest(List<Long> of) {
        if (side() == Topic.Safe.NONE) {
            return of;
        }
        List<Long> out = of.stream().filter(each -> here.stream().allMatch(day -> day.value() == null || !isLessSafe(topic, each, day.value()))).toList();
        return !out.isEmpty() ? out : List.of(side() == Topic.Safe.UP ? of.get(of.size() - 1) : of.get(0));
    }

    static boolean isLessSafe(Topic topic, long value, long than) {
        return side(topic) == Topic.Safe.UP ? value < than : side(topic) == Topic.Safe.DOWN && value > than;
    }

    private boolean better(long one, long than) {
        double less = lost(than) - lost(one);
        return Math.abs(less) > ALIKE ? less > 0 : distance(one) < distance(than);
    }

    /** Over all days, s; 0 where nothing can be computed. */
    private double lost(long value) {
        return days.stream().map(day -> day.loss(topic, value)).mapToDouble(each -> each == null ? 0 : each.mid()).sum();
    }

    /** How far a value is from what the days want, by their hours. */
    private double distance(long value) {
        double sum = 0;
        for (int i = 0; i < here.size(); i++) {
            Long wanted = here.get(i).value();
            double apart = wanted == null || wanted == value ? 0 : topic.kind() == Topic.Kind.OPTIONS ? 1 : Math.abs(wanted - value);
            sum += apart * days.get(i).weight();
        }
        return sum;
    }

    private RaceTopic of(long value, ValueReason ground) {
        List<Long> wanted = new ArrayList<>();
        List<Range> losses = new ArrayList<>();
        for (StageDay day : days) {
            wanted.add(day.alone().on(topic).value());
            losses.add(day.loss(topic, value));
        }
        return new RaceTopic(topic, wanted, value, ground, losses);
    }
}
