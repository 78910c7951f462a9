package courseworthy.cli;

import courseworthy.report.DebriefMarkdown;
import courseworthy.report.DebriefText;
import courseworthy.report.json.JsonDebrief;
import courseworthy.task.DebriefReading;
import courseworthy.task.DebriefTask;

/** Holds what happened against the brief that was given. */
final class DebriefCommand extends Command {

    private final Given<String> file = parameter("FILE",
            "A debrief (.yaml), which names the brief as saved with --format json; or a folder of debriefs, for the record of each rule.");
    private final Given<Format> format = format(Format.TEXT, Format.JSON, Format.MARKDOWN);
    private final Output output = output();

    DebriefCommand(Terminal terminal) {
        super("debrief", terminal, "Holds what really happened against the brief that was given: which advice was borne out, which was not, which "
                + "could not tell.",
                "courseworthy brief heather-ridge --format json -o debriefs/ridge.json",
                "courseworthy debrief debriefs/ridge.yaml",
                "courseworthy debrief debriefs");
    }

    @Override
    public void run() {
        DebriefReading reading = DebriefTask.of(workspace(), file.value());
        output.write(reading.result() == null ? record(reading) : result(reading));
    }

    private String result(DebriefReading reading) {
        return switch (format.value()) {
            case JSON -> JsonDebrief.of(reading.result());
            case MARKDOWN -> DebriefMarkdown.of(reading.result());
            default -> DebriefText.of(reading.result(), colours() && !output.toFile());
        };
    }

    private String record(DebriefReading reading) {
        return switch (format.value()) {
            case JSON -> JsonDebrief.of(reading.folder(), reading.record());
            case MARKDOWN -> DebriefMarkdown.of(reading.folder(), reading.record());
            default -> DebriefText.of(reading.folder(), reading.record(), colours() && !output.toFile());
        };
    }
}
