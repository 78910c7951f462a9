package courseworthy.task;

import courseworthy.problem.BadInput;
import courseworthy.problem.Fault;
import courseworthy.problem.Faults;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.LinkedHashSet;
import java.util.Set;

/** Keeps results from being written over what was read, into a folder that was read, or over a file of a kind that people write. */
final class OverwriteGuard {

    private final Set<Path> read = new LinkedHashSet<>();

    /** Takes note of what a reading took in. */
    void add(Faults reading) {
        read.addAll(reading.read());
    }

    /** Takes note of a folder, or of a file. */
    void add(Path path) {
        read.add(path);
    }

    /** When the file that was changed last of those read was changed; null where none was read. */
    Instant lastChange() {
        Instant out = null;
        for (Path each : read) {
            Instant at = Files.isRegularFile(each) ? changed(each) : null;
            out = at != null && (out == null || at.isAfter(out)) ? at : out;
        }
        return out;
    }

    private static Instant changed(Path file) {
        try {
            return Files.getLastModifiedTime(file).toInstant().truncatedTo(ChronoUnit.SECONDS);
        } catch (IOException e) {
            return null;
        }
    }

    /**
     * Refuses a place for a result.
     *
     * @param typed as the user typed it
     * @throws BadInput where a file would be lost, or a result read as input the next time
     */
    void check(Path target, String typed) {
        for (Path each : read) {
            if (isSame(each, target)) {
                throw refused(typed, "what the result is made from", "another file", "");
            }
            if (isInside(target, each)) {
                throw refused(typed, "a place in a folder that is read", "a place outside of it", "");
            }
        }
        String kind = Files.isRegularFile(target) ? FileKind.ofFile(target) : null;
        if (kind != null) {
            throw refused(typed, kind, "a new file, or one that no person writes", "Remove it first, if it is not needed any more. ");
        }
    }

    /** Whether two paths lead to one file, by whatever links. */
    private static boolean isSame(Path one, Path other) {
        try {
            return Files.exists(one) && Files.exists(other) && Files.isSameFile(one, other);
        } catch (IOException e) {
            return false;
        }
    }

    private static boolean isInside(Path target, Path folder) {
        try {
            if (!Files.isDirectory(folder)) {
                return false;
            }
            Path there = Files.exists(target) ? target.toRealPath() : nearest(target);
            return there != null && there.startsWith(folder.toRealPath());
        } catch (IOException e) {
            return false;
        }
    }

    /** The nearest folder above a place that exists. */
    private static Path nearest(Path target) throws IOException {
        Path at = target.toAbsolutePath().normalize();
        while (at != null && !Files.exists(at)) {
            at = at.getParent();
        }
        return at == null ? null : at.toRealPath();
    }

    private static BadInput refused(String typed, String found, String expected, String mend) {
        return new BadInput(Fault.of(typed, 0, "", found, expected, mend + "Nothing was written."));
    }
}
