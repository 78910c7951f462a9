package courseworthy.report.json;

import courseworthy.build.SeasonPlan;
import courseworthy.build.SeasonPlan.ClashChoice;
import courseworthy.build.SeasonPlan.PartClash;
import courseworthy.build.SeasonPlan.PlannedRide;
import courseworthy.build.SeasonPlan.Wish;
import courseworthy.report.SeasonReport;
import courseworthy.sheet.SheetInForce;
import courseworthy.workshop.Part;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.List;

/** Writes a season as JSON: times in s, masses in kg, prices as written. */
public final class JsonSeason {

    private JsonSeason() {
    }

    public static String of(SeasonPlan season) {
        return Json.written(json -> {
            json.string("season", season.name());
            JsonGround.attribution(season.attribution(), json);
            json.string("currency", season.currency());
            json.number("minute_worth", season.minuteWorth() == null ? null : BigDecimal.valueOf(season.minuteWorth()).stripTrailingZeros());
            json.yesNo("back_after_each_event", season.back());
            json.objects("rides", season.rides(), ride -> ride(json, season, ride));
            json.objects("conflicts", season.clashes(), clash -> clash(json, clash));
            json.objects("wishes", season.wishes(), wish -> wish(json, wish));
            JsonUpkeep.write(season.upkeep(), json);
            json.strings("rests_on", SeasonReport.METHOD);
        });
    }

    private static void ride(Json json, SeasonPlan season, PlannedRide ride) throws IOException {
        json.string("date", ride.date().toString());
        json.string("rider", ride.rider());
        json.string("event", ride.event());
        json.string("course", ride.course());
        json.string("role", ride.role());
        JsonSheets.write(SheetInForce.of(season.sheets().getOrDefault(ride.rider(), List.of())), json);
        json.objects("decisions", ride.call(), each -> {
            json.string("topic", each.topic());
            json.string("value", each.value());
        });
        new JsonBuild(json).of(ride.build());
    }

    private static void clash(Json json, PartClash clash) throws IOException {
        json.string("date", clash.date().toString());
        json.strings("what", clash.what());
        json.strings("wanting", clash.wanting());
        json.objects("choices", clash.choices(), each -> choice(json, each));
    }

    static void choice(Json json, ClashChoice each) throws IOException {
        json.string("what", each.what());
        json.strings("loses", each.loses().stream()
                .map(loss -> loss.rider() + ": " + loss.topic() + " " + loss.got() + " instead of the recommended " + loss.wanted()).toList());
        json.range("costs_s", each.costs(), 0);
    }

    private static void wish(Json json, Wish wish) throws IOException {
        json.string("part", wish.name());
        json.strings("parts", wish.parts().stream().map(Part::name).toList());
        json.string("kind", wish.parts().get(0).kind().word());
        json.string("workshop", wish.workshop());
        json.number("price", wish.price() == null ? null : BigDecimal.valueOf(wish.price()).stripTrailingZeros());
        json.strings("rides", wish.rides());
        json.range("returns_s", wish.returned(), 0);
        json.range("returns_s_for_one_unit_of_money", wish.perMoney(), 4);
        json.range("break_even_events", wish.repaid(), 1);
        json.strings("required", wish.required());
        json.strings("serves", wish.serves());
    }
}
