package courseworthy.build;

import courseworthy.ride.Range;
import courseworthy.sheet.Sheet;
import courseworthy.wear.UpkeepPlan;
import courseworthy.workshop.Part;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;

/**
 * A season of one rider or several: what each rides when, what two want at once, and what is worth buying.
 *
 * @param name     may be empty
 * @param currency in which prices are written; may be empty
 * @param minuteWorth what a minute at an event is worth to the rider, in that currency; null where not written
 * @param back     whether everything goes back to where it was after each date
 * @param sheets   coaches' sheets in force for each rider, in the order given
 * @param attribution who must be named for the courses; empty for nobody
 * @param rides    by date, of one date in the order written
 * @param clashes  by date
 * @param wishes   what returns most time for its price first; what cannot be told of last
 * @param upkeep   service, renewal and shopping by week; empty where no workshop has a log
 */
public record SeasonPlan(String name, String currency, Double minuteWorth, boolean back, Map<String, List<Sheet>> sheets,
        String attribution, List<Ride> rides, List<Clash> clashes, List<Wish> wishes, UpkeepPlan upkeep) {

    public SeasonPlan {
        sheets = java.util.Collections.unmodifiableMap(new java.util.LinkedHashMap<>(sheets));
        rides = List.copyOf(rides);
        clashes = List.copyOf(clashes);
        wishes = List.copyOf(wishes);
    }

    /**
     * One rider at one event.
     *
     * @param order    by which rides of one date are sorted
     * @param workshop its name
     * @param role     {@code race} or {@code training}
     * @param call     what is decided
     * @param build    with the swaps since the ride before
     */
    public record Ride(int order, String rider, String event, String course, String workshop, LocalDate date, String role, List<Decided> call,
            Build build) {
        public Ride {
            call = List.copyOf(call);
        }
    }

    /** A decision, as text. */
    public record Decided(String topic, String value) {
    }

    /**
     * What does not go together.
     *
     * @param date    of the later ride
     * @param what    the parts or the bike that are wanted twice; "time" where the work does not fit between two rides
     * @param wanting who wants them: {@code Ida (hardtail, Heather Ridge)}
     * @param choices what can be done, the one that is scheduled first
     */
    public record Clash(LocalDate date, List<String> what, List<String> wanting, List<Choice> choices) {
        public Clash {
            what = List.copyOf(what);
            wanting = List.copyOf(wanting);
            choices = List.copyOf(choices);
        }
    }

    /**
     * One way out.
     *
     * @param what  in a sentence without a point at the end
     * @param loses what is lost by it, in phrases
     * @param costs time it costs, s; null where it cannot be told
     */
    public record Choice(String what, List<String> loses, Range costs) {
        public Choice {
            loses = List.copyOf(loses);
        }
    }

    /**
     * A part on the wish list.
     *
     * @param price    as written; null where it is not
     * @param workshop the name of the workshop whose wish it is
     * @param rides    where it would be used: {@code Ida, Heather Ridge}
     * @param returned time it returns over all of these, s; null where it cannot be told for one of them
     * @param perMoney time returned for one unit of money, s; null where it cannot be told
     * @param repaid   such events after which what it returned is worth its price; null where that is never, or cannot be told
     * @param serves   decisions that are met with it alone
     * @param notches  loss against the decisions that it spares, over all rides
     */
    public record Wish(Part part, Double price, String workshop, List<String> rides, Range returned, Range perMoney, Range repaid,
            List<String> serves, long notches) {
        public Wish {
            rides = List.copyOf(rides);
            serves = List.copyOf(serves);
        }
    }
}
