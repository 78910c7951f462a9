package courseworthy.cli;

/** Lists every measure there is. */
final class MeasuresCommand extends Command {

    private final Given<ListFormat> format = option(ListFormat.class, "FORMAT", "text (the default) or json.", "--format");
    private final Output output = output();

    MeasuresCommand(Terminal terminal) {
        super("measures", terminal, "Lists what rules may test: each measure with its unit and definition.",
                "courseworthy measures --format json");
    }

    @Override
    public void run() {
        output.write(tool().measures(ListFormat.format(format.value()), colours() && !output.toFile()));
    }
}
