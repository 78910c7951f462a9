package courseworthy.checklist;

import courseworthy.claim.Deadline;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Moves what needs hours to a section that leaves it those hours, before the start and before whatever waits for it. The hours
 * between sections are habits of a rider's week (common practice, no source).
 */
final class ItemScheduler {

    private static final long HOUR = 3600;

    /** When the work of the evening is done, s after midnight. */
    static final long EVENING_END = 21 * HOUR;

    /** Time between two things done in one sitting on the days before. */
    private static final long SITTING = 3 * HOUR;

    private final long nightLead;

    /** @param start local time of the start; null where unknown: then nine in the morning is meant */
    ItemScheduler(LocalTime start) {
        long second = start == null ? 9 * HOUR : start.toSecondOfDay();
        nightLead = 24 * HOUR - EVENING_END + second;
    }

    /** The same entries, some of them due earlier. */
    List<PendingItem> timed(List<PendingItem> entries) {
        List<PendingItem> out = new ArrayList<>();
        Map<String, Integer> places = new HashMap<>();
        for (PendingItem entry : entries) {
            places.putIfAbsent(entry.id(), out.size());
            out.add(entry.dueAt(latest(entry.due(), entry.needs(), Long.MAX_VALUE)));
        }
        // Each pass moves at least one entry to an earlier section, so this ends.
        while (pullAhead(out, places)) {
            continue;
        }
        return out;
    }

    /** Moves what must come before something else ahead of it; true where anything moved. */
    private boolean pullAhead(List<PendingItem> entries, Map<String, Integer> places) {
        boolean moved = false;
        for (int i = 0; i < entries.size(); i++) {
            for (String id : entries.get(i).after()) {
                int place = places.getOrDefault(id, i);
                if (place != i) {
                    PendingItem before = entries.get(place);
                    Deadline earlier = early(before, entries.get(i).due());
                    moved |= earlier != before.due();
                    entries.set(place, before.dueAt(earlier));
                }
            }
        }
        return moved;
    }

    private Deadline early(PendingItem before, Deadline waiting) {
        Deadline due = before.due().compareTo(waiting) > 0 ? waiting : before.due();
        return due == waiting && before.needs() <= sitting(due) ? due : latest(due, before.needs(), lead(waiting));
    }

    /** The latest section up to {@code due} that lies at least {@code needs} before something with the given lead. */
    private Deadline latest(Deadline due, long needs, long lead) {
        long then = lead == Long.MAX_VALUE ? 0 : lead;
        Deadline at = due;
        while (at != Deadline.WEEK_BEFORE && at != Deadline.AFTER_THE_RACE && lead(at) - then < needs) {
            at = Deadline.values()[at.ordinal() - 1];
        }
        return at;
    }

    /** Seconds left before the start once the work of a section is done. */
    long lead(Deadline due) {
        return switch (due) {
            case WEEK_BEFORE -> 120 * HOUR;
            case TWO_DAYS_BEFORE -> nightLead + 24 * HOUR;
            case NIGHT_BEFORE -> nightLead;
            case RACE_MORNING -> HOUR;
            case AT_THE_START -> 0;
            case AFTER_THE_RACE -> Long.MIN_VALUE / 2;
        };
    }

    private static long sitting(Deadline due) {
        return due.compareTo(Deadline.NIGHT_BEFORE) <= 0 ? SITTING : 0;
    }
}
