package courseworthy.cli;

import courseworthy.report.SimilarReport;
import courseworthy.report.json.JsonSimilar;
import courseworthy.task.Request;
import courseworthy.task.SimilarResult;
import courseworthy.task.SimilarTask;
import courseworthy.task.Workspace;
import java.util.List;

/** Prints the courses of a folder that ask for the most similar set-ups. */
final class SimilarCommand extends RequestCommand {

    private final SourceFunction<String> folder = optionalParameter("FOLDER",
            "A folder of course profiles and GPX tracks to compare it with; without it, the shipped courses.");
    private final SourceFunction<List<String>> debriefs = repeated("--debriefs", "FOLDER",
            "A folder of debriefs to learn from, besides those in the folder of courses and in 'debriefs' below it; may be given several times.");

    SimilarCommand(Terminal terminal) {
        super("similar", terminal, "Finds the courses that ask for the most similar set-ups, how they differ, and what was learned there.",
                "courseworthy similar track.gpx --rider me.yaml",
                "courseworthy similar track.gpx my-courses --rider me.yaml --debriefs debriefs");
    }

    @Override
    String answer(Workspace workspace, Request request, Format format, boolean colours) {
        SimilarResult result = found(workspace, request);
        return render(format, () -> SimilarReport.of(result), () -> JsonSimilar.of(result));
    }

    private SimilarResult found(Workspace workspace, Request request) {
        try (ProgressMeter meter = meter("comparing courses")) {
            return SimilarTask.of(workspace, request, folder.value(), debriefs.value(), meter);
        }
    }
}
