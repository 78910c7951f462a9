package courseworthy.report.json;

import courseworthy.call.Explainer.Instead;
import courseworthy.call.RuleTrace;
import courseworthy.claim.Claim;
import courseworthy.decision.Decision;
import courseworthy.report.WhyReport;
import courseworthy.sheet.ConditionTrace;
import courseworthy.task.WhyResult;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;

/** Writes why a decision is as it is, as JSON, format 2; decisions and claims as in {@link JsonBrief}. */
public final class JsonWhy {

    private final Json json;
    private final JsonBrief parts;

    private JsonWhy(Json json, WhyResult reasoning) {
        this.json = json;
        this.parts = JsonBrief.on(json, reasoning.brief());
    }

    /** One decision with everything that explains it, or with what was asked of one value or one rule. */
    public static String of(WhyResult reasoning) {
        return Json.written(json -> new JsonWhy(json, reasoning).write(reasoning));
    }

    private void write(WhyResult reasoning) throws IOException {
        parts.head(reasoning.brief());
        json.string("course", reasoning.brief().course().name());
        parts.decisions("decisions", reasoning.decision() == null ? List.of() : List.of(reasoning.decision()));
        if (reasoning.narrow()) {
            asked(reasoning);
        } else {
            parts.decisions("chain", reasoning.chain());
            hearings("silent", reasoning.silent());
            JsonFlips.add("flips", json, reasoning.flips());
        }
    }

    /** The one rule and the one value that were asked about, each in a list that is empty where it was not. */
    private void asked(WhyResult reasoning) throws IOException {
        hearings("rules", reasoning.rule() == null ? List.of() : List.of(reasoning.rule()));
        json.list("not");
        if (reasoning.instead() != null) {
            instead(reasoning.instead(), reasoning.decision());
        }
        json.endList();
    }

    private void hearings(String field, List<RuleTrace> hearings) throws IOException {
        json.objects(field, hearings, this::hearing);
    }

    private void hearing(RuleTrace hearing) throws IOException {
        json.origin(hearing.origin());
        json.strings("says", hearing.says());
        json.yesNo("spoke", hearing.spoke());
        json.string("holds", hearing.truth().name().toLowerCase(Locale.ROOT));
        json.string("wanting", hearing.wanting());
        json.objects("tests", hearing.tests(), this::test);
    }

    private void test(ConditionTrace test) throws IOException {
        json.number("depth", BigDecimal.valueOf(test.depth()));
        json.string("what", test.what());
        json.string("value", test.value());
        json.string("asked", test.asked());
        json.string("holds", test.truth().name().toLowerCase(Locale.ROOT));
        json.string("off", test.off());
    }

    private void instead(Instead instead, Decision decision) throws IOException {
        json.open();
        json.value("value", instead.topic(), instead.value());
        json.string("unit", Json.unit(instead.topic()));
        json.string("text", WhyReport.value(instead));
        json.string("beaten", WhyReport.beaten(instead, decision));
        claims("excluded_by", instead.excluding());
        claims("preferred", instead.against());
        json.objects("favoured_by", instead.favouring(), parts::lost);
        hearings("would_favour", instead.wouldSay());
        json.yesNo("on_step", instead.onStep());
        JsonFlips.add("brought_by", json, instead.bring());
        JsonFlips.add("nearest", json, instead.toward() == null ? List.of() : List.of(instead.toward()));
        json.close();
    }

    private void claims(String field, List<Claim> claims) throws IOException {
        json.objects(field, claims, claim -> {
            parts.claim(claim);
        });
    }
}
