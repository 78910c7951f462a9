package courseworthy.cli;

import courseworthy.Courseworthy.Format;

/** Holds what happened against the brief that was given. */
final class DebriefCommand extends Command {

    private final Given<String> file = parameter("FILE",
            "A debrief (.yaml), which names the brief as saved with --format json; or a folder of debriefs, for the record of each rule.");
    private final Given<Format> format = format(Format.values());
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
        output.write(tool().debrief(file.value(), format.value(), colours() && !output.toFile()));
    }
}
