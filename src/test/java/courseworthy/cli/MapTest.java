package courseworthy.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import courseworthy.RealData;
import courseworthy.report.json.OutputSchema;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Ground from a map, through whole commands, on the shipped map of an invented place and on a real one. */
class MapTest {

    private static final String TRACK = "docs/examples/maps/sorrel-wood.gpx";
    private static final String MAP = "docs/examples/maps/sorrel-wood.osm";
    private static final String ATTRIBUTION = "(c) OpenStreetMap contributors, ODbL 1.0";

    @TempDir
    private Path folder;

    private String at(String name) {
        return folder.resolve(name).toString();
    }

    private static CommandRun imported(String to, String... more) {
        List<String> words = new ArrayList<>(List.of("import", TRACK, "--map", MAP, "--no-cache", "-o", to));
        words.addAll(List.of(more));
        return CommandRun.of(words.toArray(new String[0]));
    }

    private static JsonNode json(String... words) {
        CommandRun run = CommandRun.of(words);
        assertThat(run.code()).as(run.err()).isZero();
        return OutputSchema.tree(run.out());
    }

    @Test
    void aTrackAloneHasGroundFromTheMap() {
        CommandRun run = CommandRun.of("brief", TRACK, "--map", MAP, "--no-cache");
        assertThat(run.code()).isZero();
        assertThat(run.err()).isEmpty();
        assertThat(run.out()).contains("km mapped, ", "inferred from the map", "could\n  change with it: ");
        // The map is of an invented place: there is nobody to name.
        assertThat(run.out()).doesNotContain("Map data");
    }

    /** Every command on a course takes a map, and all that is made from a real one names its contributors. */
    @ParameterizedTest
    @ValueSource(strings = {"brief", "brief --topic pedals", "course", "checklist", "why pedals", "compare --set pedals=clipless", "gears", "scout"})
    void whatIsMadeFromAMapNamesItsContributors(String command) {
        List<String> words = new ArrayList<>(List.of(command.split(" ")));
        words.add(1, RealData.at("tracks/course_osm_rhine.gpx").toString());
        words.addAll(List.of("--map", RealData.at("osm/liechtenstein-2022.osm.pbf").toString(), "--no-cache"));
        if (command.startsWith("compare")) {
            words.set(words.indexOf("pedals=clipless"), "front tyre width=45 mm");
        }
        for (String format : List.of("text", "markdown", "json")) {
            List<String> all = new ArrayList<>(words);
            all.addAll(List.of("--format", format));
            CommandRun run = CommandRun.of(all.toArray(new String[0]));
            assertThat(run.code()).as(run.err()).isZero();
            assertThat(run.out().replace("\\", "")).as(command + " " + format).contains(ATTRIBUTION);
        }
    }

    @Test
    void aCalendarNamesThemToo() throws IOException {
        Files.writeString(folder.resolve("event.yaml"), "name: By the river\ndate: 2026-06-06\nstart: 09:00\nutc offset: +02:00\n");
        CommandRun run = CommandRun.of("checklist", RealData.at("tracks/course_osm_rhine.gpx").toString(), "--map",
                RealData.at("osm/liechtenstein-2022.osm.pbf").toString(), "--no-cache", "--event", at("event.yaml"), "--format", "ics");
        assertThat(run.code()).as(run.err()).isZero();
        assertThat(run.out().replace("\r\n ", "").replace("\\", "")).contains(ATTRIBUTION);
    }

    /** A debrief is made from the brief, and so from its map. */
    @Test
    void aDebriefNamesThemToo() throws IOException {
        CommandRun.of("brief", RealData.at("tracks/course_osm_rhine.gpx").toString(), "--map", RealData.at("osm/liechtenstein-2022.osm.pbf").toString(),
                "--no-cache", "--format", "json", "-o", at("rhine.json"));
        Files.writeString(folder.resolve("debrief.yaml"), "debrief: By the river\nbrief: rhine.json\nhours: 0:20 h\n");
        CommandRun text = CommandRun.of("debrief", at("debrief.yaml"));
        assertThat(text.out()).as(text.err()).contains(ATTRIBUTION);
        assertThat(json("debrief", at("debrief.yaml"), "--format", "json").get("attribution").asText()).isEqualTo(ATTRIBUTION);
    }

    @Test
    void placesToLookAtNameThemToo() {
        CommandRun run = CommandRun.of("scout", RealData.at("tracks/course_osm_rhine.gpx").toString(), "--map",
                RealData.at("osm/liechtenstein-2022.osm.pbf").toString(), "--no-cache", "--format", "gpx");
        assertThat(run.out()).contains("<desc>Map data: " + ATTRIBUTION + "</desc></metadata>");
        JsonNode real = json("scout", RealData.at("tracks/course_osm_rhine.gpx").toString(), "--map",
                RealData.at("osm/liechtenstein-2022.osm.pbf").toString(), "--no-cache", "--format", "json");
        assertThat(OutputSchema.faults("scout", real)).isEmpty();
        assertThat(real.get("attribution").asText()).isEqualTo(ATTRIBUTION);
    }

    @Test
    void theJsonSaysWhereTheGroundIsFrom() {
        JsonNode ground = json("brief", TRACK, "--map", MAP, "--no-cache", "--format", "json").at("/course/ground");
        assertThat(ground.get("mapped_m").asDouble() + ground.get("inferred_m").asDouble() + ground.get("unknown_m").asDouble()).isBetween(12_200.0, 12_300.0);
        assertThat(ground.get("stretches")).anySatisfy(each -> assertThat(each.get("way").asText()).isEqualTo("Otter Ford"));
        assertThat(ground.get("rules")).extracting(JsonNode::asText).contains("firm-track");
        JsonNode withMap = json("brief", TRACK, "--map", MAP, "--no-cache", "--format", "json");
        assertThat(withMap.get("could_change_with_ground")).extracting(JsonNode::asText).contains("front tyre width").doesNotContain("bar width");
        assertThat(OutputSchema.faults(withMap.toString())).isEmpty();
        JsonNode without = json("brief", TRACK, "--format", "json");
        assertThat(without.at("/course").has("ground")).isFalse();
        assertThat(without.has("could_change_with_ground")).isFalse();
    }

    /** What rests on ground that is only inferred says so, and why. */
    @Test
    void aDecisionSaysThatItRestsOnInferredGround() {
        assertThat(CommandRun.of("why", TRACK, "front tyre width", "--map", MAP, "--no-cache").out().replaceAll("\\s+", " "))
                .contains("This rests on the ground, of which ", "is inferred from the map");
        assertThat(CommandRun.of("brief", TRACK, "--map", MAP, "--no-cache", "--topic", "front tyre width").out().replaceAll("\\s+", " "))
                .contains("This rests on the ground, of which ");
    }

    @Test
    void aTrackOutsideTheMapSaysSoInOneLineAndGoesOn() {
        String track = RealData.at("tracks/ride_cadence_18km.gpx").toString();
        CommandRun run = CommandRun.of("course", track, "--map", MAP, "--no-cache");
        assertThat(run.code()).isZero();
        assertThat(run.err()).isEqualTo(track + ": warning: found a track outside the area of the map, expected one in it\n"
                + "    Its ground is not taken from the map.\n");
        assertThat(run.out()).isEqualTo(CommandRun.of("course", track).out());
    }

    @Test
    void aProfileWithoutATrackHasNoPlaceOnTheMap() {
        CommandRun run = CommandRun.of("course", "course-profiles/fernbrake.yaml", "--map", MAP, "--no-cache");
        assertThat(run.code()).isZero();
        assertThat(run.out().replaceAll("\\s+", " ")).contains("A profile without a track has no place on the map: its ground is as it is written.");
    }

    @Test
    void aMapThatCannotBeReadIsNamed() throws IOException {
        assertThat(CommandRun.of("brief", TRACK, "--map", at("none.osm")).err()).startsWith(at("none.osm") + ": found no such file");
        Files.writeString(folder.resolve("text.osm.pbf"), "no map at all, but some text");
        CommandRun run = CommandRun.of("course", TRACK, "--map", at("text.osm.pbf"));
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).startsWith(at("text.osm.pbf") + ": ");
    }

    /** The profile says of the course what the map says. */
    @Test
    void anImportedProfileAnswersAsTheMapDoes() {
        assertThat(imported(at("wood.yaml")).code()).isZero();
        JsonNode byMap = json("course", TRACK, "--map", MAP, "--no-cache", "--format", "json");
        JsonNode byProfile = json("course", at("wood.yaml"), "--format", "json");
        assertThat(byProfile.get("demands")).isEqualTo(byMap.get("demands"));
        assertThat(byProfile.at("/course/surfaces")).isEqualTo(byMap.at("/course/surfaces"));
        assertThat(byProfile.at("/course/ground/rules")).isEqualTo(byMap.at("/course/ground/rules"));
        assertThat(byProfile.at("/course/ground/inferred_m").asDouble()).isCloseTo(byMap.at("/course/ground/inferred_m").asDouble(), within(1.0));
    }

    @Test
    void anImportedProfileNamesTheContributorsToo() throws IOException {
        CommandRun run = CommandRun.of("import", RealData.at("tracks/course_osm_rhine.gpx").toString(), "--map",
                RealData.at("osm/liechtenstein-2022.osm.pbf").toString(), "--no-cache", "-o", at("rhine.yaml"));
        assertThat(run.code()).as(run.err()).isZero();
        assertThat(Files.readString(folder.resolve("rhine.yaml"))).contains("attribution: \"" + ATTRIBUTION + "\"\n");
        assertThat(CommandRun.of("course", at("rhine.yaml")).out()).contains(ATTRIBUTION);
    }

    @Test
    void theTrackIsKeptBesideTheProfile() throws IOException {
        assertThat(imported(at("wood.yaml")).out()).contains("The track was copied beside it, sorrel-wood.gpx.");
        assertThat(Files.mismatch(folder.resolve("sorrel-wood.gpx"), Path.of(TRACK))).isEqualTo(-1);
        assertThat(imported(at("again.yaml")).out()).contains("Its track is sorrel-wood.gpx.");
        Files.writeString(folder.resolve("sorrel-wood.gpx"), "another");
        assertThat(imported(at("third.yaml")).out()).contains("The track was copied beside it, third.gpx.");
        Files.writeString(folder.resolve("fourth.gpx"), "another");
        assertThat(imported(at("fourth.yaml")).err()).contains("found another track beside it, fourth.gpx, expected a folder with the track itself, or none of its name");
        assertThat(folder.resolve("fourth.yaml")).doesNotExist();
    }

    /** Whatever mappers and tracks are called, the profile reads back. */
    @Test
    void longAndStrangeNamesReadBack() throws IOException {
        String name = "A \\ \"lane\" # : &amp; " + "x".repeat(240);
        Files.writeString(folder.resolve("odd.osm"), Files.readString(Path.of(MAP)).replace("v=\"Mill Lane\"", "v='" + name + "'")
                .replace("v=\"Otter Ford\"", "v=\"M\u00fchle \u2028 \u202e gasse\""));
        CommandRun run = CommandRun.of("import", TRACK, "--map", at("odd.osm"), "--no-cache", "-o", at("odd.yaml"));
        assertThat(run.code()).as(run.err()).isZero();
        CommandRun read = CommandRun.of("course", at("odd.yaml"));
        assertThat(read.code()).as(read.err()).isZero();
        assertThat(read.err()).isEmpty();
        assertThat(read.out()).contains("A \\ \"lane\"");
    }

    @Test
    void nothingIsOverwritten() throws IOException {
        Files.writeString(folder.resolve("wood.yaml"), "mine");
        CommandRun run = imported(at("wood.yaml"));
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).isEqualTo(at("wood.yaml") + ": found something of that name, expected a new file\n    Nothing was written.\n");
        assertThat(Files.readString(folder.resolve("wood.yaml"))).isEqualTo("mine");
        try (var files = Files.list(folder)) {
            assertThat(files).hasSize(1);
        }
    }

    /** Edits survive any number of imports; all else is as the map says. */
    @Test
    void editsSurviveALaterImport() throws IOException {
        imported(at("one.yaml"));
        String first = Files.readString(folder.resolve("one.yaml"));
        Files.writeString(folder.resolve("one.yaml"), first.replace("name: \"Sorrel Wood\"", "name: Sorrel Wood, as ridden\nsummary: Ridden in May")
                .replace("smoothness: horrible  # mapped", "smoothness: very_bad\n    roots: yes").replace("    surface: wood  # mapped\n", ""));
        CommandRun second = imported(at("two.yaml"), "--from", at("one.yaml"));
        assertThat(second.code()).as(second.err()).isZero();
        assertThat(second.out()).contains("smoothness very_bad (map: horrible)", "roots yes (map: unknown)", "surface unknown (map: wood)");
        imported(at("three.yaml"), "--from", at("two.yaml"));
        String third = Files.readString(folder.resolve("three.yaml"));
        assertThat(third).isEqualTo(Files.readString(folder.resolve("two.yaml")));
        assertThat(third).contains("name: \"Sorrel Wood, as ridden\"", "summary: \"Ridden in May\"", "smoothness: very_bad  # by hand", "roots: yes  # by hand",
                "mapped: surface=ground, smoothness=horrible, mtb:scale=2").doesNotContain("surface: wood  #");
        assertThat(json("course", at("three.yaml"), "--format", "json").get("demands")).isEqualTo(json("course", at("one.yaml"), "--format", "json").get("demands"));
    }

    /** A stretch that a person split keeps its halves where they differ. */
    @Test
    void aSplitStretchKeepsItsEnds() throws IOException {
        imported(at("one.yaml"));
        String first = Files.readString(folder.resolve("one.yaml"));
        Files.writeString(folder.resolve("one.yaml"), first.replace("  - to: 3.2294 km\n", "  - {to: 2.4 km, surface: gravel, smoothness: very_bad, sharp stones: yes}\n  - to: 3.2294 km\n"));
        CommandRun second = imported(at("two.yaml"), "--from", at("one.yaml"));
        assertThat(second.code()).as(second.err()).isZero();
        assertThat(second.out().replaceAll("\\s+", " ")).contains("km 1.69 to 2.40: sharp stones yes (map: unknown)", "km 1.69 to 2.40: smoothness very_bad (map: bad)");
        assertThat(Files.readString(folder.resolve("two.yaml"))).contains("  - to: 2.4000 km\n    surface: gravel", "sharp stones: yes  # by hand", "  - to: 3.2294 km\n");
    }

    /** What the ground may be, changed or taken out by hand, stays so as long as the map says the same of the way. */
    @Test
    void whatTheGroundMayBeIsKeptToo() throws IOException {
        imported(at("one.yaml"));
        String first = Files.readString(folder.resolve("one.yaml"));
        Files.writeString(folder.resolve("one.yaml"), first.replace("    may be: [\"surface=compacted\", \"surface=gravel\", \"surface=ground\"]\n", "    may be: [\"surface=gravel\"]\n")
                .replace("    may be: [\"surface=asphalt\", \"surface=gravel\", \"surface=ground\"]\n", ""));
        CommandRun second = imported(at("two.yaml"), "--from", at("one.yaml"));
        assertThat(second.code()).as(second.err()).isZero();
        assertThat(second.out().replaceAll("\\s+", " ")).contains("may be surface=gravel (map: surface=compacted / surface=gravel / surface=ground)",
                "may be nothing else (map: surface=asphalt / surface=gravel / surface=ground)");
        assertThat(Files.readString(folder.resolve("two.yaml"))).contains("    may be: [\"surface=gravel\"]\n").doesNotContain("\"surface=compacted\"");
        imported(at("three.yaml"), "--from", at("two.yaml"));
        assertThat(Files.readString(folder.resolve("three.yaml"))).isEqualTo(Files.readString(folder.resolve("two.yaml")));
    }

    @Test
    void whatTheMapSaysOtherwiseIsTold() throws IOException {
        imported(at("one.yaml"));
        String changed = Files.readString(Path.of(MAP)).replace("k=\"smoothness\" v=\"horrible\"", "k=\"smoothness\" v=\"bad\"");
        Files.writeString(folder.resolve("new.osm"), changed);
        CommandRun run = CommandRun.of("import", TRACK, "--map", at("new.osm"), "--no-cache", "--from", at("one.yaml"), "-o", at("two.yaml"));
        assertThat(run.out()).contains("WHAT THE MAP SAYS OTHERWISE THAN", "smoothness horrible is now bad");
        assertThat(Files.readString(folder.resolve("two.yaml"))).contains("smoothness: bad  # mapped").doesNotContain("horrible");
    }

    @Test
    void whatAnImportNeedsIsSaid() throws IOException {
        assertThat(CommandRun.of("import", TRACK).err()).isEqualTo("--map: found nothing, expected a file of map data (.osm.pbf, .osm or .osm.gz)\n"
                + "    Add --map region.osm.pbf.\n--output: found nothing, expected the name of a profile to write, such as course.yaml\n");
        assertThat(CommandRun.of("import", TRACK, "--map", MAP, "-o", at("x.txt")).err())
                .isEqualTo("--output: found \"" + at("x.txt") + "\", expected the name of a profile to write, such as course.yaml\n");
        assertThat(CommandRun.of("import", "course-profiles/fernbrake.yaml", "--map", MAP, "-o", at("x.yaml")).err())
                .isEqualTo("course-profiles/fernbrake.yaml: found a profile, expected a track (.gpx)\n    Import the track it names; --from keeps what is in the profile.\n");
        Files.writeString(folder.resolve("short.yaml"), "stretches: [{length: 3 km}]\n");
        assertThat(imported(at("x.yaml"), "--from", at("short.yaml")).err()).isEqualTo(at("short.yaml")
                + ":1: stretches: found a total of 3.0 km, expected 12.2 km, the track's length, within 2 %\n    Take the profile that was imported from this track.\n");
        assertThat(imported(at("missing/x.yaml")).err()).contains("found no folder to put it in");
    }
}
