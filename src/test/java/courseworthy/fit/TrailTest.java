package courseworthy.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import courseworthy.workshop.Part;
import courseworthy.workshop.PartDetail;
import courseworthy.workshop.PartKind;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Trail against what the trade knows of road bikes: near 57 mm at 73 degrees, 45 mm of offset and a tyre 680 mm high (common practice, no source). */
class TrailTest {

    private static final Part WHEEL = new Part("wheel", PartKind.WHEEL, 1, Map.of(PartDetail.BEAD_SEAT, 0.622));
    private static final Part TYRE = new Part("tyre", PartKind.TYRE, 2, Map.of(PartDetail.WIDTH, 0.029));

    private static Part fork(double offset) {
        return new Part("fork", PartKind.FORK, 3, Map.of(PartDetail.FORK_OFFSET, offset));
    }

    @Test
    void aRoadBikeTrailsByNearlySixCentimetres() {
        assertThat(SuspensionFit.trail(fork(0.045), 73.0, WHEEL, TYRE)).isCloseTo(0.057, within(0.0005));
    }

    /** 1 mm more of offset takes 1 mm / sin(head angle) of trail; a slacker head angle gives more. */
    @Test
    void offsetTakesTrailAndASlackerAngleGivesIt() {
        double trail = SuspensionFit.trail(fork(0.045), 73.0, WHEEL, TYRE);
        assertThat(trail - SuspensionFit.trail(fork(0.046), 73.0, WHEEL, TYRE)).isCloseTo(0.001 / 0.9563, within(1e-6));
        assertThat(SuspensionFit.trail(fork(0.045), 72.0, WHEEL, TYRE)).isGreaterThan(trail);
        assertThat(SuspensionFit.trail(new Part("fork", PartKind.FORK, 3, Map.of()), 73.0, WHEEL, TYRE)).isNull();
    }
}
