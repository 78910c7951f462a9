package courseworthy.ride;

/**
 * The range of an estimate from a whole sample: every draw of {@link Spread} is ridden on the whole way, power and time brought into
 * agreement each time, on two threads. It stands behind the thinned rule of {@link Estimate}, which is there for quick answers. The same
 * bytes every time, whatever the threads do.
 */
public final class Sampled {

    /** Power and what can be held agree to this share before the rest is made good by its slope; threads that ride (computing). */
    private static final double AGREED = 1e-2;
    private static final int THREADS = 2;

    private final Estimate estimate;
    private final double[][] draws;
    private final Estimate.Run[] without;

    private Sampled(Estimate estimate, int runs) {
        this.estimate = estimate;
        this.draws = Spread.draws(runs, Estimate.Uncertain.COUNT);
        this.without = rides(Change.NONE);
    }

    /** All draws of an estimate. */
    public static Sampled of(Estimate estimate) {
        return new Sampled(estimate, Spread.DRAWS);
    }

    /** A number of draws of an estimate, 2 or more. */
    static Sampled of(Estimate estimate, int runs) {
        return new Sampled(estimate, runs);
    }

    /** Riding time, s. */
    public Range riding() {
        double[] seconds = new double[draws.length];
        for (int i = 0; i < seconds.length; i++) {
            seconds[i] = without[i].seconds();
        }
        return Spread.range(estimate.trace().total(), seconds);
    }

    /** Time a change returns, s: each draw against itself with the change. */
    public Range saved(Change change) {
        Estimate.Run[] with = rides(change);
        double[] saved = new double[draws.length];
        for (int i = 0; i < saved.length; i++) {
            saved[i] = without[i].seconds() - with[i].seconds();
        }
        return Spread.range(estimate.saved(change).mid(), saved);
    }

    /** Time that another ride returns, s: each draw against the same draw of the other, so that what is alike in both cancels. */
    public Range savedBy(Sampled other) {
        double[] saved = new double[draws.length];
        for (int i = 0; i < saved.length; i++) {
            saved[i] = without[i].seconds() - other.without[i].seconds();
        }
        return Spread.range(estimate.trace().total() - other.estimate.trace().total(), saved);
    }

    private Estimate.Run[] rides(Change change) {
        Estimate.Run[] runs = new Estimate.Run[draws.length];
        Thread[] threads = new Thread[THREADS];
        for (int t = 0; t < THREADS; t++) {
            int first = t;
            threads[t] = new Thread(() -> rides(change, runs, first), "ride " + t);
            threads[t].start();
        }
        try {
            for (Thread thread : threads) {
                thread.join();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("stopped while riding", e);
        }
        return runs;
    }

    private void rides(Change change, Estimate.Run[] runs, int first) {
        Riding riding = estimate.another();
        for (int i = first; i < runs.length; i += THREADS) {
            Inputs in = estimate.inputs(draws[i]);
            in.change = change;
            runs[i] = estimate.held(riding, in, AGREED);
        }
    }
}
