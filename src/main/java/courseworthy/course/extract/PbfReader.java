package courseworthy.course.extract;

import java.io.DataInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;

/**
 * Reads the blocks of a PBF file.
 *
 * <p>Source: OpenStreetMap wiki, "PBF Format" (published specification), fileformat.proto.
 */
final class PbfReader {

    /** Limits of the format (OpenStreetMap wiki, "PBF Format"): header of a block, and block when inflated. */
    static final int MOST_HEADER = 64 * 1024;
    static final int MOST_BLOCK = 32 * 1024 * 1024;

    private final DataInputStream in;
    private byte[] blob = new byte[64 * 1024];
    private byte[] raw = new byte[64 * 1024];
    private int rawSize;
    private String type = "";

    PbfReader(InputStream in) {
        this.in = new DataInputStream(in);
    }

    /** Goes to the next block; false at the end of the file. */
    boolean next() throws IOException {
        int first = in.read();
        if (first < 0) {
            return false;
        }
        try {
            int headerSize = first << 24 | in.readUnsignedByte() << 16 | in.readUnsignedShort();
            if (headerSize < 0 || headerSize > MOST_HEADER) {
                throw RefusedExtract.kind("a file that does not start as a PBF file does", "");
            }
            int size = header(in.readNBytes(headerSize));
            blob = blob.length < size ? new byte[size] : blob;
            in.readFully(blob, 0, size);
            inflate(size);
            return true;
        } catch (EOFException e) {
            throw RefusedExtract.cut("inside a block");
        }
    }

    private int header(byte[] header) {
        ProtobufReader reader = new ProtobufReader().reset(header, 0, header.length);
        long size = -1;
        while (reader.hasMore()) {
            int key = reader.key();
            switch (key >>> 3) {
                case 1 -> {
                    int from = reader.bytes(key);
                    type = new String(header, from, reader.position() - from, StandardCharsets.UTF_8);
                }
                case 3 -> size = reader.integer(key);
                default -> reader.skip(key);
            }
        }
        if (size < 0 || size > MOST_BLOCK) {
            throw RefusedExtract.damaged("a block of " + size + " bytes");
        }
        return (int) size;
    }

    private void inflate(int size) {
        ProtobufReader reader = new ProtobufReader().reset(blob, 0, size);
        long expected = -1;
        while (reader.hasMore()) {
            int key = reader.key();
            switch (key >>> 3) {
                case 1 -> {
                    int from = reader.bytes(key);
                    rawSize = reader.position() - from;
                    raw = raw.length < rawSize ? new byte[rawSize] : raw;
                    System.arraycopy(blob, from, raw, 0, rawSize);
                    return;
                }
                case 2 -> {
                    expected = reader.integer(key);
                    if (expected < 0 || expected > MOST_BLOCK) {
                        throw RefusedExtract.damaged("a block of " + expected + " bytes");
                    }
                }
                case 3 -> {
                    int from = reader.bytes(key);
                    inflate(from, reader.position() - from, (int) expected);
                    return;
                }
                default -> throw RefusedExtract.damaged("a block compressed in a way that is not zlib");
            }
        }
        throw RefusedExtract.damaged("a block without data");
    }

    private void inflate(int from, int length, int expected) {
        raw = raw.length < expected ? new byte[expected] : raw;
        Inflater inflater = new Inflater();
        try {
            inflater.setInput(blob, from, length);
            rawSize = 0;
            while (rawSize < expected) {
                int got = inflater.inflate(raw, rawSize, expected - rawSize);
                if (got == 0) {
                    throw RefusedExtract.damaged("a block that is shorter than it says");
                }
                rawSize += got;
            }
        } catch (DataFormatException e) {
            throw RefusedExtract.damaged("a block that does not inflate");
        } finally {
            inflater.end();
        }
    }

    String type() {
        return type;
    }

    byte[] raw() {
        return raw;
    }

    int rawSize() {
        return rawSize;
    }
}
