package courseworthy.cli;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

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

    /** Run from here as the launcher would, so that shipped courses go by their names. */
    static CommandRun atHome(String... args) {
        String home = System.setProperty("courseworthy.home", Path.of("").toAbsolutePath().toString());
        try {
            return of(args);
        } finally {
            if (home == null) {
                System.clearProperty("courseworthy.home");
            } else {
                System.setProperty("courseworthy.home", home);
            }
        }
    }
}
