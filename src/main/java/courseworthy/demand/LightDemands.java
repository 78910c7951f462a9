package courseworthy.demand;

import courseworthy.ride.Range;
import courseworthy.ride.RideEstimate;
import org.shredzone.commons.suncalc.SunTimes.Twilight;

/**
 * How much of the ride is light and how much dark; all null where date or place are not known. Times are of the slow estimate, with the middle
 * estimate at the low end; where the start is not written, also for earlier and later ones.
 *
 * @param civil   light by civil dawn and dusk
 * @param dark    time between civil dusk and dawn, s
 * @param sunless time between sunset and sunrise, s
 * @param toSpare time from the end of the ride to sunset, s
 * @param slow    the slow estimate, s
 */
record LightDemands(Daylight civil, Range dark, Range sunless, Range toSpare, double slow) {

    static LightDemands of(SurveyAssumptions on, RideEstimate estimate) {
        double slow = estimate.total().high();
        if (on.midnight() == null) {
            return new LightDemands(null, null, null, null, slow);
        }
        Daylight sun = light(on, slow, 0, Daylight.SUN);
        Daylight civil = light(on, slow, 0, Daylight.CIVIL);
        Range toSpare = toSpare(sun, estimate);
        Range sunless = without(sun, estimate);
        Range dark = without(civil, estimate);
        if (!on.startKnown) {
            for (int shift : new int[] {-WeatherDemands.START_OFF, WeatherDemands.START_OFF}) {
                Daylight other = light(on, slow, shift, Daylight.SUN);
                toSpare = wider(toSpare, toSpare(other, estimate));
                sunless = wider(sunless, without(other, estimate));
                dark = wider(dark, without(light(on, slow, shift, Daylight.CIVIL), estimate));
            }
        }
        return new LightDemands(civil, dark, sunless, toSpare, slow);
    }

    boolean known() {
        return civil != null;
    }

    /** The dark as a share of the slow estimate. */
    Range darkShare() {
        return known() ? new Range(dark.low() / slow, dark.mid() / slow, Math.min(1, dark.high() / slow)) : null;
    }

    private static Range without(Daylight light, RideEstimate estimate) {
        double slow = light.darkUntil(estimate.total().high());
        return Range.around(light.darkUntil(estimate.total().mid()), slow, slow);
    }

    private static Range toSpare(Daylight light, RideEstimate estimate) {
        double slow = light.lightLeft(estimate.total().high());
        return Range.around(slow, slow, light.lightLeft(estimate.total().mid()));
    }

    private static Range wider(Range range, Range other) {
        return new Range(Math.min(range.low(), other.low()), range.mid(), Math.max(range.high(), other.high()));
    }

    private static Daylight light(SurveyAssumptions on, double lasting, int shift, Twilight edge) {
        return new Daylight(on.midnight().plusSeconds(on.start + shift), lasting, on.course.start(), edge);
    }
}
