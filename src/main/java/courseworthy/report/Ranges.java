package courseworthy.report;

import courseworthy.report.picture.ValueRange;
import courseworthy.ride.Range;

/** Ranges of results as pictures hold them. */
final class Ranges {

    private Ranges() {
    }

    /** Null where there is none. */
    static ValueRange of(Range range) {
        return range == null ? null : new ValueRange(range.low(), range.mid(), range.high());
    }
}
