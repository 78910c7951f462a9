package courseworthy.build;

import courseworthy.ride.Range;
import courseworthy.sheet.Sheet;
import courseworthy.wear.UpkeepPlan;
import courseworthy.workshop.Part;
import java.time.LocalDate;
import java.util.Comparator;
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
 * @param wishes   what is required first, then what saves most time for its price; what is not known last
 * @param work     the work on the bikes
 */
public record SeasonPlan(String name, String currency, Double minuteWorth, boolean back, Map<String, List<Sheet>> sheets,
        String attribution, List<PlannedRide> rides, List<PartClash> clashes, List<Wish> wishes, SeasonWork work) {

    public SeasonPlan {
        sheets = java.util.Collections.unmodifiableMap(new java.util.LinkedHashMap<>(sheets));
        rides = List.copyOf(rides);
        clashes = List.copyOf(clashes);
        wishes = List.copyOf(wishes);
    }

    /** Service, renewal and shopping by week; empty where no workshop has a log. */
    public UpkeepPlan upkeep() {
        return work.upkeep();
    }

    /**
     * One rider at one event.
     *
     * @param order    by which rides of one date are sorted
     * @param day      what is ridden, and when
     * @param workshop its name
     * @param call     what is decided
     * @param build    with the swaps since the ride before
     */
    public record PlannedRide(int order, String rider, EventDay day, String workshop, List<SettledValue> call, Build build) {
        public PlannedRide {
            call = List.copyOf(call);
        }

        /** The name of the event. */
        public String event() {
            return day.name();
        }

        public String course() {
            return day.course();
        }

        public LocalDate date() {
            return day.date();
        }

        /** {@code race} or {@code training}. */
        public String role() {
            return day.role();
        }
    }

    /** A decision, as text. */
    public record SettledValue(String topic, String value) {
    }

    /**
     * What does not go together.
     *
     * @param date    of the later ride
     * @param what    the parts or the bike that are wanted twice; "time" where the work does not fit between two rides
     * @param wanting who wants them: {@code Ida (hardtail, Heather Ridge)}
     * @param choices what can be done, the one that is scheduled first
     */
    public record PartClash(LocalDate date, List<String> what, List<String> wanting, List<ClashChoice> choices) {
        public PartClash {
            what = List.copyOf(what);
            wanting = List.copyOf(wanting);
            choices = List.copyOf(choices);
        }
    }

    /**
     * One way out.
     *
     * @param what  in a sentence without a point at the end
     * @param loses what is lost by it
     * @param costs time it costs, s; null where it is not known
     */
    public record ClashChoice(String what, List<UnmetTopic> loses, Range costs) {
        public ClashChoice {
            loses = List.copyOf(loses);
        }
    }

    /**
     * A decision that a rider does without.
     *
     * @param got    what the rider has instead
     * @param wanted the decision as text
     */
    public record UnmetTopic(String rider, String topic, String got, String wanted) {
    }

    /**
     * A part on the wish list, or parts that are bought together.
     *
     * @param parts    one part, or a set that does more than its parts do one by one
     * @param price    of all of them, as written; null where one has none
     * @param workshop the name of the workshop whose wish it is
     * @param rides    where all of it would be used: {@code Ida, Heather Ridge}
     * @param returned time that these parts save over all of these against the best build without them, s, whatever else changes with
     *                 them; null where it is not known for one of them
     * @param perMoney time saved for one unit of money, s; null where it is not known
     * @param repaid   such events after which what it saved is worth its price; null where that is never, or is not known
     * @param required what the event, the law or a safety limit requires and is met only with it
     * @param serves   decisions that are met only with it
     * @param notches  loss against the decisions that it spares, over all rides
     */
    public record Wish(List<Part> parts, Double price, String workshop, List<String> rides, Range returned, Range perMoney, Range repaid,
            List<String> required, List<String> serves, long notches) {

        /** More than any part saves for its price, and more than any loss (computing). */
        private static final double REQUIRED = 1e12;

        public Wish {
            parts = List.copyOf(parts);
            rides = List.copyOf(rides);
            required = List.copyOf(required);
            serves = List.copyOf(serves);
        }

        /** What is required first, then most time for its price; of no price, or where that is not known, what meets more of the calls. */
        public static Comparator<Wish> byWorth() {
            return Comparator.comparingDouble(Wish::rank);
        }

        private double rank() {
            if (!required.isEmpty()) {
                return -REQUIRED - notches;
            }
            return perMoney != null && !rides.isEmpty() ? -perMoney.mid() : REQUIRED - notches;
        }

        /** The parts in words: {@code front tyre A and front tyre B}. */
        public String name() {
            StringBuilder out = new StringBuilder();
            for (int i = 0; i < parts.size(); i++) {
                out.append(i == 0 ? "" : i == parts.size() - 1 ? " and " : ", ").append(parts.get(i));
            }
            return out.toString();
        }
    }
}
