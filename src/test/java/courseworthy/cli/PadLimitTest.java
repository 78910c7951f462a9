package courseworthy.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Pads are never called good below what their maker marks, whatever is common practice. */
class PadLimitTest {

    private static final String DOWN = "lane pads front: down to the manufacturer's wear mark; change them and bed the new ones in";

    @TempDir
    private Path folder;

    private String brief(String details) throws IOException {
        String text = Files.readString(Path.of("docs/examples/workshops/cellar.yaml")).replaceAll("(?m)^log: .*$", "");
        String pads = text.replace("pad shape: square pad, left: 2 mm", "pad shape: square pad, " + details);
        assertThat(text).contains("lane pads front, kind: brake pads").contains("pad shape: square pad, left: 2 mm");
        Path workshop = Files.writeString(folder.resolve("cellar.yaml"), pads);
        CommandRun ran = CommandRun.of(List.of("brief", "course-profiles/quern-hills.yaml", "--event", "docs/examples/events/quern-hills.yaml", "--rider",
                "docs/examples/riders/joss-steel.yaml", "--workshop", workshop.toString(), "--full").toArray(String[]::new));
        assertThat(ran.code()).as(ran.err()).isZero();
        return ran.out().replaceAll("\\s+", " ");
    }

    @Test
    void theMarkComesFirst() throws IOException {
        assertThat(brief("left: 2 mm, least left: 2 mm")).contains(DOWN);
        assertThat(brief("left: 2 mm, least left: 1.9 mm")).doesNotContain(DOWN);
        assertThat(brief("left: 2 mm")).doesNotContain(DOWN);
    }
}
