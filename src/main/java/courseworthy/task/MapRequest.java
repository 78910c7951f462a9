package courseworthy.task;

import java.util.List;

/**
 * What is to be taken of a course's ground and heights from files besides its own.
 *
 * @param extracts files of map data, as typed; empty for none
 * @param cached   whether what lies near the track is kept for the next time
 * @param elevation folder of elevation tiles, as typed; null for none
 * @param ride     file of a recorded ride that hints at ground, as typed; null for none
 */
public record MapRequest(List<String> extracts, boolean cached, String elevation, String ride) {

    public static final MapRequest NONE = new MapRequest(List.of(), true, null, null);

    public MapRequest {
        extracts = List.copyOf(extracts);
    }
}
