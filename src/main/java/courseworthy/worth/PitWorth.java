package courseworthy.worth;

import courseworthy.ride.Range;

/**
 * What something that waits in a pit is worth on a course, by the tool's own estimate of the ride.
 *
 * @param wet      what its tyres are worth where it turns wet; null where they are those of the bike
 * @param repair   what it is worth after a flat that no plug holds; null where it is not taken for that
 * @param perMud   what each kilogram of mud that is left behind saves a lap, s; null where the bike is not changed
 * @param washing  what the helper has to do to the other bike on each lap, s; null where the bike is not changed
 * @param lap      how long a lap takes, s
 */
public record PitWorth(Wet wet, RepairTime repair, Range perMud, Range washing, Range lap) {

    /**
     * Tyres for the wet against those of the bike, on wet ground.
     *
     * @param rolling what they save a lap by rolling, drag and mass, s; below 0 where they are slower
     * @param lost    what the wet takes a lap from the pace on descents and in bends, s: the most that grip can give back
     * @param share   of that which they have to give back to pay for the exchange over all laps that are left after the first; above 1 where they cannot
     * @param lastLap at the end of which a change can still pay, if they gave back all of it; 0 where it never can
     */
    public record Wet(Range rolling, Range lost, double share, int lastLap) {

        /** Whether they can pay for the exchange by time at all. */
        public boolean canPay() {
            return lastLap > 0 && share <= 1;
        }
    }

    /**
     * Another wheel against a tube.
     *
     * @param tube   a stop to fit one, s
     * @param saved  what the wheel saves at the pit itself, s; 0 where it is not quicker
     * @param within m on foot to the pit within which the wheel is quicker; 0 where it never is
     */
    public record RepairTime(Range tube, double saved, double within) {
    }

    /** Whether the helper has the other bike washed while a lap is ridden. */
    public boolean isWashedEveryLap() {
        return washing.mid() < lap.mid();
    }

    /** How much lighter a clean bike has to be to pay for a change over some laps, kg. @param exchange s; @param laps over which the mud would stay on */
    public double payingMass(Range exchange, int laps) {
        return exchange.mid() / (perMud.mid() * laps);
    }
}
