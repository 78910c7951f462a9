package courseworthy.course.extract;

import java.util.Arrays;

/** A set of whole numbers in one array: 16 bytes each at most. */
final class LongSet {

    private static final long FREE = Long.MIN_VALUE;

    private long[] slots = filled(64);
    private int size;
    private boolean hasFree;

    private static long[] filled(int length) {
        long[] slots = new long[length];
        Arrays.fill(slots, FREE);
        return slots;
    }

    /** @return whether it was not there before */
    boolean add(long value) {
        if (value == FREE) {
            boolean before = hasFree;
            hasFree = true;
            return !before;
        }
        int at = slot(slots, value);
        if (slots[at] == value) {
            return false;
        }
        slots[at] = value;
        size++;
        if (size * 2 > slots.length) {
            grow();
        }
        return true;
    }

    private void grow() {
        long[] wider = filled(slots.length * 2);
        for (long each : slots) {
            if (each != FREE) {
                wider[slot(wider, each)] = each;
            }
        }
        slots = wider;
    }

    boolean contains(long value) {
        return value == FREE ? hasFree : slots[slot(slots, value)] == value;
    }

    int size() {
        return size + (hasFree ? 1 : 0);
    }

    /** The values from the least to the greatest. */
    long[] sorted() {
        long[] out = new long[size()];
        int count = 0;
        for (long each : slots) {
            if (each != FREE) {
                out[count++] = each;
            }
        }
        if (hasFree) {
            out[count] = FREE;
        }
        Arrays.sort(out);
        return out;
    }

    /** Where a value stands, or the free slot where it would. */
    private static int slot(long[] slots, long value) {
        int mask = slots.length - 1;
        int at = spread(value) & mask;
        while (slots[at] != value && slots[at] != FREE) {
            at = at + 1 & mask;
        }
        return at;
    }

    /** Spreads neighbouring numbers over the table: multiplied by 2<sup>64</sup> divided by the golden ratio (Knuth, TAOCP 3, 6.4). */
    static int spread(long value) {
        return (int) (value * 0x9E3779B97F4A7C15L >>> 32);
    }
}
