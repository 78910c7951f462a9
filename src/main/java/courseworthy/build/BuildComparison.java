package courseworthy.build;

import courseworthy.build.Build.Swap;
import courseworthy.build.BuildObjective.Aim;
import courseworthy.build.WorthwhileChanges.WorthwhileChange;
import courseworthy.build.WorthwhileChanges.Stay;
import courseworthy.call.Call;
import courseworthy.claim.Claim;
import courseworthy.claim.Verb;
import courseworthy.decision.Decision;
import courseworthy.demand.Measure;
import courseworthy.demand.MeasureValue;
import courseworthy.fit.BuildLoad;
import courseworthy.fit.FitChecks;
import courseworthy.fit.FitChecks.Check;
import courseworthy.ride.Range;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import courseworthy.workshop.MountingPlace;
import courseworthy.workshop.Part;
import courseworthy.workshop.PartDetail;
import courseworthy.workshop.PartKind;
import courseworthy.workshop.Workshop;
import courseworthy.worth.Effect;
import courseworthy.worth.WorthCalculator;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Weighs what a build changes on its bike, and what it leaves. Time comes from the masses of the parts themselves, and from what their
 * width, casing, tread and the like do to rolling and drag; what a gear, a dropper or a power meter returns is not in it.
 */
final class BuildComparison {

    /** Less than this is no temptation, s: what a swap counts for. */
    private static final double TEMPTING = BuildObjective.NOTCH_SECONDS;
    /** So many of those that tempt most are told (judgement). */
    private static final int MOST_LISTED = 6;
    /** So few races a year repay little (common practice, no source). */
    private static final int FEW = 3;
    /** Reasons told of one part (judgement). */
    private static final int REASONS = 2;
    /** What the body knows: it stays even where something returns time. */
    private static final Set<MountingPlace> TOUCHED = EnumSet.of(MountingPlace.SADDLE, MountingPlace.STEM, MountingPlace.BAR, MountingPlace.PEDALS, MountingPlace.SPACERS);

    private final Workshop workshop;
    private final Call call;
    private final BuildObjective aims;
    private final BuildLoad load;
    private final WorthCalculator worths;
    private final Part bike;
    private final Map<MountingPlace, Part> build;
    private final Map<MountingPlace, Part> now;
    private final SwapReasons purpose;

    BuildComparison(Workshop workshop, Call call, BuildObjective aims, BuildLoad load, WorthCalculator worths, Part bike, Map<MountingPlace, Part> build) {
        this.workshop = workshop;
        this.call = call;
        this.aims = aims;
        this.load = load;
        this.worths = worths;
        this.bike = bike;
        this.build = build;
        this.now = workshop.mounted(bike);
        this.purpose = new SwapReasons(workshop, aims, load, bike, build);
    }

    /** @param lights what the bike carries of them with the build */
    WorthwhileChanges of(List<Swap> swaps, List<Part> lights) {
        now.remove(MountingPlace.LIGHTS);
        List<WorthwhileChange> changes = new ArrayList<>();
        EnumSet<MountingPlace> left = EnumSet.noneOf(MountingPlace.class);
        for (MountingPlace place : MountingPlace.values()) {
            if (now.get(place) != build.get(place)) {
                left.add(place);
            }
        }
        EnumSet<MountingPlace> all = EnumSet.copyOf(left);
        for (MountingPlace place : MountingPlace.values()) {
            if (left.contains(place)) {
                EnumSet<MountingPlace> together = EnumSet.of(place);
                for (MountingPlace other : left) {
                    if (other.host() == place) {
                        together.add(other);
                    }
                }
                left.removeAll(together);
                changes.add(change(place.words(), together, swaps));
            }
        }
        WorthwhileChange lit = lights(swaps, lights);
        if (lit != null) {
            changes.add(lit);
        }
        WorthwhileChange sum = changes.isEmpty() ? null : all(change("all", all, swaps), lit);
        return new WorthwhileChanges(changes, sum, leaveAlone(), races());
    }

    /** Lights that go on or come off; null for none. */
    private WorthwhileChange lights(List<Swap> swaps, List<Part> lights) {
        List<Part> off = new ArrayList<>();
        for (Part part : workshop.parts()) {
            if (part.kind() == PartKind.LIGHTS && part.bike() == bike && !lights.contains(part)) {
                off.add(part);
            }
        }
        List<Part> on = new ArrayList<>();
        for (Part part : lights) {
            if (part.bike() != bike) {
                on.add(part);
            }
        }
        if (on.isEmpty() && off.isEmpty()) {
            return null;
        }
        Double grams = sum(on);
        Double less = sum(off);
        Long more = grams == null || less == null ? null : Long.valueOf(Math.round(grams - less));
        Range returns = more == null || worths == null || !worths.known() ? null : worths.saved(mass(more));
        double minutes = 0;
        for (Swap swap : swaps) {
            minutes += swap.place() == MountingPlace.LIGHTS ? swap.work().minutes() : 0;
        }
        return new WorthwhileChange(MountingPlace.LIGHTS.words(), on, off, more, returns, minutes, List.of("lights " + call.on(Topics.LIGHTS).text()), List.of());
    }

    private static Double sum(List<Part> parts) {
        double sum = 0;
        for (Part part : parts) {
            if (!part.has(PartDetail.MASS)) {
                return null;
            }
            sum += part.number(PartDetail.MASS) * 1000;
        }
        return sum;
    }

    private static Effect mass(long grams) {
        return new Effect(Range.exact(grams / 1000.0), Effect.NONE.drag(), Effect.NONE.rolling());
    }

    /** Both together; what is not known of one is not known of both. */
    private static WorthwhileChange all(WorthwhileChange parts, WorthwhileChange lights) {
        if (lights == null) {
            return parts;
        }
        Long grams = parts.grams() == null || lights.grams() == null ? null : Long.valueOf(parts.grams() + lights.grams());
        Range returns = parts.returns() == null || lights.returns() == null ? null : parts.returns().plus(lights.returns());
        return new WorthwhileChange(parts.place(), parts.on(), parts.off(), grams, returns, parts.minutes() + lights.minutes(), parts.serves(), parts.fresh());
    }

    private WorthwhileChange change(String where, Set<MountingPlace> places, List<Swap> swaps) {
        List<Part> on = new ArrayList<>();
        List<Part> off = new ArrayList<>();
        List<Part> fresh = new ArrayList<>();
        List<String> serves = new ArrayList<>();
        for (MountingPlace place : places) {
            add(on, build.get(place));
            add(off, now.get(place));
            if (build.get(place) != null && BuildVariables.isNew(build.get(place))) {
                fresh.add(build.get(place));
            }
            serves.addAll(purpose.served(place, taken(places)));
        }
        if (places.stream().allMatch(place -> aims.at(place).isEmpty())) {
            swaps.stream().filter(each -> places.contains(each.place())).forEach(each -> serves.addAll(each.why()));
        }
        double minutes = 0;
        for (Swap swap : swaps) {
            boolean carried = swap.over() != null && places.contains(WorkOrder.carrier(swap.place()));
            minutes += carried || places.contains(swap.place()) ? swap.work().minutes() : 0;
        }
        return new WorthwhileChange(where, on, off, grams(places, build), returns(places, build), minutes, distinct(serves), fresh);
    }

    private static void add(List<Part> to, Part part) {
        if (part != null) {
            to.add(part);
        }
    }

    private static List<String> distinct(List<String> texts) {
        return new ArrayList<>(new java.util.LinkedHashSet<>(texts));
    }

    /** The build with some places as they stand now. */
    private Map<MountingPlace, Part> taken(Set<MountingPlace> places) {
        Map<MountingPlace, Part> out = new EnumMap<>(build);
        for (MountingPlace place : places) {
            put(out, place, now.get(place));
        }
        return out;
    }

    private static void put(Map<MountingPlace, Part> to, MountingPlace place, Part part) {
        if (part == null) {
            to.remove(place);
        } else {
            to.put(place, part);
        }
    }

    private Long grams(Set<MountingPlace> places, Map<MountingPlace, Part> with) {
        return grams(places, now, with);
    }

    private static Long grams(Set<MountingPlace> places, Map<MountingPlace, Part> before, Map<MountingPlace, Part> after) {
        double sum = 0;
        for (MountingPlace place : places) {
            Part one = before.get(place);
            Part other = after.get(place);
            if (one != null && !one.has(PartDetail.MASS) || other != null && !other.has(PartDetail.MASS)) {
                return null;
            }
            sum += (other == null ? 0 : other.number(PartDetail.MASS)) - (one == null ? 0 : one.number(PartDetail.MASS));
        }
        return Math.round(sum * 1000);
    }

    private Range returns(Set<MountingPlace> places, Map<MountingPlace, Part> with) {
        return returns(places, now, with);
    }

    /**
     * Null where nothing was estimated, or where neither mass nor anything else can be computed. What is not known of front and rear is not
     * known of both alike: one is off as the other is.
     */
    Range returns(Set<MountingPlace> places, Map<MountingPlace, Part> before, Map<MountingPlace, Part> after) {
        if (worths == null || !worths.known()) {
            return null;
        }
        Long grams = grams(places, before, after);
        Map<String, Effect> effects = new LinkedHashMap<>();
        Range apart = null;
        for (MountingPlace place : places) {
            for (Aim aim : aims.at(place)) {
                Long from = before.get(place) == null && place.needed() ? null : aim.got(before.get(place));
                Long to = after.get(place) == null && place.needed() ? null : aim.got(after.get(place));
                if (from != null && to != null && aim.topic() == Topics.AERO_EXTENSIONS) {
                    apart = worths.returned(aim.topic(), from, to);
                } else if (from != null && to != null) {
                    effects.merge(aim.topic().plain(), effect(aim.topic(), from, to, grams == null), Effect::alike);
                }
            }
        }
        Effect sum = grams == null ? Effect.NONE : mass(grams);
        for (Effect each : effects.values()) {
            sum = sum.and(each);
        }
        Range saved = worths.saved(sum);
        Range together = apart == null ? saved : saved.plus(apart);
        return grams == null && sum.none() && apart == null ? null : together;
    }

    /** Rolling and drag; the mass of usual parts only where the parts are not weighed. */
    private static Effect effect(Topic topic, long from, long to, boolean mass) {
        Effect effect = WorthCalculator.effect(topic, from, to);
        return mass ? effect : new Effect(Effect.NONE.mass(), effect.drag(), effect.rolling());
    }

    // What stays

    private List<Stay> leaveAlone() {
        List<Stay> out = new ArrayList<>();
        if (!isRace()) {
            return out;
        }
        for (MountingPlace place : List.of(MountingPlace.SADDLE, MountingPlace.PEDALS)) {
            Part part = build.get(place);
            if (part != null && part == now.get(place) && known(part)) {
                out.add(new Stay(part, null, part.number(PartDetail.HOURS_USED), null, List.of("you are used to it; race day is no time to change")));
            }
        }
        List<Stay> tempting = new ArrayList<>();
        BuildVariables.candidates(workshop, bike).forEach((place, parts) -> parts.forEach(part -> tempted(tempting, place, part)));
        tempting.sort(Comparator.comparingDouble((Stay each) -> each.returns() == null ? 0 : -each.returns().mid())
                .thenComparing(each -> each.part().name()).thenComparing(Stay::place));
        out.addAll(tempting.subList(0, Math.min(MOST_LISTED, tempting.size())));
        for (Part other : workshop.bikes()) {
            if (other != bike) {
                out.add(new Stay(other, null, null, null, List.of(otherBike(other))));
            }
        }
        return out;
    }

    /** What is ridden often by the figures of the workshop, but not by somebody else; without a figure, what is on a bike while no other is the one trained on. */
    private boolean known(Part part) {
        if (bike.isAnothers()) {
            return false;
        }
        if (part.has(PartDetail.HOURS_USED)) {
            return part.number(PartDetail.HOURS_USED) >= BuildVariables.NEW;
        }
        return workshop.bikes().stream().noneMatch(other -> other != bike && Boolean.TRUE.equals(other.yes(PartDetail.TRAINED_ON)));
    }

    private boolean isRace() {
        MeasureValue role = call.demands().get(Measure.ROLE);
        return role != null && Measure.ROLE.scale().text(role.mid()).equals("race");
    }

    private String otherBike(Part other) {
        return (Boolean.TRUE.equals(other.yes(PartDetail.TRAINED_ON)) ? "it is your training bike, where parts that last matter more than grams"
                : "it is not ridden here") + "; parts taken from it go back afterwards";
    }

    /** A part that fits, is not used, and would return time if nothing else counted. */
    private void tempted(List<Stay> out, MountingPlace place, Part part) {
        boolean another = place == MountingPlace.SADDLE && bike.isAnothers();
        if (part == null || build.containsValue(part) || build.get(place) == null || listed(out, part) || another) {
            return;
        }
        Map<MountingPlace, Part> with = new EnumMap<>(build);
        with.put(place, part);
        Range returns = returns(EnumSet.of(place), build, with);
        if (returns == null || returns.mid() < TEMPTING || !fits(place, with)) {
            return;
        }
        List<String> because = new ArrayList<>();
        for (Aim aim : aims.at(place)) {
            if (because.size() < REASONS && aim.loss(aim.got(part)) > aim.loss(aim.got(build.get(place)))) {
                because.add(reason(aim.decision()));
            }
        }
        if (BuildVariables.isNew(part)) {
            because.add("nothing new on race day");
        }
        if (because.isEmpty() && TOUCHED.contains(place)) {
            because.add("what you sit, step and steer by stays as it is");
        }
        if (because.isEmpty() && place == MountingPlace.CHAIN) {
            because.add("a chain stays with the cassette it has worn in with");
        }
        if (because.isEmpty() && part.bike() != null) {
            because.add("it would have to come from " + part.bike() + " and go back");
        }
        if (because.isEmpty()) {
            because.add("to fit it you would have to give up a part that suits the recommendation better");
        }
        Integer races = races();
        if (races != null && races <= FEW) {
            because.add("raced " + (races == 1 ? "once" : races + " times") + " a year it wins little");
        }
        if (!alike(out, place, returns, because)) {
            out.add(new Stay(part, place.words(), part.number(PartDetail.HOURS_USED), returns, because));
        }
    }

    /** Whether the same was said already of the other part of a pair. */
    private static boolean alike(List<Stay> stays, MountingPlace place, Range returns, List<String> because) {
        for (Stay each : stays) {
            if (each.place().equals(place.words()) && each.returns().equals(returns) && each.because().equals(because)) {
                return true;
            }
        }
        return false;
    }

    private static boolean listed(List<Stay> stays, Part part) {
        for (Stay each : stays) {
            if (each.part() == part) {
                return true;
            }
        }
        return false;
    }

    private static String reason(Decision decision) {
        Claim leading = null;
        for (Claim claim : decision.taken()) {
            leading = leading == null || speaks(claim, decision) > speaks(leading, decision) ? claim : leading;
        }
        return decision.topic().name() + " " + decision.phrase() + " is recommended" + (leading == null ? "" : ": " + lower(leading.origin().because()));
    }

    /** A preference for the very value says most of why, a tie between front and rear least. */
    private static int speaks(Claim claim, Decision decision) {
        if (claim.origin().rule().startsWith("pairing/")) {
            return 0;
        }
        return claim.verb() == Verb.PREFER && claim.value() == decision.value() ? 2 : 1;
    }

    private static String lower(String sentence) {
        String plain = sentence.endsWith(".") ? sentence.substring(0, sentence.length() - 1) : sentence;
        boolean word = plain.length() > 1 && Character.isUpperCase(plain.charAt(0)) && !Character.isUpperCase(plain.charAt(1));
        return word ? Character.toLowerCase(plain.charAt(0)) + plain.substring(1) : plain;
    }

    private boolean fits(MountingPlace place, Map<MountingPlace, Part> with) {
        for (Check check : FitChecks.all()) {
            if (check.places().contains(place) && SwapReasons.complete(check, with)) {
                Part[] parts = new Part[check.places().size()];
                for (int i = 0; i < parts.length; i++) {
                    parts[i] = with.get(check.places().get(i));
                }
                if (!BuildVariables.allowed(bike, load, check, parts)) {
                    return false;
                }
            }
        }
        return true;
    }

    private Integer races() {
        MeasureValue races = call.demands().get(Measure.RACES_A_YEAR);
        return races == null || races.mid() == 0 ? null : Integer.valueOf((int) races.mid());
    }
}
