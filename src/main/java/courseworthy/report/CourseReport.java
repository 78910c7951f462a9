package courseworthy.report;

import courseworthy.course.ElevationLine;
import courseworthy.demand.Measure;
import courseworthy.report.picture.ElevationProfile;
import courseworthy.task.CourseResult;
import courseworthy.task.CourseSummary;
import courseworthy.task.GroundBasis;
import courseworthy.worth.RoadBook.SimplifiedHeights;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** A course by itself: its profile, its measures, and notes on its file. */
public final class CourseReport {

    private CourseReport() {
    }

    public static Report of(CourseResult result) {
        CourseSummary course = result.summary();
        Report.Builder out = Report.builder(RichText.ofQuoted(course.name()))
                .paragraph(RichText.ofQuoted(course.summary()))
                .paragraph(RichText.ofQuoted(Phrases.surfaces(course.ground(), course.surfaces().size())))
                .paragraphs(GroundPhrases.paragraphs(course));
        ElevationLine line = course.line();
        if (line != null) {
            out.figure(new Figure(highest(result.heights()), new ElevationProfile(line.distance(), line.elevation(), false), elevation(course),
                    points(result.heights())))
                    .remark(line.absolute() ? "" : "Heights are above the start.");
        }
        return out.section(measures(result)).section(ground(course))
                .section(Section.builder("course-file", "Notes on the course file").bullets(quoted(Phrases.mended(course))))
                .section(Section.builder("assumed", "Assumed (not given in your files)").bullets(quoted(course.assumed())))
                .build();
    }

    private static RichText highest(SimplifiedHeights heights) {
        int at = heights.highest();
        return RichText.of("Highest at " + kilometre(heights.line().distance()[at]) + " km: " + metres(heights.line().elevation()[at]) + " m");
    }

    private static Table points(SimplifiedHeights heights) {
        Table.Builder out = Table.builder().figures("km").figures("height, m");
        for (int i = 0; i < heights.line().size(); i++) {
            out.row(RichText.of(kilometre(heights.line().distance()[i])), RichText.of(metres(heights.line().elevation()[i])));
        }
        return out.build();
    }

    private static String kilometre(double metres) {
        return Phrases.number(metres / 1000, 1);
    }

    private static String metres(double metres) {
        return Phrases.number(metres, 0);
    }

    static RichText elevation(CourseSummary course) {
        List<String> out = new ArrayList<>();
        out.add("Elevation over " + Phrases.number(course.distance() / 1000, 1) + " km");
        if (course.climbing() != null) {
            out.add(Phrases.number(course.climbing().ascent(), 0) + " m up");
            out.add(Phrases.number(course.climbing().descent(), 0) + " m down");
        }
        return RichText.of(String.join(", ", out) + ".");
    }

    private static Section.Builder measures(CourseResult result) {
        List<Definition> rows = new ArrayList<>();
        for (Measure measure : result.measures().keySet()) {
            rows.add(Definition.of(measure.written(), RichText.ofStrong(Phrases.range(result.demands(), measure))));
        }
        List<String> unknown = result.unknown().stream().filter(each -> !result.demands().isAbsent(each)).map(Measure::written).toList();
        List<String> absent = result.unknown().stream().filter(result.demands()::isAbsent).map(Measure::written).toList();
        return Section.builder("measures", "Measures of the course").definitions(rows)
                .remark(absent.isEmpty() ? "" : "There is none: " + String.join(", ", absent) + ".")
                .remark(unknown.isEmpty() ? "" : "Not known: " + String.join(", ", unknown) + ".");
    }

    /** Stretch by stretch, where a map gave any of it. */
    private static Section.Builder ground(CourseSummary course) {
        Section.Builder out = Section.builder("ground", "Ground along the course");
        if (course.basis() == null) {
            return out;
        }
        Table.Builder table = Table.builder().figures("km").column("way").column("ground").column("known by");
        for (GroundBasis.GroundBasisPiece each : course.basis().stretches()) {
            table.row(RichText.of(Phrases.number(each.from() / 1000, 2) + " to " + Phrases.number(each.to() / 1000, 2)), RichText.ofQuoted(each.way()),
                    RichText.ofQuoted(ground(each)), RichText.of(each.kind().word()));
        }
        return out.table(table.build())
                .remark(course.basis().rules().isEmpty() ? "" : "Inferred by the rules for map tags: " + String.join(", ", course.basis().rules()) + ".");
    }

    private static String ground(GroundBasis.GroundBasisPiece piece) {
        Set<String> mayBe = new LinkedHashSet<>();
        piece.mayBe().forEach(each -> mayBe.add(said(each)));
        String known = said(piece.ground());
        return mayBe.isEmpty() ? known.isEmpty() ? "unknown" : known : (known.isEmpty() ? "" : known + "; ") + "may be " + String.join(" / ", mayBe);
    }

    private static String said(Map<String, String> ground) {
        List<String> out = new ArrayList<>();
        ground.forEach((key, value) -> out.add(key + " " + value.replace('_', ' ')));
        return String.join(", ", out);
    }

    private static List<RichText> quoted(List<String> lines) {
        return lines.stream().map(RichText::ofQuoted).toList();
    }
}
