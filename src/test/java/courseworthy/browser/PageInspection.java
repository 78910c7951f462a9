package courseworthy.browser;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.browser.BrowserPage.Contrast;
import courseworthy.browser.BrowserPage.Theme;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;

/** What is asked of every page, whatever stands on it: with and without scripts, at every width, in every theme, by the keyboard alone. */
final class PageInspection {

    /** Widths in CSS pixels: a small phone, a tablet held upright, a laptop. */
    static final List<Integer> WIDTHS = List.of(360, 768, 1440);

    /** What A4 leaves between margins of 14 mm, at 96 pixels an inch (CSS Values 3, 5.2). */
    static final int PAPER = 688;

    private static final int PHONE = WIDTHS.get(0);

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

    private final BrowserPage page;
    private final Path file;

    private PageInspection(BrowserPage page, Path file) {
        this.page = page;
        this.file = file;
    }

    /**
     * Holds a page to all of it.
     *
     * @param checked the themes in which the accessibility checker looks at it, against the Web Content Accessibility Guidelines 2.2, levels A
     *                and AA, as far as a program can tell
     */
    static void inspect(BrowserPage page, Path file, Set<Theme> checked) throws IOException {
        page.theme(Theme.LIGHT).width(PHONE).scripts(false).show(file).openAll();
        assertThat(page.words(UNSEEN)).as("%s, unseen", file).isEmpty();
        String text = page.run(TEXT).asText();
        page.scripts(true).show(file).openAll();
        assertThat(page.run(TEXT).asText()).as("%s, with scripts", file).isEqualTo(text).hasSizeGreaterThan(200);
        PageInspection inspection = new PageInspection(page, file);
        for (int width : WIDTHS) {
            inspection.onScreen(width, checked);
        }
        assertThat(page.unreached()).as("%s, not reached by the keyboard", file).isEmpty();
        inspection.onPaper(checked);
        assertThat(page.console()).as("%s, console", file).isEmpty();
        assertThat(page.requests()).containsExactly(file.toUri().toString());
    }

    private void onScreen(int width, Set<Theme> checked) throws IOException {
        page.width(width);
        for (Theme theme : List.of(Theme.DARK, Theme.LIGHT)) {
            assertThat(page.theme(theme).overflow()).as("%s at %d, %s", file, width, theme).isLessThanOrEqualTo(0);
            if (width == PHONE && checked.contains(theme)) {
                accessible(theme);
            }
        }
        if (width == PHONE) {
            assertThat(page.words(SCROLLED)).as("%s, scrolled sideways", file).isEmpty();
            assertThat(page.words(BROKEN)).as("%s, broken on a phone", file).isEmpty();
        }
    }

    private void onPaper(Set<Theme> checked) throws IOException {
        assertThat(page.theme(Theme.PRINT).width(PAPER).overflow()).as("%s on paper", file).isLessThanOrEqualTo(0);
        assertThat(page.words(BROKEN)).as("%s, broken on paper", file).isEmpty();
        if (checked.contains(Theme.PRINT)) {
            accessible(Theme.PRINT);
        }
    }

    private void accessible(Theme theme) throws IOException {
        assertThat(page.accessibilityFaults(Contrast.EACH_STYLE)).as("%s, %s", file, theme).isEmpty();
    }
}
