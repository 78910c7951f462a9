package courseworthy.ride;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import courseworthy.course.Surface;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Drag areas and roughness against published figures that they were not made from. */
class DragAreaTest {

    /**
     * Upright 0.299, dropped 0.276, aero 0.262, tucked 0.216 m² on one rider (Grappe and others 1997, Ergonomics 40:1299-1311); on the hoods
     * 0.400 by an older table (Gross, Kyle, Malewicki 1983, Sci. Am. 249(6)). Mountain bikes 0.33 to 0.45, measured 0.357 ± 0.023 (Bertucci and
     * others 2013, from memory). Nobody in a mass start is below 0.2.
     */
    @Test
    void positionsStandInTheOrderThatWasMeasured() {
        assertThat(DragArea.alone(BikeKind.ROAD, 75).mid()).isBetween(0.276, 0.400);
        assertThat(DragArea.alone(BikeKind.GRAVEL, 75).mid()).isBetween(DragArea.alone(BikeKind.ROAD, 75).mid(), 0.400);
        assertThat(DragArea.alone(BikeKind.HARDTAIL, 75).mid()).isBetween(0.357, 0.45).isGreaterThan(DragArea.alone(BikeKind.GRAVEL, 75).mid());
        assertThat(DragArea.alone(BikeKind.FULL, 75).low()).isLessThan(0.357);
    }

    @ParameterizedTest
    @EnumSource(BikeKind.class)
    void nobodyInAMassStartIsBelowAFifth(BikeKind kind) {
        assertThat(DragArea.alone(kind, 50).low()).isGreaterThan(0.2);
    }

    /** Frontal area 0.0293 h^0.725 m^0.425 + 0.0604 m² (Bassett and others 1999, Med. Sci. Sports Exerc. 31:1665-1676), by hand. */
    @ParameterizedTest
    @CsvSource({"1.80, 75, 0.3415", "1.70, 65, 0.314", "1.85, 85, 0.363"})
    void biggerRidersAreHeldBackAsTheirFrontalAreaGrows(double height, double mass, double area) {
        double frontal = 0.0293 * Math.pow(height, 0.725) * Math.pow(mass, 0.425) + 0.0604;
        assertThat(frontal).isCloseTo(area, within(0.0006));
        double grows = DragArea.alone(BikeKind.ROAD, mass).mid() / DragArea.alone(BikeKind.ROAD, 75).mid();
        assertThat(grows).isCloseTo(frontal / 0.3415, within(0.03));
    }

    /** From 60 to 80 kg the body's part grows by 1.245 (mass to the power 0.762: Heil 2001, Eur. J. Appl. Physiol. 85:358-366, from memory). */
    @Test
    void theBodysPartGrowsWithItsMass() {
        double bike = 0.3 * BikeKind.ROAD.dragArea().mid();
        assertThat((DragArea.alone(BikeKind.ROAD, 80).mid() - bike) / (DragArea.alone(BikeKind.ROAD, 60).mid() - bike)).isCloseTo(1.245, within(0.001));
    }

    /**
     * Vibration under the saddle: asphalt 0.05, slabs 0.17, self-binding gravel 0.21, cobbles 0.57 (Hölzel, Höchtl, Senner 2012, Procedia Eng.
     * 34:479-484). Roughness is no vibration, but stands in the same order.
     */
    @Test
    void groundsStandInTheOrderOfWhatTheyShake() {
        assertThat(Roughness.of(Surface.ASPHALT).mid()).isLessThan(Roughness.of(Surface.CONCRETE_PLATES).mid());
        assertThat(Roughness.of(Surface.CONCRETE_PLATES).mid()).isLessThan(Roughness.of(Surface.FINE_GRAVEL).mid());
        assertThat(Roughness.of(Surface.FINE_GRAVEL).mid()).isLessThan(Roughness.of(Surface.COBBLESTONE).mid());
    }
}
