package courseworthy.course.extract;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import courseworthy.course.Course;
import courseworthy.course.CourseReader;
import courseworthy.course.Track;
import courseworthy.problem.Faults;
import courseworthy.problem.Progress;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import net.sf.geographiclib.Geodesic;
import net.sf.geographiclib.GeodesicMask;
import org.junit.jupiter.api.Test;

/** The shipped map of an invented place, and the track on it. */
class ExampleMapTest {

    private static final Path FOLDER = Path.of("docs", "examples", "maps");

    private static Course course() {
        Faults faults = new Faults();
        Course course = CourseReader.read(FOLDER.resolve(ExampleMap.TRACK), ExampleMap.TRACK, null, faults);
        assertThat(faults.faults()).isEmpty();
        return course;
    }

    private static MapExtract map() {
        Faults faults = new Faults();
        MapExtract map = ExtractReader.read(List.of(FOLDER.resolve(ExampleMap.MAP)), Corridor.around(course().track(), 200), faults, Progress.UNSEEN);
        assertThat(faults.faults()).isEmpty();
        return map;
    }

    @Test
    void theFilesAreWhatTheirMakerMakes() throws IOException {
        for (Map.Entry<String, String> file : ExampleMap.files().entrySet()) {
            assertThat(Files.readString(FOLDER.resolve(file.getKey()))).as(file.getKey() + ": run ExampleMap").isEqualTo(file.getValue());
        }
    }

    /** Nobody's map was copied, so nobody has to be named; the place is in the Celtic Sea, as in ShippedCoursesTest. */
    @Test
    void thePlaceIsInvented() {
        assertThat(map().attributionNeeded()).isFalse();
        Bounds bounds = map().files().get(0).bounds();
        assertThat(bounds.south()).isGreaterThan(49);
        assertThat(bounds.north()).isLessThan(51);
        assertThat(bounds.west()).isGreaterThan(-9.5);
        assertThat(bounds.east()).isLessThan(-7);
        Track.TrackPiece piece = course().track().pieces().get(0);
        for (int i = 0; i < piece.size(); i++) {
            assertThat(map().covers(piece.lat()[i], piece.lon()[i])).isTrue();
        }
    }

    @Test
    void theTrackGoesRoundOnItsWays() {
        double along = 0;
        for (MapWay way : map().ways().subList(0, ExampleMap.LOOP.size())) {
            for (int i = 1; i < way.size(); i++) {
                along += Geodesic.WGS84.Inverse(way.latitude()[i - 1], way.longitude()[i - 1], way.latitude()[i], way.longitude()[i],
                        GeodesicMask.DISTANCE).s12;
            }
        }
        assertThat(along).isBetween(12_000.0, 12_500.0);
        assertThat(course().length()).isCloseTo(along, within(0.02 * along));
        assertThat(course().climbing()).isNull();
        MapExtract map = map();
        assertThat(map.nodes()).flatExtracting(node -> node.tags().keySet()).contains("ford", "barrier", "crossing");
        assertThat(map.ways()).extracting(way -> way.tag("highway"))
                .contains("residential", "unclassified", "track", "path", "footway", "cycleway", "service", "secondary", "steps");
        for (int i = 0; i < ExampleMap.LOOP.size(); i++) {
            MapWay way = map.ways().get(i);
            MapWay next = map.ways().get((i + 1) % ExampleMap.LOOP.size());
            assertThat(way.id()).isEqualTo(i + 1);
            assertThat(way.nodes()[way.size() - 1]).isEqualTo(next.nodes()[0]);
        }
    }
}
