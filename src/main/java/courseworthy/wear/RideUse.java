package courseworthy.wear;

import courseworthy.ride.Range;
import java.time.LocalDate;
import java.util.Set;

/**
 * A ride as it wears parts.
 *
 * @param date   its day
 * @param bike   the bike's name
 * @param parts  names of the bike and of all parts that were on it
 * @param hours  s
 * @param length m; null where not known
 * @param going  {@code dry}, {@code damp} or {@code wet}; null where not known
 * @param mud    share of the way, 0 to 1; null where not known
 * @param event  its name; null where it is none
 */
public record RideUse(LocalDate date, String bike, Set<String> parts, Range hours, Double length, String going, Double mud, String event) {

    public RideUse {
        parts = Set.copyOf(parts);
    }
}
