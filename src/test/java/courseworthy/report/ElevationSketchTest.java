package courseworthy.report;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.course.ElevationLine;
import java.util.List;
import org.junit.jupiter.api.Test;

class ElevationSketchTest {

    @Test
    void theLowestIsTheLowestBlockAndTheHighestIsFull() {
        assertThat(ElevationSketch.row(new double[] {100, 170, 135, 100})).isEqualTo("\u2581\u2588\u2585\u2581");
    }

    @Test
    void aFlatCourseIsALowLine() {
        assertThat(ElevationSketch.row(new double[] {5, 5, 5})).isEqualTo("\u2581\u2581\u2581");
    }

    @Test
    void rowsStackFromTheTop() {
        List<String> rows = ElevationSketch.rows(new double[] {0, 16, 8}, 2, 0);
        assertThat(rows).containsExactly(" \u2588", " \u2588\u2588");
    }

    @Test
    void eachColumnShowsItsHighestPointAndGapsAreBridged() {
        ElevationLine line = new ElevationLine(new double[] {0, 10, 19, 90, 100}, new double[] {0, 50, 20, Double.NaN, 100}, true, true);
        assertThat(ElevationSketch.columns(line, 5)).containsExactly(50, 62.5, 75, 87.5, 100);
    }

    @Test
    void aLineWithoutHeightsIsDrawnFlat() {
        ElevationLine line = new ElevationLine(new double[] {0, 100}, new double[] {Double.NaN, Double.NaN}, true, true);
        assertThat(ElevationSketch.row(ElevationSketch.columns(line, 3))).isEqualTo("\u2581\u2581\u2581");
    }
}
