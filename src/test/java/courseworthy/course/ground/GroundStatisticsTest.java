package courseworthy.course.ground;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import courseworthy.RealData;
import courseworthy.course.Course;
import courseworthy.course.CourseReader;
import courseworthy.course.GeodesicDistance;
import courseworthy.course.extract.Corridor;
import courseworthy.course.extract.ExtractReader;
import courseworthy.course.extract.MapExtract;
import courseworthy.course.extract.MapWay;
import courseworthy.problem.Faults;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Figures that rows of the table name as their source, counted anew: lengths of ways in an extract of one alpine region, 2022
 * ((c) OpenStreetMap contributors, ODbL 1.0).
 */
class GroundStatisticsTest {

    private static MapExtract region;

    @BeforeAll
    static void read() {
        Faults faults = new Faults();
        Course middle = CourseReader.read(RealData.at("tracks/course_osm_valley.gpx"), "valley", null, faults);
        region = ExtractReader.read(List.of(RealData.at("osm/liechtenstein-2022.osm.pbf")), Corridor.around(middle.track(), 20_000), faults, (done, all) -> { });
        faults.throwIfAny();
    }

    /** Of the length that has any value of a key, the share with one, %. */
    private static double share(String of, String is, String key, String value) {
        double all = 0;
        double with = 0;
        for (MapWay way : region.ways()) {
            if (way.tag(of).equals(is) && !way.tag(key).isEmpty()) {
                all += length(way);
                with += way.tag(key).equals(value) ? length(way) : 0;
            }
        }
        return 100 * with / all;
    }

    private static double length(MapWay way) {
        double sum = 0;
        for (int i = 1; i < way.size(); i++) {
            sum += GeodesicDistance.metres(way.latitude()[i - 1], way.longitude()[i - 1], way.latitude()[i], way.longitude()[i]);
        }
        return sum;
    }

    @ParameterizedTest
    @CsvSource({"highway, primary, surface, asphalt, 100", "highway, residential, surface, asphalt, 97", "highway, unclassified, surface, asphalt, 93",
        "highway, cycleway, surface, asphalt, 96", "highway, service, surface, asphalt, 75", "highway, footway, surface, asphalt, 42",
        "tracktype, grade1, surface, asphalt, 87", "tracktype, grade2, surface, gravel, 49", "tracktype, grade2, surface, compacted, 33",
        "tracktype, grade3, surface, gravel, 42", "tracktype, grade3, surface, compacted, 40", "tracktype, grade4, surface, ground, 31",
        "tracktype, grade4, surface, gravel, 26", "tracktype, grade4, surface, grass, 16", "tracktype, grade5, surface, grass, 31",
        "tracktype, grade5, surface, ground, 29", "highway, track, surface, gravel, 34", "highway, track, surface, compacted, 28",
        "highway, track, surface, asphalt, 18", "highway, path, surface, dirt, 27", "highway, path, surface, ground, 20",
        "highway, path, surface, gravel, 18", "highway, path, surface, asphalt, 17", "highway, path, mtb:scale, 1, 14", "highway, path, mtb:scale, 2, 34",
        "highway, path, mtb:scale, 3, 32", "surface, gravel, smoothness, bad, 78"})
    void sharesAreAsTheTableNamesThem(String of, String is, String key, String value, double percent) {
        assertThat(share(of, is, key, value)).isCloseTo(percent, within(1.0));
    }

    /** What the table gives a class of roads is what most of them with a surface have. */
    @Test
    void whatIsLikelyIsWhatMostHave() {
        for (GroundRule rule : GroundRules.shipped().rules()) {
            if ("asphalt".equals(rule.gives().get("surface"))) {
                for (String highway : rule.when().get("highway")) {
                    double share = share("highway", highway, "surface", "asphalt");
                    assertThat(Double.isNaN(share) || share > 70).as(rule.id() + " " + highway + " " + share).isTrue();
                }
            }
        }
    }
}
