package courseworthy.rulebase;

import courseworthy.demand.StretchFacts;
import courseworthy.demand.StretchMeasure;
import java.util.ArrayList;
import java.util.List;

/**
 * Maximal runs of adjacent stretches that satisfy a set of conditions. Where a stretch is not known to satisfy them, both worlds are
 * considered: the answer is unknown only where they differ. Laps do not matter: a run ends with the course.
 */
final class Runs {

    /** In the order of the catalogue, where they stand first. */
    private static final StretchMeasure[] SUMMED = {StretchMeasure.LENGTH, StretchMeasure.RISE, StretchMeasure.DROP};

    private final List<StretchSet.One> summed;
    private final List<Truth> each = new ArrayList<>();
    /** Per stretch, its length, rise and drop; an unknown one counts 0 and is marked in {@link #open}. */
    private final List<long[]> sums = new ArrayList<>();
    private final List<boolean[]> open = new ArrayList<>();

    private Runs(StretchSet set, List<StretchFacts> stretches) {
        this.summed = set.summed();
        List<StretchSet.One> tests = set.each();
        StretchFacts last = null;
        for (StretchFacts facts : stretches) {
            if (last == null || !alike(tests, last, facts)) {
                each.add(set.on(facts));
                sums.add(new long[SUMMED.length]);
                open.add(new boolean[SUMMED.length]);
            }
            add(facts);
            last = facts;
        }
    }

    /** Whether some maximal run satisfies the set; unknown without stretches. */
    static Truth any(StretchSet set, List<StretchFacts> stretches) {
        if (stretches.isEmpty()) {
            return Truth.UNKNOWN;
        }
        Runs runs = new Runs(set, stretches);
        if (!runs.possible()) {
            return Truth.FALSE;
        }
        return runs.avoidable() ? Truth.UNKNOWN : Truth.TRUE;
    }

    /** Length of the longest run of stretches known to satisfy the conditions on each, in ticks; 0 for none. */
    static long longest(StretchSet set, List<StretchFacts> stretches) {
        long best = 0;
        long run = 0;
        for (StretchFacts facts : stretches) {
            run = set.on(facts) == Truth.TRUE ? run + facts.get(StretchMeasure.LENGTH) : 0;
            best = Math.max(best, run);
        }
        return best;
    }

    /** Neighbours alike in what is tested are one stretch, so that cutting a course into more pieces changes nothing. */
    private static boolean alike(List<StretchSet.One> tests, StretchFacts a, StretchFacts b) {
        for (StretchSet.One one : tests) {
            if (a.get(one.measure()) != b.get(one.measure())) {
                return false;
            }
        }
        return true;
    }

    private void add(StretchFacts facts) {
        int at = sums.size() - 1;
        for (int i = 0; i < SUMMED.length; i++) {
            long value = facts.get(SUMMED[i]);
            if (value == StretchFacts.UNKNOWN) {
                open.get(at)[i] = true;
            } else {
                sums.get(at)[i] += value;
            }
        }
    }

    /** Whether in some world some run satisfies the sums. */
    private boolean possible() {
        for (int from = 0; from < each.size(); from++) {
            if (from > 0 && each.get(from - 1) == Truth.TRUE) {
                continue;
            }
            Run run = new Run();
            for (int to = from; to < each.size() && each.get(to) != Truth.FALSE; to++) {
                run.add(to);
                if (mayEndAfter(to) && run.satisfies() != Truth.FALSE) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Whether in some world no run satisfies the sums. */
    private boolean avoidable() {
        int n = each.size();
        boolean[] reached = new boolean[n + 2];
        reached[0] = true;
        for (int from = 0; from < n; from++) {
            if (!reached[from]) {
                continue;
            }
            if (each.get(from) != Truth.TRUE) {
                reached[from + 1] = true;
            }
            Run run = new Run();
            for (int to = from; to < n && each.get(to) != Truth.FALSE; to++) {
                run.add(to);
                if (mayEndAfter(to) && run.satisfies() != Truth.TRUE) {
                    reached[to + 2] = true;
                }
            }
        }
        return reached[n] || reached[n + 1];
    }

    private boolean mayEndAfter(int at) {
        return at == each.size() - 1 || each.get(at + 1) != Truth.TRUE;
    }

    /** The sums over a run. */
    private final class Run {
        private final long[] sum = new long[SUMMED.length];
        private final boolean[] unknown = new boolean[SUMMED.length];

        void add(int at) {
            for (int i = 0; i < SUMMED.length; i++) {
                sum[i] += sums.get(at)[i];
                unknown[i] |= open.get(at)[i];
            }
        }

        Truth satisfies() {
            Truth out = Truth.TRUE;
            for (StretchSet.One one : summed) {
                int i = one.measure().ordinal() - StretchMeasure.LENGTH.ordinal();
                out = out.and(one.test().holdsSomewhere(sum[i], unknown[i] ? Long.MAX_VALUE : sum[i]));
            }
            return out;
        }
    }
}
