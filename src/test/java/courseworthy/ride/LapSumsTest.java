package courseworthy.ride;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import courseworthy.course.Course;
import courseworthy.course.Ground;
import courseworthy.course.Stretch;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Sums over parts of a ride, against adding up step by step and lap by lap. */
class LapSumsTest {

    private static final DiscretisedCourse WAY = DiscretisedCourse.of(Course.builder("three", List.of(
            new Stretch(2500, 60.0, 0.0, null, Ground.UNKNOWN, 0), new Stretch(1700, 0.0, 90.0, null, Ground.UNKNOWN, 0),
            new Stretch(4000, 20.0, 30.0, null, Ground.UNKNOWN, 0))).build(), 0);

    @Test
    void aPartIsTheSumOfTheStepsWhoseMiddleIsPassed() {
        LapSums sums = new LapSums(WAY, step -> step + 1);
        for (double from = 0; from < 25_000; from += 1230) {
            for (double to = from; to < 25_000; to += 977) {
                double sum = 0;
                for (int lap = 0; lap < 4; lap++) {
                    for (int step = 0; step < WAY.size(); step++) {
                        double middle = lap * WAY.length() + WAY.along(step) - WAY.length(step) / 2;
                        sum += middle > from && middle <= to ? step + 1 : 0;
                    }
                }
                assertThat(sums.between(from, to)).as("%.0f to %.0f", from, to).isEqualTo(sum, within(1e-6));
            }
        }
    }
}
