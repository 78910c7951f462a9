package courseworthy.cli;

import courseworthy.report.ChecklistReport;
import courseworthy.report.json.JsonBrief;
import courseworthy.task.Brief;
import courseworthy.task.BriefTask;
import courseworthy.task.Request;
import courseworthy.task.Workspace;

/** Prints the checklist alone. */
final class ChecklistCommand extends RequestCommand {

    ChecklistCommand(Terminal terminal) {
        super("checklist", terminal, "Lists what to do before, at and after the ride, and how it is known to be done.",
                "courseworthy checklist heather-ridge --format markdown -o checklist.md");
    }

    @Override
    String answer(Workspace workspace, Request request, Format format, boolean colours) {
        Brief brief = BriefTask.withoutOutlook(workspace, request).brief();
        return render(format, () -> format == Format.HTML ? ChecklistReport.pageOf(brief) : ChecklistReport.of(brief), () -> JsonBrief.checklist(brief));
    }
}
