package courseworthy.report.json;

import courseworthy.decision.Decision;
import courseworthy.demand.MeasureScale;
import courseworthy.report.BikeAtHandReport;
import courseworthy.worth.BikeAtHand;
import java.io.IOException;
import java.util.List;

/** Writes the bike at hand as JSON, beside the one that is recommended. */
final class JsonBikeAtHand {

    private JsonBikeAtHand() {
    }

    static void add(Json json, BikeAtHand bike) throws IOException {
        if (bike == null) {
            return;
        }
        json.object("bike_at_hand");
        json.string("kind", bike.kind());
        json.yesNo("possible", bike.possible());
        json.strings("text", BikeAtHandReport.lines(bike));
        json.strings("against", BikeAtHandReport.against(bike));
        if (bike.possible()) {
            json.range("time_s", bike.time(), 0);
            json.range("costs_s", bike.costs(), 0);
        }
        json.objects("given", BikeAtHandReport.given(bike).entrySet(), each -> {
            MeasureScale scale = each.getKey().scale();
            json.string("name", each.getKey().written());
            json.scaled("value", scale, each.getValue().mid());
            json.string("unit", Json.unit(scale));
            json.string("text", scale.text(each.getValue().mid()));
        });
        json.objects("decisions", bike.possible() ? bike.call().decisions() : List.<Decision>of(), decision -> {
            json.string("topic", decision.topic().name());
            json.string("status", decision.status().words());
            json.value("value", decision.topic(), decision.value());
            json.string("unit", Json.unit(decision.topic()));
            json.string("text", decision.text());
            json.string("firmness", decision.value() == null ? null : bike.call().firmness(decision.topic()).word());
        });
        json.close();
    }
}
