package courseworthy.course.terrain;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.TreeMap;
import java.util.zip.DeflaterOutputStream;

/** Writes elevation tiles by the published layouts, independently of what reads them. */
public final class TileFiles {

    private TileFiles() {
    }

    /** The height of a place, m. */
    public interface Ground {
        double height(double latitude, double longitude);
    }

    /** A tile of one degree, rows from the north, edges included. Heights of NaN are written as none. */
    public static Path hgt(Path folder, String name, int south, int west, int side, Ground ground) {
        ByteBuffer out = ByteBuffer.allocate(2 * side * side).order(ByteOrder.BIG_ENDIAN);
        for (int row = 0; row < side; row++) {
            for (int column = 0; column < side; column++) {
                double height = ground.height(south + 1 - (double) row / (side - 1), west + (double) column / (side - 1));
                out.putShort(Double.isNaN(height) ? Short.MIN_VALUE : (short) Math.round(height));
            }
        }
        return write(folder.resolve(name), out.array());
    }

    /** A GeoTIFF of a second of arc over the strip from 9.38 to 9.48 degrees east along 46.5 north: as fine as any, and soon written. */
    public static Path fineStrip(Path folder, Ground ground) {
        GeoTiff tiff = new GeoTiff();
        tiff.north = 46.51;
        tiff.west = 9.38;
        tiff.step = 1.0 / 3600;
        tiff.rows = 72;
        tiff.columns = 360;
        tiff.ground = ground;
        return write(folder.resolve("strip.tif"), tiff.bytes());
    }

    static Path write(Path file, byte[] bytes) {
        try {
            Files.createDirectories(file.getParent());
            return Files.write(file, bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A GeoTIFF of 32-bit floating heights in one strip; fields may be changed before it is made. */
    static final class GeoTiff {
        double north = 47;
        double west = 9;
        double step = 0.001;
        int rows = 200;
        int columns = 300;
        boolean deflate;
        boolean points;
        ByteOrder order = ByteOrder.LITTLE_ENDIAN;
        int model = 2;
        int system = 4326;
        String noData = "-9999";
        int claimedWidth = -1;
        int version = 42;
        Ground ground = (lat, lon) -> 0;

        /** Heights stand at the middles of the cells whose north-west corner is {@code north}, {@code west}, or at the corners. */
        byte[] bytes() {
            ByteBuffer heights = ByteBuffer.allocate(4 * rows * columns).order(order);
            double half = points ? 0 : 0.5;
            for (int row = 0; row < rows; row++) {
                for (int column = 0; column < columns; column++) {
                    double height = ground.height(north - (row + half) * step, west + (column + half) * step);
                    heights.putFloat(Double.isNaN(height) ? -9999 : (float) height);
                }
            }
            byte[] strip = deflate ? deflated(heights.array()) : heights.array();
            TreeMap<Integer, Object> tags = new TreeMap<>();
            tags.put(256, claimedWidth < 0 ? columns : claimedWidth);
            tags.put(257, rows);
            tags.put(258, new int[] {32});
            tags.put(259, new int[] {deflate ? 8 : 1});
            tags.put(262, new int[] {1});
            tags.put(273, 8);
            tags.put(277, new int[] {1});
            tags.put(278, rows);
            tags.put(279, strip.length);
            tags.put(339, new int[] {3});
            tags.put(33550, new double[] {step, step, 0});
            tags.put(33922, new double[] {0, 0, 0, west, north, 0});
            tags.put(34735, new int[] {1, 1, 0, 3, 1024, 0, 1, model, 1025, 0, 1, points ? 2 : 1, 2048, 0, 1, system});
            tags.put(42113, noData);
            return file(strip, tags);
        }

        private byte[] file(byte[] strip, TreeMap<Integer, Object> tags) {
            int directory = 8 + strip.length + strip.length % 2;
            int values = directory + 2 + 12 * tags.size() + 4;
            ByteBuffer out = ByteBuffer.allocate(values + 1000).order(order);
            out.put(order == ByteOrder.LITTLE_ENDIAN ? new byte[] {'I', 'I'} : new byte[] {'M', 'M'}).putShort((short) version).putInt(directory);
            out.put(strip).position(directory);
            out.putShort((short) tags.size());
            for (var tag : tags.entrySet()) {
                ByteBuffer value = value(tag.getValue());
                int type = tag.getValue() instanceof Integer ? 4 : tag.getValue() instanceof double[] ? 12 : tag.getValue() instanceof int[] ? 3 : 2;
                int count = value.limit() / (type == 4 ? 4 : type == 12 ? 8 : type == 3 ? 2 : 1);
                out.putShort((short) (int) tag.getKey()).putShort((short) type).putInt(count);
                if (value.limit() <= 4) {
                    out.put(value).position(out.position() + 4 - value.limit());
                } else {
                    out.putInt(values);
                    out.put(values, value.array(), 0, value.limit());
                    values += value.limit() + value.limit() % 2;
                }
            }
            out.putInt(0);
            byte[] all = new byte[values];
            System.arraycopy(out.array(), 0, all, 0, values);
            return all;
        }

        private ByteBuffer value(Object value) {
            ByteBuffer out = ByteBuffer.allocate(200).order(order);
            if (value instanceof Integer number) {
                out.putInt(number);
            } else if (value instanceof double[] numbers) {
                for (double number : numbers) {
                    out.putDouble(number);
                }
            } else if (value instanceof int[] numbers) {
                for (int number : numbers) {
                    out.putShort((short) number);
                }
            } else {
                out.put(((String) value + "\0").getBytes(StandardCharsets.US_ASCII));
            }
            return out.flip();
        }
    }

    static byte[] deflated(byte[] bytes) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (DeflaterOutputStream deflater = new DeflaterOutputStream(out)) {
            deflater.write(bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }
}
