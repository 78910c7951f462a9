package courseworthy.report;

import courseworthy.task.StagesResult;
import java.util.List;

/** A race over several days on paper: the set-up and the builds, then days, evenings and the bag, then the checklist. */
public final class PrintedStages {

    private PrintedStages() {
    }

    public static PrintedReport of(StagesResult result) {
        Report report = StagesReport.of(result);
        RichText foot = RichText.join(", ", List.of(RichText.ofQuoted(result.rider()), report.title(), RichText.of(result.event().date() == null ? "" : Phrases.date(result.event().date()))));
        return new PrintedReport(report.title(), report.subtitle(), StagesReport.printed(result), foot, null);
    }
}
