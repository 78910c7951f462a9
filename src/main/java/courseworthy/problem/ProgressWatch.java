package courseworthy.problem;

/** Shows how far one piece of long work has come, until it is closed. */
public interface ProgressWatch extends Progress, AutoCloseable {

    @Override
    void close();

    /** For work that nobody watches. */
    static ProgressWatch unseen() {
        return new ProgressWatch() {
            @Override
            public void at(int done, int of) {
                // Nobody watches.
            }

            @Override
            public void close() {
                // Nothing was shown.
            }
        };
    }
}
