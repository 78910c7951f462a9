package courseworthy.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import courseworthy.render.calendar.ReadCalendar;
import courseworthy.report.json.OutputSchema;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import net.fortuna.ical4j.model.component.VEvent;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The checklist of a race over several days in a calendar, read back by a library for iCalendar. */
class StagesCalendarTest {

    private static final String EVENT = "docs/examples/events/three-becks.yaml";
    private static final List<String> RACE = List.of("stages", EVENT, "--rider", "docs/examples/riders/kim-cross-country.yaml");

    @TempDir
    private Path folder;

    /** Once before the race, again for each of three stages; starts at nine, one hour ahead of UTC. */
    @Test
    void eachStageHasItsStartAndItsSections() {
        CommandRun ran = run(RACE, "--format", "ics");
        assertThat(ran.err()).isEmpty();
        List<String> titles = new ReadCalendar(ran.out()).valid().events().stream().map(entry -> entry.getSummary().getValue()).toList();
        assertThat(titles).doesNotHaveDuplicates().contains("Week before the race, 1 of 2: Three Becks");
        for (int stage = 1; stage <= 3; stage++) {
            String n = String.valueOf(stage);
            assertThat(titles).contains("Start of stage " + n + ": Three Becks", "Morning of stage " + n + ": Three Becks", "At the start of stage " + n + ": Three Becks",
                    "After stage " + n + ": Three Becks").anyMatch(title -> title.startsWith("Evening before stage " + n));
            assertThat(ran.out()).contains("DTSTART:2026080" + (4 + stage) + "T080000Z\r\n");
        }
        assertThat(ran.out().split("\r\n")).allSatisfy(line -> assertThat(line.getBytes(StandardCharsets.UTF_8).length).isLessThanOrEqualTo(75));
    }

    /** Evenings end at nine of the day before each stage, mornings an hour before its start. */
    @Test
    void workIsDoneWhenItsStageNeedsIt() {
        String ics = run(RACE, "--format", "ics").out();
        for (VEvent entry : new ReadCalendar(ics).events()) {
            String title = entry.getSummary().getValue();
            String end = entry.getDateTimeEnd().getValue();
            if (title.startsWith("Evening before stage 2, 2 of 2")) {
                assertThat(end).isEqualTo("20260805T200000Z");
            } else if (title.startsWith("Morning of stage 3")) {
                assertThat(end).isEqualTo("20260807T070000Z");
            } else if (title.startsWith("Week before the race, 2 of 2")) {
                assertThat(end).isEqualTo("20260730T200000Z");
            }
        }
        assertThat(new ReadCalendar(ics).events()).extracting(each -> each.getSummary().getValue()).anyMatch(each -> each.startsWith("Evening before stage 2, 2 of 2"))
                .anyMatch(each -> each.startsWith("Morning of stage 3")).anyMatch(each -> each.startsWith("Week before the race, 2 of 2"));
    }

    /** Every check of the race's list stands in an entry, and a second run names each entry the same, so that it replaces the first. */
    @Test
    void nothingIsMissingAndEntriesKeepTheirNames() {
        List<VEvent> entries = new ReadCalendar(run(RACE, "--format", "ics").out()).events();
        String all = String.join("\n", entries.stream().map(entry -> entry.getDescription().getValue()).toList());
        List<String> checks = new ArrayList<>();
        for (JsonNode section : OutputSchema.tree(run(RACE, "--format", "json").out()).get("checklist")) {
            section.get("items").forEach(item -> checks.add(item.get("do").asText()));
        }
        assertThat(checks).hasSizeGreaterThan(30).allSatisfy(check -> assertThat(all).contains(check));
        assertThat(uids(entries)).doesNotHaveDuplicates().isEqualTo(uids(new ReadCalendar(run(RACE, "--format", "ics").out()).events()));
    }

    @Test
    void whatHasNoTimeOrIsOneStageIsRefused() throws IOException {
        assertThat(run(RACE, "--format", "ics", "--stage", "2")).isEqualTo(new CommandRun(2, "",
                "--format ics: found --stage beside it, expected no --stage: the calendar holds all stages\n"));
        String event = Files.readString(Path.of(EVENT)).replaceFirst("(?m)^start: .*\n", "").replace("../stages/", Path.of("docs/examples/stages").toAbsolutePath() + "/");
        String file = Files.writeString(folder.resolve("race.yaml"), event).toString();
        CommandRun untimed = CommandRun.atHome("stages", file, "--format", "ics");
        assertThat(untimed.code()).isEqualTo(2);
        assertThat(untimed.out()).isEmpty();
        assertThat(untimed.err()).contains("no time of the start");
    }

    private static List<String> uids(List<VEvent> entries) {
        return entries.stream().map(entry -> entry.getUid().get().getValue()).toList();
    }

    private static CommandRun run(List<String> words, String... more) {
        List<String> all = new ArrayList<>(words);
        all.addAll(List.of(more));
        return CommandRun.atHome(all.toArray(String[]::new));
    }
}
