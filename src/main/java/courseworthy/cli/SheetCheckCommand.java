package courseworthy.cli;

import courseworthy.Courseworthy.Format;

/** Looks over a coach's sheet of advice. */
final class SheetCheckCommand extends Command {

    private final Given<String> file = parameter("FILE", "The sheet (.yaml).");
    private final Given<Format> format = format(Format.TEXT, Format.JSON);
    private final Output output = output();

    SheetCheckCommand(Terminal terminal) {
        super("check", terminal, "Looks over a sheet by reasoning: rows that can never speak, always hold, say nothing new, contradict each "
                + "other or could be one, each with a situation that shows it.", "courseworthy sheet check mine.yaml");
    }

    @Override
    public void run() {
        output.write(tool().sheetCheck(file.value(), format.value(), colours() && !output.toFile()));
    }
}
