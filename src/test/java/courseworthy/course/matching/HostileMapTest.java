package courseworthy.course.matching;

import static courseworthy.course.matching.InventedMap.ways;
import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.course.Track;
import courseworthy.course.extract.MapExtract;
import courseworthy.course.extract.MapWay;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Maps as nobody draws them, and places where coordinates turn over. */
class HostileMapTest {

    private static final String ROAD = "highway=tertiary surface=asphalt";

    private static MapWay way(long id, double... latLon) {
        int n = latLon.length / 2;
        long[] nodes = new long[n];
        double[] lat = new double[n];
        double[] lon = new double[n];
        for (int i = 0; i < n; i++) {
            lat[i] = latLon[2 * i];
            lon[i] = latLon[2 * i + 1];
            nodes[i] = Arrays.hashCode(new double[] {lat[i], lon[i]});
        }
        return new MapWay(id, nodes, lat, lon, Map.of("highway", "track", "surface", "gravel"));
    }

    private static MapExtract extract(MapWay... ways) {
        return new MapExtract(List.of(ways), List.of(), List.of());
    }

    @Test
    void thousandsOfWaysMayMeetInOneNode() {
        InventedMap map = new InventedMap();
        for (int i = 0; i < 3000; i++) {
            map.way(10 + i, ROAD, 200, 0, 200 + Math.cos(i) * 40, Math.sin(i) * 40);
        }
        map.way(1, ROAD, 0, 0, 200, 0).way(2, ROAD, 200, 0, 400, 0);
        MatchedTrack matched = map.match(0, 0, 400, 0);
        assertThat(matched.pieces().get(0).way().id()).isEqualTo(1);
        assertThat(matched.pieces()).allSatisfy(piece -> assertThat(piece.from()).isLessThan(piece.to()));
    }

    @Test
    void thousandsOfWaysMayLieOnEachOther() {
        InventedMap map = new InventedMap();
        for (int i = 0; i < 3000; i++) {
            map.way(1 + i, ROAD, 0, 0, 500, 0);
        }
        MatchedTrack matched = map.match(0, 0, 500, 0);
        assertThat(matched.pieces()).allSatisfy(piece -> assertThat(piece.way()).isNotNull());
    }

    @Test
    void aWayMayGoToAndFroBetweenTwoNodes() {
        double[] places = new double[4000];
        for (int i = 0; i < 2000; i++) {
            places[2 * i] = i % 2 * 100;
        }
        assertThat(ways(new InventedMap().way(1, ROAD, places).match(0, 0, 100, 0))).isEqualTo("1@0");
    }

    @Test
    void aWayMayHaveNoLength() {
        InventedMap map = new InventedMap().way(1, ROAD, 0, 0, 200, 0).way(2, ROAD, 200, 0, 200, 0).way(3, ROAD, 200, 0, 200, 0, 400, 0);
        assertThat(ways(map.match(0, 0, 400, 0))).isIn("1@0 3@200", "1@0 2@200 3@200");
    }

    @Test
    void theMeridianOppositeGreenwichIsNoSeam() {
        MapExtract map = extract(way(1, -17, 179.99, -17, 179.999, -17, -179.999), way(2, -17, -179.999, -17, -179.99));
        double[] lon = new double[201];
        for (int i = 0; i < lon.length; i++) {
            double east = 179.99 + i * 0.0001;
            lon[i] = east > 180 ? east - 360 : east;
        }
        double[] lat = new double[lon.length];
        Arrays.fill(lat, -17);
        assertThat(ways(MapMatcher.match(KnownRoute.track(lat, lon), map))).isEqualTo("1@0 2@1170");
    }

    @Test
    void farNorthTheGridStillFindsWhatIsNear() {
        MapExtract map = extract(way(1, 78.2, 15.5, 78.2, 15.6), way(2, 78.2, 15.6, 78.21, 15.6));
        double[] lat = new double[101];
        double[] lon = new double[101];
        for (int i = 0; i < lat.length; i++) {
            lat[i] = i < 50 ? 78.2 : 78.2 + (i - 50) * 0.0002;
            lon[i] = i < 50 ? 15.5 + i * 0.002 : 15.6;
        }
        assertThat(ways(MapMatcher.match(KnownRoute.track(lat, lon), map))).isEqualTo("1@0 2@2280");
    }

    @Test
    void aLongTrackIsMatchedInWindowsWithoutSeams() {
        List<MapWay> ways = new ArrayList<>();
        double[] lat = new double[20_001];
        double[] lon = new double[lat.length];
        for (int i = 0; i < lat.length; i++) {
            lat[i] = 10 + i * 0.0001;
            lon[i] = -30;
        }
        for (int i = 0; i < 20; i++) {
            ways.add(way(1 + i, lat[1000 * i], -30, lat[1000 * (i + 1)], -30));
        }
        MatchedTrack matched = MapMatcher.match(KnownRoute.track(lat, lon), new MapExtract(ways, List.of(), List.of()));
        assertThat(matched.pieces()).hasSize(20);
        for (int i = 0; i < 20; i++) {
            assertThat(matched.pieces().get(i).way().id()).isEqualTo(1 + i);
            assertThat(matched.pieces().get(i).sure()).isTrue();
        }
    }

    @Test
    void pointsAMillimetreApartAreNoTrouble() {
        Track track = InventedMap.track(new double[] {0, 0, 400, 0});
        Track.TrackPiece piece = track.pieces().get(0);
        double[] lat = new double[2 * piece.size()];
        double[] lon = new double[2 * piece.size()];
        for (int i = 0; i < lat.length; i++) {
            lat[i] = piece.lat()[i / 2];
            lon[i] = piece.lon()[i / 2] + i % 2 * 1.3e-8;
        }
        assertThat(ways(MapMatcher.match(KnownRoute.track(lat, lon), new InventedMap().way(1, ROAD, 0, 0, 400, 0).extract()))).isEqualTo("1@0");
    }

    @Test
    void aTrackWithPointsKilometresApartIsMatchedWhereItSaysSomething() {
        InventedMap map = new InventedMap().way(1, ROAD, 0, 0, 3000, 0);
        double[] lat = {44, 44, 44};
        double[] lon = {-30, -30 + 1500 / LocalPlane.eastScale(44), -30 + 3000 / LocalPlane.eastScale(44)};
        assertThat(ways(MapMatcher.match(KnownRoute.track(lat, lon), map.extract()))).isEqualTo("1@0");
    }
}
