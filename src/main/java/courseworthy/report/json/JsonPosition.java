package courseworthy.report.json;

import courseworthy.build.Point;
import courseworthy.build.Position;
import courseworthy.build.PositionTransfer;
import courseworthy.build.PositionTransfer.StemChoice;
import courseworthy.build.PositionTransfer.Saddle;
import courseworthy.report.PositionReport;
import courseworthy.task.PositionResult;
import courseworthy.workshop.Part;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/** Writes bar and saddle positions as JSON: lengths in mm to a tenth, angles in degrees. */
public final class JsonPosition {

    private final Json json;

    private JsonPosition(Json json) {
        this.json = json;
    }

    public static String of(PositionResult result) {
        return result.transfer() == null ? positions(result.workshop(), result.all()) : transfer(result.workshop(), result.transfer());
    }

    /** The positions on several bikes. */
    private static String positions(String workshop, List<Position> positions) {
        return Json.written(json -> {
            json.string("workshop", workshop);
            json.objects("bikes", positions, position -> {
                new JsonPosition(json).position(position);
            });
            rests(json);
        });
    }

    /** A position carried over. */
    private static String transfer(String workshop, PositionTransfer carried) {
        return Json.written(json -> {
            json.string("workshop", workshop);
            new JsonPosition(json).carried(carried);
            rests(json);
        });
    }

    private static void rests(Json json) throws IOException {
        json.strings("rests_on", PositionReport.ASSUMPTIONS);
        json.strings("cautions", PositionReport.CAUTIONS);
    }

    private void carried(PositionTransfer carried) throws IOException {
        json.object("from");
        position(carried.from());
        json.close();
        json.object("to");
        position(carried.now());
        json.close();
        choices("stems", carried.choices());
        json.object("advised", carried.advised(), this::one);
        json.object("closer_if_known", carried.unknown(), this::one);
        choices("refused", carried.refused());
        json.object("not_in_workshop", carried.wished(), this::one);
        saddle(carried.saddle());
        json.strings("to_measure", carried.toMeasure());
        json.strings("to_mind", carried.toMind());
    }

    private void position(Position position) throws IOException {
        json.string("bike", position.bike().name());
        json.decimal("head_angle_deg", position.headAngle(), 1);
        millimetres("trail_mm", position.trail());
        Point hands = position.hands();
        millimetres("hands_forward_mm", hands == null ? null : Double.valueOf(hands.forward()));
        millimetres("hands_up_mm", hands == null ? null : Double.valueOf(hands.up()));
        millimetres("drops_up_mm", position.drops());
        json.string("bar_shape", position.barShape());
        millimetres("bar_width_mm", position.barWidth());
        millimetres("saddle_height_mm", position.saddleHeight());
        millimetres("saddle_setback_mm", position.saddleSetback());
        millimetres("saddle_above_hands_mm", position.saddleAboveHands());
        millimetres("saddle_tip_to_hands_mm", position.tipToHands());
        millimetres("crank_length_mm", position.crankLength());
        json.strings("to_measure", position.toMeasure());
        json.strings("to_mind", position.restsOn());
    }

    private void choices(String field, List<StemChoice> choices) throws IOException {
        json.objects(field, choices, choice -> {
            choice(choice);
        });
    }

    private void one(StemChoice choice) throws IOException {
        choice(choice);
    }

    private void choice(StemChoice choice) throws IOException {
        json.string("stem", choice.stem().name());
        json.yesNo("other_way_up", choice.turned());
        json.yesNo("as_now", choice.asNow());
        millimetres("stem_length_mm", choice.length());
        json.decimal("stem_angle_deg", choice.angle(), 1);
        millimetres("spacers_under_mm", choice.under());
        json.objects("spacers", choice.spacers().entrySet(), each -> {
            json.string("part", each.getKey().name());
            millimetres("height_mm", each.getValue());
        });
        millimetres("steerer_above_mm", choice.above());
        millimetres("hands_too_far_forward_mm", choice.forward());
        millimetres("hands_too_high_mm", choice.up());
        json.string("fit", choice.fit().result().words());
        json.string("fit_words", choice.fit().words());
    }

    private void saddle(Saddle saddle) throws IOException {
        json.object("saddle");
        millimetres("height_mm", saddle.height());
        millimetres("cranks_longer_mm", saddle.longer());
        millimetres("setback_mm", saddle.setback());
        millimetres("forward_on_rails_mm", saddle.onRails());
        json.string("post", saddle.post() == null ? null : saddle.post().name());
        json.string("post_fit", saddle.fit() == null ? null : saddle.fit().result().words());
        json.string("post_fit_words", saddle.fit() == null ? null : saddle.fit().words());
        List<String> names = new ArrayList<>();
        for (Part other : saddle.others()) {
            names.add(other.name());
        }
        json.strings("other_posts", names);
        json.close();
    }

    private void millimetres(String field, Double metres) throws IOException {
        json.decimal(field, metres == null ? null : Double.valueOf(metres * 1000), 1);
    }
}
