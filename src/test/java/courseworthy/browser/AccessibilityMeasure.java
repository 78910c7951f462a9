package courseworthy.browser;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.browser.BrowserPage.Theme;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** The accessibility checker on every page of an example, at every width, in every theme: some minutes. */
@ExtendWith(BrowserExtension.class)
class AccessibilityMeasure {

    @Test
    void nothingIsFoundOnAnyPage(Browser browser, @TempDir Path folder) throws IOException {
        List<String> found = new ArrayList<>();
        for (Map.Entry<String, Path> each : ExamplePages.write(folder).entrySet()) {
            try (BrowserPage page = browser.open()) {
                page.show(each.getValue()).openAll();
                for (Theme theme : Theme.values()) {
                    for (int width : theme == Theme.PRINT ? List.of(PagesInBrowserTest.PAPER) : PagesInBrowserTest.WIDTHS) {
                        page.theme(theme).width(width).accessibilityFaults().forEach(fault -> found.add(each.getKey() + ", " + theme + ", " + width + ": " + fault));
                    }
                }
            }
        }
        assertThat(found).isEmpty();
    }
}
