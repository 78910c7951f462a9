package courseworthy.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import courseworthy.ToolOutput;
import courseworthy.render.calendar.ReadCalendar;
import courseworthy.render.pdf.ReadPdf;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
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
import org.junit.jupiter.params.provider.ValueSource;

/** The shipped examples with every name that people write in them, of riders, events, bikes and parts, turned into one that would do harm. */
class HostileExamplesTest {

    private static final String NAME = "</p><script>x()</script>\"'<img src=x>]]>\\n;,\u202e\u2066";
    /** As it is shown: direction overrides are dropped (Unicode 15, UAX 9). */
    private static final String SHOWN = NAME.replaceAll("[\u202e\u2066]", "");
    private static final Pattern NAMED = Pattern.compile("(?m)[ {]name: ([^\",}/\n]+?)(?=[,}]|$)");

    @TempDir
    private static Path folder;

    @BeforeAll
    static void write() throws IOException {
        Path from = Path.of("docs/examples");
        List<Path> files;
        try (Stream<Path> all = Files.walk(from)) {
            files = all.filter(Files::isRegularFile).toList();
        }
        Set<String> names = new TreeSet<>();
        for (Path each : files) {
            if (each.toString().endsWith(".yaml")) {
                NAMED.matcher(Files.readString(each)).results().forEach(found -> names.add(found.group(1)));
            }
        }
        assertThat(names).hasSizeGreaterThan(100);
        for (Path each : files) {
            Path to = folder.resolve("examples").resolve(from.relativize(each).toString());
            Files.createDirectories(to.getParent());
            Files.writeString(to, hostile(each, names));
        }
    }

    private static String hostile(Path file, Set<String> names) throws IOException {
        String text = Files.readString(file);
        if (file.toString().endsWith(".gpx")) {
            return text.replaceAll("<name>[^<]*</name>", Matcher.quoteReplacement("<name>" + NAME.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;") + "</name>"));
        }
        if (file.toString().endsWith(".json")) {
            return text.replaceAll("(\"(?:event|rider)\" : )\"[^\"]*\"", "$1" + Matcher.quoteReplacement(new ObjectMapper().writeValueAsString(NAME)));
        }
        if (!file.toString().endsWith(".yaml")) {
            return text;
        }
        String titled = text.replaceAll("(?m)^(name|season|workshop|debrief): .*$", "$1: " + Matcher.quoteReplacement(quoted(NAME)));
        return Pattern.compile("(?m)(?<=[:,\\[] |\\[)([^\\[\\]{}\",:#\n]+)(?=[,}\\]]|$)").matcher(titled)
                .replaceAll(found -> Matcher.quoteReplacement(names.contains(found.group(1)) ? quoted(NAME + found.group(1)) : found.group(1)));
    }

    /** A quoted string of JSON is one of YAML. */
    private static String quoted(String text) {
        try {
            return new ObjectMapper().writeValueAsString(text);
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    private static String[] line(String words, String... more) {
        List<String> out = new ArrayList<>();
        for (String word : words.split(" ")) {
            out.add(word.startsWith("@") ? folder.resolve("examples").resolve(word.substring(1)).toString() : word);
        }
        out.addAll(List.of(more));
        return out.toArray(String[]::new);
    }

    private static void harmless(String html, String what) {
        Document page = Jsoup.parse(html);
        assertThat(page.select("script")).as(what).hasSize(1);
        assertThat(page.select("style")).as(what).hasSize(1);
        assertThat(page.select("img, iframe, object, embed, link, base, form")).as(what).isEmpty();
        for (Element element : page.getAllElements()) {
            element.attributes().forEach(attribute -> assertThat(attribute.getKey()).as(what).doesNotStartWith("on").isNotIn("style", "src"));
        }
        assertThat(html).as(what).doesNotContainPattern("[\u202a-\u202e\u2066-\u2069]");
    }

    @ParameterizedTest
    @ValueSource(strings = {"stages @events/three-becks.yaml --rider @riders/joss-steel.yaml --workshop @workshops/cellar.yaml",
        "stages @events/three-becks.yaml --rider @riders/joss-steel.yaml --workshop @workshops/cellar.yaml --stage 2",
        "debrief @debriefs/heather-ridge.yaml", "debrief @debriefs", "roster heather-ridge --riders @riders --event @events/heather-ridge.yaml",
        "position @workshops/cellar.yaml", "scout @maps/sorrel-wood.gpx", "course @maps/sorrel-wood.gpx", "season @", "season @ --by-week",
        "checklist larch-common --event @events/larch-common.yaml --workshop @workshops/cellar.yaml", "compare heather-ridge --event @events/heather-ridge.yaml --set bike=gravel",
        "gears heather-ridge --rider @riders/ida-hardtail.yaml --event @events/heather-ridge.yaml"})
    void namesAreTextOnThePage(String command) {
        String html = new ToolOutput().run(line(command, "--format", "html"));
        harmless(html, command);
        assertThat(Jsoup.parse(html).text()).contains(SHOWN);
    }

    @Test
    void namesAreTextOnThePagesOfASeason() throws IOException {
        Path pages = folder.resolve("pages");
        new ToolOutput().run(line("season @ --format html", "-o", pages.toString()));
        List<Path> all;
        try (Stream<Path> files = Files.walk(pages)) {
            all = files.filter(each -> each.toString().endsWith(".html")).toList();
        }
        assertThat(all).hasSize(20);
        for (Path each : all) {
            assertThat(pages.relativize(each).toString()).matches("([a-z]+/)?[a-z0-9-]+\\.html");
            harmless(Files.readString(each), each.toString());
            assertThat(Jsoup.parse(Files.readString(each)).text()).contains(SHOWN);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"stages @events/three-becks.yaml --rider @riders/joss-steel.yaml --workshop @workshops/cellar.yaml",
        "stages @events/three-becks.yaml --rider @riders/joss-steel.yaml --stage 2", "brief heather-ridge --event @events/heather-ridge.yaml --rider @riders/ida-hardtail.yaml",
        "checklist heather-ridge --event @events/heather-ridge.yaml --rider @riders/joss-steel.yaml --workshop @workshops/cellar.yaml"})
    void namesAreTextOnPaper(String command) throws IOException {
        Path file = folder.resolve("out.pdf");
        new ToolOutput().run(line(command, "--format", "pdf", "-o", file.toString()));
        ReadPdf read = new ReadPdf(Files.readAllBytes(file));
        assertThat(read.faults()).isEmpty();
        assertThat(read.text()).doesNotContainPattern("[\u202a-\u202e\u2066-\u2069]");
        assertThat(read.text().replaceAll("\\s", "")).contains(SHOWN.replaceAll("\\s", ""));
    }

    @ParameterizedTest
    @ValueSource(strings = {"brief heather-ridge --event @events/heather-ridge.yaml --rider @riders/joss-steel.yaml --workshop @workshops/cellar.yaml",
        "checklist heather-ridge --event @events/heather-ridge.yaml --rider @riders/ida-hardtail.yaml", "season @ --by-week"})
    void namesAreTextInACalendar(String command) {
        String file = new ToolOutput().run(line(command, "--format", "ics"));
        assertThat(new ReadCalendar(file).valid().events()).anyMatch(each -> (each.getSummary().getValue() + each.getDescription()).contains(SHOWN));
        assertThat(file).doesNotContainPattern("[\u202a-\u202e\u2066-\u2069]");
        assertThat(file.split("\r\n")).allSatisfy(each -> assertThat(each.getBytes(StandardCharsets.UTF_8)).hasSizeLessThanOrEqualTo(75));
    }
}
