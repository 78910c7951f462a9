package courseworthy.report.json;

import courseworthy.decision.Decision;
import courseworthy.report.WorthReport;
import courseworthy.task.Brief;
import courseworthy.worth.Alternative;
import courseworthy.worth.BreakEven;
import courseworthy.worth.Extensions;
import courseworthy.worth.Worth;
import java.io.IOException;

/** Writes as JSON what a decision is worth: times in s, masses in kg, drag and rolling as shares of what they were. */
final class JsonWorth {

    private final Json json;

    JsonWorth(Json json) {
        this.json = json;
    }

    /** The leading figure alone, where there is one. */
    void terse(Brief brief, Decision decision) throws IOException {
        String text = WorthReport.terse(decision.topic(), brief);
        if (!text.isEmpty()) {
            json.object("worth");
            json.string("text", text);
            json.close();
        }
    }

    /** All of it, where there is any. */
    void full(Brief brief, Decision decision) throws IOException {
        Worth worth = WorthReport.worth(brief, decision.topic());
        if (worth == null) {
            return;
        }
        json.object("worth");
        json.string("text", WorthReport.terse(decision.topic(), brief));
        json.yesNo("front_and_rear", worth.both());
        json.objects("alternatives", worth.alternatives(), this::alternative);
        if (worth.extensions() != null) {
            extensions(worth.extensions());
        }
        if (worth.gears() != null) {
            json.object("gears");
            new JsonGears(json).choice(worth.gears());
            json.close();
        }
        json.strings("notes", worth.notes());
        json.close();
    }

    private void alternative(Alternative alternative) throws IOException {
        json.string("value", alternative.value());
        json.range("saved_s", alternative.saved(), 1);
        json.range("mass_kg", alternative.effect().mass(), 3);
        json.range("drag_share", alternative.effect().drag(), 4);
        json.range("rolling_share", alternative.effect().rolling(), 4);
        breakEvens(alternative.breakEvens());
    }

    void breakEvens(Iterable<BreakEven> breakEvens) throws IOException {
        json.objects("break_even", breakEvens, even -> {
            json.string("faster", even.faster());
            json.string("safer", even.safer());
            json.range("returns_s", even.returns(), 1);
            json.string("stop", even.stop());
            json.range("stop_cost_s", even.cost(), 0);
            json.object("rides_for_one_stop");
            json.decimal("value", even.rides().mid(), 2);
            json.decimal("low", even.rides().low(), 2);
            if (Double.isInfinite(even.rides().high())) {
                json.string("high", null);
            } else {
                json.decimal("high", even.rides().high(), 2);
            }
            json.close();
            if (even.season() != null) {
                json.decimal("races_a_year", even.races(), 0);
                json.range("season_returns_s", even.season(), 0);
            }
        });
    }

    private void extensions(Extensions extensions) throws IOException {
        json.object("extensions");
        json.range("share_of_course", extensions.share(), 4);
        json.range("drag_against_usual", extensions.drag(), 4);
        json.range("mass_kg", extensions.mass(), 3);
        json.range("saved_s", extensions.saved(), 1);
        json.close();
    }
}
