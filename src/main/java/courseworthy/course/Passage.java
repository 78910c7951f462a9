package courseworthy.course;

/**
 * How a stretch is passed where that is said.
 *
 * @param onFoot whether the bike is pushed or carried
 * @param ferry  time that a ferry takes, s; null where there is none
 */
public record Passage(boolean onFoot, Double ferry) {

    /** Ridden, as a person wrote. */
    public static final Passage RIDDEN = new Passage(false, null);
    public static final Passage ON_FOOT = new Passage(true, null);

    /** The same over a share of the stretch. */
    Passage share(double part) {
        return ferry == null ? this : ferry(ferry * part);
    }

    /** On a ferry that takes so many seconds. */
    public static Passage ferry(double seconds) {
        return new Passage(false, seconds);
    }
}
