package courseworthy.cli;

import courseworthy.report.DebriefReport;
import courseworthy.report.json.JsonDebrief;
import courseworthy.task.DebriefReading;
import courseworthy.task.DebriefTask;

/** Compares what happened with the brief that was given. */
final class DebriefCommand extends Command {

    private final SourceFunction<String> file = parameter("FILE",
            "A debrief (.yaml), which names the brief as saved with --format json; or a folder of debriefs, for the record of each rule.");
    private final SourceFunction<Format> format = format();
    private final Output output = output();

    DebriefCommand(Terminal terminal) {
        super("debrief", terminal, "Compares what really happened with the brief that was given: which advice was borne out, which was not, and where "
                + "the day is inconclusive.",
                "courseworthy brief heather-ridge --format json -o debriefs/ridge.json",
                "courseworthy debrief debriefs/ridge.yaml",
                "courseworthy debrief debriefs");
    }

    @Override
    public void run() {
        DebriefReading reading = DebriefTask.of(workspace(), file.value());
        output.write(render(format.value(), output, () -> DebriefReport.of(reading), () -> JsonDebrief.of(reading)));
    }
}
