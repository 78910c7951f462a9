package courseworthy.cli;

import courseworthy.build.SeasonPlan;
import courseworthy.problem.BadInput;
import courseworthy.problem.Fault;
import courseworthy.render.Renderer;
import courseworthy.render.TerminalRenderer;
import courseworthy.render.calendar.CalendarRenderer;
import courseworthy.report.RuleLinks;
import courseworthy.report.SeasonCalendar;
import courseworthy.report.SeasonCsv;
import courseworthy.report.SeasonPages;
import courseworthy.report.SeasonReport;
import courseworthy.report.SeasonWeeksCsv;
import courseworthy.report.SeasonWeeksReport;
import courseworthy.report.json.JsonBrief;
import courseworthy.report.json.JsonSeason;
import courseworthy.report.json.JsonSeasonWeeks;
import courseworthy.task.PageSet;
import courseworthy.task.RecordedRides;
import courseworthy.task.SeasonTask;
import courseworthy.task.Workspace;
import java.nio.file.Path;

/** Plans a season: every set-up and build, the changes between them, what clashes, and what is worth buying. */
final class SeasonCommand extends Command {

    /** What a file ends in that is to hold one page, and is no folder of pages. */
    private static final String ONE_PAGE = ".html";

    private final SourceFunction<String> folder = parameter("DIR", "The folder of the season: season.yaml and what it names.");
    private final SourceFunction<Boolean> byWeek = flag("Show the season week by week, riders across: starts, journeys, work by evening, service.", "--by-week");
    private final RideLogOptions log = new RideLogOptions(this);
    private final SourceFunction<Format> format = format(Format.CSV, Format.ICS);
    private final SourceFunction<String> rulePages = rulePages();
    private final Output output = output("Write to FILE instead of standard output; with --format html, into a folder of pages, or one page where FILE ends in .html.");

    SeasonCommand(Terminal terminal) {
        super("season", terminal, "Plans a season for one rider or several: for each event the recommended set-up, the build and what to change since the "
                + "last, what two riders need on the same day, where time is short, and which purchase saves most.",
                "courseworthy season my-season",
                "courseworthy season my-season --format csv -o season.csv",
                "courseworthy season my-season --format html -o season-pages",
                "courseworthy season my-season --log recordings --log-bike 'steel bike'",
                "courseworthy season my-season --by-week",
                "courseworthy season my-season --by-week --format ics -o season.ics");
    }

    @Override
    public void run() {
        if (format.value() == Format.HTML && output.toFile() && !output.typed().endsWith(ONE_PAGE)) {
            writePages();
            return;
        }
        if (rulePages.value() != null) {
            throw new BadInput(Fault.of("--rule-pages", 0, "", "no folder of pages to write", "--format html and -o with a folder", ""));
        }
        if (format.value() == Format.ICS && !byWeek.value()) {
            throw new BadInput(Fault.of("--format ics", 0, "", "no --by-week", "--by-week beside it: a calendar holds the season day by day", ""));
        }
        if (byWeek.value()) {
            writeWeeks();
            return;
        }
        SeasonPlan season;
        try (ProgressMeter meter = meter("working out the season")) {
            season = SeasonTask.of(workspace(), folder.value(), recorded(), meter);
        }
        output.write(format.value() == Format.CSV ? SeasonCsv.of(season)
                : render(format.value(), output, () -> SeasonReport.of(season), () -> JsonSeason.of(season)));
    }

    /** Null where none is named. */
    private RecordedRides recorded() {
        return log.rides();
    }

    private void writeWeeks() {
        SeasonPlan season;
        Workspace workspace = workspace();
        try (ProgressMeter meter = meter("working out the season")) {
            season = SeasonTask.byWeek(workspace, folder.value(), recorded(), meter);
        }
        output.write(switch (format.value()) {
            case CSV -> SeasonWeeksCsv.of(season);
            case ICS -> CalendarRenderer.render(SeasonCalendar.of(season, workspace.lastChange()));
            default -> render(format.value(), output, () -> SeasonWeeksReport.of(season), () -> JsonSeasonWeeks.of(season));
        });
    }

    /** Each brief becomes a page, and JSON beside it, as soon as it is made: those of a whole season would need much memory. */
    private void writePages() {
        PageSet pages = PageSet.ofSeason();
        pages.check(workspace(), output.typed());
        RuleLinks links = ruleLinks(rulePages, Format.HTML, Path.of(output.typed()));
        SeasonTask season = SeasonTask.read(workspace(), folder.value(), recorded());
        pages.check(workspace(), output.typed());
        SeasonPages reports = new SeasonPages(season.starts(), season.hasEvenings(), links);
        Renderer renderer = Format.HTML.renderer(TerminalRenderer.STANDARD_WIDTH, false);
        try (ProgressMeter meter = meter("working out the season")) {
            SeasonPlan plan = season.work(meter, (ride, brief) -> {
                pages.add(reports.path(ride), renderer.render(reports.brief(ride, brief)));
                pages.addBeside(reports.json(ride), JsonBrief.onOneLine(brief));
            });
            reports.overview(plan).forEach((path, page) -> pages.add(path, renderer.render(page)));
        }
        pages.write(workspace(), output.typed());
        print("Wrote " + pages.size() + " pages; begin with " + (output.typed().endsWith("/") ? output.typed() : output.typed() + "/") + SeasonPages.FIRST + "\n");
    }
}
