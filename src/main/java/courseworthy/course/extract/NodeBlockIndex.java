package courseworthy.course.extract;

import java.util.Arrays;

/** The blocks of a PBF file that hold nodes: where each starts, and its least and greatest id. */
final class NodeBlockIndex {

    /** Blocks of a file; the whole planet has about a million and a half of 8,000 nodes each (from memory). */
    private static final int MOST = 4_000_000;
    private static final int FIELDS = 3;

    private long[] blocks = new long[FIELDS * 64];
    private int size;

    void add(long start, long firstId, long lastId) {
        if (size == MOST) {
            throw RefusedExtract.damaged("more than " + MOST + " blocks");
        }
        if (size * FIELDS == blocks.length) {
            blocks = Arrays.copyOf(blocks, blocks.length * 2);
        }
        blocks[size * FIELDS] = start;
        blocks[size * FIELDS + 1] = firstId;
        blocks[size * FIELDS + 2] = lastId;
        size++;
    }

    int size() {
        return size;
    }

    long start(int block) {
        return blocks[block * FIELDS];
    }

    /** Whether a block may hold one of some ids. */
    boolean mayHold(int block, long[] sorted) {
        int found = Arrays.binarySearch(sorted, blocks[block * FIELDS + 1]);
        int from = found >= 0 ? found : -found - 1;
        return from < sorted.length && sorted[from] <= blocks[block * FIELDS + 2];
    }
}
