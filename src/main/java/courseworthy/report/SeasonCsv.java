package courseworthy.report;

import courseworthy.build.Build;
import courseworthy.build.SeasonPlan;
import courseworthy.build.SeasonPlan.PartClash;
import courseworthy.build.SeasonPlan.PlannedRide;
import courseworthy.build.SeasonPlan.Wish;
import courseworthy.ride.Range;
import courseworthy.wear.Purchase;
import courseworthy.wear.ServiceWork;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/**
 * Writes a season as comma-separated values: one row for each ride, each conflict, each wish, each job of service and each purchase, and one that names
 * who made the map, each kind named in the first column.
 */
public final class SeasonCsv {

    private static final List<String> HEAD = List.of("row", "date", "rider", "event", "course", "role", "workshop", "bike", "mass_kg", "swaps",
            "work_min", "what", "choices", "price", "returns_s_low", "returns_s", "returns_s_high", "returns_s_for_one_unit_of_money",
            "break_even_events_low", "break_even_events_high");

    private final CsvWriter out = new CsvWriter(HEAD);

    private SeasonCsv() {
    }

    public static String of(SeasonPlan season) {
        SeasonCsv csv = new SeasonCsv();
        season.rides().forEach(csv::ride);
        season.clashes().forEach(csv::clash);
        season.wishes().forEach(csv::wish);
        season.upkeep().work().forEach(csv::service);
        season.upkeep().purchases().forEach(csv::purchase);
        if (!season.attribution().isEmpty()) {
            csv.out.row(List.of("map data", "", "", "", "", "", "", "", "", "", "", season.attribution()));
        }
        return csv.out.text();
    }

    private void ride(PlannedRide ride) {
        Build build = ride.build();
        boolean none = build.bike() == null;
        List<String> notMet = SeasonReport.notMet(ride);
        out.row(List.of("ride", ride.date().toString(), ride.rider(), ride.event(), ride.course(), ride.role(), ride.workshop(),
                none ? "" : build.bike().name(), none ? "" : number(build.mass(), 2), Integer.toString(build.swaps().size()),
                number(build.minutes(), 0), String.join("; ", notMet)));
    }

    private void clash(PartClash clash) {
        out.row(List.of("conflict", clash.date().toString(), String.join("; ", clash.wanting()), "", "", "", "", "", "", "", "",
                String.join("; ", clash.what()), String.join(" ", SeasonReport.choices(clash))));
    }

    private void wish(Wish wish) {
        List<String> cells = new ArrayList<>(List.of("wish", "", "", String.join("; ", wish.rides()), "", "", wish.workshop(), "", "", "", "",
                wish.name(), met(wish), wish.price() == null ? "" : number(wish.price(), 2)));
        Range returned = wish.returned();
        cells.addAll(returned == null ? List.of("", "", "")
                : List.of(number(returned.low(), 0), number(returned.mid(), 0), number(returned.high(), 0)));
        cells.add(wish.perMoney() == null ? "" : number(wish.perMoney().mid(), 4));
        cells.addAll(wish.repaid() == null ? List.of("", "") : List.of(number(wish.repaid().low(), 1), number(wish.repaid().high(), 1)));
        out.row(cells);
    }

    private static String met(Wish wish) {
        List<String> out = new ArrayList<>(wish.required());
        out.addAll(wish.serves());
        return String.join("; ", out);
    }

    private void service(ServiceWork work) {
        out.row(List.of("service", work.due().toString(), "", "", "", "", work.workshop(), work.bike(), "", "", Integer.toString(work.minutes()), work.what(),
                UpkeepReport.detail(work)));
    }

    private void purchase(Purchase purchase) {
        out.row(List.of("purchase", purchase.by().toString(), "", "", "", "", purchase.workshop(), "", "", "", "", purchase.quantity() + " " + purchase.item(),
                purchase.why(), purchase.price() == null ? "" : number(purchase.price(), 2)));
    }

    private static String number(double value, int decimals) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
        return (rounded.signum() == 0 ? BigDecimal.ZERO : rounded).toPlainString();
    }
}
