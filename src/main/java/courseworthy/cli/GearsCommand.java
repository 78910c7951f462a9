package courseworthy.cli;

import courseworthy.report.GearsReport;
import courseworthy.report.json.JsonGears;
import courseworthy.task.GearsResult;
import courseworthy.task.GearsTask;
import courseworthy.task.Request;
import courseworthy.task.Workspace;

/** Prints the gears that a course needs. */
final class GearsCommand extends RequestCommand {

    GearsCommand(Terminal terminal) {
        super("gears", terminal, "Shows the gears a course needs, and what common chainring and cassette pairs give on it.",
                "courseworthy gears heather-ridge --rider me.yaml",
                "courseworthy gears track.gpx --ground 'surface=gravel' --rider me.yaml --format json");
    }

    @Override
    String answer(Workspace workspace, Request request, Format format, boolean colours) {
        GearsResult result = GearsTask.of(workspace, request);
        return render(format, () -> GearsReport.of(result), () -> JsonGears.of(result.brief(), result.choice(), result.shortfall()));
    }
}
