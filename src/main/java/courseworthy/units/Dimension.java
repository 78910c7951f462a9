package courseworthy.units;

/** What a number measures; amounts of one dimension can be compared. */
public enum Dimension {
    LENGTH, MASS, TIME, SPEED, PRESSURE, POWER, TEMPERATURE, SHARE, CADENCE, VOLUME, ANGLE, POWER_PER_MASS, MASS_PER_TIME,
    /** A gear: chainring teeth over sprocket teeth. */
    RATIO,
    /** A bare number: a count, a grade. */
    NUMBER
}
