package courseworthy.course.extract;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.zip.CRC32;
import java.util.zip.CRC32C;
import java.util.zip.Checksum;

/**
 * The bytes of a map file from its start to its end: how many have been read, and a digest that tells the file from others.
 *
 * <p>The digest is SHA-256 (FIPS 180-4) over the checksums CRC-32 and CRC-32C of each piece of 1 MiB, since SHA-256 over all bytes would take
 * longer than reading the map. It tells files apart that differ by a copy, a download or a year; it is no proof against intent.
 */
final class ExtractStream extends InputStream {

    private static final int PIECE = 1 << 20;

    private final InputStream in;
    private final long size;
    private final MessageDigest digest;
    private final Checksum[] checksums = {new CRC32(), new CRC32C()};
    private long position;

    private ExtractStream(InputStream in, long size) {
        this.in = in;
        this.size = size;
        try {
            digest = MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException never) {
            throw new IllegalStateException("every Java platform has SHA-256", never);
        }
    }

    static ExtractStream of(Path path) throws IOException {
        return new ExtractStream(Files.newInputStream(path), Files.size(path));
    }

    @Override
    public int read() throws IOException {
        byte[] one = new byte[1];
        return read(one, 0, 1) < 0 ? -1 : one[0] & 0xFF;
    }

    @Override
    public int read(byte[] bytes, int from, int most) throws IOException {
        int inPiece = PIECE - (int) (position % PIECE);
        int read = in.read(bytes, from, Math.min(most, inPiece));
        if (read > 0) {
            checksums[0].update(bytes, from, read);
            checksums[1].update(bytes, from, read);
            position += read;
            if (position % PIECE == 0) {
                piece();
            }
        }
        return read;
    }

    private void piece() {
        ByteBuffer sums = ByteBuffer.allocate(16);
        for (Checksum each : checksums) {
            sums.putLong(each.getValue());
            each.reset();
        }
        digest.update(sums.array());
    }

    /** Bytes read so far. */
    long position() {
        return position;
    }

    /** Bytes of the whole file. */
    long size() {
        return size;
    }

    /** Reads what is left, and gives the digest in hexadecimal digits. */
    String digest() throws IOException {
        byte[] rest = new byte[1 << 16];
        while (read(rest, 0, rest.length) >= 0) {
            // The checksums are all that is wanted.
        }
        piece();
        return HexFormat.of().formatHex(digest.digest(ByteBuffer.allocate(8).putLong(position).array()));
    }

    @Override
    public void close() throws IOException {
        in.close();
    }
}
