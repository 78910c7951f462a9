package courseworthy.cli;

/** Writes a folder of commented files to begin with. */
final class NewCommand extends Command {

    private final Given<String> folder = parameter("DIR", "The folder to make; it must be new or empty.");

    NewCommand(Terminal terminal) {
        super("new", terminal, "Writes a folder of commented files to begin with: course, rider, event, workshop and a sheet of advice.",
                "courseworthy new my-race");
    }

    @Override
    public void run() {
        print(tool().startFolder(folder.value()));
    }
}
