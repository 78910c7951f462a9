package courseworthy.cli;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.ToolOutput;
import java.io.IOException;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PagesCommandTest {

    @TempDir
    private Path folder;

    @Test
    void writesThemWholeAndOverwritesOnlyItsOwn() throws IOException {
        String typed = folder.resolve("handbook").toString();
        CommandRun ran = CommandRun.of("pages", typed);
        long written;
        try (Stream<Path> all = Files.walk(folder)) {
            written = all.filter(each -> each.toString().endsWith(".md")).count();
        }
        assertThat(ran).isEqualTo(new CommandRun(0, "Wrote " + written + " pages; begin with " + typed + "/README.md\n", ""));
        assertThat(written).isGreaterThan(500);
        assertThat(CommandRun.of("pages", typed)).isEqualTo(ran);
        Files.writeString(folder.resolve("handbook/notes.md"), "mine");
        assertThat(CommandRun.of("pages", typed)).isEqualTo(new CommandRun(2, "", typed + ": found \"notes.md\" in it, which is none of its pages, expected a new or an "
                + "empty folder, or one of pages that this command wrote and nobody changed\n    Nothing was written.\n"));
    }

    /** Every link leads to a page, and the reasons of a brief lead to the pages of their rules. */
    @Test
    void pagesOfHtmlLeadToOneAnotherAndReasonsLeadToThem() throws IOException {
        Path handbook = folder.resolve("hand book#1");
        new ToolOutput().run("pages", handbook.toString(), "--format", "html");
        Path page = Files.createDirectory(folder.resolve("out")).resolve("brief.html");
        new ToolOutput().run("brief", "heather-ridge", "--format", "html", "--rule-pages", handbook.toString(), "-o", page.toString());
        Set<String> rules = new HashSet<>();
        for (Element link : Jsoup.parse(Files.readString(page)).select("#topics a[href^=..]")) {
            assertThat(link.attr("href")).startsWith("../hand%20book%231/rules/");
            Path to = page.getParent().resolve(URLDecoder.decode(link.attr("href"), StandardCharsets.UTF_8)).normalize();
            assertThat(to).isRegularFile();
            assertThat(Jsoup.parse(Files.readString(to)).select("h1").text()).isEqualTo(link.text());
            rules.add(link.text());
        }
        assertThat(rules).hasSizeGreaterThan(60);
        Path why = page.resolveSibling("why.html");
        new ToolOutput().run("why", "heather-ridge", "rear tyre casing", "--format", "html", "--rule-pages", handbook.toString(), "-o", why.toString());
        assertThat(Jsoup.parse(Files.readString(why)).select("#chain a[href^=..], #other-rules a[href^=..]")).hasSizeGreaterThan(3).allSatisfy(link ->
                assertThat(why.getParent().resolve(URLDecoder.decode(link.attr("href"), StandardCharsets.UTF_8)).normalize()).isRegularFile());
        reasonsOfAPartLeadToThem(handbook, page.resolveSibling("reasons.html"), "reasons", 30);
        reasonsOfAPartLeadToThem(handbook, page.resolveSibling("against.html"), "against", 2);
        briefsOfStagesAndRostersLeadToThem(handbook, page.getParent());
        int links = 0;
        for (String each : List.of("index.html", "topics/rear-tyre-casing.html", "rules/all.html", "rules/shipped-less-pressure-in-the-wet.html")) {
            Path at = handbook.resolve(each);
            for (Element link : Jsoup.parse(Files.readString(at)).select("a[href]:not([href^=#])")) {
                assertThat(at.getParent().resolve(link.attr("href")).normalize()).as(each).isRegularFile();
                links++;
            }
        }
        assertThat(links).isGreaterThan(600);
    }

    private static void reasonsOfAPartLeadToThem(Path handbook, Path page, String part, int least) throws IOException {
        new ToolOutput().run("brief", "heather-ridge", "--part", part, "--format", "html", "--rule-pages", handbook.toString(), "-o", page.toString());
        assertThat(Jsoup.parse(Files.readString(page)).select("#" + part + " li a[href^=..]")).hasSizeGreaterThan(least).allSatisfy(link -> {
            Path to = page.getParent().resolve(URLDecoder.decode(link.attr("href"), StandardCharsets.UTF_8)).normalize();
            assertThat(Jsoup.parse(Files.readString(to)).select("h1").text()).isEqualTo(link.text());
        });
    }

    private static void briefsOfStagesAndRostersLeadToThem(Path handbook, Path out) throws IOException {
        Path stage = out.resolve("stage.html");
        new ToolOutput().run("stages", "docs/examples/events/three-becks.yaml", "--stage", "2", "--format", "html", "--rule-pages", handbook.toString(), "-o", stage.toString());
        Path riders = Files.createDirectory(out.resolve("riders"));
        Files.copy(Path.of("docs/examples/riders/sam-novice.yaml"), riders.resolve("sam.yaml"));
        Path briefs = out.resolve("briefs");
        new ToolOutput().run("roster", "fernbrake", "--riders", riders.toString(), "--format", "html", "--rule-pages", handbook.toString(), "--each", briefs.toString(),
                "-o", out.resolve("roster.html").toString());
        List<Path> pages = new ArrayList<>(List.of(stage));
        try (Stream<Path> files = Files.list(briefs)) {
            files.filter(each -> each.toString().endsWith(".html")).forEach(pages::add);
        }
        assertThat(pages).hasSize(2).allSatisfy(page -> assertThat(Jsoup.parse(Files.readString(page)).select("#topics a[href^=..]")).hasSizeGreaterThan(60)
                .allSatisfy(link -> assertThat(page.getParent().resolve(URLDecoder.decode(link.attr("href"), StandardCharsets.UTF_8)).normalize()).isRegularFile()));
    }

    /** Without pages of rules a reason names its rule, and leads nowhere but to its source on the same page. */
    @Test
    void withoutRulePagesReasonsNameTheirRules() {
        Document page = Jsoup.parse(new ToolOutput().run("brief", "heather-ridge", "--part", "reasons", "--format", "html"));
        assertThat(page.select("#reasons li")).hasSizeGreaterThan(20).allSatisfy(line -> assertThat(line.text()).matches(".* Rule: [a-z]+/[a-z0-9-]+\\."));
        assertThat(page.select("a[href]")).allSatisfy(link -> assertThat(page.getElementById(link.attr("href").substring(1))).as(link.outerHtml()).isNotNull());
    }

    @Test
    void rulePagesAreRefusedWhereThereAreNoneOrNoPageRefersToThem() throws IOException {
        Path none = Files.createDirectory(folder.resolve("none"));
        assertThat(CommandRun.of("brief", "course-profiles/heather-ridge.yaml", "--format", "html", "--rule-pages", none.toString())).isEqualTo(new CommandRun(2, "",
                "--rule-pages: found \"" + none + "\", expected a folder that \"courseworthy pages --format html\" wrote\n"));
        assertThat(CommandRun.of("brief", "course-profiles/heather-ridge.yaml", "--rule-pages", none.toString()).err())
                .isEqualTo("--rule-pages: found --format text beside it, expected --format html\n");
        assertThat(CommandRun.of("brief", "course-profiles/heather-ridge.yaml", "--format", "html", "--part", "close", "--rule-pages", none.toString()).err())
                .isEqualTo("--part: found close with --rule-pages beside it, expected reasons or against\n    No other part alone names rules; the whole brief does, and --topic.\n");
        assertThat(CommandRun.of("stages", "docs/examples/events/three-becks.yaml", "--format", "html", "--rule-pages", none.toString()).err())
                .isEqualTo("--rule-pages: found no --stage, expected --stage beside it\n    The page of the race gives no rules; the brief of a stage does.\n");
        assertThat(CommandRun.of("roster", "fernbrake", "--riders", "docs/examples/riders", "--format", "html", "--rule-pages", none.toString()).err())
                .isEqualTo("--rule-pages: found no --each, expected --each beside it\n    The page of the roster gives no rules; the briefs of its riders do.\n");
        assertThat(CommandRun.of("season", "docs/examples", "--rule-pages", none.toString()).err())
                .isEqualTo("--rule-pages: found no folder of pages to write, expected --format html and -o with a folder\n");
    }
}
