package courseworthy.build;

import courseworthy.build.BuildObjective.Aim;
import courseworthy.fit.BuildLoad;
import courseworthy.fit.FitChecks;
import courseworthy.fit.FitChecks.Check;
import courseworthy.fit.WheelFit;
import courseworthy.workshop.MountingPlace;
import courseworthy.workshop.Part;
import courseworthy.workshop.PartKind;
import courseworthy.workshop.Workshop;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Why a part goes on in place of another: each swap is taken back by itself, with all that cannot stay without it, and what would then be
 * worse is said.
 */
final class SwapReasons {

    private final Workshop workshop;
    private final BuildObjective aims;
    private final BuildLoad load;
    private final Part bike;
    private final Map<MountingPlace, Part> build;
    private final Map<MountingPlace, Part> now;

    /** @param build the parts chosen */
    SwapReasons(Workshop workshop, BuildObjective aims, BuildLoad load, Part bike, Map<MountingPlace, Part> build) {
        this.workshop = workshop;
        this.aims = aims;
        this.load = load;
        this.bike = bike;
        this.build = build;
        this.now = workshop.mounted(bike);
    }

    /**
     * The decisions that lose less with the new part and what comes with it; where the old part does not go with the others, what it does not
     * go with and the decisions that those serve; else what its mass saves.
     *
     * @param off  what comes off; null for nothing
     * @param with what stands on the new part and stays on it
     */
    List<String> of(MountingPlace place, Part off, List<Part> with) {
        List<String> better = off == null ? betterThanNow(place) : List.of();
        if (!better.isEmpty()) {
            return better;
        }
        Map<MountingPlace, Part> without = new EnumMap<>(build);
        put(without, place, off);
        Set<MountingPlace> group = EnumSet.of(place);
        for (MountingPlace child : MountingPlace.values()) {
            if (child.host() == place && build.get(child) != null && with.contains(build.get(child))) {
                group.add(child);
                put(without, child, now.get(child));
            }
        }
        return because(place, group, without);
    }

    /** The decisions that lose less than with what the wheel or crank that comes off carries in that place, and that could move over. */
    private List<String> betterThanNow(MountingPlace place) {
        Part old = place.host() == null ? null : now.get(place);
        if (old == null || build.containsValue(old)) {
            return List.of();
        }
        Map<MountingPlace, Part> without = new EnumMap<>(build);
        put(without, place, old);
        return served(place, without);
    }

    /** Why a part moves over to another that carries it: for what that one serves. */
    List<String> ofMove(MountingPlace place, Part carrier) {
        List<String> out = new ArrayList<>(List.of(carrier + ", which has none of its own"));
        MountingPlace host = WorkOrder.carrier(place);
        if (host != null && build.get(host) != now.get(host)) {
            Map<MountingPlace, Part> without = new EnumMap<>(build);
            revert(without, host, EnumSet.noneOf(MountingPlace.class));
            out.addAll(because(host, EnumSet.of(host), without));
        }
        return out;
    }

    private List<String> because(MountingPlace place, Set<MountingPlace> group, Map<MountingPlace, Part> without) {
        Set<String> out = new LinkedHashSet<>();
        group.forEach(each -> out.addAll(served(each, without)));
        MountingPlace elsewhere = elsewhere(place, without);
        String unfit = elsewhere == null ? unfit(group, without) : without.get(place) + ", which goes to the " + elsewhere.words();
        if (out.isEmpty() && unfit != null) {
            out.add(unfit);
            Set<MountingPlace> reverted = EnumSet.copyOf(group);
            if (elsewhere != null) {
                revert(without, elsewhere, reverted);
            }
            Set<MountingPlace> near = revertWhatDoesNotFit(without, reverted);
            near.forEach(each -> out.addAll(served(each, without)));
            if (out.size() == 1) {
                reverted.forEach(each -> out.addAll(served(each, without)));
            }
            mass(out, out.size() > 1, reverted, without);
        }
        if (out.isEmpty()) {
            group.stream().filter(each -> without.get(each) == null && each.needed()).findFirst()
                    .ifPresent(each -> out.add("a bike that has no " + each.words() + " otherwise"));
        }
        if (out.isEmpty() && without.get(place) != null
                && !BuildVariables.candidates(workshop, bike).getOrDefault(place, List.of()).contains(without.get(place))) {
            out.add(without.get(place) + ", which stays where it is");
        }
        mass(out, !out.isEmpty(), group, without);
        Set<MountingPlace> wider = EnumSet.copyOf(group);
        while (out.isEmpty() && widen(without, wider)) {
            wider.forEach(each -> out.addAll(served(each, without)));
            mass(out, !out.isEmpty(), wider, without);
        }
        return List.copyOf(out);
    }

    /** The other place to which an old part goes in the build; null where it comes off. */
    private MountingPlace elsewhere(MountingPlace place, Map<MountingPlace, Part> without) {
        for (Map.Entry<MountingPlace, Part> each : build.entrySet()) {
            if (each.getKey() != place && each.getValue() == without.get(place)) {
                return each.getKey();
            }
        }
        return null;
    }

    /** What mass saves: by the grams that count, which for a part that is not weighed, or is new, are not its own. */
    private void mass(Set<String> out, boolean served, Set<MountingPlace> places, Map<MountingPlace, Part> without) {
        Map<MountingPlace, List<Part>> candidates = served ? Map.of() : BuildVariables.candidates(workshop, bike);
        long counted = 0;
        long grams = 0;
        for (MountingPlace each : candidates.isEmpty() ? Set.<MountingPlace>of() : places) {
            List<Part> parts = candidates.getOrDefault(each, List.of());
            counted += BuildVariables.counted(bike, each, without.get(each), parts) - BuildVariables.counted(bike, each, build.get(each), parts);
            grams += (without.get(each) == null ? 0 : BuildVariables.grams(without.get(each))) - (build.get(each) == null ? 0 : BuildVariables.grams(build.get(each)));
        }
        long seconds = Math.round(counted * aims.perKilogram() / 1000.0);
        if (seconds > 0) {
            out.add(grams == counted ? grams + " g less, about " + seconds + " s on this course" : "a part that is weighed and ridden in, where the other is not");
        }
    }

    private static void put(Map<MountingPlace, Part> to, MountingPlace place, Part part) {
        if (part == null) {
            to.remove(place);
        } else {
            to.put(place, part);
        }
    }

    /**
     * Takes back whatever else does not go with what is taken back, until all that is left goes together or nothing more can be.
     *
     * @return of what is taken back, what was to begin with and what does not go with that: what hangs on those is no reason any more
     */
    private Set<MountingPlace> revertWhatDoesNotFit(Map<MountingPlace, Part> without, Set<MountingPlace> reverted) {
        Set<MountingPlace> first = EnumSet.copyOf(reverted);
        Set<MountingPlace> near = EnumSet.copyOf(reverted);
        boolean more = true;
        while (more) {
            more = false;
            for (Check check : FitChecks.all()) {
                if (!complete(check, without) || allowed(check, without)) {
                    continue;
                }
                for (MountingPlace each : check.places()) {
                    if (!reverted.contains(each) && build.get(each) != now.get(each)) {
                        revert(without, each, reverted);
                        more = true;
                        if (check.places().stream().anyMatch(first::contains)) {
                            near.add(each);
                        }
                    }
                }
            }
        }
        return near;
    }

    /** Takes back also what else changes and shares a check, or a wheel or crank, with what is taken back; false where there is no more. */
    private boolean widen(Map<MountingPlace, Part> without, Set<MountingPlace> reverted) {
        Set<MountingPlace> more = EnumSet.noneOf(MountingPlace.class);
        for (Check check : FitChecks.all()) {
            if (check.places().stream().anyMatch(reverted::contains)) {
                more.addAll(check.places());
            }
        }
        for (MountingPlace each : MountingPlace.values()) {
            if (each.host() != null && (reverted.contains(each) || reverted.contains(each.host()))) {
                more.add(each);
                more.add(each.host());
            }
        }
        more.removeAll(reverted);
        more.removeIf(each -> build.get(each) == now.get(each) && without.get(each) == now.get(each));
        more.forEach(each -> revert(without, each, reverted));
        return !more.isEmpty();
    }

    /** As it stands now, with what stands on it. */
    private void revert(Map<MountingPlace, Part> without, MountingPlace place, Set<MountingPlace> reverted) {
        reverted.add(place);
        put(without, place, now.get(place));
        for (MountingPlace child : MountingPlace.values()) {
            if (child.host() == place && MountingEffort.isOn(build.getOrDefault(child, bike), build.get(place))) {
                reverted.add(child);
                put(without, child, now.get(child));
            }
        }
    }

    /** Decisions that the build meets better than what it is taken back to. */
    List<String> served(MountingPlace place, Map<MountingPlace, Part> without) {
        List<String> out = new ArrayList<>();
        for (Aim aim : aims.at(place)) {
            add(out, aim, aim.got(without.get(place)), aim.got(build.get(place)), without.get(place) == null);
        }
        if ((place == MountingPlace.CHAINRING || place == MountingPlace.CASSETTE) && without.get(MountingPlace.CHAINRING) != null && without.get(MountingPlace.CASSETTE) != null) {
            for (Aim aim : aims.ofGears()) {
                add(out, aim, gear(aim, without), gear(aim, build), false);
            }
        }
        if (place == MountingPlace.CRANK || place == MountingPlace.PEDALS || place == MountingPlace.METER) {
            power(out, without);
        }
        if (place == MountingPlace.FRONT_PADS || place == MountingPlace.REAR_PADS) {
            compound(out, place, without);
        }
        if (place.kind() == PartKind.TYRE || place.kind() == PartKind.WHEEL) {
            rim(out, place.end().equals("front"), without);
        }
        return out;
    }

    private static Long gear(Aim aim, Map<MountingPlace, Part> parts) {
        return TopicPlacement.gear(aim.topic(), parts.get(MountingPlace.CHAINRING), parts.get(MountingPlace.CASSETTE));
    }

    private static void add(List<String> out, Aim aim, Long before, Long after, boolean empty) {
        if (!(empty && before == null) && aim.loss(after) < aim.loss(before)) {
            out.add(aim.topic().name() + " " + aim.decision().phrase());
        }
    }

    private void power(List<String> out, Map<MountingPlace, Part> without) {
        long before = power(without);
        if (power(build) < before) {
            out.add(aims.power());
        }
    }

    private void compound(List<String> out, MountingPlace place, Map<MountingPlace, Part> without) {
        boolean before = BuildVariables.ofTwoCompounds(without.get(MountingPlace.FRONT_PADS), without.get(MountingPlace.REAR_PADS));
        if (out.isEmpty() && before && !BuildVariables.ofTwoCompounds(build.get(MountingPlace.FRONT_PADS), build.get(MountingPlace.REAR_PADS))) {
            out.add("one compound with " + build.get(place.otherEnd()));
        }
    }

    private void rim(List<String> out, boolean front, Map<MountingPlace, Part> without) {
        MountingPlace tyre = front ? MountingPlace.FRONT_TYRE : MountingPlace.REAR_TYRE;
        MountingPlace wheel = front ? MountingPlace.FRONT_WHEEL : MountingPlace.REAR_WHEEL;
        if (isOutsideTable(without.get(tyre), without.get(wheel)) && !isOutsideTable(build.get(tyre), build.get(wheel))) {
            out.add("a tyre width that the general table lists for its rim");
        }
    }

    private static boolean isOutsideTable(Part tyre, Part wheel) {
        return tyre != null && wheel != null && WheelFit.isOutsideGeneralTable(tyre, wheel);
    }

    private long power(Map<MountingPlace, Part> parts) {
        return aims.ofPower(parts.get(MountingPlace.CRANK), parts.get(MountingPlace.PEDALS), parts.get(MountingPlace.METER));
    }

    /** What an old part does not go with, and why; null where it goes with all. */
    private String unfit(Set<MountingPlace> group, Map<MountingPlace, Part> without) {
        for (Check check : FitChecks.all()) {
            for (MountingPlace place : check.places()) {
                boolean there = without.get(place) != null || place == check.optional();
                if (group.contains(place) && there && complete(check, without) && !allowed(check, without)) {
                    return without.get(place) == null ? others(check, place) + (check.places().size() == 2 ? ", which cannot be fitted without it" : ", which do not fit together without it")
                            : others(check, place) + ", with which " + without.get(place) + " cannot be used: "
                            + check.question().ask(bike, load, parts(check, without)).words();
                }
            }
        }
        return null;
    }

    private boolean allowed(Check check, Map<MountingPlace, Part> from) {
        return BuildVariables.allowed(bike, load, check, parts(check, from));
    }

    static Part[] parts(Check check, Map<MountingPlace, Part> from) {
        Part[] parts = new Part[check.places().size()];
        for (int i = 0; i < parts.length; i++) {
            parts[i] = from.get(check.places().get(i));
        }
        return parts;
    }

    static boolean complete(Check check, Map<MountingPlace, Part> parts) {
        for (MountingPlace each : check.places()) {
            if (parts.get(each) == null && each != check.optional()) {
                return false;
            }
        }
        return true;
    }

    private String others(Check check, MountingPlace place) {
        List<String> names = new ArrayList<>();
        for (MountingPlace each : check.places()) {
            if (each != place && build.get(each) != null) {
                names.add(build.get(each).name());
            }
        }
        return names.isEmpty() ? bike.name() : String.join(" and ", names);
    }
}
