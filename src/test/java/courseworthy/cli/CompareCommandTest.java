package courseworthy.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import courseworthy.report.json.OutputSchema;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command that puts set-ups side by side. */
class CompareCommandTest {

    private static final String[] HEATHER = {"compare", "course-profiles/heather-ridge.yaml", "--event", "docs/examples/events/heather-ridge.yaml",
        "--rider", "docs/examples/riders/kim-cross-country.yaml"};

    private static CommandRun heather(String... more) {
        String[] all = Arrays.copyOf(HEATHER, HEATHER.length + more.length);
        System.arraycopy(more, 0, all, HEATHER.length, more.length);
        return CommandRun.of(all);
    }

    @Test
    void setUpsStandBesideTheRecommended() {
        CommandRun ran = heather("--set", "front tyre casing=light, rear tyre casing=light", "--set", "fork travel=100 mm", "--set", "front insert=fitted");
        assertThat(ran.code()).isZero();
        assertThat(ran.err()).isEmpty();
        assertThat(ran.out().lines()).allMatch(line -> line.length() <= 80);
        assertThat(ran.out()).startsWith("Heather Ridge Marathon                                      set-ups side by side\nfor Kim\n")
                .contains("                    recommended         set-up A             set-up B\n", "                     recommended               set-up C\n",
                        "\nSET-UP A: front tyre casing=light, rear tyre casing=light\n  Your choice:\n  - front tyre casing light instead of reinforced (fair)\n",
                        "\n  What follows from it:\n  - rear tyre pressure 1.30 bar", "\n  - fork travel 100 mm instead of 120 mm (fair)\n");
    }

    /** What limits forbid is not compared: it stays as it is, and the limit is named. */
    @Test
    void aLimitGoesBeforeWhatIsAskedFor() {
        assertThat(heather("--set", "front tyre width=70 mm").out()).contains("\n  ! Front tyre width cannot be 70 mm and stays 60 mm, because of\n"
                + "    limit/tyre-clears-the-frame.\n");
    }

    /** A column never stands under the name of a bike that it does not show. */
    @Test
    void aBikeThatALimitRulesOutIsNamedInTheHeading() throws IOException {
        String[] asked = {"--set", "bike=road", "--set", "bike=trail", "--set", "front tyre width=70 mm"};
        String text = heather(asked).out();
        assertThat(text.replaceAll("\\s+", " ")).contains(" recommended set-up A: set-up B cross-country hardtail, not road riding time ")
                .contains("! Bike cannot be road; the nearest that can be is cross-country hardtail, because of limit/ledge-over-15-cm.");
        assertThat(text).contains("recommended               set-up C, not as asked\n");
        String[] markdown = Arrays.copyOf(asked, asked.length + 2);
        markdown[asked.length] = "--format";
        markdown[asked.length + 1] = "markdown";
        assertThat(heather(markdown).out()).contains("| recommended | set-up A: cross-country hardtail, not road | set-up B | set-up C, not as asked |");
        markdown[asked.length + 1] = "json";
        JsonNode setUps = OutputSchema.tree(heather(markdown).out()).get("set_ups");
        assertThat(setUps.findValuesAsText("heading")).containsExactly("recommended", "set-up A: cross-country hardtail, not road", "set-up B",
                "set-up C, not as asked");
        assertThat(setUps.findValuesAsText("as_asked")).containsExactly("true", "false", "true", "false");
    }

    /** The model rides all widths alike in sand, where a narrow tyre sinks deeper: it never says that the narrower one is faster there. */
    @Test
    void aNarrowerTyreIsNeverCalledFasterInSand(@TempDir Path folder) throws IOException {
        String course = Files.writeString(folder.resolve("dunes.yaml"), "name: Dunes\nstretches:\n  - {length: 30 km, surface: sand}\n"
                + "  - {length: 10 km, surface: gravel, sand: yes}\n").toString();
        for (String kind : List.of("trail", "cross-country hardtail", "gravel")) {
            String rider = bike(folder, kind);
            for (String setUp : List.of("bike=road", "bike=gravel", "front tyre width=40 mm, rear tyre width=40 mm")) {
                JsonNode setUps = OutputSchema.tree(CommandRun.of("compare", course, "--rider", rider, "--set", setUp, "--format", "json").out()).get("set_ups");
                assertThat(setUps.get(1).get("returns_s").get("low").asDouble()).as(kind + ", " + setUp).isLessThanOrEqualTo(0);
            }
        }
    }

    @Test
    void anotherBikeIsRiddenAnew() {
        String out = heather("--set", "bike=cross-country hardtail").out();
        assertThat(out).contains("The ride is recalculated on this bike").doesNotContain("effect of bike");
        assertThat(out.lines().filter(line -> line.startsWith("riding time")).findFirst().orElseThrow().trim().split(" {2,}")).hasSize(3);
    }

    /** The recommended bike is what is ridden, whichever is at hand: on no other does the road bike's time stand under its name. */
    @Test
    void theRecommendedBikeIsRiddenWhicheverIsAtHand(@TempDir Path folder) throws IOException {
        String onRoadBike = CommandRun.of("compare", HEATHER[1], "--rider", bike(folder, "road"), "--set", "bike=trail").out();
        String onFullSuspension = CommandRun.of("compare", HEATHER[1], "--rider", bike(folder, "cross-country full suspension"), "--set", "bike=trail").out();
        assertThat(onRoadBike).contains("  - bike trail instead of cross-country full suspension (thin)\n");
        for (String row : List.of("riding time", "against recommended", "work")) {
            assertThat(line(onRoadBike, row)).isEqualTo(line(onFullSuspension, row));
        }
    }

    private static String bike(Path folder, String kind) throws IOException {
        return Files.writeString(folder.resolve("rider.yaml"), "bike: {kind: " + kind + "}\n").toString();
    }

    private static String line(String out, String start) {
        return out.lines().filter(line -> line.startsWith(start)).findFirst().orElseThrow();
    }

    @Test
    void outputsAgree() {
        String text = heather("--set", "front insert=fitted, rear insert=fitted").out();
        String markdown = heather("--set", "front insert=fitted, rear insert=fitted", "--format", "markdown").out();
        String json = heather("--set", "front insert=fitted, rear insert=fitted", "--format", "json").out();
        String flat = text.replaceAll("\\s+", " ");
        assertThat(markdown).startsWith("# Heather Ridge Marathon, set-ups side by side\n");
        for (String line : markdown.split("\n")) {
            if (line.startsWith("- ")) {
                assertThat(flat).contains(line.substring(2).replace("**", ""));
            }
        }
        assertThat(json).startsWith("{\n  \"format\" : 2,\n").contains("\"written\" : \"recommended\"", "\"written\" : \"front insert=fitted, rear insert=fitted\"",
                "\"asked\" : true");
        assertThat(flat).contains("240 g (120 to 500)");
        assertThat(json).contains("\"mass_kg\" : {\n        \"value\" : 0.24,\n        \"low\" : 0.12,\n        \"high\" : 0.5\n");
    }

    @Test
    void everythingWrongIsSaidAtOnce() {
        assertThat(CommandRun.of("compare", "course-profiles/heather-ridge.yaml", "--set",
                "front tyre widht=45 mm, bike=tandem, front tyre casing, front tyre width=45mm, rear tyre width=45, rear insert=none, rear insert=fitted, water=90 L"))
                .isEqualTo(new CommandRun(2, "", """
                --set: found "front tyre widht", expected a topic
                    Did you mean "front tyre width"?
                --set: bike: found "tandem", expected one of: road, gravel, cross-country hardtail, cross-country full suspension, trail
                --set: found "front tyre casing", expected topic=value, such as 'front tyre width=45 mm, rear tyre width=45 mm'
                --set: front tyre width: found "45mm", expected a length with its unit, such as 84 km, 52 mi, 1900 m, 6200 ft, 57 mm or 2.25 in
                    Put one space between the number and its unit.
                --set: rear tyre width: found "45", expected a length with its unit, such as 84 km, 52 mi, 1900 m, 6200 ft, 57 mm or 2.25 in
                    Add the unit, one of: km, mi, m, ft, cm, mm, in.
                --set: rear insert: found a second value, expected each topic once in a set-up
                    Write another --set for another set-up.
                --set: water: found "90 L", expected from 0.3 L to 60.0 L
                """));
        assertThat(CommandRun.of("compare", "course-profiles/heather-ridge.yaml")).isEqualTo(new CommandRun(2, "",
                "--set: found no set-up, expected at least one, such as --set 'front tyre width=45 mm', or the build of a --workshop\n"));
    }

    /** The build of a workshop is a set-up by itself. */
    @Test
    void theBuildOfAWorkshopAlone() {
        CommandRun run = CommandRun.of("compare", "course-profiles/fernbrake.yaml", "--workshop", "docs/examples/workshops/cellar.yaml");
        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("SET-UP A: the build of your workshop, ").doesNotContain("SET-UP B");
    }

    /** A build rides its own gears, as `gears` has them: no pair that is common stands in for its cassette, and no rule takes it away. */
    @Test
    void theBuildRidesItsOwnGears() throws IOException {
        JsonNode own = json("gears").get("decided");
        JsonNode setUp = json("compare").at("/set_ups/1");
        assertThat(setUp.get("as_asked").asBoolean()).isTrue();
        assertThat(setUp.at("/spun_out_from_m_s/value").asDouble()).isCloseTo(own.at("/spun_out_from_m_s/value").asDouble(), within(0.005));
        for (String[] piece : new String[][]{{"steepest 100 m", "cadence_on_the_steepest_100_m_per_min"}, {"last long climb", "cadence_on_the_last_climb_per_min"}}) {
            JsonNode climbed = StreamSupport.stream(own.get("climbed").spliterator(), false).filter(each -> each.get("piece").asText().equals(piece[0])).findFirst().orElseThrow();
            assertThat(setUp.get(piece[1])).as(piece[0]).isEqualTo(climbed.get("cadence_per_min"));
        }
        for (String gear : List.of("easiest", "hardest")) {
            JsonNode difference = StreamSupport.stream(setUp.get("differences").spliterator(), false)
                    .filter(each -> each.get("topic").asText().equals(gear + " gear")).findFirst().orElseThrow();
            assertThat(difference.get("here").asText()).startsWith(own.at("/" + gear + "/teeth").asText() + " (");
        }
    }

    private static JsonNode json(String command) throws IOException {
        return new ObjectMapper().readTree(CommandRun.of(command, "course-profiles/fernbrake.yaml", "--workshop", "docs/examples/workshops/cellar.yaml", "--format", "json").out());
    }

    @Test
    void helpHasAnExample() {
        assertThat(CommandRun.of("compare", "--help").out()).contains("  courseworthy compare heather-ridge --set 'front tyre width=45 mm, tubes=2'\n");
    }
}
