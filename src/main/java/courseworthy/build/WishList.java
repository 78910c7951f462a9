package courseworthy.build;

import courseworthy.build.Build.FittedPart;
import courseworthy.build.Build.UnmetDecision;
import courseworthy.build.SeasonPlan.Wish;
import courseworthy.call.Call;
import courseworthy.claim.Claim;
import courseworthy.claim.Rank;
import courseworthy.decision.Decision;
import courseworthy.ride.Range;
import courseworthy.workshop.MountingPlace;
import courseworthy.workshop.Part;
import courseworthy.workshop.PartDetail;
import courseworthy.workshop.Workshop;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The wish list of one workshop over a season: each part, and each set that is bought together, is tried as if run in at every start,
 * against the best build without it.
 */
final class WishList {

    /** s (computing). */
    private static final double MINUTE = 60;

    private final Workshop workshop;
    private final Double minuteWorth;
    private final List<WishTrial> tried = new ArrayList<>();

    /** What came of one set so far. */
    private static final class WishTrial {
        private final List<Part> parts;
        private final List<String> rides = new ArrayList<>();
        private final Set<String> required = new LinkedHashSet<>();
        private final Set<String> serves = new LinkedHashSet<>();
        private final Set<MountingPlace> places = EnumSet.noneOf(MountingPlace.class);
        private Range returned = Range.exact(0);
        private long notches;

        private WishTrial(List<Part> parts) {
            this.parts = parts;
        }
    }

    /** @param minuteWorth what a minute at an event is worth, in money; null where that is not said */
    WishList(Workshop workshop, Double minuteWorth) {
        this.workshop = workshop;
        this.minuteWorth = minuteWorth;
        for (List<Part> set : WishSets.of(workshop)) {
            tried.add(new WishTrial(set));
        }
    }

    /**
     * Tries every wish at a start.
     *
     * @param from the workshop from which the start's build was made
     * @param best that build, the best without the wish
     */
    void ride(Outing outing, Workshop from, Build best) {
        for (WishTrial each : tried) {
            Set<String> names = names(each.parts);
            Workshop bought = from.owning(names);
            boolean there = names.stream().allMatch(name -> bought.find(name) != null);
            if (there) {
                ride(each, outing, bought, best);
            }
        }
    }

    private static Set<String> names(List<Part> parts) {
        Set<String> out = new LinkedHashSet<>();
        parts.forEach(part -> out.add(part.name()));
        return out;
    }

    private static void ride(WishTrial wish, Outing outing, Workshop bought, Build best) {
        Build build = BuildFinder.parts(outing.recommended(), bought, outing.bike());
        Set<String> names = names(wish.parts);
        if (!OutingBuild.used(build).containsAll(names)) {
            return;
        }
        wish.rides.add(outing.rider() + ", " + outing.event());
        Set<MountingPlace> places = places(build, names);
        wish.places.addAll(places);
        Range returned = BuildFinder.returned(outing.call(), outing.worths(), bought, best, build, places);
        wish.returned = wish.returned == null || returned == null ? null : wish.returned.plus(returned);
        wish.notches += OutingBuild.loss(best) - OutingBuild.loss(build);
        met(wish, outing.call(), best, build);
    }

    /** Where the parts of a wish are. */
    private static Set<MountingPlace> places(Build build, Set<String> names) {
        Set<MountingPlace> out = EnumSet.noneOf(MountingPlace.class);
        for (FittedPart each : build.parts()) {
            if (names.contains(each.part().name())) {
                out.add(each.place());
            }
        }
        return out;
    }

    /** Of several lights that are missing one may be met: what is not met is counted. */
    private static void met(WishTrial wish, Call call, Build best, Build with) {
        Map<String, Integer> open = new HashMap<>();
        with.notMet().forEach(each -> open.merge(each.topic(), 1, Integer::sum));
        for (UnmetDecision each : best.notMet()) {
            int left = open.merge(each.topic(), -1, Integer::sum);
            if (left < 0) {
                (isRequired(call, each.topic()) ? wish.required : wish.serves).add(each.topic() + " " + each.wanted());
            }
        }
    }

    /** Whether a limit stands behind a decision: what the event, the law or safety requires, not what goes with another part. */
    private static boolean isRequired(Call call, String topic) {
        for (Decision decision : call.decisions()) {
            if (decision.topic().name().equals(topic)) {
                for (Claim claim : decision.taken()) {
                    if (claim.origin().rank() == Rank.LIMIT && !claim.origin().rule().startsWith("pairing/")) {
                        return true;
                    }
                }
            }
        }
        return false;
    }

    /** In the order of the file; sets after the parts, and only where they spare more than their parts do one by one. */
    List<Wish> all() {
        List<Wish> out = new ArrayList<>();
        for (WishTrial each : tried) {
            if (each.parts.size() == 1 || each.notches > alone(each.parts)) {
                out.add(wish(each));
            }
        }
        return out;
    }

    /** The most that smaller sets of the same parts spare, no part and no place being in two of them. */
    private long alone(List<Part> parts) {
        List<WishTrial> smaller = new ArrayList<>();
        for (WishTrial each : tried) {
            if (each.parts.size() < parts.size() && parts.containsAll(each.parts) && each.notches > 0) {
                smaller.add(each);
            }
        }
        return most(smaller, 0, new LinkedHashSet<>());
    }

    /** @param taken parts and places that are in one of those chosen */
    private static long most(List<WishTrial> sets, int from, Set<Object> taken) {
        if (from == sets.size()) {
            return 0;
        }
        long without = most(sets, from + 1, taken);
        WishTrial set = sets.get(from);
        if (!Collections.disjoint(taken, set.parts) || !Collections.disjoint(taken, set.places)) {
            return without;
        }
        Set<Object> with = new LinkedHashSet<>(taken);
        with.addAll(set.parts);
        with.addAll(set.places);
        return Math.max(without, set.notches + most(sets, from + 1, with));
    }

    private Wish wish(WishTrial wish) {
        Double price = price(wish.parts);
        Range returned = wish.rides.isEmpty() ? Range.exact(0) : wish.returned;
        Range perMoney = price == null || price <= 0 || returned == null ? null : returned.times(1 / price);
        return new Wish(wish.parts, price, workshop.name(), wish.rides, returned, perMoney, repaid(wish, price), List.copyOf(wish.required),
                List.copyOf(wish.serves), wish.notches);
    }

    private static Double price(List<Part> parts) {
        double sum = 0;
        for (Part part : parts) {
            if (!part.has(PartDetail.PRICE)) {
                return null;
            }
            sum += part.number(PartDetail.PRICE);
        }
        return sum;
    }

    /** Its price over what its minutes are worth at one event. */
    private Range repaid(WishTrial wish, Double price) {
        if (price == null || minuteWorth == null || wish.rides.isEmpty() || wish.returned == null || wish.returned.low() <= 0) {
            return null;
        }
        double each = minuteWorth / wish.rides.size() / MINUTE;
        return new Range(price / (wish.returned.high() * each), price / (wish.returned.mid() * each), price / (wish.returned.low() * each));
    }
}
