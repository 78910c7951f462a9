package courseworthy.cli;

import courseworthy.report.ChecklistReport;
import courseworthy.report.json.JsonBrief;
import courseworthy.task.Brief;
import courseworthy.task.BriefResult;
import courseworthy.task.BriefTask;
import courseworthy.task.RecordedRides;
import courseworthy.task.Request;
import courseworthy.task.Workspace;
import java.util.List;

/** Prints the checklist alone. */
final class ChecklistCommand extends RequestCommand {

    private final PdfOutput pdf = new PdfOutput(this);
    private final RideLogOptions log = new RideLogOptions(this);

    ChecklistCommand(Terminal terminal) {
        super("checklist", terminal, List.of(Format.ICS, Format.PDF), "Lists what to do before, at and after the ride, and how to tell that each is done.",
                "courseworthy checklist heather-ridge --format markdown -o checklist.md",
                "courseworthy checklist heather-ridge --event event.yaml --format ics -o work.ics",
                "courseworthy checklist heather-ridge --format pdf -o checklist.pdf");
    }

    @Override
    RecordedRides recorded() {
        return log.ridesOf(hasWorkshop());
    }

    @Override
    boolean isTaken(Workspace workspace, Request request, Format asked, Output to) {
        if (!pdf.isAsked(asked, to)) {
            return false;
        }
        Brief brief = BriefTask.withoutOutlook(workspace, request).brief();
        pdf.write(to, ChecklistReport.printed(brief), JsonBrief.checklist(brief));
        return true;
    }

    @Override
    String answer(Workspace workspace, Request request, Format format, boolean colours) {
        BriefResult made = BriefTask.withoutOutlook(workspace, request);
        Brief brief = made.brief();
        if (format == Format.ICS) {
            return calendar(workspace, made);
        }
        return render(format, () -> format == Format.HTML ? ChecklistReport.pageOf(brief) : ChecklistReport.of(brief), () -> JsonBrief.checklist(brief));
    }
}
