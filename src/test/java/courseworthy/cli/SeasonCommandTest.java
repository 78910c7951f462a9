package courseworthy.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import courseworthy.ToolOutput;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The example season, held against habits of the trade (common practice, no source), and folders that cannot be used. */
class SeasonCommandTest {

    private static final String EXAMPLE = "docs/examples";

    private static String text;
    private static JsonNode season;

    @BeforeAll
    static void workOut() throws IOException {
        text = example(Format.TEXT);
        season = new ObjectMapper().readTree(example(Format.JSON));
    }

    private static String example(Format format) {
        return new ToolOutput().season(EXAMPLE, format);
    }

    private static JsonNode ride(String rider, String event) {
        return StreamSupport.stream(season.get("rides").spliterator(), false)
                .filter(each -> each.get("rider").asText().equals(rider) && each.get("event").asText().equals(event)).findFirst().orElseThrow();
    }

    private static String part(JsonNode ride, String place) {
        return StreamSupport.stream(ride.get("build").get("parts").spliterator(), false).filter(each -> each.get("place").asText().equals(place))
                .map(each -> each.get("part").asText()).findFirst().orElse("");
    }

    /** One bike is advised to two on one day: one gets it, the other what comes next, and what that loses is said. */
    @Test
    void theBorrowedBikeIsWantedTwice() {
        JsonNode clash = season.get("conflicts").get(0);
        assertThat(clash.get("date").asText()).isEqualTo("2026-06-20");
        assertThat(clash.get("what")).extracting(JsonNode::asText).contains("borrowed bike", "power pedals").as("what is on it goes without saying")
                .doesNotContain("borrowed fork 120", "borrowed shock", "borrowed saddle");
        assertThat(clash.get("wanting")).hasSize(2);
        assertThat(clash.get("choices")).hasSize(2);
        assertThat(clash.get("choices").get(0).get("what").asText()).isEqualTo("Ida: borrowed bike as wanted; Joss: hardtail in place of borrowed bike");
        assertThat(clash.get("choices").get(0).get("loses")).extracting(JsonNode::asText).contains("Joss: power meter none instead of the recommended fitted",
                "Joss: bike cross-country hardtail instead of the recommended cross-country full suspension");
        assertThat(ride("Ida", "Heather Ridge Marathon").get("build").get("bike").asText()).isEqualTo("borrowed bike");
        assertThat(ride("Joss", "Heather Ridge Marathon").get("build").get("bike").asText()).isEqualTo("hardtail");
    }

    /** The pedals with the power meter serve every bike: on a day when both race, one gets them. */
    @Test
    void theSharedPedalsAreAConflictAndAreScheduled() {
        JsonNode clash = season.get("conflicts").get(2);
        assertThat(clash.get("date").asText()).isEqualTo("2026-08-06");
        assertThat(clash.get("what")).extracting(JsonNode::asText).contains("power pedals");
        assertThat(clash.get("choices")).extracting(each -> each.get("what").asText()).containsExactly(
                "Ida: hardtail as wanted; Joss: borrowed bike with hardtail pedals for power pedals",
                "Joss: borrowed bike as wanted; Ida: hardtail with hardtail pedals for power pedals");
        assertThat(clash.get("choices").get(0).get("loses")).extracting(JsonNode::asText).contains("Joss: power meter none instead of the recommended fitted");
        assertThat(part(ride("Ida", "Three Becks, stage 2"), "pedals")).isEqualTo("power pedals");
        assertThat(part(ride("Joss", "Three Becks, stage 2"), "pedals")).isEqualTo("hardtail pedals");
    }

    /** The light wheels bear a bike and rider of up to 100 kg: the heavier rider never gets them. */
    @Test
    void aHeavyRiderIsNotPutOnLightWheels() {
        for (JsonNode ride : season.get("rides")) {
            if (ride.get("rider").asText().equals("Joss")) {
                assertThat(part(ride, "front wheel")).as(ride.get("event").asText()).isNotEmpty().doesNotStartWith("light wheel");
            }
        }
    }

    /** A part that another bike lent has to be back when that bike is ridden next, if it is: never on the day itself, never before. */
    @Test
    void lentPartsAreBackWhenTheirBikeIsRiddenNext() throws IOException {
        int dated = 0;
        for (JsonNode ride : season.get("rides")) {
            for (JsonNode each : ride.get("build").get("due_back")) {
                String next = null;
                for (JsonNode other : season.get("rides")) {
                    boolean later = other.get("date").asText().compareTo(ride.get("date").asText()) > 0;
                    boolean same = other.get("build").get("bike").asText().equals(each.get("bike").asText());
                    next = later && same && (next == null || other.get("date").asText().compareTo(next) < 0) ? other.get("date").asText() : next;
                }
                dated += next == null ? 0 : 1;
                assertThat(each.get("by").isNull() ? null : each.get("by").asText()).as(ride.get("event") + " " + each).isEqualTo(next);
            }
        }
        assertThat(dated).isPositive();
    }

    /** The borrowed bike's parts stay with it, also where a build for somebody else has taken them off it on the same day. */
    @Test
    void whatStaysServesNoOtherBike() {
        int seen = 0;
        for (JsonNode ride : season.get("rides")) {
            for (JsonNode part : ride.get("build").get("parts")) {
                if (part.get("part").asText().startsWith("borrowed ")) {
                    assertThat(ride.get("build").get("bike").asText()).as(part.toString()).isEqualTo("borrowed bike");
                    seen++;
                }
            }
        }
        assertThat(seen).isGreaterThan(20);
    }

    /** No part is on two bikes on one day. */
    @Test
    void nobodyShares() {
        for (String event : List.of("Heather Ridge Marathon", "Three Becks, stage 2")) {
            JsonNode one = ride("Ida", event).get("build").get("parts");
            JsonNode other = ride("Joss", event).get("build").get("parts");
            List<String> taken = StreamSupport.stream(one.spliterator(), false).map(each -> each.get("part").asText()).toList();
            assertThat(other).extracting(each -> each.get("part").asText()).isNotEmpty().doesNotContainAnyElementsOf(taken);
        }
    }

    /**
     * One evening of an hour and a half between two races is not enough for a fork and a pair of wheels, whose rotors need a night: the ring is
     * changed, gears and test ride included, and what is left out is said with what that loses.
     */
    @Test
    void timeIsShortBetweenTwoRaces() {
        JsonNode clash = season.get("conflicts").get(1);
        assertThat(clash.get("what").get(0).asText()).isEqualTo("time");
        assertThat(clash.get("choices").get(1).get("what").asText()).startsWith("Find the time: ").contains("with 90 min for it");
        JsonNode build = ride("Ida", "Fernbrake Forest Lap Race").get("build");
        assertThat(build.get("swaps")).extracting(each -> each.get("on").asText()).containsExactly("ring 36");
        assertThat(build.get("evenings")).hasSize(1);
        assertThat(build.get("evenings").get(0).get("date").asText()).isEqualTo("2026-06-21");
        assertThat(build.get("evenings").get(0).get("work_s").asInt()).isEqualTo((10 + 10 + 45) * 60);
        assertThat(clash.get("choices").get(0).get("what").asText()).isEqualTo("Ida: hardtail, changed: ring 36; left out for want of time: slim fork 110, "
                + "light wheel front, light wheel rear");
        assertThat(clash.get("choices").get(0).get("loses")).extracting(JsonNode::asText).contains("Ida: fork chassis stiff instead of the recommended light");
        assertThat(season.get("conflicts")).hasSize(3);
        assertThat(text.replaceAll("\\s+", " ")).contains("Ida (Heather Ridge Marathon), Joss (Heather Ridge Marathon) and Ida (Fernbrake Forest");
    }

    /** In training nothing but pedals and lights may change: wheels, tyres, cassette and fork stay those that last. */
    @Test
    void theTrainingBikeKeepsWhatLasts() {
        JsonNode ride = ride("Ida", "The Saturday loop");
        assertThat(ride.get("build").get("bike").asText()).isEqualTo("hardtail");
        assertThat(List.of(part(ride, "front wheel"), part(ride, "rear wheel"))).allMatch(each -> each.startsWith("everyday wheel"));
        assertThat(List.of(part(ride, "front tyre"), part(ride, "rear tyre"))).allMatch(each -> each.startsWith("root tyre"));
        assertThat(part(ride, "cassette")).isEqualTo("wide cassette 10-51");
        assertThat(part(ride, "pedals")).isEqualTo("power pedals");
    }

    /** Wheels, tyres, fork and post for a short smooth race take off more than a kilogram. */
    @Test
    void theRaceBuildIsLighterByKilograms() {
        JsonNode build = ride("Ida", "Larch Common Lap Race").get("build");
        assertThat(build.get("mass_now_kg").asDouble()).isCloseTo(11.519, within(0.0005));
        assertThat(build.get("mass_now_kg").asDouble() - build.get("mass_kg").asDouble()).isGreaterThan(1.2);
    }

    /** Light tyres lie ready; the long rugged race does without them and the short smooth one does not. */
    @Test
    void theLongRaceKeepsItsCasing() {
        assertThat(part(ride("Ida", "Grey Shoulder High Tracks"), "rear tyre")).isEqualTo("root tyre 58 B");
        assertThat(part(ride("Ida", "Larch Common Lap Race"), "rear tyre")).startsWith("feather tyre 54");
    }

    /** Ranked by time for money; each figure is the other two divided. */
    @Test
    void wishesAreRanked() {
        double last = Double.MAX_VALUE;
        for (JsonNode wish : season.get("wishes")) {
            if (wish.get("rides").isEmpty()) {
                assertThat(wish.get("part").asText()).isEqualTo("lane cassette 11-40");
                continue;
            }
            double each = wish.get("returns_s_for_one_unit_of_money").get("value").asDouble();
            double returns = wish.get("returns_s").get("value").asDouble();
            assertThat(each).isLessThanOrEqualTo(last).isCloseTo(returns / wish.get("price").asDouble(), within(0.011));
            last = each;
            if (wish.get("break_even_events").isNull()) {
                assertThat(wish.get("returns_s").get("low").asDouble()).as(wish.toString()).isNotPositive();
                continue;
            }
            double events = wish.get("price").asDouble() / (returns / 60 / wish.get("rides").size() * season.get("minute_worth").asDouble());
            assertThat(wish.get("break_even_events").get("value").asDouble() / events).isCloseTo(1, within(0.4));
        }
        assertThat(season.get("wishes")).hasSize(5);
        assertThat(text.replaceAll("\\s+", " ")).contains("it would be used at none of these", "Break-even, at 15 florins a minute");
    }

    /** Text, Markdown and CSV say the same, and lines fit the terminal. */
    @Test
    void theFormatsAgree() {
        String markdown = example(Format.MARKDOWN);
        String csv = example(Format.CSV);
        assertThat(text.lines()).allMatch(line -> line.length() <= 80);
        long rows = csv.lines().filter(line -> line.startsWith("ride,")).count();
        assertThat(rows).isEqualTo(season.get("rides").size());
        assertThat(csv.lines().filter(line -> line.startsWith("wish,"))).hasSize(5);
        assertThat(csv.lines().filter(line -> line.startsWith("conflict,"))).hasSize(3);
        season.get("rides").forEach(ride -> {
            String mass = String.format(java.util.Locale.ROOT, "%.2f kg", ride.get("build").get("mass_kg").asDouble());
            assertThat(text).contains(mass);
            assertThat(markdown).contains(mass);
            assertThat(csv).contains(mass.substring(0, mass.length() - 3));
        });
    }

    // Folders that cannot be used

    @TempDir
    Path folder;

    private static final String GOOD = """
            riders:
              - {name: Ann, workshop: w.yaml}
            events:
              - {course: c.yaml, date: 2026-05-09}
            """;

    private static final String WORKSHOP = """
            bikes:
              - {name: gravel bike, kind: gravel, mass: 8 kg}
            parts:
              - {name: wheel, kind: wheel, on: gravel bike, end: front, mass: 800 g, axle: 12 mm fine}
              - {name: tyre, kind: tyre, on: wheel, mass: 400 g}
              - {name: other tyre, kind: tyre, mass: 400 g}
            """;

    private CommandRun run(String season, String workshop) throws IOException {
        Files.writeString(folder.resolve("season.yaml"), season);
        Files.writeString(folder.resolve("w.yaml"), workshop);
        Files.writeString(folder.resolve("c.yaml"), "name: Lane\nstretches:\n  - {length: 10 km, ascent: 50 m, descent: 50 m, surface: gravel}\n");
        return CommandRun.of("season", folder.toString());
    }

    @Test
    void aSmallSeasonWorks() throws IOException {
        CommandRun ran = run(GOOD, WORKSHOP);
        assertThat(ran.err()).isEmpty();
        assertThat(ran.out()).contains("2026-05-09 Ann, Lane (training)");
    }

    /** The event's file and line are named; summer time of the season's date counts, by the zone. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"utc offset: -05:00 | e.yaml:2: utc offset: found -05:00, expected a time within 3 h of the sun's",
        "zone: Asia/Tokyo | e.yaml:2: zone: found Asia/Tokyo (+09:00), expected a time within 3 h of the sun's", "zone: Europe/Zurich |"})
    void aTimeThatTheCourseCannotHaveIsRefused(String zone, String message) throws IOException {
        Files.writeString(folder.resolve("w.yaml"), WORKSHOP);
        Files.writeString(folder.resolve("e.yaml"), "name: Day\n" + zone + "\n");
        Files.writeString(folder.resolve("c.yaml"), "name: Lane\nlatitude: 47 deg\nlongitude: 8 deg\nstretches:\n"
                + "  - {length: 10 km, ascent: 50 m, descent: 50 m, surface: gravel}\n");
        Files.writeString(folder.resolve("season.yaml"), GOOD.replace("c.yaml,", "c.yaml, event: e.yaml,"));
        CommandRun ran = CommandRun.of("season", folder.toString());
        assertThat(ran.code()).as(ran.err()).isEqualTo(message == null ? 0 : 2);
        assertThat(ran.err()).contains(message == null ? "" : message);
    }

    /** Wrong workshops end with one clear message and nothing on standard output. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "on: wheel, mass: 400 g} | on: [wheel, gravel bike], mass: 400 g} | w.yaml:5: on: found \"tyre\" mounted in 2 places",
        "kind: tyre, mass: 400 g} | kind: tyre, on: wheel, mass: 400 g} | w.yaml:6: on: found \"other tyre\" as a second front tyre on \"wheel\"",
        "on: gravel bike, end | on: tyre, end | w.yaml:4: on: found a circle",
        "on: wheel, mass | on: whele, mass | w.yaml:5: on: found \"whele\", which is neither a bike nor a part",
        "name: other tyre | name: tyre | w.yaml:6: name: found a second \"tyre\""})
    void aWrongWorkshopIsSaidOnce(String good, String wrong, String message) throws IOException {
        CommandRun ran = run(GOOD, WORKSHOP.replace(good, wrong));
        assertThat(ran.err()).contains(message);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.code()).isEqualTo(2);
    }

    /** A mass that is missing stops nothing; it is said once. */
    @Test
    void aMissingMassIsWarnedOf() throws IOException {
        CommandRun ran = run(GOOD, WORKSHOP.replace("kind: tyre, on: wheel, mass: 400 g", "kind: tyre, on: wheel"));
        assertThat(ran.err()).containsOnlyOnce("no mass of \"tyre\"");
        assertThat(ran.code()).isZero();
    }

    /** A label nothing else carries and that is nearly another is asked about. */
    @Test
    void anUnknownLabelIsWarnedOf() throws IOException {
        String two = WORKSHOP + "  - {name: fork, kind: fork, on: gravel bike, mass: 400 g, axle: 12 mm fien}\n";
        assertThat(run(GOOD, two).err()).contains("found \"12 mm fien\", which nothing else carries").contains("12 mm fine");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "w.yaml | ../w.yaml | season.yaml:2: workshop: found \"../w.yaml\", expected a path inside the season's folder",
        "w.yaml | none.yaml | season.yaml:2: workshop: found \"none.yaml\", which is no file, expected a file in the season's folder",
        "w.yaml | ww.yaml | season.yaml:2: workshop: found \"ww.yaml\", which is no file",
        "workshop: w.yaml | 'workshop: w.yaml, rider: w.yaml' | season.yaml:2: rider: found \"w.yaml\", which is a workshop, expected a rider's file",
        "workshop: w.yaml | 'workshop: w.yaml, sheets: [none.yaml]' | season.yaml:2: sheets: found \"none.yaml\", which is no file",
        "date: 2026-05-09 | 'date: 2026-05-09, event: w.yaml' | season.yaml:4: event: found \"w.yaml\", which is a workshop, expected an event's file",
        "date: 2026-05-09 | 'date: 2026-05-09, ground: gravel' | season.yaml:4: ground: found \"gravel\", expected key=value pairs with commas between",
        "date: 2026-05-09 | 'date: 2026-05-09, ground: surface=gravle' | season.yaml:4: surface: found \"gravle\"",
        "date: 2026-05-09 | date: 0000-05-09 | season.yaml:4: date: found \"0000-05-09\"",
        "date: 2026-05-09 | date: 9999-05-09 | season.yaml:4: date: found \"9999-05-09\"",
        "course: c.yaml | course: fernbrak | season.yaml:4: course: found \"fernbrak\", which is no file here and no shipped course",
        ", date: 2026-05-09 | '' | season.yaml:4: date: found no date of this event",
        "date: 2026-05-09 | date: 2026-02-30 | season.yaml:4: date: found \"2026-02-30\"",
        "date: 2026-05-09} | 'date: 2026-05-09, starts: [{rider: Anne}]}' | season.yaml:4: rider: found \"Anne\"",
        "date: 2026-05-09} | 'date: 2026-05-09, starts: [{rider: Ann, bike: road bike}]}' | season.yaml:4: bike: found \"road bike\"",
        "course: c.yaml | course: nowhere.yaml | season.yaml:4: course: found \"nowhere.yaml\", which is no file here and no shipped course"})
    void aWrongSeasonIsSaidOnce(String good, String wrong, String message) throws IOException {
        CommandRun ran = run(GOOD.replace(good, wrong), WORKSHOP);
        assertThat(ran.err()).contains(message);
        assertThat(ran.err().lines()).hasSizeLessThanOrEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.code()).isEqualTo(2);
    }

    /** A workshop has one log, that of its own file or the one that riders name. */
    @Test
    void aSecondLogIsRefused() throws IOException {
        Files.writeString(folder.resolve("log.yaml"), "rides: []\n");
        Files.writeString(folder.resolve("more.yaml"), "rides: []\n");
        String two = GOOD.replace("workshop: w.yaml}", "workshop: w.yaml, log: log.yaml}\n  - {name: Bea, workshop: w.yaml, log: more.yaml}");
        assertThat(run(two, WORKSHOP).err()).isEqualTo(folder + "/season.yaml:3: log: found \"more.yaml\" beside \"log.yaml\", expected one log for a workshop\n"
                + "    Leave one of them out.\n");
        String one = GOOD.replace("workshop: w.yaml}", "workshop: w.yaml, log: log.yaml}");
        assertThat(run(one, "log: log.yaml\n" + WORKSHOP).err()).isEqualTo(folder + "/season.yaml:2: log: found \"log.yaml\" beside the log that " + folder
                + "/w.yaml names, expected one log for a workshop\n    Leave one of them out.\n");
        assertThat(run(one, WORKSHOP).code()).isZero();
    }

    @Test
    void whatIsNoFileOfTheFolderIsSaidInFull() throws IOException {
        Path link = Files.createSymbolicLink(folder.resolve("away.yaml"), Path.of("docs/examples/riders/kim-cross-country.yaml").toAbsolutePath());
        CommandRun ran = run(GOOD.replace("workshop: w.yaml", "workshop: w.yaml, rider: away.yaml").replace("c.yaml", "umbrella"), WORKSHOP);
        Files.delete(link);
        assertThat(ran).isEqualTo(new CommandRun(2, "", folder + "/season.yaml:2: rider: found \"away.yaml\", a link that leads out of the folder, expected a file"
                + " in the season's folder\n    Copy the file into it.\n" + folder + "/season.yaml:4: course: found \"umbrella\", which is no file here and no shipped"
                + " course, expected a file in the season's folder, or the name of a shipped course\n"));
    }

    @Test
    void twoEventsOnOneDayAreRefused() throws IOException {
        CommandRun ran = run(GOOD + "  - {course: c.yaml, date: 2026-05-09}\n", WORKSHOP);
        assertThat(ran.err()).contains("season.yaml:5: date: found a second event of \"Ann\" on 2026-05-09");
        assertThat(ran.code()).isEqualTo(2);
    }

    @Test
    void theFileOfASeasonPointsToItsFolder() {
        CommandRun ran = CommandRun.of("season", "docs/examples/season.yaml");
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).isEqualTo("docs/examples/season.yaml: found a file, expected a folder with a season.yaml\n    Give the folder that it is in.\n");
    }
}
