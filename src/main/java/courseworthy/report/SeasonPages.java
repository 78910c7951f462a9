package courseworthy.report;

import courseworthy.build.SeasonEvent;
import courseworthy.build.SeasonPlan;
import courseworthy.build.SeasonPlan.PlannedRide;
import courseworthy.build.SetUpHistory;
import courseworthy.build.SetUpHistory.Entry;
import courseworthy.build.SetUpHistory.HistoryLine;
import courseworthy.report.TableColumn.Alignment;
import courseworthy.task.Brief;
import courseworthy.task.SeasonStart;
import courseworthy.topic.TopicGroup;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A season as pages that lead to one another: one to begin with, one for each rider, one for each event, and the brief of each start. Pages
 * have their places before anything is worked out, so that briefs can be written one by one.
 */
public final class SeasonPages {

    /** The page to begin with. */
    public static final String FIRST = "index.html";

    private static final String WEEKS = "weeks.html";
    private static final String PAGE = ".html";
    private static final String JSON = ".json";

    private static final String BRIEFS = "briefs/";

    /** From a page in a folder to those beside the folder. */
    private static final String UP = "../";
    private static final String CHANGED = "Bold with the value before it: changed since the event before.";

    private final Map<String, String> riders = new HashMap<>();
    private final Map<List<Object>, String> events = new HashMap<>();
    private final Map<Integer, String> briefs = new HashMap<>();

    private final boolean weeks;
    private final RuleLinks links;

    /**
     * @param weeks whether there is a page of the weeks, for which the time for work and every start must be known
     * @param links from the page to begin with to the pages of rules
     */
    public SeasonPages(List<SeasonStart> starts, boolean weeks, RuleLinks links) {
        this.weeks = weeks;
        this.links = links.fromBelow();
        PageNames names = new PageNames();
        for (SeasonStart start : starts) {
            riders.computeIfAbsent(start.rider(), name -> names.path("riders/", "rider", name));
            events.computeIfAbsent(List.of(start.date(), start.event(), start.course()),
                    event -> names.path("events/", "event", start.date().toString(), start.event()));
            briefs.put(start.order(), names.path(BRIEFS, "brief", start.date().toString(), start.rider(), start.event()));
        }
    }

    /** Where the brief of a ride stands. */
    public String path(PlannedRide ride) {
        return briefs.get(ride.order());
    }

    /** Where the same brief stands as JSON, beside its page. */
    public String json(PlannedRide ride) {
        String page = path(ride);
        return page.substring(0, page.length() - PAGE.length()) + JSON;
    }

    private String path(SeasonEvent event) {
        return events.get(List.of(event.date(), event.name(), event.course()));
    }

    private String event(PlannedRide ride) {
        return events.get(List.of(ride.date(), ride.event(), ride.course()));
    }

    /** A brief with ways to the pages it belongs to, and to itself as JSON. */
    public Report brief(PlannedRide ride, Brief brief) {
        Report page = BriefPageReport.of(brief, links);
        List<Section> sections = new ArrayList<>(page.sections());
        sections.add(Section.builder("season", "In this season").bullets(List.of(
                RichText.of("The season: ").link("all events and riders", UP + FIRST),
                RichText.of("All events of the rider: ").link(ride.rider(), UP + riders.get(ride.rider())),
                RichText.of("All who ride it: ").link(ride.event(), UP + event(ride)),
                RichText.of("For a debrief or a program: ").link("this brief as JSON", json(ride).substring(BRIEFS.length())))).build());
        return new Report(page.title(), page.subtitle(), page.lead(), sections, page.identity());
    }

    /** All pages but the briefs, by path, the first the one to begin with. */
    public Map<String, Report> overview(SeasonPlan season) {
        Map<String, Report> out = new LinkedHashMap<>();
        List<SeasonEvent> all = SeasonEvent.of(season);
        List<SetUpHistory> histories = SetUpHistory.of(season);
        out.put(FIRST, first(season, all, histories));
        if (weeks) {
            out.put(WEEKS, SeasonWeeksReport.page(season, RichText.EMPTY.link("All events and riders", FIRST)));
        }
        histories.forEach(each -> out.put(riders.get(each.rider()), rider(season, each)));
        all.forEach(each -> out.put(path(each), event(season, each)));
        return out;
    }

    private Report first(SeasonPlan season, List<SeasonEvent> all, List<SetUpHistory> histories) {
        Table.Builder table = Table.builder().keyColumns(2).column("date").column("event");
        histories.forEach(each -> table.column(RichText.EMPTY.link(each.rider(), riders.get(each.rider())), Alignment.LEFT, false));
        for (SeasonEvent event : all) {
            List<RichText> row = new ArrayList<>(List.of(RichText.of(Phrases.date(event.date())), RichText.EMPTY.link(event.name(), path(event))));
            for (SetUpHistory history : histories) {
                PlannedRide ride = event.of(history.rider());
                row.add(ride == null ? RichText.EMPTY : RichText.EMPTY.link(bike(ride), path(ride)));
            }
            table.row(row);
        }
        return SeasonReport.head(season)
                .paragraph(weeks ? RichText.EMPTY.link("Week by week", WEEKS).text(": starts, journeys and the work of each evening.") : RichText.EMPTY)
                .section(Section.builder("starts", "Events and riders").paragraph("Each bike leads to the brief: what to set, the plan of the day, and the checklist.")
                        .table(table.build()))
                .section(SeasonReport.clashes("Clashes", season.clashes()))
                .section(UpkeepReport.weeks(season.upkeep()))
                .section(UpkeepReport.shopping(season.upkeep(), season.currency()))
                .section(SeasonReport.wishes(season))
                .section(SeasonReport.method())
                .build();
    }

    private static String bike(PlannedRide ride) {
        return ride.build().bike() == null ? "none can be built" : ride.build().bike().name();
    }

    private Report rider(SeasonPlan season, SetUpHistory history) {
        Report.Builder out = Report.builder(RichText.ofQuoted(history.rider())).subtitle(title(season))
                .identity("season", season.name(), history.rider())
                .paragraph(RichText.EMPTY.link("All events and riders", UP + FIRST))
                .section(setUps(history));
        Section.Builder work = Section.builder("work", "Work on the bikes, by date");
        for (int i = 0; i < history.rides().size(); i++) {
            PlannedRide ride = history.rides().get(i);
            work.section(start(season, ride, RichText.ofQuoted(Phrases.date(ride.date()) + ", " + ride.event()), "start-" + (i + 1)));
        }
        return out.section(work).build();
    }

    private static RichText title(SeasonPlan season) {
        return season.name().isEmpty() ? RichText.of("Season") : RichText.ofQuoted(season.name());
    }

    private Section.Builder setUps(SetUpHistory history) {
        Section.Builder out = Section.builder("set-ups", "What changes from event to event").remark(CHANGED);
        List<RichText> same = new ArrayList<>();
        for (TopicGroup group : TopicGroup.values()) {
            List<HistoryLine> lines = history.lines().stream().filter(each -> each.topic().group() == group).toList();
            lines.stream().filter(HistoryLine::constant).forEach(each -> same.add(RichText.of(each.topic().name() + " ").quoted(each.entries().get(0).value())));
            out.table(table(history, group, lines.stream().filter(each -> !each.constant()).toList()));
        }
        RichText list = RichText.join(", ", same);
        return out.paragraph(list.isEmpty() ? list : RichText.of("The same at every event: ").append(list).text("."));
    }

    private Table table(SetUpHistory history, TopicGroup group, List<HistoryLine> lines) {
        Table.Builder out = Table.builder().caption(group.title()).keyColumns(1).column("event");
        lines.forEach(each -> out.column(each.topic().name()));
        for (int i = 0; i < history.rides().size() && !lines.isEmpty(); i++) {
            PlannedRide ride = history.rides().get(i);
            List<RichText> row = new ArrayList<>();
            row.add(RichText.of(ride.date() + " ").link(ride.event(), UP + path(ride)));
            for (HistoryLine each : lines) {
                row.add(cell(each.entries().get(i)));
            }
            out.row(row);
        }
        return out.build();
    }

    private static RichText cell(Entry entry) {
        return !entry.changed() ? RichText.ofQuoted(entry.value())
                : RichText.ofQuoted(entry.value()).in(Style.STRONG).append(RichText.ofQuoted(" (was " + entry.before() + ")").in(Style.SECONDARY));
    }

    private Report event(SeasonPlan season, SeasonEvent event) {
        Report.Builder out = Report.builder(RichText.ofQuoted(event.name()))
                .subtitle(RichText.of(Phrases.date(event.date())).quoted(event.course().equals(event.name()) ? "" : ", on " + event.course()))
                .identity("season", season.name(), event.date().toString(), event.name())
                .paragraph(RichText.EMPTY.link("All events and riders", UP + FIRST));
        for (int i = 0; i < event.rides().size(); i++) {
            PlannedRide ride = event.rides().get(i);
            out.section(start(season, ride, RichText.ofQuoted(ride.rider()), "start-" + (i + 1)));
        }
        return out.section(SeasonReport.clashes("Clashes", event.clashes())).build();
    }

    private Section.Builder start(SeasonPlan season, PlannedRide ride, RichText heading, String id) {
        return SeasonReport.ride(season, ride, heading, id)
                .paragraph(RichText.EMPTY.link("The brief", UP + path(ride)).text(": what to set, the plan of the day, the checklist."));
    }
}
