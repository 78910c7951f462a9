package courseworthy.course.extract;

import java.util.Map;
import java.util.Set;

/** The tags of OpenStreetMap's open tagging scheme that bear on riding: which ways and nodes are kept, and which of their tags. */
final class MapTags {

    /** Characters of a text: as many as the map takes (OpenStreetMap wiki, "Elements"), each up to four bytes; what is longer is cut. */
    static final int LONGEST = 255;
    static final int LONGEST_BYTES = 4 * LONGEST;

    /** Keys kept of a way. */
    static final Set<String> OF_WAYS = Set.of("highway", "route", "surface", "smoothness", "tracktype", "mtb:scale", "mtb:scale:uphill",
            "mtb:scale:imba", "mtb:type", "sac_scale", "trail_visibility", "ford", "crossing", "lit", "incline", "width", "est_width",
            "access", "bicycle", "foot", "vehicle", "motor_vehicle", "bridge", "tunnel", "covered", "layer", "junction", "oneway",
            "oneway:bicycle", "name", "ref", "service", "footway", "cycleway", "cycleway:left", "cycleway:right", "cycleway:both",
            "cycleway:surface", "sidewalk", "steps", "step_count", "ramp", "ramp:bicycle", "handrail", "segregated", "area", "lanes",
            "maxspeed", "winter_service", "seasonal", "informal", "operator", "ferry", "duration");

    /** Keys of which a way must have one to be kept. */
    static final Set<String> THAT_KEEP_A_WAY = Set.of("highway", "route");

    /** Keys of which a node must have one to be kept. */
    static final Set<String> THAT_KEEP_A_NODE = Set.of("ford", "highway", "crossing", "barrier", "railway", "traffic_calming", "hazard");

    /** Keys kept of a node. */
    static final Set<String> OF_NODES = Set.of("ford", "highway", "crossing", "barrier", "railway", "traffic_calming", "hazard", "access",
            "bicycle", "foot", "surface", "depth", "kerb", "maxwidth", "width", "name", "mtb:scale", "crossing:markings");

    /** Values of highway that nobody rides or walks along: closed to both, not there yet or no longer, or no way at all. */
    private static final Set<String> NO_WAY_TO_RIDE = Set.of("motorway", "motorway_link", "proposed", "planned", "construction", "abandoned",
            "razed", "demolished", "dismantled", "platform", "rest_area", "services", "bus_stop", "no", "none", "street_lamp", "emergency_bay");

    /** Values of highway that say nothing of riding past a node. */
    private static final Set<String> FURNITURE = Set.of("street_lamp", "bus_stop", "milestone", "speed_camera", "emergency_access_point");

    private MapTags() {
    }

    /** Whether a node with such tags is kept. */
    static boolean keepsNode(Map<String, String> tags) {
        for (String key : tags.keySet()) {
            if (THAT_KEEP_A_NODE.contains(key) && !(key.equals("highway") && FURNITURE.contains(tags.get(key)))) {
                return true;
            }
        }
        return false;
    }

    /** Whether a way with such tags is one that people ride or push along. */
    static boolean keepsWay(Map<String, String> tags) {
        String highway = tags.get("highway");
        return highway != null ? !NO_WAY_TO_RIDE.contains(highway) : "ferry".equals(tags.get("route"));
    }
}
