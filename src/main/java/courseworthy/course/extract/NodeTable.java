package courseworthy.course.extract;

import java.util.Arrays;

/** Where nodes lie, by their ids: 16 bytes a slot, at most two slots a node. */
final class NodeTable {

    private static final long FREE = Long.MIN_VALUE;

    private final int most;
    private long[] ids = free(1024);
    private int[] latitudes = new int[1024];
    private int[] longitudes = new int[1024];
    private int size;

    /** @param most nodes that it takes */
    NodeTable(int most) {
        this.most = most;
    }

    private static long[] free(int length) {
        long[] ids = new long[length];
        Arrays.fill(ids, FREE);
        return ids;
    }

    /** Adds a node in units of 10<sup>-7</sup> degree; one that is there already stays where it is. */
    void add(long id, int latitude, int longitude) {
        if (id == FREE) {
            throw RefusedExtract.damaged("a node with the id " + id);
        }
        int at = slot(ids, id);
        if (ids[at] == id) {
            return;
        }
        if (size == most) {
            throw RefusedExtract.tooMuch("more than " + most + " nodes near the track");
        }
        ids[at] = id;
        latitudes[at] = latitude;
        longitudes[at] = longitude;
        size++;
        if (size * 2 > ids.length) {
            grow();
        }
    }

    private void grow() {
        long[] widerIds = free(ids.length * 2);
        int[] widerLatitudes = new int[widerIds.length];
        int[] widerLongitudes = new int[widerIds.length];
        for (int i = 0; i < ids.length; i++) {
            if (ids[i] != FREE) {
                int at = slot(widerIds, ids[i]);
                widerIds[at] = ids[i];
                widerLatitudes[at] = latitudes[i];
                widerLongitudes[at] = longitudes[i];
            }
        }
        ids = widerIds;
        latitudes = widerLatitudes;
        longitudes = widerLongitudes;
    }

    private static int slot(long[] ids, long id) {
        int mask = ids.length - 1;
        int at = LongSet.spread(id) & mask;
        while (ids[at] != id && ids[at] != FREE) {
            at = at + 1 & mask;
        }
        return at;
    }

    boolean contains(long id) {
        return find(id) >= 0;
    }

    /** The slot of a node; -1 where it is not there. */
    int find(long id) {
        int at = slot(ids, id);
        return id != FREE && ids[at] == id ? at : -1;
    }

    int latitude(int slot) {
        return latitudes[slot];
    }

    int longitude(int slot) {
        return longitudes[slot];
    }

    int size() {
        return size;
    }
}
