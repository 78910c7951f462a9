package courseworthy.checklist;

import courseworthy.checklist.Checklist.ChecklistItem;
import courseworthy.claim.Deadline;
import java.util.List;

/**
 * An item that still looks for its place.
 *
 * @param item  what will be shown
 * @param id    the rule, qualified; made up for what the event asks
 * @param due   by when
 * @param needs seconds before it is effective
 * @param after ids of what must come before
 */
record PendingItem(ChecklistItem item, String id, Deadline due, long needs, List<String> after) {

    PendingItem dueAt(Deadline earlier) {
        return new PendingItem(item, id, earlier, needs, after);
    }
}
