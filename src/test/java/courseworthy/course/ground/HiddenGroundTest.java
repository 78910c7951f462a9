package courseworthy.course.ground;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Scouting on a real map ((c) OpenStreetMap contributors, ODbL 1.0) with the ground of ways hidden; {@link HiddenGroundMeasure} draws more often. */
class HiddenGroundTest {

    /** What a scout finds brings the true recommendation back; the first three answers remove half of the time that hangs on it. */
    @ParameterizedTest
    @CsvSource({"course_osm_valley, 2", "course_osm_rhine, 1"})
    void answersBringTheTrueRecommendationBack(String name, int seeds) throws IOException {
        HiddenGround course = new HiddenGround(name);
        List<HiddenGround.Outcome> outcomes = new ArrayList<>();
        for (int seed = 0; seed < seeds; seed++) {
            HiddenGround.Outcome outcome = course.scouted(seed);
            assertThat(outcome.wrong()).as(outcome.toString()).isEmpty();
            assertThat(outcome.hidden()).isPositive();
            outcomes.add(outcome);
        }
        assertThat(HiddenGround.Outcome.removed(outcomes)).as(outcomes.toString()).isGreaterThan(0.5);
    }
}
