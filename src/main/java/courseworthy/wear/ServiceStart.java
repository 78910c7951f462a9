package courseworthy.wear;

import courseworthy.workshop.Part;
import courseworthy.workshop.PartDetail;
import courseworthy.workshop.PartKind;
import courseworthy.workshop.RideLog;
import courseworthy.workshop.RideLog.Service;
import courseworthy.workshop.Workshop;
import java.time.LocalDate;

/**
 * From when the use of a part counts for a job.
 *
 * @param day      rides after it count; null for all rides
 * @param hours    s ridden before that count too
 * @param used     share of the part that was used up by then, as measured; null where the hours count
 * @param complete whether what was ridden before the log is known
 * @param what     what happened on the day, in a word: {@code serviced}; empty where there is no day
 */
record ServiceStart(LocalDate day, double hours, Double used, boolean complete, String what) {

    /** The word for the renewal of a part, which resets all other jobs on it. */
    static final String RENEW = "renew";

    static ServiceStart done(LocalDate day, String job) {
        return new ServiceStart(day, 0, null, true, job.equals(RENEW) ? "renewed" : "serviced");
    }

    /** As the workshop and its log say, where it has one. */
    static ServiceStart of(Part part, ServiceInterval interval, Workshop workshop) {
        RideLog log = workshop.log();
        ServiceStart out = asFitted(part, interval);
        if (log == null) {
            return out;
        }
        Service last = last(part, interval, workshop);
        if (last != null && (out.day == null || !last.date().isBefore(out.day))) {
            out = done(last.date(), last.job());
        }
        return measured(part, interval, log, out);
    }

    private static ServiceStart asFitted(Part part, ServiceInterval interval) {
        boolean sealant = part.kind() == PartKind.SEALANT;
        LocalDate fitted = part.day(sealant ? PartDetail.ADDED : PartDetail.FITTED);
        Double hours = part.number(PartDetail.HOURS_USED);
        Double used = interval.gauge() == null || !part.has(interval.gauge().measure()) ? null
                : interval.gauge().used(part.number(interval.gauge().measure()), part);
        // A part is fitted before it is ridden, so the rides of that day count.
        LocalDate before = fitted == null ? null : fitted.minusDays(1);
        return new ServiceStart(before, hours == null ? 0 : hours, used, hours != null || fitted != null || used != null, sealant ? "added" : "fitted");
    }

    private static Service last(Part part, ServiceInterval interval, Workshop workshop) {
        Service out = null;
        for (Service each : workshop.log().services()) {
            if (each.job() != null && resets(each, workshop.find(each.part()), part, interval) && (out == null || !each.date().isBefore(out.date()))) {
                out = each;
            }
        }
        return out;
    }

    private static boolean resets(Service done, Part on, Part part, ServiceInterval interval) {
        if (part.name().equals(done.part())) {
            return done.job().equals(interval.job()) || IntervalTable.shipped().resets(part.kind(), done.job(), interval.job());
        }
        if (on != null && IntervalTable.isServicedWith(part, on) && done.job().equals(interval.job())) {
            return true;
        }
        return done.job().equals(RENEW) && on != null && on.kind() == PartKind.TYRE && isIn(part, on);
    }

    /** Whether a part is the sealant in a tyre: it goes when the tyre is changed. */
    static boolean isIn(Part sealant, Part tyre) {
        Part host = sealant.kind() == PartKind.SEALANT ? sealant.on() : null;
        return host != null && (host == tyre || host == tyre.on());
    }

    private static ServiceStart measured(Part part, ServiceInterval interval, RideLog log, ServiceStart from) {
        ServiceStart out = from;
        for (Service each : log.services()) {
            Double value = interval.gauge() == null || !each.part().equals(part.name()) ? null : each.measured().get(interval.gauge().measure());
            Double used = value == null ? null : interval.gauge().used(value, part);
            if (used != null && (out.day == null || !each.date().isBefore(out.day))) {
                out = new ServiceStart(each.date(), 0, used, true, "measured");
            }
        }
        return out;
    }
}
