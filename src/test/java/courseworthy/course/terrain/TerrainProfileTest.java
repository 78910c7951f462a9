package courseworthy.course.terrain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import courseworthy.course.Interval;
import courseworthy.course.Track;
import courseworthy.problem.Faults;
import java.nio.file.Path;
import java.util.List;
import net.sf.geographiclib.Geodesic;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TerrainProfileTest {

    @TempDir
    Path folder;

    /** Due east along a parallel, a point every so many metres (GeographicLib). */
    private static Track east(double latitude, double longitude, double step, int points, double... heights) {
        double[] lat = new double[points];
        double[] lon = new double[points];
        double[] distance = new double[points];
        double[] height = new double[points];
        for (int i = 0; i < points; i++) {
            var at = Geodesic.WGS84.Direct(latitude, longitude, 90, i * step);
            lat[i] = at.lat2;
            lon[i] = at.lon2;
            distance[i] = i * step;
            height[i] = heights.length == 0 ? Double.NaN : heights[i];
        }
        return new Track(List.of(new Track.TrackPiece(lat, lon, distance, height)), Track.Elevation.KNOWN);
    }

    private TerrainProfile over(Track track, TileFiles.Ground ground, Interval... bridged) {
        TileFiles.fineStrip(folder, ground);
        Faults faults = new Faults();
        TerrainProfile out = TerrainProfile.along(track, ElevationTiles.open(folder, "tiles", faults), List.of(bridged), faults);
        assertThat(faults.faults()).isEmpty();
        return out;
    }

    private static double at(TerrainProfile profile, double distance) {
        Track.TrackPiece piece = profile.pieces().get(0);
        for (int i = 0; i < piece.size(); i++) {
            if (Math.abs(piece.distance()[i] - distance) < 0.01) {
                return piece.elevation()[i];
            }
        }
        throw new AssertionError("no point at " + distance);
    }

    @Test
    void aSparseTrackFollowsTheGroundBetweenItsPoints() {
        // A ridge 600 m wide and 150 m high between two points 1 km apart: 0.0066 degrees of longitude are 500 m at 46.5 north.
        TerrainProfile profile = over(east(46.5, 9.4, 1000, 2), (lat, lon) -> 500 + Math.max(0, 150 - 150 * Math.abs(lon - 9.40652) / 0.0039));

        assertThat(at(profile, 0)).isEqualTo(500, within(0.5));
        assertThat(at(profile, 500)).isBetween(630.0, 650.0);
        assertThat(at(profile, 1000)).isEqualTo(500, within(0.5));
        assertThat(profile.covered()).isEqualTo(1);
    }

    @Test
    void anEvenSlopeIsKept() {
        TerrainProfile profile = over(east(46.5, 9.4, 50, 41), (lat, lon) -> 500 + (lon - 9.4) * 5000);

        Track.TrackPiece piece = profile.pieces().get(0);
        double rise = piece.elevation()[piece.size() - 1] - piece.elevation()[0];
        // 2 km are 0.02607 degrees at 46.5 north (GeographicLib): 130.4 m.
        assertThat(rise).isEqualTo(130.4, within(1.0));
    }

    @Test
    void aBridgeIsCarriedOverTheGorge() {
        TileFiles.Ground gorge = (lat, lon) -> Math.abs(lon - 9.413) < 0.0013 ? 400 : 500;

        assertThat(at(over(east(46.5, 9.4, 20, 101), gorge), 1000)).isLessThan(420);
        assertThat(at(over(east(46.5, 9.4, 20, 101), gorge, new Interval(850, 1150)), 1000)).isEqualTo(500, within(1.0));
    }

    @Test
    void aTunnelIsCarriedThroughTheHill() {
        TileFiles.Ground hill = (lat, lon) -> Math.abs(lon - 9.413) < 0.0013 ? 700 : 500;

        assertThat(at(over(east(46.5, 9.4, 20, 101), hill, new Interval(850, 1150)), 1000)).isEqualTo(500, within(1.0));
    }

    @Test
    void aBridgeOverTheEndsOfAPieceChangesNothingElse() {
        TileFiles.Ground plane = (lat, lon) -> 500 + (lon - 9.4) * 5000;
        TerrainProfile without = over(east(46.5, 9.4, 20, 101), plane);
        TerrainProfile with = over(east(46.5, 9.4, 20, 101), plane, new Interval(5000, 6000), new Interval(-50, 0));

        assertThat(with.pieces().get(0).elevation()).containsExactly(without.pieces().get(0).elevation());
    }

    @Test
    void whatLiesOutsideTheTilesIsNotCovered() {
        // From 9.99 to the tile's edge at 10 are 767 m of 1534 m at 46.5 north (GeographicLib: 76,734 m to a degree).
        TileFiles.hgt(folder, "N46E009.hgt", 46, 9, 1201, (lat, lon) -> 500);
        TerrainProfile profile = over(east(46.5, 9.99, 15.34, 101), (lat, lon) -> 500);

        assertThat(profile.covered()).isEqualTo(0.5, within(0.05));
    }

    @Test
    void aConstantDifferenceIsNoStraying() {
        double[] heights = new double[101];
        java.util.Arrays.fill(heights, 540);
        TerrainProfile profile = over(east(46.5, 9.4, 20, 101), (lat, lon) -> 500);

        assertThat(profile.strays(east(46.5, 9.4, 20, 101, heights))).isEqualTo(0, within(1e-6));
        for (int i = 0; i < heights.length; i++) {
            heights[i] += i % 10 < 2 ? 30 : 0;
        }
        // A fifth of the points is off by 30 m, so that the worst tenth begins among them.
        assertThat(profile.strays(east(46.5, 9.4, 20, 101, heights))).isEqualTo(30, within(1e-6));
    }
}
