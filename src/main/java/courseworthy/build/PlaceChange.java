package courseworthy.build;

import courseworthy.workshop.MountingPlace;
import courseworthy.workshop.Part;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * One place on a bike before and after its build. Lights, of which a bike has several, are left out.
 *
 * @param place  where
 * @param before the part there now; null for none
 * @param after  the part there with the build; null for none
 * @param from   the other bike that the new part is taken from; null where it lies loose, or nothing changes
 * @param to     the other bike that the old part goes to; null where it lies loose then, or nothing changes
 */
public record PlaceChange(MountingPlace place, Part before, Part after, Part from, Part to) {

    /** Whether the parts differ. */
    public boolean changes() {
        return before != after;
    }

    /**
     * Every place that has a part before or after, in the order of places.
     *
     * @param bike   the bike that is built
     * @param now    what is on it
     * @param parts  what is on it with the build
     * @param before where all parts are now
     * @param done   where all parts are with the build
     */
    static List<PlaceChange> of(Part bike, Map<MountingPlace, Part> now, Map<MountingPlace, Part> parts, MountingState before, MountingState done) {
        Set<MountingPlace> places = EnumSet.noneOf(MountingPlace.class);
        places.addAll(now.keySet());
        places.addAll(parts.keySet());
        places.remove(MountingPlace.LIGHTS);
        List<PlaceChange> out = new ArrayList<>();
        for (MountingPlace place : places) {
            Part off = now.get(place);
            Part on = parts.get(place);
            boolean same = off == on;
            out.add(new PlaceChange(place, off, on, same ? null : other(on, bike, before), same ? null : other(off, bike, done)));
        }
        return out;
    }

    /** Another bike that a part is on; null where it is on this one or on none. */
    private static Part other(Part part, Part bike, MountingState state) {
        Part on = part == null ? null : state.bike(part);
        return on == bike ? null : on;
    }
}
