package courseworthy.worth;

import courseworthy.decision.Decision;
import courseworthy.decision.Decision.Status;
import courseworthy.ride.Range;
import courseworthy.topic.Concern;
import courseworthy.topic.End;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import courseworthy.topic.Work;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * What a decision is worth in time against its best alternative, or why that is not known.
 *
 * @param decision the decision; of two ends that are decided alike and worked out together, the front's
 * @param both     whether it stands for front and rear
 * @param best     the alternative that saves most, or costs least; null where no time is known
 * @param others   the other alternatives
 * @param unknownReason why no time is known; null where it is
 */
public record DecisionWorth(Decision decision, boolean both, Alternative best, List<Alternative> others, UnknownReason unknownReason) {

    public DecisionWorth {
        others = List.copyOf(others);
    }

    /** Why no time is known. */
    public enum UnknownReason {
        NO_RIDE("no ride was estimated"),
        NONE_POSSIBLE("no value is possible"),
        DOES_NOT_APPLY("does not apply to this bike"),
        GEARS("a gear is judged by cadence and top speed, not by time"),
        SAFETY("chosen for safety, whatever time it costs"),
        WEATHER("chosen for the weather"),
        NO_OTHER_VALUE("limits leave no other value"),
        NO_FIGURE("no published figure gives its time");

        private final String words;

        UnknownReason(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /** The time the best alternative saves, s, below 0 where it costs time; null where none is known. */
    public Range saved() {
        return best == null ? null : best.saved();
    }

    /** Whether the best alternative may be faster as well as slower. */
    public boolean tooClose() {
        return best != null && best.saved().low() < 0 && best.saved().high() > 0;
    }

    /**
     * What all decisions are worth: those whose time is known first, the most that an alternative saves at the top, then the others in
     * the order of the catalogue.
     */
    static List<DecisionWorth> of(List<Decision> decisions, WorthCalculator worths) {
        List<DecisionWorth> known = new ArrayList<>();
        List<DecisionWorth> unknown = new ArrayList<>();
        for (Decision decision : decisions) {
            DecisionWorth worth = of(decision, worths);
            if (worth.best() == null) {
                unknown.add(worth);
            } else if (!worth.both() || decision.topic().end() == End.FRONT) {
                known.add(worth);
            }
        }
        known.sort(Comparator.comparingDouble((DecisionWorth each) -> each.saved().mid()).reversed());
        known.addAll(unknown);
        return known;
    }

    /** Of those known the one at which most time hangs, either way, and of which it is sure which is faster; null where there is none. */
    public static DecisionWorth largest(List<DecisionWorth> worths) {
        DecisionWorth out = null;
        for (DecisionWorth each : worths) {
            boolean sure = each.best() != null && !each.tooClose();
            out = sure && (out == null || Math.abs(each.saved().mid()) > Math.abs(out.saved().mid())) ? each : out;
        }
        return out;
    }

    private static DecisionWorth of(Decision decision, WorthCalculator worths) {
        UnknownReason none = none(decision, worths);
        Worth worth = none == null ? worths.on(decision.topic()) : null;
        List<Alternative> alternatives = worth == null ? List.of() : worth.extensions() == null ? worth.alternatives() : extensions(decision, worth.extensions());
        if (alternatives.isEmpty()) {
            return new DecisionWorth(decision, false, null, List.of(), none == null ? unknownReason(decision.topic()) : none);
        }
        Alternative best = alternatives.stream().max(Comparator.comparingDouble(each -> each.saved().mid())).orElseThrow();
        return new DecisionWorth(decision, worth.both(), best, alternatives.stream().filter(each -> each != best).toList(), null);
    }

    private static UnknownReason none(Decision decision, WorthCalculator worths) {
        return decision.status() == Status.NOT_APPLICABLE ? UnknownReason.DOES_NOT_APPLY : decision.status() == Status.NONE_POSSIBLE ? UnknownReason.NONE_POSSIBLE
                : !worths.known() ? UnknownReason.NO_RIDE : null;
    }

    private static UnknownReason unknownReason(Topic topic) {
        boolean figures = PartEffects.between(topic, topic.least(), topic.most()) != null;
        return topic.work() == Work.GEARS && topic.kind() == Topic.Kind.QUANTITY ? UnknownReason.GEARS : figures ? UnknownReason.NO_OTHER_VALUE
                : topic.concerns().contains(Concern.SAFETY) ? UnknownReason.SAFETY : topic.concerns().contains(Concern.WEATHER) ? UnknownReason.WEATHER : UnknownReason.NO_FIGURE;
    }

    /** Extensions against none, or none against extensions. */
    private static List<Alternative> extensions(Decision decision, Extensions extensions) {
        Topic topic = Topics.AERO_EXTENSIONS;
        boolean fitted = topic.text(decision.value()).equals("fitted");
        Range saved = extensions.saved();
        long other = topic.least() + topic.most() - decision.value();
        Effect mass = Effect.mass(extensions.mass().low(), extensions.mass().mid(), extensions.mass().high());
        return List.of(new Alternative(topic.text(other), fitted ? mass.times(-1) : mass,
                fitted ? new Range(-saved.high(), -saved.mid(), -saved.low()) : saved, List.of()));
    }
}
