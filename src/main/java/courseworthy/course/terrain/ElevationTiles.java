package courseworthy.course.terrain;

import courseworthy.problem.Faults;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import java.util.stream.Stream;

/** A folder of elevation tiles ({@code .hgt}, GeoTIFF), opened where heights are asked for. */
public final class ElevationTiles {

    private static final String EXPECTED = "a folder with elevation tiles (.hgt, .tif)";
    private static final int MOST_FILES = 10_000;
    /** Lowest and highest ground, m: the Dead Sea's shore near -430, Everest 8849 (from memory); beyond them no height is given. */
    private static final double LOWEST = -500;
    private static final double HIGHEST = 9000;
    /** Most heights of a window, so that a track across a large tile does not fill the memory: 4 bytes each. */
    private static final long LARGEST_WINDOW = 14_000_000;

    private final String shown;
    private final List<HeightTile> tiles;
    private final TreeSet<String> used = new TreeSet<>();
    private double spacing;

    private ElevationTiles(String shown, List<HeightTile> tiles) {
        this.shown = shown;
        this.tiles = tiles;
    }

    /**
     * Looks for tiles in a folder and those below it.
     *
     * @param shown its path as the user typed it
     * @return the tiles, the finest first; null with one fault where there are none
     */
    public static ElevationTiles open(Path folder, String shown, Faults faults) {
        if (!Files.isDirectory(folder)) {
            faults.add(shown, 0, "", Files.exists(folder) ? "a file" : "no such folder", EXPECTED, "Give the folder that the tiles are in.");
            return null;
        }
        List<HeightTile> tiles = new ArrayList<>();
        String[] refused = {null, null, null, null};
        try (Stream<Path> files = Files.walk(folder, 4)) {
            for (Path file : files.filter(Files::isRegularFile).limit(MOST_FILES).sorted().toList()) {
                add(file, tiles, refused);
            }
        } catch (IOException | java.io.UncheckedIOException e) {
            faults.add(shown, 0, "", "a folder that cannot be read", EXPECTED, "Check its permissions.");
            return null;
        }
        if (tiles.isEmpty()) {
            faults.add(refused[0] == null ? shown : shown + "/" + refused[0], 0, "", refused[0] == null ? "no elevation tile" : refused[1],
                    refused[0] == null ? EXPECTED : refused[2], refused[0] == null ? "Unpack them first, if they are in archives." : refused[3]);
            return null;
        }
        tiles.forEach(tile -> faults.reads(tile.file()));
        tiles.sort(Comparator.comparingDouble(tile -> tile.frame().spacing()));
        return new ElevationTiles(shown, tiles);
    }

    private static void add(Path file, List<HeightTile> tiles, String[] refused) throws IOException {
        String name = file.getFileName().toString();
        String lower = name.toLowerCase(Locale.ROOT);
        try {
            if (HgtTile.NAME.matcher(name).matches()) {
                tiles.add(HgtTile.of(file));
            } else if (lower.endsWith(".tif") || lower.endsWith(".tiff")) {
                tiles.add(GeoTiffTile.of(file));
            }
        } catch (DamagedTileException e) {
            if (refused[0] == null) {
                refused[0] = name;
                refused[1] = e.getMessage();
                refused[2] = e.expected();
                refused[3] = e.remedy();
            }
        }
    }

    /**
     * Heights of the ground at places.
     *
     * @param latitude  degrees
     * @param longitude degrees
     * @return m, NaN where no tile has one; null with a fault where a tile cannot be read
     */
    public double[] heights(double[] latitude, double[] longitude, Faults faults) {
        double[] out = new double[latitude.length];
        Arrays.fill(out, Double.NaN);
        for (HeightTile tile : tiles) {
            try {
                fill(tile, latitude, longitude, out);
            } catch (DamagedTileException e) {
                faults.add(shown + "/" + tile.file().getFileName(), 0, "", e.getMessage(), e.expected(), e.remedy());
                return null;
            } catch (IOException e) {
                faults.add(shown + "/" + tile.file().getFileName(), 0, "", "a file that cannot be read", "a file that can be read",
                        "Check its permissions.");
                return null;
            }
        }
        return out;
    }

    private void fill(HeightTile tile, double[] latitude, double[] longitude, double[] out) throws IOException {
        GridFrame frame = tile.frame();
        int top = Integer.MAX_VALUE;
        int left = Integer.MAX_VALUE;
        int bottom = -1;
        int right = -1;
        for (int i = 0; i < out.length; i++) {
            if (Double.isNaN(out[i]) && frame.covers(latitude[i], longitude[i])) {
                int row = (int) Math.max(0, Math.min(frame.row(latitude[i]), frame.rows() - 1));
                int column = (int) Math.max(0, Math.min(frame.column(longitude[i]), frame.columns() - 1));
                top = Math.min(top, row);
                left = Math.min(left, column);
                bottom = Math.max(bottom, Math.min(row + 1, frame.rows() - 1));
                right = Math.max(right, Math.min(column + 1, frame.columns() - 1));
            }
        }
        if (bottom < 0) {
            return;
        }
        int rows = bottom - top + 1;
        int columns = right - left + 1;
        if ((long) rows * columns > LARGEST_WINDOW) {
            throw new DamagedTileException("a tile of which " + rows + " by " + columns + " heights are needed", "tiles of at most one degree",
                    "Cut it into tiles of one degree.");
        }
        HeightWindow window = tile.window(top, left, rows, columns);
        for (int i = 0; i < out.length; i++) {
            if (Double.isNaN(out[i]) && frame.covers(latitude[i], longitude[i])) {
                double height = window.at(latitude[i], longitude[i]);
                if (height > LOWEST && height < HIGHEST) {
                    out[i] = height;
                    used.add(tile.file().getFileName().toString());
                    spacing = Math.max(spacing, frame.spacing());
                }
            }
        }
    }

    /** Names of the tiles that gave a height so far. */
    public List<String> used() {
        return List.copyOf(used);
    }

    /** The widest distance between heights of the tiles used so far, m; 0 where none was. */
    public double spacing() {
        return spacing;
    }
}
