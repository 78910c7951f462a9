package courseworthy.demand;

import courseworthy.event.Event;
import courseworthy.ride.Estimate;
import courseworthy.ride.Range;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * Where bottles can be filled, and what that asks to be carried. Start, finish and, on a course of laps, each passage of start and finish
 * count. Where no support is written on a single lap, gaps are unknown.
 *
 * <p>Water to carry: between 0.4 and 0.8 L an hour, the usual starting point (American College of Sports Medicine position stand on
 * fluid replacement, 2007, from memory), by temperature and effort, never above the sweat lost, which is estimated by temperature and
 * effort (practice) unless it is known; with a reserve of 15 %. This is water to have, not to drink: thirst leads.
 */
final class Support {

    private static final double LEAST_PER_HOUR = 0.4;
    private static final double MOST_PER_HOUR = 0.8;
    private static final double USUAL_PER_HOUR = 0.6;
    /** Share of the sweat lost that it is sensible to replace on the way: the rest is within 2 % of body mass on rides of a day. */
    private static final double REPLACED = 0.6;
    private static final double RESERVE = 1.15;
    /** Sweat lost at 0 °C and 200 W, L/h, and what each degree adds (practice; people differ by a third either way). */
    private static final double SWEAT_COLD = 0.3;
    private static final double SWEAT_PER_DEGREE = 0.035;
    private static final double SWEAT_AT_WATTS = 200;
    private static final Range PEOPLE_DIFFER = new Range(0.67, 1, 1.33);

    private final Premises on;
    private final Estimate estimate;
    private final Weathering weather;

    Support(Premises on, Estimate estimate, Weathering weather) {
        this.on = on;
        this.estimate = estimate;
        this.weather = weather;
    }

    void write(Ledger ledger) {
        if (!on.event.supportKnown() && on.laps < 2) {
            return;
        }
        if (!on.event.supportKnown()) {
            ledger.assume("places to fill bottles", "start and finish of each lap");
        }
        List<Double> places = places();
        double gap = 0;
        Range hours = Range.exact(0);
        Range water = Range.exact(0);
        for (int i = 1; i < places.size(); i++) {
            double from = places.get(i - 1);
            double to = places.get(i);
            gap = Math.max(gap, to - from);
            Range time = time(from, to);
            hours = time.mid() > hours.mid() ? time : hours;
            Range carried = water(from, to, time);
            water = carried.mid() > water.mid() ? carried : water;
        }
        ledger.exact(Measure.SUPPORT_GAP, gap);
        ledger.range(Measure.SUPPORT_GAP_HOURS, hours);
        ledger.range(Measure.WATER_OVER_THE_HOTTEST_GAP, water);
    }

    /** Distances from the start where bottles can be filled, start and finish among them, rising; empty where they are not known. */
    List<Double> fillings() {
        return on.event.supportKnown() || on.laps > 1 ? places() : List.of();
    }

    /** Water to leave with for a gap, L. */
    Range water(double from, double to) {
        return water(from, to, time(from, to));
    }

    private List<Double> places() {
        double lap = estimate.way().length();
        double whole = lap * on.laps;
        List<Double> places = new ArrayList<>();
        for (int i = 0; i <= on.laps; i++) {
            places.add(i * lap);
        }
        for (Event.Support point : on.event.support()) {
            if (point.water() && point.at() > 0 && point.at() < whole) {
                places.add(point.at());
            }
        }
        Collections.sort(places);
        return places;
    }

    /** Riding time over a gap, s: the slow estimate, with the middle as low end. */
    private Range time(double from, double to) {
        double mid = estimate.arrivalAt(to) - estimate.arrivalAt(from);
        double slow = Math.max(mid, mid * estimate.riding().high() / estimate.riding().mid());
        return new Range(mid, slow, slow);
    }

    private Range water(double from, double to, Range time) {
        double middle = 0.5 * (estimate.arrivalAt(from) + estimate.arrivalAt(to));
        double half = (from + to) / 2 % estimate.way().length();
        Double temperature = weather.temperature(middle, estimate.way().height(estimate.stepAt(half)));
        Range rate = rate(temperature);
        double fast = rate.low() * time.low();
        return Range.around(fast, rate.mid() * time.mid(), rate.high() * time.high()).times(RESERVE / 3600);
    }

    /** Sweat lost in an hour, L: what is known of the rider, else an estimate by temperature and effort; null where neither is. */
    Range lost(Double temperature) {
        return on.rider.sweatRate() != null ? Range.exact(on.rider.sweatRate())
                : temperature == null ? null : PEOPLE_DIFFER.times(sweat(temperature));
    }

    /** Water an hour, L. */
    Range rate(Double temperature) {
        if (on.rider.sweatRate() != null) {
            double lost = on.rider.sweatRate();
            return new Range(Math.min(LEAST_PER_HOUR, REPLACED * lost), REPLACED * lost, lost);
        }
        if (temperature == null) {
            return new Range(LEAST_PER_HOUR, USUAL_PER_HOUR, MOST_PER_HOUR);
        }
        double lost = sweat(temperature);
        return new Range(drunk(lost * PEOPLE_DIFFER.low()), drunk(lost), drunk(lost * PEOPLE_DIFFER.high()));
    }

    private double sweat(double temperature) {
        double still = SWEAT_COLD + SWEAT_PER_DEGREE * Math.max(0, temperature);
        return still * Math.sqrt(Math.max(50, estimate.meanPower()) / SWEAT_AT_WATTS);
    }

    private static double drunk(double lost) {
        double wanted = Math.max(LEAST_PER_HOUR, Math.min(MOST_PER_HOUR, REPLACED * lost));
        return Math.min(lost, wanted);
    }
}
