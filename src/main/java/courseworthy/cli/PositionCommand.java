package courseworthy.cli;

import courseworthy.report.PositionReport;
import courseworthy.report.json.JsonPosition;
import courseworthy.task.PositionResult;
import courseworthy.task.PositionTask;

/** Prints bar and saddle positions, and carries one bike's over to another. */
final class PositionCommand extends Command {

    private final SourceFunction<String> workshop = parameter("WORKSHOP", "The workshop: what the rider owns (.yaml).");
    private final SourceFunction<String> from = option("--from", "BIKE", "The bike whose position is copied; without it, all positions are shown.");
    private final SourceFunction<String> to = option("--to", "BIKE", "The bike to be set up to that position.");
    private final SourceFunction<String> rider = option("--rider", "FILE", "The rider; their weight is checked against the limits marked on stems and posts.");
    private final SourceFunction<Format> format = format();
    private final Output output = output();

    PositionCommand(Terminal terminal) {
        super("position", terminal, "Shows bar and saddle positions, and sets one bike up to another's position: the stem and spacers in the workshop "
                + "that come closest, and the millimetres left.",
                "courseworthy position workshop.yaml",
                "courseworthy position workshop.yaml --from hardtail --to 'borrowed bike'");
    }

    @Override
    public void run() {
        PositionResult result = PositionTask.of(workspace(), workshop.value(), from.value(), to.value(), rider.value());
        output.write(render(format.value(), output, () -> PositionReport.of(result), () -> JsonPosition.of(result)));
    }
}
