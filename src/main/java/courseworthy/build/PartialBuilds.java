package courseworthy.build;

import courseworthy.fit.BuildLoad;
import courseworthy.fit.FitChecks;
import courseworthy.fit.FitChecks.Check;
import courseworthy.topic.Concern;
import courseworthy.workshop.MountingPlace;
import courseworthy.workshop.Part;
import courseworthy.workshop.Workshop;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.ToIntFunction;

/**
 * The builds between what stands on a bike and what is wanted on it: every subset of the changes that can be ridden, the best first. A wheel or
 * a crank changes with all that is on it.
 *
 * <p>What serves safety comes first: decisions on it that are not met, and parts worn to their limits, count before the loss against all
 * decisions.
 */
final class PartialBuilds {

    /** Of so many changes every subset is looked at (computing); of more, those that serve least are made together or not at all. */
    private static final int EVERY_SUBSET = 12;

    private static final Set<MountingPlace> CARRIED_ALONG = EnumSet.of(MountingPlace.FRONT_SEALANT, MountingPlace.REAR_SEALANT, MountingPlace.BAG,
            MountingPlace.LIGHTS);

    private final Workshop workshop;
    private final Part bike;
    private final BuildLoad load;
    private final BuildObjective aims;
    private final ToIntFunction<Map<MountingPlace, Part>> worn;
    private final Map<MountingPlace, Part> stands;
    private final Map<MountingPlace, Part> wanted;
    private final List<Set<MountingPlace>> units = new ArrayList<>();

    /**
     * One of them.
     *
     * @param changed what is changed, by place
     * @param parts   what is in each place then
     * @param unsafe  decisions on safety that are not met, and parts that are worn to their limits
     * @param loss    against all decisions, in notches
     * @param minutes of the swaps, by estimate
     */
    record Candidate(Set<MountingPlace> changed, Map<MountingPlace, Part> parts, int unsafe, long loss, double minutes) {
    }

    /**
     * @param wanted what the whole build has in each place
     * @param worn   how many of some parts are worn so that safety hangs on it
     */
    PartialBuilds(Workshop workshop, Part bike, BuildLoad load, BuildObjective aims, Map<MountingPlace, Part> wanted, ToIntFunction<Map<MountingPlace, Part>> worn) {
        this.workshop = workshop;
        this.bike = bike;
        this.load = load;
        this.aims = aims;
        this.worn = worn;
        this.stands = new EnumMap<>(workshop.mounted(bike));
        this.wanted = new EnumMap<>(wanted);
        units();
    }

    private void units() {
        Set<MountingPlace> changes = EnumSet.noneOf(MountingPlace.class);
        for (MountingPlace place : MountingPlace.values()) {
            if (!CARRIED_ALONG.contains(place) && stands.get(place) != wanted.get(place)) {
                changes.add(place);
            }
        }
        for (MountingPlace place : changes) {
            if (place.host() == null || !changes.contains(place.host())) {
                Set<MountingPlace> unit = EnumSet.of(place);
                for (MountingPlace child : MountingPlace.values()) {
                    if (child.host() == place) {
                        unit.add(child);
                    }
                }
                units.add(unit);
            }
        }
        while (units.size() > EVERY_SUBSET) {
            units.sort(Comparator.comparingLong(this::serves));
            units.get(1).addAll(units.remove(0));
        }
    }

    /** What is lost where of all changes one is not made. */
    private long serves(Set<MountingPlace> unit) {
        Set<MountingPlace> others = EnumSet.noneOf(MountingPlace.class);
        units.forEach(others::addAll);
        others.removeAll(unit);
        return loss(parts(others));
    }

    /** Those that can be ridden: the safest first, of these what loses least, of these the least work. */
    List<Candidate> candidates() {
        MountingEffort effort = new MountingEffort(workshop);
        List<Candidate> out = new ArrayList<>();
        for (int subset = 0; subset < 1 << units.size(); subset++) {
            Set<MountingPlace> changed = EnumSet.noneOf(MountingPlace.class);
            for (int i = 0; i < units.size(); i++) {
                if ((subset >> i & 1) == 1) {
                    changed.addAll(units.get(i));
                }
            }
            Map<MountingPlace, Part> parts = parts(changed);
            if (rideable(parts)) {
                double minutes = 0;
                for (MountingPlace place : changed) {
                    boolean work = parts.get(place) != stands.get(place) && (place.host() == null || parts.get(place) == null || parts.get(place).on() != parts.get(place.host()));
                    minutes += work ? effort.minutes(place.kind()) : 0;
                }
                out.add(new Candidate(changed, parts, unsafe(parts), loss(parts), minutes));
            }
        }
        out.sort(Comparator.comparingInt(Candidate::unsafe).thenComparingLong(Candidate::loss).thenComparingDouble(Candidate::minutes)
                .thenComparing(each -> each.changed().size()));
        return out;
    }

    private Map<MountingPlace, Part> parts(Set<MountingPlace> changed) {
        Map<MountingPlace, Part> out = new EnumMap<>(stands);
        for (MountingPlace place : MountingPlace.values()) {
            boolean along = CARRIED_ALONG.contains(place) && place.host() != null && changed.contains(place.host());
            if (changed.contains(place) || along) {
                out.remove(place);
                if (wanted.get(place) != null) {
                    out.put(place, wanted.get(place));
                }
            }
        }
        return out;
    }

    private boolean rideable(Map<MountingPlace, Part> parts) {
        if (parts.values().stream().distinct().count() < parts.size()) {
            return false;
        }
        for (MountingPlace place : MountingPlace.values()) {
            if (parts.get(place) == null && workshop.needs(bike, place)) {
                return false;
            }
        }
        for (Check check : FitChecks.all()) {
            if (SwapReasons.complete(check, parts) && !BuildVariables.allowed(bike, load, check, SwapReasons.parts(check, parts))) {
                return false;
            }
        }
        return loss(parts) < BuildObjective.EMPTY && !splitsPads(parts);
    }

    /** Whether pads of two compounds come of changing one end alone, with nothing worn out to say for it. */
    private boolean splitsPads(Map<MountingPlace, Part> parts) {
        return ofTwoCompounds(parts) && !ofTwoCompounds(stands) && !ofTwoCompounds(wanted) && worn.applyAsInt(parts) >= worn.applyAsInt(stands);
    }

    private static boolean ofTwoCompounds(Map<MountingPlace, Part> parts) {
        return BuildVariables.ofTwoCompounds(parts.get(MountingPlace.FRONT_PADS), parts.get(MountingPlace.REAR_PADS));
    }

    private long loss(Map<MountingPlace, Part> parts) {
        return aims.of(bike, parts, BuildVariables.candidates(workshop, bike).keySet(), parts.get(MountingPlace.METER));
    }

    private int unsafe(Map<MountingPlace, Part> parts) {
        int out = worn.applyAsInt(parts);
        for (BuildObjective.AimedValue got : aims.got(bike, parts)) {
            out += got.loss() > 0 && got.aim().topic().concerns().contains(Concern.SAFETY) ? 1 : 0;
        }
        return out;
    }
}
