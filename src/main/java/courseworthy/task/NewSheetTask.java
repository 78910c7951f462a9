package courseworthy.task;

import courseworthy.problem.BadInput;
import courseworthy.problem.Fault;
import courseworthy.problem.OutputFailure;
import courseworthy.sheet.RulesFolder;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
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
            throw refused(typed, "another ending", "the name of a sheet, such as mine.yaml");
        }
        String typedCases = casesOf(typed);
        Path cases = sheet.resolveSibling(casesOf(sheet.getFileName().toString()));
        mustBeFree(sheet, typed);
        mustBeFree(cases, typedCases);
        place("sheet.yaml", sheet, typed);
        try {
            place("sheet.cases.yaml", cases, typedCases);
        } catch (BadInput | OutputFailure failed) {
            discard(sheet);
            throw failed;
        }
    }

    /** Writes the sheet that was typed, and cases beside it; returns the path of the cases. */
    public static String of(Workspace workspace, String typed) {
        write(workspace.path(typed), typed);
        return casesOf(typed);
    }

    private static void mustBeFree(Path file, String typed) {
        if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
            throw refused(typed, "something of that name", "a new file");
        }
    }

    private static void place(String resource, Path file, String typed) {
        Path folder = file.toAbsolutePath().normalize().getParent();
        if (folder == null || !Files.isDirectory(folder)) {
            throw refused(typed, "no folder to put it in", "a new file in a folder that exists");
        }
        Path beside = folder.resolve("." + file.getFileName() + "." + ProcessHandle.current().pid() + ".part");
        try (InputStream in = NewSheetTask.class.getResourceAsStream("/courseworthy/new/" + resource)) {
            if (in == null) {
                throw new IllegalStateException("the starter file is missing: " + resource);
            }
            Files.copy(in, beside);
            Files.move(beside, file);
        } catch (FileAlreadyExistsException taken) {
            throw refused(typed, "something of that name", "a new file");
        } catch (AccessDeniedException denied) {
            throw refused(typed, "no permission to write there", "a folder you may write to");
        } catch (IOException failed) {
            throw new OutputFailure(typed, failed);
        } finally {
            discard(beside);
        }
    }

    private static void discard(Path file) {
        try {
            Files.deleteIfExists(file);
        } catch (IOException left) {
            throw refused(file.getFileName().toString(), "that it cannot be removed (" + left.getMessage() + ")", "a folder you may write to");
        }
    }

    private static BadInput refused(String typed, String found, String expected) {
        return new BadInput(Fault.of(typed, 0, "", found, expected, "Nothing was written."));
    }
}
