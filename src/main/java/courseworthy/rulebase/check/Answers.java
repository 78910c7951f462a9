package courseworthy.rulebase.check;

import courseworthy.claim.Verb;
import courseworthy.rulebase.Row;
import courseworthy.rulebase.Saying;
import courseworthy.topic.Topic;
import java.util.Objects;

/** How what two rows say compares. */
final class Answers {

    private Answers() {
    }

    /** Whether two rows say just the same, in any order, with the same force. */
    static boolean same(Row a, Row b) {
        return a.author().force() == b.author().force() && sameSayings(a, b);
    }

    static boolean sameSayings(Row a, Row b) {
        return saysAll(a, b) && saysAll(b, a) && sameTask(a, b);
    }

    private static boolean saysAll(Row a, Row b) {
        return a.sayings().stream().allMatch(one -> b.sayings().stream().anyMatch(other -> same(one, other)));
    }

    /** Whether a row says no less than another, as strongly. */
    static boolean noLess(Row strong, Row weak) {
        return !weak.sayings().isEmpty() && strong.author().force().compareTo(weak.author().force()) <= 0
                && (weak.task() == null || sameTask(strong, weak))
                && weak.sayings().stream().allMatch(one -> strong.sayings().stream().anyMatch(other -> noLess(other, one)));
    }

    private static boolean sameTask(Row a, Row b) {
        return a.task() == null ? b.task() == null
                : b.task() != null && a.task().what().equals(b.task().what()) && a.task().due() == b.task().due()
                        && Objects.equals(a.task().find(), b.task().find());
    }

    private static boolean same(Saying a, Saying b) {
        return a.topic().equals(b.topic()) && a.verb() == b.verb() && compared(a, b) == Integer.valueOf(0);
    }

    private static boolean noLess(Saying strong, Saying weak) {
        Integer compared = compared(strong, weak);
        if (!strong.topic().equals(weak.topic()) || strong.verb() != weak.verb() || compared == null) {
            return false;
        }
        return switch (strong.verb()) {
            case AT_LEAST -> compared >= 0;
            case AT_MOST -> compared <= 0;
            default -> compared == 0;
        };
    }

    /** Which of two values is the larger; null where that cannot be said. */
    private static Integer compared(Saying a, Saying b) {
        if (a.worth() instanceof Saying.Literal one && b.worth() instanceof Saying.Literal other) {
            return Integer.signum(Long.compare(one.value(), other.value()));
        }
        if (a.worth() instanceof Saying.Times one && b.worth() instanceof Saying.Times other && one.measure() == other.measure()) {
            return Integer.signum(one.factor().compareTo(other.factor()));
        }
        return null;
    }

    /** Two sayings that cannot both be followed. */
    record Clash(Saying one, Saying other) {

        /** Whether a preference meets a bound or a veto, which it can never overcome. */
        boolean uneven() {
            return (one.verb() == Verb.PREFER) != (other.verb() == Verb.PREFER);
        }
    }

    /** The first pair of sayings that cannot both be followed; null where there is none. */
    static Clash clash(Row a, Row b) {
        for (Saying one : a.sayings()) {
            for (Saying other : b.sayings()) {
                if (one.topic().equals(other.topic()) && (clash(one, other) || clash(other, one))) {
                    return new Clash(one, other);
                }
            }
        }
        return null;
    }

    private static boolean clash(Saying a, Saying b) {
        if (!(a.worth() instanceof Saying.Literal one) || !(b.worth() instanceof Saying.Literal other)) {
            return false;
        }
        return switch (b.verb()) {
            case AT_MOST -> (a.verb() == Verb.AT_LEAST || a.verb() == Verb.PREFER) && one.value() > other.value();
            case AT_LEAST -> a.verb() == Verb.PREFER && one.value() < other.value();
            case RULE_OUT, AVOID -> a.verb() == Verb.PREFER && one.value() == other.value();
            case PREFER -> a.verb() == Verb.PREFER && apart(a.topic(), one.value(), other.value());
            case ONE_OF -> false;
        };
    }

    /** Further apart than rounding would hide. */
    private static boolean apart(Topic topic, long a, long b) {
        return topic.kind() == Topic.Kind.QUANTITY ? Math.abs(a - b) > topic.step() : a != b;
    }

    static String words(Saying saying) {
        return saying.topic().name() + ": " + saying.verb().word() + " " + saying.written();
    }
}
