package courseworthy.demand;

/**
 * The weather that a rider meets over a time; null where it is not forecast by the hour, or not known.
 *
 * @param wind     mean wind at 10 m height, m/s
 * @param gust     strongest gust, m/s
 * @param from     direction the wind comes from, degrees clockwise from north
 * @param headwind mean of the wind along the way at 10 m height, m/s, below 0 from behind
 * @param rain     that falls, m
 * @param driest   the driest going under the wheels, 0 dry, 1 damp, 2 wet
 * @param wettest  the wettest
 */
public record HourWeather(Double wind, Double gust, Double from, Double headwind, Double rain, Integer driest, Integer wettest) {
}
