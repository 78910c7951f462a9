package courseworthy.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CompletionTest {

    @Test
    void bashCompletesEveryCommand(@TempDir Path folder) throws IOException, InterruptedException {
        assumeTrue(Files.isExecutable(Path.of("/bin/bash")));
        ByteArrayOutputStream script = new ByteArrayOutputStream();
        CommandRunner.run(new String[] {"completion"}, script, OutputStream.nullOutputStream(), Terminal.NONE);
        Path file = Files.write(folder.resolve("completion.bash"), script.toByteArray());
        Process bash = new ProcessBuilder("/bin/bash", "--norc", "-c",
                ". \"$1\"; COMP_WORDS=(courseworthy ''); COMP_CWORD=1; COMP_LINE='courseworthy ';"
                        + "_complete_courseworthy; printf '%s\\n' \"${COMPREPLY[@]}\"",
                "bash", file.toString()).redirectErrorStream(true).start();
        String offered = new String(bash.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(bash.waitFor()).as(offered).isZero();
        assertThat(offered.lines().map(String::trim)).containsExactlyElementsOf(Commands.NAMES);
    }
}
