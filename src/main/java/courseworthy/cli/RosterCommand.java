package courseworthy.cli;

import courseworthy.problem.BadInput;
import courseworthy.problem.Fault;
import courseworthy.render.TerminalRenderer;
import courseworthy.report.BriefPageReport;
import courseworthy.report.BriefReport;
import courseworthy.report.Report;
import courseworthy.report.RosterBriefNames;
import courseworthy.report.RosterCsv;
import courseworthy.report.RosterReport;
import courseworthy.report.RuleLinks;
import courseworthy.report.json.JsonBrief;
import courseworthy.report.json.JsonRoster;
import courseworthy.task.Brief;
import courseworthy.task.MapRequest;
import courseworthy.task.PageSet;
import courseworthy.task.Request;
import courseworthy.task.RosterResult;
import courseworthy.task.RosterTask;
import java.nio.file.Path;
import java.util.List;

/** Compares the recommendations for all riders of a folder, and writes a brief for each where that is asked for. */
final class RosterCommand extends Command {

    private static final String RIDERS = "--riders";
    private static final String EACH = "--each";

    private final SourceFunction<String> course = parameter("COURSE", "A course profile (.yaml), a GPX track (.gpx), or the name of a shipped course.");
    private final SourceFunction<String> riders = option(RIDERS, "DIR", "The folder of the riders' files, one for each rider.");
    private final SourceFunction<String> ground = option("--ground", "GROUND",
            "Ground to assume where none is given, such as 'surface=gravel, smoothness=bad, mtb:scale=1'.");
    private final SourceFunction<MapRequest> map = map();
    private final SourceFunction<String> event = option("--event", "FILE", "The event or the typical ride: date, laps, forecast, support, rules.");
    private final SourceFunction<List<String>> sheets = repeated("--sheet", "FILE",
            "A coach's sheet of advice; may be given several times, on a tie, the later sheet wins.");
    private final SourceFunction<String> role = option("--role", "ROLE", "training or race; overrides the event's.");
    private final SourceFunction<String> date = option("--date", "DATE", "The day, such as 2025-06-14; overrides the event's.");
    private final SourceFunction<String> each = option(EACH, "FOLDER", "Also write the brief of each rider into this folder, in the same format.");
    private final SourceFunction<Format> format = format(Format.CSV);
    private final SourceFunction<String> rulePages = rulePages();
    private final Output output = output();

    RosterCommand(Terminal terminal) {
        super("roster", terminal, "Says for all riders of a folder how their bikes should be set up for a course, who differs from most, and in what.",
                "courseworthy roster heather-ridge --riders roster",
                "courseworthy roster heather-ridge --riders roster --format csv -o roster.csv",
                "courseworthy roster heather-ridge --riders roster --format html --each briefs -o roster.html");
    }

    @Override
    public void run() {
        if (riders.value() == null) {
            throw new BadInput(Fault.of(RIDERS, 0, "", "nothing", "a folder of riders' files", "Add \"--riders DIR\"."));
        }
        if (each.value() != null && format.value() == Format.CSV) {
            throw new BadInput(Fault.of(EACH, 0, "", "--format csv beside it", "text, markdown, html or json", "A brief is no table."));
        }
        if (rulePages.value() != null && each.value() == null) {
            throw new BadInput(Fault.of("--rule-pages", 0, "", "no " + EACH, EACH + " beside it", "The page of the roster gives no rules; the briefs of its riders do."));
        }
        RuleLinks links = ruleLinks(rulePages, format.value(), Path.of(each.value() == null ? "" : each.value()));
        PageSet briefs = each.value() == null ? null : PageSet.ofRoster();
        check(briefs);
        RosterTask roster = RosterTask.read(workspace(), Request.builder(course.value()).ground(ground.value()).event(event.value()).sheets(sheets.value())
                .role(role.value()).date(date.value()).map(map.value()).build(), riders.value());
        check(briefs);
        output.check();
        RosterResult result;
        try (ProgressMeter meter = meter("working out the roster")) {
            List<String> paths = RosterBriefNames.of(roster.names(), ending());
            result = roster.work(meter, briefs == null ? null : (rider, brief) -> briefs.add(paths.get(rider), brief(brief, links)));
        }
        if (briefs != null) {
            briefs.write(workspace(), each.value());
            remark("Wrote " + briefs.size() + (briefs.size() == 1 ? " brief to " : " briefs to ") + each.value());
        }
        output.write(format.value() == Format.CSV ? RosterCsv.of(result)
                : render(format.value(), output, () -> RosterReport.of(result), () -> JsonRoster.of(result)));
    }

    private void check(PageSet briefs) {
        if (briefs != null) {
            briefs.check(workspace(), each.value());
        }
    }

    private String ending() {
        return switch (format.value()) {
            case MARKDOWN -> ".md";
            case HTML -> ".html";
            case JSON -> ".json";
            default -> ".txt";
        };
    }

    /** As the command brief writes it to a file. */
    private String brief(Brief brief, RuleLinks links) {
        if (format.value() == Format.JSON) {
            return JsonBrief.of(brief);
        }
        Report report = format.value() == Format.HTML ? BriefPageReport.of(brief, links)
                : format.value() == Format.TEXT ? BriefReport.inShort(brief) : BriefReport.of(brief);
        return format.value().renderer(TerminalRenderer.STANDARD_WIDTH, false).render(report);
    }
}
