package courseworthy.report.json;

import courseworthy.build.SeasonPlan;
import courseworthy.build.SeasonPlan.Choice;
import courseworthy.build.SeasonPlan.Clash;
import courseworthy.build.SeasonPlan.Decided;
import courseworthy.build.SeasonPlan.Ride;
import courseworthy.build.SeasonPlan.Wish;
import courseworthy.report.SeasonReport;
import courseworthy.ride.Range;
import courseworthy.sheet.SheetInForce;
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
            json.list("rides");
            for (Ride ride : season.rides()) {
                ride(json, season, ride);
            }
            json.endList();
            json.list("conflicts");
            for (Clash clash : season.clashes()) {
                clash(json, clash);
            }
            json.endList();
            json.list("wishes");
            for (Wish wish : season.wishes()) {
                wish(json, wish);
            }
            json.endList();
            json.strings("rests_on", SeasonReport.METHOD);
        });
    }

    private static void ride(Json json, SeasonPlan season, Ride ride) throws IOException {
        json.open();
        json.string("date", ride.date().toString());
        json.string("rider", ride.rider());
        json.string("event", ride.event());
        json.string("course", ride.course());
        json.string("role", ride.role());
        JsonSheets.write(SheetInForce.of(season.sheets().getOrDefault(ride.rider(), List.of())), json);
        json.list("decisions");
        for (Decided each : ride.call()) {
            json.open();
            json.string("topic", each.topic());
            json.string("value", each.value());
            json.close();
        }
        json.endList();
        new JsonBuild(json).of(ride.build());
        json.close();
    }

    private static void clash(Json json, Clash clash) throws IOException {
        json.open();
        json.string("date", clash.date().toString());
        json.strings("what", clash.what());
        json.strings("wanting", clash.wanting());
        json.list("choices");
        for (Choice each : clash.choices()) {
            json.open();
            json.string("what", each.what());
            json.strings("loses", each.loses());
            range(json, "costs_s", each.costs(), 0);
            json.close();
        }
        json.endList();
        json.close();
    }

    private static void wish(Json json, Wish wish) throws IOException {
        json.open();
        json.string("part", wish.part().name());
        json.string("kind", wish.part().kind().word());
        json.string("workshop", wish.workshop());
        json.number("price", wish.price() == null ? null : BigDecimal.valueOf(wish.price()).stripTrailingZeros());
        json.strings("rides", wish.rides());
        range(json, "returns_s", wish.returned(), 0);
        range(json, "returns_s_for_one_unit_of_money", wish.perMoney(), 4);
        range(json, "break_even_events", wish.repaid(), 1);
        json.strings("serves", wish.serves());
        json.close();
    }

    private static void range(Json json, String field, Range range, int decimals) throws IOException {
        if (range == null) {
            json.string(field, null);
        } else {
            json.range(field, range, decimals);
        }
    }
}
