package courseworthy.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CourseCommandTest {

    @TempDir
    private Path folder;

    /** A file that can be read but has nothing to ride is told so, and is no fault; a brief of it is. */
    @Test
    void pointsWithoutALineAreTold() throws IOException {
        String file = written("<wpt lat=\"47\" lon=\"9\"><name>Spring below the saddle</name></wpt>");
        Ran ran = Ran.of("course", file);
        assertThat(ran.code()).isZero();
        assertThat(ran.err()).isEmpty();
        assertThat(ran.out().replaceAll("\\s+", " ")).isEqualTo(file + " was read; there is no line to ride in it, only 1 way point "
                + "(Spring below the saddle). Distance, climbing and all that follows from them are not known: export the course as a track or a "
                + "route. ");
        assertThat(Ran.of("course", file, "--format", "json").out()).contains("\"only\" : \"1 way point (Spring below the saddle)\"");
        assertThat(Ran.of("brief", file)).isEqualTo(new Ran(2, "", file + ": found no track and no route, only way points (1), expected a track or "
                + "route with at least two points in different places\n    Export the course as a track.\n"));
    }

    @Test
    void aSinglePointIsAFault() throws IOException {
        String file = written("<trk><trkseg><trkpt lat=\"47\" lon=\"9\"/></trkseg></trk>");
        assertThat(Ran.of("course", file)).isEqualTo(new Ran(2, "", file + ": found a single point, expected a track or route with at least two points "
                + "in different places\n    Export the course as a track.\n"));
    }

    private String written(String content) throws IOException {
        Path file = folder.resolve("points.gpx");
        return Files.writeString(file, "<gpx version=\"1.1\" xmlns=\"http://www.topografix.com/GPX/1/1\">" + content + "</gpx>").toString();
    }
}
