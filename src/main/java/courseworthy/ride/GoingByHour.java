package courseworthy.ride;

import courseworthy.course.Ground;
import courseworthy.course.ground.RainRules;
import java.util.HashMap;
import java.util.Map;

/**
 * How wet each ground is as the rain of a forecast falls on it, by the table of {@link RainRules}. Where the going is given it is that at the start;
 * else all ground is dry when the hours begin.
 */
final class GoingByHour {

    /** How finely time is cut, s (computing). */
    private static final double STEP = 300;
    /** s, exact by definition. */
    private static final double HOUR = 3600;

    private final HourlyWeather weather;
    private final Integer atTheStart;
    private final Map<RainRules.Rule, int[]> byRule = new HashMap<>();

    /** @param weather which has rain */
    GoingByHour(HourlyWeather weather) {
        this.weather = weather;
        this.atTheStart = weather.going();
    }

    /**
     * How wet a ground is: 0 dry, 1 damp, 2 wet.
     *
     * @param seconds from the start; after a day as after a day of the last hour's weather
     */
    int wetness(Ground ground, double seconds) {
        int[] by = byRule.computeIfAbsent(RainRules.shipped().of(ground), this::worked);
        return by[(int) Math.max(0, Math.min(by.length - 1, seconds / STEP))];
    }

    private int[] worked(RainRules.Rule rule) {
        int[] out = new int[(int) ((Math.max(0, weather.lastBegins()) + 24 * HOUR) / STEP)];
        double water = rule.water(atTheStart == null ? 0 : atTheStart);
        for (double now = atTheStart == null ? weather.begins() : 0; now < 0; now += STEP) {
            water = rule.after(water, weather.rain(now), Math.min(STEP, -now) / HOUR);
        }
        for (int i = 0; i < out.length; i++) {
            out[i] = rule.wetness(water);
            water = rule.after(water, weather.rain(i * STEP), STEP / HOUR);
        }
        return out;
    }
}
