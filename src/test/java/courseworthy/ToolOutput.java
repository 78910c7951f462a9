package courseworthy;

import courseworthy.cli.CommandRunner;
import courseworthy.cli.Format;
import courseworthy.cli.Terminal;
import courseworthy.task.Request;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;

/** What commands print, run in this process as a user would run them. */
public final class ToolOutput {

    private static final String HOME = "courseworthy.home";

    private final Path home;
    private final Consumer<String> warnings;

    /**
     * @param home     the folder of the checkout; null where it is not to be known
     * @param warnings takes what is written to standard error by a command that succeeds
     */
    public ToolOutput(Path home, Consumer<String> warnings) {
        this.home = home;
        this.warnings = warnings;
    }

    /** With this checkout as home, warnings set aside. */
    public ToolOutput() {
        this(Path.of("").toAbsolutePath(), warning -> { });
    }

    /** The whole brief. */
    public String brief(Request request, Format format) {
        return run(request, format, "brief", request.course(), "--full");
    }

    /** The main points of a brief, as the command prints them by itself. */
    public String shortBrief(Request request) {
        return run(request, Format.TEXT, "brief", request.course());
    }

    /** One part of a brief. */
    public String part(Request request, String part, Format format) {
        return run(request, format, "brief", request.course(), "--part", part);
    }

    public String topic(Request request, String topic, Format format) {
        return run(request, format, "brief", request.course(), "--topic", topic);
    }

    public String why(Request request, String topic, String not, String rule, Format format) {
        List<String> args = new ArrayList<>(List.of("why", request.course(), topic));
        add(args, "--not", not);
        add(args, "--rule", rule);
        return run(request, format, args.toArray(String[]::new));
    }

    public String checklist(Request request, Format format) {
        return run(request, format, "checklist", request.course());
    }

    public String compare(Request request, List<String> setUps, Format format) {
        List<String> args = new ArrayList<>(List.of("compare", request.course()));
        setUps.forEach(each -> args.addAll(List.of("--set", each)));
        return run(request, format, args.toArray(String[]::new));
    }

    public String gears(Request request, Format format) {
        return run(request, format, "gears", request.course());
    }

    public String course(String file, String ground, Format format) {
        List<String> args = new ArrayList<>(List.of("course", file));
        add(args, "--ground", ground);
        return run(args, format);
    }

    public String season(String folder, Format format) {
        return run(new ArrayList<>(List.of("season", folder)), format);
    }

    /**
     * Runs any command.
     *
     * @throws IllegalStateException where it does not succeed, with what it wrote to standard error
     */
    public String run(String... args) {
        String before = System.getProperty(HOME);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        try {
            set(home == null ? null : home.toAbsolutePath().toString());
            int code = CommandRunner.run(args, out, err, Terminal.NONE);
            String said = err.toString(StandardCharsets.UTF_8);
            if (code != 0) {
                throw new IllegalStateException(String.join(" ", args) + " ended with " + code + ":\n" + said);
            }
            if (!said.isEmpty()) {
                warnings.accept(said.stripTrailing());
            }
            return out.toString(StandardCharsets.UTF_8);
        } finally {
            set(before);
        }
    }

    private static void set(String value) {
        if (value == null) {
            System.clearProperty(HOME);
        } else {
            System.setProperty(HOME, value);
        }
    }

    private String run(Request request, Format format, String... args) {
        List<String> all = new ArrayList<>(Arrays.asList(args));
        add(all, "--ground", request.ground());
        add(all, "--event", request.event());
        add(all, "--rider", request.rider());
        add(all, "--role", request.role());
        add(all, "--date", request.date());
        add(all, "--workshop", request.workshop());
        request.sheets().forEach(sheet -> all.addAll(List.of("--sheet", sheet)));
        return run(all, format);
    }

    private String run(List<String> args, Format format) {
        args.addAll(List.of("--format", format.toString()));
        return run(args.toArray(String[]::new));
    }

    private static void add(List<String> args, String option, String value) {
        if (value != null) {
            args.addAll(List.of(option, value));
        }
    }
}
