package courseworthy.build;

import courseworthy.fit.BuildLoad;
import courseworthy.fit.FitChecks;
import courseworthy.fit.FitChecks.Check;
import courseworthy.fit.FitResult;
import courseworthy.workshop.MountingPlace;
import courseworthy.workshop.Part;
import courseworthy.workshop.PartDetail;
import courseworthy.workshop.Workshop;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.LongStream;

/** Every combination, place after place, with no bound but what is forbidden already: slow and plain. */
final class BruteForce {

    private final Workshop workshop;
    private final Part bike;
    private final BuildLoad load;
    private final BuildObjective aims;
    private final MountingEffort work;
    private final List<MountingPlace> places;
    private final Map<MountingPlace, List<Part>> candidates;
    /** The checks that can be asked once a place is filled, those before it being filled. */
    private final List<List<Check>> due = new ArrayList<>();
    private final Map<MountingPlace, Map<Part, Long>> losses = new EnumMap<>(MountingPlace.class);
    private final Map<MountingPlace, Map<Part, Long>> masses = new EnumMap<>(MountingPlace.class);
    private long least = Long.MAX_VALUE;

    BruteForce(Workshop workshop, Part bike, BuildLoad load, BuildObjective aims) {
        this.workshop = workshop;
        this.bike = bike;
        this.load = load;
        this.aims = aims;
        this.work = new MountingEffort(workshop);
        this.candidates = BuildVariables.candidates(workshop, bike);
        this.places = new ArrayList<>(candidates.keySet());
        for (int i = 0; i < places.size(); i++) {
            due.add(due(places.subList(0, i + 1)));
        }
        candidates.forEach((place, parts) -> {
            losses.put(place, new HashMap<>());
            masses.put(place, new HashMap<>());
            parts.forEach(part -> losses.get(place).put(part, aims.of(place, part)));
            parts.forEach(part -> masses.get(place).put(part, grams(place, part)));
        });
    }

    private List<Check> due(List<MountingPlace> filled) {
        List<Check> out = new ArrayList<>();
        for (Check check : FitChecks.all()) {
            boolean all = check.places().stream().allMatch(place -> filled.contains(place) || place == check.optional() && !candidates.containsKey(place));
            if (all && check.places().contains(filled.get(filled.size() - 1))) {
                out.add(check);
            }
        }
        return out;
    }

    private boolean frameIsAllowed() {
        return permitted(Map.of(), FitChecks.all().stream().filter(check -> check.places().isEmpty()).toList());
    }

    long least() {
        if (frameIsAllowed()) {
            fill(0, new EnumMap<>(MountingPlace.class));
        }
        return least;
    }

    /** Whether these parts go together: each one a candidate in its place, and every check answered. */
    boolean allows(Map<MountingPlace, Part> parts) {
        for (int i = 0; i < places.size(); i++) {
            if (!candidates.get(places.get(i)).contains(parts.get(places.get(i))) || !permitted(parts, due.get(i))) {
                return false;
            }
        }
        return frameIsAllowed() && parts.values().stream().distinct().count() == parts.size();
    }

    private void fill(int at, Map<MountingPlace, Part> parts) {
        if (at == places.size()) {
            least = Math.min(least, costOf(parts));
            return;
        }
        for (Part part : candidates.get(places.get(at))) {
            if (part != null && parts.containsValue(part)) {
                continue;
            }
            if (part != null) {
                parts.put(places.get(at), part);
            }
            if (permitted(parts, due.get(at))) {
                fill(at + 1, parts);
            }
            parts.remove(places.get(at));
        }
    }

    private boolean permitted(Map<MountingPlace, Part> parts, List<Check> checks) {
        for (Check check : checks) {
            FitResult fit = check.on(bike, load, parts);
            boolean known = fit.fits() || fit.result() == FitResult.FitVerdict.UNKNOWN && asItStands(check, parts);
            if (!known) {
                return false;
            }
        }
        return true;
    }

    private boolean asItStands(Check check, Map<MountingPlace, Part> parts) {
        for (MountingPlace place : check.places()) {
            Part part = parts.get(place);
            if (part != null && (part.bike() != bike || part.place() != place)) {
                return false;
            }
        }
        return true;
    }

    /** The cost as it is defined, added up from the whole. */
    long costOf(Map<MountingPlace, Part> parts) {
        long loss = aims.ofBike(bike);
        double work = 0;
        double ticks = 0;
        long grams = 0;
        for (MountingPlace place : places) {
            Part part = parts.get(place);
            loss += losses.get(place).get(part);
            grams += masses.get(place).get(part);
            Part host = place.host() == null ? null : parts.get(place.host());
            if (loss >= BuildObjective.FORBIDDEN) {
                return Long.MAX_VALUE;
            }
            if (part == null) {
                Part off = MountingEffort.stands(workshop, place, host, bike);
                work += off == null ? 0 : notches(off);
            } else if (host == null ? part.bike() != bike || part.place() != place : !MountingEffort.isOn(part, host)) {
                boolean elsewhere = part.on() != null && part.bike() != bike;
                work += (elsewhere ? 2 : 1) * notches(part);
                ticks += part.on() != null && part.place() != null && part.place() != place ? Math.floor(1_000_000 * 2 / 15.0) : 0;
            }
        }
        work += moves(parts, MountingPlace.SADDLE, MountingPlace.SEATPOST) + moves(parts, MountingPlace.PEDALS, MountingPlace.CRANK)
                + moves(parts, MountingPlace.EXTENSIONS, MountingPlace.BAR) + moves(parts, MountingPlace.LOCKOUT_REMOTE, MountingPlace.BAR)
                + moves(parts, MountingPlace.DROPPER_REMOTE, MountingPlace.BAR) + moves(parts, MountingPlace.BATTERY, MountingPlace.DERAILLEUR);
        Part frontPads = parts.get(MountingPlace.FRONT_PADS);
        Part rearPads = parts.get(MountingPlace.REAR_PADS);
        boolean compounds = frontPads != null && rearPads != null && frontPads.has(PartDetail.COMPOUND) && rearPads.has(PartDetail.COMPOUND);
        ticks += compounds && !frontPads.word(PartDetail.COMPOUND).equals(rearPads.word(PartDetail.COMPOUND)) ? 1_500_000 : 0;
        Part front = parts.get(MountingPlace.FRONT_TYRE);
        Part rear = parts.get(MountingPlace.REAR_TYRE);
        ticks += unlisted(parts);
        if (front != null && rear != null && !BuildVariables.isPair(front, rear)) {
            ticks += aims.pairOfTyres() ? 500_000 : 0;
        } else if (front != null && rear != null && front.line() > rear.line()) {
            ticks++;
        }
        if (parts.get(MountingPlace.CHAINRING) != null && parts.get(MountingPlace.CASSETTE) != null) {
            loss += aims.ofGears(parts.get(MountingPlace.CHAINRING), parts.get(MountingPlace.CASSETTE));
        }
        if (candidates.containsKey(MountingPlace.CRANK)) {
            loss += aims.ofPower(parts.get(MountingPlace.CRANK), parts.get(MountingPlace.PEDALS), parts.get(MountingPlace.METER));
        }
        // A notch is a million; 10 s are one, and so 1 g at 1 s for each kg is a ten-thousandth of one.
        return loss * 1_000_000 + Math.round(work * 1_000_000) + grams * aims.perKilogram() * 100 + (long) ticks;
    }

    long unlisted(Map<MountingPlace, Part> parts) {
        return unlisted(parts.get(MountingPlace.FRONT_TYRE), parts.get(MountingPlace.FRONT_WHEEL))
                + unlisted(parts.get(MountingPlace.REAR_TYRE), parts.get(MountingPlace.REAR_WHEEL));
    }

    /**
     * Three notches for a tyre that the general table of the older ETRTO manuals (from memory) does not list for its rim, where neither the wheel nor
     * the tyre has its manufacturer's chart. Half a millimetre either way is rounding.
     */
    private static long unlisted(Part tyre, Part wheel) {
        boolean known = tyre != null && wheel != null && tyre.has(PartDetail.WIDTH) && wheel.has(PartDetail.RIM_INNER_WIDTH);
        if (!known || wheel.has(PartDetail.LEAST_TYRE) && wheel.has(PartDetail.MOST_TYRE) || tyre.has(PartDetail.LEAST_RIM) && tyre.has(PartDetail.MOST_RIM)) {
            return 0;
        }
        double rim = wheel.number(PartDetail.RIM_INNER_WIDTH) * 1000 + 0.5;
        double width = tyre.number(PartDetail.WIDTH) * 1000;
        double least = rim < 15 ? 18 : rim < 17 ? 23 : rim < 19 ? 25 : rim < 21 ? 28 : rim < 23 ? 35 : rim < 25 ? 40 : rim < 27 ? 44 : rim < 29 ? 47 : 50;
        double most = rim < 15 ? 25 : rim < 17 ? 32 : rim < 19 ? 52 : rim < 21 ? 62 : 64;
        return width < least - 0.5 || width > most + 0.5 ? 3_000_000 : 0;
    }

    /** What stands on a part that gives way is moved over to the new one. */
    private double moves(Map<MountingPlace, Part> parts, MountingPlace place, MountingPlace under) {
        Part part = parts.get(place);
        boolean both = candidates.containsKey(place) && candidates.containsKey(under) && part != null && parts.get(under) != null;
        boolean stood = both && part.bike() == bike && part.place() == place && part.on() != bike;
        return stood && part.on() != parts.get(under) ? notches(part) : 0;
    }

    /** A quarter of an hour is a notch, and less counts as one; what gains just that is made. */
    private double notches(Part part) {
        return Math.max(1, Math.round(work.minutes(part.kind()) * 1_000_000 / 15) / 1_000_000.0) - 0.000_01;
    }

    /** Grams as they count: what is unknown or new as the heaviest that could stand there, what stands there unweighed as the lightest. */
    private long grams(MountingPlace place, Part part) {
        boolean proven = List.of(MountingPlace.SADDLE, MountingPlace.SPACERS, MountingPlace.STEM, MountingPlace.BAR, MountingPlace.EXTENSIONS, MountingPlace.PEDALS, MountingPlace.CRANK, MountingPlace.CHAIN)
                .contains(place);
        boolean companion = switch (place.kind()) {
            case HEADSET, CROWN_RACE, BOTTOM_BRACKET, CALIPER, ADAPTER, LOCKOUT_REMOTE, DROPPER_REMOTE, BATTERY, METER -> true;
            default -> false;
        };
        if (part == null || proven || companion) {
            return 0;
        }
        LongStream weighed = candidates.get(place).stream().filter(Objects::nonNull).mapToLong(BruteForce::weighed).filter(each -> each > 0);
        if (part.bike() == bike && part.place() == place) {
            return weighed(part) > 0 ? weighed(part) : weighed.min().orElse(0);
        }
        boolean fresh = part.has(PartDetail.HOURS_USED) && part.number(PartDetail.HOURS_USED) < 5 * 3600;
        return weighed(part) > 0 && !fresh ? weighed(part) : weighed.max().orElse(0);
    }

    private static long weighed(Part part) {
        return part.has(PartDetail.MASS) ? Math.round(part.number(PartDetail.MASS) * 1000) : 0;
    }
}
