package courseworthy.sheet;

import courseworthy.demand.Measure;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.Set;
import java.util.SortedSet;

/** What rows read of the measures and of what is settled, and where their tests turn. Tests of stretches are left out. */
public final class RuleInputs {

    private RuleInputs() {
    }

    /** The measures that its tests ask for, and those its values come from. */
    public static Set<Measure> measures(Row row) {
        Set<Measure> out = EnumSet.noneOf(Measure.class);
        row.condition().map((subject, test) -> {
            if (subject.kind() == TestSubject.Kind.MEASURE) {
                out.add(Measure.find(subject.written()));
            }
            return test;
        });
        out.addAll(worths(row));
        return out;
    }

    /** The measures that its values come from. */
    public static Set<Measure> worths(Row row) {
        Set<Measure> out = EnumSet.noneOf(Measure.class);
        for (Saying saying : row.sayings()) {
            if (saying.source() instanceof Saying.Times times) {
                out.add(times.measure());
            }
        }
        return out;
    }

    /** The topics that its tests ask for. */
    public static Set<Topic> topics(Row row) {
        Set<Topic> out = new LinkedHashSet<>();
        row.condition().map((subject, test) -> {
            if (subject.kind() == TestSubject.Kind.DECIDED) {
                out.add(Topics.of(subject.written()));
            }
            return test;
        });
        return out;
    }

    /**
     * Adds the values of a measure at which a test of the row turns: every test has one truth from one of them to just below the next.
     */
    public static void turns(Row row, Measure measure, SortedSet<Long> out) {
        row.condition().map((subject, test) -> {
            if (subject.kind() == TestSubject.Kind.MEASURE && subject.written().equals(measure.written())) {
                turns(test, out);
            }
            return test;
        });
    }

    private static void turns(ValueTest test, SortedSet<Long> out) {
        if (test instanceof ValueTest.Within within) {
            if (within.least() != Long.MIN_VALUE) {
                out.add(within.least());
            }
            if (within.most() != Long.MAX_VALUE) {
                out.add(within.most() + 1);
            }
        } else if (test instanceof ValueTest.Among among) {
            for (long value : among.values()) {
                out.add(value);
                out.add(value + 1);
            }
        }
    }
}
