package courseworthy.sheet;

import courseworthy.demand.StretchFacts;
import courseworthy.demand.StretchMeasure;
import java.util.ArrayList;
import java.util.List;

/**
 * Maximal runs of adjacent stretches that satisfy a set of conditions. A stretch that is not known to satisfy them may do so in any
 * part, so it may lengthen a run beside it, join two, or hold one of its own; the answer is unknown only where that matters. Cutting
 * a course into more stretches changes nothing. Laps do not matter: a run ends with the course.
 */
final class StretchRuns {

    /** In the order of the catalogue, where they stand first. */
    private static final StretchMeasure[] SUMMED = {StretchMeasure.LENGTH, StretchMeasure.ASCENT, StretchMeasure.DESCENT};

    private final List<StretchConditions.One> summed;
    private final List<Zone> zones = new ArrayList<>();

    /** Neighbours that satisfy the conditions on each stretch, that may, or that do not. */
    private static final class Zone {
        final Truth satisfied;
        final long[] sum = new long[SUMMED.length];
        /** Whether the sum may be more, since a part of it is unknown. */
        final boolean[] open = new boolean[SUMMED.length];

        Zone(Truth satisfied) {
            this.satisfied = satisfied;
        }

        void add(StretchFacts facts) {
            for (int i = 0; i < SUMMED.length; i++) {
                long value = facts.get(SUMMED[i]);
                open[i] |= value == StretchFacts.UNKNOWN;
                sum[i] += value == StretchFacts.UNKNOWN ? 0 : value;
            }
        }
    }

    /** The sums over a run whose ends may lie within zones that may satisfy the conditions: from least to most. */
    private final class StretchRun {
        private final long[] least = new long[SUMMED.length];
        private final long[] most = new long[SUMMED.length];
        private final boolean[] open = new boolean[SUMMED.length];

        StretchRun with(int zone) {
            add(zone, true);
            return this;
        }

        /** A part of a neighbouring zone, where there is one that may belong to the run. */
        StretchRun withPartOf(int zone) {
            if (zone >= 0 && zone < zones.size() && zones.get(zone).satisfied == Truth.UNKNOWN) {
                add(zone, false);
            }
            return this;
        }

        private void add(int zone, boolean whole) {
            for (int i = 0; i < SUMMED.length; i++) {
                least[i] += whole ? zones.get(zone).sum[i] : 0;
                most[i] += zones.get(zone).sum[i];
                open[i] |= zones.get(zone).open[i];
            }
        }

        StretchRun copy() {
            StretchRun out = new StretchRun();
            System.arraycopy(least, 0, out.least, 0, SUMMED.length);
            System.arraycopy(most, 0, out.most, 0, SUMMED.length);
            System.arraycopy(open, 0, out.open, 0, SUMMED.length);
            return out;
        }

        Truth satisfies() {
            Truth out = Truth.TRUE;
            for (StretchConditions.One one : summed) {
                int i = one.measure().ordinal() - StretchMeasure.LENGTH.ordinal();
                out = out.and(one.test().holdsSomewhere(least[i], open[i] ? Long.MAX_VALUE : most[i]));
            }
            return out;
        }
    }

    private StretchRuns(StretchConditions set, List<StretchFacts> stretches) {
        this.summed = set.summed();
        for (StretchFacts facts : stretches) {
            Truth satisfied = set.on(facts);
            if (zones.isEmpty() || zones.get(zones.size() - 1).satisfied != satisfied) {
                zones.add(new Zone(satisfied));
            }
            zones.get(zones.size() - 1).add(facts);
        }
    }

    /** Whether some maximal run satisfies the set; unknown without stretches. */
    static Truth any(StretchConditions set, List<StretchFacts> stretches) {
        if (stretches.isEmpty()) {
            return Truth.UNKNOWN;
        }
        StretchRuns runs = new StretchRuns(set, stretches);
        if (!runs.possible()) {
            return Truth.FALSE;
        }
        return runs.avoidable() ? Truth.UNKNOWN : Truth.TRUE;
    }

    /** Length of the longest run of stretches known to satisfy the conditions on each, in ticks; 0 for none. */
    static long longest(StretchConditions set, List<StretchFacts> stretches) {
        long best = 0;
        long run = 0;
        for (StretchFacts facts : stretches) {
            run = set.on(facts) == Truth.TRUE ? run + facts.get(StretchMeasure.LENGTH) : 0;
            best = Math.max(best, run);
        }
        return best;
    }

    /** Whether some run may satisfy the sums. */
    private boolean possible() {
        for (int from = 0; from < zones.size(); from++) {
            if (zones.get(from).satisfied == Truth.UNKNOWN && new StretchRun().withPartOf(from).satisfies() != Truth.FALSE) {
                return true;
            }
            if (zones.get(from).satisfied == Truth.TRUE && joined(from).stream().anyMatch(j -> j.run().satisfies() != Truth.FALSE)) {
                return true;
            }
        }
        return false;
    }

    /** Whether every stretch known to satisfy the conditions may lie in a run that does not satisfy the sums. */
    private boolean avoidable() {
        boolean[] reached = new boolean[zones.size() + 1];
        reached[0] = true;
        for (int from = 0; from < zones.size(); from++) {
            if (!reached[from]) {
                continue;
            }
            if (zones.get(from).satisfied != Truth.TRUE) {
                reached[from + 1] = true;
                continue;
            }
            for (JoinedRun joined : joined(from)) {
                reached[joined.to() + 1] |= joined.run().satisfies() != Truth.TRUE;
            }
        }
        return reached[zones.size()];
    }

    /** A run that starts in or just before one known zone and ends in or just after another. */
    private record JoinedRun(int to, StretchRun run) {
    }

    /** The runs that a known zone may be the first of, joined with the next ones across zones that may satisfy the conditions. */
    private List<JoinedRun> joined(int from) {
        List<JoinedRun> out = new ArrayList<>();
        StretchRun run = new StretchRun().withPartOf(from - 1);
        for (int to = from; to < zones.size() && zones.get(to).satisfied != Truth.FALSE; to++) {
            run.with(to);
            if (zones.get(to).satisfied == Truth.TRUE) {
                out.add(new JoinedRun(to, run.copy().withPartOf(to + 1)));
            }
        }
        return out;
    }
}
