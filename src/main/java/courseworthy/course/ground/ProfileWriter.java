package courseworthy.course.ground;

import courseworthy.course.Course;
import courseworthy.course.ElevationLine;
import courseworthy.course.Ground;
import courseworthy.course.GroundOrigin;
import courseworthy.course.GroundPairs;
import courseworthy.course.Passage;
import courseworthy.course.Stretch;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** Writes a course as a profile that a person can edit: what stands on a map and what was inferred from it, each value with its origin. */
public final class ProfileWriter {

    /** Longest name that a profile takes, and longest list of ways. */
    private static final int LONGEST_NAME = 200;
    private static final int LONGEST_WAY = 400;

    private final StringBuilder out = new StringBuilder();

    private ProfileWriter() {
    }

    /**
     * The text of a profile.
     *
     * @param header lines of comment, without their marks
     * @param track  the track's path, seen from the profile's folder; empty where there is none
     */
    public static String text(Course course, List<String> header, String track) {
        ElevationLine line = course.line();
        boolean heights = line != null && !line.measured();
        ProfileWriter writer = new ProfileWriter();
        header.forEach(each -> writer.out.append("# ").append(commented(each)).append('\n'));
        writer.key("name", cut(course.name(), LONGEST_NAME));
        writer.key("summary", course.summary());
        writer.key("track", track);
        writer.key("attribution", course.attribution());
        if (track.isEmpty()) {
            writer.place(course);
        }
        writer.out.append("stretches:\n");
        double from = 0;
        for (Stretch stretch : course.stretches()) {
            writer.stretch(stretch, from, from + stretch.length(), heights);
            from += stretch.length();
        }
        return writer.out.toString();
    }

    private void key(String key, String value) {
        if (!value.isEmpty()) {
            out.append(key).append(": ").append(quoted(value)).append('\n');
        }
    }

    /** What a track would tell of where a course lies. */
    private void place(Course course) {
        if (course.line() != null && course.line().absolute()) {
            out.append("start height: ").append(decimals(course.line().elevation()[0], 1)).append(" m\n");
        }
        if (course.start() != null) {
            out.append("latitude: ").append(decimals(course.start().latitude(), 6)).append(" deg\n");
            out.append("longitude: ").append(decimals(course.start().longitude(), 6)).append(" deg\n");
        }
    }

    private static String decimals(double value, int decimals) {
        return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP).stripTrailingZeros().toPlainString();
    }

    private void stretch(Stretch stretch, double from, double to, boolean heights) {
        GroundOrigin origin = stretch.origin();
        String what = origin == null ? "" : origin.isUnmatched() ? ": no way for sure, look at it" : ": " + commented(origin.way());
        out.append("  # km ").append(kilometres(from, 2)).append(" to ").append(kilometres(to, 2)).append(what).append('\n');
        out.append("  - to: ").append(kilometres(to, 4)).append(" km\n");
        if (heights && stretch.ascent() != null) {
            line("ascent", kilometres(1000 * stretch.ascent(), 1) + " m", "");
        }
        if (heights && stretch.descent() != null) {
            line("descent", kilometres(1000 * stretch.descent(), 1) + " m", "");
        }
        if (stretch.steepest() != null && !(heights && isFlatter(stretch))) {
            line("steepest", kilometres(100_000 * stretch.steepest(), 1) + " %", "");
        }
        passage(stretch.passage());
        GroundPairs.of(stretch.ground()).forEach((key, value) -> line(key, value, origin(origin, key, value)));
        mayBe(stretch);
        if (origin != null && !origin.equals(GroundOrigin.UNMATCHED)) {
            origin(origin);
        }
    }

    private void passage(Passage passage) {
        if (passage != null && passage.ferry() != null) {
            line("ferry", Math.round(passage.ferry() / 60) + " min", "without waiting");
        } else if (passage != null) {
            line("on foot", passage.onFoot() ? "yes" : "no", "");
        }
    }

    /** Whether an incline tag says less than the climbing that is written. */
    private static boolean isFlatter(Stretch stretch) {
        double up = stretch.ascent() == null ? 0 : stretch.ascent();
        double down = stretch.descent() == null ? 0 : stretch.descent();
        return stretch.steepest() < Math.max(up, down) / stretch.length();
    }

    private static String origin(GroundOrigin origin, String key, String value) {
        GroundOrigin.ValueProvenance source = origin == null ? null : origin.source(key, value);
        if (source == null) {
            return "by hand";
        }
        if (source == GroundOrigin.ValueProvenance.MAPPED) {
            return "mapped";
        }
        for (Map.Entry<String, Map<String, String>> rule : origin.inferred().entrySet()) {
            if (value.equals(rule.getValue().get(key))) {
                return "inferred: " + rule.getKey();
            }
        }
        return "inferred";
    }

    private void mayBe(Stretch stretch) {
        Map<String, String> likely = GroundPairs.of(stretch.ground());
        List<String> others = new ArrayList<>();
        for (Ground other : stretch.alternatives()) {
            Map<String, String> differs = new LinkedHashMap<>(GroundPairs.of(other));
            differs.entrySet().removeIf(each -> Objects.equals(likely.get(each.getKey()), each.getValue()));
            if (!differs.isEmpty()) {
                others.add('"' + GroundPairs.text(differs) + '"');
            }
        }
        if (!others.isEmpty()) {
            line("may be", "[" + String.join(", ", others) + "]", "");
        }
    }

    private void origin(GroundOrigin origin) {
        if (!origin.isUnmatched()) {
            line("way", quoted(cut(origin.way(), LONGEST_WAY)), "");
        }
        if (!origin.mapped().isEmpty()) {
            line("mapped", GroundPairs.text(origin.mapped()), "");
        }
        if (!origin.inferred().isEmpty()) {
            List<String> rules = new ArrayList<>();
            origin.inferred().forEach((rule, values) -> rules.add('"' + (values.isEmpty() ? GroundOrigin.RANGE_ALONE : GroundPairs.text(values)) + GroundOrigin.BY + rule + '"'));
            line("inferred", "[" + String.join(", ", rules) + "]", "");
        }
    }

    private void line(String key, String value, String comment) {
        out.append("    ").append(key).append(": ").append(value).append(comment.isEmpty() ? "" : "  # " + comment).append('\n');
    }

    private static String kilometres(double metres, int decimals) {
        BigDecimal value = BigDecimal.valueOf(metres / 1000).setScale(decimals, RoundingMode.HALF_UP);
        return value.signum() == 0 ? "0" : value.toPlainString();
    }

    /** On one line, with nothing that a terminal or an editor would act on. */
    private static String commented(String text) {
        StringBuilder plain = new StringBuilder();
        text.codePoints().forEach(point -> plain.appendCodePoint(isPlain(point) ? point : ' '));
        return plain.toString();
    }

    private static boolean isPlain(int point) {
        int type = Character.getType(point);
        return type != Character.CONTROL && type != Character.FORMAT && type != Character.SURROGATE && type != Character.LINE_SEPARATOR
                && type != Character.PARAGRAPH_SEPARATOR && type != Character.PRIVATE_USE && type != Character.UNASSIGNED;
    }

    private static String cut(String text, int most) {
        int points = text.codePointCount(0, text.length());
        return text.length() <= most ? text : text.substring(0, text.offsetByCodePoints(0, Math.min(points, most / 2))) + " ...";
    }

    /** A text as YAML reads it back. */
    static String quoted(String text) {
        String plain = commented(text).strip();
        return '"' + plain.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
    }
}
