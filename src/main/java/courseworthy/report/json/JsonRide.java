package courseworthy.report.json;

import courseworthy.demand.DayDemands;
import courseworthy.demand.EstimatedRide;
import courseworthy.ride.DiscretisedCourse;
import courseworthy.ride.DragArea;
import courseworthy.ride.Endurance;
import courseworthy.ride.PowerBalance;
import courseworthy.ride.RideAssumptions;
import courseworthy.ride.RideEstimate;
import courseworthy.ride.SpeedLimits;
import courseworthy.ride.TrailCorner;
import courseworthy.ride.Walking;
import java.io.IOException;

/** The ride estimate in a brief's JSON: what it found, and all it was worked out from, so that anyone can do so again. */
public final class JsonRide {

    private final Json json;

    JsonRide(Json json) {
        this.json = json;
    }

    /** Null where no ride was estimated. */
    void of(EstimatedRide estimated) throws IOException {
        if (estimated == null) {
            json.string("ride", null);
            return;
        }
        RideEstimate estimate = estimated.estimate();
        json.object("ride");
        json.range("riding_s", estimate.riding(), 1);
        json.range("stops_s", estimate.stops(), 1);
        json.range("total_s", estimate.total(), 1);
        stops(estimated);
        json.decimal("walked_s", estimate.walked(), 0);
        json.decimal("power_uphill_w", estimate.uphill(), 1);
        json.range("power_on_climbs_w", estimate.powerOn(RideEstimate.CLIMBING, 1), 1);
        json.range("power_on_the_level_w", estimate.powerOn(-RideEstimate.LEVEL, RideEstimate.LEVEL), 1);
        json.range("power_on_descents_w", estimate.powerOn(-1, -RideEstimate.CLIMBING), 1);
        json.decimal("power_pedalled_w", estimate.power(), 1);
        json.decimal("power_mean_w", estimate.meanPower(), 1);
        json.decimal("power_fourth_power_mean_w", estimate.load(), 1);
        json.decimal("power_that_can_be_held_w", estimate.canHold(), 1);
        inputs(estimated);
        json.close();
    }

    private void stops(EstimatedRide estimated) throws IOException {
        RideEstimate estimate = estimated.estimate();
        json.objects("stops", estimated.day().stops(), stop -> {
            json.decimal("at_m", stop.at(), 0);
            json.range("stop_s", estimate.stopped(1, 0), 1);
        });
        json.range("stops_elsewhere_s", estimate.stopped(0, estimate.riding().mid()), 1);
    }

    private void inputs(EstimatedRide estimated) throws IOException {
        RideEstimate estimate = estimated.estimate();
        RideAssumptions basis = estimate.basis();
        json.object("inputs");
        json.decimal("laps", basis.laps(), 0);
        json.range("mass_kg", basis.mass(), 2);
        json.range("drag_area_m2", basis.dragArea(), 4);
        company(basis, estimated.day());
        json.range("hour_power_w", basis.pacing().hourPower(), 1);
        json.range("share_of_hour_power_held", Endurance.share(estimate.riding().mid()), 4);
        json.range("share_of_that_ridden", basis.pacing().intensity(), 4);
        json.range("power_lost_by_the_end", Endurance.fade(estimate.riding().mid()), 4);
        json.range("factor_on_gradients", basis.climbing(), 4);
        weather(estimate, basis.weather());
        constants();
        json.range("inside_of_sharp_turns_m", TrailCorner.INSIDE, 2);
        json.range("tread_of_trails_m", TrailCorner.TREAD, 2);
        json.decimal("climbing_from_gradient", RideEstimate.CLIMBING, 2);
        json.decimal("level_within_gradient", RideEstimate.LEVEL, 2);
        json.decimal("draws", estimate.draws(), 0);
        new JsonSteps(json, estimate).write();
        stretches(estimate);
        places(estimate);
        json.close();
    }

    private void company(RideAssumptions basis, DayDemands day) throws IOException {
        json.range("drag_area_alone_m2", DragArea.alone(basis.kind(), day.mass()), 4);
        json.range("group_share", day.groupShare(), 3);
        json.range("drag_saved_in_a_group", DragArea.SAVED_IN_A_GROUP, 3);
        json.yesNo("held_to_gears", false);
        json.range("lowest_cadence_per_min", day.lowestCadence(), 0);
        json.range("highest_cadence_per_min", day.highestCadence(), 0);
    }

    private void weather(RideEstimate estimate, RideAssumptions.WeatherAssumptions weather) throws IOException {
        json.range("wind_at_the_rider_m_s", weather.windAtRider(), 2);
        if (Double.isNaN(weather.from())) {
            json.string("wind_from_deg", null);
        } else {
            json.decimal("wind_from_deg", Math.toDegrees(weather.from()), 1);
        }
        json.decimal("start_height_m", weather.startHeight(), 1);
        json.decimal("temperature_c", weather.temperature(), 1);
        json.decimal("temperature_low_c", weather.hours() == null ? weather.temperature() : weather.hours().low(), 1);
        json.decimal("temperature_high_c", weather.hours() == null ? weather.temperature() : weather.hours().high(), 1);
        RideAssumptions.Hours hours = weather.hours();
        second("start_of_day_s", hours == null ? Double.NaN : hours.start());
        second("sunrise_s", hours == null ? Double.NaN : hours.rise());
        second("sunset_s", hours == null ? Double.NaN : hours.set());
        json.decimal("humidity", weather.humidity(), 2);
        json.decimal("pressure_at_sea_level_kpa", weather.pressure() / 1000, 3);
        json.decimal("density_at_the_start_kg_m3", estimate.density(), 4);
        json.range("factor_on_density", weather.densityOff(), 4);
    }

    /** A time after midnight, s; null for one that is not known. */
    private void second(String field, double seconds) throws IOException {
        if (Double.isNaN(seconds)) {
            json.string(field, null);
        } else {
            json.decimal(field, seconds, 0);
        }
    }

    private void constants() throws IOException {
        json.decimal("gravity_m_s2", PowerBalance.GRAVITY, 5);
        json.decimal("drive_efficiency", PowerBalance.EFFICIENCY, 5);
        json.decimal("wheel_drag_area_m2", PowerBalance.WHEEL_DRAG, 4);
        json.decimal("wheel_inertia_kg", PowerBalance.WHEEL_INERTIA_MASS, 4);
        json.decimal("bearing_force_n", PowerBalance.BEARING_FORCE, 4);
        json.decimal("bearing_force_per_speed_n_s_m", PowerBalance.BEARING_SLOPE, 4);
        json.decimal("walking_m_s", Walking.SPEED.mid(), 2);
        json.decimal("braking_m_s2", SpeedLimits.BRAKING, 2);
    }

    private void stretches(RideEstimate estimate) throws IOException {
        DiscretisedCourse way = estimate.way();
        json.list("stretches");
        for (int stretch = 0; stretch < estimate.stretches(); stretch++) {
            double length = 0;
            int sharp = 0;
            for (int step = 0; step < way.size(); step++) {
                boolean here = way.stretch(step) == stretch;
                length += here ? way.length(step) : 0;
                sharp += here && way.corner(step) > 0 ? 1 : 0;
            }
            json.open();
            json.decimal("length_m", length, 1);
            json.range("rolling_resistance", estimate.rolling(stretch), 5);
            json.range("fastest_m_s", estimate.cap(stretch), 2);
            json.range("sideways_in_bends_m_s2", estimate.sideways(stretch), 2);
            json.decimal("turns_per_km", 1000 * estimate.turnsPerMetre(stretch), 2);
            json.decimal("sharp_turns", sharp, 0);
            json.close();
        }
        json.endList();
    }

    /** Where a stretch is likely harder or easier than it is written, since it winds more or less than the rest of it. */
    private void places(RideEstimate estimate) throws IOException {
        DiscretisedCourse way = estimate.way();
        json.list("places_unlike_their_stretch");
        for (int first = 0; first < way.size();) {
            int ground = way.ground(first);
            int end = first + 1;
            while (end < way.size() && way.ground(end) == ground) {
                end++;
            }
            if (way.harder(ground) != 0) {
                json.open();
                json.decimal("from_m", way.along(first) - way.length(first), 0);
                json.decimal("to_m", way.along(end - 1), 0);
                json.decimal("grades_harder", way.harder(ground), 2);
                json.range("rolling_resistance", estimate.rolling(ground), 5);
                json.range("fastest_m_s", estimate.cap(ground), 2);
                json.close();
            }
            first = end;
        }
        json.endList();
    }
}
