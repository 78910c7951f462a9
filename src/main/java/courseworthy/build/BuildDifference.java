package courseworthy.build;

import courseworthy.build.Build.UnmetDecision;
import courseworthy.build.Build.Swap;
import courseworthy.build.SeasonPlan.UnmetTopic;
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

    /** What is made of the changes and what is left out, where there is no time for all. */
    static String inTime(Build wanted, Build got) {
        List<String> made = new ArrayList<>();
        got.swaps().forEach(each -> made.add(change(each)));
        Map<MountingPlace, Part> has = got.inPlace();
        Map<MountingPlace, Part> wants = wanted.inPlace();
        List<String> left = new ArrayList<>();
        for (Swap each : wanted.swaps()) {
            MountingPlace host = each.place().host();
            boolean withItsHost = host != null && !name(has.get(host)).equals(name(wants.get(host)));
            if (!withItsHost && !made.contains(change(each))) {
                left.add(change(each));
            }
        }
        if (left.isEmpty()) {
            return got.bike() + " as wanted";
        }
        return got.bike() + (made.isEmpty() ? " as it stands" : ", changed: " + String.join(", ", made)) + "; left out for want of time: " + String.join(", ", left);
    }

    private static String change(Swap swap) {
        return swap.on() == null ? "no " + swap.off() : swap.on().name();
    }

    private static String name(Part part) {
        return part == null ? "" : part.name();
    }

    /** What one build does not meet that the other does. */
    static List<UnmetTopic> losses(String rider, Build wanted, Build got) {
        Map<String, String> met = new LinkedHashMap<>();
        for (UnmetDecision each : wanted.notMet()) {
            met.put(each.topic(), each.got());
        }
        List<UnmetTopic> out = new ArrayList<>();
        for (UnmetDecision each : got.notMet()) {
            if (!each.got().equals(met.get(each.topic()))) {
                out.add(new UnmetTopic(rider, each.topic(), each.got(), each.wanted()));
            }
        }
        return out;
    }
}
