package courseworthy.report.json;

import courseworthy.call.Flip;
import courseworthy.report.FlipReport;
import courseworthy.report.Phrases;
import java.io.IOException;
import java.util.List;

/** Writes as JSON what would change a decision. */
final class JsonFlips {

    private JsonFlips() {
    }

    static void add(String field, Json json, List<Flip> flips) throws IOException {
        json.objects(field, flips, flip -> {
            fields(json, flip);
        });
    }

    private static void fields(Json json, Flip flip) throws IOException {
        json.string("measure", flip.measure().written());
        json.scaled("from", flip.measure().scale(), flip.from());
        json.scaled("to", flip.measure().scale(), flip.to());
        json.string("unit", Json.unit(flip.measure().scale()));
        json.string("way", flip.way().word());
        json.string("text", FlipReport.change(flip));
        json.yesNo("in_range", flip.inRange());
        json.object("decision");
        json.string("status", flip.decision().status().words());
        json.value("value", flip.decision().topic(), flip.decision().value());
        json.string("unit", Json.unit(flip.decision().topic()));
        json.string("text", flip.decision().text());
        json.close();
        if (!flip.tyre().isEmpty()) {
            json.string("tyre", Phrases.values(flip.tyre()));
        }
    }
}
