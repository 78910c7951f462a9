package courseworthy.build;

import courseworthy.workshop.MountingPlace;
import courseworthy.workshop.Part;
import courseworthy.workshop.PartDetail;
import java.util.List;
import java.util.Map;

/**
 * What another size of rotor asks of the caliper. A caliper sits over one size: it moves by half the difference, on the adapter, or on the mount
 * itself, that fork or frame has for the other (common practice, no source).
 */
final class RotorSwapChecks {

    /** Rotors that differ by less are marked with one size, m (computing). */
    private static final double SAME_ROTOR = 0.0005;

    private RotorSwapChecks() {
    }

    /**
     * In sentences without a full stop; empty where the size stays.
     *
     * @param front  whether it is the front rotor
     * @param rotor  the rotor that will be there; null where a wheel brings none
     * @param before what is on the bike before the work
     * @param after  what is on it once all is done
     */
    static List<String> of(Part bike, boolean front, Part rotor, Map<MountingPlace, Part> before, Map<MountingPlace, Part> after) {
        Part old = before.get(front ? MountingPlace.FRONT_ROTOR : MountingPlace.REAR_ROTOR);
        Double had = old == null ? null : old.number(PartDetail.DIAMETER);
        Double has = rotor == null ? null : rotor.number(PartDetail.DIAMETER);
        if (has == null || had != null && Math.abs(had - has) < SAME_ROTOR) {
            return List.of();
        }
        Part caliper = after.get(front ? MountingPlace.FRONT_CALIPER : MountingPlace.REAR_CALIPER);
        Part adapter = after.get(front ? MountingPlace.FRONT_ADAPTER : MountingPlace.REAR_ADAPTER);
        Part holder = front ? after.get(MountingPlace.FORK) : bike;
        String name = caliper == null ? "the " + (front ? "front" : "rear") + " caliper" : caliper.name();
        String size = "A " + millimetres(has) + " rotor" + (had == null ? "" : " in place of " + millimetres(had));
        if (adapter != null) {
            return List.of(size + ": " + name + " goes on " + adapter + moved(had, has));
        }
        Double mount = holder == null ? null : holder.number(PartDetail.MOUNT_ROTOR);
        if (mount != null && Math.abs(mount - has) < SAME_ROTOR) {
            return List.of(size + ": " + name + " goes on the mount of " + holder + " itself, without an adapter" + moved(had, has));
        }
        return List.of(size + " needs the caliper mount or adapter of that size, as " + (front ? "fork" : "frame")
                + " and brake are marked: have it at hand before you begin");
    }

    /** A caliper is bolted so far from the axle as the rotor reaches. */
    private static String moved(Double had, double has) {
        return had == null ? "" : ", " + millimetres(Math.abs(has - had) / 2) + " farther " + (has > had ? "out" : "in") + " than now";
    }

    private static String millimetres(double metres) {
        return Math.round(metres * 1000) + " mm";
    }
}
