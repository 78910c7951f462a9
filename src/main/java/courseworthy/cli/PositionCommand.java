package courseworthy.cli;

import courseworthy.report.PositionMarkdown;
import courseworthy.report.PositionText;
import courseworthy.report.json.JsonPosition;
import courseworthy.task.PositionResult;
import courseworthy.task.PositionTask;

/** Prints bar and saddle positions, and carries one bike's over to another. */
final class PositionCommand extends Command {

    private final Given<String> workshop = parameter("WORKSHOP", "What the rider owns (.yaml).");
    private final Given<String> from = option("--from", "BIKE", "The bike whose position is carried over; without it, all positions are shown.");
    private final Given<String> to = option("--to", "BIKE", "The bike that takes it over.");
    private final Given<String> rider = option("--rider", "FILE", "The rider, whose mass is held against what is marked on stems and posts.");
    private final Given<Format> format = format(Format.TEXT, Format.JSON, Format.MARKDOWN);
    private final Output output = output();

    PositionCommand(Terminal terminal) {
        super("position", terminal, "Shows where bars and saddles are, and carries one bike's position over to another: the stem and spacers of the "
                + "workshop that come closest, and the millimetres left.",
                "courseworthy position workshop.yaml",
                "courseworthy position workshop.yaml --from hardtail --to 'borrowed bike'");
    }

    @Override
    public void run() {
        PositionResult result = PositionTask.of(workspace(), workshop.value(), from.value(), to.value(), rider.value());
        output.write(result.transfer() == null ? all(result) : transfer(result));
    }

    private String all(PositionResult result) {
        return switch (format.value()) {
            case JSON -> JsonPosition.of(result.workshop(), result.all());
            case MARKDOWN -> PositionMarkdown.of(result.workshop(), result.all());
            default -> PositionText.of(result.workshop(), result.all(), colours() && !output.toFile());
        };
    }

    private String transfer(PositionResult result) {
        return switch (format.value()) {
            case JSON -> JsonPosition.of(result.workshop(), result.transfer());
            case MARKDOWN -> PositionMarkdown.of(result.workshop(), result.transfer());
            default -> PositionText.of(result.workshop(), result.transfer(), colours() && !output.toFile());
        };
    }
}
