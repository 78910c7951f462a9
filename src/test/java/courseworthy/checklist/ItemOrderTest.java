package courseworthy.checklist;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.checklist.Checklist.ChecklistItem;
import courseworthy.claim.Deadline;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

class ItemOrderTest {

    /** Round the bike from what bears to what is carried, then other parts by their names (common practice, no source). */
    @Test
    void theWalkGoesFromTheFrameToTheRider() {
        List<String> walk = List.of("frame", "wheels", "tyres", "brakes", "bolts", "cockpit", "seatpost", "suspension", "drivetrain", "electronics",
                "repair kit", "food and water", "event kit", "papers", "clothing", "rider", "bell", "mirror");
        List<String> mixed = new ArrayList<>(walk);
        Collections.sort(mixed);
        List<PendingItem> section = mixed.stream().map(part -> new PendingItem(new ChecklistItem("See to it", "Done", "Why.", false, part, part, null), part,
                Deadline.NIGHT_BEFORE, 0, List.of())).toList();
        assertThat(ItemOrder.of(section)).extracting(PendingItem::id).containsExactlyElementsOf(walk);
    }
}
