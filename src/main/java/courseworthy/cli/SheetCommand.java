package courseworthy.cli;

import courseworthy.Courseworthy.Format;
import courseworthy.problem.BadInput;
import courseworthy.problem.Fault;
import courseworthy.problem.Spelling;
import java.util.List;

/** Looks over a coach's sheet of advice. */
final class SheetCommand extends Command {

    private static final List<String> ACTIONS = List.of("check");

    private final Given<String> action = parameter("ACTION",
            "check: finds rows that can never speak, always hold, say nothing new, contradict each other or could be one.");
    private final Given<String> file = parameter("FILE", "The sheet (.yaml).");
    private final Given<Format> format = format(Format.TEXT, Format.JSON);
    private final Output output = output();

    SheetCommand(Terminal terminal) {
        super("sheet", terminal, "Looks over a coach's sheet of advice by reasoning, each remark with a situation that shows it.",
                "courseworthy sheet check mine.yaml");
    }

    @Override
    public void run() {
        if (!ACTIONS.contains(action.value())) {
            throw new BadInput(Fault.of("ACTION", 0, "", "\"" + action.value() + "\"", "check", Spelling.didYouMean(action.value(), ACTIONS)));
        }
        output.write(tool().sheetCheck(file.value(), format.value(), colours() && !output.toFile()));
    }
}
