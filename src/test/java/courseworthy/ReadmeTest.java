package courseworthy;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.cli.CommandRunner;
import courseworthy.cli.Format;
import courseworthy.cli.Terminal;
import courseworthy.task.Request;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The README keeps its word. The brief in it is yesterday's output, approved: {@code -Dcourseworthy.approve=true} writes it anew,
 * to be looked at as a difference.
 */
class ReadmeTest {

    private static final Path README = Path.of("README.md");
    private static final Pattern BRIEF = Pattern.compile("(?s)(    \\./courseworthy (brief [^\\n]*)\\n\\n<!-- brief:[^\\n]*\\n```text\\n)"
            + "(.*?)(```\\n\\n<details>\\n[^`]*```text\\n)(.*?)(```\\n)");
    /** Where the second block starts. */
    private static final String SECOND = "WHY\n";
    private static final Pattern YAML = Pattern.compile("(?s)```yaml\\n# ([a-z]+)\\n(.*?)```\\n");
    private static final Pattern COMMAND = Pattern.compile("(?m)^    \\./courseworthy ([^\\n]*)$|`\\./courseworthy ([^`]*)`");

    @Test
    void theBriefIsApprovedOutput() throws IOException {
        String readme = Files.readString(README);
        Matcher brief = BRIEF.matcher(readme);
        assertThat(brief.find()).isTrue();
        String now = ran(brief.group(2).split(" "));
        if (Boolean.getBoolean("courseworthy.approve")) {
            int cut = now.indexOf("\n" + SECOND) + 1;
            Files.writeString(README, readme.substring(0, brief.end(1)) + now.substring(0, cut) + brief.group(4) + now.substring(cut)
                    + readme.substring(brief.start(6)));
        } else {
            assertThat(brief.group(3) + brief.group(5)).as("run with -Dcourseworthy.approve=true where the change is meant").isEqualTo(now);
        }
    }

    @Test
    void theFilesItShowsCanBeUsed(@TempDir Path folder) throws IOException {
        Map<String, String> files = new HashMap<>();
        Matcher yaml = YAML.matcher(Files.readString(README));
        while (yaml.find()) {
            files.put(yaml.group(1), Files.writeString(folder.resolve(yaml.group(1) + ".yaml"), yaml.group(2)).toString());
        }
        assertThat(files).containsOnlyKeys("course", "rider", "event", "sheet");
        List<String> remarks = new ArrayList<>();
        String brief = new ToolOutput(Path.of(""), remarks::add).brief(new Request(files.get("course"), null, files.get("event"),
                files.get("rider"), List.of(files.get("sheet")), null, null), Format.TEXT);
        assertThat(brief).startsWith("Moor Loop").contains("Moor Cup, for Kim", "39.0 km in 3 laps");
        assertThat(remarks).isEmpty();
    }

    @Test
    void theCommandsItShowsAreThere() throws IOException {
        Matcher command = COMMAND.matcher(Files.readString(README));
        List<String> names = new ArrayList<>();
        while (command.find()) {
            names.add((command.group(1) == null ? command.group(2) : command.group(1)).split(" ")[0]);
        }
        assertThat(names).contains("brief", "topics", "measures");
        for (String name : names) {
            assertThat(ran(name, "--help")).startsWith("Usage: courseworthy " + name);
        }
    }

    private static String ran(String... args) {
        String home = System.setProperty("courseworthy.home", Path.of("").toAbsolutePath().toString());
        try {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            assertThat(CommandRunner.run(args, out, OutputStream.nullOutputStream(), Terminal.NONE)).isZero();
            return out.toString(StandardCharsets.UTF_8);
        } finally {
            if (home == null) {
                System.clearProperty("courseworthy.home");
            } else {
                System.setProperty("courseworthy.home", home);
            }
        }
    }
}
