package courseworthy.task;

import courseworthy.course.ground.ProfileChange;
import java.util.List;

/**
 * A profile that was taken from a map.
 *
 * @param file      the profile, as typed
 * @param track     the track, seen from the profile's folder
 * @param copied    whether the track was copied there
 * @param course    as it was written
 * @param stretches how many the profile has
 * @param from      the older profile whose edits were kept; null where there is none
 * @param changes   what was kept of it, and what the map says otherwise than then
 */
public record ImportResult(String file, String track, boolean copied, CourseSummary course, int stretches, String from, List<ProfileChange> changes) {

    public ImportResult {
        changes = List.copyOf(changes);
    }
}
