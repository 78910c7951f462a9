package courseworthy.cli;

import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;

/** Standard output: text as UTF-8, and results that are no text. What is lost, {@link ResultStream} remembers. */
final class ResultWriter extends PrintWriter {

    private final ResultStream stream;

    ResultWriter(ResultStream stream) {
        super(new OutputStreamWriter(stream, StandardCharsets.UTF_8), false);
        this.stream = stream;
    }

    void write(byte[] bytes) {
        flush();
        try {
            stream.write(bytes, 0, bytes.length);
        } catch (IOException e) {
            setError();
        }
    }
}
