package courseworthy.sheet;

import courseworthy.demand.StretchFacts;
import courseworthy.demand.StretchMeasure;
import java.util.ArrayList;
import java.util.List;

/**
 * One set of conditions on a stretch. Length, ascent and descent are asked of a run of adjacent stretches; the others of each stretch.
 *
 * @param tests  all of which must hold, in the order written
 * @param each   those asked of each stretch of a run
 * @param summed those asked of the sums over a run
 */
public record StretchConditions(List<One> tests, List<One> each, List<One> summed) {

    /** One test of a stretch, as written {@code over 1 km}. */
    public record One(StretchMeasure measure, ValueTest test, String written) {

        Truth on(StretchFacts facts) {
            long value = facts.get(measure);
            return value == StretchFacts.UNKNOWN ? Truth.UNKNOWN : Truth.of(test.holds(value));
        }
    }

    public static StretchConditions of(List<One> tests) {
        List<One> each = new ArrayList<>();
        List<One> summed = new ArrayList<>();
        for (One one : tests) {
            (one.measure().summed() ? summed : each).add(one);
        }
        return new StretchConditions(List.copyOf(tests), each, summed);
    }

    /** Whether a stretch satisfies the conditions on each. */
    Truth on(StretchFacts facts) {
        Truth out = Truth.TRUE;
        for (One one : each) {
            out = out.and(one.on(facts));
        }
        return out;
    }

    StretchConditions map(Condition.TestTransformer change) {
        List<One> out = new ArrayList<>();
        for (One one : tests) {
            out.add(new One(one.measure(), change.of(TestSubject.of(one.measure()), one.test()), one.written()));
        }
        return of(out);
    }

    String canonical() {
        return tests.stream().map(t -> t.measure().written() + t.test().canonical()).sorted().toList().toString();
    }

    /** As written: {@code sharp stones yes, length over 1 km}. */
    public String written() {
        return String.join(", ", tests.stream().map(t -> t.measure().written() + " " + t.written()).toList());
    }

    /** The properties asked for: {@code sharp stones, length}. */
    String names() {
        return String.join(", ", tests.stream().map(t -> t.measure().written()).toList());
    }
}
