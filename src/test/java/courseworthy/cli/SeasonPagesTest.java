package courseworthy.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import courseworthy.ToolOutput;
import courseworthy.report.json.OutputSchema;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The pages of the example season, held against its JSON, and of one whose names would do harm. */
class SeasonPagesTest {

    private static final String PAGE = ".html";
    private static final String JSON = ".json";

    @TempDir
    private static Path folder;
    private static Path pages;
    private static JsonNode season;

    @BeforeAll
    static void write() throws IOException {
        pages = folder.resolve("pages");
        season = new ObjectMapper().readTree(new ToolOutput().season("docs/examples", Format.JSON));
        assertThat(season("docs/examples", pages)).isEqualTo("Wrote 20 pages; begin with " + pages + "/index.html\n");
    }

    private static String season(String from, Path to) {
        return new ToolOutput().run("season", from, "--format", "html", "-o", to.toString());
    }

    private static Document page(String path) throws IOException {
        return Jsoup.parse(Files.readString(pages.resolve(path)));
    }

    private static Map<String, String> all(Path folder) throws IOException {
        Map<String, String> out = new TreeMap<>();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path each : (Iterable<Path>) files.filter(Files::isRegularFile)::iterator) {
                out.put(folder.relativize(each).toString(), Files.readString(each));
            }
        }
        return out;
    }

    private static List<String> withEnding(String ending, Set<String> paths) {
        return paths.stream().filter(path -> path.endsWith(ending)).toList();
    }

    /** Every page can be reached from the first, and no link leads out of the folder or nowhere. */
    private static Set<String> reached(Path folder) throws IOException {
        Set<String> seen = new HashSet<>(Set.of("index.html"));
        List<String> open = new ArrayList<>(seen);
        while (!open.isEmpty()) {
            Path at = folder.resolve(open.remove(0));
            for (Element link : Jsoup.parse(Files.readString(at)).select("a[href]")) {
                String href = link.attr("href");
                if (!href.startsWith("#") && !href.startsWith("https://")) {
                    Path to = at.getParent().resolve(href).normalize();
                    assertThat(to).as(href + " in " + at).startsWith(folder).isRegularFile();
                    String path = folder.relativize(to).toString();
                    if (seen.add(path) && path.endsWith(PAGE)) {
                        open.add(path);
                    }
                }
            }
        }
        return seen;
    }

    @Test
    void everyPageIsReachedFromTheFirstByRelativeLinks() throws IOException {
        Set<String> reached = reached(pages);
        assertThat(withEnding(PAGE, reached)).hasSize(20);
        assertThat(withEnding(JSON, reached)).hasSize(9);
        assertThat(reached).hasSize(29);
        assertThat(all(pages)).hasSize(30).containsKey("season-pages.sha256").containsKeys(reached.toArray(String[]::new));
    }

    /** What stands beside the page of a start is a brief like any other as JSON, on one line, and shorter than the page. */
    @Test
    void eachBriefHasItsJsonBesideIt() throws IOException {
        int briefs = 0;
        for (Map.Entry<String, String> each : all(pages).entrySet()) {
            if (each.getKey().endsWith(JSON)) {
                String page = each.getKey().replace(JSON, PAGE);
                assertThat(page(page).select("#season a").eachAttr("href")).contains(Path.of(each.getKey()).getFileName().toString());
                assertThat(OutputSchema.faults(each.getValue())).as(page).isEmpty();
                assertThat(each.getValue()).endsWith("}\n").hasLineCount(1).hasSizeLessThan((int) Files.size(pages.resolve(page)));
                briefs++;
            }
        }
        assertThat(briefs).isEqualTo(9);
    }

    @Test
    void aDebriefTakesTheJsonBesideAPage() throws IOException {
        Path evening = Files.createDirectory(folder.resolve("evening"));
        Files.copy(pages.resolve("briefs/2026-06-22-ida-fernbrake-forest-lap-race.json"), evening.resolve("brief.json"));
        Path debrief = Files.writeString(evening.resolve("day.yaml"), "debrief: The forest\nbrief: brief.json\nspun out: never\n");
        CommandRun ran = CommandRun.of("debrief", debrief.toString());
        assertThat(ran.err()).isEmpty();
        assertThat(ran.out()).contains("for Ida, 2026-06-22, compared with");
    }

    @Test
    void theFirstPageHasAllStartsWithTheirBikes() throws IOException {
        Document first = page("index.html");
        List<String> briefs = first.select("#starts td a, #starts th a").stream().filter(each -> each.attr("href").startsWith("briefs/")).map(Element::text).toList();
        List<String> bikes = new ArrayList<>();
        season.get("rides").forEach(ride -> bikes.add(ride.get("build").get("bike").asText()));
        assertThat(briefs).hasSize(9).containsExactlyInAnyOrderElementsOf(bikes);
        assertThat(first.select("#starts thead a").eachText()).containsExactlyInAnyOrder("Ida", "Joss");
        assertThat(first.select("#clashes > ul > li")).hasSize(season.get("conflicts").size());
    }

    /** A mark is where the JSON has another value than at the rider's event before, and nowhere else. */
    @Test
    void changesAreMarkedWhereTheSetUpChanges() throws IOException {
        List<JsonNode> rides = new ArrayList<>();
        season.get("rides").forEach(ride -> {
            if (ride.get("rider").asText().equals("Ida")) {
                rides.add(ride);
            }
        });
        int marked = 0;
        for (Element table : page("riders/ida.html").select("#set-ups table")) {
            List<String> topics = table.select("thead th").eachText();
            for (int row = 0; row < rides.size(); row++) {
                Element line = table.select("tbody tr").get(row);
                for (int i = 1; i < topics.size(); i++) {
                    Element cell = line.child(i);
                    String before = null;
                    for (int earlier = 0; earlier < row; earlier++) {
                        before = value(rides.get(earlier), topics.get(i)) == null ? before : value(rides.get(earlier), topics.get(i));
                    }
                    String value = value(rides.get(row), topics.get(i));
                    boolean changed = value != null && before != null && !value.equals(before);
                    assertThat(cell.select("b").isEmpty()).as(topics.get(i) + " at " + rides.get(row).get("event")).isNotEqualTo(changed);
                    assertThat(plain(cell.text())).isEqualTo(value == null ? "" : changed ? metric(value) + " (was " + metric(before) + ")" : metric(value));
                    marked += changed ? 1 : 0;
                }
            }
        }
        assertThat(marked).isGreaterThan(30);
    }

    private static String value(JsonNode ride, String topic) {
        for (JsonNode each : ride.get("decisions")) {
            if (each.get("topic").asText().equals(topic)) {
                return each.get("value").asText();
            }
        }
        return null;
    }

    /** Pages show one system of units at a time. */
    private static String metric(String value) {
        return value.replaceAll(" \\([0-9.]+ psi\\)", "");
    }

    private static String plain(String text) {
        return text.replace('\u202f', ' ').replace('\u2212', '-');
    }

    /** The swaps of a start on its event's and its rider's page, and the build in the brief, are those of the season: not of a brief made alone. */
    @Test
    void workIsThatOfTheSeason() throws IOException {
        int seen = 0;
        for (JsonNode ride : season.get("rides")) {
            String rider = ride.get("rider").asText();
            String brief = page("index.html").select("#starts a[href*=" + ride.get("date").asText() + "-" + rider.toLowerCase(Locale.ROOT) + "]").attr("href");
            String words = plain(page(brief).text());
            String work = plain(page("riders/" + rider.toLowerCase(Locale.ROOT) + ".html").text());
            for (JsonNode swap : ride.get("build").get("swaps")) {
                if (!swap.get("on").isNull() && swap.get("over").isNull()) {
                    String fit = "Fit " + swap.get("on").asText();
                    assertThat(words).as(brief).contains(fit);
                    assertThat(work).as(brief).contains(fit);
                    seen++;
                }
            }
        }
        assertThat(seen).isGreaterThan(20);
    }

    @Test
    void aSecondRunWritesTheSameBytesAndLeavesNothingStale() throws IOException {
        Map<String, String> before = all(pages);
        season("docs/examples", pages);
        assertThat(all(pages)).isEqualTo(before);
    }

    @Test
    void aFolderWithSomethingElseIsRefusedBeforeAnythingIsRead() throws IOException {
        Path mine = Files.createDirectory(folder.resolve("mine"));
        Files.writeString(mine.resolve("notes.txt"), "mine");
        assertThat(CommandRun.of("season", "no/such/season", "--format", "html", "-o", mine.toString())).isEqualTo(new CommandRun(2, "", mine
                + ": found a folder with something in it, expected a new or an empty folder, or one of pages that this command wrote and nobody changed\n"
                + "    Nothing was written.\n"));
        assertThatThrownBy(() -> season("docs/examples", Path.of("docs/examples/pages")))
                .hasMessageContaining("docs/examples/pages: found a place in a folder that is read, expected a place outside of it");
        assertThat(all(mine)).containsOnlyKeys("notes.txt");
    }

    @Test
    void oneFileHoldsOnePage() throws IOException {
        Path one = folder.resolve("season.html");
        assertThat(season("docs/examples", one)).isEmpty();
        assertThat(Jsoup.parse(Files.readString(one)).select("h1").text()).isEqualTo("A summer out of one cellar");
    }

    /** Names that would be tags, paths, devices or one another's files: text on the pages, and a file for each. */
    @Test
    void hostileNamesBecomeTextAndHarmlessFiles() throws IOException {
        Path hostile = Files.createDirectories(folder.resolve("hostile"));
        Files.copy(Path.of("docs/examples/workshops/cellar.yaml"), hostile.resolve("w.yaml"));
        Files.writeString(hostile.resolve("e.yaml"), "name: \"<img src=x onerror=alert(1)>\"\ndate: 2026-06-20\n");
        List<String> names = List.of("<script>alert(1)</script>", "../../up", "CON", "con", "\u202Eevil\u2066", "\u5929\u5c71", "x".repeat(200));
        StringBuilder text = new StringBuilder("season: \"</title><script>alert(2)</script>\"\nriders:\n");
        names.forEach(name -> text.append("  - {name: \"").append(name).append("\", workshop: w.yaml}\n"));
        Files.writeString(hostile.resolve("season.yaml"), text + "events: [{course: fernbrake, event: e.yaml}]\n");
        Path out = folder.resolve("hostile-pages");
        season(hostile.toString(), out);
        assertThat(reached(out)).hasSize(1 + 1 + 3 * names.size()).allMatch(path -> path.matches("([a-z]+/)?[a-z0-9-]+\\.(html|json)"));
        for (Map.Entry<String, String> page : all(out).entrySet()) {
            if (page.getKey().endsWith(".html")) {
                Document read = Jsoup.parse(page.getValue());
                assertThat(read.select("script")).as(page.getKey()).hasSize(1);
                assertThat(read.select("img, [onerror]")).isEmpty();
                assertThat(page.getValue()).doesNotContain("\u202E").doesNotContain("\u2066");
            }
        }
        assertThat(Jsoup.parse(Files.readString(out.resolve("index.html"))).select("#starts thead").text()).contains("<script>alert(1)</script>", "../../up", "\u5929\u5c71");
    }
}
