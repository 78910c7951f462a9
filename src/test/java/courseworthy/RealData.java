package courseworthy;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Assumptions;

/** The folder of open data that some tests read in place; without it they are skipped and say so, unless it is required. */
public final class RealData {

    private RealData() {
    }

    /** A file or folder of the data. */
    public static Path at(String name) {
        Path folder = Path.of(System.getProperty("courseworthy.data", "../shared/data"));
        if (Boolean.getBoolean("courseworthy.data.required")) {
            Assertions.assertTrue(Files.isDirectory(folder), () -> "no data at " + folder);
        }
        Assumptions.assumeTrue(Files.isDirectory(folder), () -> "no data at " + folder + ": set courseworthy.data");
        return folder.resolve(name);
    }
}
