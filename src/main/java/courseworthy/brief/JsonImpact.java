package courseworthy.brief;

import courseworthy.call.Impact;
import courseworthy.claim.Claim;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.List;

/** Writes what another sheet changes, as JSON, format 1. Where nothing changes its lists are empty. */
public final class JsonImpact {

    private JsonImpact() {
    }

    public static String of(String before, String after, Impact impact) {
        return Json.written(json -> {
            json.string("before", before);
            json.string("after", after);
            json.number("rides", BigDecimal.valueOf(impact.rides()));
            json.number("riders", BigDecimal.valueOf(impact.riders()));
            json.number("changed", BigDecimal.valueOf(impact.changed()));
            turned(json, "decisions", impact.decisions());
            turned(json, "how_sure", impact.sureness());
            json.list("checklist");
            for (Impact.Item item : impact.items()) {
                json.open();
                json.yesNo("added", item.added());
                json.string("rule", item.task().author().rule());
                json.string("by", item.task().due().words());
                json.string("what", item.task().what());
                json.string("find", item.task().find());
                rides(json, item.rides());
                json.close();
            }
            json.endList();
        });
    }

    private static void turned(Json json, String field, List<Impact.Turned> all) throws IOException {
        json.list(field);
        for (Impact.Turned turned : all) {
            json.open();
            json.string("topic", turned.topic().name());
            json.string("from", turned.from());
            json.string("to", turned.to());
            rides(json, turned.rides());
            claim(json, "now_said", turned.now());
            claim(json, "no_longer_said", turned.gone());
            json.close();
        }
        json.endList();
    }

    private static void rides(Json json, List<Impact.Ride> rides) throws IOException {
        json.list("rides");
        for (Impact.Ride ride : rides) {
            json.open();
            json.string("course", ride.course());
            json.string("rider", ride.rider());
            json.close();
        }
        json.endList();
    }

    private static void claim(Json json, String field, Claim claim) throws IOException {
        if (claim != null) {
            json.object(field);
            json.string("rule", claim.author().rule());
            json.string("says", claim.verb().word() + " " + claim.written());
            json.string("because", claim.author().because());
            json.close();
        }
    }
}
