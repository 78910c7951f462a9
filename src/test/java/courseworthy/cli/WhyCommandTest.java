package courseworthy.cli;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.report.json.OutputSchema;
import courseworthy.topic.Topics;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The command that explains one decision. */
class WhyCommandTest {

    private static final String COURSE = "course-profiles/heather-ridge.yaml";

    /** Every course with its event and a rider; the topics go round, so that each is asked about somewhere. */
    static List<List<String>> questions() throws Exception {
        List<List<String>> out = new ArrayList<>();
        try (Stream<Path> files = Files.list(Path.of("course-profiles"))) {
            List<String> courses = files.map(file -> file.getFileName().toString()).filter(name -> name.endsWith(".yaml")).sorted().toList();
            for (int i = 0; i < Topics.names().size(); i++) {
                String course = courses.get(i % courses.size());
                out.add(List.of("why", "course-profiles/" + course, Topics.names().get(i), "--event", "docs/examples/events/" + course,
                        "--rider", "docs/examples/riders/" + (i % 2 == 0 ? "kim-cross-country.yaml" : "joss-steel.yaml")));
            }
        }
        return out;
    }

    @ParameterizedTest
    @MethodSource("questions")
    void everyTopicIsExplainedInTextAndJson(List<String> question) {
        CommandRun text = CommandRun.of(question.toArray(new String[0]));
        assertThat(text.err()).isEmpty();
        assertThat(text.code()).isZero();
        assertThat(text.out()).startsWith(question.get(2) + ": ").contains("\nFROM MEASURES TO DECISION\n", "\nRULES THAT DID NOT APPLY\n",
                "\nWHAT WOULD CHANGE IT\n").doesNotContain("null", "\t", "{");
        assertThat(text.out().lines()).allMatch(line -> line.codePointCount(0, line.length()) <= 80);
        List<String> asked = new ArrayList<>(question);
        asked.addAll(List.of("--format", "json"));
        assertThat(OutputSchema.faultsOfWhy(CommandRun.of(asked.toArray(new String[0])).out())).isEmpty();
    }

    @Test
    void everyOptionOfABriefIsTaken() throws Exception {
        Path sheet = Files.createTempFile("mine", ".yaml");
        Files.writeString(sheet, "sheet: Mine\nauthor: me\nadvice:\n  - id: x\n    say: {plugs: prefer 7}\n    because: Seven it is.\n");
        CommandRun ran = CommandRun.of("why", COURSE, "plugs", "--sheet", sheet.toString(), "--role", "training", "--date", "2026-05-01", "--ground",
                "surface=gravel");
        Files.delete(sheet);
        assertThat(ran.err()).isEmpty();
        assertThat(ran.out()).startsWith("plugs: 7 ").contains("set up for training, 1 May 2026", "prefer 7: Mine/x, should");
    }

    @Test
    void oneTopicOfABriefSaysWhatWouldChangeIt() {
        CommandRun text = CommandRun.of("brief", COURSE, "--topic", "front tyre width");
        CommandRun json = CommandRun.of("brief", COURSE, "--topic", "front tyre width", "--format", "json");
        String first = OutputSchema.tree(json.out()).get("decisions").get(0).get("flips").get(0).get("text").asText();
        assertThat(OutputSchema.faults(json.out())).isEmpty();
        assertThat(text.out().replaceAll("\\s+", " ")).contains("WHAT WOULD CHANGE IT - " + first + ": ");
        assertThat(CommandRun.of("brief", COURSE, "--topic", "front tyre width", "--format", "markdown").out())
                .contains("## What would change it\n\n- ", "\n*One figure changed at a time; everything else, the stretches included, kept as it is.*\n");
        assertThat(OutputSchema.tree(CommandRun.of("brief", COURSE, "--format", "json").out()).get("decisions").get(0).has("flips")).isFalse();
    }

    /** Topic and course in the other order: no topic has a course's name, so the order is said. */
    @Test
    void aCourseWhereTheTopicStandsIsToldTheOrder() {
        CommandRun run = CommandRun.of("why", "front tyre width", "heather-ridge");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).isEqualTo("""
                TOPIC: found "heather-ridge", expected a topic
                    'courseworthy topics' lists them. The course stands before it.
                """);
    }

    @Test
    void whatIsMisspeltIsRefusedWithTheNearestSpelling() {
        assertThat(CommandRun.of("why", COURSE, "front tyre with")).isEqualTo(new CommandRun(2, "", """
                TOPIC: found "front tyre with", expected a topic
                    Did you mean "front tyre width"?
                """));
        assertThat(CommandRun.of("why", COURSE, "seatpost", "--not", "droper")).isEqualTo(new CommandRun(2, "", """
                --not: found "droper", expected one of: rigid, dropper
                    Did you mean "dropper"?
                """));
        assertThat(CommandRun.of("why", COURSE, "seatpost", "--rule", "shipped/dropper-on-mountain-bike")).isEqualTo(new CommandRun(2, "", """
                --rule: found "shipped/dropper-on-mountain-bike", expected the id of a rule on seatpost
                    Did you mean "shipped/dropper-on-mountain-bikes"?
                """));
        assertThat(CommandRun.of("why", COURSE).err()).contains("TOPIC");
    }
}
