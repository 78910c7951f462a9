package courseworthy.ride;

/** Inputs of a ride that are uncertain independently of each other. */
enum UncertainInput {
    POWER, ROLLING, DRAG, WIND, CAP, MASS, CLIMBING, AIR, TIRING;

    /** How many there are (computing). */
    static final int COUNT = 9;
}
