package courseworthy.build;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import courseworthy.ToolOutput;
import courseworthy.cli.Format;
import courseworthy.report.json.OutputSchema;
import courseworthy.task.Request;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** With a workshop all that comes after the build speaks of the build, on every shipped course, in training and in the race. */
class BuildCallTest {

    private static final Path EXAMPLES = Path.of("docs/examples");
    private static final Pattern SAG = Pattern.compile("(fork|rear) (\\d+) mm \\((\\d+) % of (\\d+) mm");

    @TempDir
    private Path folder;

    private static List<Path> files(String kind) {
        try (Stream<Path> files = Files.list(EXAMPLES.resolve(kind))) {
            return files.filter(each -> each.toString().endsWith(".yaml")).sorted().toList();
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    static List<Request> requests() {
        List<Request> out = new ArrayList<>();
        for (Path workshop : files("workshops")) {
            for (Path event : files("events")) {
                String course = event.getFileName().toString().replace(".yaml", "");
                for (String role : List.of("race", "training")) {
                    out.add(Request.builder(course).event(event.toString()).role(role).workshop(workshop.toString()).build());
                }
            }
        }
        return out;
    }

    private static ToolOutput tool() {
        return new ToolOutput();
    }

    @ParameterizedTest
    @MethodSource("requests")
    void whatIsSetAndDoneIsOfTheBuild(Request request) {
        JsonNode brief = OutputSchema.tree(tool().brief(request, Format.JSON));
        JsonNode build = brief.get("build");
        if (build.get("bike").isNull()) {
            return;
        }
        String text = tool().brief(request, Format.TEXT).replaceAll("\\s+", " ");
        String list = brief.get("checklist").toString();
        Map<String, String> got = new LinkedHashMap<>();
        build.get("not_met").forEach(each -> got.put(each.get("topic").asText(), each.get("got").asText()));
        Matcher sag = SAG.matcher(text.substring(text.indexOf("WHAT TO SET") + 1));
        while (sag.find()) {
            String topic = sag.group(1).equals("fork") ? "fork travel" : "rear travel";
            assertThat(Integer.parseInt(sag.group(2))).isLessThan(Integer.parseInt(sag.group(4)));
            if (got.containsKey(topic)) {
                assertThat(got.get(topic)).isEqualTo(sag.group(4) + " mm");
            }
        }
        if (got.containsKey("lockout")) {
            assertThat(list.contains("Lock and open the suspension from the bar")).isEqualTo(got.get("lockout").equals("remote"));
        }
        if (got.containsKey("pad compound")) {
            assertThat(list.contains("Fit sintered pads")).isEqualTo(got.get("pad compound").equals("sintered") && request.role().equals("race"));
        }
        assertThat(brief.get("cautions").toString()).doesNotContain("markings of this bike are not known");
    }

    /** A fork of 110 mm that is locked by hand, on narrower tyres than the call wants: all figures are its own. */
    @Test
    void theForkThatIsMountedIsSet() throws IOException {
        Request request = with("fork", "travel: 120 mm", "travel: 100 mm", "travel: 110 mm", "travel: 100 mm", "lockout: remote", "lockout: at the fork/shock");
        String text = tool().brief(request, Format.TEXT).replaceAll("\\s+", " ");
        assertThat(text).containsPattern("Sag fork (15|20|25) mm \\(\\d+ % of 100 mm\\)").contains("Lockout at the fork/shock").contains("These are for the parts of the build.")
                .doesNotContain("Lock and open the suspension from the bar");
    }

    @Test
    void theTyresThatAreMountedArePumped() throws IOException {
        Request request = with("tyre", "width: 5", "width: 4", "measured width: 6", "measured width: 4");
        JsonNode brief = OutputSchema.tree(tool().brief(request, Format.JSON));
        String text = tool().brief(request, Format.TEXT).replaceAll("\\s+", " ");
        String set = text.substring(text.indexOf("WHAT TO SET"), text.indexOf("PLAN FOR THE DAY"));
        for (JsonNode line : brief.get("build").get("pressures")) {
            Matcher start = Pattern.compile("start from ([0-9.]+) bar").matcher(line.asText());
            assertThat(start.find()).isTrue();
            assertThat(set).contains(start.group(1) + " bar");
            assertThat(brief.get("checklist").toString()).contains(start.group(1) + " bar");
        }
    }

    @Test
    void gearsAndCompareShowTheBuild() throws IOException {
        Request request = with("cassette", "39, 45, 51]", "38, 43, 48]", "39, 45]", "37, 42]");
        JsonNode build = OutputSchema.tree(tool().brief(request, Format.JSON)).get("build");
        String gears = tool().gears(request, Format.TEXT);
        assertThat(gears).contains("of the build: " + build.get("bike").asText());
        String compared = tool().compare(request, List.of("front tyre width=60 mm"), Format.TEXT);
        assertThat(compared).contains("the build of your workshop, " + build.get("bike").asText());
        assertThat(tool().compare(RACE, List.of("front tyre width=60 mm"), Format.TEXT)).doesNotContain("your workshop");
    }

    /** Without sintered pads in the workshop wet ground changes no pads: it is said that they are called for. */
    @Test
    void whatNoPartOfTheWorkshopCanChangeIsNoLineOfPlanB() throws IOException {
        JsonNode owned = turned(with("brake pads", "no such words", ""));
        assertThat(topics(owned.get("lines"))).contains("pad compound");
        assertThat(topics(owned.get("lacking"))).doesNotContain("pad compound");
        JsonNode lacking = turned(with("brake pads", "compound: sintered", "compound: organic"));
        assertThat(topics(lacking.get("lines"))).doesNotContain("pad compound");
        assertThat(topics(lacking.get("lacking"))).contains("pad compound");
    }

    /** Each line changes from what is mounted, not from what the call would have. */
    @Test
    void planBStartsFromTheBuild() throws IOException {
        Request request = with("tyre", "width: 5", "width: 4", "measured width: 6", "measured width: 4");
        JsonNode turned = turned(request);
        JsonNode brief = OutputSchema.tree(tool().brief(request, Format.JSON));
        Map<String, String> got = new LinkedHashMap<>();
        brief.get("build").get("not_met").forEach(each -> got.put(each.get("topic").asText(), each.get("got").asText()));
        assertThat(got).containsKey("front tyre width");
        for (JsonNode line : turned.get("lines")) {
            if (got.containsKey(line.get("topic").asText())) {
                assertThat(line.get("instead_of").asText()).startsWith(got.get(line.get("topic").asText()));
            }
        }
        String text = tool().brief(request, Format.TEXT).replaceAll("\\s+", " ");
        assertThat(text.substring(text.indexOf("IF THE FORECAST TURNS"), text.indexOf("TIME GAINED OR LOST"))).contains("not met by your parts: ");
        turned.get("lacking").forEach(each -> assertThat(topics(turned.get("lines"))).doesNotContain(each.get("topic").asText()));
    }

    private static JsonNode turned(Request request) {
        return OutputSchema.tree(tool().brief(request, Format.JSON)).get("plan_b").get(0);
    }

    private static List<String> topics(JsonNode list) {
        List<String> out = new ArrayList<>();
        list.forEach(each -> out.add(each.get("topic").asText()));
        return out;
    }

    /** The call is made for the front's compound: that the rear's is another is said, with both. */
    @Test
    void padsOfTwoCompoundsAreBothNamed() throws IOException {
        Request request = with("brake pads", "rear, mass: 22 g, compound: organic", "rear, mass: 22 g, compound: sintered",
                "rear, mass: 21 g, compound: organic", "rear, mass: 21 g, compound: sintered");
        String text = tool().brief(request, Format.TEXT).replaceAll("\\s+", " ");
        assertThat(text).contains("Brake pads differ: organic at the front, sintered at the rear.");
        assertThat(tool().brief(with("brake pads"), Format.TEXT)).doesNotContain("Brake pads differ");
    }

    private static final String CLOSE = "11, 12, 13, 14, 15, 16, 17, 19, 21, 23, 25, 28]";

    /** 32 with 28 is the easiest gear in the workshop, far harder than a kilometre of Heather Ridge needs. */
    @Test
    void gearsThatAreTooHardAreThoseOfTheBuild() throws IOException {
        Request request = with("cassette", "10, 12, 14, 16, 18, 21, 24, 28, 33, 39, 45, 51]", CLOSE, "10, 11, 13, 15, 17, 20, 23, 26, 30, 34, 39, 45]",
                CLOSE, "11, 13, 15, 17, 19, 22, 25, 28, 32, 36, 42, 50]", CLOSE);
        String text = tool().brief(request, Format.TEXT).replaceAll("\\s+", " ");
        assertThat(text).contains("the easiest of the build is", "the easiest gear of the build is", "but this build is not.");
        assertThat(tool().gears(request, Format.TEXT).replaceAll("\\s+", " ")).contains("the easiest gear of the build is");
        assertThat(tool().brief(RACE, Format.TEXT)).doesNotContain("of the build is");
    }

    private static final Request RACE = Request.builder("heather-ridge").event("docs/examples/events/heather-ridge.yaml")
            .rider("docs/examples/riders/ida-hardtail.yaml").build();

    /** The shipped workshop with the parts of one kind written otherwise: pairs of what stands there and what is written for it. */
    private Request with(String kind, String... pairs) throws IOException {
        StringBuilder out = new StringBuilder();
        for (String line : Files.readAllLines(files("workshops").get(0))) {
            String changed = line;
            for (int i = 0; line.contains("kind: " + kind + ",") && i < pairs.length; i += 2) {
                changed = changed.replace(pairs[i], pairs[i + 1]);
            }
            out.append(changed).append('\n');
        }
        Path file = Files.writeString(folder.resolve("workshop.yaml"), out);
        return Request.builder(RACE.course()).event(RACE.event()).rider(RACE.rider()).workshop(file.toString()).build();
    }
}
