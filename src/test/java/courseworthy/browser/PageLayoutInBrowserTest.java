package courseworthy.browser;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.ToolOutput;
import courseworthy.browser.BrowserPage.Theme;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** Where things stand on a page, as a browser lays it out: on a phone, at a desk and on paper. */
@ExtendWith(BrowserExtension.class)
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PageLayoutInBrowserTest {

    private static final Map<String, List<String>> LINES = new LinkedHashMap<>(Map.of(
            "too hard", List.of("brief", "grey-shoulder", "--event", "docs/examples/events/grey-shoulder.yaml", "--rider", "docs/examples/riders/sam-novice.yaml"),
            "long", List.of("brief", "wide-fallow", "--event", "docs/examples/events/wide-fallow.yaml", "--rider", "docs/examples/riders/joss-steel.yaml"),
            "map", List.of("brief", "docs/examples/maps/sorrel-wood.gpx", "--map", "docs/examples/maps/sorrel-wood.osm"),
            "build", List.of("brief", "heather-ridge", "--event", "docs/examples/events/heather-ridge.yaml", "--rider", "docs/examples/riders/ida-hardtail.yaml",
                    "--workshop", "docs/examples/workshops/cellar.yaml"),
            "stages", List.of("stages", "docs/examples/events/three-becks.yaml", "--rider", "docs/examples/riders/kim-cross-country.yaml"),
            "roster", List.of("roster", "heather-ridge", "--riders", "docs/examples/riders"),
            "debriefs", List.of("debrief", "docs/examples/debriefs"),
            "compare", List.of("compare", "heather-ridge", "--set", "bike=gravel"),
            "weeks", List.of("season", "docs/examples", "--by-week")));

    private final Map<String, Path> pages = new HashMap<>();

    @BeforeAll
    void write(@TempDir Path folder) throws IOException {
        for (Map.Entry<String, List<String>> each : LINES.entrySet()) {
            List<String> line = new ArrayList<>(each.getValue());
            line.addAll(List.of("--format", "html"));
            pages.put(each.getKey(), Files.writeString(folder.resolve(each.getKey().replace(' ', '-') + ".html"), new ToolOutput().run(line.toArray(String[]::new))));
        }
    }

    private List<String> words(Browser browser, String name, int width, String body) {
        try (BrowserPage page = browser.open()) {
            return page.width(width).show(pages.get(name)).openAll().words(body);
        }
    }

    /** Gears that are too hard are one line of the set-up more, and it still is on the first screen of a phone of 640 px. */
    @Test
    void theSetUpIsOnTheFirstScreenThoughTheGearsAreTooHard(Browser browser) {
        assertThat(words(browser, "too hard", 360, """
                const rows = [...document.querySelectorAll('.settings > div')];
                const tall = rows.filter(row => row.children[1].getBoundingClientRect().height > 2 * 1.3 * 22).map(row => row.textContent);
                const bottom = document.querySelector('.settings').getBoundingClientRect().bottom;
                return [...rows.map(row => row.children[0].textContent).filter(name => name === 'Too hard'), ...tall, String(bottom <= 640)]"""))
                .containsExactly("Too hard", "true");
    }

    /** A label of several lines pushes apart none of the lines beside it. */
    @Test
    void theLinesOfAValueFollowOneAnother(Browser browser) {
        for (String name : List.of("debriefs", "stages")) {
            for (int width : List.of(360, 1440)) {
                assertThat(words(browser, name, width, """
                        return [...document.querySelectorAll('dl > div > dd + dd')]
                            .filter(dd => dd.getBoundingClientRect().top - dd.previousElementSibling.getBoundingClientRect().bottom > 4).map(dd => dd.textContent)"""))
                        .as(name + " at " + width).isEmpty();
            }
        }
    }

    @Test
    void noTableOfTheExamplesIsCutOff(Browser browser) {
        for (String name : LINES.keySet()) {
            assertThat(words(browser, name, name.equals("map") ? 360 : 1440, """
                    return [...document.querySelectorAll('.table')].filter(e => e.scrollWidth > e.clientWidth + 1).map(e => e.getAttribute('aria-label'))"""))
                    .as(name).isEmpty();
        }
    }

    /** What is looked for first stands in columns on one line, which the rest of its row follows. */
    @Test
    void aRowOfTheRoadStripHasItsGroundAndGearOnOneLineOfAPhone(Browser browser) {
        for (String name : List.of("too hard", "long")) {
            assertThat(words(browser, name, 360, """
                const lines = cell => { const range = document.createRange(); range.selectNodeContents(cell);
                    return new Set([...range.getClientRects()].map(box => Math.round(box.top))).size; };
                const rows = [...document.querySelectorAll('.road-strip tbody tr')].filter(row => row.cells.length > 6 && row.cells[5].textContent);
                const faults = rows.filter(row => [1, 2, 3, 4, 5].some(i => Math.abs(row.cells[i].offsetTop - row.cells[0].offsetTop) > 1)
                    || [0, 1, 5].some(i => lines(row.cells[i]) > 1)).map(row => row.textContent);
                const heads = [...document.querySelectorAll('.road-strip thead th')].slice(0, 6).filter(head => head.scrollWidth > head.clientWidth || lines(head) > 2);
                const region = document.querySelector('.table:has(.road-strip)');
                return [String(rows.length > 4), ...faults, ...heads.map(head => head.textContent), String(region.scrollWidth <= region.clientWidth)]"""))
                    .as(name).containsExactly("true", "true");
        }
    }

    /** Lines of running text have 60 to 75 characters where there is room for them (common practice, no source). */
    @Test
    void linesOfTextAreNotTooLongToRead(Browser browser) {
        for (int width : List.of(768, 1440)) {
            assertThat(words(browser, "build", width, """
                    const lines = text => { const range = document.createRange(); range.selectNodeContents(text);
                        return new Set([...range.getClientRects()].map(box => Math.round(box.bottom / 8))).size; };
                    return [...document.querySelectorAll('main p, main li')].filter(text => !text.querySelector('p, ul, ol') && lines(text) > 2)
                        .map(text => text.textContent.length / (lines(text) - 0.5)).sort((a, b) => a - b).filter((each, i, all) => i === all.length >> 1)"""))
                    .singleElement().satisfies(median -> assertThat(Double.parseDouble(median)).as("at " + width).isBetween(55.0, 76.0));
        }
    }

    /** Several things to do on a day are not one run of words. */
    @Test
    void eachThingToDoOnADayBeginsALine(Browser browser) {
        assertThat(words(browser, "weeks", 1440, """
                const cell = [...document.querySelectorAll('td')].find(each => (each.innerText.match(/Service:/g) || []).length > 2);
                return cell.innerText.split('\\n').map(line => line.split(':')[0])""")).hasSizeGreaterThan(2).containsOnly("Service");
    }

    @Test
    void buttonsStandAboveATableThatBeginsThePage(Browser browser) {
        assertThat(words(browser, "compare", 768, """
                return [String(document.querySelectorAll('.tools').length),
                    String(document.querySelector('.tools').getBoundingClientRect().bottom <= document.querySelector('.table').getBoundingClientRect().top)]"""))
                .containsExactly("1", "true");
    }

    /** Filled, half filled or open without a background, which paper leaves out. */
    @Test
    void howFirmItIsIsDrawnOfBorders(Browser browser) {
        assertThat(words(browser, "build", 360, """
                const kinds = ['full', 'half', 'open'].map(kind => document.querySelector('.standing.' + kind));
                return kinds.map(each => { const style = getComputedStyle(each, '::before');
                    return each.textContent + ' ' + style.backgroundColor + ' ' + (parseFloat(style.borderLeftWidth) > parseFloat(style.width) / 2 - 2); })"""))
                .containsExactly("firm rgba(0, 0, 0, 0) true", "fair rgba(0, 0, 0, 0) true", "thin rgba(0, 0, 0, 0) false");
    }

    /** On A4 and on Letter no side ends with a heading. */
    @Test
    void noHeadingIsLeftAtTheEndOfASide(Browser browser) throws IOException {
        try (BrowserPage page = browser.open()) {
            for (String name : List.of("build", "too hard", "stages", "roster")) {
                List<String> headings = page.theme(Theme.PRINT).show(pages.get(name))
                        .words("return [...document.querySelectorAll('h2, h3, h4, .figure-title, .list-title')].map(each => each.textContent.replace(/\\s+/g, ' ').trim())");
                assertThat(headings).hasSizeGreaterThan(2);
                for (double[] inches : new double[][] {{8.27, 11.69}, {8.5, 11}}) {
                    for (String last : lastLines(page.paper(inches[0], inches[1]))) {
                        assertThat(headings).as(name + " on " + inches[0] + " in").doesNotContain(last);
                    }
                }
            }
        }
    }

    private static List<String> lastLines(byte[] pdf) throws IOException {
        List<String> out = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDFTextStripper text = new PDFTextStripper();
            text.setSortByPosition(true);
            for (int side = 1; side < document.getNumberOfPages(); side++) {
                text.setStartPage(side);
                text.setEndPage(side);
                String[] lines = text.getText(document).strip().split("\\R");
                out.add(lines[lines.length - 1].strip());
            }
        }
        assertThat(out).isNotEmpty();
        return out;
    }
}
