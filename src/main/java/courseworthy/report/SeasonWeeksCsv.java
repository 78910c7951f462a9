package courseworthy.report;

import courseworthy.build.SeasonPlan;
import courseworthy.build.SeasonWeeks;
import courseworthy.build.SeasonWeeks.Entry;
import courseworthy.build.SeasonWeeks.Week;
import java.util.List;

/** Writes the weeks of a season as comma-separated values: a row for each entry, with its week and day. */
public final class SeasonWeeksCsv {

    private static final List<String> HEAD = List.of("week_from", "date", "rider", "kind", "purpose", "event", "role", "start", "bike", "work_min", "free_min", "due", "what");

    private SeasonWeeksCsv() {
    }

    public static String of(SeasonPlan season) {
        CsvWriter out = new CsvWriter(HEAD);
        for (Week week : SeasonWeeks.of(season).weeks()) {
            for (Entry each : week.entries()) {
                out.row(row(week, each));
            }
        }
        if (!season.attribution().isEmpty()) {
            out.row(List.of("", "", "", "map data", "", "", "", "", "", "", "", "", season.attribution()));
        }
        return out.text();
    }

    private static List<String> row(Week week, Entry entry) {
        boolean ride = entry.ride() != null;
        boolean start = entry.kind() == SeasonWeeks.Kind.START;
        return List.of(week.monday().toString(), text(entry.date()), entry.rider(), entry.kind().word(),
                entry.purpose() == null ? "" : entry.purpose().word(), ride ? entry.ride().event() : "", ride ? entry.ride().role() : "",
                start ? text(entry.ride().day().start()) : "", ride ? SeasonWeekPhrases.bike(entry.ride()) : entry.service().bike(),
                entry.minutes() == 0 ? "" : Integer.toString(entry.minutes()), entry.free() == 0 ? "" : Integer.toString(entry.free()),
                text(entry.due()), what(entry));
    }

    private static String what(Entry entry) {
        String lines = String.join("; ", SeasonWeekPhrases.lines(entry));
        return entry.service() == null ? lines : entry.service().what() + " (" + lines + ")";
    }

    private static String text(Object value) {
        return value == null ? "" : value.toString();
    }
}
