package courseworthy.build;

import courseworthy.build.Build.Swap;
import courseworthy.workshop.Detail;
import courseworthy.workshop.Kind;
import courseworthy.workshop.Part;
import courseworthy.workshop.Place;
import courseworthy.workshop.Workshop;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The work from one state of a workshop to another, as one list that can be done on one stand: what carries comes before what it
 * carries, and takes along what stays on it; the frame's own parts come before the wheels, so that a wheel is put in once.
 */
final class Steps {

    /** From the frame outwards: what carries before what is carried. */
    static final List<Place> ORDER = List.of(Place.SHOCK, Place.FORK, Place.SPACERS, Place.STEM, Place.BAR, Place.EXTENSIONS, Place.SHIFTER,
            Place.SEATPOST, Place.SADDLE, Place.CRANK, Place.CHAINRING, Place.METER, Place.PEDALS, Place.DERAILLEUR, Place.FRONT_PADS,
            Place.REAR_PADS, Place.FRONT_WHEEL, Place.FRONT_TYRE, Place.FRONT_INSERT, Place.FRONT_SEALANT, Place.FRONT_ROTOR, Place.REAR_WHEEL,
            Place.REAR_TYRE, Place.REAR_INSERT, Place.REAR_SEALANT, Place.REAR_ROTOR, Place.CASSETTE, Place.CHAIN, Place.LIGHTS, Place.BAG);

    private final Workshop workshop;
    private final Work work;
    private final Stand now;
    private final Stand then;
    private final List<Swap> out = new ArrayList<>();
    /** What stood on what is being worked on before the work. */
    private Map<Place, Part> begun = Map.of();

    private Steps(Workshop workshop, Stand from, Stand to) {
        this.workshop = workshop;
        this.work = new Work(workshop);
        this.now = from.copy();
        this.then = to;
    }

    /**
     * The work on one bike.
     *
     * @param from what is mounted before; stays as it is
     */
    static List<Swap> on(Part bike, Workshop workshop, Stand from, Stand to) {
        Steps steps = new Steps(workshop, from, to);
        steps.on(bike);
        return steps.out;
    }

    /** The work on everything: the bike first, then the other bikes, then wheels and cranks that lie loose. */
    static List<Swap> all(Part bike, Workshop workshop, Stand from, Stand to) {
        Steps steps = new Steps(workshop, from, to);
        steps.on(bike);
        for (Part other : workshop.bikes()) {
            if (other != bike) {
                steps.on(other);
            }
        }
        for (Part part : workshop.parts()) {
            if ((part.kind() == Kind.WHEEL || part.kind() == Kind.CRANK) && to.bike(part) == null) {
                steps.on(part);
            }
        }
        return steps.out;
    }

    /** The place of what carries a part of this place, a fork its stem, a post its saddle; null for the frame. */
    static Place carrier(Place place) {
        return switch (place) {
            case SPACERS, STEM -> Place.FORK;
            case BAR -> Place.STEM;
            case EXTENSIONS -> Place.BAR;
            case SADDLE -> Place.SEATPOST;
            case PEDALS -> Place.CRANK;
            default -> place.host();
        };
    }

    /** Moving these over belongs to the work on what carries them: a fork is not swapped with its stem on, nor a stem with its bar. */
    static boolean movesUnasked(Place place) {
        return place == Place.STEM || place == Place.SPACERS || place == Place.BAR;
    }

    private void on(Part root) {
        Map<Place, Part> wanted = then.places(root);
        Map<Place, Part> standing = now.places(root);
        begun = standing;
        for (Place place : ORDER) {
            if (place == Place.LIGHTS) {
                lights(root);
            } else if (standing.get(place) != wanted.get(place)) {
                step(root, place, standing.get(place), wanted.get(place));
                standing = now.places(root);
            }
        }
    }

    /** A bike carries several lights, so each is looked at by itself. */
    private void lights(Part root) {
        for (Part part : workshop.parts()) {
            if (part.kind() == Kind.LIGHTS && now.isOn(part, root) != then.isOn(part, root)) {
                step(root, Place.LIGHTS, now.isOn(part, root) ? part : null, then.isOn(part, root) ? part : null);
            }
        }
    }

    private void step(Part root, Place place, Part has, Part wants) {
        if (goesAlong(has, wants)) {
            return;
        }
        Part from = wants == null ? null : now.bike(wants);
        Part over = wants == null ? null : now.on(wants);
        Set<Part> before = new LinkedHashSet<>(now.carried(root));
        double mass = now.mass(root);
        if (has != null) {
            now.put(has, null);
        }
        List<Part> with = wants == null ? List.of() : stays(wants);
        if (wants != null) {
            now.put(wants, then.on(wants));
        }
        Set<Part> after = new LinkedHashSet<>(now.carried(root));
        Long grams = weighed(before, after) ? Long.valueOf(Math.round((now.mass(root) - mass) * 1000)) : null;
        boolean moved = over != null && over.kind() != Kind.BIKE && (from == null || from == root);
        if (moved && movesUnasked(place) && has == null) {
            return;
        }
        out.add(new Swap(root, place, has, wants, with, moved ? over : null, from == root ? null : from, work.minutes(place.kind()), grams,
                afterwards(root, place, wants, with), Afterwards.needs(place, wants), Afterwards.mechanic(place), List.of()));
    }

    /** What a swap asks for, the calliper counted where it brings a bike another size of rotor, and the shoes where another cleat. */
    private List<String> afterwards(Part root, Place place, Part wants, List<Part> with) {
        List<String> all = new ArrayList<>(Afterwards.of(place, wants));
        if (place.kind() == Kind.PEDALS && wants != null) {
            all.addAll(Afterwards.cleat(begun.get(place), wants));
        }
        Part rotor = place.kind() == Kind.ROTOR ? wants : null;
        for (Part each : place.kind() == Kind.WHEEL ? with : List.<Part>of()) {
            rotor = each.kind() == Kind.ROTOR ? each : rotor;
        }
        if (rotor != null && root.kind() == Kind.BIKE) {
            Place at = place.end().equals("front") ? Place.FRONT_ROTOR : Place.REAR_ROTOR;
            all.addAll(0, Afterwards.rotor(at, begun.get(at), rotor));
        }
        return all;
    }

    /** Sealant is not moved for itself, and a bag is packed, not built. */
    private static boolean goesAlong(Part has, Part wants) {
        Part part = wants == null ? has : wants;
        return part.kind() == Kind.SEALANT || part.kind() == Kind.BAG;
    }

    /** What a part carries now and keeps. */
    private List<Part> stays(Part part) {
        List<Part> out = new ArrayList<>();
        for (Part each : now.carried(part)) {
            if (then.isOn(each, part)) {
                out.add(each);
            }
        }
        return out;
    }

    private static boolean weighed(Set<Part> before, Set<Part> after) {
        for (Part part : before) {
            if (!after.contains(part) && !part.has(Detail.MASS)) {
                return false;
            }
        }
        for (Part part : after) {
            if (!before.contains(part) && !part.has(Detail.MASS)) {
                return false;
            }
        }
        return true;
    }
}
