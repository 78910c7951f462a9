package courseworthy.report;

import courseworthy.build.Build;
import courseworthy.build.Build.Fitted;
import courseworthy.report.Page.Weight;
import java.util.ArrayList;
import java.util.List;

/** Writes the build for the terminal. */
final class BuildText {

    private static final int NAME = 24;

    private BuildText() {
    }

    static void add(Page page, Build build) {
        if (build == null) {
            return;
        }
        page.heading("THE BUILD");
        page.text(2, 2, BuildWords.title(build), build.bike() == null ? Weight.ALERT : Weight.BOLD);
        for (Fitted each : build.parts()) {
            page.row(each.place().words(), NAME, BuildWords.part(build, each), Weight.PLAIN, "", 0, Weight.PLAIN);
        }
        list(page, "In the way, as the bikes stand:", words(build.inTheWay()));
        list(page, "Pressures for these tyres:", build.pressures());
        List<String> swaps = new ArrayList<>();
        build.swaps().forEach(swap -> swaps.add(BuildWords.swap(swap)));
        if (!swaps.isEmpty()) {
            swaps.add(BuildWords.total(build));
        }
        list(page, "To change, in this order:", swaps);
        list(page, build.position() == null ? "" : "Position, as on " + build.position().from().bike() + ":", PositionReport.inBrief(build.position()));
        list(page, WorthwhileWords.CHANGES + ":", WorthwhileWords.changes(build));
        list(page, WorthwhileWords.LEAVE_ALONE + ":", WorthwhileWords.leaveAlone(build));
        list(page, BuildWords.lacking(build) + ":", build.lacking());
        list(page, "Back to how it stands now, after the race:", BuildWords.back(build));
        list(page, "Worn:", build.wear());
        List<String> notMet = new ArrayList<>();
        build.notMet().forEach(each -> notMet.add(BuildWords.notMet(each)));
        list(page, "What the workshop cannot meet, or not without a limit:", notMet);
        list(page, "To mind, and not known:", words(build.toMind()));
    }

    static List<String> words(List<courseworthy.fit.FitFindings.Finding> findings) {
        List<String> out = new ArrayList<>();
        findings.forEach(each -> out.add(BuildWords.finding(each)));
        return out;
    }

    private static void list(Page page, String title, List<String> lines) {
        if (!lines.isEmpty()) {
            page.gap();
            page.text(0, 2, title, Weight.FAINT);
            page.texts("  - ", lines);
        }
    }
}
