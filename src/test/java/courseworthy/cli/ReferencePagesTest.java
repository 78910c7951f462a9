package courseworthy.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * The generated parts of the pages under {@code docs/reference}: they say what help and the catalogue say.
 * {@code -Dcourseworthy.approve=true} rewrites them, to be reviewed as a difference.
 */
class ReferencePagesTest {

    private static final Path FOLDER = Path.of("docs", "reference");

    @Test
    void commandsAreThoseOfHelp() throws IOException {
        check("commands.md", Map.of("commands", CommandReference.commands(), "exit codes", CommandReference.exitCodes()));
    }

    @Test
    void topicsStandInTheOrderInWhichTheyAreDecided() throws IOException {
        check("decisions.md", Map.of("layers", CatalogueTables.layers(), "firmness", CatalogueTables.firmness(), "foundations", CatalogueTables.foundations()));
    }

    @Test
    void partsAreThoseThatAWorkshopTakes() throws IOException {
        check("parts.md", Map.of("kinds", CatalogueTables.partKinds(), "keys", CatalogueTables.partKeys()));
    }

    @Test
    void topicsAndMeasuresOfTheGlossaryAreThoseOfTheCatalogue() throws IOException {
        check("glossary.md", Map.of("topics", CatalogueTables.topics(), "measures", CatalogueTables.measures()));
    }

    /** A region without content, or content without its region, is a fault of the page. */
    @Test
    void regionsAndContentsMatch() {
        String page = "a\n<!-- generated: one -->\nold\n<!-- end of one -->\nb\n";
        assertThat(GeneratedRegions.fill(page, Map.of("one", "$1 new\n")))
                .isEqualTo("a\n<!-- generated: one -->\n\n$1 new\n\n<!-- end of one -->\nb\n");
        assertThatThrownBy(() -> GeneratedRegions.fill(page, Map.of())).hasMessage("nothing to fill one with");
        assertThatThrownBy(() -> GeneratedRegions.fill(page, Map.of("one", "", "two", ""))).hasMessage("no region two");
    }

    private static void check(String name, Map<String, String> contents) throws IOException {
        Path file = FOLDER.resolve(name);
        String page = Files.readString(file);
        String expected = GeneratedRegions.fill(page, contents);
        if (Boolean.getBoolean("courseworthy.approve")) {
            Files.writeString(file, expected);
        } else {
            assertThat(page).as("run with -Dcourseworthy.approve=true where the change is meant").isEqualTo(expected);
        }
    }
}
