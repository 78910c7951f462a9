package courseworthy.course.ground;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TagInterpreterTest {

    private final TagInterpreter tags = new TagInterpreter(GroundRules.shipped());

    /** Values as they are documented, and as mappers write them besides. */
    @ParameterizedTest
    @CsvSource({"surface, gravel, gravel", "surface, Tarmac, asphalt", "surface, bare rock, rock", "surface, cobblestone:flattened, sett",
        "surface, concrete:plates, concrete:plates", "smoothness, very_bad, very_bad", "smoothness, perfect, excellent", "tracktype, 3, grade3",
        "tracktype, grade5, grade5", "mtb:scale, 1+, 1+", "mtb:scale, S2, 2"})
    void aTagIsReadAsItIsMeant(String key, String written, String value) {
        assertThat(tags.of(Map.of("highway", "steps", key, written)).mapped()).containsExactly(Map.entry(key, value));
    }

    @ParameterizedTest
    @CsvSource({"surface, laterite", "smoothness, bumpy", "tracktype, grade6", "mtb:scale, 7", "mtb:scale, 1-2", "mtb:scale, yes"})
    void whatIsNoDocumentedValueIsUnknown(String key, String written) {
        assertThat(tags.of(Map.of("highway", "steps", key, written))).isEqualTo(TaggedGround.UNKNOWN);
    }

    @Test
    void aSurfaceOfSeveralValuesMayBeAnyOfThem() {
        TaggedGround ground = tags.of(Map.of("highway", "steps", "surface", "gravel;Ground"));
        assertThat(ground.mapped()).isEmpty();
        assertThat(ground.inferred()).containsExactly(new InferredGround(TagInterpreter.SEVERAL_SURFACES, Map.of(),
                List.of(Map.of("surface", "gravel"), Map.of("surface", "ground"))));
    }

    /** A grade for rocks and hairpins on asphalt: one of both is wrong, and the surface is what can be seen from afar. */
    @Test
    void tagsThatCannotBeAtOnceAreNotBothTaken() {
        assertThat(tags.of(Map.of("highway", "steps", "surface", "asphalt", "mtb:scale", "3")).mapped()).containsExactly(Map.entry("surface", "asphalt"));
        assertThat(tags.of(Map.of("highway", "track", "surface", "asphalt", "tracktype", "grade5")).mapped()).containsOnlyKeys("surface");
    }

    @Test
    void aFordIsAWaterCrossing() {
        assertThat(tags.of(Map.of("highway", "steps", "ford", "yes")).mapped()).containsExactly(Map.entry("water crossings", "1"));
        assertThat(tags.of(Map.of("highway", "steps", "ford", "no")).mapped()).isEmpty();
    }

    @Test
    void onlyTheFirstRowThatSpeaksOfAKeyIsTaken() {
        TaggedGround track = tags.of(Map.of("highway", "track", "tracktype", "grade2"));
        assertThat(track.inferred()).extracting(InferredGround::rule).containsExactly("firm-track");
        assertThat(track.likely()).containsOnly(Map.entry("tracktype", "grade2"), Map.entry("surface", "unpaved"));
    }

    /** A path for experts is not asphalt. */
    @Test
    void whatMayBeLeavesOutWhatCannotBe() {
        TaggedGround path = tags.of(Map.of("highway", "path", "mtb:scale", "3"));
        assertThat(path.inferred()).extracting(InferredGround::mayBe).containsExactly(List.of(Map.of("surface", "gravel"), Map.of("surface", "ground")));
    }

    /** What has all its values on the map needs nothing inferred. */
    @Test
    void nothingIsInferredWhereItIsMapped() {
        assertThat(tags.of(Map.of("highway", "track", "surface", "dirt", "smoothness", "bad", "tracktype", "grade3", "mtb:scale", "1")).inferred()).isEmpty();
    }
}
