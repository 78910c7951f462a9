package courseworthy.build;

import courseworthy.workshop.MountingPlace;
import courseworthy.workshop.Part;
import courseworthy.workshop.PartDetail;
import java.util.List;

/** Which way round a tyre goes on: by its arrows, and by the side that its label is on now (common practice, no source). */
final class TyreSwapChecks {

    private static final List<String> SIDES = PartDetail.MOUNTED_SIDE.words();

    private TyreSwapChecks() {
    }

    /**
     * In sentences without a full stop; empty where the tyre goes on either way, or nothing is written of it.
     *
     * @param to   where it goes on
     * @param from where it was; null where it lay loose
     */
    static List<String> of(Part tyre, MountingPlace to, MountingPlace from) {
        String direction = tyre.word(PartDetail.DIRECTION);
        String side = tyre.word(PartDetail.MOUNTED_SIDE);
        if (direction == null || direction.equals("either way")) {
            return List.of();
        }
        if (direction.equals("one way")) {
            return List.of("Its arrow points the way the wheel turns" + label(side));
        }
        String arrow = "Its arrow for the " + to.end() + " points the way the wheel turns";
        boolean turned = from != null && from != to;
        String known = from == null || side == null ? null : turned ? SIDES.get(1 - SIDES.indexOf(side)) : side;
        return List.of((turned ? "Turn it round: its arrow for the " + to.end() + " is the other one, and points the way the wheel turns" : arrow) + label(known));
    }

    private static String label(String side) {
        return side == null ? "" : ", its label on the " + (side.equals("drive side") ? side : "side opposite the drive");
    }
}
