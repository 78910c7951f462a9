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

    /** The other way round: what is saved as what is lost. */
    static Range negative(Range range) {
        return Range.around(-range.high(), -range.mid(), -range.low());
    }
}
