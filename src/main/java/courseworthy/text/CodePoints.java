package courseworthy.text;

import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.reader.ReaderException;
import org.yaml.snakeyaml.reader.StreamReader;

/**
 * What the parser reads from: a whole file in one array. The library's own reader copies all it has taken in for every thousand characters
 * more, so that a long text costs the square of its length; here each look costs the same. Counts the looks, as a measure of the work
 * that a file makes.
 */
final class CodePoints extends StreamReader {

    private final int[] points;
    /** Index of the first character that YAML does not allow, or of the end. */
    private final int sound;
    private int at;
    private int line;
    private int column;
    private int documentFrom;
    private long looks;

    CodePoints(int[] points) {
        super("");
        this.points = points;
        int i = 0;
        while (i < points.length && isPrintable(points[i])) {
            i++;
        }
        this.sound = i;
    }

    /** Characters looked at so far, each as often as it was. */
    long looks() {
        return looks;
    }

    /** @throws ReaderException where that is a character that YAML does not allow, or one behind it */
    private int point(int index) {
        if (index < sound) {
            return points[index];
        }
        if (sound < points.length) {
            throw new ReaderException("", sound, points[sound], "special characters are not allowed");
        }
        return 0;
    }

    @Override
    public int peek() {
        looks++;
        return point(at);
    }

    @Override
    public int peek(int ahead) {
        looks++;
        return point(at + ahead);
    }

    @Override
    public void forward() {
        forward(1);
    }

    @Override
    public void forward(int length) {
        looks += length;
        for (int i = 0; i < length && at < points.length; i++) {
            int point = point(at);
            at++;
            boolean breaks = point == '\n' || point == '\u0085' || point == '\u2028' || point == '\u2029'
                    || point == '\r' && (at == points.length || points[at] != '\n');
            if (breaks) {
                line++;
                column = 0;
            } else if (point != '\uFEFF') {
                column++;
            }
        }
    }

    @Override
    public String prefix(int length) {
        looks += length;
        int to = Math.min(at + length, points.length);
        if (to > at) {
            point(to - 1);
        }
        return new String(points, at, to - at);
    }

    @Override
    public String prefixForward(int length) {
        String out = prefix(length);
        at += length;
        column += length;
        return out;
    }

    @Override
    public Mark getMark() {
        return new Mark("", at, line, column, points, Math.min(at, points.length));
    }

    @Override
    public int getColumn() {
        return column;
    }

    @Override
    public int getLine() {
        return line;
    }

    @Override
    public int getIndex() {
        return at;
    }

    @Override
    public int getDocumentIndex() {
        return at - documentFrom;
    }

    @Override
    public void resetDocumentIndex() {
        documentFrom = at;
    }
}
