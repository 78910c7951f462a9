package courseworthy.course.extract;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;

/** The texts of one block of a PBF file, by their numbers: made into strings only where a tag that is kept asks for them. */
final class StringTable {

    /** Texts of a block; those of real blocks have some ten thousand. */
    private static final int MOST = 2_000_000;
    private static final int KEY_TEXT = 1 << 3 | ProtobufReader.BYTES;

    private final ProtobufReader reader = new ProtobufReader();
    private byte[] data = new byte[0];
    /** Start and end of each. */
    private int[] places = new int[1 << 12];
    private String[] strings = new String[1 << 11];
    /** Of each: 0 where it has not been asked, else 1 or, where it is a key that can make a way one to ride, 2. */
    private byte[] ways = new byte[1 << 11];
    private int size;

    void clear() {
        Arrays.fill(strings, 0, size, null);
        Arrays.fill(ways, 0, size, (byte) 0);
        size = 0;
    }

    void read(byte[] bytes, int from, int to) {
        data = bytes;
        reader.reset(bytes, from, to);
        while (reader.hasMore()) {
            int key = reader.key();
            if (key == KEY_TEXT) {
                int start = reader.bytes(key);
                add(start, reader.position());
            } else {
                reader.skip(key);
            }
        }
    }

    private void add(int from, int to) {
        if (size == MOST) {
            throw RefusedExtract.damaged("a block with more than " + MOST + " texts");
        }
        if (size == strings.length) {
            strings = Arrays.copyOf(strings, size * 2);
            ways = Arrays.copyOf(ways, size * 2);
            places = Arrays.copyOf(places, size * 4);
        }
        places[2 * size] = from;
        places[2 * size + 1] = to;
        size++;
    }

    /** A text of the block. */
    String get(long number) {
        if (number < 0 || number >= size) {
            throw RefusedExtract.damaged("a tag whose text its block does not have");
        }
        int at = (int) number;
        if (strings[at] == null) {
            int from = places[2 * at];
            strings[at] = new String(data, from, Math.min(MapTags.LONGEST_BYTES, places[2 * at + 1] - from), StandardCharsets.UTF_8);
        }
        return strings[at];
    }

    /** Whether a text is a key without which no way is kept. */
    boolean isKeyOfWays(long number) {
        if (number >= 0 && number < size && ways[(int) number] != 0) {
            return ways[(int) number] == 2;
        }
        boolean is = MapTags.THAT_KEEP_A_WAY.contains(get(number));
        ways[(int) number] = (byte) (is ? 2 : 1);
        return is;
    }

    /** The tags of a node or way that are among those kept. */
    Map<String, String> tags(ProtobufReader keys, ProtobufReader values, Set<String> kept) {
        Map<String, String> tags = new HashMap<>();
        while (keys.hasMore()) {
            String key = get(keys.varint());
            long value = values.varint();
            if (kept.contains(key)) {
                tags.put(key, get(value));
            }
        }
        return tags;
    }
}
