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

    /** Words that files and briefs of earlier versions have stand here. */
    private static final List<String> OF_EARLIER_VERSIONS = List.of("FormerKeys.java", "SavedBriefReader.java");

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
        "\\bTHE CALL\\b|\\bthe decided\\b", // recommended set-up
        "\\b(where )?the call is\\b|\\bserves the call\\b|\\bcall's\\b", // recommended is
        "\\b(it|which|they|nobody|never|always|must|may) speaks?\\b|\\bstays? silent\\b", // applies, does not apply
        "^Put on |\\bTake off |, over from ", // fit, remove, move across from
        "\\bone behind\\b|\\bbehind (it|its key|the command|--)|\\ba text behind\\b|^text behind", // after, with
        "\\b(to be|be|reads|turned out|it) otherwise\\b", // differently
        "\\balike\\b.*\\balike\\b|\\bof climbs alike\\b", // the same, similar
        "\\b[Mm]ended with\\b|\\bMend a\\b|cannot be mended", // repaired, correct
        "\\bFind: |\\bTo mind\\b|\\bTo have at hand\\b|\\bTO KNOW\\b|\\bBack to how\\b", // done when, check, you will need
        "WHAT IT IS WORTH|WHAT ELSE IS RIDDEN|WHAT DOES NOT GO|COULD NOT TELL|COULD NOT BE TOLD", // headings say what is under them
        "\\bhangs on it\\b|\\bbegin by\\b|\\bone pair of hands\\b|\\bOne pair of hands\\b", // safety-critical, start work by
        "\\bfound no such\\b|\\bwhoever|\\bfor who has\\b", // missing key, anyone who
        "\\bheld elsewhere\\b|as its cases say|pushed by the map|\\bis not to drink\\b", // different places, cases failed, the map says, do not drink
        "\\bforegoes\\b|\\bthe slow time\\b|\\brpm refused\\b", // the slow estimate, rpm
        "\\bcould not tell\\b|\\bthe body knows\\b|\\bsince the steerer\\b|\\bthe very build\\b|\\b(asks|asked) for (it|most)\\b", // inconclusive, you are used to it
        "\\bcommon value\\b|\\bof the library\\b|\\bFine where\\b", // the default, the shipped courses, if it is meant
        "\\bstands without\\b|\\b(does|do) not go (together|on|with)\\b|\\bdoes not go:", // cannot be fitted, do not fit together
        "\\ba rule there is\\b|\\bwhatever is found\\b|\\bMend (one|what)\\b|\\bcase touches\\b", // a rule in force, for every value, change one, no case covers
        "\\bno one value\\b|\\bleast life\\b|\\bleast that it lasts\\b|\\bsafe side of what\\b", // majority, shortest usual life
        "\\bcut-off of\\b|\\bground (dry|damp|wet)\\b|\\bdrop limit\\b|\\bhouse/"}) // time limit, going, ledge limit, shipped
    void noTextOfTheToolIsSaidSo(String phrase) throws IOException {
        Pattern pattern = Pattern.compile(phrase);
        List<String> found = new ArrayList<>();
        try (Stream<Path> all = Files.walk(Path.of("src", "main", "java"))) {
            for (Path file : all.filter(each -> each.toString().endsWith(".java")).sorted().toList()) {
                Matcher literals = LITERAL.matcher(COMMENT.matcher(Files.readString(file)).replaceAll(""));
                while (literals.find()) {
                    if (pattern.matcher(literals.group(1)).find() && !OF_EARLIER_VERSIONS.contains(file.getFileName().toString())) {
                        found.add(file.getFileName() + ": " + literals.group(1));
                    }
                }
            }
        }
        assertThat(found).isEmpty();
    }

    /** Files to begin with and examples are read by riders, their comments too; people copy how they are written. */
    @ParameterizedTest
    @ValueSource(strings = {"\\bWho [a-z]+\\b|\\b[Ww]hoever\\b", "\\b(told|tells)\\b", "\\breturns? (nothing|more|less|\\d)|grams return", "\\bgoes before\\b", "\\bnot written\\b",
        "\\bit speaks\\b", "\\bmended\\b|\\banew\\b", "\\bone does not\\b"})
    void noFileToCopyIsSaidSo(String phrase) throws IOException {
        Pattern pattern = Pattern.compile(phrase);
        List<String> found = new ArrayList<>();
        for (String folder : List.of("src/main/resources/courseworthy/new", "docs/examples", "course-profiles")) {
            try (Stream<Path> all = Files.walk(Path.of(folder))) {
                for (Path file : all.filter(each -> each.toString().endsWith(".yaml")).sorted().toList()) {
                    Files.readAllLines(file).stream().filter(line -> pattern.matcher(line).find()).forEach(line -> found.add(file + ": " + line));
                }
            }
        }
        assertThat(found).isEmpty();
    }
}
