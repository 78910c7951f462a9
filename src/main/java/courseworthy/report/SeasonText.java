package courseworthy.report;

import courseworthy.build.SeasonPlan;
import courseworthy.build.SeasonPlan.Clash;
import courseworthy.build.SeasonPlan.Ride;
import courseworthy.build.SeasonPlan.Wish;
import courseworthy.report.Page.Weight;
import java.util.List;
import java.util.Locale;

/** Writes a season for the terminal. */
public final class SeasonText {

    private SeasonText() {
    }

    public static String of(SeasonPlan season, boolean colours) {
        Page page = new Page(colours);
        page.text(0, 0, SeasonWords.title(season), Weight.BOLD);
        page.text(0, 0, SeasonWords.counts(season), Weight.PLAIN);
        SheetNames.add(page, SeasonWords.sheets(season));
        if (!season.clashes().isEmpty()) {
            page.heading(SeasonWords.CLASHES.toUpperCase(Locale.ROOT));
            for (Clash clash : season.clashes()) {
                page.text(2, 4, SeasonWords.clash(clash), Weight.ALERT);
                page.texts("    - ", SeasonWords.choices(clash));
            }
        }
        for (Ride ride : season.rides()) {
            page.heading(SeasonWords.ride(ride));
            SheetNames.add(page, SeasonWords.sheets(season, ride));
            page.text(2, 4, "Call: " + SeasonWords.call(ride), Weight.PLAIN);
            page.text(2, 4, "Build: " + SeasonWords.build(ride), ride.build().bike() == null ? Weight.ALERT : Weight.PLAIN);
            list(page, SeasonWords.toChange(season) + ":", SeasonWords.swaps(ride));
            list(page, BuildWords.lacking(ride.build()) + ":", ride.build().lacking());
            list(page, "Not met:", SeasonWords.notMet(ride));
            list(page, "Worn:", ride.build().wear());
        }
        if (!season.wishes().isEmpty()) {
            page.heading(SeasonWords.WISHES.toUpperCase(Locale.ROOT));
            int number = 1;
            for (Wish wish : season.wishes()) {
                page.text(2, 5, number++ + ". " + SeasonWords.wish(season, wish), Weight.PLAIN);
            }
        }
        page.gap();
        for (String line : SeasonWords.RESTS_ON) {
            page.text(0, 2, line, Weight.FAINT);
        }
        return page.toString();
    }

    private static void list(Page page, String title, List<String> lines) {
        if (!lines.isEmpty()) {
            page.text(2, 4, title, Weight.FAINT);
            page.texts("    - ", lines);
        }
    }
}
