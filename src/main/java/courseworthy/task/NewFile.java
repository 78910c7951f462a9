package courseworthy.task;

import courseworthy.problem.BadInput;
import courseworthy.problem.Fault;
import courseworthy.problem.OutputFailure;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;

/** A file that is written aside and moved to its place once it is whole; nothing is overwritten. */
final class NewFile {

    private NewFile() {
    }

    /** @throws BadInput where there is something of that name */
    static void mustBeFree(Path file, String typed) {
        if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
            throw refused(typed, "something of that name", "a new file");
        }
    }

    /**
     * Writes the file.
     *
     * @param typed as the user typed it, for messages
     * @throws BadInput      where there is something already, or where it may not be written
     * @throws OutputFailure where writing fails; nothing is then left
     */
    static void write(Path file, String typed, byte[] content) {
        Path folder = file.toAbsolutePath().normalize().getParent();
        if (folder == null || !Files.isDirectory(folder)) {
            throw refused(typed, "no folder to put it in", "a new file in a folder that exists");
        }
        Path beside = folder.resolve("." + file.getFileName() + "." + ProcessHandle.current().pid() + ".part");
        try {
            Files.write(beside, content);
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

    /** Removes a file where it is there. */
    static void discard(Path file) {
        try {
            Files.deleteIfExists(file);
        } catch (IOException left) {
            throw refused(file.getFileName().toString(), "that it cannot be removed (" + left.getMessage() + ")", "a folder you may write to");
        }
    }

    static BadInput refused(String typed, String found, String expected) {
        return new BadInput(Fault.of(typed, 0, "", found, expected, "Nothing was written."));
    }
}
