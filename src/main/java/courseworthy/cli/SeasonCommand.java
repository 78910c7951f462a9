package courseworthy.cli;

import courseworthy.build.SeasonPlan;
import courseworthy.report.SeasonCsv;
import courseworthy.report.SeasonReport;
import courseworthy.report.json.JsonSeason;
import courseworthy.task.SeasonTask;

/** Plans a season: every set-up and build, the changes between them, what clashes, and what is worth buying. */
final class SeasonCommand extends Command {

    private final Given<String> folder = parameter("DIR", "The folder of the season: season.yaml and what it names.");
    private final Given<Format> format = format(Format.CSV);
    private final Output output = output();

    SeasonCommand(Terminal terminal) {
        super("season", terminal, "Plans a season for one rider or several: for each event the recommended set-up, the build and what to change since the "
                + "last, what two riders need on the same day, where time is short, and which purchase saves most.",
                "courseworthy season my-season",
                "courseworthy season my-season --format csv -o season.csv");
    }

    @Override
    public void run() {
        SeasonPlan season;
        try (ProgressMeter meter = meter("working out the season")) {
            season = SeasonTask.of(workspace(), folder.value(), meter);
        }
        output.write(format.value() == Format.CSV ? SeasonCsv.of(season)
                : render(format.value(), output, () -> SeasonReport.of(season), () -> JsonSeason.of(season)));
    }
}
