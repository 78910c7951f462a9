package courseworthy.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import courseworthy.report.json.OutputSchema;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

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

    private CommandRun impact(String before, String after, String... more) {
        String[] args = {"sheet", "impact", before, after, "--courses", folder + "/courses", "--riders", folder + "/riders", "--events",
                folder + "/events"};
        return CommandRun.of(java.util.stream.Stream.concat(java.util.stream.Stream.of(args), java.util.stream.Stream.of(more)).toArray(String[]::new));
    }

    /** Of a row that says several things the one that came about is quoted, not the first that is new. */
    @Test
    void theHalfThatMadeTheChangeIsQuoted() throws IOException {
        String old = write("two.yaml", SHEET.replace("prefer 5", "[at least 1, prefer 3]"));
        String now = write("three.yaml", SHEET.replace("prefer 5", "[at least 2, prefer 5]"));
        assertThat(impact(old, now).out().replaceAll("\\s+", " ")).contains("becomes 5. Mine/many-plugs says prefer 5 instead of prefer 3 (")
                .doesNotContain("says at least 2");
    }

    /** Of a row that asks for one of several things the one that is new is quoted. */
    @Test
    void theConditionThatMadeTheChangeIsQuoted() throws IOException {
        String when = "when: {any of: [{hours: over 30:00 h}]}";
        String old = write("two.yaml", SHEET.replaceAll("when: .*", when));
        String now = write("three.yaml", SHEET.replaceAll("when: .*", when.replace("h}]", "h}, {distance: under 30 km}]")));
        assertThat(impact(old, now).out().replaceAll("\\s+", " ")).contains("Mine/many-plugs says prefer 5, because distance 20.0 km (under 30 km) (");
    }

    /** The same of what is asked of stretches, of shares of the course, of the day and of the rider, and of what must not be. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "any stretch: {sharp stones: yes}|any stretch: sharp stones 20.00 km (sharp stones yes)",
        "no stretch: {surface: sand}|no stretch: surface none (surface sand)",
        "share of course: {where: {surface: gravel}, is: over 60 %}|share of course: surface gravel 100 % (over 60 %)",
        "date: between 05-01 and 05-31|date 2026-05-09 (between 05-01 and 05-31)",
        "rider: Ann|rider Ann (Ann)",
        "none of: [{distance: over 30 km}]|distance 20.0 km (not over 30 km)"})
    void theKindOfConditionDoesNotMatter(String condition, String quoted) throws IOException {
        String when = "when: {any of: [{hours: over 30:00 h}]}";
        String old = write("two.yaml", SHEET.replaceAll("when: .*", when));
        String now = write("three.yaml", SHEET.replaceAll("when: .*", when.replace("h}]", "h}, {" + condition + "}]")));
        assertThat(impact(old, now).out().replaceAll("\\s+", " ")).contains("Mine/many-plugs says prefer 5, because " + quoted + " (");
    }

    /** Where a row falls silent for what it asks besides, or speaks since it asks for less, that is quoted. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "date: between 06-01 and 06-30|date between 06-01 and 06-30",
        "share of course: {where: {surface: sand}, is: over 60 %}|share of course: surface sand over 60 %",
        "any stretch: {surface: sand}|any stretch with surface sand",
        "none of: [{distance: under 30 km}]|not distance under 30 km"})
    void whatIsAskedBesidesOrNoLongerIsQuoted(String condition, String quoted) throws IOException {
        String wide = write("wide.yaml", SHEET.replaceAll("when: .*", "when: {bike at hand: gravel}"));
        String narrow = write("narrow.yaml", SHEET.replaceAll("when: .*", "when: {bike at hand: gravel, " + condition + "}"));
        assertThat(impact(wide, narrow).out().replaceAll("\\s+", " ")).contains("Mine/many-plugs no longer says prefer 5, because it now needs " + quoted + " (");
        assertThat(impact(narrow, wide).out().replaceAll("\\s+", " ")).contains("Mine/many-plugs says prefer 5, because it no longer needs " + quoted + " (");
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
        CommandRun ran = impact(old, now);
        assertThat(ran.err()).isEmpty();
        assertThat(ran.code()).isZero();
        String told = ran.out().replace(folder.toString(), "F").replaceAll("sha256 [0-9a-f]{12}", "sha256 D");
        assertThat(told.replaceAll("\\s+", " ")).as("wherever its lines break").isEqualTo("""
                What the new sheet changes
                4 recommendations compared (2 riders on 2 courses): 4 changed, 1 topic touched.
                Before: the advice of "Mine" by me (F/old.yaml, sha256 D). After: the advice of "Mine" by me (F/new.yaml, sha256 D).
                DIFFERENT DECISIONS
                - plugs: up by 1, now 6; 1 of 4 recommendations Ann on stony.
                Example: Ann on stony, 5 becomes 6. Mine/many-plugs says prefer 6 instead of prefer 5 (F/new.yaml:4): Stones cut.
                ON THE CHECKLIST
                - comes: night before, Look at both tyres; all 4 recommendations All riders on every course.
                Example: Ann on smooth, by Mine/look-at-tyres (F/new.yaml:9): A cut shows before it opens.
                MORE
                '--topic NAME' shows one topic in full, '--format json' all of them.
                """.replace("\n", " "));
        JsonNode json = OutputSchema.tree(impact(old, now, "--format", "json").out());
        assertThat(json.get("calls").asInt()).isEqualTo(4);
        assertThat(json.get("decisions").get(0).get("rides").toString()).isEqualTo("[{\"course\":\"stony\",\"rider\":\"Ann\"}]");
        assertThat(json.get("checklist").get(0).get("change").asText()).isEqualTo("comes");
    }

    @Test
    void oneTopicIsShownInFull() throws IOException {
        String old = folder.resolve("old.yaml").toString();
        String now = write("new.yaml", SHEET.replace("prefer 5", "prefer 6"));
        assertThat(impact(old, now, "--topic", "plugs").out()).contains("\nplugs\n  - 5 becomes 6; 1 of 4 recommendations\n    Ann on stony.\n");
        assertThat(impact(old, now, "--topic", "tubes")).isEqualTo(new CommandRun(0, "", ""));
        assertThat(impact(old, now, "--topic", "plug").err()).isEqualTo("--topic: found \"plug\", expected a topic\n    Did you mean \"plugs\"?\n");
        JsonNode json = OutputSchema.tree(impact(old, now, "--topic", "plugs", "--format", "json").out());
        assertThat(json.get("topics").toString()).isEqualTo("[\"plugs\"]");
    }

    @Test
    void whatFollowsFromAnotherDecisionIsToldSo() throws IOException {
        String none = write("bare.yaml", "sheet: Mine\nauthor: me\nadvice:\n  - id: dry\n    say: {eyewear: prefer clear}\n    because: So.\n");
        String now = write("new.yaml", "sheet: Mine\nauthor: me\nadvice:\n  - id: dry\n    say: {eyewear: prefer clear}\n    because: So.\n"
                + "  - id: wide\n    say: {front tyre width: at least 50 mm}\n    force: must\n    because: Wide floats.\n"
                + "leave out:\n  - rule: shipped/a-little-more-to-get-round\n    because: We know our tyres.\n");
        String text = impact(none, now, "--topic", "front tyre pressure").out().replaceAll("\\s+", " ");
        assertThat(text).contains("Follows from front tyre width, ").contains(". Mine/wide says at least 50 mm (").contains("): Wide floats.");
    }

    @Test
    void nothingIsPrintedWhereNothingChanges() throws IOException {
        String old = folder.resolve("old.yaml").toString();
        assertThat(impact(old, old)).isEqualTo(new CommandRun(0, "", ""));
        String reworded = write("new.yaml", SHEET.replace("Stones cut.", "Stones do cut.").replace("over 5 km", "over 6 km"));
        assertThat(impact(old, reworded)).isEqualTo(new CommandRun(0, "", ""));
        JsonNode json = OutputSchema.tree(impact(old, reworded, "--format", "json").out());
        assertThat(json.get("changed").asInt()).isZero();
        assertThat(json.get("decisions")).isEmpty();
    }

    @Test
    void aFirstSheetIsHeldAgainstNone() {
        String mine = folder.resolve("old.yaml").toString();
        assertThat(impact("none", mine).out()).contains("Before: no sheet. After: the advice of \"Mine\"", "now 5; 1 of 4 recommendations\n    Ann on stony.\n")
                .doesNotContain("MORE OR LESS FIRM");
        assertThat(impact(mine, "none").out()).contains("  - plugs: down by ", "Mine/many-plugs no longer");
    }

    /** Advice of the same value that rests on what is published makes it firmer. */
    @Test
    void whatIsOnlyFirmerIsListedApart() throws IOException {
        String published = write("published.yaml", SHEET.replace("prefer 5", "prefer 4")
                .replace("    because:", "    evidence: published\n    source: Somebody 2020, a journal 1:1\n    because:"));
        assertThat(impact("none", published).out()).contains("THE SAME DECISIONS, MORE OR LESS FIRM\n  - plugs: thin becomes fair; 1 of 4 recommendations\n"
                + "    Ann on stony.\n");
    }

    /** The shipped library under a coach's page; what it takes for a roster of thirty is measured by hand: {@link SheetImpactMeasure}. */
    @Test
    void aLibraryAndARosterAreGoneThrough() throws IOException {
        int riders = 2;
        roster(folder.resolve("roster"), riders);
        String home = System.setProperty("courseworthy.home", Path.of("").toAbsolutePath().toString());
        try {
            String[] args = {"sheet", "impact", "none", "docs/examples/sheets/hill-country.yaml", "--riders", folder + "/roster"};
            CommandRun ran = CommandRun.of(args);
            assertThat(ran.err()).isEmpty();
            assertThat(ran.out()).startsWith("What the new sheet changes\n" + 12 * riders + " recommendations compared (" + riders + " riders on 12 courses): ");
            assertThat(ran.out().replaceAll("\\s+", " ")).as("wherever its lines break").contains("Hill country/no-sweets-race-for-juniors");
            assertThat(ran.out().lines()).allMatch(line -> line.length() <= 80);
            assertThat(ran.out().lines().count()).as("read before a sheet is sent out").isLessThan(200);
            assertThat(CommandRun.of(args)).as("whatever the order in which rides are called").isEqualTo(ran);
        } finally {
            if (home == null) {
                System.clearProperty("courseworthy.home");
            } else {
                System.setProperty("courseworthy.home", home);
            }
        }
    }

    static void roster(Path folder, int riders) throws IOException {
        List<String> kinds = List.of("road", "gravel", "cross-country hardtail", "cross-country full suspension", "trail");
        Files.createDirectories(folder);
        for (int i = 0; i < riders; i++) {
            Files.writeString(folder.resolve("r" + i + ".yaml"), "name: Rider " + i + "\nmass: " + (50 + i) + " kg\npower: " + (210 + 5 * i)
                    + " W\nheld for: 1:00 h\nskill: " + List.of("novice", "fair", "good", "expert").get(i % 4)
                    + "\ntags: [juniors]\nbike: {kind: " + kinds.get(i % 5) + "}\n");
        }
    }

    @Test
    void everyFaultOfTheLibraryIsSaidAtOnce() throws IOException {
        write("riders/ann.yaml", "name: Ann\nmass: 58\n");
        write("courses/stony.yaml", "name: Stony\nstretches:\n  - {length: 20, surface: gravel}\n");
        Files.createDirectory(folder.resolve("empty"));
        CommandRun ran = impact(folder + "/none.yaml", folder + "/old.yaml");
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).contains("none.yaml: found no such file", "riders/ann.yaml:2: mass: found \"58\"", "courses/stony.yaml:3: length: found \"20\"");
        CommandRun folders = CommandRun.of("sheet", "impact", "none", folder + "/old.yaml", "--courses", folder + "/empty", "--riders", folder + "/gone");
        assertThat(folders).isEqualTo(new CommandRun(2, "", "--courses: found \"" + folder + "/empty\", which has no .yaml file in it, expected a folder of "
                + ".yaml files\n--riders: found \"" + folder + "/gone\", which cannot be read as a folder, expected a folder of .yaml files\n"));
    }
}
