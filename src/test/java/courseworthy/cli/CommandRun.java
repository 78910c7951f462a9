package courseworthy.cli;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;

/** What came of a command: its exit code, and what it wrote to standard output and to standard error. */
record CommandRun(int code, String out, String err) {

    static CommandRun of(Terminal terminal, String... args) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int code = CommandRunner.run(args, out, err, terminal);
        return new CommandRun(code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    static CommandRun of(String... args) {
        return of(Terminal.NONE, args);
    }
}
