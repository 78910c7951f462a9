package courseworthy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import courseworthy.Courseworthy.Format;
import courseworthy.problem.BadInput;
import courseworthy.problem.Fault;
import courseworthy.problem.Faults;
import courseworthy.workshop.WorkshopReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StarterFolderTest {

    @TempDir
    private Path place;

    private final List<String> remarks = new ArrayList<>();
    private final Courseworthy tool = new Courseworthy(Path.of(""), remarks::add);

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.map(path -> path.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void whatItWritesWorksAtOnce() throws IOException {
        Path folder = place.resolve("race");
        String said = tool.startFolder(folder.toString());
        assertThat(said).contains("brief " + folder + "/course.yaml --rider ");
        assertThat(names(folder)).containsExactlyInAnyOrderElementsOf(StarterFolder.FILES);
        assertThat(names(place)).as("nothing beside it").containsExactly("race");
        Request request = new Request(folder + "/course.yaml", null, folder + "/event.yaml", folder + "/rider.yaml", List.of(folder + "/sheet.yaml"),
                null, null, folder + "/workshop.yaml");
        assertThat(tool.brief(request, Format.TEXT, false)).contains("My course", "My event, for Me", "Top up sealant and spin both wheels", "THE BUILD");
        Faults faults = new Faults();
        WorkshopReader.read(folder.resolve("workshop.yaml"), "workshop.yaml", faults);
        assertThat(faults.faults()).isEmpty();
        assertThat(faults.warnings()).isEmpty();
        assertThat(remarks).isEmpty();
    }

    @Test
    void everyFileExplainsItself() throws IOException {
        tool.startFolder(place.resolve("race").toString());
        for (String file : StarterFolder.FILES) {
            assertThat(Files.readString(place.resolve("race").resolve(file))).as(file).startsWith("# ").endsWith("\n");
        }
    }

    @Test
    void nothingIsOverwritten() throws IOException {
        Path mine = Files.writeString(place.resolve("rider.yaml"), "name: Mine\n");
        assertRefused(place.toString(), "found a folder with something in it, expected a new or an empty folder\n    Nothing was written.");
        assertRefused(mine.toString(), "found something that is not a folder, expected a new folder\n    Nothing was written.");
        assertThat(names(place)).containsExactly("rider.yaml");
        assertThat(mine).hasContent("name: Mine\n");
    }

    @Test
    void anEmptyFolderIsFilledAndAMissingOneAboveIsNotMade() throws IOException {
        tool.startFolder(Files.createDirectory(place.resolve("empty")).toString());
        assertThat(names(place.resolve("empty"))).hasSize(StarterFolder.FILES.size());
        assertRefused(place + "/none/deep", "found no folder to put it in, expected a new folder in one that exists\n    Nothing was written.");
        assertThat(names(place)).containsExactly("empty");
    }

    private void assertRefused(String typed, String message) {
        assertThatThrownBy(() -> tool.startFolder(typed)).isInstanceOfSatisfying(BadInput.class,
                bad -> assertThat(bad.faults()).extracting(Fault::text).containsExactly(typed + ": " + message));
    }
}
