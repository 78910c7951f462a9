package courseworthy.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import courseworthy.report.json.OutputSchema;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command that compares the recommendations for a folder of riders. What it says of a rider is what the command brief says. */
class RosterCommandTest {

    @TempDir
    private Path folder;

    private String course;

    @BeforeEach
    void roster() throws IOException {
        course = write("lane.yaml", "name: Lane\nstretches:\n  - {length: 8 km, surface: gravel, smoothness: bad, ascent: 120 m}\n");
        write("riders/ann.yaml", "name: Ann\nmass: 58 kg\nbike: {kind: gravel}\ntags: [juniors]\n");
        write("riders/bea.yaml", "name: Bea\nmass: 58 kg\nbike: {kind: gravel}\n");
        write("riders/cy.yaml", "name: Cy\nmass: 58 kg\nbike: {kind: gravel}\nconstraints:\n  - {id: four, say: {plugs: at least 7}, because: Sharp stones.}\n");
    }

    private String write(String name, String text) throws IOException {
        Path file = folder.resolve(name);
        Files.createDirectories(file.getParent());
        return Files.writeString(file, text).toString();
    }

    private CommandRun run(String... more) {
        return CommandRun.of(Stream.concat(Stream.of("roster", course, "--riders", folder + "/riders"), Stream.of(more)).toArray(String[]::new));
    }

    private static JsonNode named(JsonNode list, String field, String name) {
        for (JsonNode each : list) {
            if (each.get(field).asText().equals(name)) {
                return each;
            }
        }
        throw new AssertionError(name);
    }

    /** Two ask for nothing of their own and one for more plugs: that one differs in plugs and nobody in anything else. */
    @Test
    void whoDiffersFromMostIsMarked() throws IOException {
        JsonNode json = OutputSchema.tree(run("--format", "json").out());
        List<String> differing = new ArrayList<>();
        json.get("riders").forEach(rider -> rider.get("decisions").forEach(decision -> {
            if (decision.get("differs").asBoolean()) {
                differing.add(rider.get("rider").asText() + " " + decision.get("topic").asText() + " " + decision.get("text").asText());
            }
        }));
        assertThat(differing).containsExactly("Cy plugs 7");
        assertThat(named(json.get("topics"), "topic", "plugs").get("alike").asBoolean()).isFalse();
        assertThat(named(json.get("topics"), "topic", "tubes").get("alike").asBoolean()).isTrue();
        assertThat(named(json.get("riders"), "rider", "Ann").get("tags").get(0).asText()).isEqualTo("juniors");
        assertThat(run("--format", "markdown").out()).contains("| Topic | Most riders | Ann | Bea | Cy |").containsPattern("\\| plugs \\| \\d \\| \\d \\| \\d \\| \\*\\*7\\*\\* \\|")
                .contains("The same for all").containsPattern("- \\*\\*Cy:\\*\\* plugs 7");
        assertThat(run().out()).containsPattern("Topic +Most riders +Ann +Bea +Cy").containsPattern("Cy +plugs 7");
    }

    /** More riders than stand side by side stand below one another. */
    @Test
    void manyRidersStandBelowOneAnother() throws IOException {
        for (String name : List.of("dot", "eve", "fay")) {
            write("riders/" + name + ".yaml", "name: " + name + "\nmass: 58 kg\nbike: {kind: gravel}\n");
        }
        assertThat(run("--format", "markdown").out()).contains("| Rider | plugs |").contains("| Cy | **7** |");
        assertThat(run().out()).containsPattern("Most riders +\\d").containsPattern("Cy +plugs 7");
    }

    /** Two of four are not most, though no other value has as many. */
    @Test
    void noneIsMarkedWhereNoValueIsThatOfMoreThanHalf() throws IOException {
        write("riders/dot.yaml", "name: Dot\nmass: 58 kg\nbike: {kind: gravel}\nconstraints:\n  - {id: four, say: {plugs: at least 8}, because: Sharp stones.}\n");
        JsonNode json = OutputSchema.tree(run("--format", "json").out());
        assertThat(named(json.get("topics"), "topic", "plugs").get("most").isNull()).isTrue();
        json.get("riders").forEach(rider -> rider.get("decisions").forEach(each -> assertThat(each.get("differs").asBoolean()).isFalse()));
    }

    /** Each rider's decisions and time are those of the brief made alone. */
    @Test
    void eachIsAsInTheBrief() throws IOException {
        JsonNode json = OutputSchema.tree(run("--format", "json", "--each", folder + "/briefs").out());
        for (String name : List.of("ann", "cy")) {
            String alone = CommandRun.of("brief", course, "--rider", folder + "/riders/" + name + ".yaml", "--format", "json").out();
            assertThat(Files.readString(folder.resolve("briefs/" + name + ".json"))).isEqualTo(alone);
            JsonNode brief = OutputSchema.tree(alone);
            JsonNode rider = named(json.get("riders"), "file", folder + "/riders/" + name + ".yaml");
            brief.get("decisions").forEach(each -> assertThat(named(rider.get("decisions"), "topic", each.get("topic").asText()).get("value")).isEqualTo(each.get("value")));
            JsonNode open = brief.get("least_firm");
            assertThat(rider.get("least_firm").isNull() ? "" : rider.get("least_firm").get("topic").asText())
                    .isEqualTo(open.isEmpty() ? "" : open.get(0).get("topic").asText());
        }
    }

    @Test
    void tableForSpreadsheets() {
        List<String> lines = run("--format", "csv").out().lines().toList();
        assertThat(lines).hasSize(4);
        assertThat(lines.get(0)).startsWith("rider,file,tags,notes,time_s_low,time_s,time_s_high,least_firm,differs_in,map_data,").contains(",plugs,");
        assertThat(lines.get(1)).startsWith("Ann,").contains(",juniors,,");
        assertThat(lines.get(3)).startsWith("Cy,").contains(",plugs,");
        assertThat(lines).allMatch(line -> line.split(",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)", -1).length == lines.get(0).split(",").length);
    }

    /** Of names that no file system would take, or that it would take for one. */
    @Test
    void briefsHaveNamesOfTheirOwn() throws IOException {
        write("riders/ann2.yaml", "name: ../Ann\nbike: {kind: gravel}\n");
        write("riders/dot.yaml", "name: \"\\u5c71\"\nbike: {kind: gravel}\n");
        CommandRun ran = run("--each", folder + "/briefs");
        assertThat(ran.code()).isZero();
        assertThat(ran.err()).isEqualTo("Wrote 5 briefs to " + folder + "/briefs\n");
        try (Stream<Path> all = Files.list(folder.resolve("briefs"))) {
            assertThat(all.map(each -> each.getFileName().toString())).containsExactlyInAnyOrder("ann.txt", "ann-2.txt", "bea.txt", "cy.txt", "rider.txt", "roster-briefs.sha256");
        }
    }

    /** A folder with something of the user's in it stays as it is. */
    @Test
    void nothingOfTheUsersIsWrittenOver() throws IOException {
        write("mine/letter.txt", "Dear Ann");
        CommandRun ran = run("--each", folder + "/mine");
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("Nothing was written.");
        assertThat(Files.readString(folder.resolve("mine/letter.txt"))).isEqualTo("Dear Ann");
        assertThat(run("--each", folder + "/riders").code()).isEqualTo(2);
    }

    /** A rider with the shared file is the rider with all of it in the own file; what the own file says counts before it. */
    @Test
    void whatRidersShareStandsOnce() throws IOException {
        write("whole/ann.yaml", "name: Ann\nmass: 58 kg\npower: 200 W\nheld for: 20 min\nskill: novice\nbike: {kind: gravel}\n");
        write("whole/bea.yaml", "name: Bea\nmass: 71 kg\npower: [{for: 5 min, power: 280 W}]\nskill: expert\nbike: {kind: road}\n");
        write("parts/riders.yaml", "held for: 20 min\nskill: novice\nbike: {kind: gravel}\n");
        write("parts/ann.yaml", "name: Ann\nmass: 58 kg\npower: 200 W\n");
        write("parts/bea.yaml", "name: Bea\nmass: 71 kg\npower: [{for: 5 min, power: 280 W}]\nskill: expert\nbike: {kind: road}\n");
        CommandRun whole = CommandRun.of("roster", course, "--riders", folder + "/whole", "--format", "csv");
        CommandRun parts = CommandRun.of("roster", course, "--riders", folder + "/parts", "--format", "csv");
        assertThat(whole.code()).isZero();
        assertThat(parts).isEqualTo(new CommandRun(0, whole.out().replace("/whole/", "/parts/"), whole.err()));
    }

    /** Each fault is told where it stands, of both files at once, and that of what is shared once. */
    @Test
    void faultsOfWhatRidersShareAreToldWhereTheyStand() throws IOException {
        write("riders/riders.yaml", "name: Club\n\nkit: 3 kg\nskill: wizard\nbike:\n  kind: gravel\n  mas: 9 kg\nconstraints: []\nraces a yera: 4\n");
        write("riders/bea.yaml", "name: Bea\nmass: 900 kg\n");
        CommandRun ran = run();
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err().lines().filter(line -> !line.startsWith(" ")).map(line -> line.replaceAll("^.*/riders/(.*?: .*?): .*$", "$1")))
                .containsExactly("bea.yaml:2: mass", "riders.yaml:1: name", "riders.yaml:4: skill", "riders.yaml:7: mas", "riders.yaml:8: constraints", "riders.yaml:9: races a yera");
        Files.createDirectory(folder.resolve("shared"));
        write("shared/riders.yaml", "skill: good\n");
        assertThat(CommandRun.of("roster", course, "--riders", folder + "/shared").err()).contains("which has no file of a rider in it beside riders.yaml");
    }

    /** A workshop that lies among the riders is told as that, once, and not key by key. */
    @Test
    void aFileOfAnotherKindIsToldAsThat() throws IOException {
        Files.copy(Path.of("docs/examples/workshops/cellar.yaml"), folder.resolve("riders/cellar.yaml"));
        CommandRun ran = run();
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).isEqualTo(folder + "/riders/cellar.yaml: found a workshop, expected a rider's file\n    Move it out of the folder of riders.\n");
    }

    /** As written, whatever stands in them. */
    @Test
    void notesAreCarriedAlong() throws IOException {
        write("riders/bea.yaml", "name: Bea\nmass: 58 kg\nbike: {kind: gravel}\nnotes: =Left wrist, \"sore\" <b>\n");
        assertThat(OutputSchema.tree(run("--format", "json").out()).get("riders").get(1).get("notes").asText()).isEqualTo("=Left wrist, \"sore\" <b>");
        assertThat(run("--format", "csv").out()).contains("\"'=Left wrist, \"\"sore\"\" <b>\"");
        assertThat(run("--format", "html", "--each", folder + "/briefs").out()).contains("=Left wrist, ").contains("&lt;b&gt;").doesNotContain("sore\" <b>");
        assertThat(Files.readString(folder.resolve("briefs/bea.html"))).contains("Notes on the rider: ").contains("Left wrist").doesNotContain("sore\" <b>");
        assertThat(Files.readString(folder.resolve("briefs/ann.html"))).doesNotContain("Left wrist");
        CommandRun brief = CommandRun.of("brief", course, "--rider", folder + "/riders/bea.yaml");
        assertThat(brief.out()).contains("Notes on the rider: =Left wrist, \"sore\" <b>");
        assertThat(OutputSchema.tree(CommandRun.of("brief", course, "--rider", folder + "/riders/bea.yaml", "--format", "json").out()).get("rider_notes").asText()).startsWith("=Left");
    }

    /** What a rider's folder shares is read for one rider too, and the brief says so in one line. */
    @Test
    void aBriefReadsWhatTheFolderShares() throws IOException {
        write("alone/riders.yaml", "skill: novice\nmass: 71 kg\n");
        write("alone/bea.yaml", "name: Bea\nmass: 58 kg\nbike: {kind: gravel}\n");
        String rider = folder + "/alone/bea.yaml";
        assertThat(CommandRun.of("brief", course, "--rider", rider).out().replaceAll("\\s+", " ")).contains("alone/riders.yaml, which the riders of the folder share: skill.");
        JsonNode json = OutputSchema.tree(CommandRun.of("brief", course, "--rider", rider, "--format", "json").out());
        assertThat(json.get("rider_shared").get("keys")).extracting(JsonNode::asText).containsExactly("skill");
        write("alone/riders.yaml", "mass: 71 kg\n");
        assertThat(CommandRun.of("brief", course, "--rider", rider).out()).doesNotContain("riders of the folder share");
        write("alone/riders.yaml", "skill: wizard\n");
        assertThat(CommandRun.of("brief", course, "--rider", rider).err()).contains("riders.yaml:1: skill: found \"wizard\"");
    }

    /** Capital letters count like small ones, as where sheets are asked. */
    @Test
    void tagsThatNoSheetAsksForAreRemarkedOnOnce() throws IOException {
        write("riders/bea.yaml", "name: Bea\nbike: {kind: gravel}\ntags: [JUNIORS, juniers, masters]\n");
        write("riders/dot.yaml", "name: Dot\nbike: {kind: gravel}\ntags: [masters]\n");
        String sheet = write("sheet.yaml", "sheet: Mine\nauthor: me\nadvice:\n  - {id: two, when: {none of: [{rider tag: [juniors, first season]}]}, say: {tubes: prefer 2}, because: Long way.}\n");
        assertThat(run("--sheet", sheet, "--format", "csv").err()).isEqualTo(folder + "/riders: warning: tags: found \"juniers\", \"masters\" of 2 riders, "
                + "expected tags that a sheet asks for: first season, juniors\n    Did you mean \"juniors\"?\n");
        assertThat(run("--format", "csv").err()).isEmpty();
    }

    @Test
    void impactReadsWhatRidersShare() throws IOException {
        write("riders/riders.yaml", "skill: wizard\n");
        String sheet = write("sheet.yaml", "sheet: Mine\nauthor: me\nadvice:\n  - {id: two, say: {tubes: prefer 2}, because: Long way.}\n");
        assertThat(CommandRun.of("sheet", "impact", "none", sheet, "--riders", folder + "/riders").err()).contains("riders/riders.yaml:1: skill: found \"wizard\"");
    }

    @Test
    void seasonsReadWhatRidersShare() throws IOException {
        write("season/season.yaml", "season: One day\nriders:\n  - {name: Ann, rider: riders/ann.yaml, workshop: none.yaml}\nevents:\n  - {course: heather-ridge, date: 2026-05-16}\n");
        write("season/riders/ann.yaml", "name: Ann\n");
        write("season/riders/riders.yaml", "kit: 2 kg\nskill: wizard\n");
        assertThat(CommandRun.of("season", folder + "/season").err()).contains("season/riders/riders.yaml:2: skill: found \"wizard\"");
    }

    @Test
    void refusals() throws IOException {
        assertThat(CommandRun.of("roster", course)).isEqualTo(new CommandRun(2, "", "--riders: found nothing, expected a folder of riders' files\n    Add \"--riders DIR\".\n"));
        assertThat(run("--each", folder + "/briefs", "--format", "csv").err()).startsWith("--each: found --format csv beside it, expected text, markdown, html or json");
        Files.createDirectory(folder.resolve("empty"));
        assertThat(CommandRun.of("roster", course, "--riders", folder + "/empty").err()).contains("which has no .yaml file in it");
        write("riders/ann.yaml", "name: Ann\nmass: 58\n");
        write("riders/bea.yaml", "name: Bea\nskill: wizard\n");
        CommandRun ran = run();
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("riders/ann.yaml:2: mass:").contains("riders/bea.yaml:2: skill:");
    }
}
