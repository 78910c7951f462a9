package courseworthy.task;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assumptions.assumeThat;

import courseworthy.problem.BadInput;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PageSetTest {

    private final Workspace workspace = new Workspace(null, warning -> { });

    @TempDir
    private Path above;

    private Path folder() {
        return above.resolve("pages");
    }

    private void write(String... paths) {
        write(PageSet.ofSeason(), folder(), paths);
    }

    /** Each page holds its path. */
    private void write(PageSet pages, Path into, String... paths) {
        for (String path : paths) {
            pages.add(path, "at " + path);
        }
        pages.check(workspace, into.toString());
        pages.write(workspace, into.toString());
    }

    /** What is in a folder, by path; folders too. */
    private static Map<String, String> all(Path folder) throws IOException {
        Map<String, String> out = new TreeMap<>();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path each : (Iterable<Path>) files::iterator) {
                out.put(folder.relativize(each).toString(), Files.isDirectory(each) ? "folder" : Files.readString(each));
            }
        }
        return out;
    }

    private void refused(String what) throws IOException {
        Map<String, String> before = all(above);
        assertThatThrownBy(() -> write("index.html", "new.html")).isInstanceOf(BadInput.class).hasMessageContaining(what)
                .hasMessageContaining("expected a new or an empty folder, or one of pages that this command wrote and nobody changed")
                .hasMessageContaining("Nothing was written.");
        assertThat(all(above)).isEqualTo(before);
    }

    @Test
    void aNewFolderHoldsThePagesAndAListThatOtherToolsCheck() throws Exception {
        write("index.html", "riders/ida.html");
        assertThat(all(folder())).containsOnlyKeys("", "index.html", "riders", "riders/ida.html", "season-pages.sha256").containsEntry("riders/ida.html", "at riders/ida.html");
        String digest = HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest("at index.html".getBytes()));
        assertThat(Files.readAllLines(folder().resolve("season-pages.sha256"))).hasSize(2).contains(digest + "  index.html");
        assertThat(above).isDirectoryNotContaining(each -> each.getFileName().toString().startsWith("."));
    }

    @Test
    void whatWasWrittenBeforeIsReplacedAndNothingStaleIsLeft() throws IOException {
        write("index.html", "riders/ida.html", "events/old.html");
        write("index.html", "riders/joss.html");
        assertThat(all(folder())).containsOnlyKeys("", "index.html", "riders", "riders/joss.html", "season-pages.sha256");
        assertThat(above).isDirectoryNotContaining(each -> each.getFileName().toString().startsWith("."));
    }

    @Test
    void anEmptyFolderIsTaken() throws IOException {
        Files.createDirectory(folder());
        write("index.html");
        assertThat(all(folder())).containsKey("index.html");
    }

    /** A page that was lost, or a run that was killed half way, is made good. */
    @Test
    void missingPagesAreNoReasonToRefuse() throws IOException {
        write("index.html", "riders/ida.html");
        Files.delete(folder().resolve("index.html"));
        write("index.html");
        assertThat(all(folder())).containsOnlyKeys("", "index.html", "season-pages.sha256");
    }

    @Test
    void aFileOfTheUsersIsNeverLost() throws IOException {
        write("index.html", "riders/ida.html");
        Path notes = Files.writeString(folder().resolve("riders/notes.txt"), "mine");
        refused("found \"riders/notes.txt\" in it, which is none of its pages");
        Files.delete(notes);
        Files.createDirectory(folder().resolve("photos"));
        refused("found \"photos\" in it, which is none of its pages");
    }

    @Test
    void aPageThatSomebodyChangedIsNotOverwritten() throws IOException {
        write("index.html");
        Files.writeString(folder().resolve("index.html"), "mine now");
        refused("found \"index.html\" in it, changed since it was written");
    }

    @Test
    void aFolderWithoutTheListIsTheUsers() throws IOException {
        Files.createDirectory(folder());
        Files.writeString(folder().resolve("index.html"), "at index.html");
        refused("found a folder with something in it");
    }

    @Test
    void aFolderOfOtherPagesIsLeftAlone() throws IOException {
        write(PageSet.ofCatalogue(), folder(), "index.html");
        refused("found a folder with something in it");
    }

    /** What a link leads to is not in the folder, and so is nobody's to replace. */
    @Test
    void aLinkIsNoPage() throws IOException {
        write("index.html", "riders/ida.html");
        Path elsewhere = Files.writeString(above.resolve("elsewhere.html"), "at index.html");
        Files.delete(folder().resolve("index.html"));
        Files.createSymbolicLink(folder().resolve("index.html"), elsewhere);
        refused("found \"index.html\" in it, which is none of its pages");
        assertThat(elsewhere).hasContent("at index.html");
    }

    /** A list that names what lies outside of the folder gives no right to it. */
    @Test
    void aForgedListLeadsNowhere() throws IOException {
        write("index.html");
        Path outside = Files.writeString(above.resolve("outside.txt"), "mine");
        Files.writeString(folder().resolve("season-pages.sha256"), Files.readString(folder().resolve("season-pages.sha256")) + "0".repeat(64) + "  ../outside.txt\n");
        write("index.html");
        assertThat(outside).hasContent("mine");
    }

    @Test
    void aFileOrAMissingFolderAboveIsRefused() throws IOException {
        Path file = Files.writeString(above.resolve("file"), "mine");
        assertThatThrownBy(() -> write(PageSet.ofSeason(), file, "index.html")).isInstanceOf(BadInput.class).hasMessageContaining("found something that is not a folder");
        assertThatThrownBy(() -> write(PageSet.ofSeason(), above.resolve("no/pages"), "index.html")).isInstanceOf(BadInput.class)
                .hasMessageContaining("found no folder to put it in");
        assertThat(all(above)).containsOnlyKeys("", "file");
    }

    /** Where the new pages cannot come in, the old ones stand as they stood. */
    @Test
    void afterAFailureTheFolderIsAsBefore() throws IOException {
        write("index.html", "riders/ida.html");
        Map<String, String> before = all(above);
        PageSet pages = PageSet.ofSeason();
        pages.add("index.html", "new");
        pages.add("index.html/below.html", "no file system has this");
        assertThatThrownBy(() -> pages.write(workspace, folder().toString())).isInstanceOf(RuntimeException.class);
        assertThat(all(above)).isEqualTo(before);
    }

    @Test
    void aFolderWhoseParentTakesNothingIsWrittenFromWithin() throws IOException {
        Path parent = Files.createDirectory(above.resolve("parent"));
        Path inner = Files.createDirectory(parent.resolve("pages"));
        write(PageSet.ofSeason(), inner, "index.html", "riders/ida.html");
        assumeThat(parent.toFile().setWritable(false)).isTrue();
        try {
            write(PageSet.ofSeason(), inner, "index.html", "riders/joss.html");
            assertThat(all(inner)).containsOnlyKeys("", "index.html", "riders", "riders/joss.html", "season-pages.sha256");
        } finally {
            parent.toFile().setWritable(true);
        }
    }
}
