package courseworthy.ride;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Ordinary bikes of each kind, as scales, tape and tyre tests show them (common practice, no source, but where it is said). */
class BikeFiguresTest {

    /** Tyres in mm by ETRTO; all on 622 mm (ISO 5775-1), so that a turn of a 28-622 is 2.13 m. Kilograms ready to ride, without water. */
    @ParameterizedTest
    @CsvSource({"ROAD, 28, 7.1, 8.3, 9.5", "GRAVEL, 45, 8.2, 9.5, 10.8", "HARDTAIL, 57, 9.5, 10.8, 12.1", "FULL, 57, 10.5, 11.8, 13.1", "TRAIL, 60, 12.5, 14.0, 15.5"})
    void tyresAndMasses(BikeKind kind, double tyre, double light, double usual, double heavy) {
        assertThat(kind.tyreWidth() * 1000).isCloseTo(tyre, within(1e-9));
        assertThat(kind.circumference()).isCloseTo(Math.PI * (0.622 + 2 * tyre / 1000), within(1e-9));
        assertThat(kind.mass().low()).isCloseTo(light, within(0.01));
        assertThat(kind.mass().mid()).isCloseTo(usual, within(0.01));
        assertThat(kind.mass().high()).isCloseTo(heavy, within(0.01));
    }

    /**
     * Drag areas, m², of 75 kg: drop bars between dropped, 0.276, and upright or on the hoods, 0.299 to 0.400 (Grappe et al. 1997; Gross et al. 1983);
     * flat bars about 0.357 ± 0.023 (Bertucci et al. 2013, from memory) and above, a trail bike's wide bar most.
     */
    @ParameterizedTest
    @CsvSource({"ROAD, 0.28, 0.32, 0.37", "GRAVEL, 0.30, 0.35, 0.40", "HARDTAIL, 0.33, 0.38, 0.44", "FULL, 0.33, 0.385, 0.45", "TRAIL, 0.35, 0.41, 0.48"})
    void dragAreas(BikeKind kind, double low, double mid, double high) {
        Range area = DragArea.alone(kind, 75);
        assertThat(new double[] {area.low(), area.mid(), area.high()}).containsExactly(new double[] {low, mid, high}, within(0.002));
    }

    /**
     * Rolling on a new road in kg a tonne: 4.5 for a road tyre (band 3 to 6, cf. Wilson and Papadopoulos 2004), 6 for gravel, 8 for a cross-country
     * knobby, 10.5 for a trail tyre. A road bike feels 1.3 of a gravel bike's shaking, full suspension 0.8. Rough ground is ridden at 0.75 of a
     * rider's usual pace on a road bike, at 1.12 on a trail bike. 45 to 47 % of the mass stands on the front wheel.
     */
    @ParameterizedTest
    @CsvSource({"ROAD, 4.5, 1.3, 0.75, 45", "GRAVEL, 6.0, 1.0, 0.85, 45", "HARDTAIL, 8.0, 0.85, 0.94, 47", "FULL, 8.0, 0.80, 1.04, 47", "TRAIL, 10.5, 0.80, 1.12, 45"})
    void rollingPaceAndLoad(BikeKind kind, double rolling, double shaken, double pace, double front) {
        assertThat(1000 * kind.rollingOnSmooth()).isCloseTo(rolling, within(0.05));
        assertThat(kind.roughnessLoss()).isCloseTo(shaken, within(0.005));
        assertThat(kind.paceOnRough()).isCloseTo(pace, within(0.005));
        assertThat(100 * kind.frontShare()).isCloseTo(front, within(0.5));
    }

    /** Behind others 15 to 40 % of drag is saved, 30 as is likely: 18 and 27 % of oxygen behind one rider, 39 % inside a group (McCole et al. 1990). */
    @Test
    void companySavesWhatWasMeasured() {
        Range alone = new Range(0.30, 0.32, 0.34);
        Range group = DragArea.inTheGroup(alone);
        assertThat(group.low() / 0.30).isCloseTo(1 - 0.40, within(0.002));
        assertThat(group.mid() / 0.32).isCloseTo(1 - 0.30, within(0.002));
        assertThat(group.high() / 0.34).isCloseTo(1 - 0.15, within(0.002));
        assertThat(DragArea.over(alone, 0.5).mid()).isCloseTo(0.32 * 0.85, within(0.0005));
        assertThat(DragArea.over(alone, 0.5).low()).isCloseTo(0.30 * 0.80, within(0.0005));
        assertThat(DragArea.over(alone, 0.5).high()).isCloseTo(0.34 * 0.925, within(0.0005));
    }

    /** At 70 % the body's part, 60 kg against 75 kg take off 0.7 of what (60/75) to the power 0.762 takes off: 10.9 % (Heil 2001, from memory). */
    @Test
    void lightRidersHaveLessDrag() {
        assertThat(DragArea.alone(BikeKind.ROAD, 60).mid() / DragArea.alone(BikeKind.ROAD, 75).mid()).isCloseTo(1 - 0.109, within(0.001));
    }
}
