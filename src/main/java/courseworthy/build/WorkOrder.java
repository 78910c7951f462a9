package courseworthy.build;

import courseworthy.build.Build.Swap;
import courseworthy.workshop.MountingPlace;
import courseworthy.workshop.Part;
import courseworthy.workshop.PartDetail;
import courseworthy.workshop.PartKind;
import courseworthy.workshop.Workshop;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The work from one state of a workshop to another, as one list that can be done on one stand: what is changed on a wheel, a crank or a fork that
 * goes in is changed on it before, and goes in with it; a part of the frame comes before what it carries. {@link WorkPlan} puts it in the
 * order that finishes earliest.
 */
final class WorkOrder {

    /** From the frame outwards: what carries before what is carried. */
    static final List<MountingPlace> ORDER = List.of(MountingPlace.SHOCK, MountingPlace.HEADSET, MountingPlace.CROWN_RACE, MountingPlace.FORK, MountingPlace.SPACERS, MountingPlace.STEM, MountingPlace.BAR, MountingPlace.EXTENSIONS, MountingPlace.SHIFTER,
            MountingPlace.LOCKOUT_REMOTE, MountingPlace.DROPPER_REMOTE, MountingPlace.SEATPOST, MountingPlace.SADDLE, MountingPlace.BOTTOM_BRACKET, MountingPlace.CRANK, MountingPlace.CHAINRING, MountingPlace.METER, MountingPlace.PEDALS, MountingPlace.DERAILLEUR, MountingPlace.BATTERY, MountingPlace.FRONT_ADAPTER, MountingPlace.REAR_ADAPTER,
            MountingPlace.FRONT_CALIPER, MountingPlace.REAR_CALIPER, MountingPlace.FRONT_PADS, MountingPlace.REAR_PADS, MountingPlace.FRONT_WHEEL, MountingPlace.FRONT_TYRE, MountingPlace.FRONT_INSERT, MountingPlace.FRONT_SEALANT, MountingPlace.FRONT_ROTOR, MountingPlace.REAR_WHEEL,
            MountingPlace.REAR_TYRE, MountingPlace.REAR_INSERT, MountingPlace.REAR_SEALANT, MountingPlace.REAR_ROTOR, MountingPlace.CASSETTE, MountingPlace.CHAIN, MountingPlace.LIGHTS, MountingPlace.BAG);

    private final Workshop workshop;
    private final MountingEffort work;
    private final MountingState now;
    private final MountingState then;
    private final List<Swap> out = new ArrayList<>();
    /** What stood on what is being worked on before the work. */
    private Map<MountingPlace, Part> begun = Map.of();

    private WorkOrder(Workshop workshop, MountingState from, MountingState to) {
        this.workshop = workshop;
        this.work = new MountingEffort(workshop);
        this.now = from.copy();
        this.then = to;
    }

    /**
     * The work on one bike.
     *
     * @param from what is mounted before; stays as it is
     */
    static List<Swap> on(Part bike, Workshop workshop, MountingState from, MountingState to) {
        WorkOrder steps = new WorkOrder(workshop, from, to);
        steps.on(bike);
        return steps.out;
    }

    /** The work on everything: the bike first, then the other bikes, then wheels, cranks and forks that lie loose. */
    static List<Swap> all(Part bike, Workshop workshop, MountingState from, MountingState to) {
        WorkOrder steps = new WorkOrder(workshop, from, to);
        steps.on(bike);
        for (Part other : workshop.bikes()) {
            if (other != bike) {
                steps.on(other);
            }
        }
        for (Part part : workshop.parts()) {
            if (carriesItsOwn(part.kind()) && to.bike(part) == null) {
                steps.on(part);
            }
        }
        return steps.out;
    }

    /** The place of what carries a part of this place, a fork its stem, a post its saddle; null for the frame. */
    static MountingPlace carrier(MountingPlace place) {
        return switch (place) {
            case SPACERS, STEM -> MountingPlace.FORK;
            case BAR -> MountingPlace.STEM;
            case EXTENSIONS, LOCKOUT_REMOTE, DROPPER_REMOTE -> MountingPlace.BAR;
            case BATTERY -> MountingPlace.DERAILLEUR;
            case SADDLE -> MountingPlace.SEATPOST;
            case PEDALS -> MountingPlace.CRANK;
            default -> place.host();
        };
    }

    /** Moving these over belongs to the work on what carries them: a fork is not swapped with its stem on, nor a stem with its bar. */
    static boolean movesUnasked(MountingPlace place) {
        return place == MountingPlace.STEM || place == MountingPlace.SPACERS || place == MountingPlace.BAR;
    }

    private void on(Part root) {
        Map<MountingPlace, Part> wanted = then.places(root);
        Map<MountingPlace, Part> standing = now.places(root);
        begun = standing;
        for (MountingPlace place : ORDER) {
            if (place == MountingPlace.LIGHTS) {
                lights(root);
            } else if (standing.get(place) != wanted.get(place)) {
                ready(root, place, wanted);
                step(root, place, standing.get(place), wanted.get(place));
                standing = now.places(root);
            }
        }
    }

    /** Whether what stands on such a part is changed on it while it lies loose. */
    private static boolean carriesItsOwn(PartKind kind) {
        return kind == PartKind.WHEEL || kind == PartKind.CRANK || kind == PartKind.FORK;
    }

    /** Changes on a wheel, a crank or a fork that goes in what is to stand on it, before it goes in. */
    private void ready(Part root, MountingPlace place, Map<MountingPlace, Part> wanted) {
        Part carrier = wanted.get(place);
        if (carrier == null || !carriesItsOwn(place.kind())) {
            return;
        }
        for (MountingPlace child : ORDER) {
            Part stands = child.host() == place ? now.places(carrier).get(child) : null;
            if (child.host() == place && stands != wanted.get(child)) {
                step(root, child, stands, wanted.get(child));
            }
        }
    }

    /** A bike carries several lights, so each is looked at by itself. */
    private void lights(Part root) {
        for (Part part : workshop.parts()) {
            if (part.kind() == PartKind.LIGHTS && now.isOn(part, root) != then.isOn(part, root)) {
                step(root, MountingPlace.LIGHTS, now.isOn(part, root) ? part : null, then.isOn(part, root) ? part : null);
            }
        }
    }

    private void step(Part root, MountingPlace place, Part has, Part wants) {
        if (goesAlong(has, wants)) {
            return;
        }
        Part from = wants == null ? null : now.bike(wants);
        Part over = wants == null ? null : now.on(wants);
        MountingPlace was = wants == null ? null : now.place(wants);
        Set<Part> before = new LinkedHashSet<>(now.carried(root));
        double mass = now.mass(root);
        List<Part> held = has == null ? List.of() : held(root, has);
        if (has != null) {
            now.put(has, null);
        }
        if (wants != null) {
            bare(root, wants);
        }
        List<Part> with = wants == null ? List.of() : stays(wants);
        if (wants != null) {
            now.putAs(wants, then);
        }
        held.stream().filter(each -> wants != null && then.on(each) == wants).forEach(each -> now.put(each, wants));
        Set<Part> after = new LinkedHashSet<>(now.carried(root));
        Long grams = weighed(before, after) ? Long.valueOf(Math.round((now.mass(root) - mass) * 1000)) : null;
        boolean moved = over != null && over.kind() != PartKind.BIKE && (from == null || from == root);
        if (moved && movesUnasked(place) && has == null) {
            return;
        }
        out.add(new Swap(root, place, has, wants, with, moved ? over : null, from == root ? null : from, grams,
                new Build.SwapWork(work.minutes(place.kind()), along(root, place, wants, moved ? over : null, was, with), afterwards(place, wants),
                        needs(root, place, wants), AfterSwapChecks.mechanic(place) || !OpenedHoses.along(root, place.kind(), wants, then.places(root)).isEmpty()), List.of()));
    }

    /** What a fork or a stem does not take along when it comes off: it stays with the bike, and takes its place on the new one unasked. */
    private List<Part> held(Part root, Part has) {
        List<Part> out = new ArrayList<>();
        for (Part each : now.carried(has)) {
            MountingPlace place = now.on(each) == has ? now.place(each) : null;
            if (place != null && movesUnasked(place) && root.kind() == PartKind.BIKE) {
                out.add(each);
            }
        }
        out.forEach(each -> now.put(each, root));
        return out;
    }

    /** Takes off a stem that goes on what it still has of its own, a bar, where the bike's is on it now: that is swapped after it. */
    private void bare(Part root, Part wants) {
        Map<MountingPlace, Part> stands = now.places(root);
        for (Part each : now.carried(wants)) {
            MountingPlace place = now.on(each) == wants ? now.place(each) : null;
            if (place != null && movesUnasked(place) && root.kind() == PartKind.BIKE && stands.get(place) != null && stands.get(place) != each) {
                now.put(each, null);
            }
        }
    }

    /** What a swap uses up, and what a hose that it opens does. */
    private List<String> needs(Part root, MountingPlace place, Part wants) {
        List<String> all = new ArrayList<>(AfterSwapChecks.needs(place, wants));
        all.addAll(OpenedHoses.needs(root, place, wants, then.places(root)));
        return all;
    }

    /** What a swap asks for, and the shoes where it brings another cleat. */
    private List<String> afterwards(MountingPlace place, Part wants) {
        List<String> all = new ArrayList<>(AfterSwapChecks.of(place, wants));
        if (place.kind() == PartKind.PEDALS && wants != null) {
            all.addAll(AfterSwapChecks.cleat(begun.get(place), wants));
        }
        return all;
    }

    /**
     * What comes along with a swap on a bike, or changes by it: for another fork, and another size of rotor, on a wheel or by itself; and which way
     * round a tyre goes.
     */
    private List<String> along(Part root, MountingPlace place, Part wants, Part over, MountingPlace was, List<Part> with) {
        if (place.kind() == PartKind.TYRE && wants != null) {
            return TyreSwapChecks.of(wants, place, was);
        }
        if (root.kind() != PartKind.BIKE || wants == null) {
            return List.of();
        }
        if (comesOutFor(root, wants, over) != null) {
            return List.of("Take " + over + (over.kind() == PartKind.FORK ? " out of " : " off ") + root + " for it");
        }
        Map<MountingPlace, Part> after = then.places(root);
        List<String> hoses = OpenedHoses.along(root, place.kind(), wants, after);
        if (place.kind() == PartKind.FORK) {
            List<String> all = new ArrayList<>(ForkSwapChecks.of(root, begun, after));
            all.addAll(hoses);
            return all;
        }
        if (!hoses.isEmpty()) {
            return hoses;
        }
        Part rotor = place.kind() == PartKind.ROTOR ? wants : null;
        for (Part each : place.kind() == PartKind.WHEEL ? with : List.<Part>of()) {
            rotor = each.kind() == PartKind.ROTOR ? each : rotor;
        }
        return rotor == null ? List.of() : RotorSwapChecks.of(root, place.end().equals("front"), rotor, begun, after);
    }

    /** Sealant is not moved for itself, and a bag is packed, not built. */
    private static boolean goesAlong(Part has, Part wants) {
        Part part = wants == null ? has : wants;
        return part.kind() == PartKind.SEALANT || part.kind() == PartKind.BAG;
    }

    /** The fork or crank that is taken off, though it is swapped later, since a race or a ring comes off it; null for none. */
    private Part comesOutFor(Part root, Part wants, Part over) {
        boolean bolted = wants.kind() == PartKind.CROWN_RACE || wants.kind() == PartKind.CHAINRING || wants.kind() == PartKind.METER;
        return bolted && over != null && over.kind() != PartKind.BIKE && now.bike(over) == root ? over : null;
    }

    /** What a part carries now and keeps; sealant that went with another tyre is new, and no part to name. */
    private List<Part> stays(Part part) {
        List<Part> out = new ArrayList<>();
        for (Part each : now.carried(part)) {
            boolean renewed = each.kind() == PartKind.SEALANT && this.out.stream().anyMatch(swap -> renews(swap, part));
            if (then.isOn(each, part) && !renewed) {
                out.add(each);
            }
        }
        return out;
    }

    /** Whether a swap has put a tyre on a wheel, and fresh sealant into it. */
    private boolean renews(Swap swap, Part wheel) {
        return swap.place().kind() == PartKind.TYRE && swap.on() != null && now.on(swap.on()) == wheel;
    }

    private static boolean weighed(Set<Part> before, Set<Part> after) {
        for (Part part : before) {
            if (!after.contains(part) && !part.has(PartDetail.MASS)) {
                return false;
            }
        }
        for (Part part : after) {
            if (!before.contains(part) && !part.has(PartDetail.MASS)) {
                return false;
            }
        }
        return true;
    }
}
