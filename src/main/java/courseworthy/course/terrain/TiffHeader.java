package courseworthy.course.terrain;

import java.io.EOFException;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;

/**
 * The first directory of a TIFF file (TIFF 6.0, Adobe 1992), read without its pixels: each entry is known to lie within the file before
 * a library allots memory for it.
 */
final class TiffHeader {

    static final int WIDTH = 256;
    static final int HEIGHT = 257;
    static final int BITS = 258;
    static final int STRIP_OFFSETS = 273;
    static final int SAMPLES = 277;
    static final int ROWS_PER_STRIP = 278;
    static final int STRIP_BYTES = 279;
    static final int TILE_WIDTH = 322;
    static final int TILE_HEIGHT = 323;
    static final int TILE_OFFSETS = 324;
    static final int TILE_BYTES = 325;
    /** Of GeoTIFF (OGC 19-008r4). */
    static final int PIXEL_SCALE = 33550;
    static final int TIE_POINT = 33922;
    static final int TRANSFORMATION = 34264;
    static final int GEO_KEYS = 34735;
    /** The value that stands for no height, as text: a tag of common use. */
    static final int NO_DATA = 42113;

    private static final int MOST_ENTRIES = 500;
    private static final int MOST_DIRECTORIES = 32;
    /** Bytes of a value of types 1 to 12. */
    private static final int[] TYPE_BYTES = {0, 1, 1, 2, 4, 8, 1, 1, 2, 4, 8, 4, 8};
    private static final int SHORT = 3;
    private static final int LONG = 4;
    private static final int DOUBLE = 12;

    private record Entry(int type, int count, long at) {
    }

    private final FileChannel in;
    private final long size;
    private final Map<Integer, Entry> entries = new HashMap<>();
    private ByteOrder order = ByteOrder.LITTLE_ENDIAN;

    private TiffHeader(FileChannel in) throws IOException {
        this.in = in;
        this.size = in.size();
    }

    /** What is done with a header while its file is open. */
    interface FileFunction<T> {
        T of(TiffHeader header) throws IOException;
    }

    /** @throws DamagedTileException where the file is no TIFF, or points outside itself */
    static <T> T read(Path file, FileFunction<T> use) throws IOException {
        try (FileChannel in = FileChannel.open(file)) {
            TiffHeader header = new TiffHeader(in);
            header.directories();
            return use.of(header);
        } catch (EOFException e) {
            throw damaged("the end of the file inside its directory");
        }
    }

    private static DamagedTileException damaged(String found) {
        return new DamagedTileException(found, "a GeoTIFF of heights", "Fetch or export it again.");
    }

    private void directories() throws IOException {
        ByteBuffer start = bytes(0, 8);
        int mark = start.getShort(0);
        if (mark == 0x4D4D) {
            order = ByteOrder.BIG_ENDIAN;
        } else if (mark != 0x4949) {
            throw damaged("a file that is no TIFF");
        }
        start.order(order);
        int version = start.getShort(2);
        if (version == 43) {
            throw new DamagedTileException("a BigTIFF", "a plain GeoTIFF, below 4 GB", "Cut it into tiles of one degree.");
        }
        if (version != 42) {
            throw damaged("a file that is no TIFF");
        }
        long at = start.getInt(4) & 0xFFFFFFFFL;
        for (int i = 0; at != 0; i++) {
            if (i == MOST_DIRECTORIES) {
                throw damaged("more than " + MOST_DIRECTORIES + " pictures, or one that leads back to itself");
            }
            at = directory(at, i == 0);
        }
    }

    /** @return where the next one stands, 0 where there is none */
    private long directory(long at, boolean kept) throws IOException {
        int count = bytes(at, 2).getShort(0) & 0xFFFF;
        if (count == 0 || count > MOST_ENTRIES) {
            throw damaged("a directory of " + count + " entries");
        }
        ByteBuffer all = bytes(at + 2, 12 * count + 4);
        for (int i = 0; i < count; i++) {
            int tag = all.getShort(12 * i) & 0xFFFF;
            int type = all.getShort(12 * i + 2);
            long values = all.getInt(12 * i + 4) & 0xFFFFFFFFL;
            long length = type < 1 || type >= TYPE_BYTES.length ? values : values * TYPE_BYTES[type];
            long from = length <= 4 ? at + 2 + 12L * i + 8 : all.getInt(12 * i + 8) & 0xFFFFFFFFL;
            if (from + length > size) {
                throw damaged("an entry that lies outside the file");
            }
            if (kept) {
                entries.putIfAbsent(tag, new Entry(type, (int) Math.min(values, Integer.MAX_VALUE), from));
            }
        }
        return all.getInt(12 * count) & 0xFFFFFFFFL;
    }

    private ByteBuffer bytes(long at, int length) throws IOException {
        if (at + length > size) {
            throw new EOFException();
        }
        ByteBuffer out = ByteBuffer.allocate(length).order(order);
        while (out.hasRemaining()) {
            if (in.read(out, at + out.position()) < 0) {
                throw new EOFException();
            }
        }
        return out;
    }

    boolean has(int tag) {
        return entries.containsKey(tag);
    }

    /** Numbers of an entry; none where it is missing or no list of numbers. */
    double[] numbers(int tag) throws IOException {
        Entry entry = entries.get(tag);
        if (entry == null || entry.type != SHORT && entry.type != LONG && entry.type != DOUBLE) {
            return new double[0];
        }
        ByteBuffer all = bytes(entry.at, entry.count * TYPE_BYTES[entry.type]);
        double[] out = new double[entry.count];
        for (int i = 0; i < out.length; i++) {
            out[i] = switch (entry.type) {
                case SHORT -> all.getShort(2 * i) & 0xFFFF;
                case LONG -> all.getInt(4 * i) & 0xFFFFFFFFL;
                default -> all.getDouble(8 * i);
            };
        }
        return out;
    }

    /** The first number of an entry, or another where it has none. */
    double number(int tag, double otherwise) throws IOException {
        double[] all = numbers(tag);
        return all.length == 0 ? otherwise : all[0];
    }

    /** The text of an entry; empty where it is missing or no text. */
    String text(int tag) throws IOException {
        Entry entry = entries.get(tag);
        if (entry == null || entry.type != 2 || entry.count > 100) {
            return "";
        }
        return new String(bytes(entry.at, entry.count).array(), StandardCharsets.US_ASCII).replace("\0", "").strip();
    }
}
