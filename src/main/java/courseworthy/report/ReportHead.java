package courseworthy.report;

import courseworthy.task.Brief;
import java.util.List;

/** The head that reports on one ride have in common: the course, the event and the rider, the sheets in force. */
final class ReportHead {

    private ReportHead() {
    }

    /** @param subtitle what the report is about */
    static Report.Builder of(Brief brief, String subtitle) {
        return Report.builder(RichText.ofQuoted(brief.course().name())).subtitle(subtitle).identity(identity(brief))
                .paragraph(RichText.ofQuoted(Phrases.whose(brief)))
                .paragraphs(SheetNames.paragraphs(brief.sheets()))
                .paragraphs(GroundPhrases.paragraphs(brief.course()));
    }

    /** What is to be kept in mind of the rider; empty where nothing is written. */
    static RichText notes(Brief brief) {
        return brief.notes().isEmpty() ? RichText.EMPTY : RichText.of("Notes on the rider: ").quoted(brief.notes());
    }

    /** What was taken from the file that riders share; empty where nothing was. */
    static RichText shared(Brief brief) {
        return brief.shared().keys().isEmpty() ? RichText.EMPTY
                : RichText.of("From ").quoted(brief.shared().file()).text(", which the riders of the folder share: " + String.join(", ", brief.shared().keys()) + ".");
    }

    /** What tells a day of one rider from others. */
    static String[] identity(Brief brief) {
        return new String[] {brief.course().name(), brief.rider(), brief.date() == null ? brief.role() : brief.date().toString()};
    }

    /** What stands at the foot of a printed side: who it is for, what and when. */
    static RichText foot(Brief brief) {
        String what = brief.event().isEmpty() ? brief.course().name() : brief.event();
        List<RichText> parts = List.of(RichText.ofQuoted(brief.rider()), RichText.ofQuoted(what), RichText.of(brief.date() == null ? "" : Phrases.date(brief.date())));
        return RichText.join(", ", parts);
    }

    /** What a brief is for: {@code set up for the race, 14 June 2025}. */
    static String purpose(Brief brief) {
        return "set up for " + (brief.role().equals("race") ? "the race" : "training") + (brief.date() == null ? "" : ", " + Phrases.date(brief.date()));
    }
}
