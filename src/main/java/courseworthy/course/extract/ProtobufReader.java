package courseworthy.course.extract;

/**
 * A cursor over one message in the wire format of Protocol Buffers: keys, variable-length integers and lengths. It never leaves the bytes
 * it was given.
 *
 * <p>Source: Protocol Buffers, "Encoding" (published specification of the wire format).
 */
final class ProtobufReader {

    static final int VARINT = 0;
    static final int FIXED_64 = 1;
    static final int BYTES = 2;
    static final int FIXED_32 = 5;

    private static final int LONGEST_VARINT = 10;

    private byte[] data = new byte[0];
    private int at;
    private int end;

    /** Puts the cursor at the start of a message. */
    ProtobufReader reset(byte[] bytes, int from, int to) {
        if (from < 0 || to < from || to > bytes.length) {
            throw RefusedExtract.damaged("a length outside its block");
        }
        data = bytes;
        at = from;
        end = to;
        return this;
    }

    boolean hasMore() {
        return at < end;
    }

    int position() {
        return at;
    }

    int end() {
        return end;
    }

    byte[] data() {
        return data;
    }

    /** Unsigned integer of up to 64 bits. */
    long varint() {
        if (at < end) {
            byte first = data[at];
            if (first >= 0) {
                at++;
                return first;
            }
        }
        return longVarint();
    }

    private long longVarint() {
        long value = 0;
        for (int i = 0; i < LONGEST_VARINT; i++) {
            if (at >= end) {
                throw RefusedExtract.damaged("a number that runs out of its block");
            }
            byte next = data[at++];
            value |= (long) (next & 0x7F) << 7 * i;
            if (next >= 0) {
                return value;
            }
        }
        throw RefusedExtract.damaged("a number of more than 64 bits");
    }

    /** Signed integer, written so that small ones are short whatever their sign. */
    long signed() {
        long value = varint();
        return value >>> 1 ^ -(value & 1);
    }

    /**
     * Reads signed integers that are each written as the difference from the one before.
     *
     * @param before what the first differs from
     * @param out    where they are put, from its start
     * @param most   how many are read, unless the message ends before
     * @return how many were read
     */
    int sums(long before, long[] out, int most) {
        byte[] bytes = data;
        int stop = end;
        int from = at;
        int count = 0;
        long sum = before;
        while (count < most && from < stop) {
            long next = bytes[from++];
            if (next < 0) {
                next &= 0x7F;
                int shift = 7;
                byte more;
                do {
                    if (from >= stop || shift >= 7 * LONGEST_VARINT) {
                        throw RefusedExtract.damaged(from >= stop ? "a number that runs out of its block" : "a number of more than 64 bits");
                    }
                    more = bytes[from++];
                    next |= (long) (more & 0x7F) << shift;
                    shift += 7;
                } while (more < 0);
            }
            long step = next >>> 1 ^ -(next & 1);
            long last = sum;
            sum += step;
            if (((last ^ sum) & (step ^ sum)) < 0) {
                throw RefusedExtract.damaged("a difference that leads out of 64 bits");
            }
            out[count++] = sum;
        }
        at = from;
        return count;
    }

    /** Unsigned integer of up to 31 bits. */
    int unsignedInt() {
        long value = varint();
        if (value < 0 || value > Integer.MAX_VALUE) {
            throw RefusedExtract.damaged("a count or length of " + Long.toUnsignedString(value));
        }
        return (int) value;
    }

    /** Number of the next field, times eight, plus its wire type. */
    int key() {
        int key = unsignedInt();
        if (key >>> 3 == 0) {
            throw RefusedExtract.damaged("a field without a number");
        }
        return key;
    }

    /** Goes past a field whose bytes have their length before them, and returns where they start; they end at {@link #position}. */
    int bytes(int key) {
        if ((key & 7) != BYTES) {
            throw RefusedExtract.damaged("a field of another type than the format's");
        }
        int length = unsignedInt();
        if (length > end - at) {
            throw RefusedExtract.damaged("a length of " + length + " with " + (end - at) + " bytes left in its block");
        }
        int from = at;
        at += length;
        return from;
    }

    /** The value of a field that is an integer. */
    long integer(int key) {
        if ((key & 7) != VARINT) {
            throw RefusedExtract.damaged("a field of another type than the format's");
        }
        return varint();
    }

    /** The value of a field that is an integer, written so that small ones are short whatever their sign. */
    long signed(int key) {
        long value = integer(key);
        return value >>> 1 ^ -(value & 1);
    }

    /** Passes over the value of a field. */
    void skip(int key) {
        switch (key & 7) {
            case VARINT -> varint();
            case FIXED_64 -> fixed(8);
            case BYTES -> bytes(key);
            case FIXED_32 -> fixed(4);
            default -> throw RefusedExtract.damaged("a field of no known type");
        }
    }

    private void fixed(int length) {
        if (length > end - at) {
            throw RefusedExtract.damaged("a number that runs out of its block");
        }
        at += length;
    }
}
