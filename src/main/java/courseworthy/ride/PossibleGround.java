package courseworthy.ride;

import courseworthy.course.Ground;
import java.util.List;
import java.util.function.Function;

/** What a figure is on ground that may be one of several. */
public final class PossibleGround {

    private PossibleGround() {
    }

    /**
     * A figure that is null on ground that does not tell it: the middle is that of the likely ground, else the mean of the others' middles; the ends
     * are the furthest of all.
     *
     * @param possible what the ground may be, the likely one first
     * @return null where no ground tells it
     */
    public static Range range(List<Ground> possible, Function<Ground, Range> figure) {
        Range likely = figure.apply(possible.get(0));
        if (possible.size() == 1) {
            return likely;
        }
        double low = likely == null ? Double.POSITIVE_INFINITY : likely.low();
        double high = likely == null ? Double.NEGATIVE_INFINITY : likely.high();
        double sum = 0;
        int known = 0;
        for (Ground ground : possible.subList(1, possible.size())) {
            Range each = figure.apply(ground);
            if (each != null) {
                low = Math.min(low, each.low());
                high = Math.max(high, each.high());
                sum += each.mid();
                known++;
            }
        }
        return likely == null && known == 0 ? null : new Range(low, likely == null ? sum / known : likely.mid(), high);
    }
}
