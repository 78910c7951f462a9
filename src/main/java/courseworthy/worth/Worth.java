package courseworthy.worth;

import java.util.List;

/**
 * What one decision is worth on this course.
 *
 * @param topic        the topic
 * @param both         whether it is worked out for front and rear together, which are decided alike
 * @param alternatives other values beside the decided one; empty where nothing can be computed
 * @param extensions   for aero extensions; else null
 * @param gears        for gears; else null
 * @param notes        what else to know, in sentences
 */
public record Worth(String topic, boolean both, List<Alternative> alternatives, Extensions extensions, GearChoice gears,
        List<String> notes) {

    public Worth {
        alternatives = List.copyOf(alternatives);
        notes = List.copyOf(notes);
    }

    /** The alternative that returns most, or costs least; null where there is none. */
    public Alternative best() {
        Alternative best = null;
        for (Alternative each : alternatives) {
            best = best == null || each.saved().mid() > best.saved().mid() ? each : best;
        }
        return best;
    }
}
