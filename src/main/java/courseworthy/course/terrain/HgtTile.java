package courseworthy.course.terrain;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A tile of one degree by one degree named by its south-west corner, {@code N46E007.hgt}: a square of signed 16-bit heights in metres, most
 * significant byte first, rows from north to south, whose outermost heights lie on the edges of the degree; -32768 is no height (SRTM
 * Topography, U.S. Geological Survey, 2005: 1201 by 1201 for 3 seconds of arc, 3601 by 3601 for one).
 */
record HgtTile(Path file, GridFrame frame) implements HeightTile {

    static final Pattern NAME = Pattern.compile("(?i)([NS])(\\d{2})([EW])(\\d{3}).*\\.hgt");
    private static final short NONE = Short.MIN_VALUE;
    private static final String EXPECTED = "a square of two-byte heights, 1201 by 1201 or 3601 by 3601";
    private static final int LARGEST = 10801;

    /** @throws DamagedTileException where its size is not that of a square */
    static HgtTile of(Path file) throws IOException {
        Matcher name = NAME.matcher(file.getFileName().toString());
        if (!name.matches()) {
            throw new DamagedTileException("a name that says no corner", "a name such as N46E007.hgt", "Give it the name it came with.");
        }
        double south = Integer.parseInt(name.group(2)) * (name.group(1).equalsIgnoreCase("S") ? -1 : 1);
        double west = Integer.parseInt(name.group(4)) * (name.group(3).equalsIgnoreCase("W") ? -1 : 1);
        if (south < -90 || south > 89 || west < -180 || west > 179) {
            throw new DamagedTileException("a corner that is not on the globe", "a name such as N46E007.hgt", "Give it the name it came with.");
        }
        long size = Files.size(file);
        int side = (int) Math.round(Math.sqrt(size / 2.0));
        if (side < 2 || side > LARGEST || 2L * side * side != size) {
            throw new DamagedTileException("a file of " + size + " bytes", EXPECTED, "It was cut short or is still packed: fetch or unpack it again.");
        }
        double step = 1.0 / (side - 1);
        return new HgtTile(file, new GridFrame(south + 1, west, step, step, side, side));
    }

    @Override
    public HeightWindow window(int firstRow, int firstColumn, int rows, int columns) throws IOException {
        float[] out = new float[rows * columns];
        ByteBuffer line = ByteBuffer.allocate(2 * columns).order(ByteOrder.BIG_ENDIAN);
        try (FileChannel in = FileChannel.open(file)) {
            for (int row = 0; row < rows; row++) {
                line.clear();
                long from = 2L * ((long) (firstRow + row) * frame.columns() + firstColumn);
                while (line.hasRemaining()) {
                    int read = in.read(line, from + line.position());
                    if (read < 0) {
                        throw new DamagedTileException("the end of the file among its heights", EXPECTED, "Fetch it again.");
                    }
                }
                for (int column = 0; column < columns; column++) {
                    short height = line.getShort(2 * column);
                    out[row * columns + column] = height == NONE ? Float.NaN : height;
                }
            }
        }
        return new HeightWindow(frame, firstRow, firstColumn, rows, columns, out);
    }
}
