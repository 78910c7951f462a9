package courseworthy.decision;

import courseworthy.claim.Claim;
import courseworthy.topic.Topic;
import courseworthy.topic.Topic.Kind;
import courseworthy.units.Unit;

/**
 * Whether a decided value is what a claim asks for. Bounds, vetoes and dislikes are kept or not. A preference for an option is met by
 * that option alone, one for a number of things by that number alone. A preference for what is measured is met by a value less than one
 * rounding step away, so that 121 mm of travel is met by 120 and by 130 mm, but 160 mm of rotor not by 180 mm. Where the step is the
 * finest difference that is measured, that one tick is no other value either (1 mm of tyre, 0.05 bar): no gauge of the trade tells them
 * apart (common practice, no source). Gears are alike within half the closest step between two sprockets.
 */
final class Agreement {

    /** Half of the step from 14 to 15 teeth, about the closest that cassettes have, as parts of a thousand (common practice, no source). */
    private static final long ALIKE_GEARS = 35;

    private final Topic topic;
    private final long value;

    Agreement(Topic topic, long value) {
        this.topic = topic;
        this.value = value;
    }

    /** Whether the value is what a claim asks for. */
    boolean met(Claim claim) {
        return switch (claim.verb()) {
            case PREFER -> Math.abs(claim.value() - value) <= tolerance(claim.value());
            case AVOID -> claim.value() != value;
            default -> FeasibleValues.of(topic).narrowed(claim).contains(value);
        };
    }

    /** How far a value may lie from a preference that it meets, in ticks. */
    private long tolerance(long wish) {
        if (topic.kind() != Kind.QUANTITY || topic.resolution().unit() == Unit.ONE) {
            return 0;
        }
        long step = topic.step() == 1 ? 1 : topic.step() - 1;
        return topic.resolution().unit() == Unit.RATIO ? Math.max(step, wish * ALIKE_GEARS / 1000) : step;
    }
}
