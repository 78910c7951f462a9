package courseworthy.report;

import courseworthy.build.SeasonPlan;
import courseworthy.build.SeasonPlan.PartClash;
import courseworthy.build.SeasonWeeks;
import courseworthy.build.SeasonWeeks.Entry;
import courseworthy.build.SeasonWeeks.Week;
import courseworthy.event.WorkHours;
import courseworthy.report.TableColumn.Alignment;
import java.time.LocalDate;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** A season to pin on the wall: weeks down, riders across. */
public final class SeasonWeeksReport {

    static final String ID = "weeks";

    private SeasonWeeksReport() {
    }

    public static Report of(SeasonPlan season) {
        SeasonWeeks weeks = SeasonWeeks.of(season);
        return SeasonReport.head(season)
                .paragraph(hours(season.work().hours()))
                .section(Section.builder(ID, "Week by week").table(table(weeks)))
                .section(SeasonReport.clashes("Where time is short", season.clashes().stream().filter(SeasonWeeksReport::ofTime).toList()))
                .build();
    }

    /** As a page of several. @param back the way to the page to begin with */
    static Report page(SeasonPlan season, RichText back) {
        Report page = of(season);
        List<Block> lead = new ArrayList<>(page.lead());
        lead.add(0, new Paragraph(back, Paragraph.Role.BODY));
        return new Report(page.title(), RichText.of("Week by week"), lead, page.sections(), List.of("season", season.name(), ID));
    }

    private static boolean ofTime(PartClash clash) {
        return clash.what().equals(List.of("time"));
    }

    /** {@code Time for work: 45 min on each evening, 3:00 h on Saturdays.} */
    static String hours(WorkHours hours) {
        List<String> out = new ArrayList<>();
        out.add(Figures.time(hours.usual() * 60.0) + " on each evening" + (hours.from() == null ? "" : " from " + Phrases.date(hours.from())));
        hours.weekdays().forEach((day, minutes) -> out.add(Figures.time(minutes * 60.0) + " on " + day.getDisplayName(TextStyle.FULL, Locale.ENGLISH) + "s"));
        hours.days().forEach((day, minutes) -> out.add(Figures.time(minutes * 60.0) + " on " + Phrases.weekday(day)));
        return "Time for work: " + String.join(", ", out) + ".";
    }

    private static Table table(SeasonWeeks weeks) {
        Table.Builder out = Table.builder().keyColumns(2).column("week").column("day");
        weeks.riders().forEach(each -> out.column(RichText.ofQuoted(each), Alignment.LEFT, false));
        for (Week week : weeks.weeks()) {
            Map<LocalDate, List<Entry>> days = new LinkedHashMap<>();
            week.entries().forEach(each -> days.computeIfAbsent(each.date(), day -> new ArrayList<>()).add(each));
            if (days.isEmpty()) {
                days.put(null, List.of());
            }
            boolean first = true;
            for (Map.Entry<LocalDate, List<Entry>> day : days.entrySet()) {
                List<RichText> row = new ArrayList<>();
                row.add(RichText.of(first ? Phrases.days(week.monday(), week.sunday()) : ""));
                row.add(RichText.of(day.getKey() == null ? "" : day(day.getKey())));
                weeks.riders().forEach(rider -> row.add(cell(day.getValue(), rider)));
                out.row(row);
                first = false;
            }
        }
        return out.build();
    }

    /** {@code Mon 15}. */
    private static String day(LocalDate date) {
        return date.getDayOfWeek().getDisplayName(TextStyle.SHORT, Locale.ENGLISH) + " " + date.getDayOfMonth();
    }

    private static RichText cell(List<Entry> entries, String rider) {
        List<RichText> out = new ArrayList<>();
        for (Entry each : entries) {
            if (each.rider().equals(rider)) {
                RichText words = RichText.ofQuoted(SeasonWeekPhrases.words(each) + ".");
                out.add(each.kind() == SeasonWeeks.Kind.START ? words.in(Style.STRONG) : words);
            }
        }
        // Each on its own line where a renderer breaks lines within a cell, else as sentences.
        return RichText.join("\n", out);
    }
}
