package courseworthy.cli;

import courseworthy.task.NewSheetTask;

/** Writes a commented sheet to begin with, and its cases. */
final class SheetNewCommand extends Command {

    private final SourceFunction<String> file = parameter("FILE", "The sheet to write (.yaml); nothing is overwritten.");

    SheetNewCommand(Terminal terminal) {
        super("new", terminal, "Writes a commented sheet of advice to begin with, and cases beside it. Both work as they are.",
                "courseworthy sheet new mine.yaml");
    }

    @Override
    public void run() {
        String cases = NewSheetTask.of(workspace(), file.value());
        print("Wrote " + file.value() + " and " + cases + "\nReady to use. Edit them to say what you advise, then run:\n\n"
                + "    courseworthy sheet check " + file.value() + "\n    courseworthy sheet test " + file.value() + "\n    courseworthy brief COURSE --sheet "
                + file.value() + "\n");
    }
}
