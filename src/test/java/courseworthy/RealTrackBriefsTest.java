package courseworthy;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import courseworthy.cli.Format;
import courseworthy.report.json.OutputSchema;
import courseworthy.task.Request;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Briefs of real tracks, given without a profile. */
class RealTrackBriefsTest {

    private final ToolOutput tool = new ToolOutput(null, remark -> { });

    static Stream<Path> tracks() throws IOException {
        try (Stream<Path> files = Files.list(RealData.at("tracks"))) {
            List<Path> tracks = files.filter(file -> file.toString().endsWith(".gpx")).sorted().toList();
            assertThat(tracks).hasSizeGreaterThanOrEqualTo(15);
            return tracks.stream();
        }
    }

    @ParameterizedTest
    @MethodSource("tracks")
    void aTrackAloneAsksForItsGround(Path track) {
        Request request = Request.builder(track.toString()).build();
        String text = tool.brief(request, Format.TEXT);
        assertThat(text).contains("Most of the ground is not known.", "--map EXTRACT").containsPattern("(?m)^  ground +surface, smoothness, ");
        assertThat(text.lines()).allMatch(line -> line.length() <= 80);
        JsonNode json = OutputSchema.tree(tool.brief(request, Format.JSON));
        assertThat(json.get("course").get("surfaces").toString()).isEqualTo("[{\"surface\":\"unknown\",\"share\":1,\"share_at_most\":1}]");
        assertThat(json.get("could_not_tell")).isNotEmpty();
    }

    @ParameterizedTest
    @MethodSource("tracks")
    void groundThatIsGivenIsShownAsAssumed(Path track) {
        Request request = Request.builder(track.toString()).ground("surface=gravel, smoothness=bad, mtb:scale=0").build();
        String text = tool.brief(request, Format.TEXT);
        assertThat(text).doesNotContain("Most of the ground is not known.").contains("gravel 100 %");
        assertThat(text.substring(text.indexOf("ASSUMED"))).contains("surface gravel on", "smoothness bad on");
        JsonNode json = OutputSchema.tree(tool.brief(request, Format.JSON));
        assertThat(json.get("assumed").toString()).contains("{\"what\":\"ground\",\"value\":\"surface gravel on");
    }
}
