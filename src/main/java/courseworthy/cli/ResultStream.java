package courseworthy.cli;

import java.io.IOException;
import java.io.OutputStream;

/** Standard output that remembers whether it took everything: writers on top of it keep quiet about that. */
final class ResultStream extends OutputStream {

    private final OutputStream out;
    private IOException failure;

    ResultStream(OutputStream out) {
        this.out = out;
    }

    /** Why something was lost; null where nothing was. */
    IOException failure() {
        return failure;
    }

    @Override
    public void write(int one) throws IOException {
        write(new byte[] {(byte) one}, 0, 1);
    }

    @Override
    public void write(byte[] bytes, int from, int length) throws IOException {
        try {
            out.write(bytes, from, length);
        } catch (IOException e) {
            throw lost(e);
        }
    }

    @Override
    public void flush() throws IOException {
        try {
            out.flush();
        } catch (IOException e) {
            throw lost(e);
        }
    }

    private IOException lost(IOException e) {
        failure = failure == null ? e : failure;
        return e;
    }
}
