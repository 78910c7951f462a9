package courseworthy.course.matching;

import static courseworthy.course.matching.InventedMap.ways;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import courseworthy.course.extract.MapExtract;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The difficulties of matching, each on a map of a few ways. Where nothing else is said a track has a point every 5 m. */
class MatchingCasesTest {

    private static final String ROAD = "highway=tertiary surface=asphalt";
    private static final String TRACK = "highway=track surface=gravel";
    private static final String PATH = "highway=path surface=ground";

    @Test
    void aWayIsFollowedOntoTheNextAtTheirJunction() {
        InventedMap map = new InventedMap().way(1, ROAD, 0, 0, 400, 0).way(2, TRACK, 400, 0, 800, 100);
        assertThat(ways(map.match(0, 0, 400, 0, 800, 100))).isEqualTo("1@0 2@400");
    }

    @Test
    void piecesCoverTheTrackWithoutGaps() {
        InventedMap map = new InventedMap().way(1, ROAD, 0, 0, 400, 0).way(2, TRACK, 400, 0, 800, 100);
        MatchedTrack matched = map.match(0, 0, 400, 0, 800, 100);
        double at = 0;
        for (MatchedPiece piece : matched.pieces()) {
            assertThat(piece.from()).isEqualTo(at);
            assertThat(piece.confidence()).isBetween(0.0, 1.0);
            at = piece.to();
        }
        assertThat(at).isCloseTo(400 + Math.hypot(400, 100), within(0.01));
    }

    @Test
    void aBridgeIsNotLeftForTheRoadBelow() {
        InventedMap map = new InventedMap().way(1, ROAD, -400, 0, 0, 0, 400, 0)
                .wayAt("above ", 2, TRACK + " bridge=yes layer=1", 0, -400, 0, 0, 0, 400);
        assertThat(ways(map.match(-400, 0, 400, 0))).isEqualTo("1@0");
        assertThat(ways(map.match(0, -400, 0, 400))).isEqualTo("2@0");
    }

    @Test
    void waysThatCrossWithoutANodeAreNotJoined() {
        InventedMap crossing = new InventedMap().way(1, ROAD, -400, 0, 400, 0).way(2, TRACK, 0, -400, 0, 400);
        MatchedTrack turned = crossing.match(-400, 0, 0, 0, 0, 400);
        assertThat(turned.pieces().stream().filter(piece -> piece.way() == null).mapToDouble(MatchedPiece::length).sum()).isBetween(10.0, 100.0);
        InventedMap joined = new InventedMap().way(1, ROAD, -400, 0, 0, 0, 400, 0).way(2, TRACK, 0, -400, 0, 0, 0, 400);
        assertThat(ways(joined.match(-400, 0, 0, 0, 0, 400))).isEqualTo("1@0 2@400");
    }

    @Test
    void aTunnelUnderAVillageIsKept() {
        InventedMap map = new InventedMap().way(1, ROAD, 0, 0, 200, 0).way(2, ROAD + " tunnel=yes layer=-1", 200, 0, 600, 0).way(3, ROAD, 600, 0, 800, 0)
                .wayAt("above ", 4, "highway=residential surface=sett", 300, -200, 300, 0, 300, 200)
                .wayAt("above ", 5, "highway=residential surface=sett", 300, 0, 500, 8, 500, 200);
        assertThat(ways(map.match(0, 0, 800, 0))).isEqualTo("1@0 2@200 3@600");
    }

    @Test
    void aCyclewayBesideTheRoadIsToldFromIt() {
        InventedMap map = new InventedMap().way(1, "highway=primary surface=asphalt", 0, 0, 200, 0, 1000, 0, 1200, 0)
                .way(2, "highway=cycleway surface=compacted", 200, 0, 215, 12, 985, 12, 1000, 0);
        assertThat(ways(map.match(0, 0, 200, 0, 1000, 0, 1200, 0))).isEqualTo("1@0");
        assertThat(ways(map.match(0, 0, 200, 0, 215, 12, 985, 12, 1000, 0, 1200, 0))).startsWith("1@0 2@200 1@1010");
    }

    @Test
    void aTrackThatDriftsStaysOnItsWayBesideAnother() {
        // Fifteen metres off for a while, as under trees, and nearer to the path than to the road.
        InventedMap map = new InventedMap().way(1, ROAD, 0, 0, 2000, 0).way(2, PATH, 0, 25, 2000, 25);
        MatchedTrack matched = map.match(0, 0, 600, 0, 900, 14, 1000, 14, 1300, 0, 2000, 0);
        assertThat(ways(matched)).isEqualTo("1@0");
    }

    @Test
    void aHairpinIsRoundedNotCut() {
        InventedMap map = new InventedMap().way(1, ROAD, 0, 0, 500, 0, 520, 10, 500, 20, 0, 20).way(2, PATH, 250, 0, 250, 20);
        assertThat(ways(map.match(0, 0, 500, 0, 520, 10, 500, 20, 0, 20))).isEqualTo("1@0");
    }

    @Test
    void outAndBackIsTheSameWayTwice() {
        InventedMap map = new InventedMap().way(1, ROAD, 0, 0, 300, 0).way(2, TRACK, 300, 0, 300, 600).way(3, ROAD, 300, 0, 600, 0);
        assertThat(ways(map.match(0, 0, 300, 0, 300, 500, 300, 0, 600, 0))).isEqualTo("1@0 2@300 3@1300");
    }

    @Test
    void aDeadEndIsLeftTheWayOneCame() {
        InventedMap map = new InventedMap().way(1, ROAD, 0, 0, 300, 0).way(2, TRACK, 300, 0, 300, 200).way(3, ROAD, 300, 0, 600, 0);
        assertThat(ways(map.match(0, 0, 300, 0, 300, 200, 300, 0, 600, 0))).isEqualTo("1@0 2@300 3@700");
    }

    @Test
    void aRoundaboutIsTakenTheWayItRuns() {
        // Drawn straight across the middle, as coarse tracks are: both halves are as near.
        InventedMap map = new InventedMap().way(1, ROAD, 0, 0, 300, 0)
                .way(2, "highway=tertiary surface=asphalt junction=roundabout", 300, 0, 306, -10, 315, -13, 324, -10, 330, 0)
                .way(3, "highway=tertiary surface=paved junction=roundabout", 330, 0, 324, 10, 315, 13, 306, 10, 300, 0)
                .way(4, ROAD, 330, 0, 630, 0);
        assertThat(ways(map.match(0, 0, 630, 0)).replaceAll("@\\d+", "")).isEqualTo("1 2 4");
        assertThat(ways(map.match(630, 0, 0, 0)).replaceAll("@\\d+", "")).isEqualTo("4 3 1");
    }

    @Test
    void aOnewayIsRiddenAgainstWhereTheTrackSaysSo() {
        InventedMap map = new InventedMap().way(1, ROAD + " oneway=yes", 0, 0, 1000, 0).way(2, PATH, 0, 60, 1000, 60);
        assertThat(ways(map.match(1000, 0, 0, 0))).isEqualTo("1@0");
    }

    @Test
    void aFerryIsAWay() {
        InventedMap map = new InventedMap().way(1, ROAD, 0, 0, 300, 0).way(2, "route=ferry", 300, 0, 1500, 400).way(3, ROAD, 1500, 400, 1800, 400);
        assertThat(ways(map.match(0, 0, 300, 0, 1500, 400, 1800, 400))).isEqualTo("1@0 2@300 3@1560");
    }

    @Test
    void footwaysAndStepsArePushedOver() {
        InventedMap map = new InventedMap().way(1, ROAD, 0, 0, 300, 0).way(2, "highway=footway surface=paving_stones bicycle=no", 300, 0, 300, 100)
                .way(3, "highway=steps", 300, 100, 300, 140).way(4, TRACK, 300, 140, 300, 500);
        assertThat(ways(map.match(0, 0, 300, 0, 300, 500))).isEqualTo("1@0 2@300 3@400 4@440");
    }

    @Test
    void betweenTwoPiecesOfATrackNothingIsBridged() {
        InventedMap map = new InventedMap().way(1, ROAD, 0, 0, 5000, 0).way(2, TRACK, 0, 3000, 1000, 3000);
        MatchedTrack matched = MapMatcher.match(InventedMap.track(new double[] {0, 0, 600, 0}, new double[] {200, 3000, 800, 3000}), map.extract());
        assertThat(ways(matched)).isEqualTo("1@0 2@600");
    }

    @Test
    void aHoleInTheMapIsOffTheNetwork() {
        InventedMap map = new InventedMap().way(1, ROAD, 0, 0, 500, 0).way(2, TRACK, 1500, 0, 2000, 0).way(3, PATH, 500, 0, 500, 600);
        MatchedTrack matched = map.match(0, 0, 2000, 0);
        assertThat(ways(matched)).isIn("1@0 -@500 2@1500", "1@0 -@510 2@1490", "1@0 -@510 2@1500", "1@0 -@500 2@1490");
        assertThat(matched.pieces()).filteredOn(piece -> piece.way() == null).noneMatch(MatchedPiece::sure);
    }

    @Test
    void aTrackMayStartOffTheNetwork() {
        InventedMap map = new InventedMap().way(1, ROAD, 0, 0, 1000, 0);
        String ways = ways(map.match(300, 400, 300, 0, 1000, 0));
        assertThat(ways).startsWith("-@0 1@");
        assertThat(Integer.parseInt(ways.substring(ways.lastIndexOf('@') + 1))).isBetween(370, 410);
    }

    @Test
    void aSparseTrackFollowsTheBendsBetweenItsPoints() {
        InventedMap map = new InventedMap().way(1, ROAD, 0, 0, 100, 0).way(2, TRACK, 100, 0, 130, 30, 160, 0).way(3, ROAD, 160, 0, 400, 0);
        double[] lat = new double[6];
        double[] lon = new double[6];
        double[] east = {0, 80, 130, 200, 300, 400};
        for (int i = 0; i < 6; i++) {
            lat[i] = 44 + (i == 2 ? 30 : 0) / LocalPlane.northScale(44);
            lon[i] = -30 + east[i] / LocalPlane.eastScale(44);
        }
        assertThat(ways(MapMatcher.match(KnownRoute.track(lat, lon), map.extract()))).isEqualTo("1@0 2@100 3@180");
    }

    @Test
    void aWayBesideTheTrueOneIsNotSure() {
        // The track runs steadily 12 m beside the only way: its own error is small, so the way is another one.
        InventedMap map = new InventedMap().way(1, ROAD, 0, 0, 1500, 0);
        MatchedTrack matched = map.match(0, 12, 1500, 12);
        assertThat(matched.noise()).isLessThan(2);
        assertThat(matched.pieces()).noneMatch(MatchedPiece::sure);
    }

    @Test
    void twoWaysAsCloseAreSureOnlyWhereTheyHaveTheSameGround() {
        double[] middle = {0, 3, 800, 3};
        MatchedTrack other = new InventedMap().way(1, ROAD, 0, 0, 800, 0).way(2, TRACK, 0, 6, 800, 6).match(middle);
        assertThat(other.pieces()).noneMatch(MatchedPiece::sure);
        MatchedTrack same = new InventedMap().way(1, ROAD, 0, 0, 800, 0).way(2, ROAD, 0, 6, 800, 6).match(middle);
        assertThat(same.pieces()).allMatch(MatchedPiece::sure);
    }

    @Test
    void aMapWithoutWaysLeavesTheTrackUnmatched() {
        MatchedTrack matched = MapMatcher.match(InventedMap.track(new double[] {0, 0, 500, 0}), new MapExtract(List.of(), List.of(), List.of()));
        assertThat(ways(matched)).isEqualTo("-@0");
        assertThat(matched.noise()).isNaN();
        assertThat(matched.outside()).isCloseTo(500, within(0.01));
    }

    /** Halfway between a road and a track beside it either is possible, and nothing else; where it is sure, or off all ways, none is named. */
    @Test
    void betweenTwoWaysBothArePossible() {
        InventedMap map = new InventedMap().way(1, "highway=primary surface=asphalt", 0, 0, 600, 0)
                .way(2, "highway=track surface=gravel", 0, 6, 600, 6).way(3, "highway=path surface=sand", 0, 400, 600, 400);
        MatchedTrack between = map.match(0, 3, 600, 3);
        assertThat(between.pieces()).noneMatch(MatchedPiece::sure);
        assertThat(between.pieces()).allSatisfy(piece -> assertThat(piece.possible()).extracting(way -> way.id()).containsExactlyInAnyOrder(1L, 2L));
        MatchedTrack alone = map.match(0, 400, 300, 400, 600, 400);
        assertThat(alone.pieces()).allSatisfy(piece -> assertThat(piece.possible()).isEmpty());
        MatchedTrack off = map.match(0, 200, 300, 200, 600, 200);
        assertThat(off.pieces()).allSatisfy(piece -> assertThat(piece.possible()).isEmpty());
    }

    @Test
    void whatLiesOutsideTheMapIsMeasured() {
        MapExtract whole = new InventedMap().way(1, ROAD, 0, 0, 500, 0).extract();
        assertThat(MapMatcher.match(InventedMap.track(new double[] {0, 0, 1000, 0}), whole).outside()).isZero();
    }
}
