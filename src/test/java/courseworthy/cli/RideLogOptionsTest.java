package courseworthy.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Recorded rides on the command line of a brief and a checklist count on the parts, as those of a log do. */
class RideLogOptionsTest {

    private static final List<String> ASKED = List.of("course-profiles/heather-ridge.yaml", "--event", "docs/examples/events/heather-ridge.yaml", "--rider", "docs/examples/riders/ida-hardtail.yaml");

    @TempDir
    private Path folder;

    private Path workshop;

    /** 58 h on the fork that is raced, of the 60 h after which its oil is due at the latest. */
    @BeforeEach
    void workshop() throws IOException {
        workshop = folder.resolve("cellar.yaml");
        Files.writeString(workshop, Files.readString(Path.of("docs/examples/workshops/cellar.yaml"))
                .replace("{name: borrowed fork 120, kind: fork, on: borrowed bike,", "{name: borrowed fork 120, kind: fork, on: borrowed bike, hours used: 58 h,"));
    }

    private static CommandRun run(String command, String... more) {
        List<String> words = new ArrayList<>(List.of(command));
        words.addAll(ASKED);
        words.addAll(List.of(more));
        return CommandRun.of(words.toArray(String[]::new));
    }

    private static String plain(CommandRun run) {
        return run.out().replaceAll("\\s+", " ");
    }

    @Test
    void recordedRidesCountInABrief() {
        String[] log = {"--workshop", workshop.toString(), "--part", "build", "--log", "docs/examples/recordings", "--log-bike", "borrowed bike"};
        assertThat(plain(run("brief", log))).containsPattern("borrowed fork 120: due by 2026-\\d\\d-\\d\\d \\([^)]*\\); change oil and seals");
        assertThat(plain(run("brief", "--workshop", workshop.toString(), "--part", "build"))).contains("borrowed fork 120").doesNotContain("due by ");
    }

    @Test
    void andOnAChecklist() {
        assertThat(plain(run("checklist", "--workshop", workshop.toString(), "--log", "docs/examples/recordings", "--log-bike", "borrowed bike")))
                .contains("[ ] ! borrowed fork 120: change oil and seals Done when: ").containsPattern("Why: Due by 2026-\\d\\d-\\d\\d \\(");
    }

    @Test
    void whatIsMissingIsAskedFor() {
        CommandRun none = run("brief", "--log", "docs/examples/recordings");
        assertThat(none.err()).isEqualTo("--log: found no --workshop, expected --workshop beside it: whose parts were ridden\n");
        assertThat(none.code()).isEqualTo(2);
        assertThat(run("checklist", "--workshop", workshop.toString(), "--log-bike", "hardtail").err())
                .isEqualTo("--log-bike: found no --log, expected --log beside it: the rides of that bike\n");
        assertThat(run("brief", "--workshop", workshop.toString(), "--log", "docs/examples/recordings").err())
                .isEqualTo("--log-bike: found nothing, expected the bike of the recorded rides: steel bike, hardtail, borrowed bike\n");
    }

    /** The option is for what a device recorded; the log that people write has its place in the workshop's file. */
    @Test
    void aWrittenLogIsNotARecording() {
        CommandRun ran = run("brief", "--workshop", workshop.toString(), "--log", "docs/examples/cellar-log.yaml", "--log-bike", "borrowed bike");
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).isEqualTo("--log: found \"docs/examples/cellar-log.yaml\", a file that is written by hand, expected a recorded ride (GPX), or a folder of them\n"
                + "    A written log is named in the workshop's file: \"log: log.yaml\".\n");
    }
}
