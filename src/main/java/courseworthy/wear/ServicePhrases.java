package courseworthy.wear;

import courseworthy.workshop.RideLog.Weekly;
import courseworthy.workshop.Workshop;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Says what a due day rests on. */
final class ServicePhrases {

    private static final double HOUR = 3600;
    private static final double KILOMETRE = 1000;
    /** More names than this are counted. */
    private static final int MOST_NAMES = 6;

    private ServicePhrases() {
    }

    static String why(ServiceInterval interval, ServiceStart start, ServiceClock.Due due) {
        if (due.byAge()) {
            return start.what() + " " + shown(start) + ", " + often(interval.stated(), days(interval.every().days()));
        }
        if (start.used() != null && start.used() >= 1) {
            return "at its wear limit" + (start.what().equals("measured") ? " on " + start.day() : "");
        }
        String dirty = due.dirty() < HOUR / 2 ? "" : ", " + hours(due.dirty()) + " of it in the wet or mud";
        if (start.used() != null) {
            return Math.round(start.used() * 100) + " % worn " + (start.what().equals("measured") ? start.day().toString() : "when the log began") + ", "
                    + hours(due.hours() - start.hours()) + " since by then" + dirty + ", " + often(interval.stated(), every(interval) + " from new");
        }
        String since = start.day() == null ? "" : " since it was " + start.what() + " " + shown(start);
        String ridden = (start.complete() ? "" : "at least ") + hours(due.hours()) + " by then";
        return ridden + since + dirty + ", " + often(interval.stated(), every(interval));
    }

    /** Why a job is not done in the week before it is due; empty where it is. */
    static String timing(ServiceEvening evening) {
        return switch (evening.timing()) {
            case BEFORE -> "";
            case WITHIN -> "; the evenings of the week before have no time";
            case LATE -> "; late: no evening before it is due has the time";
            case NONE -> "; " + evening.shortage().words();
        };
    }

    /** The day itself: a part counts from the day before it was fitted. */
    private static LocalDate shown(ServiceStart start) {
        return start.what().equals("fitted") || start.what().equals("added") ? start.day().plusDays(1) : start.day();
    }

    private static String often(boolean stated, String what) {
        return stated ? "the manufacturer states " + what : what + " is usual";
    }

    private static String every(ServiceInterval interval) {
        List<String> out = new ArrayList<>();
        ServiceInterval.Every every = interval.every();
        if (every.hours() != null) {
            out.add(range(every.hours(), HOUR, "h"));
        }
        if (every.length() != null) {
            out.add(range(every.length(), KILOMETRE, "km"));
        }
        if (every.days() != null && out.isEmpty()) {
            out.add(days(every.days()));
        }
        return String.join(" or ", out);
    }

    private static String days(IntervalBounds days) {
        return range(days, 1, "days");
    }

    private static String range(IntervalBounds bounds, double unit, String symbol) {
        long low = Math.round(bounds.low() / unit);
        long high = Math.round(bounds.high() / unit);
        return (low == high ? Long.toString(low) : low + " to " + high) + " " + symbol;
    }

    private static String hours(double seconds) {
        return Math.round(seconds / HOUR) + " h";
    }

    /** @param incomplete parts of which the hours before the log are not known */
    static List<String> notes(Workshop workshop, List<Weekly> weekly, LocalDate from, List<String> incomplete) {
        List<String> out = new ArrayList<>();
        out.add("Planned from " + from + ", the day after the last entry of the log.");
        Map<String, Double> byBike = new LinkedHashMap<>();
        weekly.forEach(each -> byBike.merge(each.on().bike(), each.hours(), Double::sum));
        List<String> weeks = new ArrayList<>();
        byBike.forEach((bike, hours) -> weeks.add(oneDecimal(hours / HOUR) + " h a week on " + bike));
        if (!weeks.isEmpty()) {
            out.add("Between the events: " + String.join(", ", weeks) + (workshop.log().weekly().isEmpty() ? ", the mean of the log." : "."));
        } else {
            out.add("Between the events nothing is ridden: the log gives no usual week and is too short to work one out.");
        }
        if (!incomplete.isEmpty()) {
            String names = incomplete.size() > MOST_NAMES ? incomplete.size() + " parts" : String.join(", ", incomplete);
            out.add("Hours before the log are not given for " + names + "; what is due on them may be due sooner.");
        }
        out.add("Intervals are common practice, unless the workshop's file has the manufacturer's. A wear limit marked on a part comes first.");
        return out;
    }

    private static String oneDecimal(double value) {
        long tenths = Math.round(value * 10);
        return tenths / 10 + (tenths % 10 == 0 ? "" : "." + tenths % 10);
    }
}
