package courseworthy.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import courseworthy.report.json.OutputSchema;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code sheet check --riders}: rows that apply to nobody, and tags that nobody has. */
class SheetCheckRidersTest {

    private static final String HOME = "courseworthy.home";

    @TempDir
    private Path folder;

    private String sheet;
    private String before;

    @BeforeEach
    void write() throws IOException {
        Files.createDirectories(folder.resolve("riders"));
        Files.writeString(folder.resolve("riders/ann.yaml"), "name: Ann\nmass: 58 kg\ntags: [junior]\nbike: {kind: gravel}\n");
        Files.writeString(folder.resolve("riders/bo.yaml"), "name: Bo\nmass: 80 kg\nbike: {kind: trail}\nconstraints:\n  - {id: own, say: {tubes: at least 1}, because: Habit.}\n");
        sheet = Files.writeString(folder.resolve("mine.yaml"), """
                sheet: Mine
                author: a coach
                advice:
                  - {id: juniors, when: {rider tag: juniors}, say: {tubes: prefer 2}, because: Long way.}
                  - {id: junior, when: {rider tag: JUNIOR}, say: {tubes: prefer 2}, because: Long way.}
                  - {id: far, when: {distance: over 900 km}, do: {what: Pack a tent, find: In the bag, by: night before}, because: It is far.}
                  - {id: race, when: {role: race}, do: {what: Pack a vest, find: In the bag, by: night before}, because: It is dark.}
                  - {id: heavy, when: {rider mass: over 75 kg}, say: {plugs: prefer 4}, because: Stones cut.}
                """).toString();
    }

    /** Where shipped courses are found, as the launcher says it. */
    @BeforeEach
    void home() {
        before = System.setProperty(HOME, Path.of("").toAbsolutePath().toString());
    }

    @AfterEach
    void homeAsItWas() {
        if (before == null) {
            System.clearProperty(HOME);
        } else {
            System.setProperty(HOME, before);
        }
    }

    private CommandRun run(String... options) {
        String[] all = new String[options.length + 3];
        System.arraycopy(new String[] {"sheet", "check", sheet}, 0, all, 0, 3);
        System.arraycopy(options, 0, all, 3, options.length);
        return CommandRun.of(all);
    }

    @Test
    void rowsThatApplyToNobodyAndTagsThatNobodyHas() {
        JsonNode remarks = OutputSchema.tree(run("--riders", folder + "/riders", "--format", "json").out()).get("remarks");
        assertThat(remarks).extracting(each -> each.get("rules").get(0).get("rule").asText() + ": " + each.get("kind").asText()).filteredOn(each -> each.contains("nobody"))
                .containsExactly("Mine/juniors: nobody has the tag", "Mine/juniors: applies to nobody", "Mine/far: applies to nobody");
        String text = run("--riders", folder + "/riders").out().replaceAll("\\s+", " ");
        assertThat(text).contains("It needs the tag \"juniors\", which none of the 2 riders has. Did you mean \"junior\"?",
                "It applies to none of the 2 riders on any of the 12 shipped courses, on the dates of their events.");
    }

    @Test
    void withoutRidersNothingIsSaidOfThem() {
        assertThat(run().out()).doesNotContain("nobody");
    }

    @Test
    void aFaultInARidersFileIsSaid() throws IOException {
        Files.writeString(folder.resolve("riders/bo.yaml"), "skill: wizard\n");
        CommandRun ran = run("--riders", folder + "/riders");
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("bo.yaml:1: skill: found \"wizard\"");
    }
}
