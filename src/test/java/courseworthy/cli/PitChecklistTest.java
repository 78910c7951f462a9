package courseworthy.cli;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.render.pdf.ReadPdf;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What waits in the pits of a lap race whose forecast may turn wet is on the checklist, whichever command and format writes it. */
class PitChecklistTest {

    private static final String WET_WHEELS = "Get wheels for the wet ready for the pit at the start of the lap";
    private static final String SPARE_WHEELS = "Get the spare wheels ready for the pit at the start of the lap";
    private static final String BOTTLES = "Fill the bottles for the pit at the start of the lap";
    private static final String OTHER_TYRE = "ront tyre tread all-round";

    @TempDir
    private Path folder;
    private String event;

    @BeforeEach
    void write() throws IOException {
        String text = Files.readString(Path.of("docs/examples/events/larch-common.yaml")).replace("going: dry,", "going: dry, or: {going: wet, low: 9 C, high: 13 C},");
        event = Files.writeString(folder.resolve("larch-common.yaml"), text).toString();
    }

    private CommandRun run(String command, String... more) {
        String[] line = {command, "course-profiles/larch-common.yaml", "--event", event, "--rider", "docs/examples/riders/kim-cross-country.yaml"};
        String[] all = java.util.stream.Stream.concat(java.util.Arrays.stream(line), java.util.Arrays.stream(more)).toArray(String[]::new);
        return CommandRun.of(all);
    }

    @ParameterizedTest
    @ValueSource(strings = {"text", "markdown", "html", "json", "ics"})
    void theChecklistHasThem(String format) {
        CommandRun ran = run("checklist", "--format", format);
        assertThat(ran.code()).isZero();
        String words = ran.out().replace("\r\n ", "").replaceAll("\\s+", " ").replace("\\,", ",");
        assertThat(words).contains(SPARE_WHEELS, WET_WHEELS, BOTTLES, OTHER_TYRE);
    }

    @Test
    void theBriefHasThemToo() {
        assertThat(run("brief", "--full").out().replaceAll("\\s+", " ")).contains(SPARE_WHEELS, WET_WHEELS, BOTTLES, OTHER_TYRE);
    }

    @Test
    void thePrintedChecklistHasThemOnTwoSides() throws IOException {
        Path file = folder.resolve("checklist.pdf");
        assertThat(run("checklist", "--workshop", "docs/examples/workshops/cellar.yaml", "--format", "pdf", "-o", file.toString()).err()).isEmpty();
        ReadPdf read = new ReadPdf(Files.readAllBytes(file));
        assertThat(read.pages()).isEqualTo(2);
        assertThat(read.text().replaceAll("\\s+", " ")).contains(SPARE_WHEELS, WET_WHEELS, BOTTLES);
        assertThat(read.faults()).isEmpty();
    }

    /** A forecast that does not turn asks for no wheels for the wet. */
    @Test
    void withoutAnotherForecastThereAreNoWheelsForTheWet() {
        String event = "docs/examples/events/larch-common.yaml";
        assertThat(CommandRun.of("checklist", "course-profiles/larch-common.yaml", "--event", event).out().replaceAll("\\s+", " ")).contains(SPARE_WHEELS)
                .doesNotContain("wheels for the wet");
    }
}
