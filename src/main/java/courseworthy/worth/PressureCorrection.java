package courseworthy.worth;

import courseworthy.ride.Air;

/**
 * What a gauge shows on one filling of air at another temperature and height. The air in a tyre is a fixed amount in a fixed volume, so its
 * absolute pressure goes with absolute temperature (gas law); a gauge shows it less the air's around, which by height is that of the standard
 * atmosphere (ISO 2533:1975). The weather moves that by 0.03 bar or so.
 */
public final class PressureCorrection {

    /** 0 °C in K, exact by definition. */
    private static final double ICE_POINT = 273.15;

    private PressureCorrection() {
    }

    /**
     * Gauge pressure there of what shows a gauge pressure here, Pa.
     *
     * @param gauge       here, Pa
     * @param temperature here, °C
     * @param height      here, m above sea level
     * @param otherTemperature there, °C
     * @param otherHeight there, m above sea level
     */
    public static double elsewhere(double gauge, double temperature, double height, double otherTemperature, double otherHeight) {
        double absolute = gauge + Air.standardPressure(height);
        return absolute * (otherTemperature + ICE_POINT) / (temperature + ICE_POINT) - Air.standardPressure(otherHeight);
    }
}
