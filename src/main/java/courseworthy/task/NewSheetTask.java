package courseworthy.task;

import courseworthy.problem.BadInput;
import courseworthy.problem.OutputFailure;
import courseworthy.sheet.RulesFolder;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;

/** A commented sheet of advice to begin with, and its cases beside it, which work as they are. */
public final class NewSheetTask {

    private static final String ENDING = ".yaml";

    private NewSheetTask() {
    }

    /** Where the cases of a sheet lie: {@code mine.cases.yaml} beside {@code mine.yaml}. */
    static String casesOf(String sheet) {
        return (sheet.endsWith(ENDING) ? sheet.substring(0, sheet.length() - ENDING.length()) : sheet) + RulesFolder.CASES;
    }

    /**
     * Writes both files beside where they are wanted, then moves each into place.
     *
     * @param typed the sheet's path as typed; neither it nor its cases may exist
     * @throws BadInput   where there is something already, or where it may not be written; nothing is then left behind
     * @throws OutputFailure where writing fails; nothing is then left behind
     */
    static void write(Path sheet, String typed) {
        if (!typed.endsWith(ENDING) || typed.endsWith(RulesFolder.CASES) || sheet.getFileName().toString().equals(ENDING)) {
            throw NewFile.refused(typed, "another ending", "the name of a sheet, such as mine.yaml");
        }
        String typedCases = casesOf(typed);
        Path cases = sheet.resolveSibling(casesOf(sheet.getFileName().toString()));
        NewFile.mustBeFree(sheet, typed);
        NewFile.mustBeFree(cases, typedCases);
        place("sheet.yaml", sheet, typed);
        try {
            place("sheet.cases.yaml", cases, typedCases);
        } catch (BadInput | OutputFailure failed) {
            NewFile.discard(sheet);
            throw failed;
        }
    }

    /** Writes the sheet that was typed, and cases beside it; returns the path of the cases. */
    public static String of(Workspace workspace, String typed) {
        write(workspace.path(typed), typed);
        return casesOf(typed);
    }

    private static void place(String resource, Path file, String typed) {
        try (InputStream in = NewSheetTask.class.getResourceAsStream("/courseworthy/new/" + resource)) {
            if (in == null) {
                throw new IllegalStateException("the starter file is missing: " + resource);
            }
            NewFile.write(file, typed, in.readAllBytes());
        } catch (IOException failed) {
            throw new OutputFailure(typed, failed);
        }
    }
}
