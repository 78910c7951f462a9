package courseworthy.report.json;

import courseworthy.wear.Purchase;
import courseworthy.wear.PartHours;
import courseworthy.wear.ServiceWork;
import courseworthy.wear.UpkeepPlan;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;

/** Writes service by week, purchases and the hours on parts as JSON: times in s, prices as written. */
final class JsonUpkeep {

    private JsonUpkeep() {
    }

    static void write(UpkeepPlan plan, Json json) throws IOException {
        json.objects("service_weeks", List.copyOf(plan.weeks().entrySet()), week -> week(json, week));
        json.objects("purchases", plan.purchases(), each -> purchase(json, each));
        json.objects("part_hours", plan.hours(), each -> hours(json, each));
        json.strings("service_notes", plan.notes());
    }

    private static void week(Json json, Map.Entry<?, List<ServiceWork>> week) throws IOException {
        json.string("week", week.getKey().toString());
        json.number("work_s", BigDecimal.valueOf(ServiceWork.total(week.getValue()) * 60L));
        json.objects("work", week.getValue(), each -> {
            json.string("evening", each.evening().found() ? each.evening().date().toString() : null);
            json.yesNo("late", each.evening().late());
            json.string("due", each.due().toString());
            json.string("overdue_from", each.latest() == null ? null : each.latest().toString());
            json.string("workshop", each.workshop());
            json.string("bike", each.bike());
            json.string("part", each.part());
            json.string("job", each.job());
            json.number("work_s", BigDecimal.valueOf(each.minutes() * 60L));
            json.yesNo("safety", each.safety());
            json.string("because", each.why());
        });
    }

    private static void purchase(Json json, Purchase purchase) throws IOException {
        json.string("by", purchase.by().toString());
        json.string("workshop", purchase.workshop());
        json.string("item", purchase.item());
        json.string("quantity", purchase.quantity());
        json.number("price", purchase.price() == null ? null : BigDecimal.valueOf(purchase.price()).stripTrailingZeros());
        json.string("because", purchase.why());
    }

    private static void hours(Json json, PartHours part) throws IOException {
        json.string("part", part.part());
        json.string("bike", part.bike());
        json.number("ridden_s", BigDecimal.valueOf(Math.round(part.hours())));
        json.yesNo("complete", part.complete());
        json.number("since_service_s", part.service() == null ? null : BigDecimal.valueOf(Math.round(part.service())));
        json.string("serviced", part.serviced() == null ? null : part.serviced().toString());
    }
}
