package courseworthy.cli;

import courseworthy.report.CompareReport;
import courseworthy.report.json.JsonCompare;
import courseworthy.task.CompareResult;
import courseworthy.task.CompareTask;
import courseworthy.task.Request;
import courseworthy.task.Workspace;
import java.util.List;

/** Prints set-ups side by side. */
final class CompareCommand extends RequestCommand {

    private final SourceFunction<List<String>> setUps = repeated("--set", "SETUP",
            "One set-up: topics and values such as 'front tyre width=45 mm, rear tyre width=45 mm'; give it once for each set-up.");

    CompareCommand(Terminal terminal) {
        super("compare", terminal, "Compares set-ups with the recommended one: time, work, cadence, and when they are worth it.",
                "courseworthy compare heather-ridge --set 'front tyre width=45 mm, tubes=2'",
                "courseworthy compare heather-ridge --set 'easiest gear=32x51' --set 'rear insert=fitted'");
    }

    @Override
    String answer(Workspace workspace, Request request, Format format, boolean colours) {
        CompareResult result = CompareTask.of(workspace, request, setUps.value());
        return render(format, () -> CompareReport.of(result), () -> JsonCompare.of(result.brief(), result.setUps()));
    }
}
