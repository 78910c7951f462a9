package courseworthy.build;

import courseworthy.build.Aims.Aim;
import courseworthy.rulebase.FitChecks;
import courseworthy.rulebase.FitChecks.Check;
import courseworthy.rulebase.Load;
import courseworthy.workshop.Part;
import courseworthy.workshop.Place;
import courseworthy.workshop.Workshop;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Why a part goes on in place of another: each swap is taken back by itself, and what would then be worse is said. */
final class Purpose {

    private final Workshop workshop;
    private final Aims aims;
    private final Load load;
    private final Part bike;
    private final Map<Place, Part> build;

    /** @param build the parts chosen */
    Purpose(Workshop workshop, Aims aims, Load load, Part bike, Map<Place, Part> build) {
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
    List<String> of(Place place, Part off, Long grams) {
        Map<Place, Part> without = new EnumMap<>(build);
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
    List<String> served(Place place, Map<Place, Part> without) {
        List<String> out = new ArrayList<>();
        for (Aim aim : aims.at(place)) {
            add(out, aim, aim.wanted().got(without.get(place)), aim.wanted().got(build.get(place)), without.get(place) == null);
        }
        if ((place == Place.CHAINRING || place == Place.CASSETTE) && without.get(Place.CHAINRING) != null && without.get(Place.CASSETTE) != null) {
            for (Aim aim : aims.ofGears()) {
                add(out, aim, gear(aim, without), gear(aim, build), false);
            }
        }
        if (place == Place.CRANK || place == Place.PEDALS) {
            power(out, without);
        }
        return out;
    }

    private static Long gear(Aim aim, Map<Place, Part> parts) {
        return Wanted.gear(aim.topic().name(), parts.get(Place.CHAINRING), parts.get(Place.CASSETTE));
    }

    private static void add(List<String> out, Aim aim, Long before, Long after, boolean empty) {
        if (!(empty && before == null) && aim.loss(after) < aim.loss(before)) {
            out.add(aim.topic().name() + " " + aim.decision().text());
        }
    }

    private void power(List<String> out, Map<Place, Part> without) {
        long before = power(without);
        if (power(build) < before) {
            out.add("power meter on");
        }
    }

    private long power(Map<Place, Part> parts) {
        Part crank = parts.get(Place.CRANK);
        return aims.ofPower(crank, parts.get(Place.PEDALS), Work.meterOn(workshop, crank));
    }

    private void unfit(List<String> out, Place place, Map<Place, Part> without) {
        for (Check check : FitChecks.all()) {
            if (check.places().contains(place) && without.get(place) != null && complete(check, without)) {
                Part[] parts = new Part[check.places().size()];
                for (int i = 0; i < parts.length; i++) {
                    parts[i] = without.get(check.places().get(i));
                }
                if (!Search.allowed(bike, load, check, parts)) {
                    out.add(others(check, place) + ", with which " + without.get(place) + " does not go: " + check.question().ask(bike, load, parts).words());
                    return;
                }
            }
        }
    }

    static boolean complete(Check check, Map<Place, Part> parts) {
        for (Place each : check.places()) {
            if (parts.get(each) == null && each != check.optional()) {
                return false;
            }
        }
        return true;
    }

    private String others(Check check, Place place) {
        List<String> names = new ArrayList<>();
        for (Place each : check.places()) {
            if (each != place && build.get(each) != null) {
                names.add(build.get(each).name());
            }
        }
        return names.isEmpty() ? bike.name() : String.join(" and ", names);
    }
}
