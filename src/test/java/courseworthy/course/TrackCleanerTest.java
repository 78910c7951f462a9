package courseworthy.course;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import courseworthy.problem.Fault;
import courseworthy.problem.Faults;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import net.sf.geographiclib.Geodesic;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is mended in made-up tracks whose true course is known, and that each repair is counted. */
class TrackCleanerTest {

    @TempDir
    Path folder;

    private final Faults faults = new Faults();

    private TrackCleaner.CleanedTrack clean(String gpx) {
        try {
            Path file = Files.writeString(folder.resolve("t.gpx"), gpx);
            GpxFile read = GpxReader.read(file, "t.gpx", faults);
            return read == null ? null : TrackCleaner.of(read, "t.gpx", faults);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private List<String> said() {
        return faults.faults().stream().map(Fault::text).toList();
    }

    private static double[] ramp(int n, double from, double step) {
        double[] out = new double[n];
        for (int i = 0; i < n; i++) {
            out[i] = from + i * step;
        }
        return out;
    }

    private static double at(ElevationLine line, double distance) {
        int i = 1;
        while (line.distance()[i] < distance && i < line.size() - 1) {
            i++;
        }
        double part = (distance - line.distance()[i - 1]) / (line.distance()[i] - line.distance()[i - 1]);
        return line.elevation()[i - 1] + part * (line.elevation()[i] - line.elevation()[i - 1]);
    }

    /** A climb of 100 m over 2 km, whatever the spacing of the points. */
    @ParameterizedTest
    @CsvSource({"1", "4", "10", "50", "500", "2000"})
    void aSteadyRampIsKeptAsItIs(double step) {
        TrackCleaner.CleanedTrack cleaned = clean(Points.north(step, ramp((int) (2000 / step) + 1, 400, 100 * step / 2000)));
        assertThat(cleaned.climbing().ascent()).isCloseTo(100, within(0.01));
        assertThat(cleaned.climbing().descent()).isZero();
        assertThat(cleaned.line().elevation()[0]).isCloseTo(400, within(0.001));
        assertThat(at(cleaned.line(), 1234)).isCloseTo(461.7, within(0.05));
        assertThat(cleaned.repairs()).isEmpty();
        assertThat(cleaned.line().measured()).isTrue();
        assertThat(cleaned.line().absolute()).isTrue();
    }

    @Test
    void theLineHasEvenStepsOfAboutTenMetresFromFirstToLastPoint() {
        TrackCleaner.CleanedTrack cleaned = clean(Points.north(37, ramp(28, 0, 1)));
        double[] distance = cleaned.line().distance();
        assertThat(distance[0]).isZero();
        assertThat(distance[distance.length - 1]).isEqualTo(cleaned.track().length());
        for (int i = 1; i < distance.length; i++) {
            assertThat(distance[i] - distance[i - 1]).isCloseTo(cleaned.track().length() / (distance.length - 1), within(1e-6)).isBetween(9.0, 11.0);
        }
    }

    @Test
    void lengthIsTheGeodesic() {
        TrackCleaner.CleanedTrack cleaned = clean(Points.track(new Points().add(47.1, 9.5, 450).add(47.15, 9.62, 460).toString()));
        assertThat(cleaned.track().length()).isEqualTo(Geodesic.WGS84.Inverse(47.1, 9.5, 47.15, 9.62).s12);
    }

    @Test
    void theAntimeridianIsCrossedTheShortWay() {
        TrackCleaner.CleanedTrack cleaned = clean(Points.track(new Points().add(0, 179.999, 5).add(0, -179.999, 6).toString()));
        assertThat(cleaned.track().length()).as("0.002 degrees of the equator, radius 6378137 m").isCloseTo(222.639, within(0.001));
    }

    /**
     * Ten hills of 100 m over 50 km with a point every 5 m: 1000 m of climbing. Climbing is to be reported with 5 to 10 % either way
     * (common practice, no source): noise of 2 m, under which a plain sum is some 11,000 m, must stay within that.
     */
    @ParameterizedTest
    @CsvSource({"0, 0.01", "1, 0.02", "2, 0.10"})
    void climbingOfHillsSurvivesNoise(double deviation, double share) {
        Random random = new Random(5);
        double[] e = new double[10_001];
        for (int i = 0; i < e.length; i++) {
            e[i] = 500 - 50 * Math.cos(2 * Math.PI * 10 * i / (e.length - 1)) + deviation * random.nextGaussian();
        }
        assertThat(clean(Points.north(5, e)).climbing().ascent()).isCloseTo(1000, within(1000 * share));
    }

    @Test
    void noiseOnTheFlatIsHardlyClimbing() {
        Random random = new Random(6);
        double[] e = new double[10_001];
        for (int i = 0; i < e.length; i++) {
            e[i] = 500 + random.nextGaussian();
        }
        TrackCleaner.CleanedTrack cleaned = clean(Points.north(5, e));
        double naive = e.length / Math.sqrt(Math.PI);
        assertThat(cleaned.climbing().ascent()).as("plain sum %.0f m", naive).isLessThan(naive / 50);
    }

    @Test
    void spikesAreRemovedAndCounted() {
        double[] e = ramp(400, 400, 0.2);
        e[50] += 60;
        e[120] -= 90;
        e[121] -= 90;
        e[200] = 32_767;
        e[300] += 25;
        TrackCleaner.CleanedTrack cleaned = clean(Points.north(10, e));
        assertThat(cleaned.repairs()).containsExactly(new TrackRepair("elevation spikes removed", 5));
        assertThat(cleaned.climbing().ascent()).isCloseTo(79.8, within(0.1));
        assertThat(cleaned.climbing().descent()).isZero();
    }

    @Test
    void steepButRealRampsAreNoSpikes() {
        double[] e = new double[201];
        for (int i = 1; i < e.length; i++) {
            e[i] = e[i - 1] + (i > 80 && i <= 90 ? 2.5 : i > 110 && i <= 120 ? -3 : 0);
        }
        TrackCleaner.CleanedTrack cleaned = clean(Points.north(10, e));
        assertThat(cleaned.repairs()).isEmpty();
        assertThat(cleaned.climbing().ascent()).isCloseTo(25, within(0.1));
        assertThat(cleaned.climbing().descent()).isCloseTo(30, within(0.1));
    }

    @Test
    void runsOfZeroAndMissingPointsAreFilledInBetween() {
        double[] e = ramp(400, 400, 0.2);
        for (int i = 0; i < 20; i++) {
            e[i] = 0;
            e[100 + i] = 0;
            e[200 + i] = Double.NaN;
        }
        TrackCleaner.CleanedTrack cleaned = clean(Points.north(10, e));
        assertThat(cleaned.repairs()).containsExactly(new TrackRepair("points without elevation filled in", 20),
                new TrackRepair("elevation drop-outs filled in", 40));
        assertThat(cleaned.climbing().ascent()).isCloseTo(79.8 - 4, within(0.1));
        assertThat(at(cleaned.line(), 1100)).isCloseTo(422, within(0.2));
    }

    @Test
    void zeroBesideTheSeaIsGround() {
        double[] e = new double[400];
        for (int i = 0; i < e.length; i++) {
            e[i] = Math.max(0, 6 * Math.sin(i / 20.0));
        }
        TrackCleaner.CleanedTrack cleaned = clean(Points.north(10, e));
        assertThat(cleaned.repairs()).isEmpty();
        assertThat(cleaned.track().elevation()).isEqualTo(Track.Elevation.KNOWN);
    }

    @Test
    void aJumpThatStaysIsLevelledToTheLongerSide() {
        double[] e = ramp(400, 400, 0.1);
        for (int i = 0; i < 30; i++) {
            e[i] -= 200;
        }
        TrackCleaner.CleanedTrack cleaned = clean(Points.north(10, e));
        assertThat(cleaned.repairs()).containsExactly(new TrackRepair("elevation jumps levelled", 1));
        assertThat(cleaned.climbing().ascent()).isCloseTo(39.9, within(0.2));
        assertThat(cleaned.line().elevation()[0]).isCloseTo(400.1, within(0.2));
    }

    @Test
    void manyJumpsMakeElevationUnbelievable() {
        double[] e = new double[400];
        for (int i = 0; i < e.length; i++) {
            e[i] = 500 + i / 40 * 120;
        }
        TrackCleaner.CleanedTrack cleaned = clean(Points.north(10, e));
        assertThat(cleaned.track().elevation()).isEqualTo(Track.Elevation.BOGUS);
        assertThat(cleaned.notes()).containsExactly("The track's elevation is not believable and is not used. It jumps 9 times.");
    }

    @Test
    void nothingSteeperThanFiftyPercentIsLeft() {
        double[] e = new double[400];
        for (int i = 0; i < e.length; i++) {
            e[i] = 500 + (i < 200 ? 0 : 45);
        }
        TrackCleaner.CleanedTrack cleaned = clean(Points.north(10, e));
        assertThat(cleaned.repairs()).extracting(TrackRepair::what).containsExactly("steps over 50 % flattened");
        double[] line = cleaned.line().elevation();
        double[] distance = cleaned.line().distance();
        for (int i = 1; i < line.length; i++) {
            assertThat(Math.abs(line[i] - line[i - 1]) / (distance[i] - distance[i - 1])).isLessThanOrEqualTo(0.5 + 1e-9);
        }
        assertThat(cleaned.climbing().ascent()).isCloseTo(45, within(0.1));
    }

    @ParameterizedTest
    @CsvSource({"0, It is zero throughout.", "450, It is 450 m throughout.", "191.6, It is 191.6 m throughout."})
    void constantElevationIsCalledOutAndNotUsed(double metres, String why) {
        TrackCleaner.CleanedTrack cleaned = clean(Points.north(10, ramp(100, metres, 0)));
        assertThat(cleaned.track().elevation()).isEqualTo(Track.Elevation.BOGUS);
        assertThat(cleaned.line()).isNull();
        assertThat(cleaned.climbing()).isNull();
        assertThat(cleaned.track().pieces().get(0).elevation()).containsOnly(Double.NaN);
        assertThat(cleaned.notes()).containsExactly("The track's elevation is not believable and is not used. " + why);
    }

    @Test
    void aFewConstantPointsAreBelievedAndSaid() {
        TrackCleaner.CleanedTrack cleaned = clean(Points.north(10, ramp(20, 191.6, 0)));
        assertThat(cleaned.track().elevation()).isEqualTo(Track.Elevation.KNOWN);
        assertThat(cleaned.climbing().ascent()).isZero();
        assertThat(cleaned.notes()).containsExactly("The track's elevation is 191.6 m throughout.");
    }

    @Test
    void elevationThatIsMostlyMissingOrZeroIsCalledOut() {
        double[] missing = ramp(100, 400, 1);
        double[] zero = missing.clone();
        for (int i = 0; i < 60; i++) {
            missing[i] = Double.NaN;
            zero[i] = 0;
        }
        assertThat(clean(Points.north(10, missing)).notes()).containsExactly(
                "The track's elevation is not believable and is not used. 60 of 100 points lack it or are impossible.");
        assertThat(clean(Points.north(10, zero)).notes()).containsExactly(
                "The track's elevation is not believable and is not used. 60 of 100 points are at exactly zero.");
    }

    @Test
    void aTrackWithoutElevationIsSaidSo() {
        TrackCleaner.CleanedTrack cleaned = clean(Points.north(10, ramp(50, Double.NaN, 0)));
        assertThat(cleaned.track().elevation()).isEqualTo(Track.Elevation.MISSING);
        assertThat(cleaned.notes()).containsExactly("The track has no elevation.");
        assertThat(cleaned.repairs()).isEmpty();
    }

    @Test
    void repeatedPointsAreRemovedAndCounted() {
        Points points = new Points();
        for (int i = 0; i < 100; i++) {
            points.add(0.001 * (i / 4), 9.5, 400 + i / 4);
        }
        TrackCleaner.CleanedTrack cleaned = clean(Points.track(points.toString()));
        assertThat(cleaned.repairs()).containsExactly(new TrackRepair("repeated points removed", 75));
        assertThat(cleaned.track().pieces().get(0).size()).isEqualTo(25);
    }

    @Test
    void pointsFarOffTheLineAreRemovedAndCounted() {
        Points points = new Points();
        for (int i = 0; i < 200; i++) {
            boolean off = i == 50 || i == 120 || i == 121;
            points.add(0.0001 * i, off ? 9.9 : 9.5, 400);
        }
        TrackCleaner.CleanedTrack cleaned = clean(Points.track(points.toString()));
        assertThat(cleaned.repairs()).containsExactly(new TrackRepair("points far off the line removed", 3));
        assertThat(cleaned.track().length()).isCloseTo(0.0199 * 110_574.3, within(0.5));
    }

    @Test
    void aSparseLoopIsNotTakenForPointsOffTheLine() {
        Points points = new Points().add(0, 0, 10).add(0.01, 0, 20).add(0, 0.0001, 10).add(0.01, 0.0001, 20).add(0, 0, 10);
        TrackCleaner.CleanedTrack cleaned = clean(Points.track(points.toString()));
        assertThat(cleaned.repairs()).isEmpty();
        assertThat(cleaned.track().pieces().get(0).size()).isEqualTo(5);
        assertThat(cleaned.notes()).containsExactly("The track's points lie 1106 m apart on average: shorter ramps are not in it.");
    }

    @Test
    void segmentsAreNeverBridged() {
        String one = new Points().add(0, 9.5, 100).add(0.01, 9.5, 120).toString();
        String far = new Points().add(5, 9.5, 900).add(5.01, 9.5, 930).toString();
        TrackCleaner.CleanedTrack cleaned = clean(Points.file("<trk><trkseg>" + one + "</trkseg><trkseg/><trkseg>" + far + "</trkseg></trk>"));
        assertThat(cleaned.track().length()).isCloseTo(2 * 0.01 * 110_574.3, within(20.0));
        assertThat(cleaned.climbing().ascent()).isCloseTo(50, within(0.1));
        assertThat(cleaned.repairs()).containsExactly(new TrackRepair("segments with less than two places dropped", 1));
        Track.TrackPiece first = cleaned.track().pieces().get(0);
        assertThat(cleaned.track().pieces().get(1).distance()[0]).isEqualTo(first.distance()[1]);
    }

    @Test
    void segmentsAndTracksComeToTheSame() {
        String one = new Points().add(0, 9.5, 100).add(0.01, 9.5, 120).toString();
        String two = new Points().add(0.02, 9.5, 900).add(0.03, 9.5, 930).toString();
        TrackCleaner.CleanedTrack segments = clean(Points.file("<trk><trkseg>" + one + "</trkseg><trkseg>" + two + "</trkseg></trk>"));
        TrackCleaner.CleanedTrack tracks = clean(Points.file("<trk><trkseg>" + one + "</trkseg></trk><trk><trkseg>" + two + "</trkseg></trk>"));
        assertThat(segments.line().elevation()).containsExactly(tracks.line().elevation());
        assertThat(segments.line().distance()).containsExactly(tracks.line().distance());
    }

    /** Each way of holding no line, and all that is said of it. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "<wpt lat='1' lon='2'/>|no track and no route, only 1 way point",
            "<trk/>|no track and no route",
            "<trk><trkseg/></trk>|a track without points",
            "<trk><trkseg><trkpt lat='1' lon='2'/></trkseg></trk>|a single point",
            "<trk><trkseg><trkpt lat='1' lon='2'/><trkpt lat='1' lon='2'/></trkseg></trk>|2 points, none of them in a line of two places",
            "<rte><rtept lat='1' lon='2'/></rte>|a single point"})
    void aFileWithoutALineIsRefused(String inside, String found) {
        assertThat(clean(Points.file(inside))).isNull();
        assertThat(said()).containsExactly("t.gpx: found " + found + ", expected a track or route with at least two points in different places\n"
                + "    Export the course as a track.");
    }

    @Test
    void pointsAtThePoleAndCloserThanAMillimetreAreOnePlace() {
        assertThat(clean(Points.track(new Points().add(90, 0, 1).add(90, 50, 2).toString()))).isNull();
        assertThat(clean(Points.track(new Points().add(0, 0, 1).add(0.000000001, 0, 2).toString()))).isNull();
        assertThat(said()).hasSize(1);
    }
}
