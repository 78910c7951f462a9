package courseworthy.wear;

import courseworthy.ride.Range;
import courseworthy.workshop.MountingPlace;
import courseworthy.workshop.Part;
import courseworthy.workshop.RideLog;
import courseworthy.workshop.RideLog.Conditions;
import courseworthy.workshop.RideLog.LoggedRide;
import courseworthy.workshop.RideLog.Weekly;
import courseworthy.workshop.Workshop;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Makes rides that wear parts from what a log says: those ridden, and those of usual weeks to come. */
final class RideUses {

    /** Days of a span are taken together where it has more than this (computing). */
    private static final int MOST_PIECES = 400;
    /** A log shorter than this does not say what a usual week is, days (judgement, no source). */
    private static final int TELLING_DAYS = 28;
    private static final int WEEK = 7;

    private final Workshop workshop;
    private final Map<Conditions, Set<String>> parts = new LinkedHashMap<>();

    RideUses(Workshop workshop) {
        this.workshop = workshop;
    }

    /** What was ridden, day by day. */
    List<RideUse> ridden() {
        List<RideUse> out = new ArrayList<>();
        for (LoggedRide ride : workshop.log().rides()) {
            long days = ChronoUnit.DAYS.between(ride.from(), ride.to()) + 1;
            long step = 1 + (days - 1) / MOST_PIECES;
            for (long i = 0; i < days; i += step) {
                double share = (double) Math.min(step, days - i) / days;
                out.add(use(ride.from().plusDays(Math.min(i + step, days) - 1), ride.hours() * share, ride.length() == null ? null : Double.valueOf(ride.length() * share), ride.on()));
            }
        }
        return out;
    }

    /** What is ridden on each day of usual weeks, but on days that have a ride of that bike already. */
    List<RideUse> usual(LocalDate from, LocalDate until, List<RideUse> events) {
        Set<String> busy = new HashSet<>();
        events.forEach(each -> busy.add(each.date() + each.bike()));
        List<RideUse> out = new ArrayList<>();
        for (Weekly weekly : weekly()) {
            for (LocalDate day = from; !day.isAfter(until); day = day.plusDays(1)) {
                if (!busy.contains(day + weekly.on().bike()) && weekly.hours() > 0) {
                    out.add(use(day, weekly.hours() / WEEK, weekly.length() == null ? null : Double.valueOf(weekly.length() / WEEK), weekly.on()));
                }
            }
        }
        return out;
    }

    /** As written, else the mean of the log for each bike; empty where it is too short. */
    List<Weekly> weekly() {
        RideLog log = workshop.log();
        if (!log.weekly().isEmpty() || log.rides().isEmpty()) {
            return together(log.weekly());
        }
        long days = ChronoUnit.DAYS.between(log.first(), log.last()) + 1;
        if (days < TELLING_DAYS) {
            return List.of();
        }
        Map<Conditions, double[]> sums = new LinkedHashMap<>();
        for (LoggedRide ride : log.rides()) {
            double[] sum = sums.computeIfAbsent(ride.on(), on -> new double[2]);
            sum[0] += ride.hours();
            sum[1] += ride.length() == null ? Double.NaN : ride.length();
        }
        List<Weekly> out = new ArrayList<>();
        sums.forEach((on, sum) -> out.add(new Weekly(sum[0] * WEEK / days, Double.isNaN(sum[1]) ? null : Double.valueOf(sum[1] * WEEK / days), on)));
        return out;
    }

    /** Those of one bike in the same conditions as one. */
    private static List<Weekly> together(List<Weekly> written) {
        Map<Conditions, Weekly> out = new LinkedHashMap<>();
        for (Weekly each : written) {
            out.merge(each.on(), each, (one, other) -> new Weekly(one.hours() + other.hours(),
                    one.length() == null || other.length() == null ? null : Double.valueOf(one.length() + other.length()), one.on()));
        }
        return List.copyOf(out.values());
    }

    private RideUse use(LocalDate day, double hours, Double length, Conditions on) {
        return new RideUse(day, on.bike(), parts.computeIfAbsent(on, this::parts), Range.exact(hours), length, on.going(), on.mud(), null);
    }

    /** What is mounted on a bike now, but for what other parts stood in the place of. */
    private Set<String> parts(Conditions on) {
        Set<String> out = new HashSet<>(Set.of(on.bike()));
        Set<MountingPlace> taken = new HashSet<>();
        for (Part part : workshop.parts()) {
            if (isWith(part, on.with())) {
                out.add(part.name());
                taken.addAll(part.place() == null ? MountingPlace.of(part) : List.of(part.place()));
            }
        }
        for (Part part : workshop.parts()) {
            if (part.bike() != null && part.bike().name().equals(on.bike()) && !taken.contains(part.place())) {
                out.add(part.name());
            }
        }
        return out;
    }

    private static boolean isWith(Part part, List<String> with) {
        for (Part at = part; at != null; at = at.on()) {
            if (with.contains(at.name())) {
                return true;
            }
        }
        return false;
    }
}
