package courseworthy.checklist;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.call.Call;
import courseworthy.demand.Measure;
import courseworthy.report.ExampleBrief;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sentences with values in them, written out by hand as the rider must read them; the bike has 20 % of sag at the fork and no shock. */
class PlaceholderFillerTest {

    private Call call;

    @BeforeEach
    void aBikeWithoutShock() {
        ExampleBrief example = new ExampleBrief();
        example.notApplicable("rear sag");
        example.demand(Measure.LOWER_MARKED_PRESSURE, 70, 70, 70);
        call = example.call();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "{front sag} of sag | 20 % of sag",
        "Front {front sag}, rear {rear sag}, rings clean | Front 20 %, rings clean",
        "Front {front sag}; rear {rear sag}; rings clean | Front 20 %; rings clean",
        "Rings clean; rear {rear sag} | Rings clean",
        "Front {front sag}, rear {rear sag} | Front 20 %",
        "rear {rear sag}, rings clean | Rings clean",
        "Front {front sag}, | Front 20 %",
        "Front {front sag}; | Front 20 %",
        // A comma within a number is no end of a clause.
        "Rear {rear sag} of 1,000 strokes, clean | Clean",
        "Not over {lower marked pressure}, {front sag} | Not over 3.5 bar, 20 %",
        "{rear sag} | ''",
        // Without names a text stays as it is written.
        "quiet, and dry, | quiet, and dry,"})
    void clausesAreFilledOrLeftOut(String text, String filled) {
        assertThat(new PlaceholderFiller(call, Map.of()).fill(text)).isEqualTo(filled);
    }

    /** What the parts of a build make of a value stands instead of the decision. */
    @Test
    void theBuildsValueGoesFirst() {
        assertThat(new PlaceholderFiller(call, Map.of("front sag", "22 % on race fork")).fill("Front {front sag}")).isEqualTo("Front 22 % on race fork");
    }

    @Test
    void aMeasureThatIsNotKnownLeavesItsClauseOut() {
        PlaceholderFiller filler = new PlaceholderFiller(new ExampleBrief().call(), Map.of());
        assertThat(filler.fill("At most {lower marked pressure}; gauge zeroed")).isEqualTo("Gauge zeroed");
        assertThat(filler.applies("At most {lower marked pressure}")).isFalse();
        assertThat(filler.applies("At most {front sag}")).isTrue();
    }
}
