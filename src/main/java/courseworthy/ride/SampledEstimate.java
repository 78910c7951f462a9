package courseworthy.ride;

/**
 * The range of an estimate from a whole sample: every draw of {@link RangeSampler} is ridden on the whole way, power and time brought into
 * agreement each time, on two threads. It stands behind the thinned rule of {@link RideEstimate}, which is there for quick answers. The same
 * bytes every time, whatever the threads do.
 */
public final class SampledEstimate {

    /** Power and what can be held agree to this share before the rest is made good by its slope; threads that ride (computing). */
    private static final double AGREED = 1e-2;
    private static final int THREADS = 2;

    private final RideEstimate estimate;
    private final double[][] draws;
    private final RideRun[] without;

    private SampledEstimate(RideEstimate estimate, int runs) {
        this.estimate = estimate;
        this.draws = RangeSampler.draws(runs, UncertainInput.COUNT);
        this.without = rides(RideChange.NONE);
    }

    /** All draws of an estimate. */
    public static SampledEstimate of(RideEstimate estimate) {
        return new SampledEstimate(estimate, RangeSampler.DRAWS);
    }

    /** A number of draws of an estimate, 2 or more. */
    static SampledEstimate of(RideEstimate estimate, int runs) {
        return new SampledEstimate(estimate, runs);
    }

    /** Riding time, s. */
    public Range riding() {
        double[] seconds = new double[draws.length];
        for (int i = 0; i < seconds.length; i++) {
            seconds[i] = without[i].seconds();
        }
        return RangeSampler.range(estimate.trace().total(), seconds);
    }

    /** Time a change returns, s: each draw against itself with the change. */
    public Range saved(RideChange change) {
        RideRun[] with = rides(change);
        double[] saved = new double[draws.length];
        for (int i = 0; i < saved.length; i++) {
            saved[i] = without[i].seconds() - with[i].seconds();
        }
        return RangeSampler.range(estimate.saved(change).mid(), saved);
    }

    /** Time that another ride returns, s: each draw against the same draw of the other, so that what is alike in both cancels. */
    public Range savedBy(SampledEstimate other) {
        double[] saved = new double[draws.length];
        for (int i = 0; i < saved.length; i++) {
            saved[i] = without[i].seconds() - other.without[i].seconds();
        }
        return RangeSampler.range(estimate.trace().total() - other.estimate.trace().total(), saved);
    }

    private RideRun[] rides(RideChange change) {
        RideRun[] runs = new RideRun[draws.length];
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

    private void rides(RideChange change, RideRun[] runs, int first) {
        RideSimulator riding = estimate.another();
        for (int i = first; i < runs.length; i += THREADS) {
            RideParameters in = estimate.inputs(draws[i]);
            in.change = change;
            runs[i] = estimate.held(riding, in, AGREED);
        }
    }
}
