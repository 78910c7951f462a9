package courseworthy.course.matching;

import courseworthy.course.extract.MapWay;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Which links say the same of the ground: those with equal tags of surface, smoothness, tracktype and mtb:scale, and, where no surface is mapped,
 * of the same class of highway.
 */
final class GroundTags {

    private static final List<String> KEYS = List.of("surface", "smoothness", "tracktype", "mtb:scale");

    private GroundTags() {
    }

    /** A number for each link, equal where the ground's tags are. */
    static int[] groups(RoadNetwork network) {
        Map<List<String>, Integer> numbers = new HashMap<>();
        int[] groups = new int[network.links()];
        for (int i = 0; i < groups.length; i++) {
            MapWay way = network.way(i);
            if (i > 0 && network.wayIndex(i) == network.wayIndex(i - 1)) {
                groups[i] = groups[i - 1];
                continue;
            }
            List<String> tags = new ArrayList<>();
            for (String key : KEYS) {
                tags.add(way.tag(key));
            }
            tags.add(way.tag("surface").isEmpty() ? way.tag("highway") : "");
            Integer number = numbers.putIfAbsent(tags, numbers.size());
            groups[i] = number == null ? numbers.size() - 1 : number;
        }
        return groups;
    }
}
