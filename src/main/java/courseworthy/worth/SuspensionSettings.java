package courseworthy.worth;

import courseworthy.call.Call;
import courseworthy.demand.DayDemands;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;

/**
 * Suspension settings to start from, as a mechanic sets them; the maker's chart leads. Parts that the bike does not have are null.
 *
 * @param front       sag of the fork
 * @param rear        sag of the rear
 * @param rebound     of the fork
 * @param compression of the fork
 * @param shockRebound of the shock
 * @param shockCompression of the shock
 * @param lockout     how it is firmed
 */
public record SuspensionSettings(Sag front, Sag rear, Dial rebound, Dial compression, Dial shockRebound, Dial shockCompression, String lockout) {

    /**
     * Sag in full kit.
     *
     * @param share  of the travel
     * @param travel at the axle, m
     * @param stroke of the shock, m; null for a fork or where not written
     */
    public record Sag(double share, double travel, Double stroke) {

        /** Travel used when standing still, m. */
        public double sunk() {
            return share * travel;
        }

        /** How far the ring on the shock moves, m, as if the linkage were even throughout; null where the stroke is not written. */
        public Double atTheShock() {
            return stroke == null ? null : Double.valueOf(share * stroke);
        }
    }

    /**
     * A damper's dial.
     *
     * @param share clicks from closed over all clicks: 0 closed, 1 open
     * @param range clicks from closed to open; null where not written
     */
    public record Dial(double share, Integer range) {

        /** Clicks from closed; null where the range is not written. */
        public Integer clicks() {
            return range == null ? null : Integer.valueOf((int) Math.round(share * range));
        }
    }

    static SuspensionSettings of(Call call) {
        DayDemands day = call.demands().estimated().day();
        Sag front = sag(call, Topics.FRONT_SAG, Topics.FORK_TRAVEL, null);
        Sag rear = sag(call, Topics.REAR_SAG, Topics.REAR_TRAVEL, day.shockStroke());
        Double rebound = PressureSettings.base(call, Topics.REBOUND);
        Double compression = PressureSettings.base(call, Topics.COMPRESSION);
        Long lockout = call.on(Topics.LOCKOUT).value();
        if (front == null && rear == null) {
            return null;
        }
        return new SuspensionSettings(front, rear, dial(rebound, day.clicks(true, true)), dial(compression, day.clicks(true, false)),
                rear == null ? null : dial(rebound, day.clicks(false, true)), rear == null ? null : dial(compression, day.clicks(false, false)),
                lockout == null ? null : Topics.LOCKOUT.text(lockout));
    }

    private static Sag sag(Call call, Topic sag, Topic travel, Double stroke) {
        Double share = PressureSettings.base(call, sag);
        Double length = PressureSettings.base(call, travel);
        return share == null || length == null ? null : new Sag(share, length, stroke);
    }

    private static Dial dial(Double share, Integer range) {
        return share == null ? null : new Dial(share, range);
    }
}
