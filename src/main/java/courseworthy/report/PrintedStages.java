package courseworthy.report;

import courseworthy.task.StagesResult;
import java.util.List;

/** A race over several days on two sides of paper: what is the same every day, then days, evenings and the bag. */
public final class PrintedStages {

    private PrintedStages() {
    }

    public static PrintedReport of(StagesResult result) {
        Report report = StagesReport.of(result);
        List<Section> first = report.sections().stream().filter(each -> each.id().equals("set-up")).toList();
        List<Section> second = report.sections().stream().filter(each -> !each.id().equals("set-up")).toList();
        RichText foot = RichText.join(", ", List.of(RichText.ofQuoted(result.rider()), report.title(), RichText.of(result.event().date() == null ? "" : Phrases.date(result.event().date()))));
        return new PrintedReport(report.title(), report.subtitle(), List.of(first, second), foot, null);
    }
}
