package courseworthy.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import courseworthy.course.terrain.TileFiles;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Every accepted value is used or refused: for each key that a schema names there is an example file in which another value changes what
 * some command says, or of which a warning says that it is not used. The examples are folders of {@code courseworthy/keys}.
 */
class UnusedKeysTest {

    private static final Path EXAMPLES = Path.of("src", "test", "resources", "courseworthy", "keys");

    /** What a general rule would not find: values that agree with what else the example says. */
    private static final Map<String, List<String>> OTHERS = Map.ofEntries(
            Map.entry("event/forecast/hours/rain", List.of("5 mm")),
            Map.entry("event/forecast/hours/gust", List.of("28 m/s")),
            Map.entry("event/forecast/or/hours/hour", List.of("10:30")),
            Map.entry("event/forecast/or/hours/gust", List.of("28 m/s")),
            Map.entry("event/forecast/or/hours/humidity", List.of("30 %")),
            Map.entry("event/stages/forecast/hours/rain", List.of("5 mm")),
            Map.entry("event/stages/forecast/or/hours/hour", List.of("10:30")),
            Map.entry("event/stages/forecast/or/hours/gust", List.of("28 m/s")),
            Map.entry("event/date", List.of("2026-12-20", "2026-03-01")),
            Map.entry("event/utc offset", List.of("+01:00", "+03:00")),
            Map.entry("event/zone", List.of("Europe/London")),
            Map.entry("event/travel/home", List.of("2026-06-22")),
            Map.entry("event/travel/out", List.of("2026-06-18")),
            Map.entry("event/time for work/from", List.of("2026-06-10")),
            Map.entry("event/time for work/days/date", List.of("2026-06-13")),
            Map.entry("event/stages/course", List.of("course-of-home.yaml", "other-course.yaml")),
            Map.entry("event/stages/date", List.of("2026-06-19", "2026-06-22")),
            Map.entry("event/changes between stages", List.of("nothing")),
            Map.entry("event/edition", List.of("2027")),
            Map.entry("course/track", List.of("other.gpx")),
            Map.entry("course/stretches/mapped", List.of("surface=concrete")),
            Map.entry("course/stretches/inferred", List.of("surface=sand by track")),
            Map.entry("course/stretches/may be", List.of("surface=rock")),
            Map.entry("sheet/advice/id", List.of("another")),
            Map.entry("sheet/values/cuts of a day/value", List.of("6")),
            Map.entry("sheet/advice/do/after", List.of("lamp")),
            Map.entry("sheet/leave out/rule", List.of("shipped/keep-the-proven-saddle")),
            Map.entry("cases/cases/rule", List.of("charge")),
            Map.entry("cases/cases/course", List.of("other.yaml")),
            Map.entry("cases/cases/rider", List.of("other-rider.yaml")),
            Map.entry("cases/cases/event", List.of("other-event.yaml")),
            Map.entry("cases/cases/ground", List.of("surface=sand")),
            Map.entry("cases/cases/fires", List.of("lamp")),
            Map.entry("cases/cases/silent", List.of("vest")),
            Map.entry("season/riders/rider", List.of("joss-steel.yaml")),
            Map.entry("season/riders/workshop", List.of("attic.yaml")),
            Map.entry("season/riders/log", List.of("other-log.yaml")),
            Map.entry("season/events/course", List.of("course.yaml")),
            Map.entry("season/events/event", List.of("event.yaml")),
            Map.entry("season/events/map", List.of("far.osm")),
            Map.entry("season/events/elevation", List.of("flat")),
            Map.entry("season/riders/priority", List.of("3")),
            Map.entry("season/time for work/from", List.of("2026-05-12")),
            Map.entry("season/time for work/days/date", List.of("2026-05-12")),
            Map.entry("season/events/travel/out", List.of("2026-05-17")),
            Map.entry("season/events/travel/home", List.of("2026-05-20")),
            Map.entry("season/events/date", List.of("2026-06-20")),
            Map.entry("season/events/ground", List.of("surface=sand")),
            Map.entry("season/events/starts/bike", List.of("borrowed bike")),
            Map.entry("season/events/starts/rider", List.of("Ida")));

    @TempDir
    private Path folder;

    @Test
    void ofARider() throws IOException {
        used("rider", briefs(), "ridge", "track");
    }

    @Test
    void ofAnEvent() throws IOException {
        Files.writeString(folder.resolve("cellar.yaml"), Files.readString(Path.of("docs/examples/workshops/cellar.yaml")));
        List<String> commands = new ArrayList<>(briefs());
        commands.add(briefs().get(0) + " --workshop cellar.yaml");
        KeyUse use = new KeyUse(folder, "event", OTHERS);
        // Where wind may come from instead is of use on a track alone, and is seen to be there.
        use.unused().remove("stages/forecast/or/hours/from");
        for (String example : List.of("ridge", "track", "plain")) {
            copy(example);
            use.look(folder.resolve("event.yaml"), commands);
        }
        copy("stages");
        Files.writeString(folder.resolve("other-course.yaml"), Files.readString(Path.of("course-profiles", "three-becks.yaml")));
        String rest = " --rider rider.yaml --event event.yaml --format json";
        use.look(folder.resolve("event.yaml"), List.of("stages event.yaml --rider rider.yaml --format json", "brief course.yaml" + rest, "brief other-course.yaml" + rest));
        assertThat(use.unseen()).isEmpty();
        assertThat(use.unused()).isEmpty();
    }

    @Test
    void ofACourse() throws IOException {
        used("course", ofTheCourse(), "ridge", "track");
    }

    @Test
    void ofADebrief() throws IOException {
        Files.writeString(folder.resolve("heather-ridge.json"), Files.readString(Path.of("docs", "examples", "debriefs", "heather-ridge.json")));
        StringBuilder topics = new StringBuilder();
        for (Topic topic : Topics.all()) {
            topics.append("  ").append(topic.name()).append(": ").append(quoted(topic.text(topic.standard()))).append('\n');
        }
        String told = Files.readString(EXAMPLES.resolve("debrief.yaml"));
        Files.writeString(folder.resolve("debrief.yaml"), told + "changed on the day:\n" + topics + "would change:\n" + topics);
        KeyUse use = new KeyUse(folder, "debrief", OTHERS);
        use.look(folder.resolve("debrief.yaml"), List.of("debrief debrief.yaml"));
        // Of these there is one value that can be used: that of the saved brief's name, and the only option.
        use.unused().removeAll(Set.of("brief", "changed on the day/helmet", "would change/helmet"));
        assertThat(use.unseen()).isEmpty();
        assertThat(use.unused()).isEmpty();
    }

    /** A word that a reader of YAML may take for a truth, in quotes. */
    private static String quoted(String value) {
        return value.matches("on|off|yes|no") ? "\"" + value + "\"" : value;
    }

    @Test
    void ofASeason() throws IOException {
        copy("ridge");
        Files.writeString(folder.resolve("attic.yaml"), Files.readString(Path.of("docs/examples/workshops/cellar.yaml")).replace("owned: no", "owned: yes"));
        for (String name : List.of("workshops/cellar", "riders/joss-steel", "riders/ida-hardtail", "events/quern-hills")) {
            Files.writeString(folder.resolve(name.substring(name.indexOf('/') + 1) + ".yaml"), Files.readString(Path.of("docs/examples/" + name + ".yaml")));
        }
        Files.writeString(folder.resolve("quern-course.yaml"), Files.readString(Path.of("course-profiles", "quern-hills.yaml")));
        Files.writeString(folder.resolve("every-key.yaml"), Files.readString(EXAMPLES.resolve("every-key.yaml")).replace("sheet: Club", "sheet: Elders"));
        Files.writeString(folder.resolve("attic-log.yaml"), "rides: [{date: 2026-07-01, bike: steel bike, hours: 20 h}]\n");
        Files.writeString(folder.resolve("other-log.yaml"), "rides: [{date: 2026-07-01, bike: hardtail, hours: 20 h}]\n");
        Files.copy(Path.of("docs/examples/maps/sorrel-wood.gpx"), folder.resolve("wood.gpx"));
        Files.copy(Path.of("docs/examples/maps/sorrel-wood.osm"), folder.resolve("wood.osm"));
        Files.writeString(folder.resolve("far.osm"), "<osm version=\"0.6\"><bounds minlat=\"1\" minlon=\"1\" maxlat=\"2\" maxlon=\"2\"/>"
                + "<node id=\"1\" lat=\"1.5\" lon=\"1.5\"/><node id=\"2\" lat=\"1.6\" lon=\"1.5\"/><way id=\"3\"><nd ref=\"1\"/><nd ref=\"2\"/>"
                + "<tag k=\"highway\" v=\"track\"/></way></osm>\n");
        // The track lies within this degree.
        TileFiles.hgt(folder.resolve("tiles"), "N49W009.hgt", 49, -9, 1201, (lat, lon) -> 200 + 150 * Math.sin(2 * Math.PI * lat / 0.01));
        TileFiles.hgt(folder.resolve("flat"), "N49W009.hgt", 49, -9, 1201, (lat, lon) -> 5);
        Files.writeString(folder.resolve("season.yaml"), Files.readString(EXAMPLES.resolve("season.yaml")));
        KeyUse use = new KeyUse(folder, "season", OTHERS);
        use.look(folder.resolve("season.yaml"), List.of("season . --format json", "season ."));
        Files.writeString(folder.resolve("season.yaml"), Files.readString(EXAMPLES.resolve("season.yaml")).replaceAll("time for work: .*", "time for work: 0:30 h"));
        use.look(folder.resolve("season.yaml"), List.of("season . --format json"));
        assertThat(use.unseen()).isEmpty();
        assertThat(use.unused()).isEmpty();
    }

    /** Beside what {@link SheetKeyUseTest} changes: conditions, and what is said on each topic. */
    @Test
    void ofASheet() throws IOException {
        copy("ridge");
        Map<String, List<JsonNode>> keys = new LinkedHashMap<>(SchemaKeys.of("sheet", Set.of("row")));
        keys.keySet().removeIf(key -> key.startsWith("advice/say/") || key.equals("advice/when"));
        // Why a figure is so much is asked for, and is for those who read the sheet.
        keys.put("values/cuts of a day/value", keys.remove("values"));
        Files.writeString(folder.resolve("sheet.yaml"), Files.readString(EXAMPLES.resolve("every-key.yaml")));
        KeyUse use = new KeyUse(folder, "sheet", OTHERS, keys);
        use.look(folder.resolve("sheet.yaml"), List.of("checklist course.yaml --rider rider.yaml --event event.yaml --sheet sheet.yaml --format json",
                "brief course.yaml --rider rider.yaml --event event.yaml --sheet sheet.yaml --format json",
                "why course.yaml plugs --rider rider.yaml --event event.yaml --sheet sheet.yaml --format json", "sheet check sheet.yaml --format json"));
        assertThat(use.unseen()).isEmpty();
        assertThat(use.unused()).isEmpty();
    }

    /** Beside what {@link SheetKeyUseTest} changes: facts, and what is expected on each topic. */
    @Test
    void ofCases() throws IOException {
        copy("ridge");
        Map<String, List<JsonNode>> keys = new LinkedHashMap<>(SchemaKeys.of("cases"));
        keys.keySet().removeIf(key -> key.matches("cases/(expect|firmness|stretches)/.*|cases/(fires|still fires|silent|measures)"));
        Files.writeString(folder.resolve("sheet.yaml"), Files.readString(EXAMPLES.resolve("every-key.yaml")));
        Files.writeString(folder.resolve("other.yaml"), "stretches: [{length: 5 km, surface: sand}]\n");
        Files.writeString(folder.resolve("other-rider.yaml"), "name: Bo\nmass: 80 kg\nskill: novice\n"
                + "constraints:\n  - {id: few, say: {plugs: at most 2}, because: My pocket is small.}\n");
        Files.writeString(folder.resolve("other-event.yaml"), "name: Ride\nrole: training\n");
        Files.writeString(folder.resolve("cases.yaml"), Files.readString(EXAMPLES.resolve("cases.yaml")));
        KeyUse use = new KeyUse(folder, "cases", OTHERS, keys);
        use.look(folder.resolve("cases.yaml"), List.of("sheet test sheet.yaml cases.yaml --format json"));
        // Any other name than the sheet's is refused.
        use.unused().remove("cases for");
        assertThat(use.unseen()).isEmpty();
        assertThat(use.unused()).isEmpty();
    }

    /** Commands that read a day, those first that say most. */
    private static List<String> briefs() {
        String files = " course.yaml --rider rider.yaml --event event.yaml --sheet sheet.yaml";
        return List.of("brief" + files + " --format json", "brief" + files);
    }

    private static List<String> ofTheCourse() {
        List<String> out = new ArrayList<>(briefs());
        out.addAll(List.of("course course.yaml --format json", "course course.yaml"));
        return out;
    }

    private void used(String kind, List<String> commands, String... examples) throws IOException {
        KeyUse use = new KeyUse(folder, kind, OTHERS);
        for (String example : examples) {
            copy(example);
            use.look(folder.resolve(kind + ".yaml"), commands);
        }
        assertThat(use.unseen()).as("keys of a " + kind + " that no example has").isEmpty();
        assertThat(use.unused()).as("keys of a " + kind + " that nothing uses").isEmpty();
    }

    private void copy(String example) throws IOException {
        for (String name : List.of("course", "rider", "event", "workshop")) {
            Path from = EXAMPLES.resolve(example).resolve(name + ".yaml");
            if (Files.exists(from)) {
                Files.writeString(folder.resolve(name + ".yaml"), Files.readString(from));
            }
        }
        Files.writeString(folder.resolve("sheet.yaml"), Files.readString(EXAMPLES.resolve("sheet.yaml")));
        String track = Files.readString(Path.of("course-profiles", "tracks", "home-trails.gpx"));
        Files.writeString(folder.resolve("lap.gpx"), track);
        Files.writeString(folder.resolve("other.gpx"), track.replace("<ele>2", "<ele>3"));
    }
}
