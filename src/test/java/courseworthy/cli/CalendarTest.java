package courseworthy.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import courseworthy.ToolOutput;
import courseworthy.render.calendar.ReadCalendar;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import net.fortuna.ical4j.model.component.VEvent;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The checklist in a calendar: {@code --format ics}, read back by a library for iCalendar. */
class CalendarTest {

    private static final String COURSE = "course-profiles/heather-ridge.yaml";
    private static final String EVENT = "docs/examples/events/heather-ridge.yaml";

    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"checklist", "brief"})
    void thereIsAnEntryForEachSectionAndForTheStart(String command) {
        CommandRun ran = CommandRun.of(command, COURSE, "--event", EVENT, "--format", "ics");
        String list = CommandRun.of("checklist", COURSE, "--event", EVENT, "--format", "markdown").out();

        assertThat(ran.err()).isEmpty();
        List<VEvent> entries = new ReadCalendar(ran.out()).valid().events();
        List<String> sections = list.lines().filter(line -> line.startsWith("### ")).map(line -> line.substring(4) + ": Heather Ridge Marathon").toList();
        assertThat(sections).hasSizeGreaterThan(5);
        assertThat(entries).extracting(entry -> entry.getSummary().getValue()).containsAll(sections).contains("Start: Heather Ridge Marathon").hasSize(sections.size() + 1);
        assertThat(entries).allSatisfy(entry -> assertThat(entry.getAlarms()).hasSize(1));
        // 08:00 at two hours ahead of UTC.
        assertThat(ran.out()).contains("DTSTART:20260620T060000Z\r\n");
        assertThat(ran.out().split("\r\n")).allSatisfy(line -> assertThat(line.getBytes(StandardCharsets.UTF_8).length).isLessThanOrEqualTo(75));
    }

    /** Every check stands in the entry of its section. */
    @Test
    void nothingOfTheChecklistIsMissing() {
        String all = String.join("\n", new ReadCalendar(CommandRun.of("checklist", COURSE, "--event", EVENT, "--format", "ics").out()).events().stream()
                .map(entry -> entry.getDescription().getValue()).toList());
        String json = CommandRun.of("checklist", COURSE, "--event", EVENT, "--format", "json").out();
        List<String> checks = Pattern.compile("\"(?:do|find)\" : \"([^\"\\\\]+)\"").matcher(json).results().map(found -> found.group(1)).toList();
        assertThat(checks).hasSizeGreaterThan(80).allSatisfy(check -> assertThat(all).contains(check));
    }

    /** Whoever's advice it is, is named. */
    @Test
    void theSheetsInForceAreNamed() {
        String ics = CommandRun.of("checklist", COURSE, "--event", EVENT, "--sheet", "docs/examples/sheets/hill-country.yaml", "--format", "ics").out();
        assertThat(new ReadCalendar(ics).events()).anySatisfy(entry -> assertThat(entry.getDescription().getValue()).contains("With the advice of \"Hill country\""));
    }

    /** They stand with the ride, where the rider looks on the day. */
    @Test
    void notesOnTheRiderStandWithTheRide() throws IOException {
        String rider = Files.writeString(folder.resolve("bea.yaml"), "name: Bea\nmass: 58 kg\nnotes: Left wrist is sore.\n").toString();
        String ics = CommandRun.of("checklist", COURSE, "--event", EVENT, "--rider", rider, "--format", "ics").out();
        assertThat(new ReadCalendar(ics).events()).filteredOn(entry -> entry.getSummary().getValue().startsWith("Start: "))
                .singleElement().satisfies(entry -> assertThat(entry.getDescription().getValue()).contains("Notes on the rider: Left wrist is sore."));
    }

    /** A second import replaces the first: what changes with the forecast leaves each entry its name, another rider has entries apart. */
    @Test
    void entriesKeepTheirNameWhenTheForecastChanges() throws IOException {
        Path wet = Files.writeString(folder.resolve("wet.yaml"), Files.readString(Path.of(EVENT)).replaceFirst("forecast: .*", "forecast: {low: 1 C, high: 6 C, going: wet}"));
        List<String> dry = uids("--event", EVENT);

        assertThat(uids("--event", EVENT)).isEqualTo(dry).doesNotHaveDuplicates();
        assertThat(CommandRun.of("checklist", COURSE, "--event", wet.toString(), "--format", "ics").out()).isNotEqualTo(CommandRun.of("checklist", COURSE, "--event", EVENT, "--format", "ics").out());
        assertThat(uids("--event", wet.toString())).containsAnyElementsOf(dry);
        assertThat(uids("--event", EVENT, "--rider", "docs/examples/riders/sam-novice.yaml")).doesNotContainAnyElementsOf(dry);
        assertThat(uids("--event", EVENT, "--date", "2026-06-21")).doesNotContainAnyElementsOf(dry);
    }

    /** Calendars that hold an entry already take it anew where its SEQUENCE is higher: RFC 5546, section 2.1.5. */
    @Test
    void anEntryMadeOfAFileThatWasMendedIsTheNewerOne() throws IOException {
        Path event = Files.writeString(folder.resolve("event.yaml"), Files.readString(Path.of(EVENT)));
        Files.setLastModifiedTime(event, FileTime.from(Instant.parse("2030-03-01T12:00:00.250Z")));
        String first = CommandRun.of("checklist", COURSE, "--event", event.toString(), "--format", "ics").out();
        String again = CommandRun.of("checklist", COURSE, "--event", event.toString(), "--format", "ics").out();
        Files.setLastModifiedTime(event, FileTime.from(Instant.parse("2030-03-01T12:01:00Z")));
        String mended = CommandRun.of("checklist", COURSE, "--event", event.toString(), "--format", "ics").out();

        assertThat(again).isEqualTo(first).contains("\r\nDTSTAMP:20300301T120000Z\r\n");
        assertThat(sequences(first)).hasSize(1);
        assertThat(sequences(mended)).containsExactly(sequences(first).iterator().next() + 60);
    }

    /** Of a race of laps: when the rider comes by the pit stands with the ride, as in the JSON. */
    @ParameterizedTest
    @ValueSource(strings = {"checklist", "brief"})
    void whatIsTakenInThePitStandsWithTheRide(String command) throws IOException {
        String[] line = {command, "course-profiles/larch-common.yaml", "--event", "docs/examples/events/larch-common.yaml", "--format", "ics"};
        String ride = new ReadCalendar(CommandRun.of(line).out()).valid().events().stream().filter(entry -> entry.getSummary().getValue().startsWith("Start: ")).findFirst()
                .orElseThrow().getDescription().getValue();
        line[5] = "json";
        JsonNode passages = new ObjectMapper().readTree(CommandRun.of(line).out()).path("pits").path("places").path(0).path("passages");
        assertThat(passages).hasSizeGreaterThan(4);
        for (JsonNode each : passages) {
            long minutes = Math.round(14 * 60 + each.path("after_s").path("value").asDouble() / 60);
            assertThat(ride).contains("Pit, lap " + each.path("lap").asInt() + ", at ").contains(": " + minutes / 60 + ":" + String.format(Locale.ROOT, "%02d", minutes % 60));
        }
    }

    private static Set<Long> sequences(String file) {
        Set<Long> out = new TreeSet<>();
        Pattern.compile("\r\nSEQUENCE:(\\d+)\r\n").matcher(file).results().forEach(found -> out.add(Long.valueOf(found.group(1))));
        return out;
    }

    /** Every time that a calendar shows stands in the JSON of the same command. */
    @ParameterizedTest
    @ValueSource(strings = {"checklist COURSE --event EVENT", "brief COURSE --event EVENT", "season docs/examples --by-week"})
    void everyTimeIsInTheJson(String command) throws IOException {
        String[] line = (command.replace("COURSE", COURSE).replace("EVENT", EVENT) + " --format ics").split(" ");
        List<VEvent> shown = new ReadCalendar(new ToolOutput().run(line)).valid().events();
        line[line.length - 1] = "json";
        JsonNode calendar = new ObjectMapper().readTree(new ToolOutput().run(line)).path("calendar");
        ZoneId zone = calendar.path("zone").isNull() ? null : ZoneId.of(calendar.path("zone").asText());
        List<String> expected = new ArrayList<>();
        for (JsonNode each : calendar.path("entries")) {
            expected.add(each.path("what").asText() + " " + stamp(each.path("from").asText(), zone) + " " + stamp(each.path("to").asText(), zone) + " "
                    + (each.path("reminded").isNull() ? "" : Duration.between(LocalDateTime.parse(each.path("from").asText()), LocalDateTime.parse(each.path("reminded").asText()))));
        }
        List<String> found = new ArrayList<>();
        for (VEvent each : shown) {
            found.add(each.getSummary().getValue() + " " + value(each, "DTSTART") + " " + value(each, "DTEND") + " " + each.getAlarms().stream()
                    .map(alarm -> Duration.parse(alarm.getProperty("TRIGGER").orElseThrow().getValue()).toString()).collect(Collectors.joining()));
        }
        assertThat(found).isNotEmpty().isEqualTo(expected);
    }

    private static String value(VEvent event, String property) {
        return event.getProperty(property).orElseThrow().getValue();
    }

    /** A local time of JSON as RFC 5545 has it. */
    private static String stamp(String local, ZoneId zone) {
        if (!local.contains("T")) {
            return local.replace("-", "");
        }
        DateTimeFormatter form = DateTimeFormatter.ofPattern("uuuuMMdd'T'HHmmss", Locale.ROOT);
        LocalDateTime time = LocalDateTime.parse(local);
        return zone == null ? form.format(time) : form.format(time.atZone(zone).withZoneSameInstant(ZoneOffset.UTC)) + "Z";
    }

    private static List<String> uids(String... more) {
        String[] line = new String[4 + more.length];
        System.arraycopy(new String[] {"checklist", COURSE, "--format", "ics"}, 0, line, 0, 4);
        System.arraycopy(more, 0, line, 4, more.length);
        return new ReadCalendar(CommandRun.of(line).out()).uids();
    }

    @Test
    void anUnknownZoneLeavesTheTimesLocal() throws IOException {
        Path event = Files.writeString(folder.resolve("event.yaml"), "date: 2026-06-20\nstart: 09:30\n");
        List<VEvent> entries = new ReadCalendar(CommandRun.of("checklist", COURSE, "--event", event.toString(), "--format", "ics").out()).valid().events();
        assertThat(entries).allSatisfy(entry -> assertThat(entry.getProperty("DTSTART").orElseThrow().getValue()).matches("\\d{8}T\\d{6}"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "''               | --format ics: found neither a date nor a start | Give --date 2026-06-20, or write date: 2026-06-20 in the event. Write start: 09:00 in the event, and pass it with --event.",
        "date: 2026-06-20 | event.yaml: found no time of the start         | Write start: 09:00 in the event, and pass it with --event.",
        "start: 09:00     | event.yaml: found no date                      | Give --date 2026-06-20, or write date: 2026-06-20 in the event."})
    void withoutADayOrAStartNothingHasATime(String written, String found, String mend) throws IOException {
        Path event = Files.writeString(folder.resolve("event.yaml"), written + "\n");
        CommandRun ran = written.isEmpty() ? CommandRun.of("checklist", COURSE, "--format", "ics")
                : CommandRun.of("checklist", COURSE, "--event", event.toString(), "--format", "ics");
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err().replace(folder + "/", "")).isEqualTo(found + ", expected the day and the time of the start, from which a calendar counts\n    " + mend + "\n");
    }

    @ParameterizedTest
    @ValueSource(strings = {"--full", "--topic bike", "--part plan"})
    void aPartOfABriefHasNoCalendar(String option) {
        String[] words = option.split(" ");
        CommandRun ran = words.length == 1 ? CommandRun.of("brief", COURSE, "--event", EVENT, "--format", "ics", words[0])
                : CommandRun.of("brief", COURSE, "--event", EVENT, "--format", "ics", words[0], words[1]);
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).isEqualTo(words[0] + ": found --format ics beside it, expected text, markdown, html or json\n"
                + "    A calendar has the sections of the checklist, and no part alone: leave out " + words[0] + ".\n");
    }

    @Test
    void noOtherCommandOffersIt() {
        assertThat(CommandRun.of("gears", COURSE, "--format", "ics").code()).isEqualTo(2);
    }
}
