package courseworthy.cli;

/** Lists every topic there is. */
final class TopicsCommand extends Command {

    private final Given<ListFormat> format = option(ListFormat.class, "FORMAT", "text (the default) or json.", "--format");
    private final Output output = output();

    TopicsCommand(Terminal terminal) {
        super("topics", terminal, "Lists what there is to decide: each topic with its range or options.",
                "courseworthy topics --format json");
    }

    @Override
    public void run() {
        output.write(tool().topics(ListFormat.format(format.value()), colours() && !output.toFile()));
    }
}
