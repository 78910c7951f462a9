package courseworthy.cli;

import courseworthy.build.SeasonPlan;
import courseworthy.report.SeasonCsv;
import courseworthy.report.SeasonMarkdown;
import courseworthy.report.SeasonText;
import courseworthy.report.json.JsonSeason;
import courseworthy.task.SeasonTask;

/** Works out a season: every call and build, the swaps between, what clashes, and what is worth buying. */
final class SeasonCommand extends Command {

    private final Given<String> folder = parameter("DIR", "The folder of the season: season.yaml and what it names.");
    private final Given<Format> format = format(Format.TEXT, Format.CSV, Format.JSON, Format.MARKDOWN);
    private final Output output = output();

    SeasonCommand(Terminal terminal) {
        super("season", terminal, "Works out a season of one rider or several: for each event the call, the build and the swaps since the last, what "
                + "two want on one day, where time is short, and which purchase returns most.",
                "courseworthy season my-season",
                "courseworthy season my-season --format csv -o season.csv");
    }

    @Override
    public void run() {
        SeasonPlan season;
        try (ProgressMeter meter = meter("working out the season")) {
            season = SeasonTask.of(workspace(), folder.value(), meter);
        }
        output.write(switch (format.value()) {
            case CSV -> SeasonCsv.of(season);
            case JSON -> JsonSeason.of(season);
            case MARKDOWN -> SeasonMarkdown.of(season);
            default -> SeasonText.of(season, colours() && !output.toFile());
        });
    }
}
