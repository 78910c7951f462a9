package courseworthy.build;

import courseworthy.build.Build.Swap;
import courseworthy.build.SeasonPlan.ClashChoice;
import courseworthy.build.SeasonPlan.PartClash;
import courseworthy.build.SeasonPlan.UnmetTopic;
import courseworthy.fit.FitRules;
import courseworthy.ride.Range;
import courseworthy.workshop.MountingPlace;
import courseworthy.workshop.Part;
import courseworthy.workshop.PartDetail;
import courseworthy.workshop.PartKind;
import courseworthy.workshop.Workshop;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

/**
 * Who gets what where several want the same bike or part at one time: riders of a lower priority choose after those of a higher one, and among
 * equals every order is tried.
 */
final class PartSharing {

    /** So many who want the same on one day are tried in every order (computing); more, in the order written. */
    private static final int EVERY_ORDER = 3;

    private final Workshop now;
    private final FitRules rules;
    private final Function<Outing, WorkDeadline> deadlines;

    /** @param now the workshop before anyone takes anything */
    PartSharing(Workshop now, FitRules rules, Function<Outing, WorkDeadline> deadlines) {
        this.now = now;
        this.rules = rules;
        this.deadlines = deadlines;
    }

    /** Builds, and what could not be had by all who want it. @param clash null for nothing */
    record SharingResult(List<OutingBuild> made, PartClash clash) {
    }

    /** The builds of all who start at one time. */
    SharingResult of(List<Outing> outings) {
        List<OutingBuild> made = new ArrayList<>();
        for (Outing outing : outings) {
            made.add(made(outing, now));
        }
        Set<String> shared = shared(made);
        return shared.isEmpty() ? new SharingResult(made, null) : share(made, shared);
    }

    private OutingBuild made(Outing outing, Workshop from) {
        Workshop open = outing.open(from);
        return new OutingBuild(outing, open, BuildFinder.of(outing.recommended(), open, deadlines.apply(outing), rules, outing.bike()));
    }

    /** What is in more than one build, bikes first and then in the order of places. */
    private static Set<String> shared(List<OutingBuild> made) {
        Set<String> seen = new LinkedHashSet<>();
        Set<String> out = new LinkedHashSet<>();
        for (OutingBuild each : made) {
            for (String name : each.used()) {
                if (!seen.add(name)) {
                    out.add(name);
                }
            }
        }
        return out;
    }

    /** Tries who chooses first; the order by which all together lose least is scheduled, of equals the one written. */
    private SharingResult share(List<OutingBuild> free, Set<String> shared) {
        List<List<OutingBuild>> tried = new ArrayList<>();
        Map<List<Integer>, OutingBuild> known = new HashMap<>();
        List<Outing> written = free.stream().map(OutingBuild::outing).toList();
        for (int i = 0; i < free.size(); i++) {
            known.put(List.of(i), free.get(i));
        }
        for (List<Outing> order : orders(free)) {
            tried.add(inTurn(order, written, known));
        }
        int best = 0;
        for (int i = 1; i < tried.size(); i++) {
            best = loss(tried.get(i)) < loss(tried.get(best)) ? i : best;
        }
        List<ClashChoice> choices = new ArrayList<>();
        choices.add(choice(tried.get(best), free, now));
        for (int i = 0; i < tried.size(); i++) {
            ClashChoice choice = i == best ? null : choice(tried.get(i), free, now);
            if (choice != null && !alike(choices, choice)) {
                choices.add(choice);
            }
        }
        List<String> wanting = new ArrayList<>();
        for (OutingBuild each : free) {
            Set<String> of = each.used();
            of.retainAll(shared);
            if (!of.isEmpty()) {
                wanting.add(each.outing().rider() + " (" + each.build().bike() + ", " + each.outing().event() + ")");
            }
        }
        PartClash clash = new PartClash(free.get(0).outing().date(), apartFromTheirBike(shared), wanting, choices);
        List<OutingBuild> out = new ArrayList<>();
        for (OutingBuild each : tried.get(best)) {
            out.add(each.build().bike() == null ? each : new OutingBuild(each.outing(), each.from(), fromTheMorning(each.build(), each.outing())));
        }
        return new SharingResult(out, clash);
    }

    /** Where a whole bike is wanted twice, what is on it goes without saying. */
    private List<String> apartFromTheirBike(Set<String> names) {
        List<String> out = new ArrayList<>();
        for (String name : names) {
            Part part = now.find(name);
            if (part.kind() == PartKind.BIKE || part.bike() == null || !names.contains(part.bike().name())) {
                out.add(name);
            }
        }
        return out;
    }

    private static boolean alike(List<ClashChoice> choices, ClashChoice choice) {
        for (ClashChoice each : choices) {
            if (each.what().equals(choice.what()) && each.loses().equals(choice.loses())) {
                return true;
            }
        }
        return false;
    }

    private static long loss(List<OutingBuild> made) {
        long sum = 0;
        for (OutingBuild each : made) {
            sum += each.loss();
        }
        return sum;
    }

    /** Every order in which nobody comes before a rider of higher priority. */
    private static List<List<Outing>> orders(List<OutingBuild> made) {
        List<Outing> written = new ArrayList<>();
        made.forEach(each -> written.add(each.outing()));
        written.sort(Comparator.comparingInt(Outing::priority));
        List<List<Outing>> out = new ArrayList<>();
        if (written.size() > EVERY_ORDER) {
            out.add(written);
        } else {
            permute(written, new ArrayList<>(), out);
        }
        return out;
    }

    private static void permute(List<Outing> left, List<Outing> begun, List<List<Outing>> out) {
        if (left.isEmpty()) {
            out.add(List.copyOf(begun));
        }
        for (Outing each : left) {
            if (each.priority() == left.get(0).priority()) {
                List<Outing> rest = new ArrayList<>(left);
                rest.remove(each);
                begun.add(each);
                permute(rest, begun, out);
                begun.remove(begun.size() - 1);
            }
        }
    }

    /** Each builds from what those before left. What begins alike is made once. @param known builds by the places of those who chose, the last one's own */
    private List<OutingBuild> inTurn(List<Outing> order, List<Outing> written, Map<List<Integer>, OutingBuild> known) {
        List<OutingBuild> out = new ArrayList<>();
        Workshop left = now;
        List<Integer> first = new ArrayList<>();
        for (Outing outing : order) {
            first.add(place(outing, written));
            OutingBuild made = known.get(first);
            if (made == null) {
                made = made(outing, left);
                known.put(List.copyOf(first), made);
            }
            out.add(made);
            if (made.build().after() != null) {
                left = left.mounted(OutingBuild.moved(List.of(made)), OutingBuild.ends(List.of(made))).without(made.used());
            }
        }
        return out;
    }

    private static int place(Outing outing, List<Outing> written) {
        for (int i = 0; i < written.size(); i++) {
            if (written.get(i) == outing) {
                return i;
            }
        }
        throw new IllegalArgumentException(outing.rider());
    }

    /** The work counted from what stands before anyone takes anything, so that what comes off for another is shown too. */
    private Build fromTheMorning(Build build, Outing outing) {
        Part bike = now.find(build.bike().name());
        Map<MountingPlace, Part> parts = new EnumMap<>(MountingPlace.class);
        build.inPlace().forEach((place, part) -> parts.put(place, now.find(part.name())));
        Map<MountingPlace, List<String>> why = new EnumMap<>(MountingPlace.class);
        build.swaps().forEach(each -> why.put(each.place(), each.why()));
        MountingState before = MountingState.of(now);
        List<Swap> swaps = new ArrayList<>();
        for (Swap each : WorkPlan.inOrder(WorkOrder.on(bike, now, before, before.with(bike, parts)), before)) {
            swaps.add(each.because(why.getOrDefault(each.place(), List.of())));
        }
        double own = (bike.has(PartDetail.MASS) ? bike.number(PartDetail.MASS) : 0) + (bike.has(PartDetail.OTHER_MASS) ? bike.number(PartDetail.OTHER_MASS) : 0);
        return build.after(swaps, WorkPlan.of(swaps, before, deadlines.apply(outing)), own + before.mass(bike));
    }

    private static ClashChoice choice(List<OutingBuild> made, List<OutingBuild> free, Workshop workshop) {
        List<String> words = new ArrayList<>();
        List<UnmetTopic> loses = new ArrayList<>();
        Range costs = Range.exact(0);
        for (OutingBuild each : made) {
            OutingBuild wanted = of(each.outing(), free);
            words.add(each.outing().rider() + ": " + BuildDifference.bike(wanted.build(), each.build()));
            loses.addAll(BuildDifference.losses(each.outing().rider(), wanted.build(), each.build()));
            costs = plus(costs, cost(each, wanted, workshop));
        }
        return new ClashChoice(String.join("; ", words), loses, costs);
    }

    /** Time that one build costs against another, s; null where it is not known. */
    static Range cost(OutingBuild got, OutingBuild wanted, Workshop workshop) {
        return BuildFinder.returned(got.outing().call(), got.outing().worths(), workshop, got.build(), wanted.build());
    }

    static Range plus(Range one, Range other) {
        return one == null || other == null ? null : one.plus(other);
    }

    static OutingBuild of(Outing outing, List<OutingBuild> made) {
        for (OutingBuild each : made) {
            if (each.outing() == outing) {
                return each;
            }
        }
        throw new IllegalArgumentException(outing.rider());
    }
}
