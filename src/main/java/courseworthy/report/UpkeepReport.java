package courseworthy.report;

import courseworthy.wear.Purchase;
import courseworthy.wear.ServiceWork;
import courseworthy.wear.UpkeepPlan;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/** Service and renewal week by week, and what to buy for them. */
final class UpkeepReport {

    private UpkeepReport() {
    }

    /** A list item for each week, with its jobs below it. */
    static Section.Builder weeks(UpkeepPlan plan) {
        List<ItemList.Item> items = new ArrayList<>();
        plan.weeks().forEach((monday, work) -> {
            RichText week = RichText.of("Week of " + monday + ", about " + ServiceWork.total(work) + " min");
            items.add(ItemList.Item.of(week, work.stream().map(each -> RichText.ofQuoted(line(each))).toList()));
        });
        return Section.builder("service", "Service week by week").items(items)
                .paragraphs(items.isEmpty() ? List.of() : plan.notes().stream().map(RichText::ofQuoted).toList());
    }

    private static String line(ServiceWork work) {
        String bike = work.bike().isEmpty() || work.bike().equals(work.part()) ? "" : " (" + work.bike() + ")";
        return work.part() + bike + ": " + work.task() + (work.safety() ? " (safety)" : "") + ", about " + work.minutes() + " min. " + Phrases.capital(detail(work)) + ".";
    }

    /** {@code planned for 2026-06-11; may be due from 2026-06-12, overdue from 2026-07-03: 64 h by then ...}. */
    static String detail(ServiceWork work) {
        String overdue = work.latest() == null || work.overdue() ? "" : ", overdue from " + work.latest();
        return (work.evening().found() ? "planned for " + work.evening().date() + "; " : "") + due(work) + overdue + ": " + work.why();
    }

    private static String due(ServiceWork work) {
        boolean already = work.evening().found() && !work.due().isAfter(work.evening().date());
        return work.overdue() ? "overdue" + (already ? "" : " from " + work.due()) : already ? "may be due already" : "may be due from " + work.due();
    }

    static Section.Builder shopping(UpkeepPlan plan, String currency) {
        List<RichText> items = new ArrayList<>();
        for (Purchase each : plan.purchases()) {
            String price = each.price() == null ? "" : ", " + money(each.price()) + (currency.isEmpty() ? "" : " " + currency);
            items.add(RichText.ofQuoted("By " + each.by() + ": " + each.quantity() + (each.quantity().contains(" ") ? " of " : " x ") + each.item() + price + why(each) + "."));
        }
        return Section.builder("shopping", "Shopping list").bullets(items);
    }

    /** What it is for, unless its name says so. */
    private static String why(Purchase purchase) {
        int part = purchase.why().indexOf(": ");
        return part > 0 && purchase.item().endsWith(" for " + purchase.why().substring(0, part)) ? "" : " (" + purchase.why() + ")";
    }

    private static String money(double price) {
        BigDecimal plain = BigDecimal.valueOf(price).setScale(2, RoundingMode.HALF_UP).stripTrailingZeros();
        return (plain.scale() < 0 ? plain.setScale(0) : plain).toPlainString();
    }
}
