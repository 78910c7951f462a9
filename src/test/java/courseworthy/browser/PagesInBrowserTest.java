package courseworthy.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import courseworthy.browser.BrowserPage.Theme;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The pages of commands as a browser shows them: Debian's Chromium, the widths of a phone, a tablet and a desk, on paper and in the dark. */
@ExtendWith(BrowserExtension.class)
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PagesInBrowserTest {

    /** Widths in CSS pixels: a small phone, a tablet held upright, a laptop. */
    static final List<Integer> WIDTHS = List.of(360, 768, 1440);

    /** What A4 leaves between margins of 14 mm, at 96 pixels an inch (CSS Values 3, 5.2). */
    static final int PAPER = 688;

    /** The words of a page without its buttons and what a script reads out. */
    private static final String TEXT = """
            const page = document.body.cloneNode(true);
            page.querySelectorAll('.tools, .reading, output, script').forEach(e => e.remove());
            return page.textContent""";
    /** Words of a page that nobody can see; of a picture drawn for two widths one is shown, its title is read out, and the card needs no "Note:". */
    private static final String UNSEEN = """
            const texts = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
            const unseen = [];
            while (texts.nextNode()) {
                const words = texts.currentNode.textContent.trim(), parent = texts.currentNode.parentElement;
                if (words && !parent.closest('script, .tools, .wide, output, svg title, svg desc, .card .note > strong') && !parent.checkVisibility({visibilityProperty: true})) unseen.push(words.slice(0, 80));
            }
            return unseen""";

    /** Tables that have to be scrolled sideways. */
    private static final String SCROLLED = "return [...document.querySelectorAll('.table')].filter(e => e.scrollWidth > e.clientWidth + 1).map(e => e.getAttribute('aria-label'))";
    /** Words of ordinary length that stand on two lines though no hyphen parts them. */
    private static final String BROKEN = """
            const texts = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
            const broken = [];
            while (texts.nextNode()) {
                const node = texts.currentNode;
                if (node.parentElement.closest('script, svg, code, pre, thead, .card h2') || !node.parentElement.checkVisibility()) continue;
                for (const word of node.textContent.matchAll(/\\p{L}{2,20}/gu)) {
                    const range = document.createRange();
                    range.setStart(node, word.index);
                    range.setEnd(node, word.index + word[0].length);
                    const tops = new Set([...range.getClientRects()].map(box => Math.round(box.top)));
                    if (tops.size > 1) broken.push(word[0]);
                }
            }
            return broken""";

    private Map<String, Path> pages;

    @BeforeAll
    void write(@TempDir Path folder) throws IOException {
        pages = ExamplePages.write(folder);
    }

    static List<String> names() {
        return ExamplePages.names();
    }

    /**
     * One visit to each page. The accessibility checker holds it to the Web Content Accessibility Guidelines 2.2, levels A and AA, as far as a
     * program can tell: each page in one theme, the brief in all; {@link AccessibilityMeasure} has the rest.
     */
    @ParameterizedTest
    @MethodSource("names")
    void aPageIsFineInEveryWay(String name, Browser browser) throws IOException {
        try (BrowserPage page = browser.open()) {
            page.offline().width(360).scripts(false).show(pages.get(name)).openAll();
            assertThat(page.words(UNSEEN)).isEmpty();
            String text = page.run(TEXT).asText();

            page.scripts(true).show(pages.get(name)).openAll();
            assertThat(page.run(TEXT).asText()).as("with scripts").isEqualTo(text).hasSizeGreaterThan(200);
            for (Theme theme : Theme.values()) {
                for (int width : theme == Theme.PRINT ? List.of(PAPER) : WIDTHS) {
                    assertThat(page.theme(theme).width(width).overflow()).as("at " + width + ", " + theme).isLessThanOrEqualTo(0);
                }
            }
            assertThat(page.theme(Theme.LIGHT).width(360).words(SCROLLED)).as("scrolled sideways").isEmpty();
            assertThat(page.words(BROKEN)).as("broken on a phone").isEmpty();
            assertThat(page.theme(Theme.PRINT).width(PAPER).words(BROKEN)).as("broken on paper").isEmpty();
            for (Theme theme : themes(name)) {
                assertThat(page.theme(theme).width(360).accessibilityFaults()).as(theme.toString()).isEmpty();
            }
            assertThat(page.theme(Theme.LIGHT).width(1440).unreached()).isEmpty();
            assertThat(page.console()).isEmpty();
            assertThat(page.requests()).containsExactly(pages.get(name).toUri().toString());
        }
    }

    private static List<Theme> themes(String name) {
        return name.equals("brief") ? List.of(Theme.values()) : List.of(Theme.values()[names().indexOf(name) % 2]);
    }

    @Test
    void aTickOutlastsAReloadForThatCourseRiderAndDateAlone(Browser browser) {
        try (BrowserPage page = browser.open()) {
            String ticked = "[...document.querySelectorAll('input[type=checkbox]')].map((box, i) => box.checked ? i : -1).filter(i => i >= 0).join()";
            page.show(pages.get("checklist")).run("document.querySelectorAll('input[type=checkbox]')[3].click()");
            assertThat(page.evaluate(ticked).asText()).isEqualTo("3");
            assertThat(page.reload().evaluate(ticked).asText()).isEqualTo("3");
            assertThat(page.show(pages.get("checklist of another day")).evaluate(ticked).asText()).isEmpty();
            assertThat(page.show(pages.get("checklist of another rider")).evaluate(ticked).asText()).isEmpty();
            page.show(pages.get("checklist")).run("document.querySelectorAll('input[type=checkbox]')[3].click()");
            assertThat(page.reload().evaluate(ticked).asText()).isEmpty();
        }
    }

    /** Height on the straight line between the two heights of the JSON, clock and ground as the JSON has them at that kilometre. */
    @Test
    void theReadingAlongTheCourseIsThatOfTheJson(Browser browser) throws IOException {
        JsonNode book = new ObjectMapper().readTree(ExamplePages.json("brief in short")).get("road_book");
        try (BrowserPage page = browser.open()) {
            page.width(360).show(pages.get("brief in short"));
            for (int stop : List.of(0, 10, 40)) {
                JsonNode passage = book.get("clock").get(stop);
                double at = passage.get("at_m").asDouble();
                long minutes = Math.round((8 * 3600 + passage.get("after_s").get("value").asDouble()) / 60);
                String read = page.run("const slider = document.querySelector('.reading input'); slider.value = " + stop
                        + "; slider.dispatchEvent(new Event('input')); return document.querySelector('output').textContent").asText();
                assertThat(read).startsWith(String.format(Locale.ROOT, "km %.1f: %d\u202fm, %d:%02d, ", at / 1000, Math.round(height(book, at)), minutes / 60,
                        minutes % 60));
                assertThat(read).contains(surface(book, at));
            }
        }
    }

    private static double height(JsonNode book, double at) {
        JsonNode places = book.get("heights").get("at_m");
        JsonNode heights = book.get("heights").get("height_m");
        int i = 1;
        while (i < places.size() - 1 && places.get(i).asDouble() < at) {
            i++;
        }
        double from = places.get(i - 1).asDouble();
        double share = (at - from) / (places.get(i).asDouble() - from);
        return heights.get(i - 1).asDouble() + share * (heights.get(i).asDouble() - heights.get(i - 1).asDouble());
    }

    private static String surface(JsonNode book, double at) {
        String found = "";
        for (JsonNode each : book.get("ground")) {
            found = each.get("from_m").asDouble() <= at ? each.get("surface").asText().replace('_', ' ') : found;
        }
        return found;
    }

    /** One bar is 14.5038 psi and one metre 3.28084 ft (NIST Special Publication 811, B.8). */
    @Test
    void unitsTurnToThoseOfTheUnitedStatesAndBack(Browser browser) {
        try (BrowserPage page = browser.open()) {
            String text = "document.querySelector('#in-short').textContent + document.querySelector('#course').textContent";
            page.show(pages.get("brief in short")).openAll();
            String metric = page.evaluate(text).asText();
            String turn = "[...document.querySelectorAll('.tools button')].find(each => /units/.test(each.textContent)).click()";
            page.run(turn);
            assertThat(metric).contains("1.25\u202fbar").contains("1900\u202fm");
            assertThat(page.evaluate(text).asText()).contains("18\u202fpsi").contains("6230\u202fft").doesNotContain("\u202fbar").doesNotContain("\u202fkm,");
            page.run(turn);
            assertThat(page.evaluate(text).asText()).isEqualTo(metric);
        }
    }

    /** A mile is 1609.344 m, a foot 0.3048 m (NIST Special Publication 811, B.8); the reading, the pictures and the tables turn together. */
    @Test
    void unitsTurnInPicturesTablesAndReadings(Browser browser) throws IOException {
        JsonNode passage = new ObjectMapper().readTree(ExamplePages.json("brief in short")).get("road_book").get("clock").get(10);
        try (BrowserPage page = browser.open()) {
            page.width(360).show(pages.get("brief in short")).openAll();
            String read = "const slider = document.querySelector('.reading input'); slider.value = 10; slider.dispatchEvent(new Event('input'));"
                    + "return document.querySelector('output').textContent";
            String ground = page.run(read).asText().replaceAll("^.*?, ", "");
            page.run("[...document.querySelectorAll('.tools button')].find(each => /units/.test(each.textContent)).click()");
            String turned = page.evaluate("document.querySelector('output').textContent").asText();
            assertThat(turned).startsWith(String.format(Locale.ROOT, "mile %.1f: ", passage.get("at_m").asDouble() / 1609.344)).contains("\u202fft, ");
            assertThat(page.run(read).asText()).isEqualTo(turned).endsWith(ground);
            String drawn = page.evaluate("[...document.querySelectorAll('figure svg text')].map(each => each.textContent).join('|')").asText();
            assertThat(drawn).contains("\u2009mi|").contains("|ft|").doesNotContain("\u2009km|").doesNotContain("|m|").doesNotContain("km/h");
            String heads = page.evaluate("[...document.querySelectorAll('figure thead th')].map(each => each.textContent).join('|')").asText();
            assertThat(heads).contains("mi|").contains("Up, ft|").doesNotContain("km");
            assertThat(page.overflow()).isLessThanOrEqualTo(0);
        }
    }

    /** Six values and their second lines before anything is scrolled, on the smallest phone that is in use (360 by 640 CSS pixels, common practice). */
    @Test
    void theSetUpInShortIsOnTheFirstScreenOfAPhone(Browser browser) {
        try (BrowserPage page = browser.open()) {
            page.width(360).show(pages.get("brief in short"));
            assertThat(page.evaluate("document.querySelectorAll('.settings dt').length").asInt()).isBetween(6, 7);
            assertThat(page.evaluate("document.querySelector('#in-short').getBoundingClientRect().bottom").asDouble()).isLessThanOrEqualTo(640);
        }
    }

    /** So is that of a race of stages, with what is least sure of it. */
    @Test
    void theSetUpOfAStageRaceIsOnTheFirstScreenOfAPhone(Browser browser) {
        try (BrowserPage page = browser.open()) {
            page.width(360).show(pages.get("stages"));
            assertThat(page.evaluate("document.querySelectorAll('.settings dt').length").asInt()).isBetween(6, 7);
            assertThat(page.evaluate("document.querySelector('#in-short .note').textContent").asText()).contains("Least sure: ");
            assertThat(page.evaluate("document.querySelector('#in-short').getBoundingClientRect().bottom").asDouble()).isLessThanOrEqualTo(640);
        }
    }

    @Test
    void thePolicyOfThePageBlocksWhatIsAdded(Browser browser) {
        try (BrowserPage page = browser.open()) {
            page.show(pages.get("brief"));
            List<String> blocked = page.words("""
                    const blocked = [];
                    document.addEventListener('securitypolicyviolation', e => blocked.push(e.effectiveDirective + ' ' + e.blockedURI));
                    const image = document.createElement('img');
                    image.src = 'http://localhost:9/picture.png';
                    document.body.append(image);
                    const script = document.createElement('script');
                    script.textContent = 'window.ran = true';
                    document.body.append(script);
                    await fetch('http://localhost:9/data').then(() => blocked.push('fetched'), () => 0);
                    await new Promise(done => setTimeout(done, 0));
                    return [...blocked, String(window.ran)]""");
            assertThat(blocked).containsExactlyInAnyOrder("img-src http://localhost:9/picture.png", "connect-src http://localhost:9/data",
                    "script-src-elem inline", "undefined");
        }
    }

    /** The pages of a season, one after another as a reader goes through them; the checkers look at one of each kind. */
    @Test
    void everyPageOfASeasonIsFine(Browser browser) throws IOException {
        List<Path> all;
        try (Stream<Path> files = Files.walk(pages.get("season").resolveSibling("season"))) {
            all = files.filter(each -> each.toString().endsWith(".html")).sorted().toList();
        }
        assertThat(all).hasSize(20);
        visit(browser, all, List.of("index.html", "weeks.html", "ida.html", "2026-06-20-heather-ridge-marathon.html"));
    }

    /** One page of each kind of the catalogue: there are some hundred of a kind. */
    @Test
    void pagesOfTheCatalogueAreFine(Browser browser) throws IOException {
        Path catalogue = pages.get("season").resolveSibling("catalogue");
        List<Path> all = Stream.of("index.html", "topics/rear-tyre-casing.html", "measures/going.html", "measures/stretches.html", "rules/all.html",
                "rules/shipped-less-pressure-in-the-wet.html").map(catalogue::resolve).toList();
        visit(browser, all, List.of("rear-tyre-casing.html", "going.html", "stretches.html", "shipped-less-pressure-in-the-wet.html"));
    }

    /** @param checked names of files on which the checkers look too */
    private static void visit(Browser browser, List<Path> all, List<String> checked) throws IOException {
        try (BrowserPage page = browser.open()) {
            page.offline();
            for (Path each : all) {
                page.theme(Theme.LIGHT).width(360).show(each).openAll();
                for (int width : WIDTHS) {
                    assertThat(page.width(width).overflow()).as(each + " at " + width).isLessThanOrEqualTo(0);
                }
                assertThat(page.width(360).words(SCROLLED)).as(each + ", scrolled sideways").isEmpty();
                assertThat(page.words(BROKEN)).as(each + ", broken on a phone").isEmpty();
                assertThat(page.theme(Theme.PRINT).width(PAPER).overflow()).as(each + " on paper").isLessThanOrEqualTo(0);
                assertThat(page.words(BROKEN)).as(each + ", broken on paper").isEmpty();
                if (checked.contains(each.getFileName().toString())) {
                    assertThat(page.theme(Theme.DARK).width(360).accessibilityFaults()).as(each.toString()).isEmpty();
                    assertThat(page.unreached()).as(each.toString()).isEmpty();
                }
                assertThat(page.console()).as(each.toString()).isEmpty();
                assertThat(page.requests()).containsExactly(each.toUri().toString());
            }
        }
    }

    /** Pictures for people to look at, in target/pages. */
    @Test
    void picturesAreTaken(Browser browser) throws IOException {
        try (BrowserPage page = browser.open()) {
            page.width(360).show(pages.get("brief")).picture("brief-360");
            page.width(1440).theme(Theme.DARK).picture("brief-1440-dark");
            assertThat(Path.of("target", "pages", "brief-360.png")).isNotEmptyFile();
        }
    }
}
