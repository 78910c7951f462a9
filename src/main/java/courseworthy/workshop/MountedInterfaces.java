package courseworthy.workshop;

import courseworthy.problem.Faults;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;

/** The interfaces that a mounted part shares with its host, such as a freehub or a bead seat: both have to say the same. */
final class MountedInterfaces {

    /** Sizes of one interface are given to the tenth of a millimetre, m (computing). */
    private static final double SAME_SIZE = 0.000_05;

    private static final Map<PartKind, PartDetail> BY_KIND = new EnumMap<>(Map.of(PartKind.ROTOR, PartDetail.ROTOR_MOUNT, PartKind.CASSETTE, PartDetail.FREEHUB,
            PartKind.TYRE, PartDetail.BEAD_SEAT, PartKind.INSERT, PartDetail.BEAD_SEAT, PartKind.CHAINRING, PartDetail.RING_MOUNT,
            PartKind.METER, PartDetail.METER_MOUNT, PartKind.PEDALS, PartDetail.PEDAL_THREAD, PartKind.CROWN_RACE, PartDetail.RACE_SEAT,
            PartKind.BAR, PartDetail.BAR_CLAMP, PartKind.SADDLE, PartDetail.RAILS));

    private MountedInterfaces() {
    }

    /** Reports a part that cannot be mounted where it is written. @param line of what it is mounted on */
    static void check(Part part, int line, String shown, Faults faults) {
        Part on = part.on();
        if (part.kind() == PartKind.CASSETTE && "front".equals(on.word(PartDetail.END))) {
            faults.add(shown, line, "on", "a cassette on the front wheel \"" + on.name() + "\"", "a rear wheel", "");
        }
        PartDetail detail = BY_KIND.get(part.kind());
        if (detail != null && part.has(detail) && on.has(detail) && !same(part, on, detail)) {
            faults.add(shown, line, "on", "\"" + part.name() + "\" with " + detail.written() + " " + text(part, detail) + " on \"" + on.name() + "\" with "
                    + text(on, detail), "the same " + detail.written() + " on both", part.kind() == PartKind.ROTOR
                    ? "If an adapter joins them, write the wheel's mount for the rotor too." : "Read both on the parts, or leave out \"on\" where it lies loose.");
        }
    }

    private static boolean same(Part one, Part other, PartDetail detail) {
        return detail.form() == PartDetail.Form.AMOUNT ? Math.abs(one.number(detail) - other.number(detail)) < SAME_SIZE
                : Objects.equals(one.word(detail), other.word(detail));
    }

    private static String text(Part part, PartDetail detail) {
        if (detail.form() != PartDetail.Form.AMOUNT) {
            return part.word(detail);
        }
        double millimetres = Math.round(part.number(detail) * 10_000) / 10.0;
        return (millimetres == Math.rint(millimetres) ? String.valueOf(Math.round(millimetres)) : String.valueOf(millimetres)) + " mm";
    }
}
