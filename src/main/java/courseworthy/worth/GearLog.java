package courseworthy.worth;

import courseworthy.course.Stretch;
import courseworthy.ride.RideEstimate;
import courseworthy.ride.RideTrace;
import courseworthy.worth.RoadBook.EffortLevel;
import courseworthy.worth.RoadBook.GearUse;
import java.util.List;

/**
 * How each step of an estimated ride is ridden: in which gear, coasting, on foot, or on a ferry. A step counts as coasted where next to nothing is
 * pedalled on it.
 */
final class GearLog {

    private final RideEstimate estimate;
    private final List<Stretch> stretches;
    private final List<Gear> gears;
    private final GearShifting shifting;

    /** @param drivetrain null where none is known: then only what is pedalled is known */
    GearLog(RideEstimate estimate, List<Stretch> stretches, CadenceAnalysis cadence, Drivetrain drivetrain) {
        this.estimate = estimate;
        this.stretches = stretches;
        gears = drivetrain == null ? List.of() : drivetrain.used();
        shifting = drivetrain == null ? null : cadence.shifting(gears);
    }

    /** How the part of a lap between two distances from its start is ridden for most of its time, all laps together. */
    GearUse between(double from, double to) {
        double[] seconds = new double[gears.size()];
        double pedalled = 0;
        double coasted = 0;
        double walked = 0;
        double ferried = 0;
        RideTrace trace = estimate.trace();
        int size = estimate.way().size();
        for (int step = estimate.stepAt(from); step < size && estimate.way().along(step) - estimate.way().length(step) < to; step++) {
            double share = share(step, from, to);
            for (int at = step; at < trace.size(); at += size) {
                double onFoot = trace.onFoot(at) * share;
                double riding = trace.seconds(at) * share - onFoot;
                walked += onFoot;
                if (stretches.get(estimate.way().stretch(step)).isFerried()) {
                    ferried += riding;
                } else if (trace.power(at) < CadenceAnalysis.PEDALLED) {
                    coasted += riding;
                } else {
                    pedalled += riding;
                    if (shifting != null) {
                        seconds[shifting.at(trace.speed(at))] += riding;
                    }
                }
            }
        }
        double most = Math.max(Math.max(walked, ferried), Math.max(pedalled, coasted));
        EffortLevel effort = pedalled == most ? EffortLevel.PEDALLED : coasted == most ? EffortLevel.COASTING : walked == most ? EffortLevel.ON_FOOT : EffortLevel.BY_FERRY;
        return new GearUse(effort, effort == EffortLevel.PEDALLED ? longest(seconds) : null);
    }

    /** Share of a step that lies between two distances. */
    private double share(int step, double from, double to) {
        double end = estimate.way().along(step);
        double length = estimate.way().length(step);
        return Math.max(0, Math.min(to, end) - Math.max(from, end - length)) / length;
    }

    /** Of gears in use as long the easier. */
    private Gear longest(double[] seconds) {
        int best = -1;
        for (int i = 0; i < seconds.length; i++) {
            best = best < 0 ? i : seconds[i] > seconds[best] ? i : best;
        }
        return best < 0 ? null : gears.get(best);
    }
}
