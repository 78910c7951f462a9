package courseworthy.build;

import courseworthy.build.Build.NotMet;
import courseworthy.workshop.MountingPlace;
import courseworthy.workshop.Part;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What a rider gets where another takes a bike or parts that were wanted, in words. */
final class BuildDifference {

    private BuildDifference() {
    }

    /** The bike and, where it is the one that was wanted, the parts that another got; another bike has others throughout. */
    static String bike(Build wanted, Build got) {
        if (got.bike() == null) {
            return wanted.bike() == null ? "no bike, as before" : "no bike is left";
        }
        if (!got.bike().name().equals(wanted.bike().name())) {
            return got.bike() + " in place of " + wanted.bike();
        }
        List<String> instead = instead(wanted, got);
        return got.bike() + (instead.isEmpty() ? " as wanted" : " with " + String.join(", ", instead));
    }

    /** The parts that take the places of those that another got. */
    private static List<String> instead(Build wanted, Build got) {
        List<String> out = new ArrayList<>();
        for (Map.Entry<MountingPlace, Part> each : wanted.inPlace().entrySet()) {
            Part part = got.inPlace().get(each.getKey());
            if (each.getKey() == MountingPlace.FRONT_SEALANT || each.getKey() == MountingPlace.REAR_SEALANT) {
                continue;
            }
            if (part == null) {
                out.add("nothing for " + each.getValue() + " (" + each.getKey().words() + ")");
            } else if (part != null && !part.name().equals(each.getValue().name())) {
                out.add(part + " for " + each.getValue());
            }
        }
        return out;
    }

    /** What one build does not meet that the other does. */
    static List<String> losses(String rider, Build wanted, Build got) {
        Map<String, String> met = new LinkedHashMap<>();
        for (NotMet each : wanted.notMet()) {
            met.put(each.topic(), each.got());
        }
        List<String> out = new ArrayList<>();
        for (NotMet each : got.notMet()) {
            if (!each.got().equals(met.get(each.topic()))) {
                out.add(rider + ": " + each.topic() + " " + each.got() + " instead of the recommended " + each.wanted());
            }
        }
        return out;
    }
}
