package courseworthy.decision;

import courseworthy.claim.Claim;
import courseworthy.claim.Rank;
import courseworthy.claim.Verb;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import courseworthy.units.PressureSteps;
import courseworthy.units.Unit;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/**
 * The settled answer on one topic.
 *
 * @param topic    the topic
 * @param status   whether there is an answer
 * @param value    ticks or position; null unless {@link Status#SETTLED}
 * @param label    a text of its own for the value ({@code 34x50}), else empty
 * @param consensus how far the advice agrees; null unless {@link Status#SETTLED}
 * @param taken    claims that the value meets, by rank, force, id; without a value, the limits
 * @param lost     claims that it does not meet, by rank, force, id; without a value, all that are no limits
 * @param why      for {@code none possible} and {@code not applicable}, the reason in words; else empty
 */
public record Decision(Topic topic, Status status, Long value, String label, Consensus consensus, List<Claim> taken, List<LosingClaim> lost,
        String why) {

    public Decision {
        taken = List.copyOf(taken);
        lost = List.copyOf(lost);
        if ((status == Status.SETTLED) != (value != null)) {
            throw new IllegalArgumentException(topic + " " + status + " " + value);
        }
    }

    /** Whether there is an answer. */
    public enum Status {
        SETTLED("settled"), NONE_POSSIBLE("none possible"), NOT_APPLICABLE("not applicable");

        private final String words;

        Status(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /** How far the advice behind a decision agrees. */
    public enum Consensus {
        /** All voting weight is for the value, nothing of the same rank overruled. */
        UNANIMOUS("unanimous"),
        /** At least two thirds of the voting weight is for the value. */
        MAJORITY("majority"),
        /** Less than that. */
        DIVIDED("divided"),
        /** Bounds but no preference. */
        BOUNDS_ALONE("bounds alone"),
        /** Nothing said: the topic's default. */
        DEFAULT("default");

        private final String word;

        Consensus(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    /**
     * A claim that did not prevail.
     *
     * @param claim the claim
     * @param by    qualified ids of the rules that prevailed over it, sorted; empty where it lost to nothing in particular
     * @param how   in a word: overruled, outvoted or set aside
     */
    public record LosingClaim(Claim claim, List<String> by, How how) {
    }

    /** How a claim lost. */
    public enum How {
        OVERRULED("overruled"), OUTVOTED("outvoted"), SET_ASIDE("set aside");

        private final String words;

        How(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /** The lowest limit from above that holds, in base units; null where there is none. */
    public Double ceiling() {
        Double least = null;
        for (Claim claim : taken) {
            if (claim.verb() == Verb.AT_MOST && claim.origin().rank() == Rank.LIMIT) {
                double most = topic.resolution().base(claim.value());
                least = least == null ? most : Double.valueOf(Math.min(least, most));
            }
        }
        return least;
    }

    /** The value as text, with its label where it has one, {@code 34x50 (0.68)}; the status in words where there is none. */
    public String text() {
        if (value == null) {
            return status.words();
        }
        String plain = topic.resolution() != null && topic.resolution().unit() == Unit.BAR
                ? PressureSteps.text(topic.resolution().base(value), ceiling()) : topic.text(value);
        if (label.isEmpty()) {
            return topic.isDamping() ? plain + " open" : plain;
        }
        return isGear() ? label + " (" + BigDecimal.valueOf(topic.resolution().base(value)).setScale(2, RoundingMode.HALF_UP).toPlainString() + ")"
                : plain + " (" + label + ")";
    }

    /** The value as it is shown: a limit as a limit, {@code at least 1.2 mm}, the bar's height against the saddle. */
    public String phrase() {
        if (value == null) {
            return text();
        }
        return topic.equals(Topics.BAR_HEIGHT) ? topic.phrase(value) : topic.limit() + text();
    }

    private boolean isGear() {
        return topic.resolution() != null && topic.resolution().unit() == Unit.RATIO;
    }
}
