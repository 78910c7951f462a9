package courseworthy.ride;

/**
 * The density of air. Pressure by height is that of the standard atmosphere (ICAO Doc 7488, ISO 2533:1975); the density of moist air is
 * the CIPM-2007 equation (Picard A, Davis RS, Gläser M, Fujii K, 2008, Metrologia 45:149-155; coefficients from memory, checked in
 * tests against values worked out with it). Good to 0.001 kg/m³ from 600 to 1100 hPa and -20 to 40 °C.
 */
public final class Air {

    /** Standard temperature at sea level, K (ISO 2533:1975). */
    public static final double STANDARD_TEMPERATURE = 288.15;
    /** Standard pressure at sea level, Pa (ISO 2533:1975). */
    public static final double STANDARD_PRESSURE = 101_325;
    /** How much colder it gets with height, K/m (ISO 2533:1975, up to 11 km). */
    public static final double LAPSE = 0.0065;
    /** Specific gas constant of dry air, J/(kg K) (ISO 2533:1975). */
    static final double DRY_AIR_CONSTANT = 287.05287;
    /** g over the product of that constant and the lapse, no unit (ISO 2533:1975). */
    private static final double PRESSURE_EXPONENT = 5.25588;

    /** 0 °C in K. */
    private static final double ICE_POINT = 273.15;
    /** Molar gas constant used by CIPM-2007, J/(mol K). */
    private static final double GAS_CONSTANT = 8.314472;
    /** Molar mass of dry air at 400 ppm of carbon dioxide, kg/mol (CIPM-2007). */
    private static final double DRY_AIR_MOLAR_MASS = 28.96546e-3;
    /** One less molar mass of water over that of dry air (CIPM-2007). */
    private static final double WATER_IS_LIGHTER_BY = 0.3780;

    private Air() {
    }

    /**
     * Pressure of the standard atmosphere.
     *
     * @param height m above sea level, to 11 km
     * @return Pa
     */
    public static double standardPressure(double height) {
        double standardTemperature = STANDARD_TEMPERATURE - LAPSE * height;
        return STANDARD_PRESSURE * Math.pow(standardTemperature / STANDARD_TEMPERATURE, PRESSURE_EXPONENT);
    }

    /** Temperature of the standard atmosphere, °C. */
    public static double standardTemperature(double height) {
        return STANDARD_TEMPERATURE - LAPSE * height - ICE_POINT;
    }

    /** Density of the standard atmosphere, kg/m³: dry air as an ideal gas. */
    public static double standardDensity(double height) {
        return standardPressure(height) / (DRY_AIR_CONSTANT * (STANDARD_TEMPERATURE - LAPSE * height));
    }

    /**
     * Density of moist air, CIPM-2007 equation (1).
     *
     * @param pressure    Pa
     * @param temperature °C
     * @param humidity    relative, 0 to 1
     * @return kg/m³
     */
    public static double density(double pressure, double temperature, double humidity) {
        double kelvin = temperature + ICE_POINT;
        double water = waterFraction(pressure, temperature, humidity);
        double dry = pressure * DRY_AIR_MOLAR_MASS / (compressibility(pressure, temperature, water) * GAS_CONSTANT * kelvin);
        return dry * (1 - water * WATER_IS_LIGHTER_BY);
    }

    /**
     * Saturation pressure of water, CIPM-2007 appendix A.1.1.
     *
     * @param temperature °C
     * @return Pa
     */
    public static double saturationPressure(double temperature) {
        double kelvin = temperature + ICE_POINT;
        return Math.exp(1.2378847e-5 * kelvin * kelvin - 1.9121316e-2 * kelvin + 33.93711047 - 6.3431645e3 / kelvin);
    }

    /** Mole fraction of water, CIPM-2007 appendix A.1.3, with the enhancement factor of A.1.2. */
    private static double waterFraction(double pressure, double temperature, double humidity) {
        double enhancement = 1.00062 + 3.14e-8 * pressure + 5.6e-7 * temperature * temperature;
        return humidity * enhancement * saturationPressure(temperature) / pressure;
    }

    /** Compressibility, CIPM-2007 appendix A.1.4. */
    private static double compressibility(double pressure, double t, double water) {
        double perKelvin = pressure / (t + ICE_POINT);
        double first = 1.58123e-6 - 2.9331e-8 * t + 1.1043e-10 * t * t + (5.707e-6 - 2.051e-8 * t) * water
                + (1.9898e-4 - 2.376e-6 * t) * water * water;
        return 1 - perKelvin * first + perKelvin * perKelvin * (1.83e-11 - 0.765e-8 * water * water);
    }
}
