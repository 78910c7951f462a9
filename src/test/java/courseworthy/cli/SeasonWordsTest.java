package courseworthy.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A season in text says each thing once, and no part of it contradicts another. */
class SeasonWordsTest {

    @TempDir
    static Path folder;

    private static String text;

    /** The example season, with a second wish that is the first under another name. */
    @BeforeAll
    static void plan() throws IOException {
        copy(Path.of("docs/examples"), folder);
        copy(Path.of("course-profiles"), folder.resolve("courses"));
        Path season = folder.resolve("season.yaml");
        Files.writeString(season, Files.readString(season).replaceAll("course: ([a-z-]+)", "course: courses/$1.yaml"));
        Path workshop = folder.resolve("workshops/cellar.yaml");
        List<String> lines = Files.readAllLines(workshop);
        String wish = lines.stream().filter(line -> line.contains("{name: supple tyre 42,")).findFirst().orElseThrow();
        Files.writeString(workshop, String.join("\n", lines).replace(wish, wish + "\n" + wish.replace("supple tyre 42,", "silk tyre 42,")) + "\n");
        CommandRun run = CommandRun.of("season", folder.toString());
        assertThat(run.code()).as(run.err()).isZero();
        text = run.out().replaceAll("\\s+", " ");
    }

    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> files = Files.walk(from)) {
            for (Path each : files.filter(Files::isRegularFile).toList()) {
                Path copy = to.resolve(from.relativize(each).toString());
                Files.createDirectories(copy.getParent());
                Files.copy(each, copy);
            }
        }
    }

    @Test
    void equalWishesShareOneEntry() {
        assertThat(text).contains("supple tyre 42 or silk tyre 42 (tyre, 49 florins");
        assertThat(text.split("silk tyre 42", -1)).hasSize(2);
    }

    /** What the service of the season renews before a start is not worn at it. */
    @Test
    void whatIsWornSaysWhenItIsSeenTo() {
        assertThat(text).contains("lane pads rear: less than 1.5 mm left on each pad; change them and bed the new ones in (planned for 2026-04-25)",
                "lane pads rear (steel bike): renew (safety), about 20 min. Planned for 2026-04-25;");
    }

    /** One date for the evening, one for the shortest life, one for the longest, each with its word; no job that is a noun alone. */
    @Test
    void serviceSaysWhatItsDatesAre() {
        assertThat(text).doesNotContain("overdue, ", ": bearings,", ": oil and seals").containsPattern("Planned for 2026-\\d\\d-\\d\\d; may be due from 2026-\\d\\d-\\d\\d, overdue from 2026-\\d\\d-\\d\\d: ");
    }

    @Test
    void shoppingDoesNotSayAPartTwice() {
        String list = text.substring(text.indexOf("SHOPPING LIST"), text.indexOf("WISH LIST"));
        assertThat(list).contains("tyre for root tyre 58 B.").doesNotContainPattern("for ([a-z0-9 ]+) \\(\\1");
    }

    /** What a clash costs in time is said against what was wanted, so that a loss and a saving do not stand in one breath. */
    @Test
    void aClashComparesWithWhatWasWanted() {
        assertThat(text).contains("9 starts by 2 riders", "Not met for Joss: power meter none (recommended fitted). Against what was wanted it saves").doesNotContain("Lost for");
    }

    /** A time whose range reaches from a loss to a gain is too close to call, and no other is. */
    @Test
    void aTimeThatMayBeLostAsWellIsTooCloseToCall() {
        Matcher times = Pattern.compile("(?:saves|loses|costs) [\\d.:]+ \\w+ \\((-?)[^)]* to ([^)]*)\\)( on the course)?(, too close to call)?").matcher(text);
        int open = 0;
        int sure = 0;
        while (times.find()) {
            if (times.group(3) != null) {
                assertThat(times.group(4) != null).as(times.group()).isEqualTo(!times.group(1).isEmpty());
                open += times.group(4) == null ? 0 : 1;
                sure += times.group(4) == null ? 1 : 0;
            }
        }
        assertThat(Math.min(open, sure)).isPositive();
    }
}
