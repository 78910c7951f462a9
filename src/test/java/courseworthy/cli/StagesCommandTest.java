package courseworthy.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import courseworthy.render.pdf.ReadPdf;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command for a race over several days. */
class StagesCommandTest {

    private static final String RACE = "docs/examples/events/three-becks.yaml";
    private static final String IDA = "docs/examples/riders/ida-hardtail.yaml";
    private static final String CELLAR = "docs/examples/workshops/cellar.yaml";
    private static final String KIM = "docs/examples/riders/kim-cross-country.yaml";

    @TempDir
    private Path folder;

    private static CommandRun run(String... words) {
        return CommandRun.atHome(words);
    }

    @Test
    void textFitsATerminal() {
        CommandRun ran = run("stages", RACE, "--rider", KIM);
        assertThat(ran.err()).isEmpty();
        assertThat(ran.out()).startsWith("Three Becks ").contains("\nONE SET-UP FOR ALL STAGES\n", "\nDAY BY DAY\n", "\nEVENING BY EVENING\n", "\nWHAT WEARS\n", "\nBAG FOR THE RACE\n");
        assertThat(ran.out().lines()).allMatch(line -> line.codePointCount(0, line.length()) <= 80);
        String part = run("stages", RACE, "--rider", KIM, "--part", "bag").out();
        assertThat(part).contains("BAG FOR THE RACE").doesNotContain("DAY BY DAY");
        assertThat(run("stages", RACE, "--rider", KIM, "--format", "markdown").out()).startsWith("# Three Becks").contains("## Day by day");
        assertThat(run("stages", RACE, "--rider", KIM, "--format", "html").out()).contains("<title>Three Becks");
    }

    private static JsonNode json(String event) throws Exception {
        CommandRun ran = run("stages", event, "--rider", IDA, "--workshop", CELLAR, "--format", "json");
        assertThat(ran.err()).isEmpty();
        return new ObjectMapper().readTree(ran.out());
    }

    /** Each day's line, what is set that day, what wears, and every item of the checklist, as they stand in the JSON of the same race. */
    @Test
    void thePdfSaysWhatTheJsonSays() throws Exception {
        Path file = folder.resolve("race.pdf");
        assertThat(run("stages", RACE, "--rider", IDA, "--workshop", CELLAR, "--format", "pdf", "-o", file.toString()).err()).isEmpty();
        String text = new ReadPdf(Files.readAllBytes(file)).text().replace('\u202f', ' ').replaceAll("\\s+", " ");
        Set<String> words = ReadPdf.words(plain(text));
        JsonNode race = json(RACE);
        for (JsonNode day : race.get("days")) {
            String date = LocalDate.parse(day.get("date").asText()).format(DateTimeFormatter.ofPattern("EEEE d MMMM", Locale.ENGLISH));
            long minutes = Math.round(day.get("riding_s").get("value").asDouble() / 60);
            String line = String.format(Locale.ROOT, "%s %s %.1f %d:%02d", date, day.get("course").asText(), day.get("distance_m").asDouble() / 1000, minutes / 60, minutes % 60);
            assertThat(words).as("stage %s", day.get("stage")).contains(plain(line).split(" "));
            for (JsonNode decision : day.get("decisions")) {
                if (decision.get("topic").asText().matches("front tyre pressure|rear tyre pressure|water|clothing|lubricant")) {
                    assertThat(words).as(decision.get("topic").asText()).contains(plain(decision.get("text").asText()).split(" "));
                }
            }
        }
        race.get("bag").forEach(item -> assertThat(words).contains(plain(item.get("item").asText()).split(" ")));
        race.get("topics").forEach(topic -> assertThat(words).contains(plain(topic.get("text").asText()).split(" ")));
        int items = 0;
        for (JsonNode section : race.get("checklist")) {
            for (JsonNode item : section.get("items")) {
                assertThat(text.replace(" ", "")).contains(item.get("do").asText().replace(" ", ""));
                items++;
            }
        }
        assertThat(items).isGreaterThan(50);
    }

    private static String plain(String text) {
        return text.replaceAll("[,;()]", " ").replaceAll("\\s+", " ").strip();
    }

    /** A rider ticks them on the page: each item of the checklist of the JSON has a box, in the same order. */
    @Test
    void thePageHasABoxForEachItemOfTheChecklist() throws Exception {
        Document page = Jsoup.parse(run("stages", RACE, "--rider", IDA, "--workshop", CELLAR, "--format", "html").out());
        List<String> expected = new ArrayList<>();
        json(RACE).get("checklist").forEach(section -> section.get("items").forEach(item -> expected.add(item.get("do").asText())));
        List<String> shown = page.select("#checklist label").eachText();
        assertThat(shown).hasSameSizeAs(expected);
        for (int i = 0; i < expected.size(); i++) {
            assertThat(shown.get(i).replace('\u202f', ' ')).contains(expected.get(i));
        }
    }

    /** Nothing of a day's own checklist is left out of that of the race: each rule that asks for something on some day asks for it there. */
    @Test
    void theChecklistOfTheRaceHasAllOfEachDay() throws Exception {
        Set<String> rules = new TreeSet<>();
        JsonNode race = json(RACE);
        race.get("checklist").forEach(section -> section.get("items").forEach(item -> rules.add(item.get("rule").asText())));
        for (int stage = 1; stage <= 3; stage++) {
            JsonNode brief = new ObjectMapper().readTree(run("stages", RACE, "--rider", IDA, "--workshop", CELLAR, "--stage", "" + stage, "--format", "json").out());
            Set<String> own = new TreeSet<>();
            brief.get("checklist").forEach(section -> section.get("items").forEach(item -> own.add(item.get("rule").asText())));
            assertThat(own).hasSizeGreaterThan(30);
            assertThat(rules).as("stage %d", stage).containsAll(own);
        }
        assertThat(run("stages", RACE, "--rider", IDA, "--part", "checklist").out()).contains("Stage 3: fit the mudguard", "\nEvening before each stage", "\nMorning of each stage");
        assertThat(run("stages", RACE, "--rider", IDA).out()).contains("add '--part checklist' to this command").doesNotContain("Morning of each stage");
    }

    private Path race(String changes) throws Exception {
        String written = Files.readString(Path.of(RACE)).replace("[tyres, wheels]", changes).replace("../stages/", Path.of("docs/examples/stages").toAbsolutePath() + "/");
        return Files.writeString(folder.resolve("bikes.yaml"), written);
    }

    /** The smooth first day is faster on the gravel bike: where the event lets the bike be changed, it is ridden there, unless the work takes too long. */
    @Test
    void anotherBikeIsRiddenWhereTheEventAllowsIt() throws Exception {
        String event = race("[bike]").toString();
        JsonNode race = json(event);
        assertThat(race.get("other_bikes")).hasSize(1);
        JsonNode other = race.get("other_bikes").get(0);
        assertThat(other.get("kind").asText()).isEqualTo("gravel");
        assertThat(other.get("stages")).extracting(JsonNode::asInt).containsExactly(1);
        assertThat(race.get("builds")).extracting(each -> each.get("build").get("bike").asText()).containsExactly("borrowed bike", "steel bike");
        Set<String> mounted = new TreeSet<>();
        race.get("builds").forEach(each -> each.get("build").get("parts").forEach(part -> assertThat(mounted.add(part.get("part").asText())).as("%s on two bikes", part).isTrue()));
        JsonNode change = race.get("changes").get(0);
        assertThat(change.get("work").asText()).isEqualTo("bike");
        assertThat(change.get("before_stage").asInt()).isEqualTo(2);
        JsonNode one = json(RACE);
        assertThat(change.get("returns_s").get("value").asDouble()).as("as much as the one bike loses on that day")
                .isCloseTo(one.get("topics").get(0).get("costs_s").get("value").asDouble(), within(1.0)).isGreaterThan(change.get("minutes").asDouble());
        String first = run("stages", event, "--rider", IDA, "--workshop", CELLAR, "--stage", "1", "--format", "json").out();
        assertThat(new ObjectMapper().readTree(first).get("build").get("bike").asText()).isEqualTo("steel bike");
        assertThat(json(race("[bike]\ntime to change: {bike: 9:00 h}").toString()).get("other_bikes")).isEmpty();
        assertThat(one.get("other_bikes")).isEmpty();
    }

    @Test
    void aStageIsABriefOnTheSetUpOfTheRace() {
        String first = run("stages", RACE, "--rider", KIM, "--stage", "1").out();
        assertThat(first).startsWith("Three Becks, day one").contains("rear 110 mm").doesNotContain("set up for the day alone");
        String alone = run("brief", "docs/examples/stages/three-becks-one.yaml", "--event", RACE, "--rider", KIM, "--full").out().replaceAll("\\s+", " ");
        assertThat(alone).contains("rear 100 mm", "This is stage 1 of 3, set up for the day alone. One set-up for all days: courseworthy stages " + RACE);
    }

    /** Gears by their teeth in every part; sealant that goes in with a tyre does not fall due; no job without its part. */
    @Test
    void itsPartsAgree() {
        String race = run("stages", RACE, "--rider", IDA, "--workshop", CELLAR).out().replaceAll("\\s+", " ");
        assertThat(race).contains("hardest gear 28x10 (2.80) (recommended 34x10 (3.40))", "light wheel sealant front (new, with the tyre)", "the navigation device, electronic shifting and the power meter if it is rechargeable")
                .doesNotContain("3.400", "sealant front, may be due", "sealant front: top up", ": nothing;", "0 may fall due", "least that it lasts");
        assertThat(run("stages", RACE, "--rider", IDA, "--workshop", CELLAR, "--format", "markdown").out()).contains("borrowed crank: service the bottom bracket |");
        assertThat(run("stages", RACE, "--rider", IDA, "--stage", "2").out()).containsPattern("Gears +34x52 to 34x10").doesNotContain("3.400");
    }

    @Test
    void aSlipIsSaidInFull() throws Exception {
        assertThat(run("stages", "docs/examples/events/fernbrake.yaml").err()).isEqualTo("docs/examples/events/fernbrake.yaml: stages: found an event of one day, "
                + "expected stages, each with its course and date\n    For one day: \"courseworthy brief COURSE --event docs/examples/events/fernbrake.yaml\".\n");
        assertThat(run("stages", RACE, "--stage", "4").err()).isEqualTo("--stage: found \"4\", expected a stage from 1 to 3\n");
        assertThat(run("stages", RACE, "--stage", "1", "--part", "bag").err()).startsWith("--part: found --stage beside it, expected text, markdown or html of the whole race");
        assertThat(run("brief", "fernbrake", "--event", RACE).err()).startsWith("--event: found a race whose stages are on other courses than fernbrake, expected the course of one of its stages: ");
        Path twice = Files.writeString(folder.resolve("twice.yaml"), "stages:\n  - {course: three-becks, date: 2026-08-05}\n  - {course: three-becks, date: 2026-08-06}\n");
        assertThat(run("brief", "three-becks", "--event", twice.toString(), "--date", "2026-08-09").err())
                .isEqualTo("--date: found no stage on this course on 2026-08-09, expected the day of a stage on it: 2026-08-05, 2026-08-06\n");
        assertThat(run("brief", "three-becks", "--event", twice.toString(), "--date", "2026-08-06").out()).contains("6 August 2026");
        assertThat(run("brief", "three-becks", "--event", RACE, "--date", "2026-08-09").out()).contains("9 August 2026");
        Path lost = Files.writeString(folder.resolve("lost.yaml"), "stages:\n  - {course: nowhere.yaml, date: 2026-08-05}\n");
        assertThat(run("stages", lost.toString()).err()).isEqualTo(lost + ":2: course: found \"nowhere.yaml\", which is no file here and no shipped course, "
                + "expected a file beside this one, or the name of a shipped course\n    Check the spelling of the path.\n");
    }

    /** A season counts the hours of every stage, and changes nothing in between that the event does not allow. */
    @Test
    void aSeasonHasAllStages() throws Exception {
        for (String name : List.of("riders/ida-hardtail.yaml", "workshops/cellar.yaml", "events/three-becks.yaml", "stages/three-becks-one.yaml", "stages/three-becks-three.yaml")) {
            Files.createDirectories(folder.resolve(name).getParent());
            Files.copy(Path.of("docs/examples/" + name), folder.resolve(name));
        }
        List<String> season = new ArrayList<>(List.of("season: A week", "riders: [{name: Ida, rider: riders/ida-hardtail.yaml, workshop: workshops/cellar.yaml}]",
                "events: [{event: events/three-becks.yaml, starts: [{rider: Ida, bike: hardtail}]}]"));
        Files.write(folder.resolve("season.yaml"), season);
        String out = run("season", folder.toString()).out();
        assertThat(out).contains("3 starts by 1 rider", "Ida, Three Becks, stage 1 on", "Ida, Three Becks, stage 2 on", "Ida, Three Becks, stage 3 on");
        assertThat(out.substring(out.indexOf("stage 2 on"))).doesNotContain("To change");
        season.set(2, "events: [{event: events/three-becks.yaml, date: 2026-08-05}]");
        Files.write(folder.resolve("season.yaml"), season);
        assertThat(run("season", folder.toString()).err()).contains("season.yaml:3: date: found this beside an event with stages, expected the course of one stage beside it, or the event alone\n"
                + "    Leave it out: the stages have their own days and courses.");
    }

    /** The example season rides one stage on its day: a slip elsewhere makes no fault of that. */
    @Test
    void anotherFaultBringsNoneOfStages() {
        assertThat(run("season", "docs/examples", "--log", "docs/examples/recordings").err())
                .isEqualTo("--log-bike: found nothing, expected the bike of the recorded rides: steel bike, hardtail, borrowed bike\n");
    }
}
