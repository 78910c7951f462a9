package courseworthy.report.json;

import courseworthy.debrief.AdviceOutcome;
import courseworthy.debrief.Debrief;
import courseworthy.debrief.Debrief.Line;
import courseworthy.debrief.DebriefResult;
import courseworthy.debrief.Proportion;
import courseworthy.debrief.RuleRecord;
import courseworthy.debrief.RuleRecord.OfRule;
import courseworthy.debrief.SavedBrief;
import courseworthy.debrief.SavedBrief.Said;
import courseworthy.debrief.Verdict;
import courseworthy.report.DebriefReport;
import courseworthy.task.DebriefReading;
import courseworthy.topic.Topic;
import java.io.IOException;
import java.math.BigDecimal;
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
        json.object("hours");
        seconds("was_s", held.debrief().hours());
        SavedBrief.Time told = held.given().time();
        seconds("told_s", told == null ? null : Double.valueOf(told.likely()));
        seconds("told_low_s", told == null ? null : Double.valueOf(told.fast()));
        seconds("told_high_s", told == null ? null : Double.valueOf(told.slow()));
        truth("within", held.inTime());
        json.close();
        weather("weather", held.debrief().weather().going(), held.debrief().weather().low(), held.debrief().weather().high());
        weather("weather_told", held.given().going(), held.given().coldest(), held.given().hottest());
        json.list("day");
        for (Line line : held.debrief().day()) {
            json.open();
            json.string("what", line.what());
            json.string("words", line.words());
            json.close();
        }
        json.endList();
        json.string("notes", held.debrief().notes());
        json.list("verdicts");
        for (Verdict verdict : held.verdicts()) {
            verdict(held.debrief(), verdict);
        }
        json.endList();
        json.object("rules");
        for (Map.Entry<String, AdviceOutcome> each : held.rules().entrySet()) {
            json.string(each.getKey(), each.getValue().words());
        }
        json.close();
        json.strings("cautions", DebriefReport.CAUTIONS);
    }

    private void verdict(Debrief debrief, Verdict verdict) throws IOException {
        Topic topic = verdict.advice().topic();
        json.open();
        json.string("topic", topic.name());
        json.value("advised", topic, verdict.advice().value());
        json.value("ridden", topic, debrief.changed().getOrDefault(topic, verdict.advice().built()));
        json.value("would_take", topic, debrief.would().get(topic));
        json.string("unit", topic.kind() == Topic.Kind.QUANTITY ? topic.resolution().jsonUnit().symbol() : "");
        json.string("answer", verdict.answer().words());
        json.strings("reasons", verdict.reasons());
        json.list("rules");
        for (Verdict.OfRule rule : verdict.rules()) {
            rule(topic, rule);
        }
        json.endList();
        json.close();
    }

    private void rule(Topic topic, Verdict.OfRule rule) throws IOException {
        Said said = rule.said();
        json.open();
        json.string("rule", said.rule());
        json.yesNo("limit", said.limit());
        json.string("verb", said.verb().word());
        json.value("value", topic, said.value());
        json.string("written", said.written());
        json.string("where", said.where());
        json.string("answer", rule.answer().words());
        json.string("reason", rule.reason());
        json.close();
    }

    private void weather(String field, String ground, Double low, Double high) throws IOException {
        json.object(field);
        json.string("ground", ground);
        celsius("low_c", low);
        celsius("high_c", high);
        json.close();
    }

    private void celsius(String field, Double value) throws IOException {
        if (value == null) {
            json.string(field, null);
        } else {
            json.decimal(field, value, 1);
        }
    }

    private void seconds(String field, Double value) throws IOException {
        if (value == null) {
            json.string(field, null);
        } else {
            json.decimal(field, value, 0);
        }
    }

    private void truth(String field, Boolean value) throws IOException {
        if (value == null) {
            json.string(field, null);
        } else {
            json.yesNo(field, value);
        }
    }

    private void keeping(String folder, RuleRecord keeping) throws IOException {
        json.string("folder", folder);
        count("debriefs", keeping.debriefs());
        JsonSheets.write(keeping.sheets(), json);
        share("within_time", keeping.inTime());
        json.list("rules");
        for (OfRule rule : keeping.rules()) {
            json.open();
            json.string("rule", rule.rule());
            count("spoke", rule.spoke());
            count("borne_out", rule.borneOut());
            count("not_borne_out", rule.not());
            count("could_not_tell", rule.unknown());
            share("share", rule.share());
            json.string("words", rule.share().words());
            json.yesNo("to_look_at", rule.toLookAt());
            json.strings("not_borne_out_in", rule.where());
            json.close();
        }
        json.endList();
        json.strings("cautions", DebriefReport.CAUTIONS);
    }

    private void share(String field, Proportion share) throws IOException {
        json.object(field);
        count("held", share.held());
        count("of", share.of());
        json.decimal("low", share.low(), 3);
        json.decimal("high", share.high(), 3);
        json.close();
    }

    private void count(String field, int number) throws IOException {
        json.number(field, BigDecimal.valueOf(number));
    }
}
