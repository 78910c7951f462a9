package courseworthy.ride;

/**
 * What an estimate rests on.
 *
 * @param kind        the bike ridden
 * @param mass        rider, kit, bike and water, kg
 * @param dragArea    over the ride, company included, m²
 * @param pacing      how hard it is ridden
 * @param skill       0 novice to 3 expert
 * @param wetness     of the ground: 0 dry, 1 damp, 2 wet
 * @param laps        of the way
 * @param points      support points over all laps, -1 where none are written
 * @param climbing    factor on all gradients: how far ascent and descent may be off
 * @param weather     air and wind
 */
public record RideAssumptions(BikeKind kind, Range mass, Range dragArea, PacingRanges pacing, int skill, int wetness, int laps, int points,
        Range climbing, WeatherAssumptions weather) {

    /** The same on dry ground. */
    public RideAssumptions dry() {
        return new RideAssumptions(kind, mass, dragArea, pacing, skill, 0, laps, points, climbing, weather.withoutRain());
    }

    /** Whether the ground is dry all day. */
    public boolean isDry() {
        return wetness == 0 && !rains();
    }

    /** Whether the going is that of rain by the hour, and {@link #wetness} that at the start. */
    public boolean rains() {
        return weather.hourly() != null && weather.hourly().hasRain();
    }

    /**
     * How hard it is ridden.
     *
     * @param hourPower best mean power of an hour, W
     * @param intensity how much of what could be held is ridden, 1 for all
     * @param training  whether the ride is training rather than a race
     */
    public record PacingRanges(Range hourPower, Range intensity, boolean training) {
    }

    /**
     * Air and wind.
     *
     * @param temperature at the height of the start, mean of the day, °C
     * @param startHeight m above sea level
     * @param windKnown   whether there is a forecast of the wind
     * @param wind        mean wind at 10 m height, m/s
     * @param from        where it comes from, radians clockwise from north; NaN where unknown
     * @param hours       the temperature by the hour; null where it is held over the ride
     * @param humidity    relative, 0 to 1
     * @param pressure    at sea level, Pa
     * @param pressureKnown whether that is forecast
     * @param hourly      the weather by the hour; null where the forecast is of the whole day. Wind and where it comes from are then means of it
     */
    public record WeatherAssumptions(double temperature, double startHeight, boolean windKnown, double wind, double from, Hours hours, double humidity,
            double pressure, boolean pressureKnown, HourlyWeather hourly) {

        /** Humidity taken where none is forecast: from none to all it changes density by 1 to 2 % (calculated by CIPM-2007). */
        public static final double HUMIDITY = 0.5;
        /** How far density may be off: pressure at sea level stays within 2 % or so of the standard's (common practice, no source). */
        private static final Range DENSITY_OFF = Range.within(1, 0.02);
        /** The same where pressure is forecast: 1.5 °C of the temperature's error are left, 0.5 %, calculated by the gas law. */
        private static final Range DENSITY_OFF_AS_FORECAST = Range.within(1, 0.005);
        /**
         * Wind at a rider's height over wind at 10 m: 0.64 by the logarithmic profile at 1.2 m over open grass of 0.03 m roughness length,
         * less among trees and hedges (common practice, no source).
         */
        private static final double AT_RIDER_HEIGHT = 0.6;
        /** Wind at 10 m that there may be where none is forecast, m/s (practice). */
        private static final double IF_UNKNOWN = 3;
        /** A forecast of the mean wind over a day is good to this share (common practice, no source). */
        private static final double FORECAST_OFF = 0.4;

        /** Temperature held over the ride, usual humidity, standard pressure. */
        public WeatherAssumptions(double temperature, double startHeight, boolean windKnown, double wind, double from) {
            this(temperature, startHeight, windKnown, wind, from, null, HUMIDITY, Air.STANDARD_PRESSURE, false, null);
        }

        /** A forecast of the whole day. */
        public WeatherAssumptions(double temperature, double startHeight, boolean windKnown, double wind, double from, Hours hours, double humidity,
                double pressure, boolean pressureKnown) {
            this(temperature, startHeight, windKnown, wind, from, hours, humidity, pressure, pressureKnown, null);
        }

        /** The same without rain by the hour. */
        private WeatherAssumptions withoutRain() {
            return hourly == null ? this : new WeatherAssumptions(temperature, startHeight, windKnown, wind, from, hours, humidity, pressure, pressureKnown,
                    hourly.withoutRain());
        }

        /** Factor on density for what is not known of the air. */
        public Range densityOff() {
            return pressureKnown ? DENSITY_OFF_AS_FORECAST : DENSITY_OFF;
        }

        /** The day's temperature for a ride of so many seconds in all; null where it is held. */
        DayTemperature day(double seconds) {
            return hourly != null && hourly.hasTemperature() ? new DayTemperature(hourly, seconds) : hours == null ? null : new DayTemperature(hours.start(), seconds, hours.low(), hours.high(), hours.rise(), hours.set());
        }

        /** Whether it is known where the wind comes from. */
        public boolean directed() {
            return hourly != null ? hourly.hasDirection() : !Double.isNaN(from);
        }

        /** Wind at the rider's height, m/s. */
        public double atRider() {
            return windKnown ? wind * AT_RIDER_HEIGHT : 0;
        }

        /** The strongest wind at the rider's height over a ride of so many seconds, m/s. */
        public double mostAtRider(double seconds) {
            return hourly != null && hourly.hasWind() ? hourly.mostWind(0, seconds) * AT_RIDER_HEIGHT : atRider();
        }

        /** How strong the wind at the rider's height may be, m/s. */
        public Range windAtRider() {
            return windKnown ? new Range(1 - FORECAST_OFF, 1, 1 + FORECAST_OFF).times(atRider()) : new Range(0, 0, IF_UNKNOWN * AT_RIDER_HEIGHT);
        }

        /** Density at a height, kg/m³: the temperature falls with height as in the standard atmosphere. */
        public double density(double height) {
            double there = temperature - Air.LAPSE * (height - startHeight);
            return Air.density(Air.standardPressure(height) * pressure / Air.STANDARD_PRESSURE, there, humidity);
        }
    }

    /**
     * When the ride starts and between what the day's temperature runs.
     *
     * @param start s after midnight
     * @param low   lowest of the day, at the height of the start, °C
     * @param high  highest of the day, °C
     * @param rise  sunrise, s after midnight; NaN where not known
     * @param set   sunset, s after midnight; NaN where not known
     */
    public record Hours(double start, double low, double high, double rise, double set) {
    }
}
