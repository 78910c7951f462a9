package courseworthy.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The work by evening of a dated event names the day of the week and the date of each evening, in every format for people. */
class WorkEveningsTest {

    private static final Pattern EVENING = Pattern.compile("Evening \\d+, ([A-Z][a-z]+ \\d{1,2} [A-Z][a-z]+ \\d{4}) at the latest");

    @ParameterizedTest
    @ValueSource(strings = {"text", "markdown", "html"})
    void eachEveningHasItsDay(String format) {
        CommandRun run = CommandRun.of("brief", "course-profiles/heather-ridge.yaml", "--event", "docs/examples/events/heather-ridge.yaml", "--date", "2026-06-20",
                "--rider", "docs/examples/riders/ida-hardtail.yaml", "--workshop", "docs/examples/workshops/cellar.yaml", "--format", format, "--full");
        assertThat(run.code()).as(run.err()).isZero();
        Matcher each = EVENING.matcher(run.out().replaceAll("\\s+", " "));
        int found = 0;
        while (each.find()) {
            // The calendar of Java refuses a day of the week that is not that of the date.
            LocalDate day = LocalDate.parse(each.group(1), DateTimeFormatter.ofPattern("EEEE d MMMM uuuu", Locale.ENGLISH));
            assertThat(day).isBefore(LocalDate.of(2026, 6, 20)).isAfter(LocalDate.of(2026, 6, 5));
            found++;
        }
        assertThat(found).isPositive();
    }

    /** Each step of an evening is a line of its own, under its evening. */
    @Test
    void eachStepStandsOnItsOwn() {
        CommandRun run = CommandRun.of("brief", "course-profiles/heather-ridge.yaml", "--event", "docs/examples/events/heather-ridge.yaml",
                "--rider", "docs/examples/riders/ida-hardtail.yaml", "--workshop", "docs/examples/workshops/cellar.yaml", "--format", "markdown");
        assertThat(run.out().lines().dropWhile(line -> !line.startsWith("- Evening 1")).skip(1).takeWhile(line -> !line.startsWith("- Evening 2")))
                .hasSizeGreaterThan(2).allMatch(line -> line.matches("  - .*\\(\\d+ min\\).*") && line.split(" min\\)", -1).length == 2);
    }
}
