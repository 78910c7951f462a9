package courseworthy;

import courseworthy.problem.BadInput;
import courseworthy.problem.Fault;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** A folder whose files are written aside and moved to their place once all are whole, so that nothing is half written and nothing overwritten. */
final class NewFolder {

    private NewFolder() {
    }

    /** Puts files into a folder. */
    interface Filling {
        void into(Path folder) throws IOException;
    }

    /**
     * Makes the folder.
     *
     * @param typed as the user typed it; it must not exist, or be empty
     * @throws BadInput where there is something already, or where it cannot be written
     */
    static void write(Path folder, String typed, Filling filling) {
        try {
            boolean there = isFree(folder, typed);
            Path in = there ? folder : folder.toAbsolutePath().normalize().getParent();
            if (in == null || !Files.isDirectory(in)) {
                throw refused(typed, "no folder to put it in", "a new folder in one that exists");
            }
            Path whole = Files.createDirectory(in.resolve(".courseworthy-new." + ProcessHandle.current().pid() + ".part"));
            try {
                filling.into(whole);
                if (there) {
                    moveAll(whole, folder);
                } else {
                    Files.move(whole, folder);
                }
            } finally {
                discard(whole);
            }
        } catch (AccessDeniedException denied) {
            throw refused(typed, "no permission to write there", "a folder you may write to");
        } catch (IOException failed) {
            throw refused(typed, "that it cannot be written (" + failed.getMessage() + ")", "a place that can be written");
        }
    }

    /** A folder that is there may be the one the user is in, which cannot be moved over. */
    private static void moveAll(Path from, Path to) throws IOException {
        List<Path> inside;
        try (Stream<Path> all = Files.list(from)) {
            inside = all.toList();
        }
        for (Path each : inside) {
            Files.move(each, to.resolve(each.getFileName()));
        }
    }

    /** Whether the folder is there, and empty. */
    private static boolean isFree(Path folder, String typed) throws IOException {
        if (!Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
            return false;
        }
        if (!Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)) {
            throw refused(typed, "something that is not a folder", "a new folder");
        }
        try (Stream<Path> inside = Files.list(folder)) {
            if (inside.findAny().isPresent()) {
                throw refused(typed, "a folder with something in it", "a new or an empty folder");
            }
        }
        return true;
    }

    private static void discard(Path folder) throws IOException {
        if (!Files.exists(folder)) {
            return;
        }
        List<Path> inside;
        try (Stream<Path> all = Files.walk(folder)) {
            inside = all.sorted(Comparator.reverseOrder()).toList();
        }
        for (Path each : inside) {
            Files.delete(each);
        }
    }

    private static BadInput refused(String typed, String found, String expected) {
        return new BadInput(Fault.of(typed, 0, "", found, expected, "Nothing was written."));
    }
}
