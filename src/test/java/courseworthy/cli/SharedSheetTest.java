package courseworthy.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import courseworthy.report.json.OutputSchema;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A sheet that came from somebody else: the brief says whose it is, and it can do nothing but advise. */
class SharedSheetTest {

    private static final String ROW = "advice:\n  - id: x\n    say: {plugs: prefer 7}\n    because: Seven it is.\n";

    @TempDir
    private Path folder;
    private String course;

    @BeforeEach
    void course() throws IOException {
        course = Files.writeString(folder.resolve("course.yaml"), "name: Short\nstretches:\n  - {length: 20 km, surface: gravel}\n").toString();
    }

    private String sheet(String text) throws IOException {
        return Files.writeString(folder.resolve("theirs.yaml"), text).toString();
    }

    private CommandRun brief(String sheet, String... more) {
        return CommandRun.of(Stream.concat(Stream.of("brief", course, "--sheet", sheet), Stream.of(more)).toArray(String[]::new));
    }

    @Test
    void theBriefNamesEverySheetInForceAndItsDigest() throws Exception {
        String text = "sheet: Dry summer\nauthor: A. Coach\nversion: 3\nlicence: CC-BY-4.0\n" + ROW;
        String sheet = sheet(text);
        String digest = HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(text.getBytes(java.nio.charset.StandardCharsets.UTF_8)));
        String named = "With the advice of \"Dry summer\" 3 by A. Coach (" + sheet + ", CC-BY-4.0, sha256 " + digest.substring(0, 12) + ").";
        assertThat(brief(sheet).out().replaceAll("\\s+", " ")).contains(named);
        assertThat(brief(sheet, "--format", "markdown").out().replace("\\", "")).contains(named);
        JsonNode json = OutputSchema.tree(brief(sheet, "--format", "json").out());
        assertThat(json.get("sheets")).hasSize(1);
        assertThat(json.get("sheets").get(0).toString()).isEqualTo("{\"name\":\"Dry summer\",\"author\":\"A. Coach\",\"version\":\"3\","
                + "\"licence\":\"CC-BY-4.0\",\"file\":\"" + sheet + "\",\"sha256\":\"" + digest + "\"}");
    }

    @Test
    void withoutSheetsNoneIsNamed() {
        assertThat(CommandRun.of("brief", course).out()).doesNotContain("sha256", "With the advice");
        assertThat(CommandRun.of("brief", course, "--format", "json").out()).contains("\"sheets\" : [ ]");
    }

    /** One wording, wherever advice bears on what is printed. */
    @ParameterizedTest
    @ValueSource(strings = {"brief", "brief --topic plugs", "why plugs", "why plugs --not 3", "checklist", "compare --set plugs=3", "gears"})
    void everyCommandThatTakesASheetNamesIt(String command) throws IOException {
        String sheet = sheet("sheet: Dry summer\nauthor: A. Coach\nversion: 3\n" + ROW);
        List<String> words = new ArrayList<>(List.of(command.split(" ")));
        words.addAll(1, List.of(course, "--sheet", sheet));
        named(sheet, words);
    }

    /** The same of commands that find their sheets elsewhere. */
    @Test
    void whatFindsItsSheetElsewhereNamesItToo() throws IOException {
        String sheet = sheet("sheet: Dry summer\nauthor: A. Coach\nversion: 3\n" + ROW);
        Files.writeString(folder.resolve("season.yaml"), "season: One\nriders:\n  - {name: Ann, workshop: w.yaml, sheets: [theirs.yaml]}\nevents:\n"
                + "  - {course: course.yaml, date: 2026-05-09}\n");
        Files.copy(Path.of("docs/examples/workshops/cellar.yaml"), folder.resolve("w.yaml"));
        named(sheet, List.of("season", folder.toString()));
        CommandRun.of("brief", course, "--sheet", sheet, "--format", "json", "-o", folder + "/given.json");
        Files.createDirectory(folder.resolve("debriefs"));
        Files.move(folder.resolve("given.json"), folder.resolve("debriefs/given.json"));
        String debrief = Files.writeString(folder.resolve("debriefs/one.yaml"), "debrief: One\nbrief: given.json\nspun out: never\n").toString();
        named(sheet, List.of("debrief", debrief));
        named(sheet, List.of("debrief", folder + "/debriefs"));
    }

    private static void named(String sheet, List<String> words) throws IOException {
        String digest = digest(Files.readString(Path.of(sheet)));
        String named = "With the advice of \"Dry summer\" 3 by A. Coach (" + sheet + ", sha256 " + digest.substring(0, 12) + ").";
        assertThat(CommandRun.of(words.toArray(new String[0])).out().replaceAll("\\s+", " ")).contains(named);
        assertThat(formatted(words, "markdown").replace("\\", "")).contains(named);
        JsonNode json = OutputSchema.tree(formatted(words, "json"));
        JsonNode sheets = json.has("sheets") ? json.get("sheets") : json.get("rides").get(0).get("sheets");
        assertThat(sheets.toString()).isEqualTo("[{\"name\":\"Dry summer\",\"author\":\"A. Coach\",\"version\":\"3\",\"licence\":null,\"file\":\""
                + sheet + "\",\"sha256\":\"" + digest + "\"}]");
    }

    private static String formatted(List<String> words, String format) {
        return CommandRun.of(Stream.concat(words.stream(), Stream.of("--format", format)).toArray(String[]::new)).out();
    }

    private static String digest(String text) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(text.getBytes(java.nio.charset.StandardCharsets.UTF_8)));
        } catch (java.security.NoSuchAlgorithmException never) {
            throw new AssertionError(never);
        }
    }

    /** Where bars and saddles are is geometry, and a debrief holds what was said, under the sheets of then: neither asks a sheet of today. */
    @Test
    void whatNoSheetBearsOnTakesNone() {
        assertThat(CommandRun.of("position", "w.yaml", "--sheet", "x.yaml").err()).contains("no option '--sheet'");
        assertThat(CommandRun.of("debrief", "d.yaml", "--sheet", "x.yaml").err()).contains("no option '--sheet'");
        assertThat(CommandRun.of("season", ".", "--sheet", "x.yaml").err()).contains("no option '--sheet'");
    }

    @Test
    void aLicenceThatIsNearlyAKnownOneIsAskedAbout() throws IOException {
        assertThat(brief(sheet("sheet: Mine\nauthor: me\nlicence: CC-BY 4.0\n" + ROW)).err()).endsWith("theirs.yaml:3: warning: licence: found "
                + "\"CC-BY 4.0\", expected an SPDX identifier, such as CC-BY-4.0\n    Did you mean \"CC-BY-4.0\"?\n");
        assertThat(brief(sheet("sheet: Mine\nauthor: me\nlicence: ask me first\n" + ROW)).err()).isEmpty();
    }

    /** What YAML could be made to do elsewhere (its specification 1.2.2, chapters 6.9 and 7.1) is refused here. */
    @Test
    void nothingInItIsRunOrExpanded() throws IOException {
        String head = "sheet: Theirs\nauthor: they\n";
        refused(head + "advice: !!javax.script.ScriptEngineManager [!!java.net.URL [\"http://localhost/\"]]\n", ":3: ");
        refused("sheet: !!str Theirs\nauthor: they\n" + ROW, ":1: ");
        refused(head + "version: &a x\nlicence: *a\n" + ROW, ":3: ");
        refused(head + "advice:\n  - <<: {id: x}\n    say: {plugs: prefer 7}\n    because: y\n", ":4: ");
        refused(head + "advice:\n" + "- ".repeat(3000) + "x\n", ":4: ");
        refused("---\n" + head + ROW + "---\n" + head + ROW, ":");
        StringBuilder bomb = new StringBuilder(head).append("a0: &a0 [x,x,x,x,x,x,x,x,x]\n");
        for (int i = 1; i < 30; i++) {
            bomb.append("a").append(i).append(": &a").append(i).append(" [").append(("*a" + (i - 1) + ",").repeat(8)).append("]\n");
        }
        refused(bomb + ROW, ":3: ");
    }

    @Test
    void nothingIsReadButTheSheet() throws IOException {
        Path secret = Files.writeString(folder.resolve("secret.yaml"), "the secret\n");
        for (String key : List.of("include", "import", "extends", "track", "source", "file", "schema")) {
            CommandRun ran = brief(sheet("sheet: Theirs\nauthor: they\n" + key + ": " + secret + "\n" + ROW));
            assertThat(ran.code()).as(key).isEqualTo(2);
            assertThat(ran.err()).contains("theirs.yaml:3: " + key + ": found an unknown key").doesNotContain("the secret");
        }
        refused("sheet: " + secret + "\nauthor: they\n" + ROW, ":1: sheet: found \"" + secret + "\", expected a name without \"/\"");
        CommandRun named = brief(sheet("sheet: Theirs\nauthor: file://" + secret + "\n" + ROW.replace("Seven it is.", "\"${" + secret + "} $(cat " + secret
                + ") {{" + secret + "}}\"")));
        assertThat(named.code()).isZero();
        assertThat(named.out()).doesNotContain("the secret");
    }

    @Test
    void limitsAndWhatSafetyHangsOnAreOutOfReach() throws IOException {
        String head = "sheet: Theirs\nauthor: they\n";
        refused(head + "leave out:\n  - {rule: limit/hookless-at-most-5-bar, because: No.}\n", "a limit, expected advice\n    Limits cannot be left out.");
        refused(head + "leave out:\n  - {rule: pairing/rear-tyre-no-wider, because: No.}\n", "Limits cannot be left out.");
        refused(head + ROW + "    limit: yes\n", "Limits are shipped with the tool");
        refused(head + ROW + "    rank: limit\n", "Limits are shipped with the tool");
        for (String name : List.of("limit", "Shipped", "PAIRING", "rider")) {
            refused(head.replace("Theirs", name) + ROW, ":1: sheet: found \"" + name + "\", expected a name of its own");
        }
        refused(head + "advice:\n  - id: x\n    do: {what: a, find: b, by: night before, critical: yes}\n    because: c\n", "Only the shipped rules");
    }

    /** The strongest a sheet can say against a limit loses to it, and is shown to. */
    @Test
    void aLimitPrevailsOverWhateverASheetSays() throws IOException {
        String rider = Files.writeString(folder.resolve("rider.yaml"), "name: R\nbike: {kind: gravel, marked tyre pressure: 3.0 bar, marked rim pressure: 2.8 bar, "
                + "hookless: yes, rim inner width: 23 mm}\n").toString();
        String sheet = sheet("sheet: Theirs\nauthor: they\nadvice:\n  - id: hard\n    force: must\n    say: {front tyre pressure: [at least 6.0 bar, "
                + "prefer 6.0 bar]}\n    because: Harder is faster.\n");
        JsonNode json = OutputSchema.tree(brief(sheet, "--rider", rider, "--format", "json").out());
        List<JsonNode> pressure = new java.util.ArrayList<>();
        json.get("decisions").forEach(decision -> pressure.addAll(decision.get("topic").asText().equals("front tyre pressure")
                ? List.of(decision) : List.of()));
        assertThat(pressure).hasSize(1);
        assertThat(pressure.get(0).get("value").asDouble()).isBetween(100.0, 280.0);
        assertThat(pressure.get(0).get("against").toString()).contains("Theirs/hard", "limit/");
    }

    @Test
    void hugeFilesAndHugeNamesAreRefusedAtOnce() throws IOException {
        refused("sheet: Theirs\nauthor: they\n" + "# padding\n".repeat(500_000) + ROW, "found a file over 4 MB");
        refused("sheet: " + "x".repeat(201) + "\nauthor: they\n" + ROW, ":1: sheet: found 201 characters, expected one line of at most 200");
        refused("sheet: Theirs\nauthor: \"a\\nb\"\n" + ROW, ":2: author: found several lines");
        // Of a file larger than the memory, nothing beyond the largest sheet can have been read.
        try (RandomAccessFile empty = new RandomAccessFile(folder.resolve("sparse.yaml").toFile(), "rw")) {
            empty.setLength(1L << 36);
        }
        assertThat(brief(folder.resolve("sparse.yaml").toString()).err()).contains("found a file over 4 MB");
    }

    @Test
    void nothingInItIsObeyedByATerminal() throws IOException {
        String hostile = "\"T\\e[2J\\e]0;x\\a\\u202Eend\"";
        CommandRun ran = brief(sheet("sheet: " + hostile + "\nauthor: " + hostile + "\nversion: " + hostile + "\nlicence: " + hostile + "\n"
                + ROW.replace("Seven it is.", hostile)));
        for (String shown : List.of(ran.out(), ran.err())) {
            assertThat(shown.chars().filter(c -> c < 32 && c != '\n' || c == 127 || c == 0x202e)).isEmpty();
        }
        refused("sheet: T\u001b[2J\nauthor: they\n" + ROW, ":1: ");
    }

    private void refused(String text, String message) throws IOException {
        CommandRun ran = brief(sheet(text));
        assertThat(ran.code()).as(text.substring(0, Math.min(200, text.length()))).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).contains(message).doesNotContain("\u001b", "Exception", "\tat ");
    }
}
