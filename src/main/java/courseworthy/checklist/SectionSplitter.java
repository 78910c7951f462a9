package courseworthy.checklist;

import java.util.ArrayList;
import java.util.List;

/** Cuts a long section into pieces of even length, where one part ends and another begins if that is near. */
final class SectionSplitter {

    private SectionSplitter() {
    }

    /** The entries in their order, in as few pieces of at most {@link Checklist#MOST_ITEMS} as there can be. */
    static List<List<PendingItem>> of(List<PendingItem> entries) {
        List<List<PendingItem>> out = new ArrayList<>();
        int from = 0;
        for (int pieces = count(entries.size()); pieces > 0; pieces--) {
            int to = pieces == 1 ? entries.size() : cut(entries, from, pieces);
            out.add(entries.subList(from, to));
            from = to;
        }
        return out;
    }

    private static int count(int size) {
        return (size + Checklist.MOST_ITEMS - 1) / Checklist.MOST_ITEMS;
    }

    /** Where the first of the remaining pieces ends: the border of a part nearest to an even share, else the even share. */
    private static int cut(List<PendingItem> entries, int from, int pieces) {
        int left = entries.size() - from;
        int even = from + (left + pieces - 1) / pieces;
        int earliest = Math.max(from + 1, entries.size() - (pieces - 1) * Checklist.MOST_ITEMS);
        int latest = Math.min(from + Checklist.MOST_ITEMS, entries.size() - pieces + 1);
        for (int far = 0; far <= Checklist.MOST_ITEMS; far++) {
            if (even - far >= earliest && border(entries, even - far)) {
                return even - far;
            }
            if (even + far <= latest && border(entries, even + far)) {
                return even + far;
            }
        }
        return even;
    }

    private static boolean border(List<PendingItem> entries, int at) {
        return !entries.get(at - 1).item().part().equals(entries.get(at).item().part());
    }
}
