package courseworthy.brief;

import courseworthy.brief.Page.Weight;
import courseworthy.course.Line;
import courseworthy.demand.Demands;
import courseworthy.demand.Measure;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** Writes what is to be known of a course by itself: its picture, its demands, what was mended and what is not known. */
public final class CourseText {

    private static final int ROWS = 8;
    private static final int LABEL = 8;

    private final CourseLine course;
    private final Demands demands;
    private final Page page;

    private CourseText(CourseLine course, Demands demands, boolean colours) {
        this.course = course;
        this.demands = demands;
        this.page = new Page(colours);
    }

    /** The measures that a course has by itself, without rider and day. */
    public static Set<Measure> measures() {
        return EnumSet.range(Measure.DISTANCE, Measure.TURNS_PER_KM);
    }

    public static String of(CourseLine course, Demands demands, boolean colours) {
        CourseText text = new CourseText(course, demands, colours);
        text.title();
        text.picture();
        text.demands();
        text.notes();
        return text.page.toString();
    }

    private void title() {
        page.spread(course.name(), "", Weight.BOLD);
        if (!course.summary().isEmpty()) {
            page.text(0, 0, course.summary(), Weight.PLAIN);
        }
        page.text(0, 2, Words.surfaces(course.surfaces(), course.surfaces().size()), Weight.PLAIN);
    }

    private void picture() {
        Line line = course.line();
        if (line == null) {
            return;
        }
        page.gap();
        double[] heights = Sketch.columns(line, Columns.PAGE - LABEL);
        List<String> rows = Sketch.rows(heights, ROWS, 1);
        for (int i = 0; i < rows.size(); i++) {
            String label = i == 0 ? metres(Sketch.highest(heights)) : i == rows.size() - 1 ? metres(Sketch.lowest(heights)) : "";
            page.drawn((padded(label, LABEL - 1) + " " + rows.get(i)).stripTrailing(), Weight.PLAIN);
        }
        String end = Words.number(course.distance() / 1000, 1) + " km";
        int room = Columns.PAGE - LABEL - 4 - end.length();
        page.drawn(" ".repeat(LABEL) + "0 km" + " ".repeat(room) + end, Weight.FAINT);
        if (!line.absolute()) {
            page.text(LABEL, LABEL, "Heights are above the start.", Weight.FAINT);
        }
    }

    private static String metres(double height) {
        return Words.number(height, 0) + " m";
    }

    private static String padded(String text, int columns) {
        return " ".repeat(Math.max(0, columns - text.length())) + text;
    }

    private void demands() {
        page.heading("WHAT IT ASKS");
        List<String> unknown = new ArrayList<>();
        for (Measure measure : measures()) {
            if (demands.known(measure)) {
                page.row(measure.written(), 28, Words.range(demands, measure), Weight.BOLD, "", 0, Weight.PLAIN);
            } else {
                unknown.add(measure.written());
            }
        }
        if (!unknown.isEmpty()) {
            page.gap();
            page.text(0, 2, "Not known: " + String.join(", ", unknown) + ".", Weight.FAINT);
        }
    }

    private void notes() {
        List<String> mended = Words.mended(course);
        if (!mended.isEmpty()) {
            page.heading("TO KNOW");
            page.texts("  - ", mended);
        }
        if (!course.assumed().isEmpty()) {
            page.heading("ASSUMED, SINCE NOT WRITTEN");
            page.texts("  - ", course.assumed());
        }
    }
}
