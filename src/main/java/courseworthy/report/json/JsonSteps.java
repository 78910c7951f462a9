package courseworthy.report.json;

import courseworthy.ride.DiscretisedCourse;
import courseworthy.ride.Endurance;
import courseworthy.ride.HourlyConditions;
import courseworthy.ride.RideEstimate;
import courseworthy.ride.SpeedLimits;
import courseworthy.ride.Walking;
import java.io.IOException;
import java.util.function.IntToDoubleFunction;

/**
 * The way as it is ridden, step by step, and the rules of riding it, for a brief's JSON: with the other inputs enough to work the middle time
 * out again. docs/explanation/figures.md gives the equations.
 */
final class JsonSteps {

    /** Temperature is told by the half hour, s. */
    private static final double HALF_HOUR = 1800;

    private final Json json;
    private final RideEstimate estimate;
    private final DiscretisedCourse way;

    JsonSteps(Json json, RideEstimate estimate) {
        this.json = json;
        this.estimate = estimate;
        this.way = estimate.way().thinned();
    }

    void write() throws IOException {
        rules();
        temperature();
        grounds();
        steps();
    }

    private void rules() throws IOException {
        json.decimals("hours_of_power_held", Endurance.hours().length, i -> Endurance.hours()[i], 0);
        json.decimals("shares_of_power_held", Endurance.shares().length, i -> Endurance.shares()[i], 4);
        json.decimal("most_power_share_of_hour_power", estimate.mostPedalled(), 2);
        json.decimal("balanced_m_s", Walking.BALANCED, 2);
        json.decimal("walking_favoured_from_gradient", Walking.CHEAPER, 2);
        json.decimal("walking_favoured_in_full_from_gradient", Walking.CHEAPER_LOADED, 2);
        json.decimal("bends_up_to_m", DiscretisedCourse.STRAIGHT_RADIUS, 0);
        json.decimal("turn_m_s", SpeedLimits.TURN_SPEED, 2);
        json.decimal("gathering_m_s2", SpeedLimits.GATHERING, 2);
    }

    /** At the start's height. */
    private void temperature() throws IOException {
        int count = 1 + (int) Math.ceil(estimate.riding().mid() / HALF_HOUR);
        json.decimals("temperature_by_the_half_hour_c", count, i -> estimate.temperature(i * HALF_HOUR), 2);
    }

    private void grounds() throws IOException {
        json.list("grounds");
        for (int ground = 0; ground < estimate.groundFigures(); ground++) {
            json.open();
            json.decimal("rolling_resistance", estimate.rolling(ground).mid(), 6);
            json.decimal("fastest_m_s", estimate.cap(ground).mid(), 3);
            json.decimal("sideways_in_bends_m_s2", estimate.sideways(ground).mid(), 3);
            json.decimal("turns_per_km", 1000 * estimate.turnsPerMetre(ground % estimate.grounds()), 3);
            json.close();
        }
        json.endList();
    }

    private void steps() throws IOException {
        json.object("steps");
        column("length_m", way::length, 1);
        column("gradient", way::gradient, 5);
        column("density_kg_m3", step -> estimate.basis().weather().density(way.height(step)), 4);
        column("ground", way::ground, 0);
        known("heading_deg", way.hasHeadings(), step -> Math.toDegrees(way.bearing(step)), 0);
        known("bend_m", way.hasBends(), step -> way.radius(step) < DiscretisedCourse.STRAIGHT_RADIUS ? way.radius(step) : 0, 1);
        known("turns_sharply_deg", way.hasBends(), step -> Math.toDegrees(way.corner(step)), 0);
        byHour();
        json.close();
    }

    /** What the hours bring by lap and step, laps one after the other; empty under a forecast of the whole day. */
    private void byHour() throws IOException {
        HourlyConditions met = estimate.conditions() == null ? null : estimate.conditionsOn(way);
        int size = met == null ? 0 : way.size() * estimate.basis().laps();
        double wind = estimate.basis().weather().atRider();
        json.decimals("wind_by_lap_m_s", size, at -> met.wind(at) * wind, 2);
        json.decimals("density_by_lap", size, at -> met.density(at), 4);
        json.decimals("ground_by_lap", size, at -> way.ground(at % way.size()) + met.slotAt(at) * estimate.grounds(), 0);
    }

    private void column(String field, IntToDoubleFunction of, int decimals) throws IOException {
        json.decimals(field, way.size(), of, decimals);
    }

    /** Empty where nothing is known of it. */
    private void known(String field, boolean known, IntToDoubleFunction of, int decimals) throws IOException {
        json.decimals(field, known ? way.size() : 0, of, decimals);
    }
}
