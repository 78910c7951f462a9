package courseworthy.demand;

import java.util.Arrays;
import java.util.Map;

/** What is known of one stretch, in ticks or positions by {@link StretchMeasure}. */
public final class StretchFacts {

    /** Stands for a value that is not known. */
    public static final long UNKNOWN = Long.MIN_VALUE;

    private final long[] values = new long[StretchMeasure.values().length];

    /** @param known what is known; length must be */
    public StretchFacts(Map<StretchMeasure, Long> known) {
        Arrays.fill(values, UNKNOWN);
        known.forEach((measure, value) -> values[measure.ordinal()] = value);
        if (values[StretchMeasure.LENGTH.ordinal()] < 0) {
            throw new IllegalArgumentException("a stretch without length");
        }
    }

    /** The value, or {@link #UNKNOWN}. */
    public long get(StretchMeasure measure) {
        return values[measure.ordinal()];
    }
}
