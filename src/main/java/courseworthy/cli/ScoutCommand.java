package courseworthy.cli;

import courseworthy.report.ScoutReport;
import courseworthy.report.ScoutWaypoints;
import courseworthy.report.json.JsonScout;
import courseworthy.task.Request;
import courseworthy.task.ScoutResult;
import courseworthy.task.ScoutTask;
import courseworthy.task.Workspace;
import java.util.List;

/** Prints where to look before a ride. */
final class ScoutCommand extends RequestCommand {

    ScoutCommand(Terminal terminal) {
        super("scout", terminal, List.of(Format.TEXT, Format.JSON, Format.MARKDOWN, Format.GPX),
                "Lists the ground of a course that is not known, by what it could change: where to go and look.",
                "courseworthy scout track.gpx --rider me.yaml",
                "courseworthy scout track.gpx --format gpx -o look-here.gpx");
    }

    @Override
    String answer(Workspace workspace, Request request, Format format, boolean colours) {
        ScoutResult result = scouted(workspace, request);
        return format == Format.GPX ? ScoutWaypoints.of(result) : render(format, () -> ScoutReport.of(result), () -> JsonScout.of(result));
    }

    private ScoutResult scouted(Workspace workspace, Request request) {
        try (ProgressMeter meter = meter("working out what the ground could change")) {
            return ScoutTask.of(workspace, request, meter);
        }
    }
}
