package courseworthy.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.demand.StretchFacts;
import courseworthy.demand.StretchMeasure;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Runs of stretches, held against a trial of every world that is left open by what is unknown. */
class StretchRunsTest {

    private static final int YES = 1;
    private static final int NO = 0;
    private static final StretchConditions.One STONES = new StretchConditions.One(StretchMeasure.SHARP_STONES, new ValueTest.Among(List.of(1L)), "yes");

    private static StretchConditions longer(long ticks) {
        return StretchConditions.of(List.of(STONES,
                new StretchConditions.One(StretchMeasure.LENGTH, new ValueTest.Within(ticks + 1, Long.MAX_VALUE), "over")));
    }

    private static StretchFacts stretch(long length, Integer stones) {
        Map<StretchMeasure, Long> known = new EnumMap<>(StretchMeasure.class);
        known.put(StretchMeasure.LENGTH, length);
        if (stones != null) {
            known.put(StretchMeasure.SHARP_STONES, (long) stones);
        }
        return new StretchFacts(known);
    }

    @Test
    void neighboursCountTogetherAndOthersApart() {
        assertThat(StretchRuns.any(longer(100), List.of(stretch(60, YES), stretch(60, YES)))).isEqualTo(Truth.TRUE);
        assertThat(StretchRuns.any(longer(100), List.of(stretch(60, YES), stretch(1, NO), stretch(60, YES)))).isEqualTo(Truth.FALSE);
        assertThat(StretchRuns.any(longer(100), List.of(stretch(100, YES)))).isEqualTo(Truth.FALSE);
        assertThat(StretchRuns.any(longer(100), List.of(stretch(101, YES)))).isEqualTo(Truth.TRUE);
    }

    @Test
    void anUnknownStretchBetweenMayJoinWhatLiesBesideIt() {
        assertThat(StretchRuns.any(longer(100), List.of(stretch(60, YES), stretch(1, null), stretch(60, YES)))).isEqualTo(Truth.UNKNOWN);
        assertThat(StretchRuns.any(longer(100), List.of(stretch(60, YES), stretch(1, null), stretch(30, YES)))).isEqualTo(Truth.FALSE);
        assertThat(StretchRuns.any(longer(100), List.of(stretch(120, YES), stretch(1, null)))).isEqualTo(Truth.TRUE);
    }

    @Test
    void withoutStretchesNothingIsKnown() {
        assertThat(StretchRuns.any(longer(100), List.of())).isEqualTo(Truth.UNKNOWN);
    }

    /**
     * Lengths alone, every stretch in pieces of a quarter of its unit that may each be in a run or not. Thresholds lie between whole
     * lengths, so that the gap of one piece between two runs never decides.
     */
    @Test
    void theSameAsATrialOfEveryWorld() {
        SplittableRandom chance = new SplittableRandom(11);
        Set<Truth> met = EnumSet.noneOf(Truth.class);
        for (int i = 0; i < 20_000; i++) {
            long least = chance.nextBoolean() ? Long.MIN_VALUE : 4L * chance.nextInt(8) + 2;
            long most = chance.nextBoolean() ? Long.MAX_VALUE : 4L * chance.nextInt(8) + 2;
            ValueTest length = new ValueTest.Within(least, Math.max(least, most));
            List<StretchFacts> stretches = new ArrayList<>();
            for (int n = 1 + chance.nextInt(6); n > 0; n--) {
                int stones = chance.nextInt(3);
                stretches.add(stretch(4L * (1 + chance.nextInt(3)), stones == 2 ? null : Integer.valueOf(stones)));
            }
            Truth expected = everyWorld(length, stretches);
            met.add(expected);
            StretchConditions set = StretchConditions.of(List.of(STONES, new StretchConditions.One(StretchMeasure.LENGTH, length, "so long")));
            assertThat(StretchRuns.any(set, stretches)).as("trial " + i).isEqualTo(expected);
        }
        assertThat(met).containsExactlyInAnyOrder(Truth.values());
    }

    /** Where all stones are known, unknown rises may be anything from nothing to a mountain. */
    @Test
    void unknownRisesMayBeAnything() {
        SplittableRandom chance = new SplittableRandom(13);
        Set<Truth> met = EnumSet.noneOf(Truth.class);
        for (int i = 0; i < 20_000; i++) {
            StretchConditions set = set(chance);
            List<StretchFacts> stretches = stretches(chance).stream().filter(facts -> set.on(facts) != Truth.UNKNOWN).toList();
            if (!stretches.isEmpty()) {
                boolean may = someRun(set, stretches, true);
                boolean must = someRun(set, stretches, false);
                Truth expected = must ? Truth.TRUE : may ? Truth.UNKNOWN : Truth.FALSE;
                met.add(expected);
                assertThat(StretchRuns.any(set, stretches)).as("trial " + i).isEqualTo(expected);
            }
        }
        assertThat(met).containsExactlyInAnyOrder(Truth.values());
    }

    @Test
    void cuttingAStretchChangesNothing() {
        SplittableRandom chance = new SplittableRandom(12);
        for (int i = 0; i < 20_000; i++) {
            StretchConditions set = set(chance);
            List<StretchFacts> whole = new ArrayList<>();
            List<StretchFacts> cut = new ArrayList<>();
            for (StretchFacts facts : stretches(chance)) {
                StretchFacts again = with(facts, facts.get(StretchMeasure.LENGTH), facts.get(StretchMeasure.ASCENT));
                long firstLength = chance.nextLong(facts.get(StretchMeasure.LENGTH) + 1);
                boolean risen = facts.get(StretchMeasure.ASCENT) != StretchFacts.UNKNOWN;
                long firstRise = risen ? chance.nextLong(facts.get(StretchMeasure.ASCENT) + 1) : StretchFacts.UNKNOWN;
                whole.add(again);
                cut.add(with(facts, firstLength, firstRise));
                cut.add(with(facts, facts.get(StretchMeasure.LENGTH) - firstLength,
                        risen ? facts.get(StretchMeasure.ASCENT) - firstRise : StretchFacts.UNKNOWN));
            }
            assertThat(StretchRuns.any(set, cut)).as("trial " + i).isEqualTo(StretchRuns.any(set, whole));
        }
    }

    private static StretchFacts with(StretchFacts facts, long length, long rise) {
        Map<StretchMeasure, Long> known = new EnumMap<>(StretchMeasure.class);
        known.put(StretchMeasure.LENGTH, length);
        if (rise != StretchFacts.UNKNOWN) {
            known.put(StretchMeasure.ASCENT, rise);
        }
        for (StretchMeasure measure : List.of(StretchMeasure.SHARP_STONES, StretchMeasure.SAND)) {
            if (facts.get(measure) != StretchFacts.UNKNOWN) {
                known.put(measure, facts.get(measure));
            }
        }
        return new StretchFacts(known);
    }

    private static StretchConditions set(SplittableRandom chance) {
        List<StretchConditions.One> tests = new ArrayList<>(List.of(STONES));
        if (chance.nextBoolean()) {
            tests.add(new StretchConditions.One(StretchMeasure.SAND, new ValueTest.Among(List.of(0L)), "no"));
        }
        for (StretchMeasure sum : List.of(StretchMeasure.LENGTH, StretchMeasure.ASCENT)) {
            long at = chance.nextInt(12);
            switch (chance.nextInt(4)) {
                case 0 -> tests.add(new StretchConditions.One(sum, new ValueTest.Within(at, Long.MAX_VALUE), "at least"));
                case 1 -> tests.add(new StretchConditions.One(sum, new ValueTest.Within(Long.MIN_VALUE, at), "at most"));
                case 2 -> tests.add(new StretchConditions.One(sum, new ValueTest.Within(at, at + 3), "between"));
                default -> { }
            }
        }
        return StretchConditions.of(tests);
    }

    /** Up to six stretches, with much that is unknown. */
    private static List<StretchFacts> stretches(SplittableRandom chance) {
        List<StretchFacts> out = new ArrayList<>();
        for (int i = 1 + chance.nextInt(6); i > 0; i--) {
            int kind = chance.nextInt(9);
            Map<StretchMeasure, Long> known = new EnumMap<>(StretchMeasure.class);
            known.put(StretchMeasure.LENGTH, (long) chance.nextInt(6));
            if (chance.nextInt(5) > 0) {
                known.put(StretchMeasure.ASCENT, (long) chance.nextInt(6));
            }
            if (kind % 3 < 2) {
                known.put(StretchMeasure.SHARP_STONES, (long) (kind % 3));
            }
            if (kind / 3 < 2) {
                known.put(StretchMeasure.SAND, (long) (kind / 3));
            }
            out.add(new StretchFacts(known));
        }
        return out;
    }

    /** Walks through the pieces with every length that the run under way may have by then. */
    private static Truth everyWorld(ValueTest length, List<StretchFacts> stretches) {
        Set<Integer> silent = new TreeSet<>(Set.of(0));
        Set<Integer> running = new TreeSet<>(Set.of(0));
        boolean held = false;
        for (StretchFacts facts : stretches) {
            long stones = facts.get(StretchMeasure.SHARP_STONES);
            for (int piece = 0; piece < facts.get(StretchMeasure.LENGTH); piece++) {
                held |= stones != YES && ended(length, running);
                silent = next(silent, stones, length);
                running = next(running, stones, null);
            }
        }
        held |= ended(length, running);
        boolean failed = silent.stream().anyMatch(run -> run == 0 || !length.holds(run));
        return held && failed ? Truth.UNKNOWN : Truth.of(held);
    }

    private static boolean ended(ValueTest length, Set<Integer> running) {
        return running.stream().anyMatch(run -> run > 0 && length.holds(run));
    }

    /** The runs under way after one more piece; those that end must not satisfy the test, where one is given. */
    private static Set<Integer> next(Set<Integer> runs, long stones, ValueTest unless) {
        Set<Integer> out = new TreeSet<>();
        for (int run : runs) {
            if (stones != NO) {
                out.add(run + 1);
            }
            if (stones != YES && (unless == null || run == 0 || !unless.holds(run))) {
                out.add(0);
            }
        }
        return out;
    }

    /** Whether some maximal run satisfies the sums, unknown rises turning out in favour or against. */
    private static boolean someRun(StretchConditions set, List<StretchFacts> stretches, boolean favour) {
        for (int from = 0; from < stretches.size(); from++) {
            if (set.on(stretches.get(from)) == Truth.FALSE || from > 0 && set.on(stretches.get(from - 1)) == Truth.TRUE) {
                continue;
            }
            long length = 0;
            long rise = 0;
            boolean open = false;
            for (int i = from; i < stretches.size() && set.on(stretches.get(i)) == Truth.TRUE; i++) {
                length += stretches.get(i).get(StretchMeasure.LENGTH);
                boolean unknown = stretches.get(i).get(StretchMeasure.ASCENT) == StretchFacts.UNKNOWN;
                open |= unknown;
                rise += unknown ? 0 : stretches.get(i).get(StretchMeasure.ASCENT);
            }
            boolean any = false;
            boolean all = true;
            for (long more = 0; more <= (open ? 40 : 0); more++) {
                boolean satisfied = satisfied(set, length, rise + more);
                any |= satisfied;
                all &= satisfied;
            }
            if (favour ? any : all) {
                return true;
            }
        }
        return false;
    }

    private static boolean satisfied(StretchConditions set, long length, long rise) {
        for (StretchConditions.One one : set.tests()) {
            if (one.measure() == StretchMeasure.LENGTH && !one.test().holds(length)
                    || one.measure() == StretchMeasure.ASCENT && !one.test().holds(rise)) {
                return false;
            }
        }
        return true;
    }
}
