package courseworthy.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Every accepted value is used or refused: for each key that a schema names there is an example file in which another value changes what
 * some command says, or of which a warning says that it is not used. The examples are folders of {@code courseworthy/keys}.
 */
class UnusedKeysTest {

    private static final Path EXAMPLES = Path.of("src", "test", "resources", "courseworthy", "keys");

    /** What a general rule would not find: values that agree with what else the example says. */
    private static final Map<String, List<String>> OTHERS = Map.of(
            "event/date", List.of("2026-12-20", "2026-03-01"),
            "event/utc offset", List.of("+01:00", "+03:00"),
            "event/zone", List.of("Europe/London"),
            "event/edition", List.of("2027"),
            "course/track", List.of("other.gpx"));

    @TempDir
    private Path folder;

    @Test
    void ofARider() throws IOException {
        used("rider", day(), "ridge", "track");
    }

    @Test
    void ofAnEvent() throws IOException {
        used("event", day(), "ridge", "track", "plain");
    }

    @Test
    void ofACourse() throws IOException {
        used("course", day(), "ridge", "track");
    }

    /** Commands that read a day, those first that say most. */
    private static List<String> day() {
        String files = " course.yaml --rider rider.yaml --event event.yaml --sheet sheet.yaml";
        return List.of("brief" + files + " --format json", "brief" + files, "course course.yaml --format json", "course course.yaml");
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
