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
import java.util.List;
import java.util.regex.Matcher;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Hostile names in the files of races of stages and laps, workshops, logs and seasons are text in pages, PDF and calendars. */
class HostileFilesTest {

    /** Of it only the direction overrides are dropped. */
    private static final String SHOWN = "\"'<img src=x onerror=alert(1)></script>;,\\nBEGIN:VEVENT";
    private static final String HOSTILE = "\u202e" + SHOWN + "\u2066";
    private static final String EXAMPLES = "docs/examples";
    private static final List<String> NAMES = List.of("Three Becks, day one", "Three Becks, day three", "Three Becks", "Larch Common Lap Race", "A summer out of one cellar", "The cellar in spring",
            "Ida", "Joss", "Kim", "borrowed bike", "lane pads front", "root tyre 58 A", "spare tubes");

    @TempDir
    private Path folder;

    @BeforeEach
    void write() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of(EXAMPLES))) {
            for (Path each : files.filter(Files::isRegularFile).toList()) {
                Path to = folder.resolve(Path.of(EXAMPLES).relativize(each).toString());
                Files.createDirectories(to.getParent());
                Files.write(to, each.toString().endsWith(".yaml") ? spoilt(Files.readString(each)).getBytes(StandardCharsets.UTF_8) : Files.readAllBytes(each));
            }
        }
    }

    /** Each name wherever it stands as a value, with the hostile text behind it: a quoted string of JSON is one of YAML. */
    private static String spoilt(String text) throws IOException {
        String out = text;
        for (String name : NAMES) {
            String quoted = new ObjectMapper().writeValueAsString(name + HOSTILE);
            out = out.replaceAll("(?m)(?<=: |\\[|, )" + name + "(?=$|[}\\]]|, ?\\w[\\w ]*:)", Matcher.quoteReplacement(quoted));
        }
        return out;
    }

    private String file(String name) {
        return folder.resolve(name).toString();
    }

    private static String run(String... line) {
        return new ToolOutput().run(line);
    }

    private static Document harmless(String page) {
        Document out = Jsoup.parse(page);
        assertThat(page).doesNotContainPattern("[\u202a-\u202e\u2066-\u2069]");
        assertThat(out.select("script")).hasSize(1);
        assertThat(out.select("style")).hasSize(1);
        assertThat(out.select("img, iframe, object, embed, link, base, form")).isEmpty();
        for (Element element : out.getAllElements()) {
            element.attributes().forEach(attribute -> assertThat(attribute.getKey()).doesNotStartWith("on").isNotIn("style", "src"));
        }
        return out;
    }

    /** @param names each stands there whole, but for what is dropped; spaces may be others */
    private static void shows(String text, String... names) {
        String words = text.replaceAll("\\s+", " ");
        for (String name : names) {
            assertThat(words).contains((name + SHOWN).replaceAll("\\s+", " "));
        }
    }

    @Test
    void stages() throws IOException {
        String[] line = {"stages", file("events/three-becks.yaml"), "--rider", file("riders/joss-steel.yaml"), "--workshop", file("workshops/cellar.yaml")};
        shows(harmless(run(with(line, "--format", "html"))).text(), "Three Becks", "Three Becks, day one", "Joss", "borrowed bike");
        shows(harmless(run(with(line, "--stage", "1", "--format", "html"))).text(), "Three Becks, day one", "Joss", "borrowed bike");
        shows(printed(line), "Three Becks", "Joss");
    }

    @Test
    void pits() throws IOException {
        String[] line = {"checklist", "larch-common", "--event", file("events/larch-common.yaml"), "--rider", file("riders/kim-cross-country.yaml"), "--workshop", file("workshops/cellar.yaml")};
        shows(harmless(run(with(line, "--format", "html"))).text(), "Kim");
        shows(printed(line), "Kim");
        calendar(run(with(line, "--format", "ics")));
    }

    @Test
    void seasonByWeek() {
        String[] line = {"season", folder.toString(), "--by-week"};
        shows(harmless(run(with(line, "--format", "html"))).text(), "A summer out of one cellar", "Ida", "Joss", "borrowed bike", "lane pads front", "root tyre 58 A");
        calendar(run(with(line, "--format", "ics")));
    }

    @Test
    void seasonPages(@TempDir Path elsewhere) throws IOException {
        Path pages = elsewhere.resolve("pages");
        run("season", folder.toString(), "--format", "html", "-o", pages.toString());
        try (Stream<Path> files = Files.walk(pages)) {
            for (Path each : files.filter(path -> path.toString().endsWith(".html")).toList()) {
                assertThat(each.getFileName().toString()).matches("[a-z0-9-]+\\.html");
                harmless(Files.readString(each));
            }
        }
        shows(harmless(Files.readString(pages.resolve("index.html"))).text(), "A summer out of one cellar", "Ida", "Joss", "lane pads front");
    }

    private static String[] with(String[] line, String... more) {
        return Stream.concat(Stream.of(line), Stream.of(more)).toArray(String[]::new);
    }

    private String printed(String... line) throws IOException {
        Path file = folder.resolve("out.pdf");
        run(with(line, "--format", "pdf", "-o", file.toString()));
        ReadPdf read = new ReadPdf(Files.readAllBytes(file));
        assertThat(read.faults()).isEmpty();
        assertThat(read.text()).doesNotContainPattern("[\u202a-\u202e\u2066-\u2069]");
        return read.text();
    }

    /** As many entries as begin on a line of their own: none comes out of a name. */
    private static void calendar(String file) {
        assertThat(file).doesNotContainPattern("[\u202a-\u202e\u2066-\u2069]");
        assertThat(file.split("\r\n")).allSatisfy(line -> assertThat(line.getBytes(StandardCharsets.UTF_8).length).isLessThanOrEqualTo(75));
        List<String> lines = file.replace("\r\n ", "").lines().toList();
        assertThat(new ReadCalendar(file).valid().events()).hasSize((int) lines.stream().filter("BEGIN:VEVENT"::equals).count()).isNotEmpty();
        assertThat(file.replace("\r\n ", "")).contains("<img src=x onerror=alert(1)>");
    }
}
