package courseworthy.demand;

import courseworthy.ride.DiscretisedCourse;
import courseworthy.ride.DragArea;
import courseworthy.ride.PowerBalance;
import courseworthy.ride.Range;
import courseworthy.ride.RideEstimate;
import courseworthy.ride.SpeedLimits;

/**
 * What both brakes together turn into heat on the hardest quarter of an hour of the way: at the speed the ground lets run, what gravity gives
 * less what rolling and air take, m g (sin - Crr cos) v - 1/2 rho CdA v³ (the power balance of Martin 1998 with its sign turned).
 *
 * <p>A quarter of an hour, since cooling and not the rotor's store decides a long descent: the heat test of ISO 4210-2, 4.6.9 (as adopted
 * nationally in 2018) drags a brake for about so long. Its 60 to 115 N at the 12.5 km/h of the sister standard's rig are 208 to 399 W.
 *
 * <p>How long a step takes does not hang on the rider's mass, so that a heavier rider never comes out with less: down, the ground's cap is
 * ridden; up and on the flat {@value #BETWEEN} m/s (practice; the brakes cool there). Speed that is braked away before bends is not counted:
 * a stop from 50 km/h is 10 kJ at 100 kg, as much as 10 m of descent. Nor does it hang on skill: the speed is that of a rider of good skill,
 * since whoever is slower down drags the brakes instead, and is not to come out with smaller ones.
 */
final class BrakeHeat {

    /** The time over which heat is summed up, s. */
    private static final double OVER = 15 * 60;
    private static final double BETWEEN = 4;

    private final SurveyAssumptions on;
    private final RideEstimate estimate;
    private final DiscretisedCourse way;
    private final int steps;
    private final double pace;

    BrakeHeat(SurveyAssumptions on, RideEstimate estimate) {
        this.on = on;
        this.estimate = estimate;
        this.way = estimate.way();
        this.pace = SpeedLimits.pace(on.skill);
        this.steps = way.size() * Math.min(2, on.laps);
    }

    /** Mean power, W; null where no descents are known. */
    Range hardest() {
        if (on.course.climbing() == null) {
            return null;
        }
        double least = Double.MAX_VALUE;
        double most = 0;
        for (int end = 0; end < 3; end++) {
            least = Math.min(least, hardest(end, on.startLineMass.low(), true));
            most = Math.max(most, hardest(end, on.startLineMass.high(), false));
        }
        return Range.around(least, hardest(1, on.startLineMass.mid(), null), most);
    }

    private static double end(Range range, int end) {
        return end == 0 ? range.low() : end == 1 ? range.mid() : range.high();
    }

    /** @param slow whether rolling holds back at its most, its least, or, for null, its middle */
    private double hardest(int cap, double mass, Boolean slow) {
        double[] time = new double[steps + 1];
        double[] heat = new double[steps + 1];
        double dragArea = DragArea.alone(on.kind, on.riderMass.mid()).mid();
        for (int i = 0; i < steps; i++) {
            int step = i % way.size();
            Range rolling = estimate.rolling(way.ground(step));
            double crr = slow == null ? rolling.mid() : slow ? rolling.high() : rolling.low();
            double speed = speed(step, cap);
            double seconds = way.length(step) / speed;
            double force = PowerBalance.of(mass, dragArea, crr).force(speed, 0, way.gradient(step), estimate.density());
            time[i + 1] = time[i] + seconds;
            heat[i + 1] = heat[i] + (way.gradient(step) < 0 ? Math.max(0, -force) * speed * seconds : 0);
        }
        return mostOver(time, heat) / OVER;
    }

    private double speed(int step, int cap) {
        double ground = end(estimate.cap(way.ground(step)), cap) / pace;
        if (way.gradient(step) >= 0) {
            return Math.min(ground, BETWEEN);
        }
        double bend = Math.sqrt(end(estimate.sideways(way.ground(step)), cap) * way.radius(step)) / pace;
        return Math.min(ground, bend);
    }

    /** The most that is added to a sum, straight between its nodes, in any such time: begun or ended at one of them. */
    private static double mostOver(double[] time, double[] heat) {
        double most = 0;
        int begin = 0;
        int end = 0;
        int last = time.length - 1;
        for (int i = 0; i <= last; i++) {
            while (begin < last && time[begin + 1] <= time[i] - OVER) {
                begin++;
            }
            while (end < last && time[end] < time[i] + OVER) {
                end++;
            }
            most = Math.max(most, heat[i] - at(time, heat, begin, Math.max(0, time[i] - OVER)));
            most = Math.max(most, at(time, heat, Math.max(0, end - 1), Math.min(time[last], time[i] + OVER)) - heat[i]);
        }
        return most;
    }

    private static double at(double[] time, double[] heat, int node, double when) {
        if (node >= time.length - 1 || time[node + 1] <= time[node]) {
            return heat[node];
        }
        double part = Math.max(0, Math.min(1, (when - time[node]) / (time[node + 1] - time[node])));
        return heat[node] + part * (heat[node + 1] - heat[node]);
    }
}
