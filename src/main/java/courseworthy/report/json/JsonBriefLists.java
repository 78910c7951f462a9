package courseworthy.report.json;

import courseworthy.call.Flip;
import courseworthy.decision.Decision;
import courseworthy.demand.InputKeys;
import courseworthy.task.Brief;
import courseworthy.task.LeastFirm;
import courseworthy.task.Preparation;
import courseworthy.worth.Alternative;
import courseworthy.worth.DecisionWorth;
import java.io.IOException;
import java.util.List;
import java.util.Locale;

/** Writes what every decision is worth, what differs from the usual, what is least firm, what would change each decision, and the days before the start. */
final class JsonBriefLists {

    private final Json json;

    JsonBriefLists(Json json) {
        this.json = json;
    }

    void of(Brief brief) throws IOException {
        json.objects("worth", brief.worthOfDecisions(), this::worth);
        json.objects("differences", brief.differences(), each -> {
            json.string("topic", each.decision().topic().name());
            json.string("recommended", each.decision().phrase());
            json.string("usual", each.usual());
        });
        json.objects("least_firm", brief.leastFirm(), this::leastFirm);
        json.list("would_change");
        for (Decision decision : brief.decisions()) {
            List<Flip> changes = brief.changes(decision);
            if (changes != null) {
                json.open();
                json.string("topic", decision.topic().name());
                JsonFlips.add("changes", json, changes);
                json.close();
            }
        }
        json.endList();
        json.object("preparation", brief.preparation(), this::preparation);
    }

    private void worth(DecisionWorth worth) throws IOException {
        json.string("topic", worth.decision().topic().name());
        json.yesNo("front_and_rear", worth.both());
        json.string("recommended", worth.decision().phrase());
        json.string("unknown_because", worth.unknownReason() == null ? null : worth.unknownReason().words());
        if (worth.best() == null) {
            return;
        }
        json.string("alternative", worth.best().value());
        json.range("saved_s", worth.saved(), 1);
        json.yesNo("too_close_to_call", worth.tooClose());
        new JsonWorth(json).breakEvens(worth.best().leading() == null ? List.of() : List.of(worth.best().leading()));
        json.objects("others", worth.others(), this::other);
    }

    private void other(Alternative alternative) throws IOException {
        json.string("alternative", alternative.value());
        json.range("saved_s", alternative.saved(), 1);
    }

    private void preparation(Preparation preparation) throws IOException {
        json.string("start", preparation.start().toString());
        json.objects("sittings", preparation.sittings(), each -> {
            json.string("when", each.when());
            json.decimal("from_s", each.from(), 0);
            json.decimal("to_s", each.to(), 0);
            json.number("items", each.items());
            json.number("critical", each.critical());
        });
        json.objects("waits", preparation.waits(), each -> {
            json.string("part", each.part());
            json.string("what", each.what());
            json.decimal("from_s", each.from(), 0);
            json.decimal("to_s", each.to(), 0);
        });
        json.objects("last_moments", preparation.lastMoments(), each -> {
            json.string("turns", each.turns());
            json.number("changes", each.changes());
            json.decimal("at_s", each.at(), 0);
        });
    }

    private void leastFirm(LeastFirm each) throws IOException {
        json.string("topic", each.decision().topic().name());
        json.string("value", each.decision().phrase());
        json.string("firmness", each.firmness().word());
        JsonBrief.close(json, each.close());
        json.list("settled_by");
        if (each.close() != null) {
            InputKeys input = each.close().measure().input();
            keys(each.close().measure().written(), input.place(), input.keys());
        }
        for (var wanted : each.wanted()) {
            keys(null, wanted.place(), wanted.keys());
        }
        json.endList();
        json.string("settled_with", each.means().words());
    }

    private void keys(String measure, InputKeys.InputPlace place, List<String> keys) throws IOException {
        json.open();
        json.string("measure", measure);
        json.string("place", place == null ? null : place.name().toLowerCase(Locale.ROOT));
        json.strings("keys", keys);
        json.close();
    }
}
