package courseworthy.cli;

import courseworthy.engine.CaseResults;
import courseworthy.report.TestReport;
import courseworthy.report.json.JsonTest;
import courseworthy.task.TestTask;
import java.util.List;
import picocli.CommandLine.IExitCodeGenerator;

/** Holds a sheet against its cases. */
final class SheetTestCommand extends Command implements IExitCodeGenerator {

    private final SourceFunction<String> file = parameter("SHEET", "The sheet (.yaml).");
    private final SourceFunction<List<String>> cases = others("CASES", "Files of cases; the .cases.yaml beside the sheet where none is given.");
    private final SourceFunction<List<String>> beside = repeated("--sheet", "FILE", "Another sheet in force with it; may be given several times.");
    private final SourceFunction<Boolean> cover = flag("Also show which rows, boundaries and conditions no case covers.", "--cover");
    private final SourceFunction<Format> format = format();
    private final Output output = output();
    private boolean asExpected = true;

    SheetTestCommand(Terminal terminal) {
        super("test", terminal, "Tests a sheet with its cases: which rows must or must not apply, and what must be decided for whole days.",
                "courseworthy sheet test mine.yaml", "courseworthy sheet test mine.yaml --cover");
    }

    @Override
    public void run() {
        CaseResults results;
        try (ProgressMeter meter = meter("trying cases")) {
            results = TestTask.of(workspace(), file.value(), beside.value(), cases.value(), cover.value(), meter);
        }
        output.write(render(format.value(), output, () -> TestReport.of(file.value(), results), () -> JsonTest.of(file.value(), results)));
        asExpected = TestTask.asExpected(results);
    }

    @Override
    public int getExitCode() {
        return (asExpected ? ExitCode.OK : ExitCode.CASES_FAILED).number();
    }
}
