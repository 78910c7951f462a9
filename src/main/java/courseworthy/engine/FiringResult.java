package courseworthy.engine;

import courseworthy.claim.Claim;
import courseworthy.claim.Task;
import java.util.List;

/** What rules say at one stage. Order carries no meaning. */
public record FiringResult(List<Claim> claims, List<Task> tasks) {
}
