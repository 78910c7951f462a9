package courseworthy.cli;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.render.pdf.ReadPdf;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** {@code --format pdf}, read back. */
class PdfTest {

    private static final String COURSE = "course-profiles/heather-ridge.yaml";
    private static final String EVENT = "docs/examples/events/heather-ridge.yaml";
    private static final String RIDER = "docs/examples/riders/kim-cross-country.yaml";
    private static final String WORKSHOP = "docs/examples/workshops/cellar.yaml";

    @TempDir
    private Path folder;

    private ReadPdf made(String... line) throws IOException {
        Path file = folder.resolve("out.pdf");
        String[] all = Stream.concat(Stream.of(line), Stream.of("--format", "pdf", "-o", file.toString())).toArray(String[]::new);
        CommandRun ran = CommandRun.of(all);
        assertThat(ran.err()).isEmpty();
        assertThat(ran.code()).isZero();
        assertThat(ran.out()).isEmpty();
        return new ReadPdf(Files.readAllBytes(file));
    }

    /** The longest list there is: with the swaps of a build. */
    @Test
    void aChecklistTakesTwoSidesAndLosesNothing() throws IOException {
        ReadPdf read = made("checklist", COURSE, "--event", EVENT, "--rider", RIDER, "--workshop", WORKSHOP);
        String json = CommandRun.of("checklist", COURSE, "--event", EVENT, "--rider", RIDER, "--workshop", WORKSHOP, "--format", "json").out();
        List<String> said = Pattern.compile("\"(?:do|find)\" : \"([^\"\\\\]+)\"").matcher(json).results().map(found -> found.group(1)).toList();
        String text = read.text().replaceAll("\\s+", " ");

        assertThat(read.pages()).isEqualTo(2);
        assertThat(said).hasSizeGreaterThan(120).allSatisfy(each -> assertThat(text).contains(each));
        assertThat(text).contains("Heather Ridge Marathon", "20 June 2026", "for Kim", "Kim, Heather Ridge Marathon, 20 June 2026 made from sha256", "side 2 of 2");
        assertThat(read.faults()).isEmpty();
    }

    static Stream<String> events() throws IOException {
        return Files.list(Path.of("docs/examples/events")).map(file -> file.getFileName().toString()).sorted();
    }

    @ParameterizedTest
    @MethodSource("events")
    void noChecklistTakesMoreThanTwoSides(String event) throws IOException {
        ReadPdf read = made("checklist", "course-profiles/" + event, "--event", "docs/examples/events/" + event, "--paper", "letter");
        assertThat(read.pages()).isBetween(1, 2);
        assertThat(read.width()).isEqualTo(612);
    }

    @ParameterizedTest
    @MethodSource("events")
    void aBriefTakesTwoSides(String event) throws IOException {
        ReadPdf read = made("brief", "course-profiles/" + event, "--event", "docs/examples/events/" + event, "--rider", RIDER);
        assertThat(read.pages()).isEqualTo(2);
        assertThat(read.text()).contains("In short", "What to set", "Plan for the day", "For the top tube: cut out, 75 by 105 mm", "side 1 of 2");
    }

    @Test
    void notesOnTheRiderArePrinted() throws IOException {
        String rider = Files.writeString(folder.resolve("bea.yaml"), "name: Bea\nmass: 58 kg\nnotes: Left wrist is sore.\n").toString();
        assertThat(made("brief", COURSE, "--event", EVENT, "--rider", rider).text()).contains("Notes on the rider: Left wrist is sore.");
        assertThat(made("checklist", COURSE, "--event", EVENT, "--rider", rider).text()).contains("Notes on the rider: Left wrist is sore.");
    }

    /** Nothing of the parts that are printed is lost, and the plan on the card is that of the page. */
    @Test
    void aBriefHasItsSetUpAndItsPlan() throws IOException {
        String[] line = {"brief", COURSE, "--event", EVENT, "--rider", RIDER, "--workshop", WORKSHOP};
        ReadPdf read = made(line);
        for (String part : List.of("settings", "plan", "forecast", "leave-alone")) {
            String said = CommandRun.of(Stream.concat(Stream.of(line), Stream.of("--part", part)).toArray(String[]::new)).out();
            Set<String> words = ReadPdf.words(said.substring(said.indexOf("\n\n") + 2));
            // Headings are in capitals there, and bullets are other signs.
            words.removeIf(word -> word.matches("[^a-z0-9]+"));
            assertThat(words).hasSizeGreaterThan(20);
            assertThat(read.words()).containsAll(words);
        }
        assertThat(read.pages()).isEqualTo(2);
        assertThat(read.faults()).isEmpty();
        assertThat(read.text()).contains("62.0 12:03 finish", "Gears 34x50 to 34x10");
    }

    @ParameterizedTest
    @ValueSource(strings = {"--full", "--part", "--topic"})
    void aPartOfABriefIsNotPrinted(String option) {
        CommandRun ran = option.equals("--full") ? CommandRun.of("brief", COURSE, "--format", "pdf", option) : CommandRun.of("brief", COURSE, "--format", "pdf", option, "plan");
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).isEqualTo(option + ": found --format pdf beside it, expected text, markdown, html or json\n"
                + "    A printed brief has two sides, and no part alone: leave out " + option + ".\n");
    }

    @ParameterizedTest
    @ValueSource(strings = {"checklist", "brief"})
    void theSheetsInForceAreNamed(String command) throws IOException {
        assertThat(made(command, COURSE, "--event", EVENT, "--sheet", "docs/examples/sheets/hill-country.yaml").text().replaceAll("\\s+", " ")).contains("With the advice of \"Hill country\"");
    }

    @Test
    void theSameInputGivesTheSameBytes() throws IOException {
        assertThat(made("checklist", COURSE, "--event", EVENT).bytes()).isEqualTo(made("checklist", COURSE, "--event", EVENT).bytes())
                .isNotEqualTo(made("checklist", COURSE).bytes());
    }

    /** Bytes that are no text must not be taken for it. */
    @Test
    void standardOutputTakesItAsItIs() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        int code = CommandRunner.run(new String[] {"checklist", COURSE, "--event", EVENT, "--format", "pdf"}, out, new ByteArrayOutputStream(), Terminal.NONE);
        assertThat(code).isZero();
        assertThat(out.toByteArray()).isEqualTo(made("checklist", COURSE, "--event", EVENT).bytes());
    }

    @Test
    void aTerminalDoesNotTakeIt() {
        System.setProperty("courseworthy.tty", "1");
        try {
            CommandRun ran = CommandRun.of("checklist", COURSE, "--format", "pdf");
            assertThat(ran.code()).isEqualTo(2);
            assertThat(ran.out()).isEmpty();
            assertThat(ran.err()).isEqualTo("--format pdf: found no -o FILE, expected a file to write to\n    PDF is no text for a terminal: add -o checklist.pdf, say.\n");
        } finally {
            System.clearProperty("courseworthy.tty");
        }
    }

    @Test
    void onlyPdfHasASizeOfPaper() {
        CommandRun ran = CommandRun.of("checklist", COURSE, "--paper", "letter");
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).isEqualTo("--paper: found --format text beside it, expected --format pdf\n    Only PDF has a size of paper.\n");
        assertThat(CommandRun.of("checklist", COURSE, "--format", "pdf", "--paper", "a5").err()).startsWith("--paper: found \"a5\", expected a4 or letter\n");
    }
}
