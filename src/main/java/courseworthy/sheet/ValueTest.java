package courseworthy.sheet;

import java.util.Collection;
import java.util.List;
import java.util.TreeSet;

/** What a condition asks of one value, in ticks or positions; total and exact. */
public sealed interface ValueTest {

    boolean holds(long value);

    /** The truth of the test on a value that is somewhere from {@code low} to {@code high}. */
    Truth holdsSomewhere(long low, long high);

    /** The same text for equal tests, and for no others. */
    String canonical();

    /** From {@code least} to {@code most}, both included; {@link Long#MIN_VALUE} and {@link Long#MAX_VALUE} leave an end open. */
    record Within(long least, long most) implements ValueTest {

        @Override
        public boolean holds(long value) {
            return value >= least && value <= most;
        }

        @Override
        public Truth holdsSomewhere(long low, long high) {
            if (high < least || low > most) {
                return Truth.FALSE;
            }
            return holds(low) && holds(high) ? Truth.TRUE : Truth.UNKNOWN;
        }

        @Override
        public String canonical() {
            return "[" + (least == Long.MIN_VALUE ? "" : least) + ".." + (most == Long.MAX_VALUE ? "" : most) + "]";
        }
    }

    /** One of several values. */
    record Among(List<Long> values) implements ValueTest {

        public Among {
            values = List.copyOf(new TreeSet<>(values));
        }

        public static Among of(Collection<Long> values) {
            return new Among(List.copyOf(values));
        }

        @Override
        public boolean holds(long value) {
            for (long one : values) {
                if (one == value) {
                    return true;
                }
            }
            return false;
        }

        @Override
        public Truth holdsSomewhere(long low, long high) {
            long inside = values.stream().filter(v -> v >= low && v <= high).count();
            if (inside == 0) {
                return Truth.FALSE;
            }
            return inside == high - low + 1 ? Truth.TRUE : Truth.UNKNOWN;
        }

        @Override
        public String canonical() {
            return values.toString();
        }
    }
}
