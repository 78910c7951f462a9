package courseworthy.cli;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.report.CatalogueReport;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import picocli.CommandLine.Model.OptionSpec;

/** Formats in which commands answer. */
class FormatTest {

    @Test
    void theFormatsOfOneCommandComeAfterThoseOfAll() {
        List<Format> all = Format.offered();
        assertThat(all).startsWith(Format.TEXT).contains(Format.JSON, Format.MARKDOWN).doesNotContain(Format.CSV, Format.GPX);
        assertThat(Format.offered(Format.CSV)).startsWith(all.toArray(Format[]::new)).endsWith(Format.CSV);
    }

    @Test
    void everyFormatOfAllButJsonWritesReports() {
        for (Format format : Format.offered()) {
            if (format != Format.JSON) {
                assertThat(format.renderer(80, false).render(CatalogueReport.topics())).as(format.toString()).contains("front tyre width");
            }
        }
    }

    /** What help says of the option, and that its words are taken. What writes a folder of pages has formats of pages alone. */
    @Test
    void everyCommandWithTheOptionOffersThemAll() {
        for (String name : Commands.NAMES) {
            OptionSpec option = Commands.make(name, Terminal.NONE).spec().findOption("--format");
            if (option != null) {
                List<String> words = new ArrayList<>();
                option.completionCandidates().forEach(words::add);
                if (name.equals("pages")) {
                    assertThat(words).containsExactly("markdown", "html");
                    continue;
                }
                assertThat(words).as(name).containsAll(Format.offered().stream().map(Format::toString).toList());
                assertThat(option.description()[0]).as(name).startsWith("text (the default), json").endsWith(" or " + words.get(words.size() - 1) + ".");
            }
        }
    }
}
