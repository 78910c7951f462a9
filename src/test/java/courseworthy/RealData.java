package courseworthy;

import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Assumptions;

/**
 * The folder of real tracks and mapped ways that some tests read in place, as {@code courseworthy.data} names it. Without it they are
 * skipped, each with a line and a running count, unless it is required. What has to be in it: src/test/README.md.
 */
public final class RealData {

    private static final RealData HERE = new RealData(System.getProperty("courseworthy.data", ""),
            Boolean.getBoolean("courseworthy.data.required"), System.err);

    private final String folder;
    private final boolean required;
    private final PrintStream said;
    private final AtomicInteger skipped = new AtomicInteger();

    /** @param folder empty where none is named */
    RealData(String folder, boolean required, PrintStream said) {
        this.folder = folder;
        this.required = required;
        this.said = said;
    }

    /** A file or folder of the data. */
    public static Path at(String name) {
        return HERE.find(name);
    }

    Path find(String name) {
        if (!folder.isEmpty() && Files.isDirectory(Path.of(folder))) {
            return Path.of(folder).resolve(name);
        }
        String why = folder.isEmpty() ? "courseworthy.data names no folder" : "courseworthy.data is " + folder + ", where no folder is";
        if (required) {
            Assertions.fail("Real data is required and " + why + " (src/test/README.md)");
        }
        String words = "SKIPPED for want of real data, " + skipped.incrementAndGet() + " so far: " + why + " (src/test/README.md)";
        said.println(words);
        return Assumptions.abort(words);
    }
}
