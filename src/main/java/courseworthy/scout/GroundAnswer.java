package courseworthy.scout;

import courseworthy.course.Course;
import courseworthy.course.Ground;
import courseworthy.course.GroundPairs;
import courseworthy.course.Stretch;
import courseworthy.problem.Faults;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What was found on a piece of a course.
 *
 * @param from   m from the start
 * @param to     m from the start, above {@code from}
 * @param ground what was found, by key as a profile writes it
 */
public record GroundAnswer(double from, double to, Map<String, String> ground) {

    private static final Pattern SHAPE = Pattern.compile("\\s*(\\d{1,6}(?:\\.\\d{1,6})?)\\s*-\\s*(\\d{1,6}(?:\\.\\d{1,6})?)\\s*(?:km\\s*)?:(.*)", Pattern.DOTALL);
    private static final String OPTION = "--answer";
    private static final String EXPECTED = "kilometres and what is there, such as '12.3-14.1: surface=gravel, smoothness=bad'";
    /** An end that lies beyond the course's by less than this is its end, m: kilometres are shown to 100 m. */
    private static final double BEYOND = 60;
    /** An end as near as this to that of a stretch means that one, m: kilometres are shown to 10 m, so that they are off by up to 5. */
    private static final double NEAR = 6;
    /** Shorter pieces are left out when stretches are parted, m. */
    private static final double SHORTEST = 1;

    /** Reads what was typed, {@code 12.3-14.1: surface=gravel}; null with a fault where that cannot be. */
    public static GroundAnswer read(String typed, double length, Faults faults) {
        Matcher shape = SHAPE.matcher(typed);
        if (!shape.matches()) {
            faults.add(OPTION, 0, "", "\"" + typed.strip() + "\"", EXPECTED, "");
            return null;
        }
        double from = 1000 * Double.parseDouble(shape.group(1));
        double to = 1000 * Double.parseDouble(shape.group(2));
        if (from >= to || to > length + BEYOND) {
            faults.add(OPTION, 0, "", "km " + shape.group(1) + " to " + shape.group(2),
                    "a piece between the start and the end of the course, which is " + Math.round(length) / 1000.0 + " km long", "");
            return null;
        }
        Map<String, String> ground = GroundPairs.read(shape.group(3).strip(), OPTION, 0, "", faults);
        return ground.isEmpty() ? null : new GroundAnswer(from, Math.min(to, length), ground);
    }

    /** The course with what was found on it; what was known of the piece besides is kept where both can be true. */
    public Course on(Course course) {
        double start = snapped(course, from);
        double stop = snapped(course, to);
        return start < stop ? on(course, start, stop) : on(course, from, to);
    }

    private static double snapped(Course course, double metres) {
        double at = 0;
        for (Stretch stretch : course.stretches()) {
            if (Math.abs(at - metres) <= NEAR) {
                return at;
            }
            at += stretch.length();
        }
        return Math.abs(at - metres) <= NEAR ? at : metres;
    }

    private Course on(Course course, double start, double stop) {
        List<Stretch> out = new ArrayList<>();
        double at = 0;
        for (Stretch stretch : course.stretches()) {
            double end = at + stretch.length();
            double low = Math.max(at, Math.min(end, start));
            double high = Math.max(at, Math.min(end, stop));
            if (high - low < SHORTEST) {
                out.add(stretch);
            } else {
                add(out, stretch, low - at);
                add(out, stretch.known(found(stretch.ground())), high - low);
                add(out, stretch, end - high);
            }
            at = end;
        }
        return course.with(out);
    }

    private Ground found(Ground before) {
        Map<String, String> all = new LinkedHashMap<>(GroundPairs.of(before));
        all.putAll(ground);
        return GroundPairs.ground(GroundPairs.agree(all) ? all : ground);
    }

    private static void add(List<Stretch> out, Stretch stretch, double length) {
        if (length >= SHORTEST) {
            double share = length / stretch.length();
            out.add(stretch.over(length, part(stretch.ascent(), share), part(stretch.descent(), share)));
        }
    }

    private static Double part(Double metres, double share) {
        return metres == null ? null : Double.valueOf(metres * share);
    }
}
