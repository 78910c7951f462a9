package courseworthy.course;

import courseworthy.problem.Fault;
import java.io.ByteArrayInputStream;
import java.io.EOFException;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PushbackInputStream;
import java.util.Arrays;
import java.util.zip.GZIPInputStream;
import java.util.zip.ZipException;

/**
 * Files compressed by gzip (RFC 1952), known by their first two bytes. They are unpacked as they are read, so that who reads bounds how much
 * comes out of them ({@link XmlText}).
 */
public final class GzipFile {

    private static final int FIRST = 0x1F;
    private static final int SECOND = 0x8B;

    private GzipFile() {
    }

    /** Says that the compressed data are not whole. */
    public static final class DamagedGzipException extends IOException {

        private static final long serialVersionUID = 1L;

        /** What is said of the file that was read. */
        public Fault fault(String shown) {
            return Fault.of(shown, 0, "", "a compressed file (gzip) that is cut short or damaged", "a whole one", "Fetch or export it again.");
        }
    }

    /** Whether a file that starts so is compressed. */
    public static boolean is(byte[] start) {
        return start.length > 1 && (start[0] & 0xFF) == FIRST && (start[1] & 0xFF) == SECOND;
    }

    /** What the first bytes of a compressed file unpack to, as far as they go; empty where they are damaged. */
    public static byte[] start(byte[] start) {
        byte[] out = new byte[64];
        int size = 0;
        try (InputStream in = new GZIPInputStream(new ByteArrayInputStream(start))) {
            for (int read = in.read(); read >= 0 && size < out.length; read = in.read()) {
                out[size++] = (byte) read;
            }
        } catch (IOException cut) {
            // The first bytes end before the file does.
        }
        return Arrays.copyOf(out, size);
    }

    /** The bytes as they are, or unpacked where they are compressed. */
    public static InputStream unpacked(InputStream bytes) throws IOException {
        PushbackInputStream in = new PushbackInputStream(bytes, 2);
        byte[] start = in.readNBytes(2);
        in.unread(start);
        return is(start) ? new Whole(in) : in;
    }

    /** Tells damage from other trouble with reading. */
    private static final class Whole extends FilterInputStream {

        Whole(InputStream in) throws IOException {
            super(opened(in));
        }

        private static InputStream opened(InputStream in) throws IOException {
            try {
                return new GZIPInputStream(in);
            } catch (EOFException | ZipException e) {
                throw new DamagedGzipException();
            }
        }

        @Override
        public int read() throws IOException {
            byte[] one = new byte[1];
            return read(one, 0, 1) < 0 ? -1 : one[0] & 0xFF;
        }

        @Override
        public int read(byte[] bytes, int from, int most) throws IOException {
            try {
                return in.read(bytes, from, most);
            } catch (EOFException | ZipException e) {
                throw new DamagedGzipException();
            }
        }
    }
}
