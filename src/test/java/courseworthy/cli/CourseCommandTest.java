package courseworthy.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import courseworthy.report.json.OutputSchema;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
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

    /** The picture of a course has a title, and its points stand in the page as in the JSON; the highest is the highest of both. */
    @Test
    void thePictureOfACourseHasItsTitleAndItsPoints() throws IOException {
        Document page = Jsoup.parse(CommandRun.of("course", "course-profiles/heather-ridge.yaml", "--format", "html").out());
        JsonNode heights = OutputSchema.tree(CommandRun.of("course", "course-profiles/heather-ridge.yaml", "--format", "json").out()).get("heights");
        List<String> rows = page.select("figure details.data tbody tr").eachText();
        assertThat(rows).hasSizeGreaterThan(10).hasSameSizeAs(heights.get("at_m"));
        int highest = 0;
        for (int i = 0; i < rows.size(); i++) {
            String[] shown = rows.get(i).split(" ");
            assertThat(Double.parseDouble(shown[0])).isCloseTo(heights.get("at_m").get(i).asDouble() / 1000, within(0.051));
            assertThat(Double.parseDouble(shown[1])).as("the JSON has a decimal more").isCloseTo(heights.get("height_m").get(i).asDouble(), within(0.56));
            highest = heights.get("height_m").get(i).asDouble() > heights.get("height_m").get(highest).asDouble() ? i : highest;
        }
        String[] words = rows.get(highest).split(" ");
        assertThat(page.select("figure .figure-title").text().replaceAll("[\\u00a0\\u202f]", " ")).isEqualTo("Highest at " + words[0] + " km: " + words[1] + " m");
        assertThat(page.select("figure svg title").text()).startsWith("Highest at");
    }

    private String written(String content) throws IOException {
        Path file = folder.resolve("points.gpx");
        return Files.writeString(file, "<gpx version=\"1.1\" xmlns=\"http://www.topografix.com/GPX/1/1\">" + content + "</gpx>").toString();
    }
}
