package courseworthy;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Every numeric constant of what is worked out has words above it, or above its group, and they or the type's own say where it is from: a
 * citation with its year, a standard, practice, judgement, memory, arithmetic, or that it is a matter of computing alone.
 */
class ConstantSourceTest {

    private static final Pattern CONSTANT = Pattern.compile("\\s+(?:(?:public|private|protected) )?static final (?:double|int|long|float|Double|Range)"
            + "(?:\\[\\])*\\s+(\\w+)\\s*=(.*)");
    private static final Pattern FROM = Pattern.compile("practice|source|memory|publish|judgement|\\b(?:19|20)\\d\\d\\b|ISO|ETRTO|exact|arithmetic|by hand"
            + "|measured|calculated|second-hand|computing", Pattern.CASE_INSENSITIVE);
    private static final Pattern TYPE = Pattern.compile("/\\*\\*((?:(?!\\*/).)*)\\*/\\s*(?:@\\w+\\s+)*(?:public |abstract |final |sealed )*(?:class|enum|record|interface) ",
            Pattern.DOTALL);

    @ParameterizedTest
    @ValueSource(strings = {"ride", "demand", "worth", "build"})
    void everyConstantSaysWhereItIsFrom(String name) throws IOException {
        List<String> silent = new ArrayList<>();
        int seen = 0;
        try (Stream<Path> files = Files.walk(Path.of("src/main/java/courseworthy", name))) {
            for (Path file : files.filter(each -> each.toString().endsWith(".java")).sorted().toList()) {
                String text = Files.readString(file);
                seen += constants(text).size();
                constants(text).stream().filter(each -> !told(text, each)).forEach(each -> silent.add(file.getFileName() + ":" + (each + 1)));
            }
        }
        assertThat(seen).isGreaterThan(10);
        assertThat(silent).isEmpty();
    }

    private static List<Integer> constants(String text) {
        List<Integer> out = new ArrayList<>();
        String[] lines = text.split("\n");
        for (int i = 0; i < lines.length; i++) {
            Matcher constant = CONSTANT.matcher(lines[i]);
            String value = constant.matches() ? constant.group(2) + (lines[i].endsWith(";") || i + 1 == lines.length ? "" : lines[i + 1]) : "";
            if (value.matches(".*\\d.*")) {
                out.add(i);
            }
        }
        return out;
    }

    /** Whether words stand above a constant or its group, and they or those of the type say where it is from. */
    private static boolean told(String text, int line) {
        String[] lines = text.split("\n");
        int last = line - 1;
        while (last >= 0 && lines[last].contains("static final")) {
            last--;
        }
        if (last < 0 || !lines[last].contains("*/") && !lines[last].contains("//")) {
            return false;
        }
        StringBuilder words = new StringBuilder();
        for (int i = last; i >= 0; i--) {
            words.insert(0, lines[i] + "\n");
            if (lines[i].contains("/**") || lines[i].contains("//")) {
                break;
            }
        }
        Matcher type = TYPE.matcher(text);
        return FROM.matcher(words).find() || type.find() && FROM.matcher(type.group(1)).find();
    }

    @Test
    void aConstantWithoutWordsIsFound() {
        String bare = "/** A thing. */\nclass A {\n\n    static final double X = 1.5;\n}\n";
        assertThat(told(bare, constants(bare).get(0))).isFalse();
        String unsaid = "/** A thing. */\nclass A {\n\n    /** Metres. */\n    static final double X = 1.5;\n}\n";
        assertThat(told(unsaid, constants(unsaid).get(0))).isFalse();
        String said = unsaid.replace("Metres.", "Metres (practice).");
        assertThat(told(said, constants(said).get(0))).isTrue();
    }

    /** What is from memory in the shipped rules is not called published. */
    @Test
    void noPublishedRuleRestsOnMemory() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("rules"))) {
            for (Path file : files.filter(each -> each.toString().endsWith(".yaml")).sorted().toList()) {
                assertThat(Files.readString(file)).as("%s", file).doesNotContain("from memory");
            }
        }
    }
}
