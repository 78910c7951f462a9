package courseworthy.cli;

/** Writes a page for each topic and each measure. */
final class PagesCommand extends Command {

    private final Given<String> folder = parameter("DIR", "The folder to make; it must be new or empty.");

    PagesCommand(Terminal terminal) {
        super("pages", terminal, "Writes a page for each topic and each measure, as Markdown: what it is, what rules say on it and why, and their cases.",
                "courseworthy pages handbook");
    }

    @Override
    public void run() {
        print(tool().pages(folder.value()));
    }
}
