package courseworthy.checklist;

import courseworthy.build.Build;
import courseworthy.build.Build.Swap;
import courseworthy.build.WearNote;
import courseworthy.checklist.Checklist.ChecklistItem;
import courseworthy.claim.Deadline;
import java.util.ArrayList;
import java.util.List;

/** The swaps of a build as things to do: in the order of work, then a test ride on it, before what the last days hold. */
final class SwapItems {

    private static final String PART = "swaps";
    /** The longer end of what the item asks for, min. */
    private static final double TEST_RIDE_MINUTES = 60;
    /** As long as a change of stem and saddle takes (common practice, no source). */
    private static final double POSITION_MINUTES = 30;

    private SwapItems() {
    }

    static List<PendingItem> of(Build build) {
        List<PendingItem> out = new ArrayList<>();
        List<String> before = new ArrayList<>();
        for (Swap swap : build.swaps()) {
            String id = id("build/", out.size());
            out.add(new PendingItem(item(swap), id, Deadline.WEEK_BEFORE, 0, List.copyOf(before)));
            before.add(id);
        }
        if (build.position() != null) {
            String id = id("build/", out.size());
            out.add(new PendingItem(position(build), id, Deadline.WEEK_BEFORE, 0, List.copyOf(before)));
            before.add(id);
        }
        for (WearNote each : build.wear()) {
            String id = id("build/", out.size());
            out.add(new PendingItem(worn(each), id, Deadline.WEEK_BEFORE, 0, List.of()));
            before.add(id);
        }
        if (!build.swaps().isEmpty() || build.position() != null) {
            ChecklistItem ride = new ChecklistItem("Test-ride this exact build for 30 to 60 min, then check every bolt and axle", "Nothing moved, rubs, creaks or leaks",
                    "What was changed shows its faults in the first hour, and not on race day.", true, PART, "", null, TEST_RIDE_MINUTES);
            out.add(new PendingItem(ride, id("build/", out.size()), Deadline.WEEK_BEFORE, 0, before));
        }
        if (!build.spares().isEmpty()) {
            out.add(new PendingItem(spares(build), id("build/", out.size()), Deadline.NIGHT_BEFORE, 0, List.of()));
        }
        out.addAll(back(build));
        return out;
    }

    private static List<PendingItem> back(Build build) {
        List<PendingItem> out = new ArrayList<>();
        List<String> before = new ArrayList<>();
        for (Swap swap : build.back()) {
            String id = id("build/back/", out.size());
            ChecklistItem item = new ChecklistItem(swap.what() + on(swap), find(swap), "As it was before (" + swap.where() + ", about "
                    + Math.round(swap.work().minutes()) + " min)." + along(swap), false, PART, "", null, swap.work().minutes());
            out.add(new PendingItem(item, id, Deadline.AFTER_THE_RACE, 0, List.copyOf(before)));
            before.add(id);
        }
        if (!before.isEmpty()) {
            ChecklistItem ride = new ChecklistItem("Ride around the block, then check every bolt and axle", "Nothing moved, rubs, creaks or leaks",
                    "The next ride is as fast as the last one, and begins on what was put back.", false, PART, "", null);
            out.add(new PendingItem(ride, id("build/back/", out.size()), Deadline.AFTER_THE_RACE, 0, before));
        }
        return out;
    }

    /** Which bike, where it is another than the one that was raced, or what lies loose. */
    private static String on(Swap swap) {
        return ", on " + swap.bike();
    }

    private static ChecklistItem position(Build build) {
        return new ChecklistItem("Set " + (build.position().otherBar() ? "the saddle" : "stem, spacers and saddle") + " to your position on " + build.position().from().bike(),
                "As the build says under position; bolts as marked, post past its insertion mark",
                "A position that is not yours hurts before the day is over.", true, PART, "", null, POSITION_MINUTES);
    }

    private static ChecklistItem spares(Build build) {
        return new ChecklistItem("Pack the spares that go with this build", String.join("; ", build.spares()),
                "A spare for the parts that are off the bike helps nobody at the roadside.", false, PART, "", null);
    }

    private static ChecklistItem worn(WearNote note) {
        return new ChecklistItem(note.part() + ": " + note.action(), "Done, and ridden in if it is new", Character.toUpperCase(note.state().charAt(0)) + note.state().substring(1) + ".", true, PART, "", null);
    }

    private static ChecklistItem item(Swap swap) {
        String what = swap.what() + (swap.from() == null ? "" : ", from " + swap.from());
        return new ChecklistItem(what, find(swap), "Part of the build (" + swap.where() + ", about " + Math.round(swap.work().minutes()) + " min)." + along(swap),
                swap.critical(), PART, "", null, swap.work().minutes());
    }

    private static String along(Swap swap) {
        return swap.work().along().isEmpty() ? "" : " " + String.join(". ", swap.work().along()) + ".";
    }

    private static String find(Swap swap) {
        if (!swap.work().after().isEmpty()) {
            return String.join("; ", swap.work().after());
        }
        return swap.on() == null ? "It and what held it are off; nothing hangs loose or rubs where it was" : "In its place and tight as marked";
    }

    private static String id(String start, int number) {
        return start + (number < 10 ? "0" : "") + number;
    }
}
