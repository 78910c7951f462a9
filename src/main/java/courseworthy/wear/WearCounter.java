package courseworthy.wear;

import courseworthy.workshop.Part;
import courseworthy.workshop.Workshop;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;

/** Counts how far parts wear over rides on days that follow one another, and on which evening each job has to be done before it may fall due. */
public final class WearCounter {

    private static final double FULL = 1 - 1e-9;
    /** Days before the first ride on which a build is made at the earliest, as its checklist has it. */
    private static final int WEEK = 7;

    private final IntervalTable table = IntervalTable.shipped();
    private final List<RideUse> rides;
    private final Workshop workshop;
    private final Set<String> fresh;

    /**
     * A job on a part over the rides.
     *
     * @param part     the part
     * @param interval how often the job is done
     * @param known    whether what was ridden on the part before is known; otherwise it counts as fresh
     * @param before   the least and the most of its interval that is used up before the first ride
     * @param used     the same at the end of the last ride, if the job is left undone
     * @param due      places of the rides, from 0, on the evenings before which it is to be done
     */
    public record Outlook(Part part, ServiceInterval interval, boolean known, WearShare before, WearShare used, List<Integer> due) {
        public Outlook {
            due = List.copyOf(due);
        }

        /** The same where the rides are some of a longer row. @param places of the rides in that row, from 0 */
        public Outlook on(List<Integer> places) {
            return new Outlook(part, interval, known, before, used, due.stream().map(places::get).toList());
        }
    }

    /**
     * How much of an interval is used up, 1 for all of it.
     *
     * @param low  at the least
     * @param high at the most
     */
    public record WearShare(double low, double high) {

        private WearShare orOlder(WearShare other) {
            return new WearShare(Math.max(low, other.low), Math.max(high, other.high));
        }
    }

    private WearCounter(List<RideUse> rides, Workshop workshop, Set<String> fresh) {
        this.rides = rides;
        this.workshop = workshop;
        this.fresh = fresh;
    }

    /**
     * What becomes of the jobs on some parts, those due first before others.
     *
     * @param rides    in order, one a day
     * @param workshop with or without a log; null where the parts are fresh and of none
     * @param fresh    names of those that are renewed in the week before the first ride, as sealant is with its tyre
     */
    public static List<Outlook> of(List<Part> parts, List<RideUse> rides, Workshop workshop, Set<String> fresh) {
        WearCounter counter = new WearCounter(rides, workshop, fresh);
        List<Outlook> out = new ArrayList<>();
        for (Part part : parts) {
            for (ServiceInterval interval : workshop == null ? counter.table.on(part) : counter.table.on(part, workshop)) {
                out.add(counter.outlook(part, interval));
            }
        }
        return inOrder(out);
    }

    /** Those due first before others. */
    public static List<Outlook> inOrder(List<Outlook> of) {
        List<Outlook> out = new ArrayList<>(of);
        out.sort(Comparator.comparing((Outlook each) -> each.due().isEmpty() ? Integer.MAX_VALUE : each.due().get(0)).thenComparing(each -> -each.used().high()));
        return out;
    }

    private Outlook outlook(Part part, ServiceInterval interval) {
        ServiceStart start = fresh.contains(part.name()) && !rides.isEmpty() ? ServiceStart.done(rides.get(0).date().minusDays(WEEK), ServiceStart.RENEW) : workshop == null ? new ServiceStart(null, 0, null, false, "") : ServiceStart.of(part, interval, workshop);
        WearShare ridden = before(part, interval, start);
        List<Integer> due = new ArrayList<>();
        Double spent = ridden.high();
        LocalDate since = start.used() == null ? start.day() : null;
        LocalDate from = since;
        double low = ridden.low();
        double high = ridden.high();
        for (int i = 0; i < rides.size(); i++) {
            WearShare ride = share(interval, rides.get(i));
            low += ride.low();
            high += ride.high();
            boolean old = from != null && interval.every().days() != null && !rides.get(i).date().isBefore(from.plusDays((long) interval.every().days().low()));
            if (spent + ride.high() >= FULL && ride.high() > 0 || old) {
                due.add(i);
                spent = 0.0;
                from = rides.get(i).date().minusDays(1);
            }
            spent += ride.high();
        }
        WearShare before = rides.isEmpty() ? ridden : ridden.orOlder(aged(interval, since, rides.get(0).date()));
        WearShare used = new WearShare(low, high);
        return new Outlook(part, interval, start.complete(), before,
                rides.isEmpty() ? used : used.orOlder(aged(interval, since, rides.get(rides.size() - 1).date())), due);
    }

    /** What time alone uses up of an interval until a day; nothing where it does not age, or since when is not known. */
    private static WearShare aged(ServiceInterval interval, LocalDate since, LocalDate until) {
        IntervalBounds days = interval.every().days();
        double age = since == null || days == null ? 0 : Math.max(0, ChronoUnit.DAYS.between(since, until));
        return age == 0 ? new WearShare(0, 0) : new WearShare(age / days.high(), age / days.low());
    }

    /** By what was measured, or by the hours ridden so far. */
    private WearShare before(Part part, ServiceInterval interval, ServiceStart start) {
        IntervalBounds hours = interval.every().hours();
        double low = start.used() != null ? start.used() : hours == null ? 0 : start.hours() / hours.high();
        double high = start.used() != null ? start.used() : hours == null ? 0 : start.hours() / hours.low();
        List<RideUse> ridden = workshop == null || workshop.log() == null ? List.of() : new RideUses(workshop).ridden();
        for (RideUse each : ridden) {
            if (each.parts().contains(part.name()) && (start.day() == null || each.date().isAfter(start.day())) && each.date().isBefore(rides.get(0).date())) {
                WearShare share = share(interval, each);
                low += share.low();
                high += share.high();
            }
        }
        return new WearShare(low, high);
    }

    /** What one ride uses up of an interval, at the least and at the most. */
    private WearShare share(ServiceInterval interval, RideUse ride) {
        IntervalBounds hours = interval.every().hours();
        IntervalBounds length = interval.every().length();
        IntervalBounds factor = table.dirt().on(ride.going(), ride.mud(), interval.dirt());
        double far = length == null || ride.length() == null ? 0 : ride.length() / length.low();
        double low = hours == null ? 0 : ride.hours().low() * factor.low() / hours.high();
        double high = hours == null ? 0 : ride.hours().high() * factor.high() / hours.low();
        return new WearShare(Math.max(low, far * factor.low()), Math.max(high, far * factor.high()));
    }
}
