package courseworthy.text;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.problem.Fault;
import courseworthy.problem.Faults;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What the reader keeps of a file, and what it refuses. What is YAML and what is not: YAML 1.1 and 1.2 (yaml.org/spec). */
class YamlReaderTest {

    private static final String KEEP = "\n    Quote the text if it should start with this character.";

    private final Faults faults = new Faults();

    private Node.Mapping read(String text) {
        return YamlReader.read(text.getBytes(StandardCharsets.UTF_8), "f.yaml", faults);
    }

    private List<String> faultsOf(String text) {
        read(text);
        return faults.faults().stream().map(Fault::text).toList();
    }

    /**
     * The faults of a text that the parser must read without looking at its characters much more often than plain text needs, which is
     * about ten times each: what makes it look more often makes it slow on any machine.
     */
    private List<String> readAtOnce(String text) {
        long[] looks = new long[1];
        YamlReader.read(text.getBytes(StandardCharsets.UTF_8), "f.yaml", YamlReader.MOST_BYTES, faults, each -> looks[0] += each);
        assertThat(looks[0]).as(text.substring(0, Math.min(60, text.length()))).isLessThan(30L * text.length());
        return faults.faults().stream().map(Fault::text).toList();
    }

    private static Node.Scalar value(Node.Mapping tree, String key) {
        return (Node.Scalar) tree.get(key);
    }

    @Test
    void valuesAreKeptAsWritten() {
        Node.Mapping tree = read("a: yes\nb: 010\nc: 1_000\nd: ~\ne: null\nf: 'no'\ng: 1:30\nh: 2026-05-09\nmtb:scale: 2+\n");
        assertThat(faults.faults()).isEmpty();
        assertThat(tree.entries()).extracting(e -> e.key().text() + "=" + ((Node.Scalar) e.value()).text()).containsExactly(
                "a=yes", "b=010", "c=1_000", "d=~", "e=null", "f=no", "g=1:30", "h=2026-05-09", "mtb:scale=2+");
        assertThat(value(tree, "a").quoted()).isFalse();
        assertThat(value(tree, "f").quoted()).isTrue();
    }

    @Test
    void everyKeyAndValueKnowsItsPlace() {
        Node.Mapping tree = read("# a comment\na: 1\nlist:\n  - b: 2\n    c: 3\n");
        Node.Mapping item = (Node.Mapping) ((Node.Sequence) tree.get("list")).items().get(0);
        Node.Entry last = item.entries().get(1);
        assertThat(last.key().line()).isEqualTo(5);
        assertThat(last.key().column()).isEqualTo(5);
        assertThat(last.value().column()).isEqualTo(8);
        assertThat(tree.line()).isEqualTo(2);
    }

    /** One piece of wrong text and the whole of what is said of it. */
    static List<Arguments> refused() {
        return List.of(
                Arguments.of("a backslash", "a: \"C:\\q\"\n",
                        "f.yaml:1: found a backslash that YAML cannot read, expected text with backslashes in single quotes\n    Use single quotes."),
                Arguments.of("a sign behind a bar", "a: |x\n",
                        "f.yaml:1: found text that is not YAML (expected chomping or indentation indicators, but found x(120)), expected \"key: value\" lines with even indenting\n"
                                + "    Check indenting, quotes and brackets in this line and the one above."),
                Arguments.of("a list behind its key", "a: - b\n",
                        "f.yaml:1: found a list item after its key, expected each item on a line of its own\n    Start the list on the next line."),
                Arguments.of("text behind a quote", "a: \"b\" c\n",
                        "f.yaml:1: found text after a closed quote, expected one text as value\n    Put the whole text in one pair of quotes."),
                Arguments.of("an anchor", "a: 1\nb: &x 2\n", "f.yaml:2: found an anchor \"&x\", expected plain text, lists and keys" + KEEP),
                Arguments.of("an alias", "a: 1\nb: *x\n", "f.yaml:2: found an alias \"*x\", expected plain text, lists and keys" + KEEP),
                Arguments.of("a standard tag", "a: !!str 5\n", "f.yaml:1: found a tag \"!str\", expected plain text, lists and keys" + KEEP),
                Arguments.of("a tag that names a class", "a: !!javax.script.ScriptEngineManager [x]\n",
                        "f.yaml:1: found a tag \"!javax.script.ScriptEngineManager\", expected plain text, lists and keys" + KEEP),
                Arguments.of("a merge key", "a:\n  <<: {b: 1}\n",
                        "f.yaml:2: <<: found a merge key, expected plain keys\n    Write the keys out where they apply."),
                Arguments.of("a key twice", "a: 1\nb: 2\na: 3\n",
                        "f.yaml:3: a: found the key a second time, expected each key once\n    It first stands in line 1."),
                Arguments.of("a key twice, once in quotes", "a: 1\n\"a\": 3\n",
                        "f.yaml:2: a: found the key a second time, expected each key once\n    It first stands in line 1."),
                Arguments.of("a second document", "a: 1\n---\nb: 2\n",
                        "f.yaml:2: ---: found a second document, expected one document in a file\n    Put it in a file of its own."),
                Arguments.of("a list as key", "? [a, b]\n: 1\n",
                        "f.yaml:1: found a key that is a list, expected a plain word or words as key"),
                Arguments.of("a block as key", "{{a: 1}: 2}\n",
                        "f.yaml:1: found a key that is a block of keys, expected a plain word or words as key"),
                Arguments.of("no value", "a: 1\nb:\n",
                        "f.yaml:2: b: found nothing, expected a value\n    Write the value after the colon, or remove the line."),
                Arguments.of("an empty text", "a: \"\"\n",
                        "f.yaml:1: a: found nothing, expected a value\n    Write the value after the colon, or remove the line."),
                Arguments.of("an empty list item", "a:\n  - b\n  -\n",
                        "f.yaml:3: a list item: found nothing, expected a value\n    Write the item, or remove its dash or comma."),
                Arguments.of("an empty key", "'': 1\n", "f.yaml:1: found a value without a key, expected a plain word or words before the colon"),
                Arguments.of("a colon inside a text", "a: 1\nname: Ride: the long one\n",
                        "f.yaml:2: found \": \" inside a text, expected text with \": \" in quotes\n"
                                + "    Put the whole text in double quotes; or, if this line is a key of its own, indent it like its neighbours."),
                Arguments.of("a tab for indenting", "a:\n\tb: 1\n",
                        "f.yaml:2: found a tab, expected spaces for indenting\n    Indent with spaces."),
                Arguments.of("an open quote", "a: 1\nb: \"open\nc: 2\n",
                        "f.yaml:2: found a quote that never closes, expected a closing quote\n    Close the quote."),
                Arguments.of("an open bracket", "a: 1\nb: [1, 2\nc: 3\n",
                        "f.yaml:2: found a bracket that never closes, or a comma missing in it, expected items between brackets, with commas\n"
                                + "    Close the bracket, and put a comma between items."),
                Arguments.of("no colon", "a: 1\nlength 5 km\nb: 2\n",
                        "f.yaml:2: found a line without \": \", expected \"key: value\"\n    Write a colon and a space between key and value."),
                Arguments.of("no space behind the colon", "a: 1\nlength:5 km\nb: 2\n",
                        "f.yaml:2: found a line without \": \", expected \"key: value\"\n    Write a colon and a space between key and value."),
                Arguments.of("uneven indenting", "a:\n    b: 1\n  c: 2\n",
                        "f.yaml:3: found a line that does not fit the lines above, expected \"key: value\" lines with even indenting\n"
                                + "    Give keys that belong together the same indenting."),
                Arguments.of("a sign of YAML's own", "a: @home\n",
                        "f.yaml:1: found a text that starts with a sign YAML keeps for itself, expected such text in quotes\n"
                                + "    Put the whole text in double quotes."),
                Arguments.of("a list at the top", "- a\n- b\n", "f.yaml:1: found a list, expected a block of keys at the top of the file"),
                Arguments.of("plain text", "just words\n", "f.yaml:1: found \"just words\", expected a block of keys at the top of the file"),
                Arguments.of("nothing", "", "f.yaml: found an empty file, expected a block of keys\n    Write at least one \"key: value\" line."),
                Arguments.of("comments alone", "# nothing\n",
                        "f.yaml: found an empty file, expected a block of keys\n    Write at least one \"key: value\" line."),
                Arguments.of("a control character", "a: 1\nb: x\u0007\n",
                        "f.yaml:2: found a character that YAML does not allow (U+0007), expected printable text\n"
                                + "    Remove the control character."),
                Arguments.of("a line end few programs count", "a: 1\nb: x\u2028y\n",
                        "f.yaml:2: found a character that YAML does not allow (U+2028), expected printable text\n    Remove the character."),
                Arguments.of("21 levels", "a: " + "[".repeat(20) + "x" + "]".repeat(20) + "\n",
                        "f.yaml:1: found nesting deeper than 20, expected at most 20 levels"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("refused")
    void isRefusedInOneMessage(String what, String text, String message) {
        assertThat(faultsOf(text)).containsExactly(message);
    }

    @Test
    void twentyLevelsAreRead() {
        assertThat(faultsOf("a: " + "[".repeat(18) + "x" + "]".repeat(18) + "\n")).isEmpty();
    }

    @Test
    void allFaultsAreFoundAtOnce() {
        assertThat(faultsOf("""
                name: Ride: long
                a: &x 1
                b:
                a: 2
                <<: 3
                c: !t 4
                note: one: two
                d: *x
                """)).extracting(message -> message.substring(0, message.indexOf(','))).containsExactly(
                "f.yaml:1: found \": \" inside a text",
                "f.yaml:2: found an anchor \"&x\"",
                "f.yaml:3: b: found nothing",
                "f.yaml:4: a: found the key a second time",
                "f.yaml:5: <<: found a merge key",
                "f.yaml:6: found a tag \"!t\"",
                "f.yaml:7: found \": \" inside a text",
                "f.yaml:8: found an alias \"*x\"");
    }

    @Test
    void aTextWithAColonIsKeptWholeSoThatReadingGoesOn() {
        Node.Mapping tree = read("name: It's a ride: long\nb: 1\n");
        assertThat(value(tree, "name").text()).isEqualTo("It's a ride: long");
        assertThat(value(tree, "b").line()).isEqualTo(2);
        assertThat(faults.stop()).isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = {"a: 1\r\nb: 2\r\nc: &x 3\r\n", "a: 1\rb: 2\rc: &x 3\r", "\uFEFFa: 1\nb: 2\nc: &x 3\n"})
    void lineEndsAndByteOrderMarkDoNotShiftLines(String text) {
        assertThat(faultsOf(text)).containsExactly("f.yaml:3: found an anchor \"&x\", expected plain text, lists and keys" + KEEP);
    }

    @Test
    void bytesThatAreNotUtf8AreRefusedWithTheirLine() {
        YamlReader.read("a: 1\nb: H\u00f6he\n".getBytes(StandardCharsets.ISO_8859_1), "f.yaml", faults);
        assertThat(faults.faults()).extracting(Fault::text).containsExactly(
                "f.yaml:2: found bytes that are not UTF-8 text, expected a text file in UTF-8\n    Save the file as UTF-8 text.");
    }

    @Test
    void aCharacterCutOffAtTheEndIsRefused() {
        YamlReader.read(new byte[] {'a', ':', ' ', (byte) 0xC3}, "f.yaml", faults);
        assertThat(faults.faults()).hasSize(1);
    }

    @Test
    void aCommentBehindAnUnquotedTextIsMarked() {
        Node.Mapping tree = read("a: Ride #3\nb: 'Ride #3'\nc: Ride#3\nd: \ud83d\udeb2 ride # 3\ne: [x, y] # z\nf: x\n  y # z\n");
        assertThat(tree.entries().stream().filter(e -> e.value() instanceof Node.Scalar v && v.cut()).map(e -> e.key().text()))
                .containsExactly("a", "d", "f");
        assertThat(value(tree, "c").text()).isEqualTo("Ride#3");
    }

    @Test
    void filesOverOneMegabyteAreRefusedAndAtOneMegabyteAreRead() {
        String most = "a: " + "x".repeat(YamlReader.MOST_BYTES - 4) + "\n";
        assertThat(faultsOf(most)).isEmpty();
        assertThat(faultsOf(most + "#")).containsExactly(
                "f.yaml: found a file over 1 MB, expected at most 1 MB\n    Split it into several files.");
    }

    @Test
    void aFileThatIsNotThereOrAFolderIsSaidSo(@TempDir Path folder) throws Exception {
        YamlReader.read(folder.resolve("none.yaml"), "x/none.yaml", faults);
        YamlReader.read(Files.createDirectory(folder.resolve("dir")), "x/dir", faults);
        assertThat(faults.faults()).extracting(Fault::text).containsExactly(
                "x/dir: found a folder, expected a file that can be read\n    Check the path and its permissions.",
                "x/none.yaml: found no such file, expected a file that can be read\n    Check the spelling of the path.");
    }

    @Test
    void nestingBombsEndAtOnceAndWithoutOverflow() {
        String[] bombs = {"[".repeat(999_000), "a: " + "[".repeat(999_000), "{a: ".repeat(240_000), "- ".repeat(499_000),
                "? ".repeat(499_000), "a:\n" + "  ".repeat(400_000) + "b: 1", "x".repeat(999_000), "a: '" + "x".repeat(990_000),
                "a: " + "b: c ".repeat(190_000), "a: b: c\n".repeat(120_000), "a: |\n" + " x\n".repeat(300_000), "a" + " ".repeat(990_000)};
        for (String bomb : bombs) {
            readAtOnce(bomb);
        }
        assertThat(readAtOnce(bombs[0])).isNotEmpty();
    }

    /** A text that the parser takes in as one costs no more a character than many short ones. */
    @Test
    void longTextsAreReadAtOnce() {
        for (String text : List.of("a: " + "x".repeat(990_000), "a: \"" + "x".repeat(990_000) + "\"", "a: \"" + "x\\n".repeat(300_000) + "\"",
                "a: |\n  " + "x".repeat(990_000), "# " + "x".repeat(990_000) + "\na: b")) {
            assertThat(readAtOnce(text)).isEmpty();
        }
    }

    @Test
    void aliasBombsAreNeverExpanded() {
        StringBuilder bomb = new StringBuilder("a0: &a0 [x]\n");
        for (int i = 1; i < 30; i++) {
            bomb.append("a" + i + ": &a" + i + " [" + ("*a" + (i - 1) + ", ").repeat(9) + "x]\n");
        }
        assertThat(readAtOnce(bomb.toString())).last().asString()
                .endsWith("the rest of the file was not read.");
    }

    @Test
    void aFloodOfFaultsIsCutShort() {
        List<String> found = readAtOnce("a:\n".repeat(300_000));
        assertThat(found).hasSize(YamlReader.MOST_REFUSALS + 1);
        assertThat(found).contains(
                "f.yaml:100: found the 100th fault, expected fewer\n    Mend these first; the rest of the file was not read.");
    }

    /** The hundredth fault may be that the text is no YAML any further. */
    @Test
    void theLastFaultTakenMayBeTheOneThatEndsTheReading() {
        for (int before = YamlReader.MOST_REFUSALS - 4; before < YamlReader.MOST_REFUSALS + 2; before++) {
            for (String end : List.of("\"", "[", "b: c: d\n", "\tx: y\n", "@\n", "b: \u0001\n")) {
                assertThat(faultsOf("a:\n".repeat(before) + end)).hasSizeGreaterThan(before - 1);
            }
        }
    }

    @Test
    void longLinesWithManyValuesAreReadAtOnce() {
        assertThat(readAtOnce("a: [" + "\ud83d\udeb2, ".repeat(150_000) + "x]\n")).isEmpty();
    }

    @Test
    void randomBytesNeverThrow() {
        java.util.Random random = new java.util.Random(7);
        String alphabet = "ab:-?[]{},#&*!|>'\"%@` \n\n\t1";
        for (int i = 0; i < 20_000; i++) {
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            for (int n = random.nextInt(40); n > 0; n--) {
                bytes.write(random.nextInt(30) == 0 ? random.nextInt(256) : alphabet.charAt(random.nextInt(alphabet.length())));
            }
            Faults found = new Faults();
            Node.Mapping tree = YamlReader.read(bytes.toByteArray(), "f.yaml", found);
            assertThat(tree != null || found.stop()).as("%s", bytes).isTrue();
        }
    }
}
