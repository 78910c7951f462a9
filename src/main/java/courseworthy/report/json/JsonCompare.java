package courseworthy.report.json;

import courseworthy.call.Firmness;
import courseworthy.report.CompareReport;
import courseworthy.task.Brief;
import courseworthy.worth.BreakEven;
import courseworthy.worth.SetUp;
import java.io.IOException;
import java.util.List;

/** Writes set-ups side by side as JSON, the recommended first: times in s, masses in kg, work in J, speeds in m/s. */
public final class JsonCompare {

    private final Json json;

    private JsonCompare(Json json) {
        this.json = json;
    }

    /** @param setUps the recommended first */
    public static String of(Brief brief, List<SetUp> setUps) {
        return Json.written(json -> {
            JsonBrief.head(json, brief);
            json.string("course", brief.course().name());
            json.list("set_ups");
            for (int i = 0; i < setUps.size(); i++) {
                new JsonCompare(json).setUp(brief, setUps.get(i), CompareReport.heading(setUps, i));
            }
            json.endList();
        });
    }

    private void setUp(Brief brief, SetUp setUp, String heading) throws IOException {
        json.open();
        json.string("heading", heading);
        json.string("written", setUp.written());
        json.yesNo("as_asked", setUp.asAsked());
        json.decimal("riding_s", setUp.riding(), 0);
        json.range("returns_s", setUp.returned(), 1);
        json.decimal("work_j", setUp.work(), 0);
        json.range("mass_kg", setUp.effect().mass(), 3);
        json.range("drag_share", setUp.effect().drag(), 4);
        json.range("rolling_share", setUp.effect().rolling(), 4);
        json.range("cadence_on_the_last_climb_per_min", setUp.gears().climbed() == null ? null : setUp.gears().climbed().cadence(), 1);
        json.range("cadence_on_the_steepest_100_m_per_min", setUp.gears().steepest() == null ? null : setUp.gears().steepest().cadence(), 1);
        json.range("spun_out_from_m_s", setUp.gears().topSpeed(), 2);
        new JsonWorth(json).breakEvens(setUp.breakEven() == null ? List.<BreakEven>of() : List.of(setUp.breakEven()));
        json.objects("differences", setUp.changes(), each -> {
            json.string("topic", each.topic().name());
            json.string("here", each.here());
            json.string("recommended", each.recommended());
            Firmness firmness = brief.firmness(brief.on(each.topic()));
            json.string("firmness", firmness == null ? null : firmness.word());
            json.yesNo("asked", each.asked());
        });
        json.objects("refused", setUp.refused(), each -> {
            json.string("topic", each.topic().name());
            json.string("asked", each.asked());
            json.string("here", each.here());
            json.strings("by", each.by());
        });
        json.strings("not_in_these_figures", setUp.uncounted());
        json.close();
    }
}
