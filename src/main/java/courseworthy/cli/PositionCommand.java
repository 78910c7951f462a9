package courseworthy.cli;

import courseworthy.Courseworthy.Format;

/** Prints bar and saddle positions, and carries one bike's over to another. */
final class PositionCommand extends Command {

    private final Given<String> workshop = parameter("WORKSHOP", "What the rider owns (.yaml).");
    private final Given<String> from = option("--from", "BIKE", "The bike whose position is carried over; without it, all positions are shown.");
    private final Given<String> to = option("--to", "BIKE", "The bike that takes it over.");
    private final Given<String> rider = option("--rider", "FILE", "The rider, whose mass is held against what is marked on stems and posts.");
    private final Given<Format> format = format(Format.values());
    private final Output output = output();

    PositionCommand(Terminal terminal) {
        super("position", terminal, "Shows where bars and saddles are, and carries one bike's position over to another: the stem and spacers of the "
                + "workshop that come closest, and the millimetres left.",
                "courseworthy position workshop.yaml",
                "courseworthy position workshop.yaml --from hardtail --to 'borrowed bike'");
    }

    @Override
    public void run() {
        output.write(tool().position(workshop.value(), from.value(), to.value(), rider.value(), format.value(), colours() && !output.toFile()));
    }
}
