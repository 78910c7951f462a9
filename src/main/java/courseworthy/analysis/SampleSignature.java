package courseworthy.analysis;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;

/**
 * Sixty-four situations made of the ends of what rows ask. Rows that do not speak in the same ones of them do not speak in the same
 * situations; of those that do it is still to be reasoned out.
 */
final class SampleSignature {

    private static final int SITUATIONS = 64;
    /** Ends kept of each thing. */
    private static final int MOST_ENDS = 1_000;

    /** For each thing its value in each situation; null where it is unknown. */
    private final Map<Variable, Long[]> values = new HashMap<>();

    SampleSignature(List<Region> regions) {
        Map<Variable, Set<Long>> ends = new HashMap<>();
        for (Region region : regions) {
            for (int i = 0; i < region.size(); i++) {
                ends(region.box(i), ends);
            }
        }
        ends.forEach((thing, some) -> values.put(thing, chosen(thing, new ArrayList<>(some))));
    }

    private static void ends(Box box, Map<Variable, Set<Long>> ends) {
        for (int i = 0; i < box.size(); i++) {
            Set<Long> some = ends.computeIfAbsent(box.thing(i), thing -> new LinkedHashSet<>());
            if (some.size() < MOST_ENDS && box.values(i).spans() > 0) {
                some.add(box.values(i).least(0));
                some.add(box.values(i).most(box.values(i).spans() - 1));
            }
        }
    }

    private static Long[] chosen(Variable thing, List<Long> ends) {
        SplittableRandom chance = new SplittableRandom(thing.number());
        Long[] out = new Long[SITUATIONS];
        for (int i = 0; i < SITUATIONS; i++) {
            int one = chance.nextInt(ends.size() + 1 + ends.size() / 8);
            out[i] = one < ends.size() ? ends.get(one) : null;
        }
        return out;
    }

    /** A bit for each situation in which it applies. */
    long of(Region region) {
        long out = 0;
        for (int i = 0; i < region.size(); i++) {
            long speaks = -1;
            for (int j = 0; j < region.box(i).size() && speaks != 0; j++) {
                speaks &= of(region.box(i).values(j), values.get(region.box(i).thing(j)));
            }
            out |= speaks;
        }
        return out;
    }

    private static long of(ValueSet asked, Long[] at) {
        long out = 0;
        for (int i = 0; i < SITUATIONS; i++) {
            boolean holds = at[i] == null ? asked.unknown() : asked.holds(at[i]);
            out |= holds ? 1L << i : 0;
        }
        return out;
    }
}
