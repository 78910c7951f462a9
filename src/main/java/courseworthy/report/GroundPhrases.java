package courseworthy.report;

import courseworthy.decision.Decision;
import courseworthy.task.Brief;
import courseworthy.task.CourseSummary;
import courseworthy.task.GroundBasis;
import courseworthy.task.GroundReliance;
import java.util.ArrayList;
import java.util.List;

/** Where the ground of a course comes from, in words. */
final class GroundPhrases {

    private GroundPhrases() {
    }

    /** Who must be named where something is made from a map, a paragraph; none where nobody must. */
    static List<RichText> attribution(String names) {
        return names.isEmpty() ? List.of() : List.of(RichText.of("Map data: ").quoted(names));
    }

    /** {@code Ground: 9.8 km mapped, 1.2 km inferred from the map, 400 m unknown.} and who must be named. */
    static List<RichText> paragraphs(CourseSummary course) {
        List<RichText> out = new ArrayList<>();
        if (course.basis() != null) {
            out.add(RichText.of("Ground: " + lengths(course.basis()) + "."));
        }
        out.addAll(attribution(course.attribution()));
        return out;
    }

    private static String lengths(GroundBasis basis) {
        List<String> out = new ArrayList<>();
        add(out, basis.mapped(), "mapped");
        add(out, basis.written(), "written by hand");
        add(out, basis.inferred(), "inferred from the map");
        add(out, basis.unknown(), "unknown");
        return String.join(", ", out);
    }

    private static void add(List<String> out, double metres, String what) {
        if (metres >= 1) {
            out.add(length(metres) + " " + what);
        }
    }

    static String length(double metres) {
        return metres < 1000 ? Phrases.number(metres, 0) + " m" : Phrases.number(metres / 1000, 1) + " km";
    }

    /** What decisions could change with ground that is inferred or unknown; empty where none could. */
    static RichText mayChange(Brief brief) {
        List<Decision> open = brief.openToGround();
        return open.isEmpty() ? RichText.EMPTY
                : RichText.of("These rest on ground that is inferred from the map or unknown, and could change with it: ")
                        .text(String.join(", ", open.stream().map(each -> each.topic().name()).toList())).text(".");
    }

    /** That a decision rests on such ground; empty where it does not. */
    static String rests(Brief brief, Decision decision) {
        GroundBasis basis = brief.course().basis();
        if (decision == null || !GroundReliance.rests(decision, basis)) {
            return "";
        }
        List<String> open = new ArrayList<>();
        add(open, basis.inferred(), "is inferred from the map");
        add(open, basis.unknown(), "is unknown");
        return "This rests on the ground, of which " + String.join(" and ", open)
                + (brief.openToGround().contains(decision) ? ": it could change with what the ground really is." : ".");
    }
}
