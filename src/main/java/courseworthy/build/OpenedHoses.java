package courseworthy.build;

import courseworthy.build.Build.Swap;
import courseworthy.workshop.MountingPlace;
import courseworthy.workshop.Part;
import courseworthy.workshop.PartDetail;
import courseworthy.workshop.PartKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Brake hoses and cables that a swap opens: that of a caliper that goes on, which is joined to the lever there, and those that run inside the part
 * that is swapped. A fork has the front one in it; headset, stem and bar have both (common practice, no source). A brake that is
 * not known to be pulled by a cable counts as hydraulic: to bleed one too many does no harm.
 */
final class OpenedHoses {

    private static final String CABLE = "cable";

    private OpenedHoses() {
    }

    /**
     * The ends of the bike whose hydraulic brake is opened: {@code front}, {@code rear}; empty where none is.
     *
     * @param on what is on the bike once the work is done
     */
    static List<String> ends(Swap swap, Map<MountingPlace, Part> on) {
        return ends(swap, on, false);
    }

    /** The same of brakes that are pulled by a cable. */
    static List<String> cabled(Swap swap, Map<MountingPlace, Part> on) {
        return ends(swap, on, true);
    }

    private static List<String> ends(Swap swap, Map<MountingPlace, Part> on, boolean cabled) {
        return swap == null ? List.of() : opened(swap.bike(), swap.place().kind(), swap.place().end(), swap.on()).stream()
                .filter(end -> isPulled(swap.bike(), end, on) == cabled).toList();
    }

    /** Whether the brake at an end is pulled by a cable: as its caliper says, else the bike. */
    static boolean isPulled(Part bike, String end, Map<MountingPlace, Part> on) {
        Part caliper = on.get(end.equals("front") ? MountingPlace.FRONT_CALIPER : MountingPlace.REAR_CALIPER);
        String how = caliper == null ? null : caliper.word(PartDetail.BRAKE_ACTUATION);
        return CABLE.equals(how == null ? bike.word(PartDetail.BRAKE_ACTUATION) : how);
    }

    private static List<String> opened(Part bike, PartKind kind, String end, Part part) {
        if (part == null || bike.kind() != PartKind.BIKE) {
            return List.of();
        }
        if (kind == PartKind.CALIPER) {
            return List.of(end);
        }
        List<String> through = bike.words(PartDetail.HOSES_THROUGH);
        if (through == null || !through.contains(kind.word())) {
            return List.of();
        }
        return kind == PartKind.FORK ? List.of("front") : List.of("front", "rear");
    }

    /** What it means for the brakes, in sentences without a full stop; empty where nothing is opened, or a caliper says so itself. */
    static List<String> along(Part bike, PartKind kind, Part part, Map<MountingPlace, Part> on) {
        List<String> ends = kind == PartKind.CALIPER ? List.of() : opened(bike, kind, null, part);
        List<String> pulled = ends.stream().filter(end -> isPulled(bike, end, on)).toList();
        List<String> fluid = ends.stream().filter(end -> !pulled.contains(end)).toList();
        List<String> out = new ArrayList<>();
        if (!fluid.isEmpty()) {
            boolean both = fluid.size() > 1;
            out.add((both ? "The brake hoses run inside it: they are" : "The " + fluid.get(0) + " brake hose runs inside it: it is") + " opened, and "
                    + (both ? "both brakes are" : "the brake is") + " bled");
        }
        if (!pulled.isEmpty()) {
            boolean both = pulled.size() > 1;
            out.add((both ? "The brake cables run inside it: they are" : "The " + pulled.get(0) + " brake cable runs inside it: it is") + " pulled out, and "
                    + (both ? "both brakes are" : "the brake is") + " set again");
        }
        return out;
    }

    /** What is used up by a swap that opens them. */
    static List<String> needs(Part bike, MountingPlace place, Part part, Map<MountingPlace, Part> on) {
        List<String> out = new ArrayList<>();
        for (String end : opened(bike, place.kind(), place.end(), part)) {
            (isPulled(bike, end, on) ? AfterSwapChecks.OPENED_CABLE : AfterSwapChecks.OPENED_HOSE).stream().filter(each -> !out.contains(each)).forEach(out::add);
        }
        return out;
    }
}
