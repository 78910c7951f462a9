package courseworthy.course.ground;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import courseworthy.course.GroundOrigin;
import courseworthy.course.Surface;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.Test;

class PieceMergerTest {

    private final TagInterpreter tags = new TagInterpreter(GroundRules.shipped());
    private final List<GroundPiece> pieces = new ArrayList<>();

    private PieceMergerTest on(double length, String... keysAndValues) {
        Map<String, String> way = new LinkedHashMap<>(Map.of("highway", "track"));
        for (int i = 0; i < keysAndValues.length; i += 2) {
            way.put(keysAndValues[i], keysAndValues[i + 1]);
        }
        pieces.add(GroundPiece.on(end(), end() + length, "way " + pieces.size(), way, tags.of(way)));
        return this;
    }

    private PieceMergerTest unmatched(double length) {
        pieces.add(GroundPiece.unmatched(end(), end() + length));
        return this;
    }

    private double end() {
        return pieces.isEmpty() ? 0 : pieces.get(pieces.size() - 1).to;
    }

    /** Length and surface of each stretch. */
    private List<String> merged() {
        return PieceMerger.merged(pieces).stream().map(each -> Math.round(each.length()) + " "
                + (each.matched ? each.tagged.likely().getOrDefault("surface", "?") : "unknown")).toList();
    }

    @Test
    void waysOfTheSameGroundAreOneStretchThatNamesThem() {
        on(400, "surface", "asphalt").on(30, "surface", "asphalt").on(600, "surface", "asphalt");
        assertThat(merged()).containsExactly("1030 asphalt");
        assertThat(PieceMerger.merged(pieces).get(0).stretch().origin().way()).isEqualTo("way 0, way 1, way 2");
    }

    private static TaggedGround mayBe(String... surfaces) {
        List<Map<String, String>> out = new ArrayList<>();
        for (String surface : surfaces) {
            out.add(Map.of("surface", surface));
        }
        return new TaggedGround(Map.of(), List.of(InferredGround.oneOf(MapGround.WAYS_CLOSE_BY, out)));
    }

    /** What is not sure of neighbours is one piece, which may be all that any of them may be; unknown where one of them is. */
    @Test
    void neighboursThatAreNotSureMayBeWhatAnyOfThemMayBe() {
        on(500, "surface", "asphalt");
        pieces.add(GroundPiece.unsure(500, 600, mayBe("asphalt", "gravel").inferred().get(0)));
        pieces.add(GroundPiece.unsure(600, 700, mayBe("gravel", "sand").inferred().get(0)));
        on(500, "surface", "gravel");
        assertThat(merged()).containsExactly("500 asphalt", "200 unknown", "500 gravel");
        assertThat(PieceMerger.merged(pieces).get(1).tagged).isEqualTo(mayBe("asphalt", "gravel", "sand"));
        assertThat(PieceMerger.merged(pieces).get(1).stretch().alternatives()).hasSize(3);
        pieces.clear();
        on(500, "surface", "asphalt");
        pieces.add(GroundPiece.unsure(500, 600, mayBe("asphalt", "gravel").inferred().get(0)));
        unmatched(100);
        assertThat(PieceMerger.merged(pieces).get(1).stretch().alternatives()).isEmpty();
        assertThat(PieceMerger.merged(pieces).get(1).stretch().origin()).isEqualTo(GroundOrigin.UNMATCHED);
    }

    /** What all ways have in common is likely; what they differ in is open. */
    @Test
    void whatAllWaysHaveInCommonIsGiven() {
        InferredGround both = InferredGround.oneOf(MapGround.WAYS_CLOSE_BY, List.of(Map.of("surface", "asphalt"), Map.of("surface", "asphalt", "tracktype", "grade1")));
        assertThat(both.gives()).isEqualTo(Map.of("surface", "asphalt"));
        assertThat(both.mayBe()).containsExactly(Map.of("tracktype", "grade1"));
    }

    /** Fifty metres of asphalt at a farm change nothing on a gravel road; fifty of gravel on a road do. */
    @Test
    void aShortPieceGoesUnlessItIsLooser() {
        on(800, "surface", "gravel", "tracktype", "grade2").on(50, "surface", "asphalt").on(800, "surface", "gravel", "tracktype", "grade2");
        assertThat(merged()).containsExactly("1650 gravel");
        pieces.clear();
        on(800, "surface", "asphalt").on(50, "surface", "gravel", "tracktype", "grade2").on(800, "surface", "asphalt");
        assertThat(merged()).containsExactly("800 asphalt", "50 gravel", "800 asphalt");
    }

    @Test
    void sandMudStepsAndHardPlacesStay() {
        on(500, "surface", "ground").on(20, "surface", "sand").on(500, "surface", "ground").on(15, "surface", "mud").on(500, "surface", "ground");
        assertThat(merged()).containsExactly("500 ground", "20 sand", "500 ground", "15 mud", "500 ground");
        pieces.clear();
        on(500, "surface", "ground", "mtb:scale", "1").on(40, "surface", "ground", "mtb:scale", "3").on(500, "surface", "ground", "mtb:scale", "1")
                .on(8, "surface", "ground", "mtb:scale", "1", "highway", "steps").on(500, "surface", "ground", "mtb:scale", "1");
        assertThat(merged()).hasSize(5);
        pieces.clear();
        on(500, "surface", "asphalt").on(40, "surface", "asphalt", "incline", "18%").on(500, "surface", "asphalt", "smoothness", "good");
        assertThat(PieceMerger.merged(pieces)).anySatisfy(each -> assertThat(each.steepest).isEqualTo(0.18));
    }

    @Test
    void fordsAreCountedWhereverTheirPieceGoes() {
        on(500, "surface", "gravel", "tracktype", "grade3").on(6, "surface", "gravel", "tracktype", "grade3", "ford", "yes")
                .on(500, "surface", "gravel", "tracktype", "grade3");
        assertThat(PieceMerger.merged(pieces).get(0).stretch().ground().waterCrossings()).isEqualTo(1);
    }

    /** A profile takes no stretch under 1 m, no more than 100 fords on one, and none shorter than 2 m. */
    @Test
    void whatNoProfileTakesIsNotMade() {
        on(500, "surface", "asphalt").on(0.4, "surface", "sand").on(500, "surface", "asphalt");
        assertThat(merged()).containsExactly("1000 asphalt");
        pieces.clear();
        for (int i = 0; i < 150; i++) {
            on(10, "surface", "asphalt", "ford", "yes");
        }
        assertThat(PieceMerger.merged(pieces).get(0).stretch().ground().waterCrossings()).isEqualTo(100);
        pieces.clear();
        on(3, "surface", "asphalt").on(0.9, "surface", "asphalt", "ford", "yes").on(0.9, "surface", "asphalt").on(0.3, "surface", "asphalt", "ford", "yes")
                .on(0.3, "surface", "asphalt", "ford", "yes");
        assertThat(PieceMerger.merged(pieces).get(0).stretch().ground().waterCrossings()).isEqualTo(2);
    }

    /** A junction that was not matched for sure is bridged where both sides are alike; a longer gap between others stays unknown. */
    @Test
    void whatIsNotSureStaysUnknownSaveAtJunctions() {
        on(500, "surface", "asphalt").unmatched(80).on(500, "surface", "asphalt").unmatched(20).on(500, "surface", "gravel", "tracktype", "grade2").unmatched(60)
                .on(500, "surface", "ground");
        assertThat(merged()).containsExactly("1100 asphalt", "500 gravel", "60 unknown", "500 ground");
    }

    /** Over drawn tracks: length and fords are kept, no short stretch stays but what stands out, and nothing soft or hard is lost. */
    @Test
    void nothingIsLostOverDrawnTracks() {
        Random random = new Random(7);
        String[][] kinds = {{"surface", "asphalt"}, {"surface", "gravel", "smoothness", "bad"}, {"surface", "sand"}, {"surface", "ground", "mtb:scale", "2"},
            {"surface", "ground", "mtb:scale", "0"}, {"surface", "compacted"}, {"surface", "mud"}, {"highway", "steps"}, {"ford", "yes", "surface", "gravel"}};
        for (int round = 0; round < 300; round++) {
            pieces.clear();
            for (int i = 0; i < 2 + random.nextInt(40); i++) {
                double length = 2 + random.nextInt(250);
                if (random.nextInt(8) == 0) {
                    unmatched(length);
                } else {
                    on(length, kinds[random.nextInt(kinds.length)]);
                }
            }
            List<GroundPiece> merged = PieceMerger.merged(pieces);
            assertThat(merged.stream().mapToDouble(GroundPiece::length).sum()).isCloseTo(end(), within(1e-6));
            assertThat(merged.stream().mapToInt(each -> each.crossings).sum()).isEqualTo(pieces.stream().mapToInt(each -> each.crossings).sum());
            for (int i = 1; i < merged.size(); i++) {
                assertThat(merged.get(i).from).isEqualTo(merged.get(i - 1).to);
            }
            for (GroundPiece piece : pieces) {
                if (piece.family() == Surface.Family.SOFT || piece.passage != null) {
                    double middle = (piece.from + piece.to) / 2;
                    assertThat(merged.stream().filter(each -> each.from <= middle && middle <= each.to)).anyMatch(each ->
                            each.family() == piece.family() && Objects.equals(each.passage, piece.passage));
                }
            }
            assertThat(hardest(merged)).isEqualTo(hardest(pieces));
        }
    }

    private static double hardest(List<GroundPiece> pieces) {
        return pieces.stream().filter(each -> each.ground.mtbScale() != null && each.ground.mtbScale() >= 1).mapToDouble(each -> each.ground.mtbScale()).max().orElse(-1);
    }

    @Test
    void inclineTagsAreRead() {
        assertThat(InclineTag.steepest("-12.5 %")).isEqualTo(0.125);
        assertThat(InclineTag.steepest("10°")).isCloseTo(0.176, within(0.001));
        assertThat(InclineTag.steepest("up")).isNull();
        assertThat(InclineTag.steepest("300%")).isNull();
        assertThat(InclineTag.steepest(null)).isNull();
    }
}
