package courseworthy.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import courseworthy.engine.LargeSheet;
import courseworthy.report.json.OutputSchema;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Examples of remarks on a sheet, each opened as the line at its top says. */
class SheetExamplesTest {

    @TempDir
    private Path folder;

    @BeforeAll
    static void home() {
        System.setProperty("courseworthy.home", Path.of("").toAbsolutePath().toString());
    }

    @Test
    void everyExampleShowsWhatIsRemarked() throws IOException {
        String sheet = Files.writeString(folder.resolve("mine.yaml"), SheetCommandTest.SHEET).toString();
        List<JsonNode> shown = checkAndOpen(sheet, folder.resolve("examples"), "--gaps");
        assertThat(shown.stream().map(one -> one.get("kind").textValue())).contains("never counts", "always holds", "same in other words",
                "adds nothing", "contradicts", "could be one row", "no rule applies");
    }

    /** Rows of every shape, with stretches, shares and settled topics. */
    @Test
    void examplesOfRowsByChanceShowToo() throws IOException {
        String sheet = Files.writeString(folder.resolve("large.yaml"), LargeSheet.of(130, 8)).toString();
        List<JsonNode> shown = checkAndOpen(sheet, folder.resolve("examples"));
        assertThat(shown).hasSizeGreaterThan(8);
    }

    private List<JsonNode> checkAndOpen(String sheet, Path examples, String... options) throws IOException {
        List<String> args = new ArrayList<>(List.of("sheet", "check", sheet, "--format", "json", "--examples", examples.toString()));
        args.addAll(List.of(options));
        CommandRun ran = CommandRun.of(args.toArray(new String[0]));
        assertThat(ran.err()).isEmpty();
        List<JsonNode> shown = new ArrayList<>();
        int all = 0;
        for (JsonNode remark : OutputSchema.tree(ran.out()).get("remarks")) {
            boolean course = remark.get("example").size() == 1 && remark.get("example").get(0).get("what").textValue().equals("course");
            all += course ? 0 : 1;
            if (!remark.get("shown_by").textValue().isEmpty()) {
                shown.add(remark);
                open(remark, sheet);
            } else if (course) {
                openCourse(remark, sheet);
            }
        }
        assertThat(shown).as("every remark has an example").hasSize(all);
        try (Stream<Path> files = Files.list(examples)) {
            assertThat(files).hasSameSizeAs(shown);
        }
        return shown;
    }

    private void open(JsonNode remark, String sheet) throws IOException {
        String file = remark.get("shown_by").textValue();
        String topic = remark.get("topic").textValue();
        String first = Files.readString(Path.of(file)).lines().findFirst().orElseThrow();
        String silent = remark.get("silent").textValue();
        assertThat(first.replace("'", "")).isEqualTo("# courseworthy why " + file + " " + topic + " --sheet " + sheet
                + (silent.isEmpty() ? "" : " --rule " + silent));
        List<String> args = new ArrayList<>(List.of("why", file, topic, "--sheet", sheet, "--format", "json"));
        if (!remark.get("rules").isEmpty()) {
            args.addAll(List.of("--rule", remark.get("rules").get(0).get("rule").textValue()));
        }
        TreeSet<String> spoke = spoke(CommandRun.of(args.toArray(new String[0])));
        if (remark.get("kind").textValue().equals("no rule applies")) {
            assertThat(spoke).as(file).isEmpty();
        } else {
            remark.get("rules").forEach(rule -> assertThat(spoke.contains(rule.get("rule").textValue())).as(file + " " + rule)
                    .isEqualTo(!rule.get("rule").textValue().equals(silent)));
        }
    }

    private void openCourse(JsonNode remark, String sheet) {
        String course = remark.get("example").get(0).get("value").textValue();
        assertThat(spoke(CommandRun.of("why", course, remark.get("topic").textValue(), "--sheet", sheet, "--format", "json"))).as(course).isEmpty();
    }

    private TreeSet<String> spoke(CommandRun why) {
        assertThat(why.err()).isEmpty();
        assertThat(OutputSchema.faultsOfWhy(why.out().replace(folder + "/", ""))).isEmpty();
        TreeSet<String> spoke = new TreeSet<>();
        JsonNode decision = OutputSchema.tree(why.out()).get("decisions").get(0);
        decision.get("for").forEach(claim -> spoke.add(claim.get("rule").textValue()));
        decision.get("against").forEach(claim -> spoke.add(claim.get("rule").textValue()));
        spoke.removeIf(rule -> rule.startsWith("given/"));
        return spoke;
    }

    @Test
    void allRemarksAreListedWhereAllAreAskedFor() throws IOException {
        String sheet = Files.writeString(folder.resolve("large.yaml"), LargeSheet.of(700, 8)).toString();
        JsonNode some = OutputSchema.tree(CommandRun.of("sheet", "check", sheet, "--format", "json").out());
        JsonNode all = OutputSchema.tree(CommandRun.of("sheet", "check", sheet, "--format", "json", "--all").out());
        int counted = 0;
        for (JsonNode remark : some.get("remarks")) {
            counted += 1 + remark.get("more").intValue();
        }
        for (JsonNode kind : some.get("unlisted")) {
            counted += kind.get("count").intValue();
        }
        assertThat(some.get("unlisted")).isNotEmpty();
        assertThat(all.get("unlisted")).isEmpty();
        assertThat(all.get("remarks")).hasSize(counted);
        all.get("remarks").forEach(remark -> assertThat(remark.get("example")).isNotEmpty());
        assertThat(CommandRun.of("sheet", "check", sheet).out()).contains("'--all' lists them.");
    }

    /** A row that has something to do speaks on no topic. */
    @Test
    void aRowThatOnlyHasSomethingToDoIsShownToo() throws IOException {
        String sheet = Files.writeString(folder.resolve("mine.yaml"), """
                sheet: Mine
                author: a coach
                advice:
                  - id: look
                    when: {hours: over 5 h, none of: [{hours: over 3 h}]}
                    do: {what: Look, find: Nothing, by: week before}
                    because: It is so.
                  - id: long
                    when: {hours: over 5 h}
                    do: {what: Listen, find: Nothing, by: week before}
                    because: It is so.
                  - id: again
                    when: {hours: over 5 h}
                    do: {what: Listen, find: Nothing, by: week before}
                    because: It is so.
                """).toString();
        String in = folder.resolve("examples").toString();
        CommandRun.of("sheet", "check", sheet, "--examples", in);
        String never = in + "/001-can-never-apply-look.yaml";
        String same = in + "/002-identical-again.yaml";
        assertThat(Files.readString(Path.of(never))).startsWith("# courseworthy why " + never + " checklist --sheet " + sheet + " --rule Mine/look\n");
        assertThat(CommandRun.of("why", never, "checklist", "--sheet", sheet, "--rule", "Mine/look").out()).contains("Look; should",
                "It did not apply: its conditions are not all met.", "- hours: 3:00 h, needs over 5 h: not met (short by 2:01 h)");
        for (String rule : List.of("Mine/long", "Mine/again")) {
            CommandRun why = CommandRun.of("why", same, "checklist", "--sheet", sheet, "--rule", rule, "--format", "json");
            assertThat(OutputSchema.faultsOfWhy(why.out().replace(folder + "/", ""))).isEmpty();
            assertThat(OutputSchema.tree(why.out()).get("rules").get(0).get("spoke").booleanValue()).isTrue();
        }
        assertThat(CommandRun.of("why", same, "checklist", "--sheet", sheet, "--rule", "Mine/agai")).isEqualTo(new CommandRun(2, "",
                "--rule: found \"Mine/agai\", expected the id of a rule that has something to do\n    Did you mean \"Mine/again\"?\n"));
    }

    @Test
    void nothingIsWrittenOver() throws IOException {
        String sheet = Files.writeString(folder.resolve("mine.yaml"), SheetCommandTest.SHEET).toString();
        Path examples = Files.createDirectory(folder.resolve("examples"));
        Path mine = Files.writeString(examples.resolve("006-contradicts-light.yaml"), "mine");
        CommandRun ran = CommandRun.of("sheet", "check", sheet, "--examples", examples.toString());
        assertThat(ran).isEqualTo(new CommandRun(2, "", examples + ": found \"006-contradicts-light.yaml\" in it, expected a folder without examples\n"
                + "    Nothing was written.\n"));
        assertThat(mine).hasContent("mine");
        try (Stream<Path> files = Files.list(examples)) {
            assertThat(files).hasSize(1);
        }
        assertThat(CommandRun.of("sheet", "check", sheet, "--examples", mine.toString())).isEqualTo(new CommandRun(2, "", mine
                + ": found a file, expected a folder, or nothing\n    Nothing was written.\n"));
    }

    @Test
    void aSituationThatCannotBeUsedIsRefused() throws IOException {
        String file = Files.writeString(folder.resolve("some.yaml"), "# mine\nsituation: Some\nroughnes: 3\ndecided: {bike: roads}\n").toString();
        assertThat(CommandRun.of("why", file, "seatpost", "--rider", "kim.yaml")).isEqualTo(new CommandRun(2, "",
                "--rider: found \"kim.yaml\", expected no such option beside a situation\n"
                        + "    Write what is known into the situation, such as \"role: race\".\n"
                        + file + ":3: found \"roughnes\", expected a measure, decided, stretches, rider, rider tag or date\n"
                        + "    Did you mean \"roughness\"?\n"
                        + file + ":4: bike: found \"roads\", expected one of: road, gravel, cross-country hardtail, cross-country full suspension, "
                        + "trail\n    Did you mean \"road\"?\n"));
    }

    @Test
    void theTextOfASituation() throws IOException {
        String file = Files.writeString(folder.resolve("some.yaml"), "situation: A long rough day\nroughness: 3.0\ndecided: {bike: road}\n")
                .toString();
        assertThat(CommandRun.of("why", file, "bike").out()).startsWith("bike: road").contains("A long rough day, set up for training",
                "rule out trail: given/bike, must");
        assertThat(CommandRun.of("why", file, "bike", "--format", "markdown").out()).contains("A long rough day");
    }
}
