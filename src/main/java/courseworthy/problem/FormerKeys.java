package courseworthy.problem;

import java.util.Collection;
import java.util.Map;

/** Keys, measures, topics, options and rule ids that had another name in earlier versions, so that a fault in a file of that time gives the present one. */
final class FormerKeys {

    private static final Map<String, String> NOW = Map.ofEntries(
            Map.entry("ground", "going"),
            Map.entry("rise", "ascent"), Map.entry("drop", "descent"),
            Map.entry("longest climb rise", "longest climb ascent"), Map.entry("last long climb rise", "last long climb ascent"),
            Map.entry("drop height", "ledge height"), Map.entry("drop limit", "ledge limit"),
            Map.entry("bike drop limit", "bike ledge limit"), Map.entry("drop above the mark", "ledge above the mark"),
            Map.entry("technical grade", "mtb:scale"), Map.entry("hardest technical grade", "hardest mtb:scale"),
            Map.entry("cut-off", "time limit"),
            Map.entry("fork travel", "most fork travel"), Map.entry("fork travel limit", "most fork travel"),
            Map.entry("rotor limit", "most rotor"),
            Map.entry("tyre marking", "marked tyre pressure"), Map.entry("rim marking", "marked rim pressure"),
            Map.entry("lower marking", "lower marked pressure"),
            Map.entry("flats", "punctures"), Map.entry("mended with", "repaired with"),
            Map.entry("speaks", "fires"),
            Map.entry("tube", "tubes"), Map.entry("dropper stroke", "dropper travel"), Map.entry("stroke", "dropper travel"),
            Map.entry("fork legs", "fork chassis"), Map.entry("legs", "chassis"), Map.entry("slim", "light"), Map.entry("stout", "stiff"),
            Map.entry("the proven one", "your usual saddle"), Map.entry("by hand", "at the fork/shock"));

    /** What the ids of shipped rules began with, and what they begin with now. */
    private static final String SHIPPED_BEFORE = "house/";
    private static final String SHIPPED_NOW = "shipped/";

    private FormerKeys() {
    }

    /** The present name, where it is among those accepted; else empty. */
    static String now(String former, Collection<String> accepted) {
        String now = former.startsWith(SHIPPED_BEFORE) ? SHIPPED_NOW + former.substring(SHIPPED_BEFORE.length()) : NOW.getOrDefault(former, "");
        return accepted.contains(now) ? now : "";
    }
}
