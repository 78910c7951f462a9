package courseworthy.ride;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import courseworthy.topic.Topics;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Wheels and positions of the kinds of bike. */
class BikeKindTest {

    @Test
    void everyKindOfTheTopicIsKnown() {
        assertThat(Arrays.stream(BikeKind.values()).map(BikeKind::written)).containsExactlyElementsOf(Topics.BIKE.options());
    }

    /** Nominal circumference pi (BSD + 2 w) of designations by ISO 5775-1, mm, worked out apart; half a millimetre of rounding. */
    @ParameterizedTest
    @CsvSource({"28, 622, 2130", "32, 622, 2155", "40, 622, 2205", "45, 622, 2237", "50, 622, 2268", "57, 622, 2312", "60, 622, 2331",
        "47, 584, 2130", "50, 584, 2149", "57, 584, 2193", "54, 559, 2095", "25, 622, 2111"})
    void circumferenceIsNominal(double width, double beadSeat, double millimetres) {
        assertThat(BikeKind.circumference(beadSeat / 1000, width / 1000) * 1000).isCloseTo(millimetres, within(0.6));
    }

    /** 47-584 has the nominal diameter of 28-622, 678 mm. */
    @Test
    void twoDesignationsOfOneDiameter() {
        assertThat(BikeKind.circumference(0.584, 0.047)).isCloseTo(BikeKind.circumference(0.622, 0.028), within(1e-12));
        assertThat(BikeKind.circumference(0.622, 0.028) / Math.PI).isCloseTo(0.678, within(1e-12));
    }

    /** Mountain-bike riders 0.33 to 0.45 m², mass-start positions never under 0.2 (from the published positions, {@link DragArea}). */
    @ParameterizedTest
    @EnumSource(BikeKind.class)
    void dragAreasLieAmongThePublished(BikeKind kind) {
        Range area = DragArea.alone(kind, 75);
        assertThat(area.low()).isGreaterThan(0.2);
        boolean dropBar = kind == BikeKind.ROAD || kind == BikeKind.GRAVEL;
        assertThat(area.mid()).isBetween(dropBar ? 0.27 : 0.33, dropBar ? 0.40 : 0.45);
        assertThat(DragArea.inTheGroup(area).mid()).isLessThan(area.mid());
    }

    /** Bertucci and others 2013, mountain-bike rider seated: 0.357 ± 0.023 m², from memory; inside the range of every mountain bike. */
    @ParameterizedTest
    @EnumSource(value = BikeKind.class, names = {"HARDTAIL", "FULL", "TRAIL"})
    void theMeasuredMountainBikeRiderIsInside(BikeKind kind) {
        assertThat(DragArea.alone(kind, 75).low()).isLessThan(0.357);
        assertThat(DragArea.alone(kind, 75).high()).isGreaterThan(0.357 + 0.023);
    }

    /**
     * Frontal area grows with mass to the power 0.762 (Heil 2001, from memory): 60 to 80 kg, times 1.245. The body is 0.6 to 0.82 of
     * drag, so the whole must grow by 0.6 to 0.82 of that.
     */
    @Test
    void heavierRidersHaveMoreDrag() {
        double ratio = DragArea.alone(BikeKind.ROAD, 80).mid() / DragArea.alone(BikeKind.ROAD, 60).mid();
        assertThat(ratio - 1).isBetween(0.6 * 0.245, 0.82 * 0.245);
    }
}
