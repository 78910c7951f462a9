package courseworthy.cli;

import courseworthy.problem.BadInput;
import courseworthy.problem.Fault;
import java.util.List;

/** What there is to do with a coach's sheet of advice, each a command of its own. */
final class SheetCommand extends Command {

    SheetCommand(Terminal terminal) {
        super("sheet", terminal, "Writes, looks over, tries and compares sheets of advice.",
                "courseworthy sheet new mine.yaml", "courseworthy sheet check mine.yaml");
        for (Command each : List.of(new SheetNewCommand(terminal), new SheetCheckCommand(terminal), new SheetTestCommand(terminal), new SheetImpactCommand(terminal))) {
            spec().addSubcommand(each.spec().name(), each.spec());
        }
    }

    @Override
    public void run() {
        throw new BadInput(Fault.of("sheet", 0, "", "no command", "one of: " + String.join(", ", spec().subcommands().keySet()),
                "'courseworthy sheet --help' lists them."));
    }
}
