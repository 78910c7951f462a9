package courseworthy.build;

import courseworthy.build.SeasonPlan.PlannedRide;
import courseworthy.build.SeasonWork.SeasonJob;
import courseworthy.build.SeasonWork.Purpose;
import courseworthy.wear.ServiceWork;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A season week by week, with what there is for each rider on each day.
 *
 * @param riders in the order in which they first ride
 * @param weeks  every week from the first with anything in it to the last
 */
public record SeasonWeeks(List<String> riders, List<Week> weeks) {

    public SeasonWeeks {
        riders = List.copyOf(riders);
        weeks = List.copyOf(weeks);
    }

    /**
     * A week.
     *
     * @param monday  its first day
     * @param entries by day; those of the whole week, which have none, first
     */
    public record Week(LocalDate monday, List<Entry> entries) {
        public Week {
            entries = List.copyOf(entries);
        }

        public LocalDate sunday() {
            return monday.plusDays(6);
        }
    }

    /** What an entry is, in the order in which those of one day are listed. */
    public enum Kind {
        /** The bike is home again. */
        HOME,
        /** The ride. */
        START,
        /** Work in the evening. */
        WORK,
        /** Service or renewal in the evening, or in the week where no evening has the time. */
        SERVICE,
        /** The bike leaves. */
        OUT;

        /** {@code work}. */
        public String word() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }
    }

    /**
     * One thing for one rider.
     *
     * @param date    its day; null where it is of the whole week
     * @param ride    the ride that it is, that it is before, or that it follows; null for service
     * @param purpose what work is for; null where it is none
     * @param free    minutes that there are on that evening; 0 where it is no work of an evening
     * @param jobs    in order; empty where it is no work
     * @param service null where it is none
     */
    public record Entry(LocalDate date, Kind kind, String rider, PlannedRide ride, Purpose purpose, int free, List<SeasonJob> jobs, ServiceWork service) {
        public Entry {
            jobs = List.copyOf(jobs);
        }

        /** Minutes of work. */
        public int minutes() {
            return service == null ? jobs.stream().mapToInt(each -> each.step().minutes()).sum() : service.minutes();
        }

        /** When its work begins; null where it is no work of an evening. */
        public LocalDateTime begin() {
            if (service != null) {
                return date == null ? null : at(EveningTimes.EVENING + service.evening().begin());
            }
            return jobs.isEmpty() ? null : at(jobs.stream().mapToInt(each -> each.step().begin()).min().orElseThrow());
        }

        /** When its work ends; null where it is no work of an evening. */
        public LocalDateTime end() {
            if (service != null) {
                return date == null ? null : begin().plusMinutes(service.minutes());
            }
            return jobs.isEmpty() ? null : at(jobs.stream().mapToInt(each -> each.step().begin() + each.step().minutes()).max().orElseThrow());
        }

        private LocalDateTime at(int minutes) {
            return date.atStartOfDay().plusMinutes(minutes);
        }

        /** The earliest day by which its work must be done; null where nothing hangs on it. */
        public LocalDate due() {
            return service == null ? jobs.stream().map(SeasonJob::due).filter(each -> each != null).min(Comparator.naturalOrder()).orElse(null) : service.due();
        }
    }

    public static SeasonWeeks of(SeasonPlan season) {
        List<Entry> entries = new ArrayList<>();
        for (PlannedRide ride : season.rides()) {
            entries.add(new Entry(ride.date(), Kind.START, ride.rider(), ride, null, 0, List.of(), null));
            if (ride.day().travel().out() != null) {
                entries.add(new Entry(ride.day().departure(), Kind.OUT, ride.rider(), ride, null, 0, List.of(), null));
            }
            if (ride.day().travel().home() != null) {
                entries.add(new Entry(ride.day().home(), Kind.HOME, ride.rider(), ride, null, 0, List.of(), null));
            }
        }
        entries.addAll(work(season));
        for (ServiceWork each : season.upkeep().work()) {
            LocalDate date = each.evening().found() ? each.evening().date() : null;
            int free = date == null ? 0 : season.work().hours().minutes(date);
            entries.add(new Entry(date, Kind.SERVICE, rider(season, each), null, null, free, List.of(), each));
        }
        return new SeasonWeeks(season.rides().stream().map(PlannedRide::rider).distinct().toList(), weeks(entries));
    }

    /** One entry for each evening, rider and purpose. */
    private static List<Entry> work(SeasonPlan season) {
        Map<Integer, PlannedRide> rides = new LinkedHashMap<>();
        season.rides().forEach(each -> rides.put(each.order(), each));
        Map<List<Object>, List<SeasonJob>> together = new LinkedHashMap<>();
        for (SeasonJob each : season.work().jobs()) {
            together.computeIfAbsent(List.of(each.date(), each.order(), each.purpose()), key -> new ArrayList<>()).add(each);
        }
        List<Entry> out = new ArrayList<>();
        for (List<SeasonJob> jobs : together.values()) {
            SeasonJob first = jobs.get(0);
            out.add(new Entry(first.date(), Kind.WORK, first.rider(), rides.get(first.order()), first.purpose(), season.work().hours().minutes(first.date()), jobs, null));
        }
        return out;
    }

    /** Who does a service: the next who rides that bike, else the last, else the first rider of the workshop. */
    private static String rider(SeasonPlan season, ServiceWork service) {
        String last = null;
        for (PlannedRide ride : season.rides()) {
            boolean same = ride.workshop().equals(service.workshop());
            boolean bike = same && ride.build().bike() != null && ride.build().bike().name().equals(service.bike());
            if (bike && !ride.date().isBefore(service.evening().date())) {
                return ride.rider();
            }
            last = bike || same && last == null ? ride.rider() : last;
        }
        return last == null ? season.rides().get(0).rider() : last;
    }

    private static List<Week> weeks(List<Entry> entries) {
        LocalDate first = entries.stream().map(SeasonWeeks::monday).min(Comparator.naturalOrder()).orElse(null);
        LocalDate last = entries.stream().map(SeasonWeeks::monday).max(Comparator.naturalOrder()).orElse(null);
        List<Week> out = new ArrayList<>();
        for (LocalDate monday = first; monday != null && !monday.isAfter(last); monday = monday.plusWeeks(1)) {
            LocalDate week = monday;
            out.add(new Week(week, entries.stream().filter(each -> monday(each).equals(week))
                    .sorted(Comparator.comparing(Entry::date, Comparator.nullsFirst(Comparator.naturalOrder())).thenComparing(Entry::kind)
                            .thenComparing(Entry::begin, Comparator.nullsFirst(Comparator.naturalOrder()))).toList()));
        }
        return out;
    }

    private static LocalDate monday(Entry entry) {
        return entry.service() != null ? entry.service().week() : entry.date().with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
    }
}
