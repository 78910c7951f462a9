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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The tool talks as a mechanic does to a rider: turns of phrase that nobody in the trade uses stand in no text of its own. */
class WordingTest {

    private static final Pattern LITERAL = Pattern.compile("\"((?:[^\"\\\\\n]|\\\\.)*)\"");
    private static final Pattern COMMENT = Pattern.compile("(?s)/\\*.*?\\*/|(?m:^\\s*//[^\n]*)");

    /** Each with an example of what is said instead. */
    @ParameterizedTest
    @ValueSource(strings = {
        "\\bWho [a-z]+s\\b.{0,60} (is|are|asks|does)\\b", // If you are ill, ask a doctor first
        "\\b(told|foretold)\\b", // predicted, reported, given
        "\\b[Rr]eturns\\b", // saves
        "chart leads|marking leads|rules lead\\b", // takes precedence
        "\\bkept silent\\b|\\bspeaks on\\b", // did not apply
        "\\bnot written\\b|SINCE NOT WRITTEN", // not given
        "\\banew\\b|\\bMended\\b", // recalculated, repaired
        "\\bslow end\\b", // the slow estimate
        "\\bgoes before\\b", // overrides
        "\\bgarage\\b|\\bcalliper", // workshop, caliper
        "\\bTHE CALL\\b|\\bthe decided\\b"}) // recommended set-up
    void noTextOfTheToolIsSaidSo(String phrase) throws IOException {
        Pattern pattern = Pattern.compile(phrase);
        List<String> found = new ArrayList<>();
        try (Stream<Path> all = Files.walk(Path.of("src", "main", "java"))) {
            for (Path file : all.filter(each -> each.toString().endsWith(".java")).sorted().toList()) {
                Matcher literals = LITERAL.matcher(COMMENT.matcher(Files.readString(file)).replaceAll(""));
                while (literals.find()) {
                    if (pattern.matcher(literals.group(1)).find() && !literals.group(1).startsWith("shipped/")) {
                        found.add(file.getFileName() + ": " + literals.group(1));
                    }
                }
            }
        }
        assertThat(found).isEmpty();
    }
}
