package courseworthy.cli;

/** Writes a commented sheet to begin with, and its cases. */
final class SheetNewCommand extends Command {

    private final Given<String> file = parameter("FILE", "The sheet to write (.yaml); nothing is overwritten.");

    SheetNewCommand(Terminal terminal) {
        super("new", terminal, "Writes a commented sheet of advice to begin with, and cases beside it. Both work as they are.",
                "courseworthy sheet new mine.yaml");
    }

    @Override
    public void run() {
        print(tool().startSheet(file.value()));
    }
}
