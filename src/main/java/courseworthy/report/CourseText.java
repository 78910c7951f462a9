package courseworthy.report;

import courseworthy.course.ElevationLine;
import courseworthy.demand.Demands;
import courseworthy.demand.Measure;
import courseworthy.report.Page.Weight;
import courseworthy.task.CourseResult;
import courseworthy.task.CourseSummary;
import java.util.ArrayList;
import java.util.List;

/** Writes what is to be known of a course by itself: its picture, its demands, what was mended and what is not known. */
public final class CourseText {

    private static final int ROWS = 8;
    private static final int LABEL = 8;

    private final CourseResult result;
    private final CourseSummary course;
    private final Demands demands;
    private final Page page;

    private CourseText(CourseResult result, boolean colours) {
        this.result = result;
        this.course = result.summary();
        this.demands = result.demands();
        this.page = new Page(colours);
    }

    public static String of(CourseResult result, boolean colours) {
        CourseText text = new CourseText(result, colours);
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
        page.text(0, 2, Phrases.surfaces(course.surfaces(), course.surfaces().size()), Weight.PLAIN);
    }

    private void picture() {
        ElevationLine line = course.line();
        if (line == null) {
            return;
        }
        page.gap();
        double[] heights = ElevationSketch.columns(line, Columns.PAGE - LABEL);
        List<String> rows = ElevationSketch.rows(heights, ROWS, 1);
        for (int i = 0; i < rows.size(); i++) {
            String label = i == 0 ? metres(ElevationSketch.highest(heights)) : i == rows.size() - 1 ? metres(ElevationSketch.lowest(heights)) : "";
            page.drawn((padded(label, LABEL - 1) + " " + rows.get(i)).stripTrailing(), Weight.PLAIN);
        }
        String end = Phrases.number(course.distance() / 1000, 1) + " km";
        int room = Columns.PAGE - LABEL - 4 - end.length();
        page.drawn(" ".repeat(LABEL) + "0 km" + " ".repeat(room) + end, Weight.FAINT);
        if (!line.absolute()) {
            page.text(LABEL, LABEL, "Heights are above the start.", Weight.FAINT);
        }
    }

    private static String metres(double height) {
        return Phrases.number(height, 0) + " m";
    }

    private static String padded(String text, int columns) {
        return " ".repeat(Math.max(0, columns - text.length())) + text;
    }

    private void demands() {
        page.heading("WHAT IT ASKS");
        List<String> unknown = new ArrayList<>();
        for (Measure measure : result.measures().keySet()) {
            if (demands.known(measure)) {
                page.row(measure.written(), 28, Phrases.range(demands, measure), Weight.BOLD, "", 0, Weight.PLAIN);
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
        List<String> mended = Phrases.mended(course);
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
