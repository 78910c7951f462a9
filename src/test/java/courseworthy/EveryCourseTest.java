package courseworthy;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import courseworthy.cli.Format;
import courseworthy.report.json.OutputSchema;
import courseworthy.task.Request;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds for the brief of every shipped course, for training and for its race, with and without a rider. */
class EveryCourseTest {

    private static final Path HOME = Path.of("");
    private static final Pattern ROW = Pattern.compile("  ([a-z]+(?: [a-z]+)*) {2,}(.*?) {2,}((?:firm|fair|thin)(?: \u00b1)?)");

    private static final List<String> REMARKS = new ArrayList<>();
    private static final ToolOutput TOOL = new ToolOutput(HOME, REMARKS::add);
    /** Every brief is looked at in several ways and made once. */
    private static final Map<Request, Map<Format, String>> BRIEFS = new HashMap<>();

    private static String brief(Request request, Format format) {
        return BRIEFS.computeIfAbsent(request, each -> new EnumMap<>(Format.class)).computeIfAbsent(format, each -> TOOL.brief(request, each));
    }

    static Stream<Request> requests() throws IOException {
        List<String> names = new ArrayList<>();
        try (Stream<Path> files = Files.list(HOME.resolve("course-profiles"))) {
            files.map(file -> file.getFileName().toString()).filter(name -> name.endsWith(".yaml")).sorted().forEach(names::add);
        }
        assertThat(names).hasSizeGreaterThanOrEqualTo(12);
        return names.stream().flatMap(EveryCourseTest::requests);
    }

    private static Stream<Request> requests(String file) {
        String name = file.substring(0, file.length() - ".yaml".length());
        String event = "docs/examples/events/" + file;
        return Stream.of(Request.builder(name).role("training").build(),
                Request.builder(name).role("race").build(),
                Request.builder("course-profiles/" + file).event(event).rider("docs/examples/riders/sam-novice.yaml").role("training")
                        .date("2026-06-20").build(),
                Request.builder("course-profiles/" + file).event(event).rider("docs/examples/riders/kim-cross-country.yaml").role("race").build());
    }

    @ParameterizedTest
    @MethodSource("requests")
    void textJsonAndMarkdownAgree(Request request) {
        String text = brief(request, Format.TEXT);
        JsonNode json = OutputSchema.tree(brief(request, Format.JSON));
        String markdown = brief(request, Format.MARKDOWN);
        assertThat(TextSlips.in(markdown)).isEmpty();
        Map<String, List<String>> rows = rows(text);
        for (JsonNode decision : json.get("decisions")) {
            String topic = decision.get("topic").asText();
            List<String> row = List.of(shown(topic, decision.get("text").asText()), decision.get("firmness").asText() + (decision.get("close").asBoolean() ? " \u00b1" : ""));
            if (decision.get("status").asText().equals("settled")) {
                assertThat(rows.remove(topic)).as(topic).isEqualTo(row);
                assertThat(markdown).contains("\n- **" + topic + ":** **" + row.get(0) + "** (" + row.get(1) + ")\n");
            }
        }
        assertThat(rows).isEmpty();
        closeIsSaidEverywhere(json, text, markdown);
        for (JsonNode caution : json.get("cautions")) {
            assertThat(plain(text)).contains(plain(caution.asText()));
            assertThat(markdown).contains(caution.asText());
        }
        for (JsonNode section : json.get("checklist")) {
            for (JsonNode item : section.get("items")) {
                String mark = item.get("critical").asBoolean() ? "! " : "";
                assertThat(plain(text)).contains(plain("[ ] " + mark + item.get("do").asText() + " Done when: " + item.get("find").asText()));
                assertThat(markdown).contains((mark.isEmpty() ? "" : "(!) ") + item.get("do").asText().replace("[", "\\["));
            }
        }
    }

    /** The JSON has a value by itself; people read a limit as one, and the bar's height against the saddle. */
    private static String shown(String topic, String value) {
        return value.equals("not applicable") ? value : switch (topic) {
            case "largest step", "sealant age" -> "at most " + value;
            case "pad thickness", "battery reserve" -> "at least " + value;
            case "bar height" -> value.equals("0 mm") ? "level with the saddle"
                    : value.startsWith("-") ? value.substring(1) + " below the saddle" : value + " above the saddle";
            default -> value;
        };
    }

    @ParameterizedTest
    @MethodSource("requests")
    void itKeepsToItsSchemaAndItsPage(Request request) {
        assertThat(OutputSchema.faults(brief(request, Format.JSON))).isEmpty();
        String text = brief(request, Format.TEXT);
        assertThat(text.lines()).allSatisfy(line -> assertThat(line.length()).as(line).isLessThanOrEqualTo(80));
        assertThat(text).doesNotContain("\t", "\u001b", "NaN", "null", "{", "}");
        assertThat(REMARKS).isEmpty();
    }

    /** What must be on every list, whatever the course (SOURCES: checklist design; common practice, no source). */
    @ParameterizedTest
    @MethodSource("requests")
    void whatSafetyHangsOnIsOnTheList(Request request) {
        JsonNode json = OutputSchema.tree(TOOL.checklist(request, Format.JSON));
        boolean race = json.get("role").asText().equals("race");
        List<String> critical = new ArrayList<>();
        for (JsonNode section : json.get("checklist")) {
            assertThat(section.get("items").size()).isBetween(1, 9);
            for (JsonNode item : section.get("items")) {
                if (item.get("critical").asBoolean()) {
                    critical.add(section.get("when").asText() + ": " + item.get("do").asText() + " / " + item.get("find").asText());
                }
            }
        }
        for (String what : List.of("brake", "axle", "bar", "stem", "wheel", "seated|evenly all the way round", "never above .*marking|within what is marked",
                "helmet", "bottle|water", "medical information", "(?i)tell someone|someone told", "torque marked on the part")) {
            assertThat(critical).as(what).anyMatch(item -> Pattern.compile(what).matcher(item).find());
        }
        if (race) {
            String after = "(?i)race morning.*(transport|out of the car|travel).*";
            assertThat(critical).anyMatch(item -> item.matches(after) && item.contains("brake"));
            assertThat(critical).anyMatch(item -> item.matches(after) && item.contains("axle"));
            assertThat(critical).anyMatch(item -> item.matches(after) && item.contains("bolts"));
        }
    }

    /** A light that is to be carried is charged and fitted. */
    @ParameterizedTest
    @MethodSource("requests")
    void aLightThatIsNeededIsOnTheList(Request request) {
        JsonNode brief = OutputSchema.tree(brief(request, Format.JSON));
        for (JsonNode decision : brief.get("decisions")) {
            if (decision.get("topic").asText().equals("lights") && !decision.get("text").asText().equals("none")) {
                assertThat(brief.get("checklist").toString().toLowerCase(java.util.Locale.ROOT)).contains("light");
            }
        }
    }

    /** Torque is "as marked on the part", never a number of ours. */
    @ParameterizedTest
    @MethodSource("requests")
    void noTorqueIsGivenAsANumber(Request request) {
        assertThat(brief(request, Format.TEXT)).doesNotContainPattern("[0-9] ?Nm|newton");
    }

    @ParameterizedTest
    @MethodSource("requests")
    void aRaceBriefSaysWhatNotToChange(Request request) {
        JsonNode json = OutputSchema.tree(brief(request, Format.JSON));
        if (json.get("role").asText().equals("race")) {
            assertThat(json.get("leave_alone")).isNotEmpty();
        } else {
            assertThat(json.get("leave_alone")).isEmpty();
        }
    }

    private static void closeIsSaidEverywhere(JsonNode json, String text, String markdown) {
        for (JsonNode decision : json.get("decisions")) {
            boolean close = decision.get("close").asBoolean();
            assertThat(decision.has("close_to")).isEqualTo(close);
            if (close) {
                String topic = decision.get("topic").asText();
                String other = topic + " " + shown(topic, decision.get("close_to").get("otherwise").asText());
                assertThat(plain(text.substring(text.indexOf("\nCLOSE CALLS\n")))).contains(other).contains(decision.get("close_to").get("measure").asText());
                assertThat(markdown.substring(markdown.indexOf("\n## Close calls\n"))).contains(other);
            }
        }
    }

    private static Map<String, List<String>> rows(String text) {
        Map<String, List<String>> out = new LinkedHashMap<>();
        String call = text.substring(text.indexOf("RECOMMENDED SET-UP"), text.indexOf("firm: a limit decides"));
        for (String line : call.split("\n")) {
            Matcher row = ROW.matcher(line);
            if (row.matches()) {
                assertThat(out.put(row.group(1), List.of(row.group(2), row.group(3)))).isNull();
            }
        }
        return out;
    }

    private static String plain(String text) {
        return text.replaceAll("\\s+", " ");
    }
}
