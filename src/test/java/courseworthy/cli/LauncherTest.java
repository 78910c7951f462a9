package courseworthy.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The launcher is a shell script, and so are its checks; this runs them with the rest. */
class LauncherTest {

    @Test
    void everyCheckHolds() throws IOException, InterruptedException {
        assumeTrue(Files.isExecutable(Path.of("/bin/sh")), "the launcher needs a POSIX shell");
        Process checks = new ProcessBuilder("/bin/sh", "src/test/sh/launcher-test").redirectErrorStream(true).start();
        checks.getOutputStream().close();
        String said = new String(checks.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(checks.waitFor()).as(said).isZero();
        assertThat(said).contains("ok 80 - ").doesNotContain("not ok");
    }
}
