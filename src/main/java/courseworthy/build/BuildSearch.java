package courseworthy.build;

import courseworthy.build.BuildVariables.Wide;
import courseworthy.fit.BuildLoad;
import courseworthy.workshop.MountingPlace;
import courseworthy.workshop.Part;
import courseworthy.workshop.Workshop;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The build on one bike that satisfies every limit and costs least: exact, by branch and bound. Places are variables, parts their
 * values; checks of two places are tables, checks and costs of three are asked when two of their places are filled. What a choice forbids or costs
 * moves to the open places; what is then open falls apart into groups that know nothing of each other, each solved by itself. The
 * least of a group is remembered with what is chosen around it, and its bound comes from a tree over its places, on which costs of two
 * places are counted exactly.
 */
final class BuildSearch {

    /** Smaller groups are quicker worked out than looked up. */
    private static final int WORTH_REMEMBERING = 2;

    private final BuildVariables variables;
    private final MountingPlace[] places;
    private final Part[][] values;
    private final long[][][][] pair;
    private final List<List<Wide>> wideOf;
    private final int[] parent;
    private final boolean[][] near;

    private final int[] chosen;
    private long best = Long.MAX_VALUE;
    private long nodes;
    private final Map<Around, SearchSolution> solved = new HashMap<>();

    /** The open places of a group and what is chosen around it. */
    private record Around(int[] key) {
        @Override
        public boolean equals(Object other) {
            return other instanceof Around that && Arrays.equals(key, that.key);
        }

        @Override
        public int hashCode() {
            return Arrays.hashCode(key);
        }
    }

    /** @param cost the least where exact, else what it does not stay below */
    private record SearchSolution(long cost, boolean exact, int[] values) {
    }

    BuildSearch(Workshop workshop, Part bike, BuildLoad load, BuildObjective aims) {
        variables = new BuildVariables(workshop, bike, load, aims);
        places = variables.places;
        values = variables.values;
        pair = variables.pair;
        wideOf = variables.wideOf;
        parent = variables.parent;
        near = variables.near;
        chosen = new int[places.length];
        Arrays.fill(chosen, -1);
    }

    /** The cheapest build, null where none satisfies every limit; its cost is {@link #cost()}. */
    Map<MountingPlace, Part> solve() {
        long ofBike = variables.ofBike();
        if (ofBike >= BuildObjective.FORBIDDEN) {
            return null;
        }
        int[] all = new int[places.length];
        for (int i = 0; i < all.length; i++) {
            all[i] = i;
        }
        int[] found = new int[places.length];
        long least = apart(all, variables.cost, BuildObjective.FORBIDDEN, found);
        if (least >= BuildObjective.FORBIDDEN) {
            return null;
        }
        best = ofBike * BuildVariables.LOSS + least;
        Map<MountingPlace, Part> out = new EnumMap<>(MountingPlace.class);
        for (int i = 0; i < places.length; i++) {
            if (values[i][found[i]] != null) {
                out.put(places[i], values[i][found[i]]);
            }
        }
        return out;
    }

    long cost() {
        return best;
    }

    /** How many choices were tried: to see that the bound does its work. */
    long nodes() {
        return nodes;
    }

    /**
     * The least cost of open places, group by group.
     *
     * @param open  the open places
     * @param now   what each value costs, given what is chosen
     * @param under what it must stay below
     * @param found takes the values of the cheapest
     * @return the least cost, or FORBIDDEN where nothing stays below
     */
    private long apart(int[] open, long[][] now, long under, int[] found) {
        List<int[]> groups = groups(open);
        long[] bounds = new long[groups.size()];
        long sum = 0;
        for (int g = 0; g < bounds.length; g++) {
            bounds[g] = least(marginals(groups.get(g), now), groups.get(g));
            sum += bounds[g];
            if (bounds[g] >= BuildObjective.FORBIDDEN || sum >= under) {
                return BuildObjective.FORBIDDEN;
            }
        }
        for (int g = 0; g < bounds.length; g++) {
            long exact = remembered(groups.get(g), now, under - (sum - bounds[g]), found);
            if (exact >= BuildObjective.FORBIDDEN) {
                return BuildObjective.FORBIDDEN;
            }
            sum += exact - bounds[g];
        }
        return sum < under ? sum : BuildObjective.FORBIDDEN;
    }

    /**
     * The least cost of one group, which hangs on nothing but what is chosen in the places that it shares a table or a check with: met with the
     * same choices there, it is not worked out again.
     */
    private long remembered(int[] open, long[][] now, long under, int[] found) {
        if (open.length < WORTH_REMEMBERING) {
            return group(open, now, under, found);
        }
        Around around = around(open);
        SearchSolution known = solved.get(around);
        if (known != null && (known.exact() || known.cost() >= under)) {
            for (int k = 0; known.exact() && k < open.length; k++) {
                found[open[k]] = known.values()[k];
            }
            return known.cost() < under ? known.cost() : BuildObjective.FORBIDDEN;
        }
        long least = group(open, now, under, found);
        boolean exact = least < BuildObjective.FORBIDDEN;
        int[] chosenValues = new int[exact ? open.length : 0];
        for (int k = 0; k < chosenValues.length; k++) {
            chosenValues[k] = found[open[k]];
        }
        solved.put(around, new SearchSolution(exact ? least : under, exact, chosenValues));
        return least;
    }

    /** The open places of a group and what is chosen around it. */
    private Around around(int[] open) {
        int[] key = new int[open.length + places.length];
        System.arraycopy(open, 0, key, 0, open.length);
        for (int j = 0; j < places.length; j++) {
            key[open.length + j] = chosen[j] >= 0 && touches(j, open) ? chosen[j] : -1;
        }
        return new Around(key);
    }

    private boolean touches(int j, int[] open) {
        for (int i : open) {
            if (near[j][i]) {
                return true;
            }
        }
        return false;
    }

    /** The least cost of one group: its first place is filled with each value, cheapest first. */
    private long group(int[] open, long[][] now, long under, int[] found) {
        if (open.length == 0) {
            return 0;
        }
        long[][] marginals = marginals(open, now);
        int i = open[0];
        long rest = least(marginals, open) - min(marginals[i]);
        int[] without = Arrays.copyOfRange(open, 1, open.length);
        long lowest = under;
        int[] trial = found.clone();
        for (int v : cheapestFirst(marginals[i])) {
            if (marginals[i][v] + rest >= lowest) {
                break;
            }
            nodes++;
            chosen[i] = v;
            long[][] after = choose(i, v, now);
            long sum = after == null ? BuildObjective.FORBIDDEN : apart(without, after, lowest - now[i][v], trial);
            chosen[i] = -1;
            if (sum < BuildObjective.FORBIDDEN && now[i][v] + sum < lowest) {
                lowest = now[i][v] + sum;
                trial[i] = v;
                for (int each : open) {
                    found[each] = trial[each];
                }
            }
        }
        return lowest < under ? lowest : BuildObjective.FORBIDDEN;
    }

    /** Open places that hang together, in groups; the order of places is kept. */
    private List<int[]> groups(int[] open) {
        List<int[]> out = new ArrayList<>();
        boolean[] left = new boolean[places.length];
        for (int each : open) {
            left[each] = true;
        }
        for (int each : open) {
            if (left[each]) {
                boolean[] in = new boolean[places.length];
                reach(each, left, in);
                int[] group = new int[open.length];
                int size = 0;
                for (int other : open) {
                    if (in[other]) {
                        group[size++] = other;
                    }
                }
                out.add(Arrays.copyOf(group, size));
            }
        }
        return out;
    }

    private void reach(int i, boolean[] left, boolean[] in) {
        left[i] = false;
        in[i] = true;
        for (int j = 0; j < places.length; j++) {
            if (left[j] && pair[i][j] != null) {
                reach(j, left, in);
            }
        }
        for (Wide wide : wideOf.get(i)) {
            for (int j : wide.places()) {
                if (left[j]) {
                    reach(j, left, in);
                }
            }
        }
    }

    /** What each value of a group costs at least with everything below it in the tree. */
    private long[][] marginals(int[] group, long[][] now) {
        long[][] out = new long[places.length][];
        for (int each : group) {
            out[each] = now[each].clone();
        }
        for (int k = group.length - 1; k >= 0; k--) {
            int i = group[k];
            int above = parent[i];
            if (above >= 0 && out[above] != null) {
                for (int v = 0; v < out[above].length; v++) {
                    out[above][v] = Math.min(BuildObjective.FORBIDDEN, out[above][v] + least(out[i], pair[above][i][v]));
                }
            }
        }
        return out;
    }

    private static long least(long[] costs, long[] shared) {
        long least = BuildObjective.FORBIDDEN;
        for (int w = 0; w < costs.length; w++) {
            least = Math.min(least, costs[w] + shared[w]);
        }
        return least;
    }

    /** The bound of a group: the least of each root of the tree. */
    private long least(long[][] marginals, int[] group) {
        long sum = 0;
        for (int i : group) {
            if (parent[i] < 0 || marginals[parent[i]] == null) {
                sum = Math.min(BuildObjective.FORBIDDEN, sum + min(marginals[i]));
            }
        }
        return sum;
    }

    private static long min(long[] costs) {
        long least = BuildObjective.FORBIDDEN;
        for (long each : costs) {
            least = Math.min(least, each);
        }
        return least;
    }

    private static int[] cheapestFirst(long[] costs) {
        List<Integer> order = new ArrayList<>();
        for (int v = 0; v < costs.length; v++) {
            if (costs[v] < BuildObjective.FORBIDDEN) {
                order.add(v);
            }
        }
        order.sort(Comparator.comparingLong(v -> costs[v]));
        return order.stream().mapToInt(Integer::intValue).toArray();
    }

    /** The costs of open places once a value is chosen; null where a place is left with none. */
    private long[][] choose(int i, int v, long[][] now) {
        long[][] out = now.clone();
        for (int j = 0; j < places.length; j++) {
            if (chosen[j] < 0 && pair[i][j] != null) {
                out[j] = now[j].clone();
                for (int w = 0; w < out[j].length; w++) {
                    out[j][w] = Math.min(BuildObjective.FORBIDDEN, out[j][w] + pair[i][j][v][w]);
                }
                if (min(out[j]) >= BuildObjective.FORBIDDEN) {
                    return null;
                }
            }
        }
        for (Wide wide : wideOf.get(i)) {
            if (!narrow(wide, out, now)) {
                return null;
            }
        }
        return out;
    }

    /** Adds what three places cost together once only one of them is open; false where a check of theirs leaves it nothing. */
    private boolean narrow(Wide wide, long[][] out, long[][] before) {
        int open = -1;
        int[] at = new int[3];
        for (int k = 0; k < 3; k++) {
            at[k] = chosen[wide.places()[k]];
            if (at[k] < 0 && open >= 0) {
                return true;
            }
            open = at[k] < 0 ? k : open;
        }
        if (open < 0) {
            return variables.of(wide, at) < BuildObjective.FORBIDDEN;
        }
        int i = wide.places()[open];
        if (out[i] == before[i]) {
            out[i] = before[i].clone();
        }
        for (int w = 0; w < out[i].length; w++) {
            at[open] = w;
            out[i][w] = out[i][w] < BuildObjective.FORBIDDEN ? Math.min(BuildObjective.FORBIDDEN, out[i][w] + variables.of(wide, at)) : out[i][w];
        }
        return min(out[i]) < BuildObjective.FORBIDDEN;
    }
}
