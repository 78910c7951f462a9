package courseworthy.course;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PushbackInputStream;
import java.io.Reader;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/**
 * The characters of an XML file, by its byte-order mark, else by the encoding its first line declares, else as UTF-8; bytes that do not
 * fit are an error. Decoded here and not by the parser, which writes to standard error when bytes do not fit. Bounds how much is taken
 * in.
 */
public final class XmlText extends Reader {

    /** Most characters of a file: 54,000 points (a second each for 15 h) with all sensors take about 25 million. */
    static final int MOST = 64_000_000;
    /** Most characters between two steps of the parser: one tag with its attributes, or one piece of text. */
    static final int MOST_AT_ONCE = 1_000_000;
    private static final int DECLARATION = 200;

    private final Reader in;
    private final boolean webPage;
    private final long most;
    private long total;
    private int sinceStep;
    private boolean ended;

    private XmlText(Reader in, boolean webPage, long most) {
        this.in = in;
        this.webPage = webPage;
        this.most = most;
    }

    /** Says that a bound was reached. */
    public static final class TooMuch extends IOException {

        private static final long serialVersionUID = 1L;

        TooMuch(String found) {
            super(found);
        }
    }

    /** @throws IllegalArgumentException where the declared encoding is not known */
    static XmlText of(InputStream bytes) throws IOException {
        return of(bytes, MOST);
    }

    /**
     * The characters of a file.
     *
     * @param most characters of the file
     * @throws IllegalArgumentException where the declared encoding is not known
     */
    public static XmlText of(InputStream bytes, long most) throws IOException {
        PushbackInputStream in = new PushbackInputStream(bytes, DECLARATION);
        byte[] start = in.readNBytes(DECLARATION);
        int mark = mark(start);
        in.unread(start, mark, start.length - mark);
        String latin = new String(start, StandardCharsets.ISO_8859_1);
        CharsetDecoder strict = charset(start, latin).newDecoder().onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        return new XmlText(new InputStreamReader(in, strict), isWebPage(latin.toLowerCase(Locale.ROOT)), most);
    }

    private static boolean isWebPage(String start) {
        return start.contains("<!doctype html") || start.contains("<html");
    }

    private static boolean starts(byte[] bytes, int first, int second) {
        return bytes.length > 1 && (bytes[0] & 0xFF) == first && (bytes[1] & 0xFF) == second;
    }

    /** Bytes of a byte-order mark. */
    private static int mark(byte[] start) {
        if (starts(start, 0xFE, 0xFF) || starts(start, 0xFF, 0xFE)) {
            return 2;
        }
        return starts(start, 0xEF, 0xBB) && start.length > 2 && (start[2] & 0xFF) == 0xBF ? 3 : 0;
    }

    private static Charset charset(byte[] start, String latin) {
        if (starts(start, 0xFE, 0xFF) || starts(start, 0, '<')) {
            return StandardCharsets.UTF_16BE;
        }
        if (starts(start, 0xFF, 0xFE) || starts(start, '<', 0)) {
            return StandardCharsets.UTF_16LE;
        }
        String declared = mark(start) == 3 ? "" : declared(latin);
        // A file whose declaration can be read byte by byte is not in UTF-16, whatever it says.
        return declared.isEmpty() || declared.regionMatches(true, 0, "utf-16", 0, 6) ? StandardCharsets.UTF_8 : Charset.forName(declared);
    }

    private static String declared(String start) {
        int end = start.indexOf("?>");
        int at = start.indexOf("encoding");
        if (!start.startsWith("<?xml") || at < 0 || at > end) {
            return "";
        }
        int open = at + "encoding".length();
        while (open < end && start.charAt(open) != '"' && start.charAt(open) != '\'') {
            open++;
        }
        int close = start.indexOf(start.charAt(open), open + 1);
        return close < 0 || close > end ? "" : start.substring(open + 1, close).trim();
    }

    /** Whether it starts like HTML, as a page saved in place of the file does. */
    public boolean isWebPage() {
        return webPage;
    }

    /** Whether nothing was there. */
    public boolean isEmpty() {
        return total == 0;
    }

    /** Characters taken in so far. */
    public long total() {
        return total;
    }

    /** Whether its end was reached. */
    public boolean isEnded() {
        return ended;
    }

    /** To be called at each step of the parser. */
    public void step() {
        sinceStep = 0;
    }

    @Override
    public int read(char[] chars, int from, int most) throws IOException {
        int read = in.read(chars, from, most);
        if (read > 0) {
            total += read;
            sinceStep += read;
        }
        ended |= read < 0;
        if (total > this.most) {
            throw new TooMuch("a file over " + this.most / 1_000_000 + " MB");
        }
        if (sinceStep > MOST_AT_ONCE) {
            throw new TooMuch("a single element or text over " + MOST_AT_ONCE / 1_000_000 + " MB");
        }
        return read;
    }

    @Override
    public void close() throws IOException {
        in.close();
    }
}
