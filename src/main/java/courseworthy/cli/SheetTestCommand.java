package courseworthy.cli;

import courseworthy.Courseworthy.Format;
import courseworthy.Courseworthy.Tests;
import java.util.List;
import picocli.CommandLine.IExitCodeGenerator;

/** Holds a sheet against its cases. */
final class SheetTestCommand extends Command implements IExitCodeGenerator {

    private final Given<String> file = parameter("SHEET", "The sheet (.yaml).");
    private final Given<List<String>> cases = others("CASES", "Files of cases; the .cases.yaml beside the sheet where none is given.");
    private final Given<List<String>> beside = repeated("--sheet", "FILE", "Another sheet in force with it; may be given several times.");
    private final Given<Boolean> cover = flag("Also show which rows, boundaries and conditions no case touches.", "--cover");
    private final Given<Format> format = format(Format.TEXT, Format.JSON);
    private final Output output = output();
    private boolean asExpected = true;

    SheetTestCommand(Terminal terminal) {
        super("test", terminal, "Holds a sheet against its cases: rows that must speak or stay silent, and what must be settled for whole days.",
                "courseworthy sheet test mine.yaml", "courseworthy sheet test mine.yaml --cover");
    }

    @Override
    public void run() {
        try (Meter meter = meter("trying cases")) {
            Tests tests = tool().sheetTest(file.value(), beside.value(), cases.value(), cover.value(), format.value(), colours() && !output.toFile(), meter);
            output.write(tests.text());
            asExpected = tests.asExpected();
        }
    }

    @Override
    public int getExitCode() {
        return (asExpected ? ExitCode.OK : ExitCode.CASES_FAILED).number();
    }
}
