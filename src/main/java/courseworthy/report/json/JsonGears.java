package courseworthy.report.json;

import courseworthy.report.GearShortfallPhrases;
import courseworthy.task.Brief;
import courseworthy.worth.ClimbInGear;
import courseworthy.worth.DrivetrainResult;
import courseworthy.worth.Gear;
import courseworthy.worth.GearChoice;
import courseworthy.worth.GearShortfall;
import courseworthy.worth.Sprint;
import courseworthy.worth.SpunOut;
import java.io.IOException;
import java.util.List;

/** Writes as JSON what a course asks of the gears: lengths in m, times in s, speeds in m/s, cadence in turns a minute, torque in N m. */
public final class JsonGears {

    private final Json json;

    JsonGears(Json json) {
        this.json = json;
    }

    /**
     * @param brief     for its head
     * @param shortfall null where the gears are easy enough
     */
    public static String of(Brief brief, GearChoice choice, GearShortfall shortfall) {
        return Json.written(json -> {
            JsonBrief.head(json, brief);
            json.string("course", brief.course().name());
            new JsonGears(json).choice(choice);
            if (shortfall != null) {
                new JsonGears(json).shortfall(shortfall);
            }
        });
    }

    private void shortfall(GearShortfall shortfall) throws IOException {
        json.object("shortfall");
        json.string("text", GearShortfallPhrases.full(shortfall));
        json.decimal("needed", shortfall.needed(), 3);
        json.yesNo("sustained", shortfall.sustained());
        json.yesNo("made", shortfall.made());
        json.decimal("easiest_made", shortfall.easiest(), 3);
        json.decimal("on_foot_s", shortfall.cost().onFoot(), 0);
        json.decimal("slower_s", shortfall.cost().slower(), 0);
        json.objects("others", shortfall.others(), other -> {
            json.string("bike", other.bike());
            json.decimal("easiest_made", other.easiest(), 3);
            json.decimal("needed", other.needed(), 3);
            json.range("total_s", other.total(), 0);
        });
        json.close();
    }

    /** Fields of the open object. */
    void choice(GearChoice choice) throws IOException {
        json.string("bike", choice.bike());
        json.string("estimated_on", choice.ridden());
        json.decimal("rear_tyre_width_mm", choice.width() * 1000, 1);
        json.range("lowest_cadence_per_min", choice.lowest(), 1);
        json.decimal("usual_cadence_per_min", choice.usual(), 1);
        json.range("highest_cadence_per_min", choice.highest(), 1);
        json.objects("steep", choice.pieces(), piece -> {
            json.string("piece", piece.kind().written());
            json.decimal("length_m", piece.length(), 1);
            json.decimal("middle_m", piece.middle(), 1);
            json.range("gradient", piece.gradient(), 4);
            json.range("power_w", piece.power(), 1);
        });
        if (choice.decided() == null) {
            json.string("decided", null);
        } else {
            json.object("decided");
            geared(choice.decided());
            json.close();
        }
        json.objects("common", choice.common(), each -> {
            geared(each);
        });
    }

    private void geared(DrivetrainResult geared) throws IOException {
        numbers("rings", geared.drivetrain().rings());
        numbers("sprockets", geared.drivetrain().sprockets());
        json.decimal("circumference_m", geared.circumference(), 3);
        gear("easiest", geared.drivetrain().easiest(), geared.circumference());
        gear("hardest", geared.drivetrain().hardest(), geared.circumference());
        json.decimal("largest_step", geared.drivetrain().largestStep(), 3);
        json.objects("climbed", geared.climbed(), this::climbed);
        json.objects("used", geared.use(), use -> {
            json.string("gear", use.gear().teeth());
            json.decimal("time_s", use.seconds(), 0);
        });
        json.decimal("below_lowest_cadence_s", geared.grinding(), 0);
        json.decimal("coasting_s", geared.coasting(), 0);
        json.decimal("walking_pace_s", geared.walking(), 0);
        json.range("spun_out_from_m_s", geared.hardest().topSpeed(), 2);
        spinning("alone", geared.hardest().alone());
        spinning("in_a_group", geared.hardest().group());
        sprint(geared.hardest().sprint());
    }

    private void numbers(String field, List<Integer> numbers) throws IOException {
        json.list(field);
        for (int number : numbers) {
            json.number(number);
        }
        json.endList();
    }

    private void gear(String field, Gear gear, double circumference) throws IOException {
        json.object(field);
        json.string("teeth", gear.teeth());
        json.decimal("ratio", gear.ratio(), 3);
        json.decimal("development_m", gear.development(circumference), 3);
        json.close();
    }

    private void climbed(ClimbInGear climbed) throws IOException {
        json.string("piece", climbed.kind().written());
        json.range("speed_m_s", climbed.speed(), 2);
        json.range("cadence_per_min", climbed.cadence(), 1);
        json.range("torque_n_m", climbed.torque(), 1);
        json.yesNo("walking_as_fast", climbed.walked());
    }

    private void spinning(String field, SpunOut spinning) throws IOException {
        json.object(field);
        json.range("spun_out_m", spinning.metres(), 0);
        json.range("spun_out_s", spinning.seconds(), 0);
        json.range("cost_s", spinning.cost(), 1);
        json.close();
    }

    private void sprint(Sprint sprint) throws IOException {
        if (sprint == null) {
            json.string("sprint", null);
            return;
        }
        json.object("sprint");
        json.range("power_w", sprint.power(), 0);
        json.range("speed_m_s", sprint.speed(), 2);
        json.range("limit_m_s", sprint.limit(), 2);
        json.range("cost_s", sprint.cost(), 1);
        json.close();
    }
}
