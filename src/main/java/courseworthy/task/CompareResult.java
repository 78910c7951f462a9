package courseworthy.task;

import courseworthy.worth.SetUp;
import java.util.List;

/**
 * Set-ups side by side.
 *
 * @param brief  the whole answer they belong to
 * @param setUps the recommended one first, then the build's where there is one, then those that were asked for
 * @param build  whether the second is the build of a workshop, taken as it is mounted
 */
public record CompareResult(Brief brief, List<SetUp> setUps, boolean build) {

    public CompareResult {
        setUps = List.copyOf(setUps);
    }
}
