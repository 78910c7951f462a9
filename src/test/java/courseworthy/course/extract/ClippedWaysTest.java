package courseworthy.course.extract;

import static courseworthy.course.extract.PbfFile.nodes;
import static courseworthy.course.extract.PbfFile.way;
import static courseworthy.course.extract.PbfFile.ways;
import static courseworthy.course.extract.PbfFile.withHeader;
import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.course.Track;
import courseworthy.problem.Faults;
import courseworthy.problem.Progress;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** How ways are clipped to the corridor, joined from several files, and which are kept; on small maps along the meridian of Greenwich. */
class ClippedWaysTest {

    /** Latitudes of a kilometre apart, so that a track from the first to the second keeps them apart from the third. */
    private static final long KILOMETRE = 90_000;

    @TempDir
    Path folder;

    private MapExtract read(Object... files) throws IOException {
        List<Path> paths = new ArrayList<>();
        for (Object file : files) {
            Path path = folder.resolve("map" + paths.size());
            paths.add(file instanceof String text ? Files.writeString(path, text) : Files.write(path, ((PbfFile) file).bytes()));
        }
        double[] lat = {0, 0.009};
        Track track = new Track(List.of(new Track.TrackPiece(lat, new double[2], new double[] {0, 1000}, lat)), Track.Elevation.MISSING);
        Faults faults = new Faults();
        MapExtract read = ExtractReader.read(paths, Corridor.around(track, 50), faults, Progress.UNSEEN);
        assertThat(faults.faults()).isEmpty();
        return read;
    }

    private static List<List<Long>> runs(MapExtract read) {
        return read.ways().stream().map(way -> java.util.Arrays.stream(way.nodes()).boxed().toList()).toList();
    }

    private static PbfFile map(PbfFile.Way... ways) {
        // Nodes 1 to 3 lie on the track, 11 to 16 ever farther north of it.
        long[] ids = {1, 2, 3, 11, 12, 13, 14, 15, 16};
        long[] at = {0, KILOMETRE / 2, KILOMETRE, 3 * KILOMETRE, 4 * KILOMETRE, 5 * KILOMETRE, 6 * KILOMETRE, 7 * KILOMETRE, 8 * KILOMETRE};
        return withHeader().data(nodes(ids, at)).data(ways(ways));
    }

    @Test
    void oneNodeBeyondIsKeptAtEitherEnd() throws IOException {
        MapExtract read = read(map(way(7, "track", 12, 11, 1, 2, 3, 13, 14)));
        assertThat(runs(read)).containsExactly(List.of(11L, 1L, 2L, 3L, 13L));
        assertThat(read.ways().get(0).latitude()).containsExactly(0.027, 0, 0.0045, 0.009, 0.045);
    }

    @Test
    void aWayThatComesBackGivesTwoRuns() throws IOException {
        assertThat(runs(read(map(way(7, "track", 1, 2, 11, 12, 13, 3, 14))))).containsExactly(List.of(1L, 2L, 11L), List.of(13L, 3L, 14L));
        assertThat(runs(read(map(way(7, "track", 1, 2, 11, 3))))).containsExactly(List.of(1L, 2L, 11L, 3L));
        assertThat(runs(read(map(way(7, "track", 1, 2, 11, 12, 3))))).containsExactly(List.of(1L, 2L, 11L), List.of(12L, 3L));
    }

    @Test
    void nodesThatTheFileDoesNotHaveCutAWay() throws IOException {
        assertThat(runs(read(map(way(7, "track", 99, 1, 2, 98, 3, 13))))).containsExactly(List.of(1L, 2L), List.of(3L, 13L));
        assertThat(runs(read(map(way(7, "track", 99, 1, 98))))).isEmpty();
    }

    @Test
    void waysElsewhereAndWaysThatNobodyRidesAreLeftOut() throws IOException {
        MapExtract read = read(map(way(1, "path", 1, 2), way(2, "motorway", 1, 2), way(3, "construction", 1, 2), way(4, "steps", 1, 3),
                way(5, "track", 11, 12), way(6, "platform", 2, 3)));
        assertThat(read.ways()).extracting(MapWay::id).containsExactly(1L, 4L);
        String ferry = "<osm version='0.6'><node id='1' lat='0' lon='0'/><node id='2' lat='0.001' lon='0'/>"
                + "<way id='1'><nd ref='1'/><nd ref='2'/><tag k='route' v='ferry'/></way>"
                + "<way id='2'><nd ref='1'/><nd ref='2'/><tag k='route' v='hiking'/></way>"
                + "<way id='3' action='delete'><nd ref='1'/><nd ref='2'/><tag k='highway' v='path'/></way></osm>";
        assertThat(read(ferry).ways()).extracting(MapWay::id).containsExactly(1L);
    }

    /** Two countries whose extracts each end at the border: the way goes on from one into the other. */
    @Test
    void aWayCutAtABorderIsJoined() throws IOException {
        PbfFile south = withHeader().data(nodes(new long[] {1, 2}, 0, KILOMETRE / 2)).data(ways(way(7, "track", 1, 2), way(8, "path", 1, 2)));
        PbfFile north = withHeader().data(nodes(new long[] {2, 3, 13}, KILOMETRE / 2, KILOMETRE, 5 * KILOMETRE)).data(ways(way(7, "road", 2, 3, 13)));
        MapExtract read = read(south, north);
        assertThat(runs(read)).containsExactly(List.of(1L, 2L, 3L, 13L), List.of(1L, 2L));
        assertThat(read.ways().get(0).tag("highway")).isEqualTo("track");
        assertThat(runs(read(north, south)).get(0)).containsExactly(1L, 2L, 3L, 13L);
        assertThat(read.files()).extracting(file -> file.bounds().north()).containsExactly(0.0045, 0.045);
    }

    @Test
    void aWayThatTwoFilesHaveIsTakenOnce() throws IOException {
        PbfFile whole = map(way(7, "track", 1, 2, 3, 13));
        PbfFile part = withHeader().data(nodes(new long[] {2, 3}, KILOMETRE / 2, KILOMETRE)).data(ways(way(7, "track", 2, 3), way(7, "path", 2, 3)));
        assertThat(runs(read(whole, part))).containsExactly(List.of(1L, 2L, 3L, 13L));
        assertThat(runs(read(part, whole))).containsExactly(List.of(1L, 2L, 3L, 13L));
        PbfFile otherPart = withHeader().data(nodes(new long[] {1, 2}, 0, KILOMETRE / 2)).data(ways(way(7, "track", 1, 2)));
        PbfFile apart = withHeader().data(nodes(new long[] {3, 13}, KILOMETRE, 5 * KILOMETRE)).data(ways(way(7, "track", 3, 13)));
        assertThat(runs(read(otherPart, apart))).containsExactly(List.of(1L, 2L), List.of(3L, 13L));
    }

    @Test
    void nodesWithTagsAreKeptWhereTheyBearOnRiding() throws IOException {
        String map = "<osm version='0.6'><node id='1' lat='0' lon='0'><tag k='ford' v='yes'/><tag k='source' v='survey'/></node>"
                + "<node id='2' lat='0.001' lon='0'><tag k='shop' v='bakery'/></node><node id='3' lat='1' lon='0'><tag k='ford' v='yes'/></node>"
                + "<way id='1'><nd ref='1'/><nd ref='2'/><tag k='highway' v='path'/></way></osm>";
        assertThat(read(map).nodes()).containsExactly(new MapNode(1, 0, 0, java.util.Map.of("ford", "yes")));
    }

    private boolean attribution(String root) throws IOException {
        return read("<osm version='0.6' " + root + "><node id='1' lat='0' lon='0'/><way id='1'><nd ref='1'/></way></osm>").attributionNeeded();
    }

    /** Attributes as the map's own interface writes them (OpenStreetMap wiki, "API v0.6"). */
    @Test
    void attributionIsNeededUnlessTheFileNamesAnotherHolder() throws IOException {
        assertThat(attribution("")).isTrue();
        assertThat(attribution("generator='some program'")).isTrue();
        assertThat(attribution("copyright='OpenStreetMap and contributors' attribution='http://www.openstreetmap.org/copyright' "
                + "license='http://opendatacommons.org/licenses/odbl/1-0/'")).isTrue();
        assertThat(attribution("copyright='A club' license='ODbL 1.0'")).isTrue();
        assertThat(attribution("copyright=' '")).isTrue();
        assertThat(attribution("copyright='A club: drawn by hand'")).isFalse();
        assertThat(read(map(way(7, "track", 1, 2))).attributionNeeded()).isTrue();
    }

    @Test
    void theDigestTellsFilesApart() throws IOException {
        MapExtract read = read(map(way(7, "track", 1, 2)), map(way(7, "track", 1, 2)), map(way(7, "track", 1, 3)));
        assertThat(read.files().get(0).digest()).isEqualTo(read.files().get(1).digest()).isNotEqualTo(read.files().get(2).digest());
    }
}
