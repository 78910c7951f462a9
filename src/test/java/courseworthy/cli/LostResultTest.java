package courseworthy.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A result that its place does not take is told of: 74 is EX_IOERR of sysexits.h (BSD). */
class LostResultTest {

    @TempDir
    private Path folder;

    /** Takes some bytes and then fails with the system's message. */
    private static final class Failing extends OutputStream {

        private final String message;
        private int room;

        Failing(String message, int room) {
            this.message = message;
            this.room = room;
        }

        @Override
        public void write(int one) throws IOException {
            if (room-- <= 0) {
                throw new IOException(message);
            }
        }
    }

    private static CommandRun into(OutputStream out, Terminal terminal, String... args) {
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int code = CommandRunner.run(args, out, err, terminal);
        return new CommandRun(code, "", err.toString(StandardCharsets.UTF_8));
    }

    @ParameterizedTest
    @ValueSource(strings = {"topics", "topics --format json", "--help", "brief --help", "--version", "completion", "schema rider", "rules"})
    void whatAFullDiskDoesNotTakeIsToldInOneLine(String command) {
        for (int room : List.of(0, 7)) {
            assertThat(into(new Failing("No space left on device", room), Terminal.NONE, command.split(" "))).as(command).isEqualTo(new CommandRun(74, "",
                    "courseworthy: standard output: the result could not be written (No space left on device)\n"));
        }
    }

    /** Who reads only the beginning, as {@code head} does, has what was asked for. */
    @Test
    void whereTheReaderIsGoneNothingIsSaid() {
        assertThat(into(new Failing("Broken pipe", 100), Terminal.NONE, "topics")).isEqualTo(new CommandRun(0, "", ""));
        assertThat(into(new Failing("in the words of another language", 100), new Terminal(false, false, true, 80), "topics"))
                .as("the launcher knows that it is a pipe").isEqualTo(new CommandRun(0, "", ""));
    }

    @Test
    void aFaultOfTheCommandLineIsToldFirst() {
        assertThat(into(new Failing("No space left on device", 0), Terminal.NONE, "topics", "--format", "x").code()).isEqualTo(2);
    }

    @Test
    void aDeviceThatIsFullIsToldOf() {
        assumeTrue(Files.exists(Path.of("/dev/full")), "a system with /dev/full");
        assertThat(CommandRun.of("topics", "-o", "/dev/full")).isEqualTo(new CommandRun(74, "",
                "courseworthy: /dev/full: the result could not be written (No space left on device)\n"));
    }

    /** As the shell closes it: {@code >&-}. Run as a process of its own, since this one needs its own output. */
    @Test
    void standardOutputThatIsClosedIsToldOf() throws Exception {
        assumeTrue(Files.isExecutable(Path.of("/bin/sh")), "a POSIX shell");
        assertThat(inShell("\"$@\" --version >&-")).matches("74\\ncourseworthy: standard output: the result could not be written.*\\n");
        assertThat(inShell("\"$@\" topics | :")).as("the code of the pipe's end").isEqualTo("0\n");
    }

    private String inShell(String line) throws Exception {
        Path err = folder.resolve("err");
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        Process process = new ProcessBuilder("/bin/sh", "-c", line + "; echo $? >> " + folder.resolve("code"), "sh", java, "-cp",
                System.getProperty("java.class.path"), "courseworthy.Main").redirectError(err.toFile()).start();
        process.getInputStream().readAllBytes();
        process.waitFor();
        String code = Files.readString(folder.resolve("code"));
        Files.delete(folder.resolve("code"));
        return code + Files.readString(err);
    }
}
