package courseworthy.build;

import courseworthy.build.Build.Swap;
import courseworthy.workshop.Part;
import courseworthy.workshop.PartDetail;
import courseworthy.workshop.PartKind;
import java.util.ArrayList;
import java.util.List;

/**
 * Brake hoses that a swap opens: that of a caliper that goes on, which is joined to the lever there, and those that run inside the part that is
 * swapped. A hose is opened to take it out of a fork at the front only; headset, stem and bar have both (common practice, no source).
 */
final class OpenedHoses {

    private OpenedHoses() {
    }

    /** The ends of the bike whose brake is opened: {@code front}, {@code rear}; empty where none is. */
    static List<String> ends(Swap swap) {
        return swap == null ? List.of() : ends(swap.bike(), swap.place().kind(), swap.place().end(), swap.on());
    }

    /**
     * @param end of the place; null where there is only one
     * @param on  what goes on; null where something only comes off
     */
    static List<String> ends(Part bike, PartKind kind, String end, Part on) {
        if (on == null || bike.kind() != PartKind.BIKE) {
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

    /** What it means for the brakes, in sentences without a full stop; empty where no hose is opened, or a caliper says so itself. */
    static List<String> along(Part bike, PartKind kind, Part on) {
        List<String> ends = kind == PartKind.CALIPER ? List.of() : ends(bike, kind, null, on);
        List<String> out = new ArrayList<>();
        if (!ends.isEmpty()) {
            boolean both = ends.size() > 1;
            out.add((both ? "The brake hoses run inside it: they are" : "The " + ends.get(0) + " brake hose runs inside it: it is") + " opened, and "
                    + (both ? "both brakes are" : "the brake is") + " bled");
        }
        return out;
    }
}
