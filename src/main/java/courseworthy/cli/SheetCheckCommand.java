package courseworthy.cli;

import courseworthy.report.CheckReport;
import courseworthy.report.json.JsonCheck;
import courseworthy.task.CheckResult;
import courseworthy.task.CheckTask;
import java.util.List;

/** Looks over a coach's sheet of advice. */
final class SheetCheckCommand extends Command {

    private final SourceFunction<String> file = parameter("FILE", "The sheet (.yaml).");
    private final SourceFunction<List<String>> beside = repeated("--sheet", "FILE", "Another sheet in force with it; may be given several times.");
    private final SourceFunction<Boolean> gaps = flag("Also looks for situations, and for shipped courses, that no rule covers.", "--gaps");
    private final SourceFunction<Boolean> all = flag("Lists every finding (default: 100 per kind, 3 per row, rest counted).",
            "--all");
    private final SourceFunction<String> riders = option("--riders", "DIR",
            "A folder of riders' files: also lists rows that apply to none of them on any shipped course, and tags that none of them has.");
    private final SourceFunction<String> examples = option("--examples", "DIR",
            "Writes an example of each finding into a folder, for 'courseworthy why'; never overwrites a file.");
    private final SourceFunction<Format> format = format();
    private final Output output = output();

    SheetCheckCommand(Terminal terminal) {
        super("check", terminal, "Checks a sheet by reasoning: rows that can never apply, always apply, add nothing, contradict each other or "
                + "could be one, each with a situation that shows it.", "courseworthy sheet check mine.yaml",
                "courseworthy sheet check mine.yaml --gaps --examples examples/",
                "courseworthy sheet check mine.yaml --riders roster");
    }

    @Override
    public void run() {
        output.check();
        CheckResult result;
        try (ProgressMeter meter = meter("calling rides")) {
            result = CheckTask.of(workspace(), file.value(), beside.value(), gaps.value(), all.value(), riders.value(), examples.value(), meter);
        }
        output.write(render(format.value(), output, () -> CheckReport.of(result),
                () -> JsonCheck.of(result.file(), result.rows(), result.findings(), result.examples())));
    }
}
