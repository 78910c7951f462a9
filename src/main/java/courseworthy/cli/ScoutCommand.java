package courseworthy.cli;

import courseworthy.problem.BadInput;
import courseworthy.problem.Fault;
import courseworthy.report.ScoutAnswerReport;
import courseworthy.report.ScoutReport;
import courseworthy.report.ScoutWaypoints;
import courseworthy.report.json.JsonScout;
import courseworthy.task.Request;
import courseworthy.task.ScoutAnswerTask;
import courseworthy.task.ScoutResult;
import courseworthy.task.ScoutTask;
import courseworthy.task.Workspace;
import java.util.List;

/** Prints where to look before a ride. */
final class ScoutCommand extends RequestCommand {

    private final SourceFunction<List<String>> answers = repeated("--answer", "ANSWER",
            "What you found, such as '12.3-14.1: surface=gravel, smoothness=bad' in km; may be given several times. Writes a new profile to -o FILE.");

    ScoutCommand(Terminal terminal) {
        super("scout", terminal, List.of(Format.GPX),
                "Lists the ground of a course that is not known, by what it could change: where to go and look.",
                "courseworthy scout track.gpx --rider me.yaml",
                "courseworthy scout track.gpx --format gpx -o look-here.gpx",
                "courseworthy scout track.gpx --answer '12.3-14.1: surface=gravel, smoothness=bad' -o course.yaml");
    }

    @Override
    boolean isTaken(Workspace workspace, Request request, Format asked, Output to) {
        if (answers.value().isEmpty()) {
            return false;
        }
        if (asked != Format.TEXT) {
            throw new BadInput(Fault.of("--format", 0, "", "\"" + asked + "\"", "text, as --answer writes a profile", ""));
        }
        print(text(ScoutAnswerReport.of(ScoutAnswerTask.of(workspace, request, answers.value(), to.typed()))));
        return true;
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
