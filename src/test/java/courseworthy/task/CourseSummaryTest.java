package courseworthy.task;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import courseworthy.RealData;
import courseworthy.course.Course;
import courseworthy.course.CourseReader;
import courseworthy.course.CourseSources;
import courseworthy.course.Ground;
import courseworthy.course.Stretch;
import courseworthy.course.Surface;
import courseworthy.course.ground.MapGround;
import courseworthy.problem.Faults;
import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CourseSummaryTest {

    /** Real tracks on a real map ((c) OpenStreetMap contributors, ODbL 1.0), against the ways that they were joined from. */
    @ParameterizedTest
    @ValueSource(strings = {"course_osm_valley", "course_osm_rhine"})
    void rangeOfEachSurfaceHoldsItsTrueShare(String name) throws IOException {
        Faults faults = new Faults();
        MapGround map = new MapGround(List.of(RealData.at("osm/liechtenstein-2022.osm.pbf")), false);
        Course course = CourseReader.with(RealData.at("tracks/" + name + ".gpx"), name, new CourseSources(null, map, null), faults);
        assertThat(faults.faults()).isEmpty();
        Map<String, Double> truth = new TreeMap<>();
        double all = 0;
        for (String line : Files.readAllLines(RealData.at("osm/" + name + ".ways.csv")).stream().skip(1).toList()) {
            String[] way = line.split(",", -1);
            truth.merge(way[6], Double.parseDouble(way[4]), Double::sum);
            all += Double.parseDouble(way[4]);
        }
        CourseSummary.GroundSummary ground = CourseSummary.of(course).ground();
        for (Map.Entry<String, Double> each : truth.entrySet()) {
            double share = each.getValue() / all;
            double[] found = ground.surfaces().stream().filter(one -> one.surface().equals(each.getKey())).findFirst()
                    .map(one -> new double[] {one.share().doubleValue(), one.atMost().doubleValue()}).orElse(new double[2]);
            assertThat(Math.max(0, Math.max(found[0] - share, share - found[1]))).as(each.getKey()).isLessThan(0.01);
        }
        assertThat(ground.unknown().doubleValue()).isLessThan(0.01);
        assertThat(ground.narrowed().doubleValue()).isBetween(0.01, 0.1);
    }

    @Test
    void whatIsOneOfSeveralIsSharedAsARangeAndNotAsUnknown() {
        Ground nothing = ground(null);
        Course course = Course.builder("a lane", List.of(
                new Stretch(6000, null, null, null, ground(Surface.ASPHALT), 1),
                new Stretch(3000, null, null, null, nothing, List.of(ground(Surface.ASPHALT), ground(Surface.GRAVEL)), null, 2),
                new Stretch(1000, null, null, null, nothing, 3))).build();
        CourseSummary.GroundSummary ground = CourseSummary.of(course).ground();
        assertThat(ground.surfaces()).extracting(CourseSummary.SurfaceShare::surface).containsExactly("asphalt", "unknown", "gravel");
        assertThat(ground.surfaces()).extracting(each -> each.share().doubleValue()).containsExactly(0.6, 0.4, 0.0);
        assertThat(ground.surfaces()).extracting(each -> each.atMost().doubleValue()).containsExactly(0.9, 0.4, 0.3);
        assertThat(ground.unknown().doubleValue()).isCloseTo(0.1, within(1e-9));
    }

    private static Ground ground(Surface surface) {
        return Ground.builder().surface(surface).build();
    }
}
