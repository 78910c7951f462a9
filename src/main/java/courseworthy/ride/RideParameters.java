package courseworthy.ride;

/** One choice of all that goes into a ride. */
final class RideParameters {

    /** On what can be held. */
    double powerFactor;
    /** kg. */
    double mass;
    /** m². */
    double dragArea;
    /** On all gradients. */
    double climbing;
    /** At the rider's height, m/s. */
    double wind;
    /** On the density of air. */
    double airFactor;
    /** Share of the mean power lost from start to finish. */
    double fade;
    /** Rolling resistance coefficient by ground. */
    double[] rolling;
    /** How fast the ground lets the rider go, by ground, m/s. */
    double[] cap;
    /** Sideways acceleration the rider takes bends with, by ground, m/s². */
    double[] sideways;
    /** The same two on dry ground. */
    double[] dryCap;
    double[] drySideways;
    /** Radius of the inner edge of a trail's sharp turns, and width of its tread, m. */
    double turnInside;
    double tread;
    /** Beside the bike, m/s. */
    double walking = Walking.SPEED.mid();
    RideChange change = RideChange.NONE;
}
