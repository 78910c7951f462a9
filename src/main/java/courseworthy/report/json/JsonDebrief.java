package courseworthy.report.json;

import courseworthy.debrief.AdviceOutcome;
import courseworthy.debrief.Debrief;
import courseworthy.debrief.DebriefResult;
import courseworthy.debrief.Proportion;
import courseworthy.debrief.RuleRecord;
import courseworthy.debrief.RuleRecord.RuleTally;
import courseworthy.debrief.SavedBrief;
import courseworthy.debrief.SavedBrief.SavedClaim;
import courseworthy.debrief.Verdict;
import courseworthy.report.DebriefReport;
import courseworthy.task.DebriefReading;
import courseworthy.topic.Topic;
import java.io.IOException;
import java.util.Map;

/** Writes debriefs as JSON: times in s, temperatures in C, shares as fractions of one, topics' values as in a brief. */
public final class JsonDebrief {

    private final Json json;

    private JsonDebrief(Json json) {
        this.json = json;
    }

    public static String of(DebriefReading reading) {
        return reading.result() == null ? record(reading.folder(), reading.record()) : debrief(reading.result());
    }

    /** One debrief. */
    private static String debrief(DebriefResult held) {
        return Json.written(json -> new JsonDebrief(json).held(held));
    }

    /** The record over many. */
    private static String record(String folder, RuleRecord keeping) {
        return Json.written(json -> new JsonDebrief(json).keeping(folder, keeping));
    }

    private void held(DebriefResult held) throws IOException {
        json.string("debrief", held.debrief().name());
        json.string("brief", held.given().file());
        json.string("event", held.given().event());
        json.string("rider", held.given().rider());
        json.string("date", held.given().date());
        JsonSheets.write(held.given().sheets(), json);
        JsonGround.attribution(held.given().attribution(), json);
        json.object("hours");
        json.decimal("was_s", held.debrief().hours(), 0);
        SavedBrief.Time predicted = held.given().time();
        json.decimal("told_s", predicted == null ? null : Double.valueOf(predicted.likely()), 0);
        json.decimal("told_low_s", predicted == null ? null : Double.valueOf(predicted.fast()), 0);
        json.decimal("told_high_s", predicted == null ? null : Double.valueOf(predicted.slow()), 0);
        json.yesNo("within", held.inTime());
        json.close();
        weather("weather", held.debrief().weather().going(), held.debrief().weather().low(), held.debrief().weather().high());
        weather("weather_told", held.given().going(), held.given().coldest(), held.given().hottest());
        json.objects("day", held.debrief().day(), line -> {
            json.string("what", line.what());
            json.string("words", line.words());
        });
        json.string("notes", held.debrief().notes());
        json.objects("verdicts", held.verdicts(), verdict -> verdict(held.debrief(), verdict));
        json.object("rules");
        for (Map.Entry<String, AdviceOutcome> each : held.rules().entrySet()) {
            json.string(each.getKey(), each.getValue().words());
        }
        json.close();
        json.strings("cautions", DebriefReport.CAUTIONS);
    }

    private void verdict(Debrief debrief, Verdict verdict) throws IOException {
        Topic topic = verdict.advice().topic();
        json.string("topic", topic.name());
        json.value("advised", topic, verdict.advice().value());
        json.value("ridden", topic, debrief.changed().getOrDefault(topic, verdict.advice().built()));
        json.value("would_take", topic, debrief.would().get(topic));
        json.string("unit", topic.kind() == Topic.Kind.QUANTITY ? topic.resolution().jsonUnit().symbol() : "");
        json.string("answer", verdict.answer().words());
        json.strings("reasons", verdict.reasons());
        json.objects("rules", verdict.rules(), rule -> rule(topic, rule));
    }

    private void rule(Topic topic, Verdict.RuleVerdict rule) throws IOException {
        SavedClaim said = rule.said();
        json.string("rule", said.rule());
        json.yesNo("limit", said.limit());
        json.string("verb", said.verb().word());
        json.value("value", topic, said.value());
        json.string("written", said.written());
        json.string("where", said.where());
        json.string("answer", rule.answer().words());
        json.string("reason", rule.reason());
    }

    private void weather(String field, String ground, Double low, Double high) throws IOException {
        json.object(field);
        json.string("ground", ground);
        json.decimal("low_c", low, 1);
        json.decimal("high_c", high, 1);
        json.close();
    }

    private void keeping(String folder, RuleRecord keeping) throws IOException {
        json.string("folder", folder);
        json.number("debriefs", keeping.debriefs());
        JsonSheets.write(keeping.sheets(), json);
        share("within_time", keeping.inTime());
        json.number("rules_tested", keeping.tested().size());
        json.number("rules_untested", keeping.untested());
        json.decimal("confidence", Proportion.CONFIDENCE, 2);
        json.string("shares_source", DebriefReport.SHARES_SOURCE);
        json.objects("rules", keeping.rules(), rule -> {
            json.string("rule", rule.rule());
            json.number("spoke", rule.spoke());
            json.number("borne_out", rule.borneOut());
            json.number("not_borne_out", rule.not());
            json.number("inconclusive", rule.unknown());
            share("share", rule.share());
            json.string("words", rule.share().words());
            json.yesNo("to_look_at", rule.toLookAt());
            json.strings("not_borne_out_in", rule.where());
        });
        json.strings("cautions", DebriefReport.CAUTIONS);
    }

    private void share(String field, Proportion share) throws IOException {
        json.object(field);
        json.number("held", share.held());
        json.number("of", share.of());
        json.decimal("low", share.low(), 3);
        json.decimal("high", share.high(), 3);
        json.close();
    }
}
