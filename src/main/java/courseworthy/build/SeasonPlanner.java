package courseworthy.build;

import courseworthy.build.Build.Fitted;
import courseworthy.build.Build.Swap;
import courseworthy.build.SeasonPlan.Choice;
import courseworthy.build.SeasonPlan.Clash;
import courseworthy.build.SeasonPlan.Decided;
import courseworthy.build.SeasonPlan.Ride;
import courseworthy.build.SeasonPlan.Wish;
import courseworthy.call.Call;
import courseworthy.decision.Decision;
import courseworthy.decision.Decision.Status;
import courseworthy.fit.FitRules;
import courseworthy.ride.Range;
import courseworthy.workshop.MountingPlace;
import courseworthy.workshop.Part;
import courseworthy.workshop.PartDetail;
import courseworthy.workshop.PartKind;
import courseworthy.workshop.Workshop;
import courseworthy.worth.WorthCalculator;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** A season of one workshop: from ride to ride each build begins where the one before left the parts. */
public final class SeasonPlanner {

    /** A test ride on the build after its swaps, min (common practice, no source). */
    private static final Range SHAKEDOWN = new Range(30, 45, 60);
    /** So many who want the same on one day are tried in every order (computing); more, in the order written. */
    private static final int EVERY_ORDER = 3;
    /** A build that cannot be had costs more than any other (computing). */
    private static final long NONE = BuildObjective.EMPTY * 1000;

    private final Workshop start;
    private final Terms terms;
    private final FitRules rules;
    private final Runnable eachDone;
    private final List<Ride> rides = new ArrayList<>();
    private final Map<Integer, Workshop> open = new LinkedHashMap<>();
    private final List<Clash> clashes = new ArrayList<>();
    private final WishList wishes;
    private Workshop now;
    private List<Outing> before = List.of();
    private double minutesBack;

    /**
     * Who rides what.
     *
     * @param order  by which rides of one date are sorted
     * @param bike   the bike it must be; null for any
     * @param recommended what is recommended for it
     * @param mayChange kinds of parts that may be changed on that bike; null for all
     */
    public record Outing(int order, String rider, String event, String course, LocalDate date, String role, Recommendation recommended,
            String bike, Set<PartKind> mayChange) {

        Call call() {
            return recommended.call();
        }

        WorthCalculator worths() {
            return recommended.worths();
        }

        /** The workshop as far as it may be used. */
        Workshop open(Workshop all) {
            Set<String> closed = new LinkedHashSet<>();
            for (Part part : mayChange == null ? List.<Part>of() : all.parts()) {
                if (!mayChange.contains(part.kind()) && (part.bike() == null || !part.bike().name().equals(bike))) {
                    closed.add(part.name());
                }
            }
            return (closed.isEmpty() ? all : all.without(closed)).as(rider);
        }
    }

    /**
     * How work is done.
     *
     * @param workADay minutes for work on bikes on each day between two rides
     * @param back     whether everything goes back to where it was after each date
     * @param minuteWorth what a minute at an event is worth, in money; null where that is not said
     */
    public record Terms(double workADay, boolean back, Double minuteWorth) {
    }

    /**
     * What came of it.
     *
     * @param open by the order of a ride, the workshop from which its build was made
     */
    public record Result(List<Ride> rides, List<Clash> clashes, List<Wish> wishes, Map<Integer, Workshop> open) {
    }

    /** A build, with the workshop from which it was made. */
    private record Made(Outing outing, Workshop from, Build build) {
        long loss() {
            return SeasonPlanner.loss(build);
        }
    }

    private SeasonPlanner(Workshop workshop, Terms terms, FitRules rules, Runnable eachDone) {
        this.eachDone = eachDone;
        this.start = workshop;
        this.now = workshop;
        this.terms = terms;
        this.rules = rules;
        this.wishes = new WishList(workshop, terms.minuteWorth());
    }

    /**
     * @param outings  by date
     * @param eachDone called after each ride, to show how far it is
     */
    public static Result of(Workshop workshop, List<Outing> outings, Terms terms, FitRules rules, Runnable eachDone) {
        SeasonPlanner planner = new SeasonPlanner(workshop, terms, rules, eachDone);
        int from = 0;
        for (int i = 1; i <= outings.size(); i++) {
            if (i == outings.size() || !outings.get(i).date().equals(outings.get(from).date())) {
                planner.day(outings.subList(from, i));
                from = i;
            }
        }
        return new Result(ReturnDates.of(planner.rides), planner.clashes, planner.wishes.all(), planner.open);
    }

    private void day(List<Outing> outings) {
        List<Made> made = new ArrayList<>();
        for (Outing outing : outings) {
            made.add(made(outing, now));
        }
        Set<String> shared = shared(made);
        if (!shared.isEmpty()) {
            made = share(made, shared);
        }
        made = inTime(made);
        minutesBack = 0;
        for (Made each : made) {
            Outing outing = each.outing();
            rides.add(new Ride(outing.order(), outing.rider(), outing.event(), outing.course(), start.name(), outing.date(), outing.role(),
                    decided(outing.call()), each.build()));
            open.put(outing.order(), each.from());
            wishes.ride(outing, each.from(), each.build());
            eachDone.run();
            minutesBack += terms.back() ? each.build().minutes() : 0;
        }
        now = terms.back() ? start : now.mounted(moved(made));
        before = outings;
    }

    /** Where everything is after a day: what a build needs is on it, whatever another took off. */
    private static Map<String, String> moved(List<Made> made) {
        Map<String, String> out = new LinkedHashMap<>();
        for (Made each : made) {
            if (each.build().after() != null) {
                Map<String, String> from = MountingState.of(each.from()).written();
                each.build().after().written().forEach((part, host) -> {
                    if (!host.equals(from.get(part))) {
                        out.put(part, host);
                    }
                });
            }
        }
        for (Made each : made) {
            if (each.build().after() != null) {
                Map<String, String> after = each.build().after().written();
                for (Fitted fitted : each.build().parts()) {
                    out.put(fitted.part().name(), after.get(fitted.part().name()));
                }
            }
        }
        return out;
    }

    private Made made(Outing outing, Workshop from) {
        Workshop open = outing.open(from);
        return new Made(outing, open, BuildFinder.of(outing.recommended(), open, outing.date(), rules, outing.bike()));
    }

    private static List<Decided> decided(Call call) {
        List<Decided> out = new ArrayList<>();
        for (Decision decision : call.decisions()) {
            if (decision.status() == Status.SETTLED) {
                out.add(new Decided(decision.topic().name(), decision.text()));
            }
        }
        return out;
    }

    // What two want on one day

    /** The bike and the parts of a build, by name. */
    static Set<String> used(Build build) {
        Set<String> out = new LinkedHashSet<>();
        if (build.bike() != null) {
            out.add(build.bike().name());
            for (Fitted each : build.parts()) {
                out.add(each.part().name());
            }
        }
        return out;
    }

    /** What is in more than one build, bikes first and then in the order of places. */
    private static Set<String> shared(List<Made> made) {
        Set<String> seen = new LinkedHashSet<>();
        Set<String> out = new LinkedHashSet<>();
        for (Made each : made) {
            for (String name : used(each.build())) {
                if (!seen.add(name)) {
                    out.add(name);
                }
            }
        }
        return out;
    }

    /** Tries who chooses first; the order by which all together lose least is scheduled, of equals the one written. */
    private List<Made> share(List<Made> free, Set<String> shared) {
        List<List<Made>> tried = new ArrayList<>();
        for (List<Outing> order : orders(free)) {
            tried.add(inTurn(order));
        }
        int best = 0;
        for (int i = 1; i < tried.size(); i++) {
            best = loss(tried.get(i)) < loss(tried.get(best)) ? i : best;
        }
        List<Choice> choices = new ArrayList<>();
        choices.add(choice(tried.get(best), free));
        for (int i = 0; i < tried.size(); i++) {
            Choice choice = i == best ? null : choice(tried.get(i), free);
            if (choice != null && !alike(choices, choice)) {
                choices.add(choice);
            }
        }
        List<String> wanting = new ArrayList<>();
        for (Made each : free) {
            Set<String> of = used(each.build());
            of.retainAll(shared);
            if (!of.isEmpty()) {
                wanting.add(each.outing().rider() + " (" + each.build().bike() + ", " + each.outing().event() + ")");
            }
        }
        clashes.add(new Clash(free.get(0).outing().date(), apartFromTheirBike(shared), wanting, choices));
        List<Made> out = new ArrayList<>();
        for (Made each : tried.get(best)) {
            out.add(each.build().bike() == null ? each : new Made(each.outing(), each.from(), fromTheMorning(each.build(), each.outing().date())));
        }
        return out;
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

    private static boolean alike(List<Choice> choices, Choice choice) {
        for (Choice each : choices) {
            if (each.what().equals(choice.what()) && each.loses().equals(choice.loses())) {
                return true;
            }
        }
        return false;
    }

    static long loss(Build build) {
        return build.bike() == null ? NONE : build.loss();
    }

    private static long loss(List<Made> made) {
        long sum = 0;
        for (Made each : made) {
            sum += each.loss();
        }
        return sum;
    }

    private static List<List<Outing>> orders(List<Made> made) {
        List<Outing> written = new ArrayList<>();
        made.forEach(each -> written.add(each.outing()));
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
            List<Outing> rest = new ArrayList<>(left);
            rest.remove(each);
            begun.add(each);
            permute(rest, begun, out);
            begun.remove(begun.size() - 1);
        }
    }

    /** Each builds from what those before left. */
    private List<Made> inTurn(List<Outing> order) {
        List<Made> out = new ArrayList<>();
        Workshop left = now;
        for (Outing outing : order) {
            Made made = made(outing, left);
            Build build = made.build();
            out.add(made);
            if (build.after() != null) {
                left = left.mounted(moved(List.of(made))).without(used(build));
            }
        }
        return out;
    }

    /** The work counted from what stands before anyone takes anything, so that what comes off for another is told too. */
    private Build fromTheMorning(Build build, LocalDate date) {
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
        return build.after(swaps, WorkPlan.of(swaps, before, date, WorkPlan.FREE), own + before.mass(bike));
    }

    private Choice choice(List<Made> made, List<Made> free) {
        List<String> words = new ArrayList<>();
        List<String> loses = new ArrayList<>();
        Range costs = Range.exact(0);
        for (Made each : made) {
            Made wanted = of(each.outing(), free);
            words.add(each.outing().rider() + ": " + BuildDifference.bike(wanted.build(), each.build()));
            loses.addAll(BuildDifference.losses(each.outing().rider(), wanted.build(), each.build()));
            Range returned = BuildFinder.returned(each.outing().call(), each.outing().worths(), now, each.build(), wanted.build());
            costs = costs == null || returned == null ? null : costs.plus(returned);
        }
        return new Choice(String.join("; ", words), loses, costs);
    }

    private static Made of(Outing outing, List<Made> made) {
        for (Made each : made) {
            if (each.outing() == outing) {
                return each;
            }
        }
        throw new IllegalArgumentException(outing.rider());
    }

    // Whether there is time

    /** Where the work does not fit between two dates, what stands is ridden as it stands, if it can be. */
    private List<Made> inTime(List<Made> made) {
        double minutes = minutesBack;
        for (Made each : made) {
            minutes += each.build().minutes();
        }
        if (before.isEmpty() || minutes == 0) {
            return made;
        }
        LocalDate last = before.get(0).date();
        long days = ChronoUnit.DAYS.between(last, made.get(0).outing().date()) - 1;
        double needed = minutes + SHAKEDOWN.high();
        if (needed <= days * terms.workADay()) {
            return made;
        }
        String time = Math.round(minutes) + " min of work and a ride of " + Math.round(SHAKEDOWN.low()) + " to " + Math.round(SHAKEDOWN.high())
                + " min, with " + Math.round(days * terms.workADay()) + " min for it between " + last + " and "
                + made.get(0).outing().date();
        List<Made> kept = asItStands(made);
        List<String> wanting = new ArrayList<>();
        for (Outing each : before) {
            wanting.add(each.rider() + " (" + each.event() + ")");
        }
        for (Made each : made) {
            wanting.add(each.outing().rider() + " (" + each.outing().event() + ")");
        }
        List<Choice> choices = new ArrayList<>();
        if (kept != null) {
            Choice stands = choice(kept, made);
            choices.add(new Choice("Ride as it stands: " + stands.what(), stands.loses(), stands.costs()));
        }
        choices.add(new Choice("Find the time: " + time, List.of(), null));
        clashes.add(new Clash(made.get(0).outing().date(), List.of("time"), wanting, choices));
        return kept == null ? made : kept;
    }

    /** Each on its bike with what is on it; null where one cannot be ridden so. */
    private List<Made> asItStands(List<Made> made) {
        List<Made> out = new ArrayList<>();
        for (Made each : made) {
            if (each.build().bike() == null) {
                return null;
            }
            String bike = each.build().bike().name();
            Set<String> rest = new LinkedHashSet<>();
            for (Part part : now.parts()) {
                if (part.bike() == null || !part.bike().name().equals(bike)) {
                    rest.add(part.name());
                }
            }
            Workshop alone = now.without(rest);
            Build build = BuildFinder.of(each.outing().recommended(), alone, each.outing().date(), rules, bike);
            if (build.bike() == null || !build.swaps().isEmpty()) {
                return null;
            }
            out.add(new Made(each.outing(), alone, build));
        }
        return shared(out).isEmpty() ? out : null;
    }
}
