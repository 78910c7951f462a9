package courseworthy.report;

import courseworthy.decision.Decision;
import java.util.ArrayList;
import java.util.List;

/**
 * Topics that a rider thinks of together; the catalogue lists them in this order, so a group is known by its first topic.
 *
 * @param title     the heading
 * @param decisions its decisions, in the order of the catalogue
 */
record TopicGroup(String title, List<Decision> decisions) {

    static List<TopicGroup> of(List<Decision> decisions) {
        List<TopicGroup> out = new ArrayList<>();
        List<Decision> current = new ArrayList<>();
        for (Decision decision : decisions) {
            String title = titleFrom(decision.topic().name());
            if (title != null || out.isEmpty()) {
                current = new ArrayList<>();
                out.add(new TopicGroup(title == null ? "Bike" : title, current));
            }
            current.add(decision);
        }
        return out;
    }

    private static String titleFrom(String firstTopic) {
        return switch (firstTopic) {
            case "bike" -> "Bike";
            case "fork travel" -> "Suspension and seatpost";
            case "front tyre width" -> "Tyres";
            case "front rim material" -> "Wheels";
            case "chainrings" -> "Gearing";
            case "bar width" -> "Cockpit";
            case "saddle" -> "Contact points";
            case "power meter" -> "Electronics";
            case "front rotor" -> "Brakes";
            case "lubricant" -> "Upkeep before the day";
            case "water" -> "Worn and carried";
            default -> null;
        };
    }
}
