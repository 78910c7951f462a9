package courseworthy.analysis;

import courseworthy.claim.Verb;
import courseworthy.sheet.Row;
import courseworthy.sheet.Saying;
import courseworthy.topic.Topic;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;

/** How what two rows say compares. */
final class SayingComparison {

    /** What {@link #compared} tells of values that cannot be compared. */
    private static final int UNLIKE = 2;

    private SayingComparison() {
    }

    /** Whether a row says no less than another, as strongly. */
    static boolean noLess(Row strong, Row weak) {
        if (weak.sayings().isEmpty() || strong.origin().force().compareTo(weak.origin().force()) > 0
                || weak.task() != null && !sameTask(strong, weak)) {
            return false;
        }
        for (Saying saying : weak.sayings()) {
            if (!saysNoLess(strong, saying)) {
                return false;
            }
        }
        return true;
    }

    private static boolean saysNoLess(Row strong, Saying weak) {
        for (int i = 0; i < strong.sayings().size(); i++) {
            Saying saying = strong.sayings().get(i);
            if (saysNoLess(saying, weak)) {
                return true;
            }
        }
        return false;
    }

    static boolean saysNoLess(Saying strong, Saying weak) {
        return strong.topic() == weak.topic() && strong.verb() == weak.verb() && noLess(strong, weak);
    }

    private static boolean noLess(Saying strong, Saying weak) {
        int compared = compared(strong, weak);
        return compared == 0 || compared == 1 && strong.verb() == Verb.AT_LEAST || compared == -1 && strong.verb() == Verb.AT_MOST;
    }

    private static boolean sameTask(Row a, Row b) {
        return a.task() == null ? b.task() == null
                : b.task() != null && a.task().what().equals(b.task().what()) && a.task().due() == b.task().due()
                        && Objects.equals(a.task().find(), b.task().find());
    }

    /** Which of two values is the larger; {@link #UNLIKE} where that cannot be said. */
    private static int compared(Saying a, Saying b) {
        if (a.source() instanceof Saying.Literal one && b.source() instanceof Saying.Literal other) {
            return Long.compare(one.value(), other.value());
        }
        if (a.source() instanceof Saying.Times one && b.source() instanceof Saying.Times other && one.measure() == other.measure()) {
            return Integer.signum(one.factor().compareTo(other.factor()));
        }
        return UNLIKE;
    }

    /** Two sayings that cannot both be followed. */
    record SayingClash(Saying one, Saying other) {

        String words() {
            return SayingComparison.words(one) + ", and " + SayingComparison.words(other);
        }
    }

    /** The first pair of sayings that cannot both be followed; null where there is none. */
    static SayingClash clash(Row a, Row b) {
        for (int i = 0; i < a.sayings().size(); i++) {
            Saying one = a.sayings().get(i);
            for (int j = 0; j < b.sayings().size(); j++) {
                Saying other = b.sayings().get(j);
                if (clashes(one, other) && !isException(a, b, one.topic()) && !isException(b, a, one.topic())) {
                    return new SayingClash(one, other);
                }
            }
        }
        return null;
    }

    /**
     * Whether a row is an exception to another on a topic of options, and says so: it avoids what the other prefers, no less strongly, and
     * prefers something that the other does not avoid. Votes for and against are added up, so what it prefers wins wherever both apply.
     */
    static boolean isException(Row exception, Row general, Topic topic) {
        if (exception.origin().force().weight() < general.origin().force().weight()) {
            return false;
        }
        List<Long> preferred = values(exception, topic, Verb.PREFER);
        List<Long> usual = values(general, topic, Verb.PREFER);
        return !preferred.isEmpty() && !usual.isEmpty() && values(exception, topic, Verb.AVOID).containsAll(usual)
                && Collections.disjoint(preferred, values(general, topic, Verb.AVOID));
    }

    private static List<Long> values(Row row, Topic topic, Verb verb) {
        List<Long> out = new ArrayList<>();
        for (Saying saying : row.sayings()) {
            if (saying.topic() == topic && saying.verb() == verb && saying.source() instanceof Saying.Literal literal) {
                out.add(literal.value());
            }
        }
        return out;
    }

    /** Whether a row bounds, avoids or rules out what another prefers. */
    static boolean excludes(Row row, Row preferring) {
        for (Saying one : row.sayings()) {
            for (Saying other : preferring.sayings()) {
                if (one.verb() != Verb.PREFER && other.verb() == Verb.PREFER && clashes(one, other)) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Two sayings of one row that cannot both be followed; null where there is none. */
    static SayingClash clash(Row row) {
        for (int i = 0; i < row.sayings().size(); i++) {
            for (int j = i + 1; j < row.sayings().size(); j++) {
                Saying one = row.sayings().get(i);
                Saying other = row.sayings().get(j);
                if (clashes(one, other)) {
                    return new SayingClash(one, other);
                }
            }
        }
        return null;
    }

    static boolean clashes(Saying one, Saying other) {
        return one.topic() == other.topic() && (clash(one, other) || clash(other, one));
    }

    private static boolean clash(Saying a, Saying b) {
        if (!(a.source() instanceof Saying.Literal one) || !(b.source() instanceof Saying.Literal other)) {
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
        return saying.topic().name() + ": " + saying.text();
    }
}
