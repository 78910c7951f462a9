package courseworthy.course.ground;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Scouting with the ground of a fifth of the ways hidden, 20 draws a course. */
class HiddenGroundMeasure {

    private static final int SEEDS = 20;

    @ParameterizedTest
    @ValueSource(strings = {"course_osm_valley", "course_osm_rhine"})
    void threeAnswersRemoveHalf(String name) throws IOException {
        HiddenGround course = new HiddenGround(name);
        List<HiddenGround.Outcome> outcomes = new ArrayList<>();
        for (int seed = 0; seed < SEEDS; seed++) {
            outcomes.add(course.scouted(seed));
        }
        System.out.println(String.format(Locale.ROOT, "%s: three answers remove %.2f on average, %.2f of all time that hangs; %d of %d draws with a decision otherwise",
                name, HiddenGround.Outcome.removed(outcomes), 1 - outcomes.stream().mapToDouble(HiddenGround.Outcome::after).sum()
                        / outcomes.stream().mapToDouble(HiddenGround.Outcome::hanging).sum(),
                outcomes.stream().filter(each -> !each.wrong().isEmpty()).count(), SEEDS));
        assertThat(outcomes).as("decisions as with the truth").allMatch(each -> each.wrong().isEmpty());
        assertThat(HiddenGround.Outcome.removed(outcomes)).isGreaterThan(0.5);
    }
}
