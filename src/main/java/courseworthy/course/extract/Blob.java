package courseworthy.course.extract;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;

/**
 * One block of a PBF file, as it is stored and inflated. Its arrays are used for one block after the other.
 *
 * <p>Source: OpenStreetMap wiki, "PBF Format" (published specification), fileformat.proto: BlobHeader, Blob.
 */
final class Blob {

    /** Limits of the format (OpenStreetMap wiki, "PBF Format"): bytes of a block's header, and of a block, inflated or not. */
    static final int MOST_HEADER = 64 * 1024;
    static final int MOST_BLOCK = 32 * 1024 * 1024;

    /** What a block holds, as its header says. */
    enum BlobType { HEADER, DATA, OTHER }

    private static final int LONGEST_TYPE = 100;

    private final ProtobufReader reader = new ProtobufReader();
    private final Inflater inflater = new Inflater();
    private byte[] stored = new byte[1 << 16];
    private int storedSize;
    private byte[] content = new byte[1 << 18];
    private int size;
    private BlobType type = BlobType.OTHER;
    private long start;

    /**
     * Reads the next block as it is stored.
     *
     * @param left bytes from here to the end of the file, so that no more is believed of a length
     * @return false at the end of the file
     */
    boolean read(InputStream in, long start, long left) throws IOException {
        int first = in.read();
        if (first < 0) {
            return false;
        }
        this.start = start;
        byte[] rest = exactly(in, 3);
        int headerSize = first << 24 | (rest[0] & 0xFF) << 16 | (rest[1] & 0xFF) << 8 | rest[2] & 0xFF;
        if (headerSize <= 0 || headerSize > MOST_HEADER) {
            throw start == 0 ? RefusedExtract.kind("a file that does not begin like one in PBF", "")
                    : RefusedExtract.damaged("a block whose header has a length of " + headerSize + " bytes");
        }
        byte[] header = exactly(in, headerSize);
        storedSize = header(header, start);
        if (storedSize > left - 4 - headerSize) {
            throw RefusedExtract.cut("inside a block");
        }
        stored = stored.length < storedSize ? new byte[storedSize] : stored;
        if (in.readNBytes(stored, 0, storedSize) < storedSize) {
            throw RefusedExtract.cut("inside a block");
        }
        return true;
    }

    private static byte[] exactly(InputStream in, int length) throws IOException {
        byte[] bytes = in.readNBytes(length);
        if (bytes.length < length) {
            throw RefusedExtract.cut("inside a block");
        }
        return bytes;
    }

    private int header(byte[] header, long start) {
        reader.reset(header, 0, header.length);
        long length = -1;
        String name = "";
        while (reader.hasMore()) {
            int key = reader.key();
            switch (key >>> 3) {
                case 1 -> {
                    int from = reader.bytes(key);
                    name = new String(header, from, Math.min(LONGEST_TYPE, reader.position() - from), StandardCharsets.UTF_8);
                }
                case 3 -> length = reader.integer(key);
                default -> reader.skip(key);
            }
        }
        type = name.equals("OSMData") ? BlobType.DATA : name.equals("OSMHeader") ? BlobType.HEADER : BlobType.OTHER;
        if (start == 0 && type != BlobType.HEADER) {
            throw RefusedExtract.kind("a file that does not begin like one in PBF", "");
        }
        return size(length);
    }

    private static int size(long bytes) {
        if (bytes < 0 || bytes > MOST_BLOCK) {
            throw RefusedExtract.at(0, "", "a block of " + bytes + " bytes", "at most " + MOST_BLOCK, "Fetch the file again.");
        }
        return (int) bytes;
    }

    /** Inflates what was read. */
    void inflate() {
        reader.reset(stored, 0, storedSize);
        long expected = -1;
        int from = -1;
        int to = -1;
        boolean deflated = false;
        while (reader.hasMore()) {
            int key = reader.key();
            switch (key >>> 3) {
                case 1, 3 -> {
                    from = reader.bytes(key);
                    to = reader.position();
                    deflated = key >>> 3 == 3;
                }
                case 2 -> expected = size(reader.integer(key));
                case 4, 5, 6, 7 -> throw RefusedExtract.kind("a file in PBF whose blocks are compressed by another method than zlib",
                        "Write it again with zlib, which all programs that write extracts know.");
                default -> reader.skip(key);
            }
        }
        if (from < 0 || deflated && expected < 0) {
            throw RefusedExtract.damaged("a block without data");
        }
        if (deflated) {
            inflate(from, to - from, (int) expected);
        } else {
            size = size(to - from);
            content = content.length < size ? new byte[size] : content;
            System.arraycopy(stored, from, content, 0, size);
        }
    }

    private void inflate(int from, int length, int expected) {
        // One byte more than the block should have shows whether there is more.
        content = content.length <= expected ? new byte[expected + 1] : content;
        inflater.reset();
        inflater.setInput(stored, from, length);
        size = 0;
        try {
            while (!inflater.finished() && size <= expected) {
                int got = inflater.inflate(content, size, expected + 1 - size);
                if (got == 0 && !inflater.finished()) {
                    throw RefusedExtract.damaged("a block whose compressed data end too early");
                }
                size += got;
            }
        } catch (DataFormatException e) {
            throw RefusedExtract.damaged("a block whose compressed data are damaged");
        }
        if (size != expected) {
            throw RefusedExtract.damaged("a block of " + (size > expected ? "more" : "fewer") + " bytes than the " + expected + " that it says");
        }
    }

    BlobType type() {
        return type;
    }

    /** Byte of the file at which it starts. */
    long start() {
        return start;
    }

    /** What it holds, up to {@link #size}. */
    byte[] content() {
        return content;
    }

    int size() {
        return size;
    }

    /** Gives back what the inflater holds outside the heap. */
    void end() {
        inflater.end();
        stored = Arrays.copyOf(stored, 0);
        content = stored;
    }
}
