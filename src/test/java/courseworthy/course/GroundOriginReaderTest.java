package courseworthy.course;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.problem.FaultList;
import courseworthy.problem.Faults;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a profile says of where its ground comes from, and of what it may be instead. */
class GroundOriginReaderTest {

    @TempDir
    Path folder;

    private final Faults faults = new Faults();

    private Stretch stretch(String keys) throws IOException {
        Path file = Files.writeString(folder.resolve("c.yaml"), "stretches:\n  - {length: 2 km, " + keys + "}\n");
        Course course = CourseReader.read(file, "c.yaml", null, faults);
        return course == null ? null : course.stretches().get(0);
    }

    private String said() {
        return FaultList.text(faults.faults());
    }

    @Test
    void whatWasMappedAndInferredIsKnownFromWhatAPersonWrote() throws IOException {
        GroundOrigin origin = stretch("surface: unpaved, tracktype: grade3, smoothness: bad, way: Mill Lane, mapped: 'tracktype=grade3, smoothness=good', "
                + "inferred: [surface=unpaved by firm-track, a range by gravel-alone]").origin();
        assertThat(origin).isEqualTo(new GroundOrigin("Mill Lane", Map.of("tracktype", "grade3", "smoothness", "good"),
                Map.of("firm-track", Map.of("surface", "unpaved"), "gravel-alone", Map.of())));
        assertThat(origin.source("tracktype", "grade3")).isEqualTo(GroundOrigin.ValueProvenance.MAPPED);
        assertThat(origin.source("surface", "unpaved")).isEqualTo(GroundOrigin.ValueProvenance.INFERRED);
        assertThat(origin.source("smoothness", "bad")).isNull();
        assertThat(faults.faults()).isEmpty();
    }

    @Test
    void aStretchThatAPersonWroteHasNoOrigin() throws IOException {
        assertThat(stretch("surface: gravel").origin()).isNull();
    }

    @Test
    void groundMayBeOneOfSeveral() throws IOException {
        Stretch stretch = stretch("surface: unpaved, tracktype: grade3, may be: [surface=gravel, 'surface=ground, mtb:scale=2']");
        assertThat(stretch.alternatives()).extracting(GroundPairs::of).containsExactly(Map.of("surface", "gravel", "tracktype", "grade3"),
                Map.of("surface", "ground", "tracktype", "grade3", "mtb:scale", "2"));
        assertThat(stretch("surface: unpaved, may be: surface=gravel").alternatives()).hasSize(1);
    }

    /** Who has looked need not remove what was open before. */
    @Test
    void whatAPersonWroteIsNoLongerOpen() throws IOException {
        String imported = "inferred: [surface=unpaved by track], may be: [surface=gravel, smoothness=bad]";
        assertThat(stretch("surface: unpaved, " + imported).alternatives()).hasSize(2);
        assertThat(stretch("surface: compacted, " + imported).alternatives()).extracting(GroundPairs::of)
                .containsExactly(Map.of("surface", "compacted", "smoothness", "bad"));
        assertThat(stretch("surface: unpaved, smoothness: good, " + imported).alternatives()).extracting(GroundPairs::of)
                .containsExactly(Map.of("surface", "gravel", "smoothness", "good"));
    }

    @Test
    void whatCannotBeIsRefused() throws IOException {
        stretch("surface: asphalt, may be: [mtb:scale=3]");
        assertThat(said()).contains("c.yaml:2: may be: found surface=asphalt, mtb:scale=3, expected ground there can be",
                "Correct what the ground may be, or what is given for it.");
    }

    @Test
    void aRuleMustBeNamed() throws IOException {
        stretch("surface: unpaved, inferred: [surface=unpaved]");
        assertThat(said()).contains("c.yaml:2: inferred: found \"surface=unpaved\", expected values and the rule that inferred them, such as [surface=unpaved by track]");
    }

    @Test
    void pairsAreReadAsThoseOfTheCommandLine() throws IOException {
        stretch("mapped: 'surface gravel', may be: [surface=gravle]");
        assertThat(said()).contains("mapped: found \"surface gravel\", expected key=value pairs with commas between, such as surface=gravel, smoothness=bad",
                "Did you mean \"gravel\"?");
        Faults own = new Faults();
        assertThat(GroundPairs.read("surface=sand, surface=mud", "f", 3, "mapped", own)).isEmpty();
        assertThat(FaultList.text(own.faults())).contains("f:3: mapped: found surface a second time, expected each key once");
    }

    /** What is assumed fills in what is not known, whatever else the ground may be. */
    @Test
    void anAssumptionFillsInWhatTheGroundMayBeToo() throws IOException {
        Path file = Files.writeString(folder.resolve("c.yaml"), "stretches: [{length: 2 km, surface: unpaved, may be: [surface=gravel, surface=asphalt]}]\n");
        Course course = CourseReader.read(file, "c.yaml", "mtb:scale=2", faults);
        assertThat(course.stretches().get(0).alternatives()).extracting(GroundPairs::of)
                .containsExactly(Map.of("surface", "gravel", "mtb:scale", "2"), Map.of("surface", "asphalt"));
    }

    /** What is written counts, what the map knows fills in, and stretches are cut where either ends. */
    @Test
    void aMapFillsInWhatAProfileDoesNotSay() {
        Ground gravel = GroundPairs.ground(Map.of("surface", "gravel"));
        List<Stretch> written = List.of(new Stretch(1000, 10.0, 0.0, null, gravel, 3), new Stretch(1000, null, null, null, Ground.UNKNOWN, 4));
        GroundOrigin lane = new GroundOrigin("Mill Lane", Map.of(), Map.of());
        List<Stretch> mapped = List.of(
                new Stretch(500, null, null, null, GroundPairs.ground(Map.of("surface", "ground", "tracktype", "grade3")), List.of(), lane, 0),
                new Stretch(1500, null, null, null, GroundPairs.ground(Map.of("surface", "asphalt")), List.of(gravel), lane, 0));
        List<Stretch> both = GroundOverlay.of(written, mapped);
        assertThat(both).extracting(Stretch::length).containsExactly(500.0, 500.0, 1000.0);
        assertThat(both).extracting(each -> GroundPairs.of(each.ground())).containsExactly(Map.of("surface", "gravel", "tracktype", "grade3"),
                Map.of("surface", "gravel"), Map.of("surface", "asphalt"));
        assertThat(both).extracting(Stretch::ascent).containsExactly(5.0, 5.0, null);
        assertThat(both.get(1).alternatives()).isEmpty();
        assertThat(both.get(2).alternatives()).containsExactly(gravel);
    }
}
