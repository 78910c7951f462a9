package courseworthy.ride;

import courseworthy.rider.Rider;
import java.util.ArrayList;
import java.util.List;

/**
 * What power a rider holds for how long, as a share of the best mean power of an hour.
 *
 * <p>Beyond an hour: a planning band laid through published race and record figures (mean heart rates of ultra-endurance rides:
 * Neumayr and others 2002 to 2004; record power profile: Pinot and Grappe 2014, J Sci Cycling 3(1):26-32; cross-country races: Næss
 * and others 2021, Front. Physiol. 702415). An estimate, not a measurement. Published evidence disagrees, hence the band.
 *
 * <p>From an effort to an hour: a power law with exponent 0.07 in the middle; at the ends the exponent 0.0467, which is what taking
 * 95 % of a 20-minute power means and is held to be too hopeful, and the record profile of Pinot and Grappe, which is linear in the
 * logarithm of time.
 */
public final class Endurance {

    /** Of an hour, s, exact by definition. */
    static final double HOUR = 3600;
    /** Exponents of the power law: middle, hopeful end, and the ends of a fitted one (sources above; the last two are judgement). */
    private static final double EXPONENT = 0.07;
    private static final double HOPEFUL_EXPONENT = 0.0467;
    private static final double LEAST_EXPONENT = 0.04;
    private static final double MOST_EXPONENT = 0.12;
    /** Record profile: share of maximal aerobic power lost for each unit of ln t, and how long that power is held, s. */
    private static final double RECORD_SLOPE = 0.0953;
    private static final double RECORD_HELD = 4.13 * 60;
    /** A measured effort is itself good to this share (power meters and best days differ; common practice, no source). */
    private static final double MEASURED = 0.02;

    /** The planning band: hours, and shares of hour power at its ends and middle (laid through the sources above; judgement). */
    private static final double[] HOURS = {1, 2, 4, 8, 12, 24};
    private static final double[] LOW = {1, 0.85, 0.75, 0.65, 0.58, 0.50};
    private static final double[] MID = {1, 0.895, 0.81, 0.725, 0.665, 0.575};
    private static final double[] HIGH = {1, 0.93, 0.87, 0.80, 0.75, 0.65};
    /** Nobody is planned to ride below this share. */
    private static final double REST = 0.40;

    /**
     * Power falls by this share of its mean for each hour: heart rate fell by about a tenth in 10 h over 27 h of riding (Neumayr 2004, BJSM 38:55)
     * and in 10 h 14 min of a road race (Neumayr 2002, IJSM 23:505); speed by 17 % from one lap of 10 h to the next (Neumayr 2003, BJSM 37:89).
     */
    private static final Range FADE_PER_HOUR = new Range(0.006, 0.012, 0.018);
    private static final double MOST_FADE = 0.16;

    private Endurance() {
    }

    /** Hours of the planning band. */
    public static double[] hours() {
        return HOURS.clone();
    }

    /** Share of hour power held for each of them, the middle of the band. */
    public static double[] shares() {
        return MID.clone();
    }

    /**
     * Share of hour power that can be held for a time as its mean.
     *
     * @param seconds above 0
     */
    public static Range share(double seconds) {
        return new Range(share(seconds, -1), share(seconds, 0), share(seconds, 1));
    }

    /** The same at one place of the band: -1 its low end, 0 its middle, 1 its high end. */
    static double share(double seconds, double place) {
        double hours = seconds / HOUR;
        double mid = seconds < HOUR ? shortShare(seconds, EXPONENT) : interpolated(MID, hours);
        if (place == 0) {
            return mid;
        }
        double hopeful = shortShare(seconds, HOPEFUL_EXPONENT);
        double end = seconds < HOUR ? (place < 0 ? Math.min(mid, hopeful) : Math.max(mid, recordShare(seconds)))
                : interpolated(place < 0 ? LOW : HIGH, hours);
        return mid + Math.abs(place) * (end - mid);
    }

    private static double shortShare(double seconds, double exponent) {
        return Math.pow(Math.max(seconds, Rider.MaximalEffort.SHORTEST) / HOUR, -exponent);
    }

    private static double recordShare(double seconds) {
        return record(Math.max(seconds, Rider.MaximalEffort.SHORTEST)) / record(HOUR);
    }

    /** Record profile: power held for a time as a share of maximal aerobic power. */
    private static double record(double seconds) {
        return 1 - RECORD_SLOPE * Math.log(seconds / RECORD_HELD);
    }

    /** Linear in the logarithm of time, and on beyond the last entry. */
    private static double interpolated(double[] shares, double hours) {
        int i = 0;
        while (i < HOURS.length - 2 && hours > HOURS[i + 1]) {
            i++;
        }
        double part = Math.log(hours / HOURS[i]) / Math.log(HOURS[i + 1] / HOURS[i]);
        return Math.max(REST, shares[i] + (shares[i + 1] - shares[i]) * part);
    }

    /**
     * How much of the mean power is lost from start to finish by tiring, as a share.
     *
     * @param seconds riding time
     */
    public static Range fade(double seconds) {
        Range whole = FADE_PER_HOUR.times(seconds / HOUR);
        double most = Math.min(1, MOST_FADE / whole.mid());
        return whole.times(most);
    }

    /**
     * Best mean power of an hour from best efforts, W, or null where none is of use (shorter than 3 minutes). Of those from 3 minutes to 4
     * hours, where a power law holds, the one nearest to an hour counts; with two or more the exponent of the law is fitted to them, within
     * 0.04 to 0.12. Where all are longer, the shortest counts, by the planning band of {@link #share(double)} turned round; from 4 to
     * 8 h the law gives way to the band evenly in the logarithm of time, mid and ends alike (judgement: neither holds at once).
     */
    public static Range hourPower(List<Rider.MaximalEffort> efforts) {
        List<Rider.MaximalEffort> usable = new ArrayList<>();
        List<Rider.MaximalEffort> lasting = new ArrayList<>();
        for (Rider.MaximalEffort effort : efforts) {
            if (!effort.sprint()) {
                (effort.beyondTheLaw() ? lasting : usable).add(effort);
            }
        }
        if (usable.isEmpty()) {
            return lasting.isEmpty() ? null : fromTheBand(nearestToAnHour(lasting));
        }
        Rider.MaximalEffort nearest = nearestToAnHour(usable);
        double exponent = usable.size() < 2 ? EXPONENT : fitted(usable);
        return hourPower(nearest, exponent);
    }

    private static Range fromTheBand(Rider.MaximalEffort effort) {
        double seconds = effort.seconds();
        Range held = share(seconds);
        double part = Math.min(1, Math.log(seconds / Rider.MaximalEffort.LONGEST_BY_LAW) / Math.log(2));
        double mid = effort.watts() / between(part, shortShare(seconds, EXPONENT), held.mid());
        double low = effort.watts() / between(part, shortShare(seconds, HOPEFUL_EXPONENT), held.high());
        double high = effort.watts() / between(part, recordShare(seconds), held.low());
        return new Range(low, mid, high).plus(Range.within(0, MEASURED * mid));
    }

    private static double between(double part, double from, double to) {
        return from + part * (to - from);
    }

    private static Range hourPower(Rider.MaximalEffort effort, double exponent) {
        double mid = effort.watts() / Math.pow(effort.seconds() / HOUR, -exponent);
        double hopeful = effort.watts() / Math.pow(effort.seconds() / HOUR, -HOPEFUL_EXPONENT);
        double byRecords = effort.watts() * record(HOUR) / record(effort.seconds());
        Range byDuration = Range.around(hopeful, mid, byRecords);
        return byDuration.plus(Range.within(0, MEASURED * mid));
    }

    private static Rider.MaximalEffort nearestToAnHour(List<Rider.MaximalEffort> efforts) {
        Rider.MaximalEffort best = efforts.get(0);
        for (Rider.MaximalEffort effort : efforts) {
            if (Math.abs(Math.log(effort.seconds() / HOUR)) < Math.abs(Math.log(best.seconds() / HOUR))) {
                best = effort;
            }
        }
        return best;
    }

    /** Least squares of ln P on ln t. */
    private static double fitted(List<Rider.MaximalEffort> efforts) {
        double n = efforts.size();
        double sx = 0;
        double sy = 0;
        double sxx = 0;
        double sxy = 0;
        for (Rider.MaximalEffort effort : efforts) {
            double x = Math.log(effort.seconds());
            double y = Math.log(effort.watts());
            sx += x;
            sy += y;
            sxx += x * x;
            sxy += x * y;
        }
        double spread = n * sxx - sx * sx;
        double exponent = spread <= 0 ? EXPONENT : -(n * sxy - sx * sy) / spread;
        return Math.max(LEAST_EXPONENT, Math.min(MOST_EXPONENT, exponent));
    }
}
