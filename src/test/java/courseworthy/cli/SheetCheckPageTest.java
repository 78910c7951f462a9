package courseworthy.cli;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.analysis.Finding.Kind;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** The page of what {@code sheet check} says: each example on its full text, and no message that is not on it. */
class SheetCheckPageTest {

    private static final Path PAGE = Path.of("docs", "reference", "sheet-check.md");
    private static final Pattern EXAMPLE = Pattern.compile("### ([^\n]+)\n(?:(?!\n###? ).)*?```yaml\n(.*?)```\n\n```text\n(.*?)```", Pattern.DOTALL);
    private static final String HEAD = "sheet: Mine\nauthor: a coach\nadvice:\n";

    private static final Path MAIN = Path.of("src", "main", "java", "courseworthy");
    /** Where what it says is written. */
    private static final List<String> SPEAKING = List.of("analysis/SheetCheck.java", "task/LibraryGaps.java", "task/RosterCoverage.java", "sheet/SheetReader.java",
            "sheet/ConditionReader.java", "sheet/ValueTestReader.java", "sheet/SayingReader.java", "sheet/OccasionReader.java",
            "sheet/NamedValues.java", "sheet/Rulebook.java", "text/YamlReader.java");
    private static final Pattern LITERAL = Pattern.compile("\"((?:[^\"\\\\]|\\\\.)*)\"");

    @TempDir
    private Path folder;

    @TestFactory
    Stream<DynamicTest> examples() throws IOException {
        Matcher examples = EXAMPLE.matcher(Files.readString(PAGE));
        List<DynamicTest> out = new ArrayList<>();
        while (examples.find()) {
            String sheet = examples.group(2);
            String said = examples.group(3);
            out.add(DynamicTest.dynamicTest(examples.group(1), () -> assertThat(check(sheet)).isEqualTo(oneLine(said))));
        }
        assertThat(out).hasSizeGreaterThan(30);
        return out.stream();
    }

    private String check(String sheet) throws IOException {
        String whole = sheet.startsWith("- ") && !sheet.startsWith("- a\n") ? HEAD + sheet.indent(2) : sheet;
        String file = Files.writeString(folder.resolve("mine.yaml"), whole).toString();
        CommandRun ran = CommandRun.of("sheet", "check", file);
        return oneLine((ran.err() + ran.out()).replace(file, "mine.yaml"));
    }

    /** Where lines break depends on the path of the sheet. */
    private static String oneLine(String text) {
        return text.replaceAll("\\s+", " ").strip();
    }

    @Test
    void everyKindHasItsPlace() throws IOException {
        String page = Files.readString(PAGE);
        for (Kind kind : Kind.values()) {
            assertThat(page).contains(kind.words());
        }
    }

    /** Every sentence and half sentence in the code that finds something to say. */
    @Test
    void everyMessageIsOnThePage() throws IOException {
        String page = oneLine(Files.readString(PAGE));
        TreeSet<String> missing = new TreeSet<>();
        for (String file : SPEAKING) {
            for (String line : Files.readAllLines(MAIN.resolve(file))) {
                Matcher literals = LITERAL.matcher(silent(line) ? "" : line);
                while (literals.find()) {
                    String text = oneLine(literals.group(1).replace("\\\"", "\"").replace("\\n", " "));
                    if (text.length() > 8 && text.contains(" ") && !page.contains(text)) {
                        missing.add(file + ": " + text);
                    }
                }
            }
        }
        assertThat(missing).isEmpty();
    }

    /** Comments, patterns, and what YAML's own messages are known by. */
    private static boolean silent(String line) {
        String code = line.strip();
        return code.startsWith("*") || code.startsWith("/*") || code.startsWith("//") || code.contains("Pattern.compile") || code.contains("NAME = ")
                || code.contains("problem.") || code.contains("around.") || code.contains(".matches(") || code.contains("IllegalStateException");
    }
}
