package courseworthy.build;

import courseworthy.fit.BuildLoad;
import courseworthy.fit.FitChecks;
import courseworthy.fit.FitChecks.Check;
import courseworthy.fit.FitResult;
import courseworthy.workshop.MountingPlace;
import courseworthy.workshop.Part;
import courseworthy.workshop.PartDetail;
import courseworthy.workshop.Workshop;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/**
 * The build on one bike that satisfies every limit and costs least: exact, by branch and bound. Places are variables, parts their
 * values; checks of two places are tables, checks of three are asked when two of their places are filled. What a choice forbids or costs
 * moves to the open places; what is then open falls apart into groups that know nothing of each other, each solved by itself. The
 * least of a group is remembered with what is chosen around it, and its bound comes from a tree over its places, on which costs of two
 * places are counted exactly.
 *
 * <p>A cost is the loss against the decisions, then the swaps with the mass they take off, then their minutes, in one number. A swap
 * counts like 10 s on the course, so that of parts that lose equally the lighter goes on where it returns more than that; to take a
 * part from another bike counts twice. A pair of tyres goes before two of different kinds. A combination that is
 * unknown is taken only where it stands so now on this bike; it never counts as fitting for a swap.
 */
final class BuildSearch {

    /** Weights that put one aim before another: a notch of what was called, then a swap (computing). */
    static final long LOSS = 10_000_000_000L;
    static final long SWAP = 100_000L;
    /** Less than a swap, so that no pair is ever a reason for one. */
    static final long NO_PAIR = SWAP / 2;
    /** A tyre or rotor that changes ends, as two minutes of work: it may be marked with a direction. */
    static final long OTHER_END = 20;
    /** What 1 g costs where 1 kg costs 1 s. */
    static final long GRAM_SECOND = SWAP / BuildObjective.NOTCH_SECONDS / 1000;
    /** Parts ridden less than this are new, s (common practice, no source). */
    static final double NEW = 5 * 3600;

    /** Smaller groups are quicker worked out than looked up. */
    private static final int WORTH_REMEMBERING = 2;

    /** What a rider sits, steps and steers by, and a chain that has worn in with its cassette: never swapped for lightness alone. */
    private static final Set<MountingPlace> PROVEN = EnumSet.of(MountingPlace.SADDLE, MountingPlace.SPACERS, MountingPlace.STEM, MountingPlace.BAR, MountingPlace.EXTENSIONS, MountingPlace.PEDALS,
            MountingPlace.CRANK, MountingPlace.CHAIN);

    /** The order in which places are filled: what much hangs on first, each after the one above it in the tree. */
    private static final List<MountingPlace> ORDER = List.of(MountingPlace.FORK, MountingPlace.REAR_WHEEL, MountingPlace.FRONT_WHEEL, MountingPlace.REAR_TYRE, MountingPlace.FRONT_TYRE,
            MountingPlace.CASSETTE, MountingPlace.CHAINRING, MountingPlace.DERAILLEUR, MountingPlace.SHIFTER, MountingPlace.CHAIN, MountingPlace.CRANK, MountingPlace.PEDALS, MountingPlace.REAR_ROTOR,
            MountingPlace.FRONT_ROTOR, MountingPlace.REAR_PADS, MountingPlace.FRONT_PADS, MountingPlace.REAR_INSERT, MountingPlace.FRONT_INSERT, MountingPlace.STEM, MountingPlace.SPACERS, MountingPlace.BAR,
            MountingPlace.EXTENSIONS, MountingPlace.SEATPOST, MountingPlace.SADDLE, MountingPlace.SHOCK, MountingPlace.FRONT_SEALANT, MountingPlace.REAR_SEALANT, MountingPlace.METER,
            MountingPlace.BAG);

    private final Workshop workshop;
    private final Part bike;
    private final BuildLoad load;
    private final BuildObjective aims;
    private final MountingEffort work;

    private final MountingPlace[] places;
    private final Part[][] values;
    private final long[][] cost;
    /** For each pair of places with a check or a shared cost: [i][j][value of i][value of j], FORBIDDEN where they do not go together. */
    private final long[][][][] pair;
    private final List<List<Wide>> wideOf = new ArrayList<>();

    private final int[] parent;
    private final int[] chosen;
    private long best = Long.MAX_VALUE;
    private long nodes;
    private final Map<Around, Solved> solved = new HashMap<>();
    /** Whether two places share a table or a check. */
    private final boolean[][] near;

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
    private record Solved(long cost, boolean exact, int[] values) {
    }

    /** A check of three places, with its answers as far as they were asked: 0 not yet, 1 allowed, 2 not. */
    private record Wide(int[] places, Check check, byte[][][] answers) {
    }

    BuildSearch(Workshop workshop, Part bike, BuildLoad load, BuildObjective aims) {
        this.workshop = workshop;
        this.bike = bike;
        this.load = load;
        this.aims = aims;
        this.work = new MountingEffort(workshop);
        Map<MountingPlace, List<Part>> open = candidates(workshop, bike);
        List<MountingPlace> inOrder = new ArrayList<>(open.keySet());
        inOrder.sort(Comparator.comparing(ORDER::indexOf));
        places = inOrder.toArray(new MountingPlace[0]);
        values = new Part[places.length][];
        cost = new long[places.length][];
        pair = new long[places.length][places.length][][];
        for (int i = 0; i < places.length; i++) {
            fill(i, open.get(places[i]));
        }
        tables();
        parent = new int[places.length];
        for (int i = 0; i < places.length; i++) {
            parent[i] = parent(i);
        }
        chosen = new int[places.length];
        Arrays.fill(chosen, -1);
        near = near();
    }

    private boolean[][] near() {
        boolean[][] out = new boolean[places.length][places.length];
        for (int i = 0; i < places.length; i++) {
            for (int j = 0; j < places.length; j++) {
                out[i][j] = pair[i][j] != null;
            }
            for (Wide wide : wideOf.get(i)) {
                for (int j : wide.places()) {
                    out[i][j] = true;
                }
            }
        }
        return out;
    }

    /** What could stand in each place of a bike: null among them where it may be left empty, none at all where what it needs is gone. */
    static Map<MountingPlace, List<Part>> candidates(Workshop workshop, Part bike) {
        Map<MountingPlace, List<Part>> out = new EnumMap<>(MountingPlace.class);
        Map<MountingPlace, List<Part>> able = new EnumMap<>(MountingPlace.class);
        for (Part part : workshop.parts()) {
            for (MountingPlace place : MountingPlace.of(part)) {
                able.computeIfAbsent(place, each -> new ArrayList<>()).add(part);
            }
        }
        for (MountingPlace place : MountingPlace.values()) {
            List<Part> parts = new ArrayList<>();
            if (searched(place)) {
                for (Part part : able.getOrDefault(place, List.of())) {
                    if (mayServe(part, place, bike, workshop.needs(bike, place))) {
                        parts.add(part);
                    }
                }
                if (!workshop.needs(bike, place)) {
                    parts.add(null);
                }
            }
            if (parts.size() > 1 || parts.size() == 1 && parts.get(0) != null || searched(place) && parts.isEmpty()) {
                out.put(place, parts);
            }
        }
        return out;
    }

    /** Sealant goes where its tyre goes, a power meter where its crank goes; a bag is packed, not built; lights hang on nothing else. */
    static boolean searched(MountingPlace place) {
        return place != MountingPlace.FRONT_SEALANT && place != MountingPlace.REAR_SEALANT && place != MountingPlace.METER && place != MountingPlace.BAG
                && place != MountingPlace.LIGHTS;
    }

    /** A place with nothing listed in it may be there without being written: it is not filled from another bike. */
    private static boolean mayServe(Part part, MountingPlace place, Part bike, boolean listed) {
        if (!part.owned() || !part.mayServe(bike)) {
            return false;
        }
        return listed || !place.needed() || part.bike() == null || part.bike() == bike;
    }

    private void fill(int i, List<Part> parts) {
        List<Part> possible = new ArrayList<>();
        List<Long> costs = new ArrayList<>();
        for (Part part : parts) {
            long each = alone(places[i], part);
            each += each < BuildObjective.FORBIDDEN ? mass(places[i], part, parts) : 0;
            if (each < BuildObjective.FORBIDDEN) {
                possible.add(part);
                costs.add(each);
            }
        }
        List<Integer> order = new ArrayList<>();
        for (int v = 0; v < possible.size(); v++) {
            order.add(v);
        }
        order.sort(Comparator.comparing(costs::get));
        values[i] = new Part[order.size()];
        cost[i] = new long[order.size()];
        for (int v = 0; v < order.size(); v++) {
            values[i][v] = possible.get(order.get(v));
            cost[i][v] = costs.get(order.get(v));
        }
    }

    /** What a part costs in a place whatever else is chosen; FORBIDDEN where a limit of its own is broken. */
    private long alone(MountingPlace place, Part part) {
        for (Check check : FitChecks.all()) {
            if (check.places().size() == 1 && check.places().get(0) == place && !allowed(check, new Part[] {part})) {
                return BuildObjective.FORBIDDEN;
            }
        }
        long loss = aims.of(place, part);
        return loss >= BuildObjective.FORBIDDEN ? BuildObjective.FORBIDDEN : loss * LOSS + (place.host() == null ? swap(place, part, null) : 0);
    }

    /**
     * What the mass of a part costs. One that is not weighed, or is new, counts as heavy as any that could stand there, unless it stands there
     * now: so neither is put on for its lightness.
     */
    private long mass(MountingPlace place, Part part, List<Part> parts) {
        if (part == null || PROVEN.contains(place)) {
            return 0;
        }
        long grams = grams(part);
        boolean there = MountingEffort.isThere(part, place, bike);
        if (there ? grams == 0 : grams == 0 || isNew(part)) {
            for (Part other : parts) {
                long theirs = other == null ? 0 : grams(other);
                grams = theirs == 0 ? grams : grams == 0 ? theirs : there ? Math.min(grams, theirs) : Math.max(grams, theirs);
            }
        }
        return grams * aims.perKilogram() * GRAM_SECOND;
    }

    private static long grams(Part part) {
        return part.has(PartDetail.MASS) ? Math.round(part.number(PartDetail.MASS) * 1000) : 0;
    }

    /** Whether a part is known to be hardly ridden. */
    static boolean isNew(Part part) {
        return part.has(PartDetail.HOURS_USED) && part.number(PartDetail.HOURS_USED) < NEW;
    }

    /** What a swap costs; taking a part from another bike is a swap more. */
    private long swap(MountingPlace place, Part part, Part host) {
        if (part == null) {
            Part off = MountingEffort.stands(workshop, place, host, bike);
            return off == null ? 0 : SWAP + Math.round(work.minutes(off.kind()) * 10);
        }
        if (!MountingEffort.isWork(part, place, host, bike)) {
            return 0;
        }
        boolean taken = part.bike() != null && part.bike() != bike && !(host != null && MountingEffort.isOn(part, host));
        boolean otherEnd = part.place() != null && part.place() != place;
        return (taken ? 2 : 1) * SWAP + Math.round(work.minutes(part.kind()) * 10) + (otherEnd ? OTHER_END : 0);
    }

    private boolean allowed(Check check, Part[] parts) {
        return allowed(bike, load, check, parts);
    }

    /** Whether a check lets parts stand in its places: unknown only where all of them do so now. */
    static boolean allowed(Part bike, BuildLoad load, Check check, Part[] parts) {
        boolean stands = true;
        for (int i = 0; i < parts.length; i++) {
            if (parts[i] == null && check.places().get(i) != check.optional()) {
                return true;
            }
            stands &= parts[i] == null || MountingEffort.isThere(parts[i], check.places().get(i), bike);
        }
        FitResult fit = check.question().ask(bike, load, parts);
        return fit.fits() || stands && fit.result() == FitResult.Result.UNKNOWN;
    }

    private void tables() {
        for (int i = 0; i < places.length; i++) {
            wideOf.add(new ArrayList<>());
        }
        for (Check check : FitChecks.all()) {
            int[] at = indices(check.places());
            if (at != null && at.length == 2 && check.optional() == null) {
                forbid(at[0], at[1], check);
            } else if (at != null && at.length > 1) {
                Wide wide = new Wide(at, check, new byte[values[at[0]].length][values[at[1]].length][values[at[2]].length]);
                for (int each : at) {
                    wideOf.get(each).add(wide);
                }
            } else if (at == null && check.optional() != null) {
                withoutOptional(check);
            }
        }
        for (int i = 0; i < places.length; i++) {
            carried(i);
            for (int j = 0; j < i; j++) {
                different(i, j);
            }
        }
        gears();
        power();
        pair();
    }

    /** A check whose optional place has no candidates joins the others alone. */
    private void withoutOptional(Check check) {
        List<MountingPlace> rest = new ArrayList<>(check.places());
        rest.remove(check.optional());
        int[] at = indices(rest);
        if (at != null && at.length == 2) {
            Check less = new Check(check.rule(), rest, null, (b, l, p) -> check.question().ask(b, l, new Part[] {p[0], p[1], null}));
            forbid(at[0], at[1], less);
        }
    }

    /** The variables of places; null where one of them has none. */
    private int[] indices(List<MountingPlace> wanted) {
        int[] out = new int[wanted.size()];
        for (int i = 0; i < out.length; i++) {
            out[i] = Arrays.asList(places).indexOf(wanted.get(i));
            if (out[i] < 0) {
                return null;
            }
        }
        return out;
    }

    private long[][] table(int i, int j) {
        if (pair[i][j] == null) {
            pair[i][j] = new long[values[i].length][values[j].length];
            pair[j][i] = new long[values[j].length][values[i].length];
        }
        return pair[i][j];
    }

    private void add(int i, int j, int v, int w, long more) {
        long sum = Math.min(BuildObjective.FORBIDDEN, table(i, j)[v][w] + more);
        pair[i][j][v][w] = sum;
        pair[j][i][w][v] = sum;
    }

    private void forbid(int i, int j, Check check) {
        for (int v = 0; v < values[i].length; v++) {
            for (int w = 0; w < values[j].length; w++) {
                if (!allowed(check, new Part[] {values[i][v], values[j][w]})) {
                    add(i, j, v, w, BuildObjective.FORBIDDEN);
                }
            }
        }
    }

    /** Work on what another part carries hangs on which one that is. */
    private void carried(int i) {
        int host = places[i].host() == null ? -1 : Arrays.asList(places).indexOf(places[i].host());
        for (int v = 0; v < values[i].length; v++) {
            if (places[i].host() != null && host < 0) {
                cost[i][v] += swap(places[i], values[i][v], null);
            } else if (host >= 0) {
                for (int w = 0; w < values[host].length; w++) {
                    add(i, host, v, w, swap(places[i], values[i][v], values[host][w]));
                }
            }
        }
    }

    private void different(int i, int j) {
        if (places[i].kind() == places[j].kind()) {
            for (int v = 0; v < values[i].length; v++) {
                for (int w = 0; w < values[j].length; w++) {
                    if (values[i][v] != null && values[i][v] == values[j][w]) {
                        add(i, j, v, w, BuildObjective.FORBIDDEN);
                    }
                }
            }
        }
    }

    private void gears() {
        int rings = Arrays.asList(places).indexOf(MountingPlace.CHAINRING);
        int cassette = Arrays.asList(places).indexOf(MountingPlace.CASSETTE);
        for (int v = 0; rings >= 0 && cassette >= 0 && v < values[rings].length; v++) {
            for (int w = 0; w < values[cassette].length; w++) {
                if (values[rings][v] != null && values[cassette][w] != null) {
                    add(rings, cassette, v, w, LOSS * aims.ofGears(values[rings][v], values[cassette][w]));
                }
            }
        }
    }

    /** Of a pair the one that is written first goes in front, where nothing else tells them apart. */
    private void pair() {
        int front = Arrays.asList(places).indexOf(MountingPlace.FRONT_TYRE);
        int rear = Arrays.asList(places).indexOf(MountingPlace.REAR_TYRE);
        boolean wanted = front >= 0 && rear >= 0 && aims.pairOfTyres();
        for (int v = 0; wanted && v < values[front].length; v++) {
            for (int w = 0; w < values[rear].length; w++) {
                if (values[front][v] != null && values[rear][w] != null) {
                    boolean written = values[front][v].line() <= values[rear][w].line();
                    add(front, rear, v, w, !isPair(values[front][v], values[rear][w]) ? NO_PAIR : written ? 0 : 1);
                }
            }
        }
    }

    /** Whether two tyres are of one kind, as far as is written of them. */
    static boolean isPair(Part front, Part rear) {
        return Objects.equals(front.number(PartDetail.WIDTH), rear.number(PartDetail.WIDTH))
                && Objects.equals(front.word(PartDetail.CASING), rear.word(PartDetail.CASING))
                && Objects.equals(front.word(PartDetail.TREAD), rear.word(PartDetail.TREAD));
    }

    /** A power meter in the crank or the pedals, or on the crank. */
    private void power() {
        int crank = Arrays.asList(places).indexOf(MountingPlace.CRANK);
        int pedals = Arrays.asList(places).indexOf(MountingPlace.PEDALS);
        for (int v = 0; crank >= 0 && v < values[crank].length; v++) {
            if (pedals < 0) {
                cost[crank][v] += LOSS * aims.ofPower(values[crank][v], null, MountingEffort.meterOn(workshop, values[crank][v]));
            }
            for (int w = 0; pedals >= 0 && w < values[pedals].length; w++) {
                add(crank, pedals, v, w, LOSS * aims.ofPower(values[crank][v], values[pedals][w],
                        MountingEffort.meterOn(workshop, values[crank][v])));
            }
        }
    }

    /** The place above in the tree on which the bound is counted, -1 for a root; always one that shares a table with it. */
    private int parent(int i) {
        MountingPlace above = switch (places[i]) {
            case FRONT_WHEEL, STEM -> MountingPlace.FORK;
            case REAR_TYRE, REAR_ROTOR, CASSETTE -> MountingPlace.REAR_WHEEL;
            case FRONT_TYRE, FRONT_ROTOR -> MountingPlace.FRONT_WHEEL;
            case REAR_INSERT -> MountingPlace.REAR_TYRE;
            case FRONT_INSERT -> MountingPlace.FRONT_TYRE;
            case CHAINRING, DERAILLEUR, CHAIN -> MountingPlace.CASSETTE;
            case SHIFTER -> MountingPlace.DERAILLEUR;
            case CRANK -> MountingPlace.CHAINRING;
            case PEDALS -> MountingPlace.CRANK;
            case REAR_PADS -> MountingPlace.REAR_ROTOR;
            case FRONT_PADS -> MountingPlace.FRONT_ROTOR;
            case BAR -> MountingPlace.STEM;
            case EXTENSIONS -> MountingPlace.BAR;
            case SADDLE -> MountingPlace.SEATPOST;
            default -> null;
        };
        int at = above == null ? -1 : Arrays.asList(places).indexOf(above);
        return at >= 0 && pair[at][i] != null ? at : -1;
    }

    /** The cheapest build, null where none satisfies every limit; its cost is {@link #cost()}. */
    Map<MountingPlace, Part> solve() {
        for (Check check : FitChecks.all()) {
            FitResult frame = check.places().isEmpty() ? check.question().ask(bike, load, new Part[0]) : FitResult.FITS;
            if (!frame.fits() && frame.result() != FitResult.Result.UNKNOWN) {
                return null;
            }
        }
        long ofBike = aims.ofBike(bike);
        if (ofBike >= BuildObjective.FORBIDDEN) {
            return null;
        }
        int[] all = new int[places.length];
        for (int i = 0; i < all.length; i++) {
            all[i] = i;
        }
        int[] found = new int[places.length];
        long least = apart(all, cost, BuildObjective.FORBIDDEN, found);
        if (least >= BuildObjective.FORBIDDEN) {
            return null;
        }
        best = ofBike * LOSS + least;
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
        Solved known = solved.get(around);
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
        solved.put(around, new Solved(exact ? least : under, exact, chosenValues));
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

    /** Asks a check of three places where one of them at most is open. False where nothing is left. */
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
            return allowed(wide, at);
        }
        int i = wide.places()[open];
        if (out[i] == before[i]) {
            out[i] = before[i].clone();
        }
        for (int w = 0; w < out[i].length; w++) {
            at[open] = w;
            if (out[i][w] < BuildObjective.FORBIDDEN && !allowed(wide, at)) {
                out[i][w] = BuildObjective.FORBIDDEN;
            }
        }
        return min(out[i]) < BuildObjective.FORBIDDEN;
    }

    private boolean allowed(Wide wide, int[] at) {
        byte[] answers = wide.answers()[at[0]][at[1]];
        if (answers[at[2]] == 0) {
            Part[] parts = new Part[3];
            for (int k = 0; k < 3; k++) {
                parts[k] = values[wide.places()[k]][at[k]];
            }
            answers[at[2]] = (byte) (allowed(wide.check(), parts) ? 1 : 2);
        }
        return answers[at[2]] == 1;
    }
}
