package courseworthy.course.extract;

import java.util.Map;

/**
 * A node of a map near the track that has tags of its own, such as a ford, a crossing or a barrier.
 *
 * @param id        of the node in the map
 * @param latitude  degrees
 * @param longitude degrees
 * @param tags      those that {@link MapTags} keeps, at least one
 */
public record MapNode(long id, double latitude, double longitude, Map<String, String> tags) {

    public MapNode {
        tags = Map.copyOf(tags);
    }

    /** The value of a tag; empty where the node has none of that key. */
    public String tag(String key) {
        return tags.getOrDefault(key, "");
    }
}
