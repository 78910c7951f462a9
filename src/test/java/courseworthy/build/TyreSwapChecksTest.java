package courseworthy.build;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.workshop.MountingPlace;
import courseworthy.workshop.Part;
import courseworthy.workshop.PartDetail;
import courseworthy.workshop.PartKind;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Which way round a tyre goes: a wheel keeps its sides, so a tyre that keeps its end keeps its side, and one that is turned round changes it. */
class TyreSwapChecksTest {

    private static List<String> said(String direction, String side, MountingPlace to, MountingPlace from) {
        Map<PartDetail, Object> details = new EnumMap<>(PartDetail.class);
        if (direction != null) {
            details.put(PartDetail.DIRECTION, direction);
        }
        if (side != null) {
            details.put(PartDetail.MOUNTED_SIDE, side);
        }
        return TyreSwapChecks.of(new Part("tyre", PartKind.TYRE, 1, details), to, from);
    }

    @Test
    void aTyreThatGoesOnEitherWayAsksForNothing() {
        assertThat(said("either way", "drive side", MountingPlace.FRONT_TYRE, MountingPlace.REAR_TYRE)).isEmpty();
        assertThat(said(null, null, MountingPlace.FRONT_TYRE, null)).isEmpty();
    }

    @Test
    void oneArrowKeepsItsSideAtBothEnds() {
        for (MountingPlace from : new MountingPlace[] {null, MountingPlace.FRONT_TYRE, MountingPlace.REAR_TYRE}) {
            assertThat(said("one way", "other side", MountingPlace.FRONT_TYRE, from))
                    .containsExactly("Its arrow points the way the wheel turns, its label on the side opposite the drive");
        }
        assertThat(said("one way", null, MountingPlace.FRONT_TYRE, null)).containsExactly("Its arrow points the way the wheel turns");
    }

    @Test
    void arrowsByEndTurnATyreThatChangesEnds() {
        assertThat(said("by end", "drive side", MountingPlace.REAR_TYRE, MountingPlace.FRONT_TYRE)).containsExactly(
                "Turn it round: its arrow for the rear is the other one, and points the way the wheel turns, its label on the side opposite the drive");
        assertThat(said("by end", "drive side", MountingPlace.REAR_TYRE, MountingPlace.REAR_TYRE))
                .containsExactly("Its arrow for the rear points the way the wheel turns, its label on the drive side");
        assertThat(said("by end", "drive side", MountingPlace.REAR_TYRE, null)).containsExactly("Its arrow for the rear points the way the wheel turns");
    }
}
