package courseworthy.checklist;

import courseworthy.build.Build;
import courseworthy.build.Build.Swap;
import courseworthy.checklist.Checklist.Item;
import courseworthy.claim.Due;
import java.util.ArrayList;
import java.util.List;

/** The swaps of a build as things to do: in the order of work, then a ride on the very build, before what the last days hold. */
final class Swaps {

    private static final String PART = "swaps";

    private Swaps() {
    }

    static List<Entry> of(Build build) {
        List<Entry> out = new ArrayList<>();
        List<String> before = new ArrayList<>();
        for (Swap swap : build.swaps()) {
            String id = id(out.size());
            out.add(new Entry(item(swap), id, Due.WEEK_BEFORE, 0, List.copyOf(before)));
            before.add(id);
        }
        if (!before.isEmpty()) {
            Item ride = new Item("Ride 30 to 60 min on the very build, then check every bolt and axle", "Nothing moved, rubs, creaks or leaks",
                    "What was changed shows its faults in the first hour, and not on race day.", true, PART, "", null);
            out.add(new Entry(ride, id(out.size()), Due.WEEK_BEFORE, 0, before));
        }
        return out;
    }

    private static Item item(Swap swap) {
        String what = swap.on() == null ? "Take off " + swap.off() : "Put on " + swap.on() + (swap.off() == null ? "" : " for " + swap.off())
                + (swap.from() == null ? "" : ", from " + swap.from());
        String find = swap.after().isEmpty() ? "In its place and tight as marked" : String.join("; ", swap.after());
        return new Item(what, find, "The build asks for it (" + swap.where() + ", about " + Math.round(swap.minutes()) + " min).", false,
                PART, "", null);
    }

    private static String id(int number) {
        return "build/" + (number < 10 ? "0" : "") + number;
    }
}
