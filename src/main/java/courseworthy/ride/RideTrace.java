package courseworthy.ride;

/** One ride step by step: laps one after the other, the steps of {@link RideEstimate#way()} within each. All from the start. */
public final class RideTrace {

    private final DiscretisedCourse way;
    private final int laps;
    private final double[] arrival;
    private final double[] power;
    private final double[] onFoot;

    RideTrace(DiscretisedCourse way, int laps, double[] arrival, double[] power, double[] onFoot) {
        this.way = way;
        this.laps = laps;
        this.arrival = arrival;
        this.power = power;
        this.onFoot = onFoot;
    }

    /** Steps of all laps. */
    public int size() {
        return arrival.length;
    }

    public int laps() {
        return laps;
    }

    /** The step of the way that a step of the ride is on. */
    public int step(int at) {
        return at % way.size();
    }

    /** Distance from the start to the end of a step, m. */
    public double along(int at) {
        return at / way.size() * way.length() + way.along(at % way.size());
    }

    /** Riding time to the end of a step, s. */
    public double arrival(int at) {
        return arrival[at];
    }

    /** Time on a step, s. */
    public double seconds(int at) {
        return arrival[at] - (at == 0 ? 0 : arrival[at - 1]);
    }

    /** Mean speed on a step, m/s. */
    public double speed(int at) {
        return way.length(at % way.size()) / seconds(at);
    }

    /** Mean power on the pedals on a step, W; coasting, braking and walking count as none. */
    public double power(int at) {
        return power[at];
    }

    /** Of the time on a step what is walked, s. */
    public double onFoot(int at) {
        return onFoot[at];
    }

    /** Of the riding time what is walked, s. */
    double walked() {
        double sum = 0;
        for (double each : onFoot) {
            sum += each;
        }
        return sum;
    }

    /** Riding time of the whole, s. */
    public double total() {
        return arrival.length == 0 ? 0 : arrival[arrival.length - 1];
    }

    /** Riding time to a distance from the start over all laps, s. */
    public double arrivalAt(double distance) {
        int low = 0;
        int high = arrival.length - 1;
        while (low < high) {
            int between = (low + high) >>> 1;
            if (along(between) < distance) {
                low = between + 1;
            } else {
                high = between;
            }
        }
        double length = way.length(step(low));
        double part = Math.max(0, Math.min(1, 1 - (along(low) - distance) / length));
        return arrival[low] - seconds(low) * (1 - part);
    }
}
