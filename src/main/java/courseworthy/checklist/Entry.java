package courseworthy.checklist;

import courseworthy.checklist.Checklist.Item;
import courseworthy.claim.Due;
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
record Entry(Item item, String id, Due due, long needs, List<String> after) {

    Entry dueAt(Due earlier) {
        return new Entry(item, id, earlier, needs, after);
    }
}
