package courseworthy.demand;

import courseworthy.ride.Range;
import courseworthy.ride.RideEstimate;
import java.util.List;

/**
 * The estimate of the ride behind the measures, and what lies where on it.
 *
 * @param estimate of the whole event
 * @param pieces   where it is steep, those that are known
 * @param easiest  where the easiest gear is asked for, on the power it is asked for; null where no gradient is known
 * @param sprint   power of the finishing sprint, W; null where there is none
 * @param aero     where aero extensions can be used
 * @param day      what the day brings along the way
 */
public record EstimatedRide(RideEstimate estimate, List<RidePiece> pieces, RidePiece easiest, Range sprint, ExtensionUse aero, DayDemands day) {

    public EstimatedRide {
        pieces = List.copyOf(pieces);
    }

    /** Where the easiest gear is asked for, m from the start of a lap; null where no gradient is known. */
    public Double easiestAt() {
        return easiest == null ? null : Double.valueOf(easiest.middle);
    }

    /** The piece of a kind, or null where it is not known. */
    public RidePiece piece(Kind kind) {
        for (RidePiece piece : pieces) {
            if (piece.kind == kind) {
                return piece;
            }
        }
        return null;
    }

    /** What makes a piece of the way worth naming. */
    public enum Kind {
        RAMP("steepest ramp"), HUNDRED("steepest 100 m"), FIVE_HUNDRED("steepest 500 m"), KILOMETRE("steepest 1 km"),
        LAST_CLIMB("last long climb");

        private final String written;

        Kind(String written) {
            this.written = written;
        }

        /** As the measure of it is written. */
        public String written() {
            return written;
        }
    }

    /**
     * A piece of the way.
     *
     * @param kind     what it is
     * @param gradient rise over length
     * @param middle   m from the start of a lap
     * @param length   m
     * @param power    what is pedalled there on the last lap, as tired as the hour finds the rider, W
     */
    public record RidePiece(Kind kind, Range gradient, double middle, double length, Range power) {
    }
}
