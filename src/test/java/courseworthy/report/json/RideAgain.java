package courseworthy.report.json;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;
import java.util.TreeMap;

/**
 * Works the middle time of a ride out again from a brief's JSON alone, by the equations of docs/explanation/figures.md and by nothing of the tool's own:
 * speed is carried on in steps of a few metres, and the power is found at which load and what can be held agree.
 */
final class RideAgain {

    private static final double STEP = 4;
    private static final double ICE = 273.15;

    private final JsonNode in;
    private final double[] length;
    private final double[] gradient;
    private final double[] density;
    private final double[] ground;
    private final double[] heading;
    private final double[] bend;
    private final double[] sharp;
    private final double[] temperatures;
    private final double[] windByLap;
    private final double[] densityByLap;
    private final double[] groundByLap;
    private final double[] rolling;
    private final double[] fastest;
    private final double[] sideways;
    private final double[] turns;
    private final double mass;
    private final double area;
    private final double climbing;
    private final double lap;
    private final int laps;
    private double load;
    /** Riding time at the end of each piece ridden last, by distance from the start, s. */
    private final TreeMap<Double, Double> passed = new TreeMap<>();

    RideAgain(JsonNode ride) {
        in = ride.get("inputs");
        JsonNode steps = in.get("steps");
        length = column(steps, "length_m");
        gradient = column(steps, "gradient");
        density = column(steps, "density_kg_m3");
        ground = column(steps, "ground");
        heading = column(steps, "heading_deg");
        bend = column(steps, "bend_m");
        sharp = column(steps, "turns_sharply_deg");
        windByLap = column(steps, "wind_by_lap_m_s");
        densityByLap = column(steps, "density_by_lap");
        groundByLap = column(steps, "ground_by_lap");
        temperatures = column(in, "temperature_by_the_half_hour_c");
        rolling = grounds("rolling_resistance");
        fastest = grounds("fastest_m_s");
        sideways = grounds("sideways_in_bends_m_s2");
        turns = grounds("turns_per_km");
        mass = likely("mass_kg");
        area = likely("drag_area_m2") + number("wheel_drag_area_m2");
        climbing = likely("factor_on_gradients");
        double sum = 0;
        for (double each : length) {
            sum += each;
        }
        lap = sum;
        laps = in.get("laps").asInt();
    }

    private static double[] column(JsonNode from, String name) {
        double[] out = new double[from.get(name).size()];
        for (int i = 0; i < out.length; i++) {
            out[i] = from.get(name).get(i).asDouble();
        }
        return out;
    }

    private double[] grounds(String name) {
        double[] out = new double[in.get("grounds").size()];
        for (int i = 0; i < out.length; i++) {
            out[i] = in.get("grounds").get(i).get(name).asDouble();
        }
        return out;
    }

    private double likely(String name) {
        return in.get(name).get("value").asDouble();
    }

    private double number(String name) {
        return in.get(name).asDouble();
    }

    /** Riding time, s. */
    double seconds() {
        double hour = likely("hour_power_w");
        double uphill = 0.7 * hour;
        double time = lap * laps / 6;
        for (int round = 0; round < 30; round++) {
            time = ride(uphill, hour, time);
            double off = Math.log(hour * held(time) * likely("share_of_that_ridden") / load);
            if (Math.abs(off) < 1e-4 || uphill >= most(hour) && off > 0) {
                break;
            }
            uphill = Math.min(most(hour), uphill * Math.exp(off));
        }
        return time;
    }

    /** Riding time to a distance from the start, s, of the ride worked out last. */
    double secondsTo(double distance) {
        Map.Entry<Double, Double> before = passed.floorEntry(distance);
        Map.Entry<Double, Double> after = passed.ceilingEntry(distance);
        if (after == null || before.equals(after)) {
            return (after == null ? passed.lastEntry() : after).getValue();
        }
        double part = (distance - before.getKey()) / (after.getKey() - before.getKey());
        return before.getValue() + part * (after.getValue() - before.getValue());
    }

    private double most(double hour) {
        return number("most_power_share_of_hour_power") * hour;
    }

    /** Share of hour power for a time: straight lines over the logarithm of the hours. */
    private double held(double seconds) {
        double[] hours = column(in, "hours_of_power_held");
        double[] shares = column(in, "shares_of_power_held");
        int i = 0;
        while (i < hours.length - 2 && seconds / 3600 > hours[i + 1]) {
            i++;
        }
        double part = Math.log(seconds / 3600 / hours[i]) / Math.log(hours[i + 1] / hours[i]);
        return seconds < 3600 ? Math.pow(seconds / 3600, -0.07) : shares[i] + part * (shares[i + 1] - shares[i]);
    }

    private double headwind(int step, double along, int round) {
        boolean byHour = windByLap.length > 0;
        double wind = byHour ? windByLap[round * length.length + step] : likely("wind_at_the_rider_m_s");
        if (byHour && directed()) {
            return wind;
        }
        if (!byHour && heading.length > 0 && !in.get("wind_from_deg").isNull()) {
            return wind * Math.cos(Math.toRadians(number("wind_from_deg") - heading[step]));
        }
        return wind * new double[] {1, 0, -1, 0}[(int) Math.floor(along / 250) % 4];
    }

    private boolean directed() {
        return heading.length > 0 && !in.get("wind_from_deg").isNull();
    }

    private int on(int step, int round) {
        return (int) (groundByLap.length > 0 ? groundByLap[round * length.length + step] : ground[step]);
    }

    private double air(int step, double along, int round, double whole) {
        if (densityByLap.length > 0) {
            return 0.5 * density[step] * densityByLap[round * length.length + step] * area;
        }
        double[] by = temperatures;
        double at = Math.min(by.length - 1.0, (round + along / lap) / laps * whole / 1800);
        int i = (int) Math.min(by.length - 2.0, at);
        double now = by.length < 2 ? by[0] : by[i] + (at - i) * (by[i + 1] - by[i]);
        return 0.5 * density[step] * (number("temperature_c") + ICE) / (now + ICE) * area;
    }

    private double steady(int step, int round) {
        double flat = 1 / Math.sqrt(1 + gradient[step] * gradient[step]);
        return mass * number("gravity_m_s2") * flat * (rolling[on(step, round)] + climbing * gradient[step]) + number("bearing_force_n");
    }

    private double against(double v, double air, double wind, double steady) {
        return air * (v + wind) * Math.abs(v + wind) + steady + number("bearing_force_per_speed_n_s_m") * v;
    }

    /** Share of the power uphill on a step: the fourth power of it goes with e / (4 - e), e being what speed gains for power. */
    private double pace(int step, int lap, double uphill) {
        double wind = directed() ? headwind(step, 0, lap) : 0;
        double air = 0.5 * density[step] * (densityByLap.length > 0 ? densityByLap[lap * length.length + step] : 1) * area;
        double share = 1;
        for (int again = 0; again < 2; again++) {
            double wheel = uphill * number("drive_efficiency") * share;
            double low = 0;
            double high = 100;
            for (int i = 0; i < 60; i++) {
                double v = (low + high) / 2;
                if (v * against(v, air, wind, steady(step, lap)) > wheel) {
                    high = v;
                } else {
                    low = v;
                }
            }
            double force = wheel / low;
            double gain = force / (force + low * (2 * air * Math.abs(low + wind) + number("bearing_force_per_speed_n_s_m")));
            share = Math.pow(3 * gain / (4 - gain), 0.25);
        }
        return share;
    }

    private double ride(double uphill, double hour, double whole) {
        double[] paces = new double[length.length * laps];
        for (int i = 0; i < paces.length; i++) {
            paces[i] = pace(i % length.length, windByLap.length > 0 ? i / length.length : 0, uphill);
        }
        double v = number("walking_m_s");
        double time = 0;
        passed.clear();
        passed.put(0.0, 0.0);
        double fourth = 0;
        for (int round = 0; round < laps; round++) {
            double along = 0;
            for (int i = 0; i < length.length; i++) {
                int on = on(i, round);
                double cap = fastest[on];
                if (bend.length > 0 && bend[i] > 0) {
                    cap = Math.min(cap, Math.sqrt(sideways[on] * bend[i]));
                }
                double favoured = Math.max(0, Math.min(1, (gradient[i] - number("walking_favoured_from_gradient"))
                        / (number("walking_favoured_in_full_from_gradient") - number("walking_favoured_from_gradient"))));
                double off = number("walking_m_s") + favoured * (number("balanced_m_s") - number("walking_m_s"));
                if (sharp.length > 0 && sharp[i] > 0) {
                    double cut = likely("tread_of_trails_m") / (1 - Math.cos(Math.toRadians(sharp[i]) / 2));
                    double through = Math.sqrt(sideways[on] * (likely("inside_of_sharp_turns_m") + cut));
                    if (v > through) {
                        time += brakes(v, through);
                        v = through;
                    }
                }
                int pieces = (int) Math.ceil(length[i] / STEP);
                double dx = length[i] / pieces;
                double steady = steady(i, round);
                for (int k = 0; k < pieces; k++) {
                    double power = uphill * paces[round * length.length + i] * (1 + likely("power_lost_by_the_end") * (0.5 - Math.min(1, time / whole)));
                    power = Math.min(most(hour), power);
                    double air = air(i, along, round, whole);
                    double wind = headwind(i, along, round);
                    double drive = power * number("drive_efficiency");
                    double counts = power;
                    double took;
                    if (v > cap) {
                        time += brakes(v, cap);
                        v = cap;
                    }
                    double next = carried(v, dx, drive, air, wind, steady);
                    if (next >= cap && fastest[on] == number("walking_m_s")) {
                        v = fastest[on];
                        took = dx / v;
                    } else if (next >= cap) {
                        took = dx / (0.5 * (v + cap));
                        if (v >= cap) {
                            counts = Math.min(power, Math.max(0, cap * against(cap, air, wind, steady) / number("drive_efficiency")));
                        }
                        v = cap;
                    } else if (next < off && drive < off * against(off, air, wind, steady)) {
                        v = number("walking_m_s");
                        took = dx / v;
                    } else {
                        took = dx / (0.5 * (v + next));
                        v = next;
                    }
                    took += turns[on] / 1000 * dx * turn(v);
                    time += took;
                    fourth += Math.pow(counts, 4) * took;
                    along += dx;
                    passed.put(round * lap + along, time);
                }
            }
        }
        load = Math.pow(fourth / time, 0.25);
        return time;
    }

    /** Speed after so many metres: kinetic energy by the middle of the step. */
    private double carried(double v, double dx, double drive, double air, double wind, double steady) {
        double inertia = mass + number("wheel_inertia_kg");
        double half = Math.sqrt(Math.max(0.04, v * v + dx / inertia * (drive / v - against(v, air, wind, steady))));
        return Math.sqrt(Math.max(0.04, v * v + 2 * dx / inertia * (drive / half - against(half, air, wind, steady))));
    }

    private double brakes(double v, double to) {
        return (v - to) * (v - to) / (2 * number("braking_m_s2") * v);
    }

    private double turn(double v) {
        double lost = Math.max(0, v - number("turn_m_s"));
        return lost * lost / (2 * v) * (1 / number("braking_m_s2") + 1 / number("gathering_m_s2"));
    }
}
