package courseworthy.report;

import courseworthy.build.SeasonPlan;
import courseworthy.build.SeasonPlan.Clash;
import courseworthy.build.SeasonPlan.Ride;
import courseworthy.build.SeasonPlan.Wish;
import java.util.List;

/** Writes a season as Markdown. */
public final class SeasonMarkdown {

    private SeasonMarkdown() {
    }

    public static String of(SeasonPlan season) {
        Marked page = new Marked();
        page.heading(1, SeasonWords.title(season));
        page.paragraph(SeasonWords.counts(season));
        SheetNames.add(page, SeasonWords.sheets(season));
        if (!season.clashes().isEmpty()) {
            page.heading(2, SeasonWords.CLASHES);
            for (Clash clash : season.clashes()) {
                page.bullet(SeasonWords.clash(clash), SeasonWords.choices(clash));
            }
        }
        for (Ride ride : season.rides()) {
            page.heading(2, SeasonWords.ride(ride));
            SheetNames.add(page, SeasonWords.sheets(season, ride));
            page.paragraph("Call: " + SeasonWords.call(ride));
            page.paragraph("Build: " + SeasonWords.build(ride));
            list(page, SeasonWords.toChange(season), SeasonWords.swaps(ride));
            list(page, BuildWords.lacking(ride.build()), ride.build().lacking());
            list(page, "Not met", SeasonWords.notMet(ride));
            list(page, "Worn", ride.build().wear());
        }
        if (!season.wishes().isEmpty()) {
            page.heading(2, SeasonWords.WISHES);
            for (Wish wish : season.wishes()) {
                page.bullet(SeasonWords.wish(season, wish));
            }
        }
        for (String line : SeasonWords.RESTS_ON) {
            page.paragraph(line);
        }
        return page.toString();
    }

    private static void list(Marked page, String title, List<String> lines) {
        if (!lines.isEmpty()) {
            page.heading(3, title);
            lines.forEach(page::bullet);
        }
    }
}
