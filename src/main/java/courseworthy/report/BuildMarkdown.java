package courseworthy.report;

import courseworthy.build.Build;
import courseworthy.build.Build.Fitted;
import java.util.ArrayList;
import java.util.List;

/** Writes the build as Markdown. */
final class BuildMarkdown {

    private BuildMarkdown() {
    }

    static void add(Marked page, Build build) {
        if (build == null) {
            return;
        }
        page.heading(2, "The build");
        page.paragraph(BuildWords.title(build));
        if (!build.parts().isEmpty()) {
            page.tableHead("Place", "Part");
            for (Fitted each : build.parts()) {
                page.tableRow(each.place().words(), BuildWords.part(build, each));
            }
        }
        list(page, "In the way, as the bikes stand", BuildText.words(build.inTheWay()));
        list(page, "Pressures for these tyres", build.pressures());
        List<String> swaps = new ArrayList<>();
        build.swaps().forEach(swap -> swaps.add(BuildWords.swap(swap)));
        if (!swaps.isEmpty()) {
            swaps.add(BuildWords.total(build));
        }
        list(page, "To change, in this order", swaps);
        list(page, build.position() == null ? "" : "Position, as on " + build.position().from().bike(), PositionReport.inBrief(build.position()));
        list(page, WorthwhileWords.CHANGES, WorthwhileWords.changes(build));
        list(page, WorthwhileWords.LEAVE_ALONE, WorthwhileWords.leaveAlone(build));
        list(page, BuildWords.lacking(build), build.lacking());
        list(page, "Back to how it stands now, after the race", BuildWords.back(build));
        list(page, "Worn", build.wear());
        List<String> notMet = new ArrayList<>();
        build.notMet().forEach(each -> notMet.add(BuildWords.notMet(each)));
        list(page, "What the workshop cannot meet, or not without a limit", notMet);
        list(page, "To mind, and not known", BuildText.words(build.toMind()));
    }

    private static void list(Marked page, String title, List<String> lines) {
        if (!lines.isEmpty()) {
            page.heading(3, title);
            lines.forEach(page::bullet);
        }
    }
}
