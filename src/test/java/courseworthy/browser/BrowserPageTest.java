package courseworthy.browser;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.browser.BrowserPage.Contrast;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** What the browser tests look with sees what is wrong with a page, and nothing where nothing is. */
@ExtendWith(BrowserExtension.class)
class BrowserPageTest {

    private static final String SOUND = """
            <!doctype html><html lang="en"><head><meta charset="utf-8"><title>Sound</title>
            <meta name="viewport" content="width=device-width, initial-scale=1"></head>
            <body><main><h1>Sound</h1><p>Words. <a href="#more">more words</a></p><details><summary>More of it</summary><p id="more">
            <a href="#more">again</a></p></details></main></body></html>
            """;

    @TempDir
    Path folder;

    private Path page(String html) throws IOException {
        return Files.writeString(folder.resolve("page.html"), html);
    }

    @Test
    void aSoundPageHasNoFaults(Browser browser) throws IOException {
        try (BrowserPage page = browser.open()) {
            page.width(360).offline().show(page(SOUND));
            assertThat(page.console()).isEmpty();
            assertThat(page.requests()).containsExactly(folder.resolve("page.html").toUri().toString());
            assertThat(page.overflow()).isLessThanOrEqualTo(0);
            assertThat(page.unreached()).isEmpty();
            assertThat(page.accessibilityFaults(Contrast.EVERY_TEXT)).isEmpty();
        }
    }

    @Test
    void whatIsWrongIsSeen(Browser browser) throws IOException {
        try (BrowserPage page = browser.open()) {
            page.width(360).show(page(SOUND.replace("<main>", """
                    <main><img src="http://localhost:9/none.png"><p style="color: #ccc">pale</p><div style="width: 900px">wide</div>
                    <script>console.warn('a word'); throw new Error('a fault')</script>
                    """)));
            assertThat(page.console()).anyMatch(each -> each.contains("a word")).anyMatch(each -> each.contains("a fault"));
            assertThat(page.requests()).contains("http://localhost:9/none.png");
            assertThat(page.overflow()).isGreaterThan(400);
            for (Contrast contrast : Contrast.values()) {
                assertThat(page.accessibilityFaults(contrast)).as("%s", contrast).anyMatch(each -> each.startsWith("color-contrast")).anyMatch(each -> each.startsWith("image-alt"));
            }
        }
    }

    /** Text of colours that are fine elsewhere on the page, on a ground that is nearly as dark. */
    @Test
    void textOnAnotherGroundIsAnotherStyle(Browser browser) throws IOException {
        try (BrowserPage page = browser.open()) {
            page.show(page(SOUND.replace("<main>", "<main><p>fine</p><div style=\"background: #444\"><section><p>dark on dark</p></section></div>")));
            assertThat(page.accessibilityFaults(Contrast.EACH_STYLE)).singleElement().asString().contains("dark on dark");
        }
    }

    /** A page that takes the focus back keeps a link from the keyboard. */
    @Test
    void aTrapForTheKeyboardIsSeen(Browser browser) throws IOException {
        try (BrowserPage page = browser.open()) {
            page.show(page(SOUND.replace("<main>", "<main><button onkeydown=\"event.preventDefault()\">Stay</button>")));
            assertThat(page.unreached()).anyMatch(each -> each.contains("more words")).anyMatch(each -> each.contains("summary"));
        }
    }

    @Test
    void themesAndScriptsAreTurnedOnAndOff(Browser browser) throws IOException {
        try (BrowserPage page = browser.open()) {
            page.theme(BrowserPage.Theme.DARK).show(page(SOUND));
            assertThat(page.evaluate("matchMedia('(prefers-color-scheme: dark)').matches").asBoolean()).isTrue();
            page.theme(BrowserPage.Theme.PRINT);
            assertThat(page.evaluate("matchMedia('print').matches && !matchMedia('(prefers-color-scheme: dark)').matches").asBoolean()).isTrue();
            Path writing = page(SOUND.replace("<main>", "<main><script>document.title = 'Written'</script>"));
            assertThat(page.show(writing).evaluate("document.title").asText()).isEqualTo("Written");
            assertThat(page.scripts(false).show(writing).evaluate("document.title").asText()).isEqualTo("Sound");
        }
    }

    /** What a page keeps is there after a reload, and not in another context. */
    @Test
    void aStoreLastsOverAReload(Browser browser) throws IOException {
        try (BrowserPage page = browser.open(); BrowserPage other = browser.open()) {
            page.show(page(SOUND)).evaluate("localStorage.setItem('key', 'kept')");
            assertThat(page.reload().evaluate("localStorage.getItem('key')").asText()).isEqualTo("kept");
            assertThat(other.show(page(SOUND)).evaluate("localStorage.getItem('key')").asText()).isNotEqualTo("kept");
        }
    }
}
