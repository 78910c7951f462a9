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
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.BiPredicate;
import java.util.function.ToLongBiFunction;
import java.util.function.ToLongFunction;

/**
 * The places of one bike as variables of a search, with what could stand in each: what every part costs there, which two go together and
 * at what cost, and which checks join three.
 *
 * <p>A cost is the loss against the decisions, the time that mass costs on the course and the work of swaps, all in notches: 10 s are one,
 * and so is a quarter of an hour of work, a swap never being less than one. What has to be taken off something else, and goes back, counts
 * twice. A pair of tyres is preferred to two of different kinds. A combination that is unknown is taken only where it stands so now on this
 * bike; it never counts as fitting for a swap.
 */
final class BuildVariables {

    /** A notch, so fine that a gram, a minute and the order written count (computing). */
    static final long LOSS = 1_000_000L;
    /** So many minutes of work are worth doing for a notch, and no swap for less than one (judgement, no source). */
    static final int NOTCH_MINUTES = 15;
    /** Half a notch, so that no pair is ever a reason for a swap (computing). */
    static final long NO_PAIR = LOSS / 2;
    /**
     * Pads of two compounds, front and rear: more than the work of one swap, so that they are never chosen so for less than a part taken from another
     * bike or a decision (judgement, no source).
     */
    static final long TWO_COMPOUNDS = LOSS * 3 / 2;
    /**
     * A tyre that the general table does not list for its rim: more than the work of a tyre that has to go back to another bike, so that a
     * combination inside the table goes on where there is one and little else hangs on it (judgement, no source).
     */
    static final long OUTSIDE_TABLE = LOSS * 3;
    /** A tyre or rotor that changes ends, as two minutes of work: it may be marked with a direction (judgement). */
    static final long OTHER_END = LOSS * 2 / NOTCH_MINUTES;
    /** What 1 g costs where 1 kg costs 1 s (computing). */
    static final long GRAM_SECOND = LOSS / BuildObjective.NOTCH_SECONDS / 1000;
    /** Parts ridden less than this are new, s (common practice, no source). */
    static final double NEW = 5 * 3600;

    /** What a rider sits, steps and steers by, a chain that has worn in with its cassette, and what comes along with others: never for lightness alone. */
    private static final Set<MountingPlace> PROVEN = EnumSet.of(MountingPlace.SADDLE, MountingPlace.SPACERS, MountingPlace.STEM, MountingPlace.BAR, MountingPlace.EXTENSIONS, MountingPlace.PEDALS,
            MountingPlace.CRANK, MountingPlace.CHAIN, MountingPlace.HEADSET, MountingPlace.CROWN_RACE, MountingPlace.BOTTOM_BRACKET, MountingPlace.FRONT_CALIPER, MountingPlace.REAR_CALIPER,
            MountingPlace.FRONT_ADAPTER, MountingPlace.REAR_ADAPTER, MountingPlace.LOCKOUT_REMOTE, MountingPlace.DROPPER_REMOTE, MountingPlace.BATTERY, MountingPlace.METER);

    /** The order in which places are filled: what much hangs on first, each after the one above it in the tree. */
    private static final List<MountingPlace> ORDER = List.of(MountingPlace.FORK, MountingPlace.HEADSET, MountingPlace.CROWN_RACE, MountingPlace.REAR_WHEEL, MountingPlace.FRONT_WHEEL, MountingPlace.REAR_TYRE, MountingPlace.FRONT_TYRE,
            MountingPlace.CASSETTE, MountingPlace.CHAINRING, MountingPlace.DERAILLEUR, MountingPlace.SHIFTER, MountingPlace.BATTERY, MountingPlace.CHAIN, MountingPlace.CRANK, MountingPlace.BOTTOM_BRACKET, MountingPlace.PEDALS, MountingPlace.REAR_ROTOR,
            MountingPlace.FRONT_ROTOR, MountingPlace.REAR_ADAPTER, MountingPlace.FRONT_ADAPTER, MountingPlace.REAR_CALIPER, MountingPlace.FRONT_CALIPER, MountingPlace.REAR_PADS, MountingPlace.FRONT_PADS, MountingPlace.REAR_INSERT, MountingPlace.FRONT_INSERT, MountingPlace.STEM, MountingPlace.SPACERS, MountingPlace.BAR,
            MountingPlace.EXTENSIONS, MountingPlace.SEATPOST, MountingPlace.DROPPER_REMOTE, MountingPlace.SADDLE, MountingPlace.SHOCK, MountingPlace.LOCKOUT_REMOTE, MountingPlace.FRONT_SEALANT, MountingPlace.REAR_SEALANT, MountingPlace.METER,
            MountingPlace.BAG);

    /** Of a combination whose cost was not worked out yet (computing). */
    private static final long UNASKED = -1;

    private final Part bike;
    private final BuildLoad load;
    private final BuildObjective aims;
    private final PartCosts costs;
    /** The checks of places that something could stand in. */
    private final List<Check> checks = new ArrayList<>();

    /** The places, in the order in which they are filled. */
    final MountingPlace[] places;
    /** For each place the parts that could stand there, cheapest first; null where it may be left empty. */
    final Part[][] values;
    /** What each of them costs by itself. */
    final long[][] cost;
    /** For each pair of places with a check or a shared cost: [i][j][value of i][value of j], FORBIDDEN where they do not go together. */
    final long[][][][] pair;
    /** For each place the checks and the costs of three places that it is one of. */
    final List<List<Wide>> wideOf = new ArrayList<>();
    /** For each place the one above it in the tree on which the bound is counted, -1 for a root. */
    final int[] parent;
    /** Whether two places share a table or a check. */
    final boolean[][] near;

    /**
     * What three places have to do with one another.
     *
     * @param check what they must pass; null where they only cost something together
     * @param cost  what their parts cost together; null of a check
     * @param known what combinations add, {@link #UNASKED} where that was not worked out yet
     */
    record Wide(int[] places, Check check, ToLongFunction<Part[]> cost, long[][][] known) {
    }

    BuildVariables(Workshop workshop, Part bike, BuildLoad load, BuildObjective aims) {
        this.bike = bike;
        this.load = load;
        this.aims = aims;
        this.costs = new PartCosts(workshop, bike, aims);
        Map<MountingPlace, List<Part>> open = candidates(workshop, bike);
        List<MountingPlace> inOrder = new ArrayList<>(open.keySet());
        inOrder.sort(Comparator.comparing(ORDER::indexOf));
        places = inOrder.toArray(new MountingPlace[0]);
        for (Check check : FitChecks.all()) {
            checks.add(check.optional() == null || open.containsKey(check.optional()) ? check : check.withoutOptional());
        }
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
            boolean open = searched(place) && (!place.seldomListed() || workshop.needs(bike, place));
            if (open) {
                for (Part part : able.getOrDefault(place, List.of())) {
                    if (mayServe(part, place, bike, workshop.needs(bike, place))) {
                        parts.add(part);
                    }
                }
                if (!workshop.needs(bike, place)) {
                    parts.add(null);
                }
            }
            if (parts.size() > 1 || parts.size() == 1 && parts.get(0) != null || open && parts.isEmpty()) {
                out.put(place, parts);
            }
        }
        return out;
    }

    /** Sealant goes where its tyre goes; a bag is packed, not built; lights hang on nothing else. */
    static boolean searched(MountingPlace place) {
        return place != MountingPlace.FRONT_SEALANT && place != MountingPlace.REAR_SEALANT && place != MountingPlace.BAG && place != MountingPlace.LIGHTS;
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
        List<Long> sums = new ArrayList<>();
        for (Part part : parts) {
            long each = alone(places[i], part);
            each += each < BuildObjective.FORBIDDEN ? costs.mass(places[i], part, parts) : 0;
            if (each < BuildObjective.FORBIDDEN) {
                possible.add(part);
                sums.add(each);
            }
        }
        List<Integer> order = new ArrayList<>();
        for (int v = 0; v < possible.size(); v++) {
            order.add(v);
        }
        order.sort(Comparator.comparing(sums::get));
        values[i] = new Part[order.size()];
        cost[i] = new long[order.size()];
        for (int v = 0; v < order.size(); v++) {
            values[i][v] = possible.get(order.get(v));
            cost[i][v] = sums.get(order.get(v));
        }
    }

    /** What a part costs in a place whatever else is chosen; FORBIDDEN where a limit of its own is broken. */
    private long alone(MountingPlace place, Part part) {
        for (Check check : checks) {
            if (check.places().size() == 1 && check.places().get(0) == place && !allowed(check, new Part[] {part})) {
                return BuildObjective.FORBIDDEN;
            }
        }
        long loss = aims.of(place, part);
        return loss >= BuildObjective.FORBIDDEN ? BuildObjective.FORBIDDEN : loss * LOSS + (place.host() == null ? costs.work(place, part, null) : 0);
    }

    /** Grams that count for a part in a place of a bike; 0 where nothing goes on for its lightness. @param parts what could stand there */
    static long counted(Part bike, MountingPlace place, Part part, List<Part> parts) {
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
        return grams;
    }

    static long grams(Part part) {
        return part.has(PartDetail.MASS) ? Math.round(part.number(PartDetail.MASS) * 1000) : 0;
    }

    /** Whether a part is known to be hardly ridden. */
    static boolean isNew(Part part) {
        return part.has(PartDetail.HOURS_USED) && part.number(PartDetail.HOURS_USED) < NEW;
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
        return fit.fits() || stands && fit.result() == FitResult.FitVerdict.UNKNOWN;
    }

    private void tables() {
        for (int i = 0; i < places.length; i++) {
            wideOf.add(new ArrayList<>());
        }
        for (Check check : checks) {
            int[] at = indices(check.places());
            if (at != null && at.length == 2) {
                forbid(at[0], at[1], check);
            } else if (at != null && at.length > 1) {
                join(new Wide(at, check, null, unasked(at)));
            }
        }
        for (int i = 0; i < places.length; i++) {
            carried(i);
            for (int j = 0; j < i; j++) {
                different(i, j);
            }
        }
        together(MountingPlace.CHAINRING, MountingPlace.CASSETTE, BuildVariables::both, costs::gears);
        power();
        together(MountingPlace.FRONT_TYRE, MountingPlace.REAR_TYRE, BuildVariables::both, costs::tyres);
        together(MountingPlace.FRONT_PADS, MountingPlace.REAR_PADS, BuildVariables::ofTwoCompounds, costs::pads);
        together(MountingPlace.FRONT_TYRE, MountingPlace.FRONT_WHEEL, BuildVariables::both, costs::rim);
        together(MountingPlace.REAR_TYRE, MountingPlace.REAR_WHEEL, BuildVariables::both, costs::rim);
    }

    private void join(Wide wide) {
        for (int each : wide.places()) {
            wideOf.get(each).add(wide);
        }
    }

    private long[][][] unasked(int[] at) {
        long[][][] out = new long[values[at[0]].length][values[at[1]].length][values[at[2]].length];
        for (long[][] rows : out) {
            for (long[] each : rows) {
                Arrays.fill(each, UNASKED);
            }
        }
        return out;
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
        moved(i);
        for (int v = 0; v < values[i].length; v++) {
            if (places[i].host() != null && host < 0) {
                cost[i][v] += costs.work(places[i], values[i][v], null);
            } else if (host >= 0) {
                for (int w = 0; w < values[host].length; w++) {
                    add(i, host, v, w, costs.work(places[i], values[i][v], values[host][w]));
                }
            }
        }
    }

    /** What stands on a part that gives way is moved over to the one that is chosen. */
    private void moved(int i) {
        int carrier = Arrays.asList(places).indexOf(PartCosts.mover(places[i]));
        for (int v = 0; carrier >= 0 && v < values[i].length; v++) {
            for (int w = 0; w < values[carrier].length; w++) {
                long more = costs.move(places[i], values[i][v], values[carrier][w]);
                if (more > 0) {
                    add(i, carrier, v, w, more);
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

    /**
     * What parts of two places cost together; nothing where one of the places is not open.
     *
     * @param which whether two parts have a cost together, which may be 0: a table of zeros still joins two places in the tree of the bound
     */
    private void together(MountingPlace one, MountingPlace other, BiPredicate<Part, Part> which, ToLongBiFunction<Part, Part> cost) {
        int i = Arrays.asList(places).indexOf(one);
        int j = Arrays.asList(places).indexOf(other);
        for (int v = 0; i >= 0 && j >= 0 && v < values[i].length; v++) {
            for (int w = 0; w < values[j].length; w++) {
                if (which.test(values[i][v], values[j][w])) {
                    add(i, j, v, w, cost.applyAsLong(values[i][v], values[j][w]));
                }
            }
        }
    }

    private static boolean both(Part one, Part other) {
        return one != null && other != null;
    }

    /** Whether pads are known to be of two compounds. */
    static boolean ofTwoCompounds(Part front, Part rear) {
        String one = front == null ? null : front.word(PartDetail.COMPOUND);
        String other = rear == null ? null : rear.word(PartDetail.COMPOUND);
        return one != null && other != null && !one.equals(other);
    }

    /** Whether two tyres are of one kind, as far as is written of them. */
    static boolean isPair(Part front, Part rear) {
        return Objects.equals(front.number(PartDetail.WIDTH), rear.number(PartDetail.WIDTH))
                && Objects.equals(front.word(PartDetail.CASING), rear.word(PartDetail.CASING))
                && Objects.equals(front.word(PartDetail.TREAD), rear.word(PartDetail.TREAD));
    }

    /** A power meter in the crank or the pedals, or on the crank. */
    private void power() {
        List<MountingPlace> all = Arrays.asList(places);
        int[] three = indices(List.of(MountingPlace.CRANK, MountingPlace.PEDALS, MountingPlace.METER));
        int crank = all.indexOf(MountingPlace.CRANK);
        boolean alone = !all.contains(MountingPlace.PEDALS) && !all.contains(MountingPlace.METER);
        for (int v = 0; alone && crank >= 0 && v < values[crank].length; v++) {
            cost[crank][v] += costs.power(values[crank][v], null, null);
        }
        if (three != null) {
            join(new Wide(three, null, parts -> costs.power(parts[0], parts[1], parts[2]), unasked(three)));
        } else {
            together(MountingPlace.CRANK, MountingPlace.PEDALS, (one, other) -> true, (one, other) -> costs.power(one, other, null));
            together(MountingPlace.CRANK, MountingPlace.METER, (one, other) -> true, (one, other) -> costs.power(one, null, other));
        }
    }

    /** The place above in the tree on which the bound is counted, -1 for a root; always one that shares a table with it. */
    private int parent(int i) {
        MountingPlace above = switch (places[i]) {
            case FRONT_WHEEL, STEM, HEADSET, CROWN_RACE, FRONT_ADAPTER, FRONT_CALIPER, LOCKOUT_REMOTE -> MountingPlace.FORK;
            case REAR_TYRE, REAR_ROTOR, CASSETTE -> MountingPlace.REAR_WHEEL;
            case FRONT_TYRE, FRONT_ROTOR -> MountingPlace.FRONT_WHEEL;
            case REAR_INSERT -> MountingPlace.REAR_TYRE;
            case FRONT_INSERT -> MountingPlace.FRONT_TYRE;
            case CHAINRING, DERAILLEUR, CHAIN -> MountingPlace.CASSETTE;
            case SHIFTER -> MountingPlace.DERAILLEUR;
            case CRANK -> MountingPlace.CHAINRING;
            case PEDALS, METER -> MountingPlace.CRANK;
            case REAR_ADAPTER, REAR_PADS -> MountingPlace.REAR_ROTOR;
            case REAR_CALIPER -> MountingPlace.REAR_ADAPTER;
            case DROPPER_REMOTE -> MountingPlace.SEATPOST;
            case BATTERY -> MountingPlace.DERAILLEUR;
            case BOTTOM_BRACKET -> MountingPlace.CRANK;
            case FRONT_PADS -> MountingPlace.FRONT_ROTOR;
            case BAR -> MountingPlace.STEM;
            case EXTENSIONS -> MountingPlace.BAR;
            case SADDLE -> MountingPlace.SEATPOST;
            default -> null;
        };
        int at = above == null ? -1 : Arrays.asList(places).indexOf(above);
        return at >= 0 && pair[at][i] != null ? at : -1;
    }

    /** What the bike loses by itself; FORBIDDEN where a limit of its own is broken. */
    long ofBike() {
        for (Check check : FitChecks.all()) {
            FitResult frame = check.places().isEmpty() ? check.question().ask(bike, load, new Part[0]) : FitResult.FITS;
            if (!frame.fits() && frame.result() != FitResult.FitVerdict.UNKNOWN) {
                return BuildObjective.FORBIDDEN;
            }
        }
        return aims.ofBike(bike);
    }

    /** What the values chosen in three places cost together; FORBIDDEN where a check of theirs does not let them stand. */
    long of(Wide wide, int[] at) {
        long[] known = wide.known()[at[0]][at[1]];
        if (known[at[2]] == UNASKED) {
            Part[] parts = new Part[3];
            for (int k = 0; k < 3; k++) {
                parts[k] = values[wide.places()[k]][at[k]];
            }
            known[at[2]] = wide.check() == null ? wide.cost().applyAsLong(parts) : allowed(wide.check(), parts) ? 0 : BuildObjective.FORBIDDEN;
        }
        return known[at[2]];
    }
}
