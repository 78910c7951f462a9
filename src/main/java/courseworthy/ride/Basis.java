package courseworthy.ride;

/**
 * What an estimate rests on.
 *
 * @param kind        the bike ridden
 * @param mass        rider, kit, bike and water, kg
 * @param dragArea    over the ride, company included, m²
 * @param hourPower   best mean power of an hour, W
 * @param intensity   how much of what could be held is ridden, 1 for all
 * @param skill       0 novice to 3 expert
 * @param wetness     of the ground: 0 dry, 1 damp, 2 wet
 * @param laps        of the way
 * @param points      support points over all laps, -1 where none are written
 * @param training    whether the ride is training rather than a race
 * @param climbing    factor on all gradients: how far rise and drop may be off
 * @param weather     air and wind
 */
public record Basis(BikeKind kind, Range mass, Range dragArea, Range hourPower, Range intensity, int skill, int wetness, int laps,
        int points, boolean training, Range climbing, Weather weather) {

    /**
     * Air and wind, held over the ride.
     *
     * @param temperature at the height of the start, °C
     * @param startHeight m above sea level
     * @param windKnown   whether there is a forecast of the wind
     * @param wind        mean wind at 10 m height, m/s
     * @param from        where it comes from, radians clockwise from north; NaN where unknown
     */
    public record Weather(double temperature, double startHeight, boolean windKnown, double wind, double from) {

        /** Humidity taken, 0 to 1: from none to all it changes density by 1 to 2 %. */
        private static final double HUMIDITY = 0.5;
        /**
         * Wind at a rider's height over wind at 10 m: 0.64 by the logarithmic profile at 1.2 m over open grass of 0.03 m roughness length,
         * less among trees and hedges (common practice, no source).
         */
        private static final double AT_RIDER_HEIGHT = 0.6;
        /** Wind at 10 m that the slow run takes where none is forecast, m/s. */
        private static final double IF_UNKNOWN = 3;

        /** Wind at the rider's height, m/s. */
        public double atRider() {
            return windKnown ? wind * AT_RIDER_HEIGHT : 0;
        }

        /** The same for a run in which the wind is as bad as it may be. */
        double atRiderOnABadDay() {
            return windKnown ? wind * AT_RIDER_HEIGHT : IF_UNKNOWN * AT_RIDER_HEIGHT;
        }

        /** Density at a height, kg/m³: the temperature falls with height as in the standard atmosphere. */
        public double density(double height) {
            double there = temperature - Air.LAPSE * (height - startHeight);
            return Air.density(Air.standardPressure(height), there, HUMIDITY);
        }
    }
}
