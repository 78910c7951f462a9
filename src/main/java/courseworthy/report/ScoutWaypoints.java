package courseworthy.report;

import courseworthy.problem.TextSanitiser;
import courseworthy.scout.ScoutQuestion;
import courseworthy.scout.UnknownPiece;
import courseworthy.task.ScoutResult;
import java.util.Locale;

/** Places to look at as way points of a GPX 1.1 file (topografix.com/GPX/1/1), one where each piece begins. */
public final class ScoutWaypoints {

    private final StringBuilder out = new StringBuilder();

    private ScoutWaypoints() {
    }

    /** The file; without way points where the course has no track or nothing is unknown. */
    public static String of(ScoutResult result) {
        ScoutWaypoints gpx = new ScoutWaypoints();
        gpx.out.append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<gpx xmlns=\"http://www.topografix.com/GPX/1/1\" version=\"1.1\" creator=\"courseworthy\">\n");
        gpx.out.append("  <metadata><name>").append(escaped(result.brief().course().name())).append("</name>");
        String attribution = result.brief().course().attribution();
        gpx.out.append(attribution.isEmpty() ? "" : "<desc>Map data: " + escaped(attribution) + "</desc>").append("</metadata>\n");
        int number = 0;
        for (ScoutQuestion question : result.plan().questions()) {
            number++;
            for (UnknownPiece piece : question.pieces()) {
                gpx.point(number, question, piece);
            }
        }
        return gpx.out.append("</gpx>\n").toString();
    }

    private void point(int number, ScoutQuestion question, UnknownPiece piece) {
        if (piece.place() == null) {
            return;
        }
        out.append(String.format(Locale.ROOT, "  <wpt lat=\"%.6f\" lon=\"%.6f\">\n", piece.place().latitude(), piece.place().longitude()));
        out.append(String.format(Locale.ROOT, "    <name>Look %d, km %.2f to %.2f</name>\n", number, piece.from() / 1000, piece.to() / 1000));
        String way = piece.way().isEmpty() ? "" : piece.way() + ": ";
        out.append("    <desc>").append(escaped(way + "look for " + ScoutReport.lookFor(question))).append("</desc>\n  </wpt>\n");
    }

    private static String escaped(String text) {
        return TextSanitiser.line(text).replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}
