package courseworthy.build;

import courseworthy.workshop.MountingPlace;
import courseworthy.workshop.Part;
import courseworthy.workshop.PartDetail;
import java.util.ArrayList;
import java.util.List;

/** What a swap asks for once it is done (common practice, no source). Torque is as marked on the part, never a figure of ours. */
final class AfterSwapChecks {

    /** A wheel ridden less than this settles its spokes yet, s (common practice, no source). */
    private static final double YOUNG_WHEEL = 10 * 3600;

    /** What it takes to join a hose again and to fill it (common practice, no source). */
    static final List<String> OPENED_HOSE = List.of("brake fluid and hose fittings, as the brake asks", "brake cleaner");
    static final List<String> OPENED_CABLE = List.of("inner cable and housing, as the brake asks");

    private AfterSwapChecks() {
    }

    /** @param on what went on; null where something only came off */
    static List<String> of(MountingPlace place, Part on) {
        List<String> out = new ArrayList<>();
        if (on == null) {
            return out;
        }
        switch (place.kind()) {
            case TYRE -> out.add("Both beads seated, sealant in where tubeless, pressure held overnight");
            case WHEEL -> wheel(out, on);
            case ROTOR, PADS -> out.add("Rotor and pads bedded in, nothing rubs");
            case CASSETTE, DERAILLEUR, SHIFTER -> out.add("Index the gears and set the end stops");
            case CHAIN -> out.add("Check the length on the largest ring and sprocket");
            case CRANK -> out.add("Bolts as marked, no play" + (Boolean.TRUE.equals(on.yes(PartDetail.POWER_METER)) ? ", zero the power meter" : ""));
            case CHAINRING -> out.add("Bolts as marked; check chain length and gears");
            case FORK -> out.add("Steering free and without play, stem and front caliper bolts as marked, rotor does not rub, pressure and sag set again");
            case HEADSET -> out.add("Bearings seated and greased, turns free and without play");
            case CROWN_RACE -> out.add("Seated all round, no gap to the crown");
            case BOTTOM_BRACKET -> out.add("In to its stop and tight as marked, sides not mixed up, turns free");
            case CALIPER -> out.add("Bolts and hose joint as marked, brake bled, lever firm, nothing leaks, centred on the rotor");
            case ADAPTER -> out.add("Bolts as marked, right way up, caliper centred on the rotor, pads wholly on its track");
            case DROPPER_REMOTE, LOCKOUT_REMOTE -> out.add("Works over its whole travel and lets go by itself, in reach of the thumb");
            case BATTERY -> out.add("Seated and charged, shifts through all gears");
            case SHOCK -> out.add("Bolts as marked, pressure and sag set again");
            case STEM, BAR, EXTENSIONS -> out.add("Bolts as marked, straight, nothing turns when leant on");
            case SEATPOST, SADDLE -> out.add("Height and setback as before, clamp as marked, past the insertion mark");
            case PEDALS -> out.add("Right and left not mixed up, tight as marked; your cleats fit them, where they take any");
            case METER -> out.add("Bolts as marked, paired with the head unit and zeroed");
            default -> {
            }
        }
        return out;
    }

    /**
     * What pedals ask of the shoes: a cleat goes with its pedal.
     *
     * @param before the pedals that were there; null where none were listed
     */
    static List<String> cleat(Part before, Part after) {
        String had = before == null ? null : before.word(PartDetail.CLEAT);
        String has = after.word(PartDetail.CLEAT);
        return has == null || has.equals(had) ? List.of() : List.of("cleats on the shoes: " + has + (had == null ? "" : " in place of " + had));
    }

    /** What a swap uses up (common practice, no source). @param on what goes on; null where something only came off */
    static List<String> needs(MountingPlace place, Part on) {
        if (on == null) {
            return List.of();
        }
        return switch (place.kind()) {
            case TYRE -> Boolean.FALSE.equals(on.yes(PartDetail.TUBELESS)) ? List.of("tube") : List.of("sealant", "rim tape and valve core, if worn");
            case CHAIN -> List.of("joining link");
            case CRANK, PEDALS, CASSETTE, HEADSET, BOTTOM_BRACKET -> List.of("grease");
            case DROPPER_REMOTE, LOCKOUT_REMOTE -> List.of("inner cable, if a cable works it");
            case SEATPOST -> List.of("grease or assembly paste, whichever the post needs");
            case ROTOR -> List.of("thread lock, if the bolts need it", "brake cleaner");
            case PADS -> List.of("brake cleaner");
            case DERAILLEUR, SHIFTER -> "electronic".equals(on.word(PartDetail.ACTUATION)) ? List.of() : List.of("inner cable");
            default -> List.of();
        };
    }

    private static void wheel(List<String> out, Part wheel) {
        out.add("Axle as marked, rotor does not rub, gears and brake checked");
        Double hours = wheel.number(PartDetail.HOURS_USED);
        if (hours != null && hours < YOUNG_WHEEL) {
            out.add("Spokes checked and re-tensioned by a mechanic after the first rides");
        }
    }

    /** Whether a qualified mechanic should do it, where one is not sure of it. */
    static boolean mechanic(MountingPlace place) {
        return switch (place.kind()) {
            case FORK, SHOCK, HEADSET, CROWN_RACE, BOTTOM_BRACKET, CALIPER -> true;
            default -> false;
        };
    }
}
