package courseworthy.build;

import courseworthy.build.BuildObjective.Aim;
import courseworthy.fit.BuildLoad;
import courseworthy.fit.FitChecks;
import courseworthy.fit.FitChecks.Check;
import courseworthy.workshop.MountingPlace;
import courseworthy.workshop.Part;
import courseworthy.workshop.Workshop;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Why a part goes on in place of another: each swap is taken back by itself, and what would then be worse is said. */
final class SwapReasons {

    private final Workshop workshop;
    private final BuildObjective aims;
    private final BuildLoad load;
    private final Part bike;
    private final Map<MountingPlace, Part> build;

    /** @param build the parts chosen */
    SwapReasons(Workshop workshop, BuildObjective aims, BuildLoad load, Part bike, Map<MountingPlace, Part> build) {
        this.workshop = workshop;
        this.aims = aims;
        this.load = load;
        this.bike = bike;
        this.build = build;
    }

    /**
     * The decisions that lose less with the new part; where there are none, what the old part does not fit; else its mass, or the pair.
     *
     * @param off   what comes off; null for nothing
     * @param grams change of mass; null where it is not known
     */
    List<String> of(MountingPlace place, Part off, Long grams) {
        Map<MountingPlace, Part> without = new EnumMap<>(build);
        if (off == null) {
            without.remove(place);
        } else {
            without.put(place, off);
        }
        List<String> out = served(place, without);
        if (out.isEmpty()) {
            unfit(out, place, without);
        }
        if (out.isEmpty() && off == null && build.get(place) != null) {
            out.add("an empty place");
        }
        if (out.isEmpty() && grams != null && grams < 0) {
            out.add(-grams + " g less");
        }
        if (out.isEmpty() && place.end() != null && build.get(place) != null) {
            out.add("the pair");
        }
        return out;
    }

    /** Decisions that the build meets better than what it is taken back to. */
    List<String> served(MountingPlace place, Map<MountingPlace, Part> without) {
        List<String> out = new ArrayList<>();
        for (Aim aim : aims.at(place)) {
            add(out, aim, aim.wanted().got(without.get(place)), aim.wanted().got(build.get(place)), without.get(place) == null);
        }
        if ((place == MountingPlace.CHAINRING || place == MountingPlace.CASSETTE) && without.get(MountingPlace.CHAINRING) != null && without.get(MountingPlace.CASSETTE) != null) {
            for (Aim aim : aims.ofGears()) {
                add(out, aim, gear(aim, without), gear(aim, build), false);
            }
        }
        if (place == MountingPlace.CRANK || place == MountingPlace.PEDALS) {
            power(out, without);
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
            out.add("power meter fitted");
        }
    }

    private long power(Map<MountingPlace, Part> parts) {
        Part crank = parts.get(MountingPlace.CRANK);
        return aims.ofPower(crank, parts.get(MountingPlace.PEDALS), MountingEffort.meterOn(workshop, crank));
    }

    private void unfit(List<String> out, MountingPlace place, Map<MountingPlace, Part> without) {
        for (Check check : FitChecks.all()) {
            if (check.places().contains(place) && without.get(place) != null && complete(check, without)) {
                Part[] parts = new Part[check.places().size()];
                for (int i = 0; i < parts.length; i++) {
                    parts[i] = without.get(check.places().get(i));
                }
                if (!BuildVariables.allowed(bike, load, check, parts)) {
                    out.add(others(check, place) + ", with which " + without.get(place) + " does not go: " + check.question().ask(bike, load, parts).words());
                    return;
                }
            }
        }
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
