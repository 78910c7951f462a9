package courseworthy.report;

import courseworthy.course.Ground;
import courseworthy.course.GroundPairs;
import courseworthy.scout.PossibleAnswer;
import courseworthy.scout.ScoutPlan;
import courseworthy.scout.ScoutQuestion;
import courseworthy.scout.UnknownPiece;
import courseworthy.task.ScoutResult;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Where to look before a race: ground that is not known, by what it could change. */
public final class ScoutReport {

    /** Pieces of a question that are named one by one. */
    private static final int MOST_PIECES = 8;
    /** Decisions that are named for one answer. */
    private static final int MOST_CHANGES = 5;
    private static final String MEANS = "Each line is what the recommendation would be if all pieces of the question were found to be so, all other ground "
            + "taken as it is now. The minutes are those between the fastest and the slowest that may be found.";
    private static final String HOW = "Write down what you find: courseworthy scout COURSE --answer 'KM-KM: surface=gravel, smoothness=bad' -o NEW.yaml";

    private ScoutReport() {
    }

    public static Report of(ScoutResult result) {
        ScoutPlan plan = result.plan();
        Report.Builder out = ReportHead.of(result.brief(), "where to look before you ride");
        if (plan.questions().isEmpty()) {
            return out.paragraph("The ground is known on the whole course: there is nothing to look at.").build();
        }
        String unknown = GroundPhrases.length(plan.unknown());
        String length = GroundPhrases.length(plan.length());
        out.paragraph("The ground is not known for sure on " + (unknown.equals(length) ? "the whole course, " + length : unknown + " of " + length)
                + ". " + depends(plan));
        List<RichText> nothing = new ArrayList<>();
        int number = 0;
        for (ScoutQuestion question : plan.questions()) {
            if (question.matters()) {
                out.section(question(question, ++number));
            } else {
                nothing.add(where(question));
            }
        }
        return out.section(Section.builder("no-difference", "Not worth a look (no decision and less than half a minute), or not worked out").bullets(nothing))
                .section(Section.builder("how", "What to do with it").paragraph(MEANS).paragraph(HOW)).build();
    }

    private static Section.Builder question(ScoutQuestion question, int number) {
        Table.Builder table = Table.builder().column("If you find").figures("Time").column("Then");
        for (PossibleAnswer answer : question.answers()) {
            table.row(RichText.ofStrong(tags(answer.ground())), RichText.of(Figures.time(answer.seconds())), RichText.of(changes(answer)));
        }
        return Section.builder("look-" + number, number + ". Look at " + GroundPhrases.length(question.length()))
                .aside(minutes(question.hanging()))
                .paragraph(where(question)).paragraph("Look for " + lookFor(question) + ".").table(table.build());
    }

    private static String depends(ScoutPlan plan) {
        String of = " of the predicted " + Figures.time(plan.seconds());
        return plan.hanging() < 30 ? "Less than half a minute" + of + " depends on it." : "Up to " + minutes(plan.hanging()) + of + " depend on it.";
    }

    private static String minutes(double seconds) {
        return seconds < 30 ? "under 1 min" : Phrases.number(seconds / 60, 0) + " min";
    }

    private static String tags(Ground ground) {
        return GroundPairs.text(GroundPairs.of(ground));
    }

    /** The first changes in the order of the catalogue, which begins with the kind of bike; all stand in the JSON. */
    private static String changes(PossibleAnswer answer) {
        List<String> out = new ArrayList<>();
        for (var change : answer.changes().entrySet()) {
            if (out.size() == MOST_CHANGES) {
                return String.join("; ", out) + "; and " + (answer.changes().size() - MOST_CHANGES) + " more";
            }
            out.add(change.getKey() + " " + change.getValue());
        }
        return out.isEmpty() ? "no change" : String.join("; ", out);
    }

    /** {@code km 12.3-14.1 (46.12345, 9.12345) Mill Lane; km 20.0-20.4 ...}. */
    private static RichText where(ScoutQuestion question) {
        RichText out = RichText.EMPTY;
        int named = 0;
        for (UnknownPiece piece : question.pieces()) {
            if (named++ == MOST_PIECES) {
                return out.text("; and " + (question.pieces().size() - MOST_PIECES) + " more");
            }
            out = out.text((named == 1 ? "" : "; ") + "km " + kilometres(piece.from()) + "-" + kilometres(piece.to()) + place(piece));
            out = piece.way().isEmpty() ? out : out.text(" ").quoted(piece.way());
        }
        return out;
    }

    private static String kilometres(double metres) {
        return Phrases.number(metres / 1000, 2);
    }

    private static String place(UnknownPiece piece) {
        return piece.place() == null ? "" : String.format(Locale.ROOT, " (%.5f, %.5f)", piece.place().latitude(), piece.place().longitude());
    }

    /** {@code surface (asphalt, gravel); smoothness (good, bad)}. */
    static String lookFor(ScoutQuestion question) {
        List<String> out = new ArrayList<>();
        question.differing().forEach((key, values) -> out.add(key + " (" + String.join(", ", values) + ")"));
        return out.isEmpty() ? "the ground" : String.join("; ", out);
    }
}
