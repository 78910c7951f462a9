package courseworthy.render;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.report.picture.ElevationProfile;
import org.junit.jupiter.api.Test;

class ElevationSketchTest {

    @Test
    void theLowestIsTheLowestBlockAndTheHighestIsFull() {
        assertThat(sketch(100, 170, 135, 100).rows(1, 1)).containsExactly("\u2581\u2588\u2585\u2581");
    }

    @Test
    void aFlatCourseIsALowLine() {
        assertThat(sketch(5, 5, 5).rows(1, 1)).containsExactly("\u2581\u2581\u2581");
    }

    @Test
    void rowsStackFromTheTop() {
        assertThat(sketch(0, 16, 8).rows(2, 0)).containsExactly(" \u2588", " \u2588\u2588");
    }

    /** The columns are 50, 62.5, 75, 87.5 and 100 m high: eighths of 1, 2.75, 4.5, 6.25 and 8, rounded. */
    @Test
    void eachColumnShowsItsHighestPointAndGapsAreBridged() {
        ElevationProfile profile = new ElevationProfile(new double[] {0, 10, 19, 90, 100}, new double[] {0, 50, 20, Double.NaN, 100}, true);
        assertThat(new ElevationSketch(profile, 5).rows(1, 1)).containsExactly("\u2581\u2583\u2585\u2586\u2588");
        assertThat(new ElevationSketch(profile, 5).lowest()).isEqualTo(50);
        assertThat(new ElevationSketch(profile, 5).highest()).isEqualTo(100);
    }

    @Test
    void aLineWithoutHeightsIsDrawnFlat() {
        ElevationProfile profile = new ElevationProfile(new double[] {0, 100}, new double[] {Double.NaN, Double.NaN}, true);
        assertThat(new ElevationSketch(profile, 3).rows(1, 1)).containsExactly("\u2581\u2581\u2581");
    }

    /** One point to a column. */
    private static ElevationSketch sketch(double... heights) {
        double[] distances = new double[heights.length];
        for (int i = 0; i < heights.length; i++) {
            distances[i] = i;
        }
        return new ElevationSketch(new ElevationProfile(distances, heights, true), heights.length);
    }
}
