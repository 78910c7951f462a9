package courseworthy.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import courseworthy.browser.BrowserPage.Theme;
import java.io.IOException;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.AfterAll;
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

    private Map<String, Path> pages;

    /** Where pages are looked at one after another, as a reader goes through them. */
    private BrowserPage window;

    @BeforeAll
    void write(@TempDir Path folder, Browser browser) throws IOException {
        pages = ExamplePages.write(folder);
        window = browser.open().offline();
    }

    @AfterAll
    void close() {
        if (window != null) {
            window.close();
        }
    }

    static List<String> names() {
        return ExamplePages.names();
    }

    /** The accessibility checker looks at each page in one theme, at the brief in all; {@link AccessibilityMeasure} has the rest. */
    @ParameterizedTest
    @MethodSource("names")
    void aPageIsFineInEveryWay(String name) throws IOException {
        PageInspection.inspect(window, pages.get(name), name.equals("brief") ? EnumSet.allOf(Theme.class) : Set.of(Theme.values()[names().indexOf(name) % 2]));
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

    @Test
    void everyPageOfASeasonIsFine() throws IOException {
        List<Path> all = ExamplePages.season(pages);
        assertThat(all).hasSize(20);
        inspect(all);
    }

    /** Some pages of each kind of the catalogue: there are some hundred of a kind. */
    @Test
    void pagesOfTheCatalogueAreFine() throws IOException {
        List<Path> all = ExamplePages.catalogue(pages, 200);
        assertThat(all).hasSizeBetween(8, 15);
        inspect(all);
    }

    /** Pages of one folder are of one kind: the accessibility checker looks at two of them, at one in each theme of a screen. */
    private void inspect(List<Path> all) throws IOException {
        Map<Path, Integer> seen = new HashMap<>();
        for (Path each : all) {
            int place = seen.merge(each.getParent(), 1, Integer::sum);
            PageInspection.inspect(window, each, place > 2 ? Set.of() : Set.of(Theme.values()[place % 2]));
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
