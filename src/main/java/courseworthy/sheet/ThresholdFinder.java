package courseworthy.sheet;

import java.util.List;

/** The turning points of a range. An exact value is one point that moves as a whole. */
final class ThresholdFinder {

    private ThresholdFinder() {
    }

    static int count(ValueTest.Within within) {
        if (within.least() == within.most()) {
            return 1;
        }
        return (within.least() == Long.MIN_VALUE ? 0 : 1) + (within.most() == Long.MAX_VALUE ? 0 : 1);
    }

    static void of(TestSubject subject, ValueTest.Within within, List<Threshold> out) {
        if (within.least() != Long.MIN_VALUE) {
            out.add(new Threshold(subject, within.least(), true));
        }
        if (within.most() != Long.MAX_VALUE && within.least() != within.most()) {
            out.add(new Threshold(subject, within.most(), false));
        }
    }

    static ValueTest moved(ValueTest.Within within, int index, long tick) {
        if (index < 0 || index >= count(within)) {
            return within;
        }
        if (within.least() == within.most()) {
            return new ValueTest.Within(tick, tick);
        }
        boolean lower = index == 0 && within.least() != Long.MIN_VALUE;
        return lower ? new ValueTest.Within(tick, within.most()) : new ValueTest.Within(within.least(), tick);
    }
}
