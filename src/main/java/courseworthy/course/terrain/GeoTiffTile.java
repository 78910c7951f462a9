package courseworthy.course.terrain;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import mil.nga.tiff.FileDirectory;
import mil.nga.tiff.ImageWindow;
import mil.nga.tiff.Rasters;
import mil.nga.tiff.TiffReader;

/**
 * A GeoTIFF of heights in WGS84 degrees (OGC GeoTIFF 1.1, 19-008r4), one band, below {@link #LARGEST}.
 *
 * @param noHeight the value that stands for no height; NaN where none is named
 */
record GeoTiffTile(Path file, GridFrame frame, double noHeight) implements HeightTile {

    private static final String EXPECTED = "a GeoTIFF of heights in degrees of latitude and longitude";
    /** Largest file read, bytes: a tile of one degree at one second of arc has 52 MB unpacked. */
    private static final long LARGEST = 128L << 20;
    /** Most bytes of one strip or tile unpacked, so that what is packed cannot fill the memory. */
    private static final double LARGEST_BLOCK = 64 << 20;
    /** Deflate packs at most 1032 bytes into one (RFC 1951: 258 bytes to two bits). */
    private static final double MOST_PACKED = 1032;

    private static final int MODEL_TYPE = 1024;
    private static final int GEOGRAPHIC = 2;
    private static final int RASTER_TYPE = 1025;
    private static final int POINT = 2;
    private static final int GEOGRAPHIC_TYPE = 2048;
    private static final int WGS84 = 4326;
    /** European and North American frames, within a metre or two of WGS84, which a tile cannot show. */
    private static final int ETRS89 = 4258;
    private static final int NAD83 = 4269;

    /** @throws DamagedTileException where it is no such file */
    static GeoTiffTile of(Path file) throws IOException {
        if (Files.size(file) > LARGEST) {
            throw new DamagedTileException("a file over " + (LARGEST >> 20) + " MB", EXPECTED, "Cut it into tiles of one degree.");
        }
        return TiffHeader.read(file, header -> new GeoTiffTile(file, frame(header), noHeight(header)));
    }

    private static GridFrame frame(TiffHeader header) throws IOException {
        int columns = (int) header.number(TiffHeader.WIDTH, 0);
        int rows = (int) header.number(TiffHeader.HEIGHT, 0);
        double[] scale = header.numbers(TiffHeader.PIXEL_SCALE);
        double[] tie = header.numbers(TiffHeader.TIE_POINT);
        if (columns < 2 || rows < 2 || header.number(TiffHeader.SAMPLES, 1) != 1) {
            throw new DamagedTileException("a picture of " + columns + " by " + rows + " with " + (int) header.number(TiffHeader.SAMPLES, 1)
                    + " values a place", EXPECTED, "");
        }
        if (scale.length < 2 || tie.length < 6 || !(scale[0] > 0 && scale[1] > 0)) {
            throw new DamagedTileException("a TIFF that does not say where it lies", EXPECTED, "Export it as GeoTIFF in WGS84 (EPSG 4326).");
        }
        double[] keys = header.numbers(TiffHeader.GEO_KEYS);
        int system = key(keys, GEOGRAPHIC_TYPE, WGS84);
        if (key(keys, MODEL_TYPE, GEOGRAPHIC) != GEOGRAPHIC || system != WGS84 && system != ETRS89 && system != NAD83) {
            throw new DamagedTileException("a map grid that is not in WGS84 degrees", EXPECTED, "Convert it to WGS84 (EPSG 4326).");
        }
        blocks(header, columns, rows);
        double half = key(keys, RASTER_TYPE, 1) == POINT ? 0 : 0.5;
        double west = tie[3] + (half - tie[0]) * scale[0];
        double north = tie[4] - (half - tie[1]) * scale[1];
        if (!(Math.abs(west) <= 181 && Math.abs(north) <= 91 && scale[0] < 1 && scale[1] < 1)) {
            throw new DamagedTileException("a place that is not on the globe", EXPECTED, "Export it as GeoTIFF in WGS84 (EPSG 4326).");
        }
        return new GridFrame(north, west, scale[1], scale[0], rows, columns);
    }

    /** The value of a short key of the directory of keys; another where it is missing. */
    private static int key(double[] keys, int wanted, int otherwise) {
        for (int i = 4; i + 3 < keys.length; i += 4) {
            if (keys[i] == wanted && keys[i + 1] == 0) {
                return (int) keys[i + 3];
            }
        }
        return otherwise;
    }

    private static void blocks(TiffHeader header, int columns, int rows) throws IOException {
        boolean tiled = header.has(TiffHeader.TILE_OFFSETS);
        double bytes = header.number(TiffHeader.BITS, 8) / 8;
        double width = tiled ? header.number(TiffHeader.TILE_WIDTH, 0) : columns;
        double height = tiled ? header.number(TiffHeader.TILE_HEIGHT, 0) : Math.min(rows, header.number(TiffHeader.ROWS_PER_STRIP, rows));
        double[] packed = header.numbers(tiled ? TiffHeader.TILE_BYTES : TiffHeader.STRIP_BYTES);
        double wanted = width * height * bytes;
        boolean fine = packed.length > 0 && wanted > 0 && wanted <= LARGEST_BLOCK && bytes <= 8;
        for (double length : packed) {
            fine &= length * MOST_PACKED >= 0 && (length <= 2 * wanted + 1024 || length * MOST_PACKED <= LARGEST_BLOCK);
        }
        if (!fine) {
            throw new DamagedTileException("blocks of a size that cannot be", EXPECTED, "Fetch or export it again.");
        }
    }

    private static double noHeight(TiffHeader header) throws IOException {
        try {
            String text = header.text(TiffHeader.NO_DATA);
            return text.isEmpty() ? Double.NaN : Double.parseDouble(text);
        } catch (NumberFormatException e) {
            return Double.NaN;
        }
    }

    @Override
    public HeightWindow window(int firstRow, int firstColumn, int rows, int columns) throws IOException {
        Rasters read;
        try {
            FileDirectory picture = TiffReader.readTiff(Files.readAllBytes(file)).getFileDirectory();
            read = picture.readRasters(new ImageWindow(firstColumn, firstRow, firstColumn + columns, firstRow + rows));
        } catch (RuntimeException | OutOfMemoryError e) {
            throw new DamagedTileException("heights that cannot be unpacked", EXPECTED, "Fetch it again, or export it without compression.");
        }
        float[] out = new float[rows * columns];
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                double height = read.getFirstPixelSample(column, row).doubleValue();
                out[row * columns + column] = height == noHeight ? Float.NaN : (float) height;
            }
        }
        return new HeightWindow(frame, firstRow, firstColumn, rows, columns, out);
    }
}
