package courseworthy.course.ground;

import courseworthy.course.Passage;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What the tags of a way say of how it is passed: ridden, on foot or by ferry (OpenStreetMap wiki, "Key:bicycle", "Key:duration"). */
final class PassageTags {

    /** A ferry takes from so long to so long, s, as a profile has it. */
    private static final double SHORTEST = 60;
    private static final double LONGEST = 86_400;
    private static final Pattern CLOCK = Pattern.compile("(?:(\\d{1,2}):)?(\\d{1,4})(?::(\\d{2}))?");
    private static final Pattern PERIOD = Pattern.compile("PT(?:(\\d{1,2})H)?(?:(\\d{1,4})M)?(?:(\\d{1,2})S)?");

    private PassageTags() {
    }

    /** Null where the way is ridden, or by a ferry of which nobody says how long it takes. */
    static Passage of(Map<String, String> tags) {
        if (isFerry(tags)) {
            double seconds = duration(tags.getOrDefault("duration", ""));
            return Double.isNaN(seconds) ? null : Passage.ferry(seconds);
        }
        return isSteps(tags) || isPushed(tags) ? Passage.ON_FOOT : null;
    }

    static boolean isFerry(Map<String, String> tags) {
        return "ferry".equals(tags.get("route"));
    }

    static boolean isSteps(Map<String, String> tags) {
        return "steps".equals(tags.get("highway"));
    }

    /** Where bicycles may be pushed and not ridden. */
    static boolean isPushed(Map<String, String> tags) {
        String highway = tags.getOrDefault("highway", "");
        boolean forFeet = highway.equals("footway") || highway.equals("pedestrian");
        return "dismount".equals(tags.get("bicycle")) || forFeet && !tags.containsKey("bicycle") && "designated".equals(tags.get("foot"));
    }

    /** Seconds of a duration, {@code 20}, {@code 00:20}, {@code 1:05:00} or {@code PT20M}; NaN where it is none that a ferry takes. */
    static double duration(String text) {
        String plain = text.strip();
        Matcher clock = CLOCK.matcher(plain);
        Matcher period = PERIOD.matcher(plain);
        double seconds = Double.NaN;
        if (clock.matches()) {
            // Minutes alone, or hours and minutes; a third figure is of seconds.
            seconds = 3600 * number(clock.group(1)) + 60 * number(clock.group(2)) + number(clock.group(3));
        } else if (period.matches()) {
            seconds = 3600 * number(period.group(1)) + 60 * number(period.group(2)) + number(period.group(3));
        }
        return seconds >= SHORTEST && seconds <= LONGEST ? seconds : Double.NaN;
    }

    private static double number(String digits) {
        return digits == null ? 0 : Integer.parseInt(digits);
    }
}
