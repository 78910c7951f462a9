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

/** Two sheets in force of which one leaves out a row of the other. */
class SheetsTogetherTest {

    @TempDir
    private Path folder;
    private String course;
    private String club;
    private String mine;

    @BeforeEach
    void files() throws IOException {
        course = write("course.yaml", "name: Short\nstretches:\n  - {length: 20 km, surface: gravel, ascent: 100 m}\n");
        club = write("club.yaml", "sheet: Club\nauthor: a coach\nadvice:\n  - id: seven\n    say: {plugs: prefer 7}\n    because: Seven it is.\n");
        mine = write("mine.yaml", "sheet: Mine\nauthor: me\nadvice:\n  - id: three\n    say: {plugs: prefer 3}\n    because: Three will do.\n"
                + "leave out:\n  - rule: Club/seven\n    because: Nobody carries seven.\n");
        write("mine.cases.yaml", "cases for: Mine\ncases:\n  - call: a short one\n    course: course.yaml\n    expect: {plugs: 3}\n    silent: [Club/seven]\n"
                + "    fires: [three]\n");
    }

    private String write(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text).toString();
    }

    private static String plain(CommandRun ran) {
        assertThat(ran.err()).isEmpty();
        assertThat(ran.code()).isZero();
        return ran.out().replaceAll("\\s+", " ");
    }

    @Test
    void alone() {
        for (String command : new String[] {"check", "test"}) {
            CommandRun ran = CommandRun.of("sheet", command, mine);
            assertThat(ran.code()).isEqualTo(2);
            assertThat(ran.err()).contains(mine + ":8: leave out: found \"Club/seven\", expected the id of a rule in force\n"
                    + "    Where it is another sheet's, give that sheet too, with --sheet.");
        }
    }

    @Test
    void bothAreCheckedAndTried() {
        assertThat(plain(CommandRun.of("sheet", "check", mine, "--sheet", club))).startsWith(mine + " 1 row");
        assertThat(plain(CommandRun.of("sheet", "test", mine, "--sheet", club))).contains("With the advice of \"Club\" by a coach", "1 case, all as expected",
                "Club/seven is left out by \"Mine\" (" + mine + ":8): Nobody carries seven.");
    }

    @Test
    void theBriefAndTheReasonsSayWhoLeftItOut() {
        String left = "Club/seven is left out by \"Mine\" (" + mine + ":8): Nobody carries seven.";
        assertThat(plain(CommandRun.of("brief", course, "--sheet", club, "--sheet", mine))).contains(left);
        assertThat(plain(CommandRun.of("brief", course, "--sheet", mine, "--sheet", club))).contains(left);
        assertThat(plain(CommandRun.of("brief", course, "--sheet", club, "--sheet", mine, "--format", "markdown")).replace("\\", "")).contains("Club/seven is left out by");
        assertThat(plain(CommandRun.of("why", course, "plugs", "--sheet", club, "--sheet", mine))).contains(left);
        String json = CommandRun.of("brief", course, "--sheet", club, "--sheet", mine, "--format", "json").out();
        assertThat(OutputSchema.faults(json.replace(folder + "/", ""))).isEmpty();
        JsonNode sheets = OutputSchema.tree(json).get("sheets");
        assertThat(sheets.get(0).has("leaves_out")).isFalse();
        assertThat(sheets.get(1).get("leaves_out").get(0).get("rule").textValue()).isEqualTo("Club/seven");
        CommandRun rule = CommandRun.of("why", course, "plugs", "--rule", "Club/seven", "--sheet", club, "--sheet", mine);
        assertThat(rule.code()).isEqualTo(2);
        assertThat(rule.err()).isEqualTo("--rule: found \"Club/seven\", left out by \"Mine\" (" + mine + ":8), expected a rule in force\n"
                + "    The reason there: Nobody carries seven.\n");
    }
}
