package courseworthy.checklist;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The order of work within a section. Critical items come first, since interruptions come later (Degani and Wiener 1990, NASA
 * CR 177549, from memory); then what needs hours; items of one part stay together; and whatever must come before something else
 * goes ahead of it, above all of these.
 */
final class ItemOrder {

    /** A walk round the bike, from what bears to what is carried and worn; parts not named here follow by name. */
    private static final List<String> WALK = List.of("frame", "wheels", "tyres", "brakes", "bolts", "cockpit", "seatpost", "suspension",
            "drivetrain", "electronics", "repair kit", "food and water", "event kit", "papers", "clothing", "rider");

    private final Map<String, PendingItem> waiting = new HashMap<>();
    private final Set<PendingItem> visited = Collections.newSetFromMap(new IdentityHashMap<>());
    private final List<PendingItem> placed = new ArrayList<>();

    private ItemOrder() {
    }

    static List<PendingItem> of(List<PendingItem> section) {
        List<PendingItem> liked = new ArrayList<>(section);
        liked.sort(preference(section));
        ItemOrder order = new ItemOrder();
        for (PendingItem entry : liked) {
            order.waiting.putIfAbsent(entry.id(), entry);
        }
        for (PendingItem entry : liked) {
            order.place(entry);
        }
        return order.placed;
    }

    /** Places what must come before, then the entry. A circle is cut where it closes. */
    private void place(PendingItem entry) {
        if (!visited.add(entry)) {
            return;
        }
        for (String id : entry.after()) {
            PendingItem before = waiting.get(id);
            if (before != null) {
                place(before);
            }
        }
        placed.add(entry);
    }

    private static Comparator<PendingItem> preference(List<PendingItem> section) {
        Map<String, Long> longest = new HashMap<>();
        for (PendingItem entry : section) {
            longest.merge(block(entry), entry.needs(), Math::max);
        }
        return new Preference(longest);
    }

    /** Critical first, then what needs longest, part by part in the order one walks round a bike. */
    private record Preference(Map<String, Long> longest) implements Comparator<PendingItem> {
        @Override
        public int compare(PendingItem one, PendingItem other) {
            int by = Boolean.compare(other.item().critical(), one.item().critical());
            by = by != 0 ? by : Long.compare(longest.get(block(other)), longest.get(block(one)));
            by = by != 0 ? by : Integer.compare(place(one.item().part()), place(other.item().part()));
            by = by != 0 ? by : one.item().part().compareTo(other.item().part());
            by = by != 0 ? by : Long.compare(other.needs(), one.needs());
            return by != 0 ? by : one.id().compareTo(other.id());
        }
    }

    private static int place(String part) {
        int place = WALK.indexOf(part);
        return place < 0 ? WALK.size() : place;
    }

    /** Items of one part, the critical ones apart. */
    private static String block(PendingItem entry) {
        return entry.item().critical() + " " + entry.item().part();
    }
}
