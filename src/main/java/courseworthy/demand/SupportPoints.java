package courseworthy.demand;

import courseworthy.event.Event;
import courseworthy.event.Pit;
import courseworthy.ride.Range;
import courseworthy.ride.RideEstimate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * Where bottles can be filled, and what that asks to be carried. Start, finish and, on a course of laps, each passage of start and finish
 * count. Where no support is written on a single lap, gaps are unknown, and the start is left with water for two hours.
 *
 * <p>Water to carry over a gap: so much of the {@linkplain SweatRate sweat} of the slow estimate that the loss since the start stays within
 * {@linkplain FluidBalance 2 % of body mass}, at the least what thirst asks for, with a reserve of 15 %, and never less than a small bottle
 * (both practice). This is water to have, not to drink: thirst leads.
 */
final class SupportPoints {

    /** A small bottle, L: carried over any gap, and it washes a cut (practice). */
    private static final double SMALL_BOTTLE = 0.5;
    private static final double HOUR = 3600;
    /** Where nothing is written of taps one is taken to be reached within this, s (practice). */
    private static final double UNKNOWN_TAP = 2 * HOUR;
    /** Places nearer to each other than this are one, m. */
    private static final double APART = 1;
    private static final double STANDARD_KELVIN = 288.15;
    private static final double ICE_POINT = 273.15;

    private final SurveyAssumptions on;
    private final RideEstimate estimate;
    private final WeatherDemands weather;
    private final SweatRate sweat;
    private final double slower;
    private final List<SupportGap> gaps;

    SupportPoints(SurveyAssumptions on, RideEstimate estimate, WeatherDemands weather) {
        this.on = on;
        this.estimate = estimate;
        this.weather = weather;
        sweat = new SweatRate(on.rider.sweatRate(), estimate.meanPower());
        slower = Math.max(1, estimate.riding().high() / estimate.riding().mid());
        gaps = on.event.supportKnown() || on.laps > 1 ? gaps(places()) : List.of();
    }

    /**
     * From one place to fill bottles to the next.
     *
     * @param from  m from the start over all laps
     * @param to    m from the start over all laps
     * @param time  riding, the middle estimate as low end and the slow one as middle, s
     * @param carry water to leave with, L
     */
    record SupportGap(double from, double to, Range time, Range carry) {
    }

    /** Notes down what is assumed of temperature and taps. */
    void assume() {
        if (on.rider.sweatRate() == null && weather.temperature(0, 0) == null) {
            on.assume("temperature, for the water to carry", SurveyAssumptions.text(SweatRate.UNKNOWN, "C", 0));
        }
        if (!on.event.supportKnown()) {
            on.assume("places to fill bottles", gaps.isEmpty() ? "one within the first two hours" : "start and finish of each lap");
        }
    }

    /** The longest gap, m; null where places to fill bottles are not known. */
    Double longest() {
        return gaps.isEmpty() ? null : Double.valueOf(gaps.stream().mapToDouble(gap -> gap.to() - gap.from()).max().orElseThrow());
    }

    /** The longest riding time over a gap, s; null where places to fill bottles are not known. */
    Range longestTime() {
        Range longest = gaps.isEmpty() ? null : Range.exact(0);
        for (SupportGap gap : gaps) {
            longest = gap.time().mid() > longest.mid() ? gap.time() : longest;
        }
        return longest;
    }

    /** The most water that a gap asks for, L; null where places to fill bottles are not known. */
    Range mostWater() {
        Range most = gaps.isEmpty() ? null : Range.exact(0);
        for (SupportGap gap : gaps) {
            Range other = gap.carry();
            most = new Range(Math.max(most.low(), other.low()), Math.max(most.mid(), other.mid()), Math.max(most.high(), other.high()));
        }
        return most;
    }

    /** Water to start with, L, whether or not it is known where the next is. */
    Range waterToStartWith() {
        return gaps.isEmpty() ? toAnUnknownTap() : gaps.get(0).carry();
    }

    /** The gaps in order; empty where places to fill bottles are not known. */
    List<SupportGap> all() {
        return gaps;
    }

    /** Water to leave the start with, L; null where that is not known. */
    Range atTheStart() {
        return gaps.isEmpty() ? null : gaps.get(0).carry();
    }

    /** Sweat lost in an hour, L; of a temperature that may be null. */
    Range lost(Double temperature) {
        return sweat.at(temperature);
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
        for (Pit pit : on.event.plan().pits()) {
            for (int i = 0; pit.bottles() && i < on.laps && pit.at() < lap; i++) {
                places.add(i * lap + pit.at());
            }
        }
        Collections.sort(places);
        return places;
    }

    /** Water to start with where no tap is known: for the first two hours of the slow estimate, or all of a shorter ride. */
    private Range toAnUnknownTap() {
        double[] sum = new double[3];
        WaterLoss loss = new WaterLoss();
        double slow = 0;
        double before = 0;
        for (int step = 0; step < estimate.way().size() && slow < UNKNOWN_TAP; step++) {
            double after = estimate.arrival(0, step);
            double taken = Math.min(after - before, (UNKNOWN_TAP - slow) / slower);
            loss.add(sum, after, taken, estimate.way().height(step));
            slow += taken * slower;
            before = after;
        }
        double hours = slow / HOUR;
        FluidBalance[] balance = {new FluidBalance(on.riderMass.mid()), new FluidBalance(on.riderMass.mid()), new FluidBalance(on.riderMass.mid())};
        return atLeastABottle(Range.around(balance[0].have(sum[0] * slower, hours), balance[1].have(sum[1] * slower, hours),
                balance[2].have(sum[2] * slower, hours)).times(FluidBalance.RESERVE));
    }

    private List<SupportGap> gaps(List<Double> places) {
        List<SupportGap> out = new ArrayList<>();
        WaterLoss loss = new WaterLoss();
        FluidBalance least = new FluidBalance(on.riderMass.mid());
        FluidBalance likely = new FluidBalance(on.riderMass.mid());
        FluidBalance most = new FluidBalance(on.riderMass.mid());
        double from = 0;
        for (double to : places) {
            if (to - from <= APART) {
                continue;
            }
            Range lost = loss.until(to);
            double mid = estimate.arrivalAt(to) - estimate.arrivalAt(from);
            double slow = mid * slower;
            Range carry = Range.around(least.have(lost.low(), mid / HOUR), likely.have(lost.mid() * slower, slow / HOUR),
                    most.have(lost.high() * slower, slow / HOUR)).times(FluidBalance.RESERVE);
            out.add(new SupportGap(from, to, new Range(mid, slow, slow), atLeastABottle(carry)));
            from = to;
        }
        return out;
    }

    private static Range atLeastABottle(Range carry) {
        return new Range(Math.max(SMALL_BOTTLE, carry.low()), Math.max(SMALL_BOTTLE, carry.mid()), Math.max(SMALL_BOTTLE, carry.high()));
    }

    /** Adds sweat up along the way, so that heat counts where and when it is met. */
    private final class WaterLoss {
        private int at;
        private double from;
        private double before;

        /** Sweat since the last place until another, L, over the middle time; of the temperatures that the slow estimate meets. */
        Range until(double place) {
            double[] sum = new double[3];
            int size = estimate.way().size();
            while (from < place && at < size * on.laps) {
                int lap = at / size;
                int step = at % size;
                double end = lap * estimate.way().length() + estimate.way().along(step);
                double to = Math.min(place, end);
                double after = end <= place ? estimate.arrival(lap, step) : estimate.arrivalAt(place);
                add(sum, after, after - before, estimate.way().height(step));
                before = after;
                from = to;
                at += end <= place ? 1 : 0;
            }
            return new Range(sum[0], sum[1], sum[2]);
        }

        /**
         * Warm air is thinner, which makes the ride by the balance of powers a little faster, by a third of density or so. Heat takes more than
         * that from the legs, so the time is made longer here by absolute temperature (practice), and water never falls with heat.
         */
        private void add(double[] sum, double riding, double seconds, double height) {
            Double temperature = weather.after(riding * slower, height);
            Range rate = sweat.at(temperature);
            double warm = temperature == null ? 1 : (temperature + ICE_POINT) / STANDARD_KELVIN;
            double hours = Math.max(0, seconds) / HOUR * warm;
            sum[0] += rate.low() * hours;
            sum[1] += rate.mid() * hours;
            sum[2] += rate.high() * hours;
        }
    }
}
