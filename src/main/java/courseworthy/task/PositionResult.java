package courseworthy.task;

import courseworthy.build.Position;
import courseworthy.build.PositionTransfer;
import java.util.List;

/**
 * Bar and saddle positions of a workshop's bikes, or one bike's carried over to another.
 *
 * @param workshop the workshop's name; may be empty
 * @param all      one for each bike; empty where one is carried over
 * @param transfer the position carried over; null where all are shown
 */
public record PositionResult(String workshop, List<Position> all, PositionTransfer transfer) {

    public PositionResult {
        all = List.copyOf(all);
    }
}
