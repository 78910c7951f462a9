package courseworthy.report.json;

import courseworthy.worth.HeldGradients;
import java.io.IOException;

/** Writes under {@code gear_ladder} which gradients each gear holds, and what the course asks for. */
final class JsonHeldGradients {

    private final Json json;

    JsonHeldGradients(Json json) {
        this.json = json;
    }

    /** Null where no gears are known. */
    void of(HeldGradients held) throws IOException {
        json.object("gear_ladder", held, known -> {
            json.string("gears_of", known.drivetrain().teeth());
            json.range("power_left_w", known.power(), 1);
            json.decimal("rolling_resistance", known.rolling(), 5);
            json.range("lowest_cadence_per_min", known.lowest(), 0);
            json.range("highest_cadence_per_min", known.highest(), 0);
            json.objects("gears", known.gears(), each -> {
                json.string("gear", each.gear().teeth());
                json.decimal("flattest_gradient", each.flattest(), 4);
                json.decimal("steepest_gradient", each.steepest(), 4);
                json.decimal("slowest_m_s", each.slowest(), 3);
                json.decimal("fastest_m_s", each.fastest(), 3);
                json.decimal("used_s", each.seconds(), 0);
            });
            json.objects("steep", known.steep(), each -> {
                json.string("what", each.piece().kind().written());
                json.metres("at_m", each.piece().middle());
                json.range("gradient", each.piece().gradient(), 4);
                json.range("power_w", each.piece().power(), 1);
                json.range("cadence_per_min", each.climbed().cadence(), 1);
                json.yesNo("held", each.held());
            });
            json.range("spun_out_m_s", known.topSpeed(), 2);
            json.range("useful_m_s", known.useful(), 2);
        });
    }
}
