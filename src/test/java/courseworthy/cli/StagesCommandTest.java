package courseworthy.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command for a race over several days. */
class StagesCommandTest {

    private static final String RACE = "docs/examples/events/three-becks.yaml";
    private static final String KIM = "docs/examples/riders/kim-cross-country.yaml";

    @TempDir
    private Path folder;

    private static CommandRun run(String... words) {
        String home = System.setProperty("courseworthy.home", Path.of("").toAbsolutePath().toString());
        try {
            return CommandRun.of(words);
        } finally {
            if (home == null) {
                System.clearProperty("courseworthy.home");
            } else {
                System.setProperty("courseworthy.home", home);
            }
        }
    }

    @Test
    void textFitsATerminal() {
        CommandRun ran = run("stages", RACE, "--rider", KIM);
        assertThat(ran.err()).isEmpty();
        assertThat(ran.out()).startsWith("Three Becks ").contains("\nONE SET-UP FOR ALL STAGES\n", "\nDAY BY DAY\n", "\nEVENING BY EVENING\n", "\nWHAT WEARS\n", "\nBAG FOR THE RACE\n");
        assertThat(ran.out().lines()).allMatch(line -> line.codePointCount(0, line.length()) <= 80);
        String part = run("stages", RACE, "--rider", KIM, "--part", "bag").out();
        assertThat(part).contains("BAG FOR THE RACE").doesNotContain("DAY BY DAY");
        assertThat(run("stages", RACE, "--rider", KIM, "--format", "markdown").out()).startsWith("# Three Becks").contains("## Day by day");
        assertThat(run("stages", RACE, "--rider", KIM, "--format", "html").out()).contains("<title>Three Becks");
    }

    @Test
    void aPdfIsWritten() throws Exception {
        Path file = folder.resolve("race.pdf");
        assertThat(run("stages", RACE, "--rider", KIM, "--format", "pdf", "-o", file.toString()).err()).isEmpty();
        assertThat(Files.readAllBytes(file)).startsWith("%PDF-".getBytes());
    }

    @Test
    void aStageIsABriefOnTheSetUpOfTheRace() {
        String first = run("stages", RACE, "--rider", KIM, "--stage", "1").out();
        assertThat(first).startsWith("Three Becks, day one").contains("rear 110 mm").doesNotContain("set up for the day alone");
        String alone = run("brief", "docs/examples/stages/three-becks-one.yaml", "--event", RACE, "--rider", KIM, "--full").out().replaceAll("\\s+", " ");
        assertThat(alone).contains("rear 100 mm", "This is stage 1 of 3, set up for the day alone. One set-up for all days: courseworthy stages " + RACE);
    }

    @Test
    void aSlipIsSaidInFull() throws Exception {
        assertThat(run("stages", "docs/examples/events/fernbrake.yaml").err()).isEqualTo("docs/examples/events/fernbrake.yaml: stages: found an event of one day, "
                + "expected stages, each with its course and date\n    For one day: \"courseworthy brief COURSE --event docs/examples/events/fernbrake.yaml\".\n");
        assertThat(run("stages", RACE, "--stage", "4").err()).isEqualTo("--stage: found \"4\", expected a stage from 1 to 3\n");
        assertThat(run("stages", RACE, "--stage", "1", "--part", "bag").err()).startsWith("--part: found --stage beside it, expected text, markdown or html of the whole race");
        assertThat(run("brief", "fernbrake", "--event", RACE).err()).startsWith("--event: found a race whose stages are on other courses than fernbrake, expected the course of one of its stages: ");
        Path twice = Files.writeString(folder.resolve("twice.yaml"), "stages:\n  - {course: three-becks, date: 2026-08-05}\n  - {course: three-becks, date: 2026-08-06}\n");
        assertThat(run("brief", "three-becks", "--event", twice.toString(), "--date", "2026-08-09").err())
                .isEqualTo("--date: found no stage on this course on 2026-08-09, expected the day of a stage on it: 2026-08-05, 2026-08-06\n");
        assertThat(run("brief", "three-becks", "--event", twice.toString(), "--date", "2026-08-06").out()).contains("6 August 2026");
        assertThat(run("brief", "three-becks", "--event", RACE, "--date", "2026-08-09").out()).contains("9 August 2026");
        Path lost = Files.writeString(folder.resolve("lost.yaml"), "stages:\n  - {course: nowhere.yaml, date: 2026-08-05}\n");
        assertThat(run("stages", lost.toString()).err()).isEqualTo(lost + ":2: course: found \"nowhere.yaml\", which is no file here and no shipped course, "
                + "expected a file beside this one, or the name of a shipped course\n    Check the spelling of the path.\n");
    }

    /** A season counts the hours of every stage, and changes nothing in between that the event does not allow. */
    @Test
    void aSeasonHasAllStages() throws Exception {
        for (String name : List.of("riders/ida-hardtail.yaml", "workshops/cellar.yaml", "events/three-becks.yaml", "stages/three-becks-one.yaml", "stages/three-becks-three.yaml")) {
            Files.createDirectories(folder.resolve(name).getParent());
            Files.copy(Path.of("docs/examples/" + name), folder.resolve(name));
        }
        List<String> season = new ArrayList<>(List.of("season: A week", "riders: [{name: Ida, rider: riders/ida-hardtail.yaml, workshop: workshops/cellar.yaml}]",
                "events: [{event: events/three-becks.yaml, starts: [{rider: Ida, bike: hardtail}]}]"));
        Files.write(folder.resolve("season.yaml"), season);
        String out = run("season", folder.toString()).out();
        assertThat(out).contains("3 starts of 1 rider", "Ida, Three Becks, stage 1 on", "Ida, Three Becks, stage 2 on", "Ida, Three Becks, stage 3 on");
        assertThat(out.substring(out.indexOf("stage 2 on"))).doesNotContain("To change");
        season.set(2, "events: [{event: events/three-becks.yaml, date: 2026-08-05}]");
        Files.write(folder.resolve("season.yaml"), season);
        assertThat(run("season", folder.toString()).err()).contains("season.yaml:3: date: found this beside an event with stages, expected the course of one stage beside it, or the event alone\n"
                + "    Leave it out: the stages have their own days and courses.");
    }

    /** The example season rides one stage on its day: a slip elsewhere makes no fault of that. */
    @Test
    void anotherFaultBringsNoneOfStages() {
        assertThat(run("season", "docs/examples", "--log", "docs/examples/recordings").err())
                .isEqualTo("--log-bike: found nothing, expected the bike of the recorded rides: steel bike, hardtail, borrowed bike\n");
    }
}
