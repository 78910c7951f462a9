package courseworthy.report;

import courseworthy.build.Build;
import courseworthy.build.SeasonPlan.PlannedRide;
import courseworthy.build.SeasonWeeks.Entry;
import courseworthy.build.SeasonWeeks.Kind;
import courseworthy.build.SeasonWork.SeasonJob;
import courseworthy.build.SeasonWork.Purpose;
import courseworthy.wear.ServiceWork;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What stands in a season's weeks, in words. */
final class SeasonWeekPhrases {

    private SeasonWeekPhrases() {
    }

    /** One entry in short, for a table. */
    static String words(Entry entry) {
        return switch (entry.kind()) {
            case SERVICE -> title(entry) + ", about " + entry.minutes() + " min, " + due(entry.service());
            case WORK -> title(entry) + ": " + String.join("; ", jobs(entry.jobs())) + longer(entry);
            case OUT -> title(entry) + borrowed(entry.ride());
            case START -> title(entry) + (entry.ride().build().leftOut() == null ? "" : ", not all changes made");
            case HOME -> title(entry) + returns(entry.ride());
        };
    }

    /** A job that no evening has the time for is on one all the same. */
    private static String longer(Entry entry) {
        return entry.minutes() > entry.free() ? "; it is done in one go and takes longer than an evening has: give it a free day in \"time for work\"" : "";
    }

    /** What it is, without what belongs to it. */
    static String title(Entry entry) {
        return switch (entry.kind()) {
            case SERVICE -> "Service: " + entry.service().what();
            case WORK -> (entry.purpose() == Purpose.RETURN ? "Way back from " : "Work for ") + entry.ride().event() + ", " + entry.minutes() + " min"
                    + (entry.minutes() > entry.free() ? " (of " + entry.free() + " free)" : "");
            case OUT -> "Leaves for " + entry.ride().event() + " with " + bike(entry.ride());
            case START -> start(entry.ride());
            case HOME -> "Home from " + entry.ride().event() + " with " + bike(entry.ride());
        };
    }

    private static String start(PlannedRide ride) {
        return (ride.day().start() == null ? "" : ride.day().start() + " ") + ride.event() + " (" + ride.role() + "), " + bike(ride);
    }

    static String bike(PlannedRide ride) {
        return ride.build().bike() == null ? "no bike can be built" : ride.build().bike().name();
    }

    /** Parts of other bikes that leave with it. */
    private static String borrowed(PlannedRide ride) {
        return ride.build().returns().isEmpty() ? "" : ", on it " + listed(ride);
    }

    private static String returns(PlannedRide ride) {
        Set<String> dated = new LinkedHashSet<>();
        for (Build.Return each : ride.build().returns()) {
            dated.add(each.bike() + (each.by() == null ? "" : " by " + Phrases.weekday(each.by())));
        }
        return dated.isEmpty() ? "" : "; to go back: " + listed(ride) + " (" + String.join(", ", dated) + ")";
    }

    private static String listed(PlannedRide ride) {
        return String.join(", ", ride.build().returns().stream().map(each -> each.part() + " of " + each.bike()).toList());
    }

    private static String due(ServiceWork service) {
        return switch (service.evening().timing()) {
            case BEFORE -> "by " + Phrases.weekday(service.due());
            case WITHIN -> "due from " + Phrases.weekday(service.due()) + (service.latest() == null ? "" : ", overdue from " + Phrases.weekday(service.latest()));
            case LATE -> "late: due by " + Phrases.weekday(service.due());
            case NONE -> "by " + Phrases.weekday(service.due()) + "; " + service.evening().shortage().words();
        };
    }

    /** The jobs of each bike together, each in a word or two. */
    private static List<String> jobs(List<SeasonJob> jobs) {
        Map<String, List<String>> byBike = new LinkedHashMap<>();
        for (SeasonJob each : jobs) {
            List<String> labels = byBike.computeIfAbsent(each.step().bike(), bike -> new ArrayList<>());
            if (!each.step().label().isEmpty()) {
                labels.add(each.step().label());
            }
        }
        List<String> out = new ArrayList<>();
        byBike.forEach((bike, labels) -> out.add(bike + " (" + (labels.isEmpty() ? "wheels out and in" : String.join(", ", labels)) + ")" + due(jobs, bike)));
        return out;
    }

    private static String due(List<SeasonJob> jobs, String bike) {
        for (SeasonJob each : jobs) {
            if (each.purpose() == Purpose.RETURN && each.due() != null && each.step().bike().equals(bike)) {
                return ", ridden next on " + Phrases.weekday(each.due());
            }
        }
        return "";
    }

    /** All that there is to know of an entry, a line each. */
    static List<String> lines(Entry entry) {
        List<String> out = new ArrayList<>();
        if (entry.kind() == Kind.WORK) {
            entry.jobs().forEach(each -> out.add(each.step().bike() + ": " + each.step().what() + " (" + each.step().minutes() + " min)"
                    + (each.step().pause() == 0 ? "" : ", then " + Figures.time(each.step().pause() * 60.0) + " before " + each.step().before())));
        } else if (entry.kind() == Kind.SERVICE) {
            out.add(entry.service().why());
        } else {
            out.add(words(entry));
        }
        return out;
    }
}
