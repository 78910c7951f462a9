package courseworthy.cli;

import courseworthy.problem.BadInput;
import courseworthy.problem.Fault;
import courseworthy.report.BriefPageReport;
import courseworthy.report.BriefReport;
import courseworthy.report.PrintedBrief;
import courseworthy.report.Report;
import courseworthy.report.RuleLinks;
import courseworthy.report.TopicReport;
import courseworthy.report.json.JsonBrief;
import courseworthy.task.Brief;
import courseworthy.task.BriefResult;
import courseworthy.task.BriefTask;
import courseworthy.task.RecordedRides;
import courseworthy.task.Request;
import courseworthy.task.TopicResult;
import courseworthy.task.Workspace;
import java.util.List;

/** Prints the brief: the recommended set-up, its reasons and the checklist. */
final class BriefCommand extends RequestCommand {

    private final SourceFunction<String> topic = option("--topic", "NAME", "One topic in full: every rule for and against, the facts it rests on, and where it stands.");

    private final SourceFunction<Boolean> full = flag("Prints everything; without it text has the main points. JSON, Markdown and HTML always have everything.", "--full");
    private final SourceFunction<String> part = optionalChoice("--part", "NAME", "One part of the brief: " + String.join(", ", BriefReport.PARTS) + ".",
            BriefReport.PARTS);
    private final SourceFunction<String> rulePages = rulePages();
    private final RideLogOptions log = new RideLogOptions(this);

    private final PdfOutput pdf = new PdfOutput(this);

    BriefCommand(Terminal terminal) {
        super("brief", terminal, List.of(Format.ICS, Format.PDF), "Says how the bike should be set up for a course, why, and what to do before the start.",
                "courseworthy brief heather-ridge --role race --date 2025-06-14",
                "courseworthy brief track.gpx --ground 'surface=gravel' --rider me.yaml",
                "courseworthy brief track.gpx --map region.osm.pbf",
                "courseworthy brief heather-ridge --workshop workshop.yaml --full",
                "courseworthy brief heather-ridge --event event.yaml --workshop workshop.yaml --log recordings --log-bike 'steel bike'",
                "courseworthy brief heather-ridge --format pdf -o brief.pdf",
                "courseworthy brief heather-ridge --part reasons",
                "courseworthy brief heather-ridge --topic 'front tyre width'");
    }

    @Override
    RecordedRides recorded() {
        return log.ridesOf(hasWorkshop());
    }

    @Override
    boolean isTaken(Workspace workspace, Request request, Format asked, Output to) {
        checkOptions(asked);
        ruleLinks(rulePages, asked, to.folder());
        if (!pdf.isAsked(asked, to)) {
            return false;
        }
        Brief brief = BriefTask.of(workspace, request).brief();
        pdf.write(to, PrintedBrief.of(brief), JsonBrief.of(brief));
        return true;
    }

    @Override
    String answer(Workspace workspace, Request request, Format format, boolean colours) {
        RuleLinks links = ruleLinks(rulePages, format, outputFolder());
        if (topic.value() != null) {
            return topic(workspace, request, format, links);
        }
        BriefResult made = BriefTask.of(workspace, request);
        Brief brief = made.brief();
        return format == Format.ICS ? calendar(workspace, made) : render(format, () -> report(brief, format, links), () -> JsonBrief.of(brief));
    }

    private Report report(Brief brief, Format format, RuleLinks links) {
        if (part.value() != null) {
            return format == Format.HTML ? BriefReport.partOnPage(brief, part.value(), links) : BriefReport.part(brief, part.value());
        }
        return format == Format.HTML ? BriefPageReport.of(brief, links) : full.value() || format != Format.TEXT ? BriefReport.of(brief) : BriefReport.inShort(brief);
    }

    private void checkOptions(Format format) {
        checkWholeBriefOnly(format);
        if (part.value() != null && (topic.value() != null || full.value())) {
            throw new BadInput(Fault.of("--part", 0, "", topic.value() != null ? "--topic beside it" : "--full beside it", "one of --part, --topic and --full", ""));
        }
        if (part.value() != null && rulePages.value() != null && !BriefReport.PARTS_WITH_RULES.contains(part.value())) {
            throw new BadInput(Fault.of("--part", 0, "", part.value() + " with --rule-pages beside it", String.join(" or ", BriefReport.PARTS_WITH_RULES),
                    "No other part alone names rules; the whole brief does, and --topic."));
        }
        if (part.value() != null && format == Format.JSON) {
            throw new BadInput(Fault.of("--part", 0, "", "--format json beside it", "text, markdown or html", "JSON always has everything: take the field you need."));
        }
    }

    private void checkWholeBriefOnly(Format format) {
        String beside = topic.value() != null ? "--topic" : part.value() != null ? "--part" : full.value() ? "--full" : null;
        if ((format == Format.ICS || format == Format.PDF) && beside != null) {
            String what = format == Format.ICS ? "A calendar has the sections of the checklist" : "A printed brief has two sides";
            throw new BadInput(Fault.of(beside, 0, "", "--format " + format + " beside it", "text, markdown, html or json", what + ", and no part alone: leave out " + beside + "."));
        }
    }

    private String topic(Workspace workspace, Request request, Format format, RuleLinks links) {
        TopicResult result = topicResult(workspace, request);
        return render(format, () -> TopicReport.of(result, links), () -> JsonBrief.of(result.brief(), result.topic(), result.flips()));
    }

    private TopicResult topicResult(Workspace workspace, Request request) {
        try (ProgressMeter meter = meter("looking for what would change it")) {
            return BriefTask.topic(workspace, request, topic.value(), meter);
        }
    }
}
