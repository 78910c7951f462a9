package courseworthy.course.extract;

import java.util.Map;

/**
 * A way of a map that one can ride or push along, or a part of it: the run of its nodes that lie near the track, with one node beyond at
 * either end. A way that leaves the corridor and comes back gives several runs with the same id.
 *
 * @param id        of the way in the map
 * @param nodes     ids of its nodes in the direction in which the way was drawn, at least two
 * @param latitude  of each node, degrees
 * @param longitude of each node, degrees
 * @param tags      those that {@link MapTags} keeps
 */
public record MapWay(long id, long[] nodes, double[] latitude, double[] longitude, Map<String, String> tags) {

    public MapWay {
        if (nodes.length < 2 || nodes.length != latitude.length || nodes.length != longitude.length) {
            throw new IllegalArgumentException(nodes.length + " nodes at " + latitude.length + " and " + longitude.length + " coordinates");
        }
        tags = Map.copyOf(tags);
    }

    /** Number of nodes. */
    public int size() {
        return nodes.length;
    }

    /** The value of a tag; empty where the way has none of that key. */
    public String tag(String key) {
        return tags.getOrDefault(key, "");
    }
}
