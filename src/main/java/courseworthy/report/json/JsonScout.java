package courseworthy.report.json;

import courseworthy.course.GroundPairs;
import courseworthy.scout.PossibleAnswer;
import courseworthy.scout.ScoutPlan;
import courseworthy.scout.ScoutQuestion;
import courseworthy.scout.UnknownPiece;
import courseworthy.task.ScoutResult;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;

/** Writes as JSON where to look before a ride: lengths in m, times in s, places in degrees. */
public final class JsonScout {

    private final Json json;

    private JsonScout(Json json) {
        this.json = json;
    }

    public static String of(ScoutResult result) {
        return Json.written(json -> {
            JsonBrief.head(json, result.brief());
            json.string("course", result.brief().course().name());
            ScoutPlan plan = result.plan();
            json.decimal("length_m", plan.length(), 0);
            json.decimal("unknown_m", plan.unknown(), 0);
            json.decimal("total_s", plan.seconds(), 0);
            json.decimal("hanging_s", plan.hanging(), 0);
            json.list("questions");
            for (ScoutQuestion question : plan.questions()) {
                new JsonScout(json).question(question);
            }
            json.endList();
        });
    }

    private void question(ScoutQuestion question) throws IOException {
        json.open();
        json.decimal("length_m", question.length(), 0);
        json.decimal("hanging_s", question.hanging(), 0);
        json.strings("topics", new ArrayList<>(question.topics()));
        json.list("pieces");
        for (UnknownPiece piece : question.pieces()) {
            json.open();
            json.decimal("from_m", piece.from(), 0);
            json.decimal("to_m", piece.to(), 0);
            json.string("way", piece.way());
            json.number("latitude", piece.place() == null ? null : BigDecimal.valueOf(piece.place().latitude()).setScale(6, RoundingMode.HALF_UP));
            json.number("longitude", piece.place() == null ? null : BigDecimal.valueOf(piece.place().longitude()).setScale(6, RoundingMode.HALF_UP));
            json.close();
        }
        json.endList();
        json.list("answers");
        for (PossibleAnswer answer : question.answers()) {
            json.open();
            json.string("ground", GroundPairs.text(GroundPairs.of(answer.ground())));
            json.decimal("total_s", answer.seconds(), 0);
            json.list("changes");
            for (var change : answer.changes().entrySet()) {
                json.open();
                json.string("topic", change.getKey());
                json.string("then", change.getValue());
                json.close();
            }
            json.endList();
            json.close();
        }
        json.endList();
        json.close();
    }
}
