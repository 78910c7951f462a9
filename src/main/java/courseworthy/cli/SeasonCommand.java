package courseworthy.cli;

import java.util.List;

/** Works out a season: every call and build, the swaps between, what clashes, and what is worth buying. */
final class SeasonCommand extends Command {

    private final Given<String> folder = parameter("DIR", "The folder of the season: season.yaml and what it names.");
    private final Given<String> format = choice("--format", "FORMAT", "text (the default), csv, json or markdown.",
            List.of("text", "csv", "json", "markdown"));
    private final Output output = output();

    SeasonCommand(Terminal terminal) {
        super("season", terminal, "Works out a season of one rider or several: for each event the call, the build and the swaps since the last, what "
                + "two want on one day, where time is short, and which purchase returns most.",
                "courseworthy season my-season",
                "courseworthy season my-season --format csv -o season.csv");
    }

    @Override
    public void run() {
        try (Meter meter = meter("working out the season")) {
            output.write(tool().season(folder.value(), format.value(), colours() && !output.toFile(), meter));
        }
    }
}
