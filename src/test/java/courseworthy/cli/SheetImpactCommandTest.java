package courseworthy.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import courseworthy.brief.Schema;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command that shows what another sheet changes. */
class SheetImpactCommandTest {

    private static final String SHEET = """
            sheet: Mine
            author: me
            advice:
              - id: many-plugs
                when: {any stretch: {sharp stones: yes, length: over 5 km}}
                say: {plugs: prefer 5}
                force: must
                because: Stones cut.
            """;

    @TempDir
    private Path folder;

    @BeforeEach
    void library() throws IOException {
        write("courses/stony.yaml", "name: Stony\nstretches:\n  - {length: 20 km, surface: gravel, sharp stones: yes}\n");
        write("courses/smooth.yaml", "name: Smooth\nstretches:\n  - {length: 20 km, surface: asphalt, sharp stones: no}\n");
        write("events/stony.yaml", "name: Stony day\nrole: race\ndate: 2026-05-09\n");
        write("riders/ann.yaml", "name: Ann\nbike: {kind: gravel}\n");
        write("riders/bo.yaml", "bike: {kind: gravel}\nconstraints:\n  - id: few\n    say: {plugs: at most 2}\n    because: No room.\n");
        write("old.yaml", SHEET);
    }

    private String write(String name, String text) throws IOException {
        Path file = folder.resolve(name);
        Files.createDirectories(file.getParent());
        return Files.writeString(file, text).toString();
    }

    private Ran impact(String before, String after, String... more) {
        String[] args = {"sheet", "impact", before, after, "--courses", folder + "/courses", "--riders", folder + "/riders", "--events",
                folder + "/events"};
        return Ran.of(java.util.stream.Stream.concat(java.util.stream.Stream.of(args), java.util.stream.Stream.of(more)).toArray(String[]::new));
    }

    /** The rider's own words go before the coach's, so nothing changes for who wrote them. */
    @Test
    void eachChangeIsShownOnceWithWhomItConcerns() throws IOException {
        String old = folder.resolve("old.yaml").toString();
        String now = write("new.yaml", SHEET.replace("prefer 5", "prefer 6") + """
                  - id: look-at-tyres
                    do: {what: Look at both tyres, find: No cut, by: night before}
                    because: A cut shows before it opens.
                """);
        Ran ran = impact(old, now);
        assertThat(ran.err()).isEmpty();
        assertThat(ran.code()).isZero();
        assertThat(ran.out()).isEqualTo("""
                DECIDED OTHERWISE
                  plugs: 5 becomes 6, 1 ride
                      stony: Ann.
                      Such as stony with Ann: Mine/many-plugs, prefer 6. Stones cut. No longer
                      Mine/many-plugs, prefer 5.

                ON THE CHECKLIST
                  added: night before, Look at both tyres, 4 rides
                      All of them.

                4 of 4 rides changed.
                """);
        JsonNode json = Schema.tree(impact(old, now, "--format", "json").out());
        assertThat(json.get("rides").asInt()).isEqualTo(4);
        assertThat(json.get("decisions").get(0).get("rides").toString()).isEqualTo("[{\"course\":\"stony\",\"rider\":\"Ann\"}]");
        assertThat(json.get("checklist").get(0).get("added").asBoolean()).isTrue();
    }

    @Test
    void nothingIsPrintedWhereNothingChanges() throws IOException {
        String old = folder.resolve("old.yaml").toString();
        assertThat(impact(old, old)).isEqualTo(new Ran(0, "", ""));
        String reworded = write("new.yaml", SHEET.replace("Stones cut.", "Stones do cut.").replace("over 5 km", "over 6 km"));
        assertThat(impact(old, reworded)).isEqualTo(new Ran(0, "", ""));
        JsonNode json = Schema.tree(impact(old, reworded, "--format", "json").out());
        assertThat(json.get("changed").asInt()).isZero();
        assertThat(json.get("decisions")).isEmpty();
    }

    @Test
    void aFirstSheetIsHeldAgainstNone() {
        String mine = folder.resolve("old.yaml").toString();
        assertThat(impact("none", mine).out()).contains("becomes 5, 1 ride", "stony: Ann.",
                "MORE OR LESS SURE\n  plugs: 2, bounded becomes split, 1 ride\n      stony: bo.\n");
        assertThat(impact(mine, "none").out()).contains("plugs: 5 becomes ", "No longer Mine/many-plugs, prefer 5.");
    }

    /**
     * The shipped library under a coach's page, for two riders; with {@code -Dcourseworthy.riders=30} for a roster of thirty, which is to
     * take less than 20 s on two cores.
     */
    @Test
    void aLibraryAndARosterTakeNoLongerThanACoachWaits() throws IOException {
        int riders = Integer.getInteger("courseworthy.riders", 2);
        List<String> kinds = List.of("road", "gravel", "cross-country hardtail", "cross-country full suspension", "trail");
        for (int i = 0; i < riders; i++) {
            write("roster/r" + i + ".yaml", "name: Rider " + i + "\nmass: " + (50 + i) + " kg\npower: " + (210 + 5 * i) + " W\nheld for: 1:00 h\n"
                    + "skill: " + List.of("novice", "fair", "good", "expert").get(i % 4) + "\ntags: [juniors]\nbike: {kind: " + kinds.get(i % 5) + "}\n");
        }
        String home = System.setProperty("courseworthy.home", Path.of("").toAbsolutePath().toString());
        try {
            String[] args = {"sheet", "impact", "none", "docs/examples/sheets/hill-country.yaml", "--riders", folder + "/roster"};
            Ran[] ran = new Ran[1];
            Assertions.assertTimeout(Duration.ofSeconds(20), () -> ran[0] = Ran.of(args));
            assertThat(ran[0].err()).isEmpty();
            assertThat(ran[0].out()).endsWith(" of " + 12 * riders + " rides changed.\n");
            assertThat(ran[0].out().replaceAll("\\s+", " ")).as("wherever its lines break").contains("Hill country/no-sweets-race-for-juniors");
            assertThat(ran[0].out().lines()).allMatch(line -> line.length() <= 80);
            assertThat(Ran.of(args)).as("whatever the order in which rides are called").isEqualTo(ran[0]);
        } finally {
            if (home == null) {
                System.clearProperty("courseworthy.home");
            } else {
                System.setProperty("courseworthy.home", home);
            }
        }
    }

    @Test
    void everyFaultOfTheLibraryIsSaidAtOnce() throws IOException {
        write("riders/ann.yaml", "name: Ann\nmass: 58\n");
        write("courses/stony.yaml", "name: Stony\nstretches:\n  - {length: 20, surface: gravel}\n");
        Files.createDirectory(folder.resolve("empty"));
        Ran ran = impact(folder + "/none.yaml", folder + "/old.yaml");
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).contains("none.yaml: found no such file", "riders/ann.yaml:2: mass: found \"58\"", "courses/stony.yaml:3: length: found \"20\"");
        Ran folders = Ran.of("sheet", "impact", "none", folder + "/old.yaml", "--courses", folder + "/empty", "--riders", folder + "/gone");
        assertThat(folders).isEqualTo(new Ran(2, "", "--courses: found \"" + folder + "/empty\", which has no .yaml file in it, expected a folder of "
                + ".yaml files\n--riders: found \"" + folder + "/gone\", which cannot be read as a folder, expected a folder of .yaml files\n"));
    }
}
