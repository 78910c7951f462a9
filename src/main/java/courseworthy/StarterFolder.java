package courseworthy;

import courseworthy.problem.BadInput;
import courseworthy.problem.Fault;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.stream.Stream;

/** A folder of commented files to begin with, one of each kind, which work as they are. */
final class StarterFolder {

    /** The files, in the order in which one fills them in. */
    static final List<String> FILES = List.of("course.yaml", "rider.yaml", "event.yaml", "workshop.yaml", "sheet.yaml");

    private StarterFolder() {
    }

    /**
     * Writes the files into a folder beside the wanted one, then moves it into place, so that nothing is half written.
     *
     * @param typed the folder as typed; it must not exist, or be empty
     * @throws BadInput where there is something already, or where it cannot be written
     */
    static void write(Path folder, String typed) {
        try {
            mustBeFree(folder, typed);
            Path parent = folder.toAbsolutePath().normalize().getParent();
            if (parent == null || !Files.isDirectory(parent)) {
                throw refused(typed, "no folder to put it in", "a new folder in one that exists");
            }
            Path beside = Files.createDirectory(parent.resolve(".courseworthy-new." + ProcessHandle.current().pid() + ".part"));
            try {
                fill(beside);
                Files.move(beside, folder, StandardCopyOption.REPLACE_EXISTING);
            } finally {
                discard(beside);
            }
        } catch (AccessDeniedException denied) {
            throw refused(typed, "no permission to write there", "a folder you may write to");
        } catch (IOException failed) {
            throw refused(typed, "that it cannot be written (" + failed.getMessage() + ")", "a place that can be written");
        }
    }

    private static void mustBeFree(Path folder, String typed) throws IOException {
        if (!Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
            return;
        }
        if (!Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)) {
            throw refused(typed, "something that is not a folder", "a new folder");
        }
        try (Stream<Path> inside = Files.list(folder)) {
            if (inside.findAny().isPresent()) {
                throw refused(typed, "a folder with something in it", "a new or an empty folder");
            }
        }
    }

    private static void fill(Path folder) throws IOException {
        for (String file : FILES) {
            try (InputStream in = StarterFolder.class.getResourceAsStream("/courseworthy/new/" + file)) {
                if (in == null) {
                    throw new IllegalStateException("the starter file is missing: " + file);
                }
                Files.copy(in, folder.resolve(file));
            }
        }
    }

    private static void discard(Path folder) throws IOException {
        if (!Files.exists(folder)) {
            return;
        }
        for (String file : FILES) {
            Files.deleteIfExists(folder.resolve(file));
        }
        Files.delete(folder);
    }

    private static BadInput refused(String typed, String found, String expected) {
        return new BadInput(Fault.of(typed, 0, "", found, expected, "Nothing was written."));
    }
}
