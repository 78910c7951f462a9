package courseworthy.browser;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.browser.BrowserPage.Contrast;
import courseworthy.browser.BrowserPage.Theme;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** The accessibility checker on pages of every command, of the example season and of the catalogue, at every width, in every theme. */
@ExtendWith(BrowserExtension.class)
class AccessibilityMeasure {

    /** Every how many pages of the catalogue one is looked at. */
    private static final int STEP = Integer.getInteger("courseworthy.pages", 20);

    @Test
    void nothingIsFoundOnAnyPage(Browser browser, @TempDir Path folder) throws IOException {
        Map<String, Path> named = ExamplePages.write(folder);
        Set<Path> pages = new LinkedHashSet<>(named.values());
        pages.addAll(ExamplePages.writeParts(folder).values());
        pages.addAll(ExamplePages.season(named));
        pages.addAll(ExamplePages.catalogue(named, STEP));
        List<String> found = new ArrayList<>();
        try (BrowserPage page = browser.open()) {
            for (Path each : pages) {
                page.show(each).openAll();
                faults(page).forEach(fault -> found.add(folder.relativize(each) + ", " + fault));
            }
        }
        assertThat(found).isEmpty();
    }

    /** Every text is held against its background once a theme; what other widths show of it has the same colours. */
    private static List<String> faults(BrowserPage page) throws IOException {
        List<String> found = new ArrayList<>();
        for (Theme theme : Theme.values()) {
            Contrast contrast = Contrast.EVERY_TEXT;
            for (int width : theme == Theme.PRINT ? List.of(PageInspection.PAPER) : PageInspection.WIDTHS) {
                for (String fault : page.theme(theme).width(width).accessibilityFaults(contrast)) {
                    found.add(theme + ", " + width + ": " + fault);
                }
                contrast = Contrast.EACH_STYLE;
            }
        }
        return found;
    }
}
