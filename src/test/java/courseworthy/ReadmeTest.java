package courseworthy;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.cli.CommandRunner;
import courseworthy.cli.Terminal;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * The brief in the README is approved output: {@code -Dcourseworthy.approve=true} rewrites it, to be reviewed as a difference. What else the
 * README shows is run by {@code DocsTest}.
 */
class ReadmeTest {

    private static final Path README = Path.of("README.md");
    private static final Pattern BRIEF = Pattern.compile("(?s)(    \\./courseworthy ([^\\n]*)\\n\\n<!-- brief[^\\n]*\\n```text\\n)(.*?)(```\\n)");

    @Test
    void theBriefIsApprovedOutput() throws IOException {
        String readme = Files.readString(README);
        Matcher brief = BRIEF.matcher(readme);
        assertThat(brief.find()).isTrue();
        String now = ran(brief.group(2).split(" "));
        if (Boolean.getBoolean("courseworthy.approve")) {
            Files.writeString(README, readme.substring(0, brief.end(1)) + now + readme.substring(brief.start(4)));
        } else {
            assertThat(brief.group(3)).as("run with -Dcourseworthy.approve=true where the change is meant").isEqualTo(now);
        }
    }

    /** One command at a desk and in CI, which adds only where real data lie. */
    @Test
    void ciRunsTheTestCommandThatItShows() throws IOException {
        Matcher tests = Pattern.compile("(?m)^mvn .*$").matcher(Files.readString(README));
        assertThat(tests.find()).isTrue();
        assertThat(Files.readString(Path.of(".ci", "run"))).containsPattern("\n" + Pattern.quote(tests.group())
                + "( -Dcourseworthy\\.data\\S*)+ 2>&1 \\| tee \"\\$log\" \\|\\| exit\n");
    }

    /** The brief apart, which has a measure of its own. */
    @Test
    void theRestIsShort() throws IOException {
        String rest = BRIEF.matcher(Files.readString(README)).replaceFirst("");
        assertThat(rest.lines().count()).isLessThan(130);
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
