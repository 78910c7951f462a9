package courseworthy.problem;

/** Told how far long work has come. */
@FunctionalInterface
public interface Progress {

    /** For work that nobody watches. */
    Progress UNSEEN = (done, of) -> { };

    /**
     * @param done how much is done
     * @param of   how much there is, at least 1
     */
    void at(int done, int of);
}
