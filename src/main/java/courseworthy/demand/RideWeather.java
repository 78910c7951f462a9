package courseworthy.demand;

import courseworthy.event.WeatherHour;
import courseworthy.ride.HourlyConditions;
import courseworthy.ride.HourlyWeather;
import courseworthy.ride.RideEstimate;
import courseworthy.ride.RideTrace;

/** The weather that the rider of the middle estimate meets, stops spread evenly. */
final class RideWeather {

    private final RideEstimate estimate;
    private final HourlyWeather weather;
    private final HourlyConditions conditions;

    RideWeather(RideEstimate estimate) {
        this.estimate = estimate;
        weather = estimate.basis().weather().hourly();
        conditions = estimate.conditions();
    }

    /** The weather from one moment to another, s from the start; null where none is forecast by the hour. */
    HourWeather between(double from, double to) {
        if (weather == null) {
            return null;
        }
        double direction = weather.hasWind() && weather.hasDirection() ? Math.toDegrees(weather.meanFrom(from, to)) : Double.NaN;
        int[] goings = goings(from, to);
        double headwind = headwind(from, to);
        return new HourWeather(weather.hasWind() ? Double.valueOf(weather.meanWind(from, to)) : null,
                weather.hasGusts() ? Double.valueOf(weather.most(from, to - 1, WeatherHour::gust)) : null, Double.isNaN(direction) ? null : direction,
                Double.isNaN(headwind) ? null : headwind, weather.hasRain() ? Double.valueOf(weather.rainBetween(from, to)) : null,
                goings == null ? null : goings[0], goings == null ? null : goings[1]);
    }

    /** Driest and wettest; null where no rain is forecast by the hour, or nothing is ridden then. */
    private int[] goings(double from, double to) {
        int[] out = {2, 0};
        RideTrace trace = estimate.trace();
        double pauses = pauses();
        for (int at = 0; weather.hasRain() && at < trace.size(); at++) {
            double middle = (trace.arrival(at) - trace.seconds(at) / 2) * pauses;
            if (middle >= from && middle < to) {
                out[0] = Math.min(out[0], conditions.wetness(at));
                out[1] = Math.max(out[1], conditions.wetness(at));
            }
        }
        return out[0] > out[1] ? null : out;
    }

    /** Mean over time; NaN where it is not known. */
    private double headwind(double from, double to) {
        double sum = 0;
        double seconds = 0;
        RideTrace trace = estimate.trace();
        double pauses = pauses();
        for (int at = 0; at < trace.size(); at++) {
            double middle = (trace.arrival(at) - trace.seconds(at) / 2) * pauses;
            if (middle >= from && middle < to) {
                sum += conditions.headwind(at) * trace.seconds(at);
                seconds += trace.seconds(at);
            }
        }
        return seconds > 0 ? sum / seconds : Double.NaN;
    }

    private double pauses() {
        return estimate.total().mid() / estimate.riding().mid();
    }
}
