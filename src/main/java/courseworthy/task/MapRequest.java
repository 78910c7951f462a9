package courseworthy.task;

import java.util.List;

/**
 * What is to be taken from a map.
 *
 * @param extracts files of map data, as typed; empty for none
 * @param cached   whether what lies near the track is kept for the next time
 */
public record MapRequest(List<String> extracts, boolean cached) {

    public static final MapRequest NONE = new MapRequest(List.of(), true);

    public MapRequest {
        extracts = List.copyOf(extracts);
    }
}
