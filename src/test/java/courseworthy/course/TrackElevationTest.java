package courseworthy.course;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import courseworthy.course.terrain.ElevationTiles;
import courseworthy.course.terrain.TileFiles;
import courseworthy.problem.Faults;
import java.nio.file.Path;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TrackElevationTest {

    @TempDir
    Path folder;
    private final Faults faults = new Faults();

    @BeforeEach
    void tile() {
        // A pass: up 300 m over 0.02 degrees and down again.
        TileFiles.fineStrip(folder, (lat, lon) -> 500 + Math.max(0, 300 - Math.abs(lon - 9.42) * 15_000));
    }

    /** 4.6 km due east over the pass, a point every 0.0005 degrees, 38 m. */
    private TrackCleaner.CleanedTrack chosen(IntToDoubleFunction heights) {
        int points = 121;
        double[] lat = new double[points];
        double[] lon = new double[points];
        double[] elevation = new double[points];
        for (int i = 0; i < points; i++) {
            lat[i] = 46.5;
            lon[i] = 9.39 + 0.0005 * i;
            elevation[i] = heights.applyAsDouble(i);
        }
        GpxFile gpx = new GpxFile("", List.of(new GpxFile.Segment(lat, lon, elevation, new double[lat.length])), false, 0, List.of());
        TrackCleaner.CleanedTrack own = TrackCleaner.of(gpx, "a.gpx", faults);
        TrackCleaner.CleanedTrack out = TrackElevation.choose(own, ElevationTiles.open(folder, "tiles", faults), List.of(), faults);
        assertThat(faults.faults()).isEmpty();
        return out;
    }

    private static double ground(int i) {
        return 500 + Math.max(0, 300 - Math.abs(9.39 + 0.0005 * i - 9.42) * 15_000);
    }

    @Test
    void aTrackWithoutHeightsTakesTheTiles() {
        TrackCleaner.CleanedTrack chosen = chosen(i -> Double.NaN);

        assertThat(chosen.climbing().ascent()).isEqualTo(300, within(10.0));
        assertThat(chosen.climbing().descent()).isEqualTo(300, within(10.0));
        assertThat(chosen.track().pieces().get(0).size()).as("the track's own points").isEqualTo(121);
        assertThat(chosen.track().elevation()).isEqualTo(Track.Elevation.FROM_TILES);
        assertThat(chosen.notes()).anyMatch(note -> note.contains("strip.tif; a height every 31 m), since the track has none"))
                .noneMatch(note -> note.startsWith("The track has no elevation"));
    }

    @Test
    void aGoodTrackKeepsItsOwnHeights() {
        TrackCleaner.CleanedTrack chosen = chosen(i -> ground(i) + 46);

        assertThat(chosen.line().elevation()[0]).isEqualTo(546, within(1.0));
        assertThat(chosen.notes()).anyMatch(note -> note.startsWith("The track's own heights are used"));
    }

    @Test
    void aTrackThatStraysTakesTheTiles() {
        TrackCleaner.CleanedTrack chosen = chosen(i -> ground(i) + 45 * Math.sin(i / 12.0));

        assertThat(chosen.climbing().ascent()).isEqualTo(300, within(10.0));
        assertThat(chosen.notes()).anyMatch(note -> note.matches(".*the track's own stray by [45]\\d m \\(90 %\\), more than the 16 m .*"));
    }

    @Test
    void heightsThatCannotBeTakeTheTiles() {
        TrackCleaner.CleanedTrack chosen = chosen(i -> 0);

        assertThat(chosen.climbing().ascent()).isEqualTo(300, within(10.0));
        assertThat(chosen.notes()).anyMatch(note -> note.contains("the track's own are not believable"))
                .noneMatch(note -> note.startsWith("The track's elevation is not believable"));
    }

    @Test
    void tilesOfElsewhereAreNotUsed() {
        TileFiles.hgt(folder.resolve("other"), "N10E009.hgt", 10, 9, 11, (lat, lon) -> 5);
        double[] at = {46.5, 46.5};
        GpxFile gpx = new GpxFile("", List.of(new GpxFile.Segment(at, new double[] {9.4, 9.41}, new double[] {500, 510}, new double[2])), false, 0, List.of());
        TrackCleaner.CleanedTrack own = TrackCleaner.of(gpx, "a.gpx", faults);

        TrackCleaner.CleanedTrack chosen = TrackElevation.choose(own, ElevationTiles.open(folder.resolve("other"), "tiles", faults), List.of(), faults);

        assertThat(chosen.line()).isSameAs(own.line());
        assertThat(chosen.notes()).anyMatch(note -> note.equals("The elevation tiles cover 0 % of the track: its own heights are used."));
    }
}
