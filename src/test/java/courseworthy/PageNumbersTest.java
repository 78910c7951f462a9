package courseworthy;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import courseworthy.cli.Format;
import courseworthy.task.Request;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.NavigableSet;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What the page of a brief says is what its JSON says: no number stands on the page that is not one of the JSON, rounded and in the unit shown. */
class PageNumbersTest {

    private static final Pattern CLOCK = Pattern.compile("(?<![\\d:])(\\d{1,3}):(\\d\\d)(?![\\d:])");
    private static final Pattern NUMBER = Pattern.compile("(?<![\\w.])\\d+(?:\\.\\d+)?");
    private static final double MINUTE = 60;
    private static final double DAY = 86400;
    /** Power is shown in steps of 5 W, as {@code topics} and {@code measures} say. */
    private static final double POWER_STEP = 5;
    private static final String WATTS = " W";
    /** What the JSON's own rounding to three decimals may take or add. */
    private static final double ROUNDED = 0.0005;

    /** What one of JSON's units is of a unit that is shown: the same, km of m, % of one, min and h of s, km/h of m/s, bar of kPa, g of kg. */
    private static final List<Double> UNITS = List.of(1.0, 1e-3, 100.0, 1 / 60.0, 1 / 3600.0, 3.6, 1e-2, 1e3);

    @TempDir
    private static Path folder;
    private static Path seasonPages;

    @BeforeAll
    static void write() {
        seasonPages = folder.resolve("pages");
        new ToolOutput().run("season", "docs/examples", "--format", "html", "-o", seasonPages.toString());
    }

    static List<Request> requests() {
        String examples = "docs/examples/";
        return List.of(
                Request.builder("heather-ridge").event(examples + "events/heather-ridge.yaml").rider(examples + "riders/kim-cross-country.yaml")
                        .workshop(examples + "workshops/cellar.yaml").build(),
                Request.builder("wide-fallow").event(examples + "events/wide-fallow.yaml").rider(examples + "riders/joss-steel.yaml").build(),
                Request.builder("market-roads").build());
    }

    private static JsonNode json(Request request) throws IOException {
        return new ObjectMapper().readTree(new ToolOutput().brief(request, Format.JSON));
    }

    private static Document page(Request request) {
        return Jsoup.parse(new ToolOutput().brief(request, Format.HTML));
    }

    @ParameterizedTest
    @MethodSource("requests")
    void everyNumberIsOneOfTheJson(Request request) throws IOException {
        Numbers known = new Numbers();
        known.add(json(request));
        assertThat(strange(known, page(request))).isEmpty();
    }

    private static List<String> strange(Numbers known, Document page) {
        List<String> strange = new ArrayList<>();
        for (String line : lines(page)) {
            Matcher clocks = CLOCK.matcher(line);
            while (clocks.find()) {
                if (!known.hasClock(clocks.group(), Integer.parseInt(clocks.group(1)) * 60 + Integer.parseInt(clocks.group(2)))) {
                    strange.add(clocks.group() + " in: " + line);
                }
            }
            Matcher numbers = NUMBER.matcher(CLOCK.matcher(line).replaceAll(" "));
            while (numbers.find()) {
                if (!known.has(numbers.group(), line.endsWith(WATTS) ? POWER_STEP : 1)) {
                    strange.add(numbers.group() + " in: " + line);
                }
            }
        }
        return strange;
    }

    /** Of every other command that has both. */
    @ParameterizedTest
    @ValueSource(strings = {"course heather-ridge", "gears heather-ridge RIDE", "checklist heather-ridge RIDE", "checklist larch-common --event docs/examples/events/larch-common.yaml", "why heather-ridge RIDE rear_tyre_casing",
        "compare heather-ridge RIDE --set front_tyre_casing=heavy --set bike=gravel", "position docs/examples/workshops/cellar.yaml",
        "scout docs/examples/maps/sorrel-wood.gpx --map docs/examples/maps/sorrel-wood.osm", "debrief docs/examples/debriefs/heather-ridge.yaml", "debrief docs/examples/debriefs/three-becks.yaml", "debrief docs/examples/debriefs",
        "season docs/examples", "roster heather-ridge --riders docs/examples/riders", "similar heather-ridge", "season docs/examples --by-week",
        "stages docs/examples/events/three-becks.yaml --rider docs/examples/riders/kim-cross-country.yaml",
        "stages docs/examples/events/three-becks.yaml --rider docs/examples/riders/joss-steel.yaml --workshop docs/examples/workshops/cellar.yaml",
        "stages docs/examples/events/three-becks.yaml --rider docs/examples/riders/kim-cross-country.yaml --stage 2", "brief heather-ridge RIDE --topic rear_tyre_casing",
        "stages docs/examples/events/three-becks.yaml --rider docs/examples/riders/ida-hardtail.yaml --workshop docs/examples/workshops/cellar.yaml",
        "sheet impact none docs/examples/sheets/hill-country.yaml"})
    void everyNumberOfACommandIsOneOfItsJson(String line) throws IOException {
        Numbers known = new Numbers();
        known.add(new ObjectMapper().readTree(run(line, "json")));
        assertThat(strange(known, Jsoup.parse(run(line, "html")))).isEmpty();
    }

    private static String run(String line, String format) {
        List<String> arguments = new ArrayList<>();
        for (String each : line.replace("RIDE", "--event docs/examples/events/heather-ridge.yaml --rider docs/examples/riders/kim-cross-country.yaml").split(" ")) {
            arguments.add(each.replace('_', ' '));
        }
        arguments.addAll(List.of("--format", format));
        return new ToolOutput().run(arguments.toArray(String[]::new));
    }

    /** Of the pages of a season: what one says of a start is in the JSON beside it, all else in that of the season. */
    @Test
    void everyNumberOfThePagesOfASeasonIsOneOfItsJson() throws IOException {
        Numbers planned = new Numbers();
        planned.add(new ObjectMapper().readTree(run("season docs/examples", "json")));
        Numbers weeks = new Numbers();
        weeks.add(new ObjectMapper().readTree(run("season docs/examples --by-week", "json")));
        int starts = 0;
        try (Stream<Path> pages = Files.walk(seasonPages)) {
            for (Path each : pages.filter(page -> page.toString().endsWith(".html")).sorted().toList()) {
                Numbers known = each.endsWith("weeks.html") ? weeks : planned;
                if (each.getParent().endsWith("briefs")) {
                    known = new Numbers();
                    known.add(beside(each));
                    starts++;
                }
                assertThat(strange(known, Jsoup.parse(Files.readString(each)))).as("%s", each).isEmpty();
            }
        }
        assertThat(starts).isEqualTo(9);
    }

    private static JsonNode beside(Path page) throws IOException {
        return new ObjectMapper().readTree(Files.readString(page.resolveSibling(page.getFileName().toString().replace(".html", ".json"))));
    }

    /**
     * The JSON beside a page has the build of the season's own. Where a brief on what the season's file names for the start has the same parts, all
     * else is that of the brief; a start has others where somebody else rides that bike or time is short.
     */
    @Test
    void theJsonBesideThePageOfAStartIsThatOfTheSeasonAndOfABrief() throws IOException {
        JsonNode season = new YAMLMapper().readTree(Path.of("docs/examples/season.yaml").toFile());
        int same = 0;
        for (JsonNode ride : new ObjectMapper().readTree(run("season docs/examples", "json")).path("rides")) {
            String name = ride.path("date").asText() + "-" + ride.path("rider").asText().toLowerCase(Locale.ROOT) + "-";
            try (Stream<Path> briefs = Files.list(seasonPages.resolve("briefs"))) {
                Path page = briefs.filter(each -> each.getFileName().toString().matches(name + ".*html")).findFirst().orElseThrow();
                JsonNode beside = beside(page);
                assertThat(beside.path("build")).as(name).isEqualTo(ride.path("build"));
                JsonNode brief = json(start(season, page.getFileName().toString()));
                if (brief.path("build").path("parts").equals(beside.path("build").path("parts"))) {
                    same++;
                    assertThat(withoutBuild(beside)).as(name).isEqualTo(withoutBuild(brief));
                }
            }
        }
        assertThat(same).isGreaterThanOrEqualTo(4);
    }

    private static JsonNode withoutBuild(JsonNode brief) {
        return ((ObjectNode) brief).deepCopy().without("build");
    }

    /** What a page of a start is about, by its name: {@code 2026-05-16-joss-quern-hills-all-day.html}. */
    private static Request start(JsonNode season, String page) {
        String examples = "docs/examples/";
        for (JsonNode event : season.path("events")) {
            for (JsonNode rider : season.path("riders")) {
                if (page.startsWith(event.path("date").asText() + "-" + rider.path("name").asText().toLowerCase(Locale.ROOT) + "-")) {
                    return Request.builder(event.path("course").asText()).event(examples + event.path("event").asText())
                            .rider(examples + rider.path("rider").asText()).workshop(examples + rider.path("workshop").asText())
                            .date(event.path("date").asText()).role(event.path("role").asText(null)).build();
                }
            }
        }
        throw new AssertionError(page);
    }

    /** What stands between two tags, and so on one line; a range with the unit of the value that it follows. */
    private static List<String> lines(Document page) {
        page.select("script, style, svg, code").remove();
        List<String> out = new ArrayList<>();
        page.body().traverse((node, depth) -> {
            if (node instanceof org.jsoup.nodes.TextNode text && !text.isBlank()) {
                String line = text.text().replace('\u202f', ' ').strip();
                boolean range = text.parent() instanceof Element parent && parent.hasClass("range") && out.get(out.size() - 1).endsWith(WATTS);
                out.add(range ? line + WATTS : line);
            }
        });
        return out;
    }

    @ParameterizedTest
    @MethodSource("requests")
    void everyDecisionIsThatOfTheJson(Request request) throws IOException {
        Document page = page(request);
        for (JsonNode decision : json(request).path("decisions")) {
            String topic = decision.path("topic").asText();
            Element shown = page.getElementById("topic-" + topic.replace(' ', '-'));
            if (decision.path("status").asText().equals("not applicable")) {
                assertThat(shown).as(topic).isNull();
            } else {
                assertThat(numbers(shown.select("summary").text())).as(topic).isEqualTo(numbers(decision.path("text").asText()));
                assertThat(shown.select("summary").text()).startsWith(topic + ": ").contains(decision.path("firmness").asText());
            }
        }
    }

    private static List<String> numbers(String text) {
        return NUMBER.matcher(text).results().map(found -> found.group()).toList();
    }

    /** The plan's places in order: kilometres with a decimal, and the clock of the likely passage. */
    @Test
    void theRowsOfThePlanAreTheSplitsOfTheJson() throws IOException {
        Request request = requests().get(0);
        JsonNode plan = json(request).path("plan");
        List<String> expected = new ArrayList<>();
        for (JsonNode split : plan.path("splits")) {
            long minutes = Math.round((8 * 3600 + split.path("after_s").path("value").asDouble()) / MINUTE);
            String row = String.format(Locale.ROOT, "%.1f km %d:%02d", split.path("at_m").asDouble() / 1000, minutes / 60, minutes % 60);
            if (!expected.contains(row)) {
                expected.add(row);
            }
        }
        List<String> shown = new ArrayList<>();
        for (Element row : page(request).select("#plan > .table tbody tr")) {
            shown.add(row.child(0).text().replace('\u202f', ' ') + " " + row.child(1).text().split(" ")[0]);
        }
        assertThat(shown).isNotEmpty().isSubsetOf(expected);
        assertThat(shown.get(0)).isEqualTo(expected.get(0));
        assertThat(shown.get(shown.size() - 1)).isEqualTo(expected.get(expected.size() - 1));
    }

    /** All numbers of a document, those in its texts too. */
    private static final class Numbers {
        private final NavigableSet<Double> values = new TreeSet<>();
        private final NavigableSet<Double> seconds = new TreeSet<>();
        private final List<String> texts = new ArrayList<>();

        void add(JsonNode node) {
            if (node.isNumber()) {
                values.add(Math.abs(node.asDouble()));
            } else if (node.isTextual()) {
                texts.add(node.asText());
                NUMBER.matcher(node.asText()).results().forEach(found -> values.add(Double.valueOf(found.group())));
            } else {
                values.add((double) node.size());
                node.forEach(this::add);
            }
        }

        /**
         * A number as it is shown: half a step of its last figure that is not zero to either side, for steps of 50 as well.
         *
         * @param unitStep in what steps whole numbers of its unit are shown
         */
        boolean has(String shown, double unitStep) {
            int point = shown.indexOf('.');
            double half = 0.5 * Math.pow(10, point < 0 ? 0 : point + 1 - shown.length());
            double value = Double.parseDouble(shown);
            for (double step = 10; point < 0 && value >= 100 && value % step == 0; step *= 10) {
                half = step / 2;
            }
            if (point < 0 && value >= 100 && value % 50 == 0) {
                half = Math.max(half, 25);
            }
            if (point < 0 && value % unitStep == 0) {
                half = Math.max(half, unitStep / 2);
            }
            for (double unit : UNITS) {
                double room = half * 1.0001 + ROUNDED * unit;
                Double least = values.ceiling((value - room) / unit);
                if (least != null && least <= (value + room) / unit) {
                    return true;
                }
            }
            return false;
        }

        /** A clock of the day or of the ride, to a minute: one of the texts, or so many seconds from the start or from midnight. */
        boolean hasClock(String shown, int minutes) {
            if (texts.stream().anyMatch(text -> text.contains(shown))) {
                return true;
            }
            if (seconds.isEmpty()) {
                clocks();
            }
            Double least = seconds.ceiling(minutes * MINUTE - MINUTE);
            return least != null && least <= minutes * MINUTE + MINUTE;
        }

        private void clocks() {
            List<Double> starts = new ArrayList<>(List.of(0.0));
            texts.stream().filter(text -> text.matches("\\d\\d:\\d\\d")).forEach(text -> starts.add(
                    Integer.parseInt(text.substring(0, 2)) * 3600.0 + Integer.parseInt(text.substring(3)) * MINUTE));
            for (double start : starts) {
                for (double value : values) {
                    seconds.add((start + value) % DAY);
                    seconds.add(((start - value) % DAY + DAY) % DAY);
                    seconds.add(value);
                }
            }
        }
    }
}
