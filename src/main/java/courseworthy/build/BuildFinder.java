package courseworthy.build;

import courseworthy.build.Build.FittedPart;
import courseworthy.build.Build.UnmetDecision;
import courseworthy.build.Build.Swap;
import courseworthy.call.Call;
import courseworthy.decision.Decision;
import courseworthy.demand.Measure;
import courseworthy.demand.MeasureValue;
import courseworthy.fit.BuildLoad;
import courseworthy.fit.CockpitFit;
import courseworthy.fit.FitChecks;
import courseworthy.fit.FitChecks.Check;
import courseworthy.fit.FitFindings.FitFinding;
import courseworthy.fit.FitResult;
import courseworthy.fit.FitRules;
import courseworthy.ride.Range;
import courseworthy.topic.Topics;
import courseworthy.workshop.MountingPlace;
import courseworthy.workshop.Part;
import courseworthy.workshop.PartDetail;
import courseworthy.workshop.Workshop;
import courseworthy.worth.WorthCalculator;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Finds the build of a call: on each bike the cheapest, and of these the cheapest; of equals the bike that is written first. A bike of the kind
 * that is called goes before any other.
 */
public final class BuildFinder {

    private static final String STEERER_LENGTH = "steerer-length";
    private final Workshop workshop;
    private final Call call;
    private final WorkDeadline deadline;
    private final WornParts worn;
    private final BuildObjective aims;
    private final BuildLoad load;
    private final WorthCalculator worths;
    private final MountingEffort work;
    private final String only;
    private final Recommendation recommendation;
    /** What was recommended for another kind of bike than is built; null where the kind is the recommended one. */
    private final BuildFinder recommended;

    private BuildFinder(Recommendation recommendation, Workshop workshop, WorkDeadline deadline, String only, BuildFinder recommended) {
        this.recommendation = recommendation;
        this.recommended = recommended;
        this.workshop = workshop;
        this.call = recommendation.call();
        this.deadline = deadline;
        this.worn = new WornParts(call, deadline.ride());
        this.worths = recommendation.worths();
        this.aims = BuildObjective.of(recommendation);
        this.load = load(recommendation);
        this.work = new MountingEffort(workshop);
        this.only = only;
    }

    /** On any bike, in the time that is assumed. @param date the day of the ride; null where it is not known */
    public static Build of(Recommendation recommendation, Workshop workshop, LocalDate date, FitRules rules) {
        return of(recommendation, workshop, WorkDeadline.of(date), rules, null);
    }

    /**
     * @param deadline when the work has to be done
     * @param bike     the name of the bike it must be; null for any
     */
    public static Build of(Recommendation recommendation, Workshop workshop, WorkDeadline deadline, FitRules rules, String bike) {
        Build build = new BuildFinder(recommendation, workshop, deadline, bike, null).build(rules);
        return build.bike() == null || build.plan().fits() ? build : TimeShortage.of(recommendation, workshop, deadline, rules, build);
    }

    /**
     * What can be had between what stands on a bike and what is wanted on it.
     *
     * @param bike   of the workshop
     * @param wanted what is wanted in each place
     */
    static PartialBuilds partial(Recommendation recommendation, Workshop workshop, WorkDeadline deadline, Part bike, Map<MountingPlace, Part> wanted) {
        BuildFinder finder = new BuildFinder(recommendation, workshop, deadline, bike.name(), null).onKind(String.valueOf(bike.word(PartDetail.KIND)));
        return new PartialBuilds(workshop, bike, finder.load, finder.aims, wanted, finder.worn::unsafe);
    }

    /** The build with certain parts. @param parts what is in each place */
    static Build with(Recommendation recommendation, Workshop workshop, WorkDeadline deadline, FitRules rules, Part bike, Map<MountingPlace, Part> parts) {
        BuildFinder finder = new BuildFinder(recommendation, workshop, deadline, bike.name(), null).onKind(String.valueOf(bike.word(PartDetail.KIND)));
        return finder.built(bike, parts, rules, false);
    }

    /** The parts and what is not met alone, to hold builds against each other. @param bike the bike it must be; null for any */
    static Build parts(Recommendation recommendation, Workshop workshop, String bike) {
        return new BuildFinder(recommendation, workshop, WorkDeadline.of(null), bike, null).build(null);
    }

    /**
     * Time that a build returns against another of the same call on the same bike, s: above 0 where it is faster. Null where the bikes
     * differ or nothing can be computed.
     */
    static Range returned(Call call, WorthCalculator worths, Workshop workshop, Build before, Build after) {
        return returned(call, worths, workshop, before, after, EnumSet.allOf(MountingPlace.class));
    }

    /**
     * Time that a build returns on a day against parts that stand on its bike, s: above 0 where the build is faster. Null where nothing can be
     * computed.
     *
     * @param day    with the workshop that the build is of
     * @param before what stands in each place
     */
    static Range returned(Recommendation day, Workshop workshop, Map<MountingPlace, Part> before, Build after) {
        BuildComparison comparison = new BuildComparison(workshop, day.call(), BuildObjective.of(day), load(day.call()), day.worths(), after.bike(), before);
        return comparison.returns(EnumSet.allOf(MountingPlace.class), before, after.inPlace());
    }

    /** The same for what is in some places alone. */
    static Range returned(Call call, WorthCalculator worths, Workshop workshop, Build before, Build after, Set<MountingPlace> places) {
        if (before.bike() == null || after.bike() == null || !before.bike().name().equals(after.bike().name())) {
            return null;
        }
        BuildObjective aims = new BuildObjective(call, TimeSavings.of(call, worths));
        return new BuildComparison(workshop, call, aims, load(call), worths, before.bike(), before.inPlace())
                .returns(places, before.inPlace(), after.inPlace());
    }

    /** What the bike must bear: the high ends, of the hardest day. */
    private static BuildLoad load(Recommendation recommendation) {
        BuildLoad out = BuildLoad.UNKNOWN;
        for (Recommendation day : recommendation.days()) {
            out = out.orMore(load(day.call()));
        }
        return out;
    }

    private static BuildLoad load(Call call) {
        return new BuildLoad(high(call, Measure.RIDER_MASS), high(call, Measure.START_LINE_MASS), high(call, Measure.LEDGE_HEIGHT));
    }

    private static Double high(Call call, Measure measure) {
        MeasureValue value = call.demands().get(measure);
        return value == null ? null : Double.valueOf(measure.scale().resolution().base(value.high()));
    }

    private Build build(FitRules rules) {
        List<Part> all = new ArrayList<>(workshop.bikes());
        all.removeIf(each -> only != null && !only.equals(each.name()));
        BikeSolution solved = cheapest(all, true);
        return solved == null ? ofAnyKind(all, rules) : built(solved.bike(), solved.parts(), rules);
    }

    /** Where no bike of the recommended kind can be built whole: the cheapest of any kind, each for what is recommended on its own kind. */
    private Build ofAnyKind(List<Part> bikes, FitRules rules) {
        Map<String, BuildFinder> finders = new HashMap<>();
        BuildFinder finder = null;
        BikeSolution best = null;
        for (Part each : bikes) {
            BuildFinder own = finders.computeIfAbsent(String.valueOf(each.word(PartDetail.KIND)), this::onKind);
            BikeSolution solved = own.cheapest(List.of(each), false);
            if (solved != null && own != this) {
                solved = new BikeSolution(each, solved.parts(), withKind(solved.cost(), aims.ofBike(each)));
            }
            if (solved != null && (best == null || solved.cost() < best.cost())) {
                best = solved;
                finder = own;
            }
        }
        return best == null ? none(rules) : finder.built(best.bike(), best.parts(), rules);
    }

    /** The cost of a build with what its bike loses by its kind; what a limit forbids costs more than anything else. */
    static long withKind(long cost, long loss) {
        return loss >= BuildObjective.FORBIDDEN / BuildVariables.LOSS ? BuildObjective.FORBIDDEN + cost / 2 : cost + loss * BuildVariables.LOSS;
    }

    private BuildFinder onKind(String kind) {
        boolean same = Topics.BIKE.option(kind) < 0 || kind.equals(call.on(Topics.BIKE).text()) || recommendation.onKind() == null;
        return same ? this : new BuildFinder(recommendation.onKind().apply(kind), workshop, deadline, only, this);
    }

    /** A bike with parts in its places, and what is lost by it. */
    private record BikeSolution(Part bike, Map<MountingPlace, Part> parts, long cost) {
    }

    /**
     * The cheapest of some bikes; null where none can be built.
     *
     * @param called whether it must be of the kind that is called and lack no part that a bike needs: gears, tyres and pressures, and the
     *               time, are those of that kind
     */
    private BikeSolution cheapest(List<Part> bikes, boolean called) {
        String kind = call.on(Topics.BIKE).text();
        BikeSolution best = null;
        for (Part each : bikes) {
            if (called && !kind.equals(each.word(PartDetail.KIND))) {
                continue;
            }
            BuildSearch search = new BuildSearch(workshop, each, load, aims);
            Map<MountingPlace, Part> found = search.solve();
            boolean whole = found != null && search.cost() / BuildVariables.LOSS < BuildObjective.EMPTY;
            if (found != null && (whole || !called) && (best == null || search.cost() < best.cost())) {
                best = new BikeSolution(each, found, search.cost());
            }
        }
        return best;
    }

    private Build none(FitRules rules) {
        List<FitFinding> inTheWay = new ArrayList<>();
        for (Part bike : rules == null ? List.<Part>of() : workshop.bikes()) {
            for (FitFinding finding : rules.on(bike, workshop.mounted(bike), load)) {
                if (!finding.fit().fits() && finding.fit().result() != FitResult.FitVerdict.UNKNOWN) {
                    inTheWay.add(finding);
                }
            }
        }
        return Build.builder(workshop.name(), null).inTheWay(inTheWay).lacking(gone()).loss(Long.MAX_VALUE).build();
    }

    /** What the bikes cannot be ridden without and the workshop has no more of. */
    private List<String> gone() {
        List<String> out = new ArrayList<>();
        for (Part bike : workshop.bikes()) {
            if (only == null || only.equals(bike.name())) {
                Map<MountingPlace, Part> stands = workshop.mounted(bike);
                BuildVariables.candidates(workshop, bike).forEach((place, parts) -> {
                    if (!stands.containsKey(place) && !parts.contains(null) && stands.values().containsAll(parts)) {
                        out.add("no " + place.words() + " is left for " + bike + ", and it cannot be ridden without");
                    }
                });
            }
        }
        return out;
    }

    private Build built(Part bike, Map<MountingPlace, Part> chosen, FitRules rules) {
        return built(bike, chosen, rules, true);
    }

    /** @param stem whether the stem may be another for the position that is carried over */
    private Build built(Part bike, Map<MountingPlace, Part> chosen, FitRules rules, boolean stem) {
        long loss = aims.of(bike, chosen, BuildVariables.candidates(workshop, bike).keySet(), chosen.get(MountingPlace.METER));
        Map<MountingPlace, Part> parts = new EnumMap<>(chosen);
        carriedAlong(bike, parts);
        PositionTransfer position = rules == null ? null : position(bike, new EnumMap<>(parts));
        if (stem && stemOf(position, bike, parts) != null) {
            parts.put(MountingPlace.STEM, stemOf(position, bike, parts));
        }
        List<FittedPart> fitted = new ArrayList<>();
        List<Part> unweighed = new ArrayList<>();
        double mass = known(bike, unweighed) + orZero(bike.number(PartDetail.OTHER_MASS));
        for (Map.Entry<MountingPlace, Part> each : parts.entrySet()) {
            fitted.add(new FittedPart(each.getKey(), each.getValue()));
            mass += known(each.getValue(), unweighed);
        }
        LightSelection lights = LightSelection.of(call, workshop, bike);
        for (Part light : lights.carried()) {
            fitted.add(new FittedPart(MountingPlace.LIGHTS, light));
            mass += known(light, unweighed);
        }
        Build.Builder out = Build.builder(workshop.name(), bike).parts(fitted).mass(mass).massNow(massNow(bike)).unweighed(unweighed)
                .notMet(notMet(bike, parts, lights)).loss(loss);
        return rules == null ? out.build() : worked(out.position(position).count(count(bike, chosen)), bike, parts, lights, rules, position);
    }

    /** The count of what was chosen, in which a stem for the position that is carried over has no part. */
    private BuildCount count(Part bike, Map<MountingPlace, Part> chosen) {
        return new BuildCounter(workshop, bike, aims, chosen).count(recommended == null ? null : recommended.aims);
    }

    /** The build with its work, its fit and its worth. */
    private Build worked(Build.Builder out, Part bike, Map<MountingPlace, Part> parts, LightSelection lights, FitRules rules, PositionTransfer position) {
        MountingState before = MountingState.of(workshop);
        MountingState after = before.with(bike, parts);
        lights.mount(after);
        List<Swap> swaps = swaps(bike, parts, lights, before, after, position);
        BuildPressures inflated = BuildPressures.of(call, parts);
        return out.places(PlaceChange.of(bike, workshop.mounted(bike), parts, before, after)).swaps(swaps).plan(WorkPlan.of(swaps, before, deadline))
                .back(WorkPlan.inOrder(WorkOrder.all(bike, workshop, after, before), after))
                .returns(returns(bike, before, after)).lacking(lacking(bike, before, after)).after(after)
                .toMind(toMind(rules, bike, parts, position)).pressures(inflated.lines()).set(inflated.set()).wear(worn.of(parts))
                .spares(SpareParts.of(workshop, bike, parts))
                .worthwhile(new BuildComparison(workshop, call, aims, load, worths, bike, parts).of(swaps, lights.carried())).build();
    }

    /**
     * The stem that the position carried over asks for, if it goes with the build's parts; null where there is none. The length of the steerer
     * was asked with the spacers that go with it.
     */
    private Part stemOf(PositionTransfer position, Part bike, Map<MountingPlace, Part> parts) {
        boolean carried = position != null && position.advised() != null && !position.otherBar() && parts.get(MountingPlace.STEM) != null;
        if (!carried) {
            return null;
        }
        Map<MountingPlace, Part> with = new EnumMap<>(parts);
        with.put(MountingPlace.STEM, position.advised().stem());
        for (Check check : FitChecks.all()) {
            boolean asked = check.places().contains(MountingPlace.STEM) && !check.rule().equals(STEERER_LENGTH) && SwapReasons.complete(check, with);
            if (asked && !BuildVariables.allowed(bike, load, check, SwapReasons.parts(check, with))) {
                return null;
            }
        }
        return position.advised().stem();
    }

    /** What the rules of fit say of the build; of the steerer, with the spacers that the position asks for under its stem. */
    private List<FitFinding> toMind(FitRules rules, Part bike, Map<MountingPlace, Part> parts, PositionTransfer position) {
        List<FitFinding> out = new ArrayList<>();
        boolean carried = position != null && position.advised() != null && position.advised().stem() == parts.get(MountingPlace.STEM)
                && parts.get(MountingPlace.FORK) != null;
        for (FitFinding each : rules.on(bike, parts, load)) {
            FitResult stacked = carried && each.origin().rule().endsWith("/" + STEERER_LENGTH)
                    ? CockpitFit.steererLength(parts.get(MountingPlace.FORK), position.advised().stem(), position.advised().under(), bike) : each.fit();
            if (stacked != FitResult.FITS) {
                out.add(new FitFinding(each.origin(), stacked, each.parts()));
            }
        }
        return out;
    }

    private PositionTransfer position(Part bike, Map<MountingPlace, Part> parts) {
        for (Part each : workshop.bikes()) {
            if (Boolean.TRUE.equals(each.yes(PartDetail.TRAINED_ON)) && each != bike) {
                return PositionMatcher.of(workshop, each, bike, parts, load);
            }
        }
        return null;
    }

    /** Sealant stays in its tyre's wheel, a crown race on its fork, a bag where it is. */
    private void carriedAlong(Part bike, Map<MountingPlace, Part> parts) {
        for (MountingPlace place : new MountingPlace[] {MountingPlace.FRONT_SEALANT, MountingPlace.REAR_SEALANT, MountingPlace.CROWN_RACE, MountingPlace.BAG}) {
            Part host = place.host() == null ? null : parts.get(place.host());
            Part there = MountingEffort.stands(workshop, place, host, bike);
            if (there != null) {
                parts.putIfAbsent(place, there);
            }
        }
        for (Part part : workshop.parts()) {
            MountingPlace place = part.bike() == bike ? part.place() : null;
            if (place != null && place != MountingPlace.LIGHTS && !parts.containsKey(place) && !BuildVariables.candidates(workshop, bike).containsKey(place) && place.host() == null) {
                parts.put(place, part);
            }
        }
    }

    private static double known(Part part, List<Part> unweighed) {
        if (!part.has(PartDetail.MASS)) {
            unweighed.add(part);
        }
        return orZero(part.number(PartDetail.MASS));
    }

    private static double orZero(Double value) {
        return value == null ? 0 : value;
    }

    private double massNow(Part bike) {
        double sum = orZero(bike.number(PartDetail.MASS)) + orZero(bike.number(PartDetail.OTHER_MASS));
        for (Part part : workshop.parts()) {
            sum += part.bike() == bike ? orZero(part.number(PartDetail.MASS)) : 0;
        }
        return sum;
    }

    private List<Swap> swaps(Part bike, Map<MountingPlace, Part> parts, LightSelection lights, MountingState before, MountingState after,
            PositionTransfer position) {
        List<Swap> out = new ArrayList<>();
        SwapReasons purpose = new SwapReasons(workshop, aims, load, bike, parts);
        List<Swap> work = WorkPlan.inOrder(WorkOrder.on(bike, workshop, before, after), before);
        for (Swap swap : work) {
            if (swap.place() == MountingPlace.LIGHTS) {
                out.add(swap.because(List.of(lights.serves(swap.on()))));
                continue;
            }
            boolean moves = swap.over() != null && swap.off() == null;
            if (servesPosition(swap, position, parts)) {
                out.add(swap.because(List.of("your position on " + position.from().bike())));
                continue;
            }
            out.add(swap.because(moves ? purpose.ofMove(swap.place(), after.on(swap.on())) : purpose.of(swap.place(), swap.off(), unchanged(swap, work))));
        }
        return out;
    }

    /** Whether a swap fits the stem of the position carried over, or moves over to it what that stem came without. */
    private static boolean servesPosition(Swap swap, PositionTransfer position, Map<MountingPlace, Part> parts) {
        Part stem = parts.get(MountingPlace.STEM);
        if (position == null || swap.off() == null || stem == null || position.now().parts().get(MountingPlace.STEM) == stem) {
            return false;
        }
        return swap.place() == MountingPlace.STEM || WorkOrder.carrier(swap.place()) == MountingPlace.STEM
                && position.now().parts().get(swap.place()) == swap.on() && swap.over() != null;
    }

    /** What comes with a wheel or a crank, but for what has a swap of its own. */
    private static List<Part> unchanged(Swap swap, List<Swap> work) {
        List<Part> out = new ArrayList<>(swap.with());
        work.forEach(each -> out.remove(each.on()));
        return out;
    }

    /** What was lent by another bike: that one cannot be ridden as it was before it is back. */
    private List<Build.Return> returns(Part bike, MountingState before, MountingState after) {
        List<Build.Return> out = new ArrayList<>();
        for (Part part : workshop.parts()) {
            Part owner = before.bike(part);
            boolean carried = before.on(part) != null && before.on(part) != owner && after.on(part) == before.on(part);
            if (owner != null && owner != bike && after.bike(part) != owner && !carried) {
                out.add(new Build.Return(part, before.on(part), owner, null));
            }
        }
        return out;
    }

    private List<UnmetDecision> notMet(Part bike, Map<MountingPlace, Part> parts, LightSelection lights) {
        List<UnmetDecision> out = new ArrayList<>(lights.missing());
        for (BuildObjective.AimedValue got : recommended == null ? List.<BuildObjective.AimedValue>of() : recommended.aims.got(bike, Map.of())) {
            if (got.aim().topic() == Topics.BIKE) {
                out.add(notMet(got, bike, parts));
            }
        }
        for (BuildObjective.AimedValue got : aims.got(bike, parts)) {
            if (got.loss() > 0) {
                out.add(notMet(got, bike, parts));
            }
        }
        Part front = parts.get(MountingPlace.FRONT_PADS);
        Part rear = parts.get(MountingPlace.REAR_PADS);
        if (BuildVariables.ofTwoCompounds(front, rear) && out.stream().noneMatch(each -> each.topic().equals(Topics.PAD_COMPOUND.name()))) {
            out.add(PadCompounds.apart(front, rear, parts));
        }
        return out;
    }

    private UnmetDecision notMet(BuildObjective.AimedValue got, Part bike, Map<MountingPlace, Part> parts) {
        Decision decision = got.aim().decision();
        String has = got.value() == null ? "not known" : GearTeeth.text(decision.topic(), got.value(), parts);
        has += end(got.aim().wanted());
        if (MissingPart.isLimitedByEvent(decision) && got.value() != null && got.value() > decision.value()) {
            has += ", which is harder than the event allows this rider";
        }
        return new UnmetDecision(decision.topic().name(), decision.phrase(), has, MissingPart.part(got.aim().wanted(), decision, bike, parts, workshop));
    }

    /** Which end it is, where the topic is decided for both ends at once. */
    private static String end(TopicPlacement wanted) {
        boolean both = TopicPlacement.all(wanted.topic()).size() > 1;
        return both ? " at the " + wanted.place().end() : "";
    }

    /** What stands in places of other bikes now and in none of them then. */
    private List<String> lacking(Part bike, MountingState before, MountingState after) {
        List<String> out = new ArrayList<>();
        for (Part other : workshop.bikes()) {
            List<String> names = new ArrayList<>();
            for (Part part : before.carried(other)) {
                if (after.bike(part) != other) {
                    names.add(part.name());
                }
            }
            if (other != bike && !names.isEmpty()) {
                out.add(other + ": " + String.join(", ", names));
            }
        }
        return out;
    }
}
