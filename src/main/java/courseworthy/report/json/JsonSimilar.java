package courseworthy.report.json;

import courseworthy.debrief.AdviceOutcome;
import courseworthy.debrief.DebriefResult;
import courseworthy.debrief.Verdict;
import courseworthy.demand.MeasureScale;
import courseworthy.demand.MeasureValue;
import courseworthy.scout.MeasureDifference;
import courseworthy.scout.MeasureWeight;
import courseworthy.scout.SimilarCourse;
import courseworthy.task.SimilarResult;
import java.io.IOException;
import java.util.ArrayList;

/** Writes the courses that are similar to one as JSON: likeness and what is apart as fractions of one, measures in their own unit. */
public final class JsonSimilar {

    private final Json json;
    private final SimilarResult result;

    private JsonSimilar(Json json, SimilarResult result) {
        this.json = json;
        this.result = result;
    }

    public static String of(SimilarResult result) {
        return Json.written(json -> new JsonSimilar(json, result).write());
    }

    private void write() throws IOException {
        JsonBrief.head(json, result.brief());
        json.string("course", result.brief().course().name());
        json.string("folder", result.folder());
        json.number("left_out", result.leftOut());
        json.strings("attributions", new ArrayList<>(result.attributions()));
        json.objects("measures", result.courses().weights(), this::weight);
        json.objects("nearest", result.courses().nearest(), this::nearest);
        json.objects("others", result.courses().others(), this::course);
    }

    private void weight(MeasureWeight weight) throws IOException {
        MeasureScale scale = weight.measure().scale();
        json.string("measure", weight.measure().written());
        json.string("group", weight.measure().group().word());
        json.decimal("weight", weight.weight(), 1);
        json.scaled("lowest", scale, weight.lowest().mid());
        json.scaled("highest", scale, weight.highest().mid());
        json.string("unit", Json.unit(scale));
    }

    private void course(SimilarCourse course) throws IOException {
        json.string("name", course.library().course().name());
        json.string("file", course.library().file());
        json.decimal("alike", 1 - course.difference(), 3);
    }

    private void nearest(SimilarCourse course) throws IOException {
        course(course);
        json.objects("measures", course.measures(), this::measure);
        json.objects("decisions", course.decisions(), decision -> {
            json.string("topic", decision.topic().name());
            json.string("here", decision.here());
            json.string("there", decision.there());
        });
        json.objects("debriefs", result.debriefsOf(course.library()), this::debrief);
    }

    private void measure(MeasureDifference difference) throws IOException {
        MeasureScale scale = difference.measure().scale();
        json.string("measure", difference.measure().written());
        json.decimal("weight", difference.weight(), 1);
        json.decimal("apart", difference.apart(), 3);
        value("here", scale, difference.here());
        value("there", scale, difference.there());
        json.string("unit", Json.unit(scale));
    }

    /** Null where unknown. */
    private void value(String field, MeasureScale scale, MeasureValue value) throws IOException {
        if (value == null) {
            json.string(field, null);
        } else {
            json.scaled(field, scale, value.mid());
        }
    }

    private void debrief(DebriefResult debrief) throws IOException {
        json.string("name", debrief.debrief().name());
        json.string("file", debrief.debrief().file());
        json.string("rider", debrief.given().rider());
        json.string("date", debrief.given().date());
        json.objects("not_borne_out", debrief.with(AdviceOutcome.NOT), this::verdict);
        json.objects("borne_out", debrief.with(AdviceOutcome.BORNE_OUT), this::verdict);
    }

    private void verdict(Verdict verdict) throws IOException {
        json.string("topic", verdict.advice().topic().name());
        json.string("advice", verdict.advice().text());
        json.strings("reasons", verdict.reasons());
    }
}
