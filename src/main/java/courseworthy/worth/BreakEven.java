package courseworthy.worth;

import courseworthy.ride.Range;

/**
 * At what odds of a stop two options cost the same time. No rate of punctures is published, so none is given: the reader judges the odds.
 *
 * @param faster   the faster option
 * @param safer    the other
 * @param returns  what the faster returns over the ride, s
 * @param stop     which stop, in words
 * @param cost     what such a stop costs, s
 * @param rides    so many rides for one more stop: with fewer the faster option loses; high is infinite where it may return nothing
 * @param races    races a year on this bike; null where not written
 */
public record BreakEven(String faster, String safer, Range returns, String stop, Range cost, Range rides, Integer races) {

    /** Less than this is nothing, s. */
    private static final double LEAST = 0.05;

    /** @return null where neither is faster */
    static BreakEven of(String faster, String safer, Range returns, String stop, Range cost, Integer races) {
        if (returns.mid() < LEAST) {
            return null;
        }
        return new BreakEven(faster, safer, returns, stop, cost, rides(cost, returns), races);
    }

    /** Cost over what is returned, independent of each other: of a quotient the ends lie as many times apart, not so many rides. */
    private static Range rides(Range cost, Range returns) {
        double mid = cost.mid() / returns.mid();
        double fewer = Math.hypot(Math.log(cost.mid() / cost.low()), Math.log(returns.high() / returns.mid()));
        double more = returns.low() <= 0 ? Double.POSITIVE_INFINITY
                : Math.hypot(Math.log(cost.high() / cost.mid()), Math.log(returns.mid() / returns.low()));
        return new Range(mid * Math.exp(-fewer), mid, mid * Math.exp(more));
    }

    /** What it returns over a year's races, s; null where their number is not written. */
    public Range season() {
        return races == null ? null : returns.times(races);
    }
}
