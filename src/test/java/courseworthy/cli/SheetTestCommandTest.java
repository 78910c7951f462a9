package courseworthy.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import courseworthy.report.json.OutputSchema;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command that holds a sheet against its cases, on its full text. */
class SheetTestCommandTest {

    private static final String SHEET = """
            sheet: Mine
            author: a coach
            advice:
              - id: long-and-rough
                when: {hours: over 4:00 h, roughness: at least rough}
                say: {fork travel: prefer 130 mm}
                because: Tired hands.
              - id: winter
                when: {date: between 11-01 and 02-28, rider tag: [juniors, masters]}
                say: {food: prefer 60 g/h}
                because: It is cold.
              - id: always
                say: {plugs: prefer 4}
                because: One never knows.
            """;

    private static final String CASES = """
            cases for: Mine
            cases:
              - rule: long-and-rough
                fires:
                  four hours: {hours: 4:00 h, roughness: 2.0}
                still fires:
                  a minute more: {hours: 4:01 h}
                silent:
                  smooth: {hours: 4:01 h, roughness: 1.9}
              - rule: winter
                fires:
                  a junior in January: {rider tag: juniors, date: 2027-01-15}
                silent:
                  in March: {date: 2027-03-01}
              - call: a short easy day
                measures: {bike at hand: gravel, hours: 2:00 h, roughness: 1.0}
                expect: {plugs: 3, fork travel: not applicable}
                firmness: {plugs: firm}
                fires: [always, long-and-rough]
                silent: [winter]
            """;

    private static final String OUTCOME = """
            F/mine.yaml
            3 rows, 6 cases, 2 not as expected
            With the advice of "Mine" by a coach (F/mine.yaml, sha256 D).

            F/mine.cases.yaml:5: long-and-rough: four hours
                - must apply, but does not
                - hours over 4:00 h: false, found 4:00 h, short by 0:01 h
                - roughness at least rough: true, found rough (2.0)
            F/mine.cases.yaml:15: a short easy day
                - plugs: found 4, expected 3
                - firmness of plugs: found thin, expected firm
                - Mine/long-and-rough: must apply, but does not
                  - hours over 4:00 h: false, found 2:00 h, short by 2:01 h
                  - roughness at least rough: false, found mixed (1.0), short by 1.0
            """;

    @TempDir
    private Path folder;
    private String sheet;

    @BeforeEach
    void sheet() throws IOException {
        sheet = Files.writeString(folder.resolve("mine.yaml"), SHEET).toString();
    }

    private String cases(String text) throws IOException {
        return Files.writeString(folder.resolve("mine.cases.yaml"), text).toString();
    }

    /** The place of the file decides where lines break. */
    private String plain(String text) {
        return text.replace(folder.toString(), "F").replaceAll("\\s+", " ").replaceAll("sha256 [0-9a-f]{12}", "sha256 D");
    }

    @Test
    void whatComesOutOtherwiseIsShownWithEachDifference() throws IOException {
        cases(CASES);
        CommandRun ran = CommandRun.of("sheet", "test", sheet);
        assertThat(ran.err()).isEmpty();
        assertThat(ran.code()).isEqualTo(1);
        assertThat(plain(ran.out())).isEqualTo(plain(OUTCOME));
        JsonNode json = OutputSchema.tree(CommandRun.of("sheet", "test", sheet, "--format", "json", "--cover").out());
        assertThat(json.get("failed")).hasSize(2);
        assertThat(json.get("failed").get(1).get("differences")).hasSize(5);
        assertThat(json.get("untouched").get(1).get("rule").asText()).isEqualTo("Mine/winter");
    }

    @Test
    void whatNoCaseTouchesIsShownOnlyWhereItIsAskedFor() throws IOException {
        cases("""
                cases for: Mine
                cases:
                  - rule: long-and-rough
                    fires:
                      just over: {hours: 4:01 h, roughness: 2.0, says: {fork travel: prefer 130 mm}}
                    silent:
                      four hours: {hours: 4:00 h}
                      smooth: {roughness: 1.8}
                  - rule: winter
                    fires:
                      a junior on the first day: {rider tag: juniors, date: 2026-11-01}
                    still fires:
                      on the last: {date: 2027-02-28}
                    silent:
                      the day before: {date: 2026-10-31}
                      the day after: {date: 2027-03-01}
                      another: {rider tag: elite}
                """);
        assertThat(plain(CommandRun.of("sheet", "test", sheet).out())).isEqualTo("F/mine.yaml 3 rows, 8 cases, all as expected With the advice of \"Mine\" by a coach (F/mine.yaml, sha256 D). ");
        CommandRun ran = CommandRun.of("sheet", "test", sheet, "--cover");
        assertThat(ran.code()).isZero();
        assertThat(plain(ran.out())).isEqualTo(plain("""
                F/mine.yaml
                3 rows, 8 cases, all as expected, 4 places that no case covers
                With the advice of "Mine" by a coach (F/mine.yaml, sha256 D).

                F/mine.yaml:4: Mine/long-and-rough: no case notices roughness from rough (2.0) moved to mixed (1.9)
                    Add a silent case with roughness mixed (1.9).
                F/mine.yaml:8: Mine/winter: no case notices rider tag masters taken away
                    Add a firing case with rider tag masters.
                F/mine.yaml:8: Mine/winter: no case has what it says
                    Add says: {food: prefer 60 g/h} to a firing case.
                F/mine.yaml:12: Mine/always: no case
                    Add cases under fires and silent.
                """));
    }

    /** All that a row gives is compared with what a case has of it, values of measures worked out. */
    @Test
    void whatARowSaysIsComparedWithItsCases() throws IOException {
        Files.writeString(folder.resolve("mine.yaml"), """
                sheet: Mine
                author: a coach
                advice:
                  - id: easier
                    say: {easiest gear: at most 0.95 x ratio needed on the last climb, gloves: [at least long, prefer winter]}
                    do: {what: Count the teeth, find: Enough, by: night before, needs: 1:30 h, after: other}
                    because: Tired legs.
                  - {id: other, say: {plugs: prefer 4}, do: {what: Buy plugs, find: In the bag, by: week before}, because: Cuts.}
                """);
        cases("""
                cases for: Mine
                cases:
                  - rule: easier
                    fires:
                      right:
                        ratio needed on the last climb: 0.8
                        says: {gloves: [prefer winter, at least long], easiest gear: at most 0.76}
                        does: {by: night before, needs: 90 min, after: other}
                    still fires:
                      wrong:
                        says: {gloves: [at least winter, prefer winter], easiest gear: at most 0.8}
                        does: {by: race morning}
                      of the rest nothing is said: {does: {by: night before, needs: 1:30 h, after: [other]}}
                  - rule: other
                    fires:
                      any day: {hours: 2:00 h}
                """);
        CommandRun ran = CommandRun.of("sheet", "test", sheet, "--cover");
        assertThat(ran.err()).isEmpty();
        assertThat(ran.code()).isEqualTo(1);
        assertThat(plain(ran.out())).contains(plain("""
                F/mine.cases.yaml:10: easier: wrong
                    - says easiest gear: at most 0.760, which is not expected
                    - says gloves: at least long, which is not expected
                    - must have says easiest gear: at most 0.800
                    - must have says gloves: at least winter
                    - does after: other, which is not expected
                    - does by: night before, which is not expected
                    - does needs: 1:30 h, which is not expected
                    - must have does by: race morning
                F/mine.yaml:8: Mine/other: no case has what it says
                    Add says: {plugs: prefer 4}, does: {by: week before} to a firing case.
                """));
    }

    @Test
    void everyFaultOfTheCasesIsSaidAtOnce() throws IOException {
        String cases = cases("""
                cases for: Yours
                cases:
                  - rule: long-and-ruff
                    fires: {x: {hourz: 3 h}}
                  - call: a day
                    course: ../x.yaml
                    rider: {name: Kim, mass: 58}
                    expect: {fork travl: 3 mm}
                    fires: nobody
                  - call: another
                    measures: {hours: 3:00 h, decided: {bike: rode}}
                    rider: kim.yaml
                    firmness: {fork travel: sure}
                  - {call: c, course: no-such-course}
                  - {rule: [a, b], fires: {x: {hours: 3 h}}}
                  - rule: winter
                    fires:
                      x: {says: {food: prefer 1 x ratio needed on the last climb}, does: {needs: 1:00 h, bye: night before}}
                      y: {says: {easiest gear: prefer 1 x ratio needed on the last climb, plugs: at most many}, does: later}
                    silent:
                      z: {says: {food: prefer 60 g/h}}
                """);
        CommandRun ran = CommandRun.of("sheet", "test", sheet);
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err().replace(cases, "C").lines().filter(line -> line.startsWith("C:")).map(line -> line.split(",")[0])).containsExactly(
                "C:1: cases for: found \"Yours\"", "C:4: found \"hourz\"", "C:4: rule: found \"long-and-ruff\"", "C:6: course: found \"../x.yaml\"",
                "C:7: mass: found \"58\"", "C:8: expect: found \"fork travl\"", "C:9: call: found \"nobody\"", "C:11: bike: found \"rode\"",
                "C:12: rider: found no course for it", "C:13: firmness: found \"sure\"", "C:14: call: found nothing that must come of it", "C:14: course: found \"no-such-course\"",
                "C:15: rule: found a list", "C:15: rule: found \"\"", "C:18: food: found \"1 x ratio needed on the last climb\"",
                "C:18: by: found nothing", "C:18: bye: found an unknown key", "C:19: plugs: found \"many\"",
                "C:19: easiest gear: found \"1 x ratio needed on the last climb\"", "C:19: does: found \"later\"",
                "C:21: z: found what comes of it where it must not apply");
        assertThat(ran.err().replace(cases, "C")).contains(
                "C:14: course: found \"no-such-course\", expected a shipped course, or a file in the folder of this one or below it",
                "C:6: course: found \"../x.yaml\", which lies outside the folder, expected a file in the folder of this one or below it");
    }

    @Test
    void withoutCasesItSaysWhereTheyBelong() {
        assertThat(CommandRun.of("sheet", "test", sheet)).isEqualTo(new CommandRun(2, "", folder + "/mine.cases.yaml: found no such file, expected cases, beside "
                + "the sheet or as named after it\n    'courseworthy sheet new' writes a sheet with cases to begin with.\n"));
    }

    /** What is shipped to begin with holds, and leaves nothing uncovered. */
    @Test
    void theStartingSheetHolds() {
        String started = folder.resolve("start.yaml").toString();
        CommandRun.of("sheet", "new", started);
        assertThat(plain(CommandRun.of("sheet", "test", started, "--cover").out()))
                .isEqualTo("F/start.yaml 3 rows, 12 cases, all as expected, all of it covered With the advice of \"My advice\" 1 by me (F/start.yaml, CC-BY-4.0, sha256 D). ");
    }
}
