package courseworthy.demand;

import java.time.LocalDate;
import java.util.List;

/**
 * Whose day it is, and which.
 *
 * @param rider the rider's name; empty where the rider's file gives none, null without a rider
 * @param tags  what the rider's file says the rider belongs to, in the order written
 * @param date  the day; null where it is not known
 */
public record Occasion(String rider, List<String> tags, LocalDate date) {

    public static final Occasion UNKNOWN = new Occasion(null, List.of(), null);

    public Occasion {
        tags = List.copyOf(tags);
    }
}
