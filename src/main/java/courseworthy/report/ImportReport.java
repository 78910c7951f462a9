package courseworthy.report;

import courseworthy.course.ground.ProfileChange;
import courseworthy.task.ImportResult;
import java.util.ArrayList;
import java.util.List;

/** A profile that was taken from a map: what it holds, what was kept of an older one, and what to do with it. */
public final class ImportReport {

    /** So many changes are shown; more are counted. */
    private static final int MOST = 40;

    private ImportReport() {
    }

    public static Report of(ImportResult result) {
        String track = result.copied() ? "The track was copied beside it, " : "Its track is ";
        Report.Builder out = Report.builder(RichText.ofQuoted(result.file())).subtitle("a profile from the map")
                .paragraph(RichText.of(result.stretches() + (result.stretches() == 1 ? " stretch" : " stretches") + " over " + GroundPhrases.length(result.course().distance()) + ". ")
                        .text(track).quoted(result.track()).text("."))
                .paragraphs(GroundPhrases.paragraphs(result.course()))
                .section(changes("kept", "Your edits, kept from ", result, true))
                .section(changes("map", "What the map says otherwise than ", result, false))
                .section(Section.builder("notes", "Notes").bullets(result.course().notes().stream().map(RichText::ofQuoted).toList()));
        return out.section(Section.builder("next", "Next").paragraph("Correct in it what you know better, then run:")
                .listing("sh", List.of("courseworthy brief " + result.file()))).build();
    }

    private static Section.Builder changes(String id, String heading, ImportResult result, boolean kept) {
        List<RichText> lines = new ArrayList<>();
        for (ProfileChange each : result.changes()) {
            if (each.kept() == kept) {
                lines.add(RichText.ofQuoted("km " + Phrases.number(each.from() / 1000, 2) + " to " + Phrases.number(each.to() / 1000, 2) + ": "
                        + each.key() + " " + (kept ? word(each, each.old()) + " (map: " + word(each, each.map()) + ")" : word(each, each.old()) + " is now " + word(each, each.map()))));
            }
        }
        int more = lines.size() - MOST;
        return Section.builder(id, RichText.of(heading).quoted(result.from() == null ? "" : result.from())).bullets(more > 0 ? lines.subList(0, MOST) : lines)
                .paragraph(more > 0 ? "And " + more + " more." : "");
    }

    private static String word(ProfileChange change, String value) {
        return value != null ? value : change.key().equals("may be") ? "nothing else" : "unknown";
    }
}
