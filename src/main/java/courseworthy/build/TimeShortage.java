package courseworthy.build;

import courseworthy.build.PartialBuilds.Candidate;
import courseworthy.build.SeasonPlan.ClashChoice;
import courseworthy.build.SeasonPlan.UnmetTopic;
import courseworthy.event.Travel;
import courseworthy.fit.FitRules;
import courseworthy.ride.Range;
import courseworthy.workshop.MountingPlace;
import courseworthy.workshop.Part;
import courseworthy.workshop.PartKind;
import courseworthy.workshop.Workshop;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

/**
 * The swaps that are made where there is no time for all of them: first those that serve safety, for every rider; then, rider by rider in the
 * order of their priority, the subset that loses least. Whether a subset fits is asked of the plan itself, waits and test rides included.
 */
final class TimeShortage {

    /** Riders of equal priority up to so many are taken in every order (computing). */
    private static final int EVERY_ORDER = 3;
    /** An evening may be overrun by a job that is longer than any: so many minutes at most (judgement, no source). */
    private static final double OVERRUN = 60;

    private final Workshop stands;
    private final MountingState before;
    private final WorkWindow window;
    private final List<OutingBuild> wanted;
    private final Map<OutingBuild, List<Candidate>> candidates = new LinkedHashMap<>();

    private TimeShortage(Workshop stands, List<OutingBuild> wanted, WorkWindow window, Function<Outing, WorkDeadline> deadlines) {
        this.stands = stands;
        this.before = MountingState.of(stands);
        this.window = window;
        this.wanted = new ArrayList<>(wanted);
        this.wanted.sort(Comparator.comparingInt(each -> each.outing().priority()));
        for (OutingBuild each : this.wanted) {
            candidates.put(each, candidates(each, deadlines));
        }
    }

    /**
     * What can be made of some builds in time.
     *
     * @param stands the workshop as it stands
     * @param wanted the builds without regard to time, made from it
     * @return the builds in the order given; null where nothing that can be ridden can be made in time
     */
    static List<OutingBuild> of(Workshop stands, List<OutingBuild> wanted, WorkWindow window, Function<Outing, WorkDeadline> deadlines, FitRules rules) {
        if (wanted.stream().anyMatch(each -> each.build().bike() == null)) {
            return null;
        }
        TimeShortage search = new TimeShortage(stands, wanted, window, deadlines);
        Map<OutingBuild, Candidate> best = search.best();
        if (best == null) {
            return null;
        }
        List<OutingBuild> out = new ArrayList<>();
        for (OutingBuild each : wanted) {
            Outing outing = each.outing();
            out.add(new OutingBuild(outing, each.from(), BuildFinder.with(outing.recommended(), each.from(), deadlines.apply(outing), rules, each.build().bike(), best.get(each).parts())));
        }
        return out;
    }

    /** What can be made of one build in time; the build itself where nothing can. */
    static Build of(Recommendation recommendation, Workshop workshop, WorkDeadline deadline, FitRules rules, Build build) {
        EventDay day = new EventDay("", "", deadline.ride(), null, null, Travel.NONE, "");
        OutingBuild wanted = new OutingBuild(new Outing(0, "", 0, day, recommendation, build.bike().name(), null), workshop, build);
        List<OutingBuild> got = of(workshop, List.of(wanted), deadline.wholeWindow(), outing -> deadline, rules);
        return got == null ? build : got.get(0).build().leaving(leftOut(List.of(wanted), got, workshop));
    }

    /** What is made of some builds and what is left out, and what is lost by it. */
    static ClashChoice leftOut(List<OutingBuild> wanted, List<OutingBuild> got, Workshop stands) {
        List<String> words = new ArrayList<>();
        List<UnmetTopic> loses = new ArrayList<>();
        Range costs = Range.exact(0);
        for (OutingBuild each : got) {
            OutingBuild whole = PartSharing.of(each.outing(), wanted);
            words.add((each.outing().rider().isEmpty() ? "" : each.outing().rider() + ": ") + BuildDifference.inTime(whole.build(), each.build()));
            loses.addAll(BuildDifference.losses(each.outing().rider(), whole.build(), each.build()));
            costs = PartSharing.plus(costs, PartSharing.cost(each, whole, stands));
        }
        return new ClashChoice(String.join("; ", words), loses, costs);
    }

    private static List<Candidate> candidates(OutingBuild each, Function<Outing, WorkDeadline> deadlines) {
        return BuildFinder.partial(each.outing().recommended(), each.from(), deadlines.apply(each.outing()), each.build().bike(), each.build().inPlace()).candidates();
    }

    private Map<OutingBuild, Candidate> best() {
        Map<OutingBuild, Candidate> best = null;
        for (List<OutingBuild> order : orders()) {
            Map<OutingBuild, Candidate> chosen = chosen(order);
            if (chosen != null && (best == null || better(chosen, best))) {
                best = chosen;
            }
        }
        return best;
    }

    private static boolean better(Map<OutingBuild, Candidate> one, Map<OutingBuild, Candidate> other) {
        int unsafe = one.values().stream().mapToInt(Candidate::unsafe).sum() - other.values().stream().mapToInt(Candidate::unsafe).sum();
        long loss = one.values().stream().mapToLong(Candidate::loss).sum() - other.values().stream().mapToLong(Candidate::loss).sum();
        return unsafe < 0 || unsafe == 0 && loss < 0;
    }

    private List<List<OutingBuild>> orders() {
        List<List<OutingBuild>> out = new ArrayList<>();
        if (wanted.size() > EVERY_ORDER) {
            out.add(wanted);
        } else {
            permute(wanted, new ArrayList<>(), out);
        }
        return out;
    }

    private static void permute(List<OutingBuild> left, List<OutingBuild> begun, List<List<OutingBuild>> out) {
        if (left.isEmpty()) {
            out.add(List.copyOf(begun));
        }
        for (OutingBuild each : left) {
            if (each.outing().priority() == left.get(0).outing().priority()) {
                List<OutingBuild> rest = new ArrayList<>(left);
                rest.remove(each);
                begun.add(each);
                permute(rest, begun, out);
                begun.remove(begun.size() - 1);
            }
        }
    }

    /** One after another: all with the least work, then each as safe as can be, then each as near to its decisions as can be. */
    private Map<OutingBuild, Candidate> chosen(List<OutingBuild> order) {
        Map<OutingBuild, Candidate> out = new LinkedHashMap<>();
        for (OutingBuild each : order) {
            Candidate least = candidates.get(each).stream().min(Comparator.comparingDouble(Candidate::minutes)).orElse(null);
            if (least == null) {
                return null;
            }
            out.put(each, least);
        }
        if (!fits(out)) {
            return null;
        }
        for (OutingBuild each : order) {
            improve(out, each, candidates.get(each).stream().sorted(Comparator.comparingInt(Candidate::unsafe).thenComparingDouble(Candidate::minutes)).toList());
        }
        for (OutingBuild each : order) {
            improve(out, each, candidates.get(each));
        }
        return out;
    }

    /** Takes the first of some candidates that fits beside what the others have. */
    private void improve(Map<OutingBuild, Candidate> chosen, OutingBuild who, List<Candidate> from) {
        Candidate had = chosen.get(who);
        int minutes = window.minutes();
        for (Candidate each : from) {
            if (each == had) {
                break;
            }
            chosen.put(who, each);
            if (each.minutes() <= minutes + OVERRUN && fits(chosen)) {
                return;
            }
        }
        chosen.put(who, had);
    }

    private boolean fits(Map<OutingBuild, Candidate> chosen) {
        Set<String> used = new HashSet<>();
        MountingState target = before;
        for (Map.Entry<OutingBuild, Candidate> each : chosen.entrySet()) {
            Map<MountingPlace, Part> parts = new EnumMap<>(MountingPlace.class);
            for (Map.Entry<MountingPlace, Part> part : each.getValue().parts().entrySet()) {
                parts.put(part.getKey(), stands.find(part.getValue().name()));
                if (!used.add(part.getValue().name())) {
                    return false;
                }
            }
            parts.remove(MountingPlace.LIGHTS);
            Part bike = stands.find(each.getKey().build().bike().name());
            target = target.with(bike, parts);
            lights(target, each.getKey().build(), bike);
        }
        Set<String> ridden = new HashSet<>();
        chosen.keySet().forEach(each -> ridden.add(each.build().bike().name()));
        return WorkPlan.soonest(SeasonSchedule.work(stands, before, target, ridden), window).fits();
    }

    /** Lights are changed in any case: they take minutes, and nobody rides without those that are called for. */
    private void lights(MountingState target, Build build, Part bike) {
        Map<String, String> after = build.after().written();
        for (Part part : stands.parts()) {
            boolean here = bike.name().equals(after.get(part.name()));
            if (part.kind() == PartKind.LIGHTS && (here || before.bike(part) == bike)) {
                target.put(part, here ? bike : null);
            }
        }
    }
}
