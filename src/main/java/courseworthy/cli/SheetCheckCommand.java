package courseworthy.cli;

import courseworthy.report.CheckText;
import courseworthy.report.json.JsonCheck;
import courseworthy.task.CheckResult;
import courseworthy.task.CheckTask;
import java.util.List;

/** Looks over a coach's sheet of advice. */
final class SheetCheckCommand extends Command {

    private final Given<String> file = parameter("FILE", "The sheet (.yaml).");
    private final Given<List<String>> beside = repeated("--sheet", "FILE", "Another sheet in force with it; may be given several times.");
    private final Given<Boolean> gaps = flag("Looks as well for situations, and for shipped courses, on which nobody speaks.", "--gaps");
    private final Given<Boolean> all = flag("Lists every remark; else a hundred of a kind, three of them for one row, and counts the others.",
            "--all");
    private final Given<String> examples = option("--examples", "DIR",
            "Writes an example of each remark into a folder, to be opened with 'courseworthy why'; never over something.");
    private final Given<Format> format = format(Format.TEXT, Format.JSON);
    private final Output output = output();

    SheetCheckCommand(Terminal terminal) {
        super("check", terminal, "Looks over a sheet by reasoning: rows that can never speak, always hold, say nothing new, contradict each "
                + "other or could be one, each with a situation that shows it.", "courseworthy sheet check mine.yaml",
                "courseworthy sheet check mine.yaml --gaps --examples examples/");
    }

    @Override
    public void run() {
        output.check();
        CheckResult result = CheckTask.of(workspace(), file.value(), beside.value(), gaps.value(), all.value(), examples.value());
        output.write(format.value() == Format.JSON ? JsonCheck.of(result.file(), result.rows(), result.findings(), result.examples())
                : CheckText.of(result.file(), result.rows(), result.findings(), result.examples(), colours() && !output.toFile()));
    }
}
