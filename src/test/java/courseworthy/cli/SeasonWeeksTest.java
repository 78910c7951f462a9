package courseworthy.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import courseworthy.ToolOutput;
import courseworthy.render.calendar.ReadCalendar;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The example season week by week, held against what one person can do in an evening, and seasons that have too little for it. */
class SeasonWeeksTest {

    private static final String EXAMPLE = "docs/examples";

    private static JsonNode season;

    @TempDir
    private Path folder;

    @BeforeAll
    static void workOut() throws IOException {
        season = new ObjectMapper().readTree(weeks("json"));
    }

    private static String weeks(String format) {
        return new ToolOutput().run("season", EXAMPLE, "--by-week", "--format", format);
    }

    /** Both riders share one stand: on no evening is there more work than the hour and a half that the season's file gives, and no job begins before another is done. */
    @Test
    void anEveningHoldsWhatOnePersonCanDo() {
        Map<String, Integer> minutes = new HashMap<>();
        Map<String, TreeMap<String, Integer>> begun = new HashMap<>();
        for (JsonNode week : season.get("weeks")) {
            for (JsonNode entry : week.get("entries")) {
                for (JsonNode step : entry.get("steps")) {
                    String date = entry.get("date").asText();
                    minutes.merge(date, step.get("work_s").asInt() / 60, Integer::sum);
                    assertThat(begun.computeIfAbsent(date, each -> new TreeMap<>()).put(step.get("begin").asText(), step.get("work_s").asInt() / 60)).as(step.toString()).isNull();
                    assertThat(entry.get("due").isNull() || entry.get("due").asText().compareTo(date) > 0 || dueBefore(entry)).as(entry.toString()).isTrue();
                }
            }
        }
        assertThat(minutes).hasSizeGreaterThan(15).allSatisfy((date, work) -> assertThat(work).as(date).isLessThanOrEqualTo(90));
        begun.forEach((date, steps) -> {
            int free = 0;
            for (Map.Entry<String, Integer> step : steps.entrySet()) {
                int begin = Integer.parseInt(step.getKey().substring(0, 2)) * 60 + Integer.parseInt(step.getKey().substring(3));
                assertThat(begin).as(date + " " + step.getKey()).isGreaterThanOrEqualTo(free);
                free = begin + step.getValue();
            }
        });
    }

    /** Whether it was due when the plan began, on the day after the last recording of the log, or it says that it is late. */
    private static boolean dueBefore(JsonNode entry) {
        return entry.get("kind").asText().equals("service") && (entry.get("due").asText().equals("2026-04-25") || entry.get("late").asBoolean());
    }

    /** Every job of service is on an evening of its week, in every format, with its clock in the calendar. */
    @Test
    void servicesAreOnEvenings() {
        int services = 0;
        String calendar = weeks("ics");
        List<String> rows = weeks("csv").lines().toList();
        for (JsonNode week : season.get("weeks")) {
            for (JsonNode entry : week.get("entries")) {
                if (entry.get("kind").asText().equals("service")) {
                    JsonNode step = entry.get("steps").get(0);
                    String date = entry.get("date").asText();
                    services++;
                    assertThat(entry.get("free_s").asInt()).isEqualTo(90 * 60);
                    assertThat(calendar).contains("DTSTART:" + date.replace("-", "") + "T" + step.get("begin").asText().replace(":", "") + "00\r\n");
                    assertThat(rows).anyMatch(line -> line.contains("," + date + "," + entry.get("rider").asText() + ",service,")
                            && line.contains(entry.get("service").asText() + " ("));
                }
            }
        }
        assertThat(services).isGreaterThan(20);
        assertThat(weeks("text")).contains("Service: stout fork 120:");
        assertThat(weeks("markdown")).contains("Service: stout fork 120: change oil and seals, about 60 min, by Monday 29 June.");
        assertThat(Jsoup.parse(weeks("html")).text().replace('\u202f', ' ')).contains("Service: stout fork 120: change oil and seals, about 60 min, by Monday 29 June.");
    }

    /** Every week from the first to the last is there, from Monday to Sunday, with each start in the week of its day. */
    @Test
    void weeksFollowOneAnother() {
        LocalDate last = null;
        int starts = 0;
        for (JsonNode week : season.get("weeks")) {
            LocalDate monday = LocalDate.parse(week.get("from").asText());
            assertThat(last == null || last.plusWeeks(1).equals(monday)).as(week.get("from").asText()).isTrue();
            assertThat(monday.getDayOfWeek().getValue()).isEqualTo(1);
            assertThat(week.get("to").asText()).isEqualTo(monday.plusDays(6).toString());
            for (JsonNode entry : week.get("entries")) {
                boolean service = entry.get("kind").asText().equals("service");
                assertThat(entry.get("date").isNull()).as("only what finds no evening has its week alone: " + entry).isEqualTo(service && entry.get("steps").isEmpty());
                assertThat(entry.get("date").isNull() ? monday.toString() : entry.get("date").asText()).isBetween(monday.toString(), monday.plusDays(6).toString());
                starts += entry.get("kind").asText().equals("start") ? 1 : 0;
            }
            last = monday;
        }
        assertThat(starts).isEqualTo(9);
    }

    /** The bike leaves the day before, is home the day after, and nothing is done to it in between or on the evening of packing. */
    @Test
    void aBikeThatIsAwayIsNotWorkedOn() {
        int seen = 0;
        for (JsonNode week : season.get("weeks")) {
            for (JsonNode entry : week.get("entries")) {
                String kind = entry.get("kind").asText();
                String date = entry.get("date").asText();
                if (kind.equals("out") || kind.equals("home")) {
                    assertThat(date).isEqualTo(kind.equals("out") ? "2026-07-17" : "2026-07-19");
                    assertThat(entry.get("bike").asText()).isEqualTo("borrowed bike");
                    assertThat(entry.get("lent")).extracting(each -> each.get("part").asText()).contains("power pedals");
                    seen++;
                }
                assertThat(date.compareTo("2026-07-16") >= 0 && date.compareTo("2026-07-19") <= 0 && (kind.equals("work") || kind.equals("service"))).as(entry.toString()).isFalse();
            }
        }
        assertThat(seen).isEqualTo(2);
    }

    @Test
    void theFormatsAgree() {
        int entries = 0;
        for (JsonNode week : season.get("weeks")) {
            entries += week.get("entries").size();
        }
        assertThat(weeks("csv").lines()).hasSize(entries + 1);
        String calendar = weeks("ics");
        assertThat(calendar.split("BEGIN:VEVENT")).hasSize(entries + 1);
        assertThat(new ReadCalendar(calendar).valid().uids()).hasSize(entries).doesNotHaveDuplicates().isEqualTo(new ReadCalendar(weeks("ics")).uids());
        assertThat(calendar).contains("DTSTART;VALUE=DATE:20260717\r\nDTEND;VALUE=DATE:20260718\r\n", "DTSTART:20260620T080000\r\n");
        assertThat(weeks("text")).contains("15 to 21 June", "Sat 20", "Time for work: 90 min on each evening.");
        assertThat(weeks("markdown")).contains("| 15 to 21 June |", "| Mon 15 |");
    }

    @Test
    void whatIsMissingIsSaid() throws IOException {
        Files.copy(Path.of(EXAMPLE, "workshops", "cellar.yaml"), folder.resolve("w.yaml"));
        Files.writeString(folder.resolve("e.yaml"), "name: Heath\ndate: 2026-06-20\n");
        Files.writeString(folder.resolve("season.yaml"), "riders: [{name: Ann, workshop: w.yaml}]\nevents:\n  - {course: heather-ridge, event: e.yaml}\n"
                + "  - {course: fernbrake, date: 2026-06-27}\n");
        String home = System.setProperty("courseworthy.home", Path.of("").toAbsolutePath().toString());
        String at = folder + "/season.yaml";
        assertThat(CommandRun.of("season", folder.toString(), "--by-week")).isEqualTo(new CommandRun(2, "",
                at + ": time for work: found nothing, expected the time for work on each evening, from which a plan by week is made\n"
                        + "    Add a line \"time for work: 1:30 h\".\n"
                        + at + ":3: start: found no time of the start of this event, expected the time of every start, from which a plan by week counts\n"
                        + "    Write \"start: 09:00\" in e.yaml.\n"
                        + at + ":4: start: found no time of the start of this event, expected the time of every start, from which a plan by week counts\n"
                        + "    Name a file with \"event: ...\" and write \"start: 09:00\" in it.\n"));
        assertThat(CommandRun.of("season", folder.toString(), "--format", "ics")).isEqualTo(new CommandRun(2, "",
                "--format ics: found no --by-week, expected --by-week beside it: a calendar holds the season day by day\n"));
        if (home == null) {
            System.clearProperty("courseworthy.home");
        } else {
            System.setProperty("courseworthy.home", home);
        }
    }

    /** A tyre takes 18 min (the workshop's file, or practice), more than evenings of a quarter of an hour have. */
    @Test
    void workLongerThanAnEveningSaysWhatWouldDo() throws IOException {
        Files.copy(Path.of(EXAMPLE, "workshops", "cellar.yaml"), folder.resolve("w.yaml"));
        Files.writeString(folder.resolve("w.yaml"), Files.readString(folder.resolve("w.yaml")).replaceAll("(?m)^log: .*$", ""));
        Files.copy(Path.of(EXAMPLE, "riders", "joss-steel.yaml"), folder.resolve("joss.yaml"));
        Files.copy(Path.of(EXAMPLE, "events", "quern-hills.yaml"), folder.resolve("e.yaml"));
        Files.copy(Path.of("course-profiles", "quern-hills.yaml"), folder.resolve("c.yaml"));
        for (String free : List.of("0:15 h", "2:00 h")) {
            Files.writeString(folder.resolve("season.yaml"), "riders: [{name: Joss, workshop: w.yaml, rider: joss.yaml}]\ntime for work: " + free
                    + "\nevents:\n  - {course: c.yaml, event: e.yaml}\n");
            CommandRun ran = CommandRun.of("season", folder.toString(), "--by-week", "--format", "markdown");
            assertThat(ran.code()).as(ran.err()).isZero();
            assertThat(ran.out().contains("of 15 free")).isEqualTo(free.equals("0:15 h"));
            assertThat(ran.out().contains("takes longer than an evening has: give it a free day in \"time for work\"")).isEqualTo(free.equals("0:15 h"));
        }
    }

    /** Without a priority Ida gets the bike that both want, since all lose least so; the rider of the higher one gets it whatever the other loses. */
    @Test
    void theRiderOfHigherPriorityGetsTheBike() throws IOException {
        for (String file : List.of("workshops/cellar", "events/heather-ridge", "riders/ida-hardtail", "riders/joss-steel")) {
            Files.copy(Path.of(EXAMPLE, file + ".yaml"), folder.resolve(file.substring(file.indexOf('/') + 1) + ".yaml"));
        }
        Files.writeString(folder.resolve("season.yaml"), """
                riders:
                  - {name: Ida, rider: ida-hardtail.yaml, workshop: cellar.yaml, priority: 2}
                  - {name: Joss, rider: joss-steel.yaml, workshop: cellar.yaml, priority: 1}
                events:
                  - {course: heather-ridge, event: heather-ridge.yaml, date: 2026-06-20}
                """);
        JsonNode planned = new ObjectMapper().readTree(new ToolOutput().season(folder.toString(), Format.JSON));
        assertThat(planned.get("rides")).filteredOn(each -> each.get("rider").asText().equals("Joss")).singleElement()
                .satisfies(each -> assertThat(each.get("build").get("bike").asText()).isEqualTo("borrowed bike"));
        assertThat(planned.get("conflicts").get(0).get("choices")).hasSize(1);
    }
}
