package courseworthy.build;

import courseworthy.ride.Range;
import courseworthy.workshop.Part;
import java.util.List;

/**
 * What is worth changing for an event, and what to leave alone.
 *
 * @param changes    what the bike gains against how it stands now, in the order of places
 * @param all        all changes together; null where there is none
 * @param leaveAlone what stays as it is
 * @param races      races a year on this bike; null where not written
 */
public record WorthwhileChanges(List<WorthwhileChange> changes, WorthwhileChange all, List<Stay> leaveAlone, Integer races) {

    public WorthwhileChanges {
        changes = List.copyOf(changes);
        leaveAlone = List.copyOf(leaveAlone);
    }

    /**
     * Parts that change together: a wheel with what is on it, a crank with its rings, or one part.
     *
     * @param place   where, in words
     * @param on      what goes on, the carrying part first
     * @param off     what stood there, in the same order of places
     * @param grams   change of mass; null where a mass is not known
     * @param returns time returned over the ride, s, above 0 where it is faster; null where it cannot be computed
     * @param minutes of work
     * @param serves  decisions it serves, as text
     * @param fresh   of what goes on, what is hardly ridden
     */
    public record WorthwhileChange(String place, List<Part> on, List<Part> off, Long grams, Range returns, double minutes, List<String> serves,
            List<Part> fresh) {
        public WorthwhileChange {
            on = List.copyOf(on);
            off = List.copyOf(off);
            serves = List.copyOf(serves);
            fresh = List.copyOf(fresh);
        }
    }

    /**
     * Something that stays as it is.
     *
     * @param part    the bike, the part that stays, or the part that stays off
     * @param place   where the part would go; null for what is where it belongs
     * @param hours   ridden so far, s; null where not written
     * @param returns what it would return over the ride, s; null where it cannot be computed or nothing would be swapped
     * @param because why, in sentences without a point at the end
     */
    public record Stay(Part part, String place, Double hours, Range returns, List<String> because) {
        public Stay {
            because = List.copyOf(because);
        }
    }
}
