package courseworthy.report.json;

import courseworthy.build.SpringAir;
import courseworthy.call.CloseThreshold;
import courseworthy.call.Firmness;
import courseworthy.call.Flip;
import courseworthy.claim.Claim;
import courseworthy.claim.TestedFact;
import courseworthy.claim.Verb;
import courseworthy.decision.Decision.LosingClaim;
import courseworthy.decision.Decision;
import courseworthy.demand.Demands.AssumedInput;
import courseworthy.demand.Measure;
import courseworthy.demand.MeasureScale;
import courseworthy.demand.MeasureValue;
import courseworthy.engine.UndeterminedRule;
import courseworthy.report.ChecklistCalendar;
import courseworthy.report.Phrases;
import courseworthy.task.Brief.LeaveAlone;
import courseworthy.task.Brief;
import courseworthy.task.CalendarResult;
import courseworthy.task.CourseResult;
import courseworthy.task.CourseSummary;
import courseworthy.topic.Topic;
import java.io.IOException;
import java.util.List;
import java.util.Map;

/**
 * Writes a brief as JSON, format 2. Units are fixed by name: lengths in m (parts of a bike in mm), masses in kg, times in s,
 * pressures in kPa, temperatures in C, volumes in L, shares as fractions of one. The order is the catalogue's; within a decision
 * claims stand by rank, force and id.
 */
public final class JsonBrief {

    private final Json json;
    /** What would change the one decision that is written; null where that was not asked for. */
    private List<Flip> flips;
    /** Whose decisions are written, where what they are worth is written too; else null. */
    private Brief worthOf;

    /** Whose decisions are written. */
    private Brief firmnessOf;

    private JsonBrief(Json json) {
        this.json = json;
    }

    /** The whole brief. */
    public static String of(Brief brief) {
        return Json.written(json -> new JsonBrief(json).brief(brief, brief.decisions()));
    }

    /** The whole brief on one line, to lie beside its page. */
    public static String onOneLine(Brief brief) {
        return Json.onOneLine(json -> new JsonBrief(json).brief(brief, brief.decisions()));
    }

    /** The brief with the decision on one topic alone, and what would change it. */
    public static String of(Brief brief, Topic topic, List<Flip> flips) {
        return Json.written(json -> {
            JsonBrief writer = new JsonBrief(json);
            writer.flips = flips;
            writer.brief(brief, List.of(brief.on(topic)));
        });
    }

    /** Writes decisions and claims into a document of another kind. */
    static JsonBrief on(Json json, Brief brief) {
        JsonBrief writer = new JsonBrief(json);
        writer.firmnessOf = brief;
        return writer;
    }

    /** The course and its demands alone. */
    public static String course(CourseResult result) {
        return Json.written(json -> {
            JsonBrief writer = new JsonBrief(json);
            JsonGround.attribution(result.summary().attribution(), json);
            writer.course(result.summary());
            JsonRoadBook.heights(json, result.heights());
            writer.demands(result.measures());
        });
    }

    /** The checklist alone. */
    public static String checklist(Brief brief) {
        return Json.written(json -> {
            JsonBrief writer = new JsonBrief(json);
            writer.head(brief);
            CalendarResult calendar = brief.calendar();
            json.string("start", calendar == null ? null : calendar.schedule().start().toLocalTime().toString());
            new JsonPlan(json).pits(brief.outlook().pits());
            JsonChecklist.write(brief.checklist().sections(), json);
            calendar(json, brief);
        });
    }

    private static void calendar(Json json, Brief brief) throws IOException {
        CalendarResult calendar = brief.calendar();
        JsonCalendar.add(json, calendar == null ? null : ChecklistCalendar.of(calendar, null));
    }

    private void brief(Brief brief, List<Decision> decisions) throws IOException {
        head(brief);
        notes(brief);
        course(brief.course());
        JsonGround.reliance(brief, json);
        demands(brief.demands().values());
        assumed(brief);
        new JsonRide(json).of(brief.demands().estimated());
        worthOf = brief;
        firmnessOf = brief;
        decisions("decisions", decisions);
        leaveAlone(brief.leaveAlone());
        couldNotTell(brief.undetermined());
        json.strings("cautions", Phrases.cautions(brief));
        new JsonPlan(json).of(brief.outlook(), SpringAir.of(brief.build(), brief.demands()));
        if (flips == null) {
            new JsonRoadBook(json).of(brief.roadBook());
            new JsonBriefLists(json).of(brief);
            new JsonHeldGradients(json).of(brief.heldGradients());
            calendar(json, brief);
        }
        new JsonBuild(json).of(brief.build());
        JsonChecklist.write(brief.checklist().sections(), json);
    }

    /** No field where nothing is written. */
    private void notes(Brief brief) throws IOException {
        if (!brief.notes().isEmpty()) {
            json.string("rider_notes", brief.notes());
        }
        if (!brief.shared().keys().isEmpty()) {
            json.object("rider_shared");
            json.string("file", brief.shared().file());
            json.strings("keys", brief.shared().keys());
            json.close();
        }
    }

    void head(Brief brief) throws IOException {
        head(json, brief);
    }

    /** Whose brief it is and for what, as fields of the open object. */
    static void head(Json json, Brief brief) throws IOException {
        json.string("role", brief.role());
        json.string("date", brief.date() == null ? null : brief.date().toString());
        json.string("event", brief.event());
        json.string("rider", brief.rider());
        JsonSheets.write(brief.sheets(), json);
        JsonGround.origin(brief.course(), json);
    }

    private void course(CourseSummary course) throws IOException {
        json.object("course");
        json.string("name", course.name());
        json.string("summary", course.summary());
        json.string("file", course.file());
        json.metres("distance_m", course.distance());
        json.metres("ascent_m", course.climbing() == null ? null : Double.valueOf(course.climbing().ascent()));
        json.metres("descent_m", course.climbing() == null ? null : Double.valueOf(course.climbing().descent()));
        json.objects("surfaces", course.surfaces(), surface -> {
            json.string("surface", surface.surface());
            json.number("share", surface.share());
            json.number("share_at_most", surface.atMost());
        });
        json.objects("repairs", course.repairs(), repair -> {
            json.string("what", repair.what());
            json.number("count", repair.count());
        });
        json.strings("notes", course.notes());
        JsonGround.basis(course.basis(), json);
        json.close();
    }

    private void demands(Map<Measure, MeasureValue> demands) throws IOException {
        json.objects("demands", demands.entrySet(), demand -> {
            MeasureScale scale = demand.getKey().scale();
            MeasureValue value = demand.getValue();
            json.string("name", demand.getKey().written());
            json.scaled("value", scale, value.mid());
            json.scaled("low", scale, value.low());
            json.scaled("high", scale, value.high());
            json.string("unit", Json.unit(scale));
            json.string("text", Phrases.range(scale, value));
        });
    }

    private void assumed(Brief brief) throws IOException {
        json.list("assumed");
        for (String ground : brief.course().assumed()) {
            assumed("ground", ground);
        }
        for (AssumedInput each : brief.demands().assumed()) {
            assumed(each.what(), each.value());
        }
        json.endList();
    }

    private void assumed(String what, String value) throws IOException {
        json.open();
        json.string("what", what);
        json.string("value", value);
        json.close();
    }

    void decisions(String field, List<Decision> decisions) throws IOException {
        json.objects(field, decisions, decision -> decision(decision, decisions.size() == 1));
    }

    private void decision(Decision decision, boolean alone) throws IOException {
        json.string("topic", decision.topic().name());
        json.string("status", decision.status().words());
        json.value("value", decision.topic(), decision.value());
        json.string("unit", Json.unit(decision.topic()));
        json.string("text", decision.text());
        firmness(firmnessOf.firmness(decision));
        json.string("why", decision.why());
        if (worthOf != null) {
            close(json, worthOf.close(decision));
        }
        json.objects("for", decision.taken(), claim -> {
            claim(claim);
        });
        json.objects("against", decision.lost(), this::lost);
        if (worthOf != null && alone) {
            new JsonWorth(json).full(worthOf, decision);
        } else if (worthOf != null) {
            new JsonWorth(json).terse(worthOf, decision);
        }
        if (flips != null) {
            JsonFlips.add("flips", json, flips);
        }
    }

    /** How firm, and what that follows from. */
    private void firmness(Firmness firmness) throws IOException {
        json.string("firmness", firmness == null ? null : firmness.word());
        if (firmness == null) {
            return;
        }
        json.object("firmness_from");
        json.string("evidence", firmness.evidence().word());
        json.string("agreement", firmness.agreement().word());
        json.strings("assumed", firmness.assumed());
        json.strings("unchecked", firmness.unknown().stream().map(rule -> rule.origin().rule()).toList());
        json.string("by_itself", firmness.grade().level().word());
        json.string("rests_on", firmness.restsOn() == null ? null : firmness.restsOn().decision().topic().name());
        json.close();
    }

    /** Whether it is close, and to what. */
    static void close(Json json, CloseThreshold margin) throws IOException {
        json.yesNo("close", margin != null);
        if (margin == null) {
            return;
        }
        MeasureScale scale = margin.measure().scale();
        json.object("close_to");
        json.string("measure", margin.measure().written());
        json.scaled("value", scale, margin.from());
        json.scaled("threshold", scale, margin.threshold());
        json.string("unit", Json.unit(scale));
        json.string("otherwise", margin.otherwise().text());
        json.close();
    }

    void lost(LosingClaim lost) throws IOException {
        claim(lost.claim());
        json.string("how", lost.how().words());
        if (!lost.by().isEmpty()) {
            json.string("overruled_by", lost.by().get(0));
            json.strings("lost_to", lost.by());
        }
    }

    void claim(Claim claim) throws IOException {
        json.origin(claim.origin());
        says(claim);
        json.objects("grounds", claim.grounds(), this::ground);
    }

    private void says(Claim claim) throws IOException {
        json.object("says");
        json.string("verb", claim.verb().word());
        if (claim.verb() == Verb.ONE_OF) {
            json.values("value", claim.topic(), claim.values());
        } else {
            json.value("value", claim.topic(), claim.value());
        }
        json.string("unit", Json.unit(claim.topic()));
        json.string("written", claim.written());
        json.close();
    }

    private void ground(TestedFact ground) throws IOException {
        json.string("measure", ground.measure());
        if (ground.number() == null) {
            json.string("value", ground.value());
        } else {
            json.number("value", ground.number());
        }
        json.string("unit", ground.unit());
        json.string("text", ground.value());
        json.string("test", ground.test());
        json.yesNo("met", ground.met());
        json.yesNo("near", ground.near());
    }

    private void leaveAlone(List<LeaveAlone> things) throws IOException {
        json.objects("leave_alone", things, thing -> {
            json.string("what", thing.what());
            json.string("because", thing.because());
        });
    }

    private void couldNotTell(List<UndeterminedRule> rules) throws IOException {
        json.objects("could_not_tell", rules, rule -> {
            json.string("rule", rule.origin().rule());
            json.strings("topics", rule.topics());
            json.strings("wanting", rule.wanting());
            json.string("where", rule.origin().where().toString());
        });
    }
}
