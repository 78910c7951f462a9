package courseworthy.cli;

import courseworthy.problem.BadInput;
import courseworthy.problem.Fault;
import courseworthy.render.calendar.CalendarRenderer;
import courseworthy.report.BriefPageReport;
import courseworthy.report.BriefReport;
import courseworthy.report.PrintedBrief;
import courseworthy.report.PrintedStages;
import courseworthy.report.RaceCalendar;
import courseworthy.report.Report;
import courseworthy.report.RuleLinks;
import courseworthy.report.StagesReport;
import courseworthy.report.json.JsonBrief;
import courseworthy.report.json.JsonStages;
import courseworthy.task.Brief;
import courseworthy.task.CalendarTask;
import courseworthy.task.MapRequest;
import courseworthy.task.Request;
import courseworthy.task.StagesResult;
import courseworthy.task.StagesTask;
import java.util.List;

/** Settles one set-up for a race over several days, and prints it with the days, the evenings, the wear and the bag. */
final class StagesCommand extends Command {

    private final SourceFunction<String> event = parameter("EVENT", "The event's file, which lists its stages with their courses and dates.");
    private final SourceFunction<String> stage = option("--stage", "N", "The brief of one stage with the set-up of the race.");
    private final SourceFunction<String> part = optionalChoice("--part", "NAME", "One part: " + String.join(", ", StagesReport.PARTS) + ".", StagesReport.PARTS);
    private final SourceFunction<String> ground = option("--ground", "GROUND",
            "Ground to assume where none is given, such as 'surface=gravel, smoothness=bad, mtb:scale=1'.");
    private final SourceFunction<MapRequest> map = map();
    private final SourceFunction<String> rider = option("--rider", "FILE", "The rider: mass, power, skill, bike at hand.");
    private final SourceFunction<List<String>> sheets = repeated("--sheet", "FILE",
            "A coach's sheet of advice; may be given several times, on a tie, the later sheet wins.");
    private final SourceFunction<String> workshop = option("--workshop", "FILE", "The workshop: what the rider owns. The build is made from it, and the wear of its parts is counted.");
    private final SourceFunction<Format> format = format(Format.PDF, Format.ICS);
    private final SourceFunction<String> rulePages = rulePages();
    private final Output output = output();
    private final PdfOutput pdf = new PdfOutput(this);

    StagesCommand(Terminal terminal) {
        super("stages", terminal, "Says how one bike should be set up for all days of a stage race, what is worth changing in between, what wears out when, what to do on each evening, and what goes into the bag.",
                "courseworthy stages three-becks.yaml --rider me.yaml",
                "courseworthy stages three-becks.yaml --rider me.yaml --stage 2",
                "courseworthy stages three-becks.yaml --workshop workshop.yaml --format pdf -o race.pdf",
                "courseworthy stages three-becks.yaml --rider me.yaml --format ics -o race.ics");
    }

    @Override
    public void run() {
        if (part.value() != null && (stage.value() != null || format.value() == Format.JSON || format.value() == Format.PDF || format.value() == Format.ICS)) {
            String beside = stage.value() != null ? "--stage" : "--format " + format.value();
            throw new BadInput(Fault.of("--part", 0, "", beside + " beside it", "text, markdown or html of the whole race", ""));
        }
        if (rulePages.value() != null && stage.value() == null) {
            throw new BadInput(Fault.of("--rule-pages", 0, "", "no --stage", "--stage beside it", "The page of the race gives no rules; the brief of a stage does."));
        }
        if (format.value() == Format.ICS && stage.value() != null) {
            throw new BadInput(Fault.of("--format ics", 0, "", "--stage beside it", "no --stage: the calendar holds all stages", ""));
        }
        RuleLinks links = ruleLinks(rulePages, format.value(), output.folder());
        Request request = Request.builder(null).event(event.value()).ground(ground.value()).map(map.value()).rider(rider.value()).sheets(sheets.value())
                .workshop(workshop.value()).build();
        boolean printed = pdf.isAsked(format.value(), output);
        if (stage.value() != null) {
            brief(StagesTask.brief(workspace(), request, stage.value()), printed, links);
            return;
        }
        StagesResult result = StagesTask.of(workspace(), request);
        if (printed) {
            pdf.write(output, PrintedStages.of(result), JsonStages.of(result));
            return;
        }
        if (format.value() == Format.ICS) {
            output.write(CalendarRenderer.render(RaceCalendar.of(result, CalendarTask.ofRace(result), workspace().lastChange())));
            return;
        }
        output.write(render(format.value(), output, () -> part.value() == null ? whole(result) : StagesReport.part(result, part.value()), () -> JsonStages.of(result)));
    }

    private Report whole(StagesResult result) {
        return format.value() == Format.TEXT ? StagesReport.inShort(result) : format.value() == Format.HTML ? StagesReport.pageOf(result) : StagesReport.of(result);
    }

    private void brief(Brief brief, boolean printed, RuleLinks links) {
        if (printed) {
            pdf.write(output, PrintedBrief.of(brief), JsonBrief.of(brief));
            return;
        }
        output.write(render(format.value(), output, () -> format.value() == Format.HTML ? BriefPageReport.of(brief, links)
                : format.value() == Format.TEXT ? BriefReport.inShort(brief) : BriefReport.of(brief), () -> JsonBrief.of(brief)));
    }
}
