package courseworthy.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CourseCommandTest {

    @TempDir
    private Path folder;

    /** What cannot be ridden is unusable for every command alike, and what is in it is told. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "<wpt lat='47' lon='9'><name>Spring below the saddle</name></wpt> | no track and no route, only 1 way point (Spring below the saddle)",
        "<wpt lat='47' lon='9'/><wpt lat='47' lon='9'/> | no track and no route, only 2 way points",
        "<trk><trkseg><trkpt lat='47' lon='9'/></trkseg></trk> | a single point",
        "<trk><trkseg><trkpt lat='47' lon='9'/><trkpt lat='47' lon='9'/></trkseg></trk> | 2 points, none of them in a line of two places"}, quoteCharacter = '`')
    void courseAndBriefAgreeOnWhatIsUnusable(String content, String found) throws IOException {
        String file = written(content);
        CommandRun refused = new CommandRun(2, "", file + ": found " + found + ", expected a track or route with at least two points in different places\n"
                + "    Export the course as a track.\n");
        assertThat(CommandRun.of("course", file)).isEqualTo(refused);
        assertThat(CommandRun.of("course", file, "--format", "json")).isEqualTo(refused);
        assertThat(CommandRun.of("brief", file)).isEqualTo(refused);
        assertThat(CommandRun.of("gears", file)).isEqualTo(refused);
    }

    private String written(String content) throws IOException {
        Path file = folder.resolve("points.gpx");
        return Files.writeString(file, "<gpx version=\"1.1\" xmlns=\"http://www.topografix.com/GPX/1/1\">" + content + "</gpx>").toString();
    }
}
