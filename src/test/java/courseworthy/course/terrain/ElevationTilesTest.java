package courseworthy.course.terrain;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.problem.Faults;
import java.nio.ByteOrder;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Tiles are written by the published layouts (SRTM Topography, USGS 2005; TIFF 6.0; OGC GeoTIFF 19-008r4), see {@link TileFiles}. */
class ElevationTilesTest {

    /** A plane: 100 m a degree to the north, 200 m a degree to the east; whole metres on the lattice of 101. */
    private static final TileFiles.Ground PLANE = (lat, lon) -> 500 + 100 * (lat - 46) + 200 * (lon - 9);

    @TempDir
    Path folder;
    private final Faults faults = new Faults();

    private double height(double latitude, double longitude) {
        ElevationTiles tiles = ElevationTiles.open(folder, "tiles", faults);
        assertThat(faults.faults()).isEmpty();
        return tiles.heights(new double[] {latitude}, new double[] {longitude}, faults)[0];
    }

    @ParameterizedTest
    @ValueSource(strings = {"N46E009.hgt", "n46e009.hgt", "N46E009.SRTMGL1.hgt"})
    void aTileIsPlacedByTheCornerInItsName(String name) {
        TileFiles.hgt(folder, name, 46, 9, 101, PLANE);

        assertThat(height(46.5, 9.25)).isEqualTo(PLANE.height(46.5, 9.25));
        assertThat(height(46.0, 9.0)).isEqualTo(PLANE.height(46, 9));
        assertThat(height(47.0, 10.0)).isEqualTo(PLANE.height(47, 10));
    }

    @Test
    void southAndWestAreBelowZero() {
        TileFiles.hgt(folder, "S34W071.hgt", -34, -71, 101, (lat, lon) -> 5000 + 100 * lat - 20 * lon);

        assertThat(height(-33.25, -70.75)).isEqualTo(5000 - 3325 + 1415);
    }

    @Test
    void aHeightBetweenFourIsOnThePlaneThroughThem() {
        TileFiles.hgt(folder, "N46E009.hgt", 46, 9, 101, PLANE);

        assertThat(height(46.1234, 9.4567)).isCloseTo(PLANE.height(46.1234, 9.4567), org.assertj.core.data.Offset.offset(0.001));
    }

    @Test
    void whereATileHasNoHeightACoarserOneIsAsked() {
        TileFiles.hgt(folder, "N46E009.hgt", 46, 9, 201, (lat, lon) -> lat > 46.5 ? Double.NaN : 500);
        TileFiles.hgt(folder.resolve("coarse"), "N46E009.hgt", 46, 9, 101, (lat, lon) -> 900);

        assertThat(height(46.25, 9.5)).isEqualTo(500);
        assertThat(height(46.75, 9.5)).isEqualTo(900);
        assertThat(height(48.75, 9.5)).isNaN();
    }

    @ParameterizedTest
    @ValueSource(strings = {"raw", "deflate", "points", "big-endian"})
    void aGeoTiffIsPlacedByItsTags(String kind) {
        TileFiles.GeoTiff tiff = new TileFiles.GeoTiff();
        tiff.ground = PLANE;
        tiff.deflate = kind.equals("deflate");
        tiff.points = kind.equals("points");
        tiff.order = kind.equals("big-endian") ? ByteOrder.BIG_ENDIAN : ByteOrder.LITTLE_ENDIAN;
        TileFiles.write(folder.resolve("heights.tif"), tiff.bytes());

        assertThat(height(46.9123, 9.1234)).isCloseTo(PLANE.height(46.9123, 9.1234), org.assertj.core.data.Offset.offset(0.01));
    }

    @Test
    void aHeightMissingInAGeoTiffIsNone() {
        TileFiles.GeoTiff tiff = new TileFiles.GeoTiff();
        tiff.ground = (lat, lon) -> lon > 9.1 ? Double.NaN : 300;
        TileFiles.write(folder.resolve("heights.tif"), tiff.bytes());

        assertThat(height(46.95, 9.05)).isEqualTo(300);
        assertThat(height(46.95, 9.15)).isNaN();
    }

    @Test
    void twoTilesThatMeetWithoutSharingAnEdgeLeaveNoGap() {
        for (int i = 0; i < 2; i++) {
            TileFiles.GeoTiff tiff = new TileFiles.GeoTiff();
            tiff.west = 9 + i * 0.3;
            tiff.ground = (lat, lon) -> 700;
            TileFiles.write(folder.resolve("heights" + i + ".tif"), tiff.bytes());
        }

        for (double lon = 9.29; lon < 9.31; lon += 0.0001) {
            assertThat(height(46.9, lon)).isCloseTo(700, org.assertj.core.data.Offset.offset(1e-6));
        }
    }

    private String refused(String name, byte[] bytes) {
        TileFiles.write(folder.resolve(name), bytes);
        ElevationTiles tiles = ElevationTiles.open(folder, "tiles", faults);
        if (tiles != null) {
            assertThat(tiles.heights(new double[] {46.9}, new double[] {9.1}, faults)).isNull();
        }
        assertThat(faults.faults()).hasSize(1);
        return faults.faults().get(0).toString();
    }

    @Test
    void aTileCutShortIsRefused() {
        assertThat(refused("N46E009.hgt", new byte[2 * 1201 * 1201 - 7])).contains("tiles/N46E009.hgt").contains("a file of 2884795 bytes");
    }

    @Test
    void aTileOfNoPlaceIsRefused() {
        assertThat(refused("N96E009.hgt", new byte[2 * 11 * 11])).contains("a corner that is not on the globe");
    }

    @Test
    void aFolderWithoutTilesIsRefused() {
        assertThat(refused("readme.txt", new byte[10])).contains("no elevation tile");
    }

    @Test
    void aMapGridInMetresIsRefused() {
        TileFiles.GeoTiff tiff = new TileFiles.GeoTiff();
        tiff.model = 1;
        assertThat(refused("a.tif", tiff.bytes())).contains("a map grid that is not in WGS84 degrees").contains("EPSG 4326");
    }

    @Test
    void aBigTiffIsRefused() {
        TileFiles.GeoTiff tiff = new TileFiles.GeoTiff();
        tiff.version = 43;
        assertThat(refused("a.tif", tiff.bytes())).contains("a BigTIFF");
    }

    @Test
    void aPictureIsRefused() {
        assertThat(refused("a.tif", "\211PNG and what follows".getBytes(java.nio.charset.StandardCharsets.ISO_8859_1))).contains("no TIFF");
    }

    @Test
    void aStripThatUnpacksToAGigabyteIsRefused() {
        TileFiles.GeoTiff tiff = new TileFiles.GeoTiff();
        tiff.claimedWidth = 300_000_000;
        assertThat(refused("a.tif", tiff.bytes())).contains("blocks of a size that cannot be");
    }

    @Test
    void everyFileCutShortOrSpoiltIsAnswered() {
        TileFiles.GeoTiff tiff = new TileFiles.GeoTiff();
        tiff.rows = 20;
        tiff.columns = 30;
        byte[] whole = tiff.bytes();
        for (int i = 0; i < whole.length; i += i < 2390 ? 97 : 1) {
            answered(Arrays.copyOf(whole, i));
            byte[] spoilt = whole.clone();
            spoilt[i] ^= (byte) 0xFF;
            answered(spoilt);
        }
    }

    /** Heights or one fault, and nothing thrown. */
    private void answered(byte[] bytes) {
        TileFiles.write(folder.resolve("a.tif"), bytes);
        Faults found = new Faults();
        ElevationTiles tiles = ElevationTiles.open(folder, "tiles", found);
        double[] heights = tiles == null ? null : tiles.heights(new double[] {46.99}, new double[] {9.01}, found);
        assertThat(found.faults()).hasSize(heights == null ? 1 : 0);
    }
}
