package courseworthy.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import courseworthy.report.json.OutputSchema;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command that holds what happened against the brief. */
class DebriefCommandTest {

    private static final String HEATHER = "docs/examples/debriefs/heather-ridge.yaml";
    private static final String ALL = "docs/examples/debriefs";

    @TempDir
    private Path folder;

    @Test
    void textFitsATerminal() {
        CommandRun ran = CommandRun.of("debrief", HEATHER);
        assertThat(ran.code()).isZero();
        assertThat(ran.err()).isEmpty();
        assertThat(ran.out().lines()).allMatch(line -> line.codePointCount(0, line.length()) <= 80);
        assertThat(ran.out()).startsWith("""
                Heather Ridge Marathon                                                   debrief
                for Kim, 2026-06-20, compared with docs/examples/debriefs/heather-ridge.json

                THE DAY
                """).contains("\nNOT BORNE OUT\n", "\nBORNE OUT\n", "\nINCONCLUSIVE\n", "\nNOTHING REPORTED ON\n",
                "  rear tyre casing  reinforced: you would take heavy; rear puncture at 33 km,\n", "no rule is changed");
        CommandRun record = CommandRun.of("debrief", ALL);
        assertThat(record.out().lines()).allMatch(line -> line.codePointCount(0, line.length()) <= 80);
        assertThat(record.out()).startsWith(ALL + "/                                               2 debriefs\n").contains("\nTO REVIEW\n",
                "too few to tell", "no rule is changed");
    }

    /** The same answers stand in all three. */
    @Test
    void outputsAgree() {
        String text = CommandRun.of("debrief", HEATHER).out().replaceAll("\\s+", " ");
        String markdown = CommandRun.of("debrief", HEATHER, "--format", "markdown").out();
        for (String line : markdown.split("\n")) {
            if (line.startsWith("- ") || line.startsWith("  - ")) {
                assertThat(text).contains(line.strip().substring(2).replace("\\", "").replaceFirst("^\\*\\*(.*):\\*\\* ", "$1 "));
            }
        }
        JsonNode json = OutputSchema.tree(CommandRun.of("debrief", HEATHER, "--format", "json").out());
        assertThat(json.get("hours").get("within").booleanValue()).isTrue();
        int borneOut = 0;
        for (JsonNode verdict : json.get("verdicts")) {
            borneOut += verdict.get("answer").textValue().equals("borne out") ? 1 : 0;
            if (verdict.get("topic").textValue().equals("rear tyre casing")) {
                assertThat(verdict.get("answer").textValue()).isEqualTo("not borne out");
                assertThat(verdict.get("would_take").textValue()).isEqualTo("heavy");
            }
        }
        assertThat(markdown).contains("## Borne out\n");
        assertThat(markdown.substring(markdown.indexOf("## Borne out")).split("## ")[1].lines().filter(line -> line.startsWith("- "))).hasSize(borneOut);
        JsonNode record = OutputSchema.tree(CommandRun.of("debrief", ALL, "--format", "json").out());
        assertThat(record.get("debriefs").intValue()).isEqualTo(2);
        record.get("rules").forEach(rule -> assertThat(rule.get("borne_out").intValue() + rule.get("not_borne_out").intValue()
                + rule.get("inconclusive").intValue()).isEqualTo(rule.get("spoke").intValue()));
        assertThat(CommandRun.of("debrief", ALL, "--format", "markdown").out()).contains(":** applied ");
    }

    /** A brief as the tool saves it today is read back, decision by decision. */
    @Test
    void aBriefSavedTodayIsHeldAgainst() throws IOException {
        String brief = folder.resolve("b.json").toString();
        assertThat(CommandRun.of("brief", "course-profiles/larch-common.yaml", "--format", "json", "-o", brief).code()).isZero();
        String file = Files.writeString(folder.resolve("d.yaml"), "debrief: Larch\nbrief: b.json\nwalked: none\npunctures: none\n").toString();
        JsonNode json = OutputSchema.tree(CommandRun.of("debrief", file, "--format", "json").out());
        int settled = 0;
        for (JsonNode decision : OutputSchema.tree(Files.readString(Path.of(brief))).get("decisions")) {
            if (decision.get("status").textValue().equals("settled")) {
                JsonNode verdict = json.get("verdicts").get(settled++);
                assertThat(verdict.get("topic")).isEqualTo(decision.get("topic"));
                assertThat(verdict.get("advised")).isEqualTo(decision.get("value"));
                assertThat(verdict.get("unit")).isEqualTo(decision.get("unit"));
                assertThat(verdict.get("rules")).hasSize(decision.get("for").size() + decision.get("against").size());
            }
        }
        assertThat(json.get("verdicts")).hasSize(settled);
        assertThat(settled).isGreaterThan(40);
    }

    /** What the build of a workshop had is read back as it was written, or said to be unknown. */
    @Test
    void aBriefWithABuildIsReadBack() throws IOException {
        String brief = folder.resolve("b.json").toString();
        assertThat(CommandRun.of("brief", "course-profiles/flintmoor-100.yaml", "--event", "docs/examples/events/flintmoor-100.yaml", "--rider",
                "docs/examples/riders/joss-steel.yaml", "--workshop", "docs/examples/workshops/cellar.yaml", "--format", "json", "-o", brief).code())
                .isZero();
        String file = Files.writeString(folder.resolve("d.yaml"), "debrief: x\nbrief: b.json\n").toString();
        JsonNode verdicts = OutputSchema.tree(CommandRun.of("debrief", file, "--format", "json").out()).get("verdicts");
        JsonNode notMet = OutputSchema.tree(Files.readString(Path.of(brief))).get("build").get("not_met");
        assertThat(notMet).isNotEmpty();
        for (JsonNode each : notMet) {
            for (JsonNode verdict : verdicts) {
                if (verdict.get("topic").equals(each.get("topic"))) {
                    assertThat(verdict.get("ridden").isNull()).as(each.toString()).isEqualTo(each.get("got").textValue().equals("not known"));
                    assertThat(verdict.get("ridden")).isNotEqualTo(verdict.get("advised"));
                }
            }
        }
    }

    @Test
    void badInputIsRefused() throws IOException {
        assertThat(CommandRun.of("debrief", "no-such.yaml")).isEqualTo(new CommandRun(2, "",
                "no-such.yaml: found no such file, expected a file that can be read\n    Check the spelling of the path.\n"));
        assertThat(CommandRun.of("debrief", folder.toString())).isEqualTo(new CommandRun(2, "",
                folder + ": found no debrief in the folder, expected files that end in .yaml\n"));
        Files.writeString(folder.resolve("a.yaml"), "debrief: a\nbrief: a.json\n");
        Files.writeString(folder.resolve("b.yaml"), "debrief: b\nbrief: a.json\nhands: tired\n");
        assertThat(CommandRun.of("debrief", folder.toString()).err().lines().filter(line -> !line.startsWith(" "))).hasSize(2)
                .anyMatch(line -> line.contains("b.yaml:3: hands: found \"tired\", expected one of: fine, sore, numb"));
    }

    @Test
    void helpHasExamples() {
        assertThat(CommandRun.of("debrief", "--help").out()).contains("courseworthy debrief debriefs/ridge.yaml", "--format json");
    }
}
