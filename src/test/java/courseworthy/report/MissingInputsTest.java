package courseworthy.report;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.claim.Evidence;
import courseworthy.claim.Force;
import courseworthy.claim.Rank;
import courseworthy.demand.Demands;
import courseworthy.demand.InputKeys.InputPlace;
import courseworthy.demand.Measure;
import courseworthy.demand.MeasureValue;
import courseworthy.demand.StretchMeasure;
import courseworthy.engine.UndeterminedRule;
import courseworthy.task.MissingInputs;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

class MissingInputsTest {

    private static final Demands NOTHING = new Demands(Map.of(), List.of(), List.of());

    /** What is known of every course, or follows from what is assumed where it is not written. */
    private static final Set<String> NEVER_WANTED = Set.of("distance", "length", "aero share", "hours", "slow hours", "ratio useful at speed",
            "front reference pressure", "rear reference pressure", "front pressure floor", "rear pressure floor",
            "shortest rear travel", "longest rear travel");

    @Test
    void everyMeasureSaysWhichKeyTellsIt() {
        List<String> names = new ArrayList<>(Measure.names());
        names.addAll(StretchMeasure.names());
        for (String name : names) {
            if (NEVER_WANTED.contains(name)) {
                assertThat(wanted(name)).as(name).isEmpty();
            } else {
                assertThat(wanted(name)).as(name).hasSize(1);
                assertThat(wanted(name).get(0).keys()).as(name).isNotEmpty();
            }
        }
    }

    @Test
    void keysComeInTheOrderOfTheirFileAndRulesAreCountedOnce() {
        List<UndeterminedRule> untold = List.of(untold("shipped/a", "water crossings", "surface"), untold("shipped/b", "paved share", "hour power"));
        assertThat(MissingInputs.of(untold, NOTHING)).containsExactly(new MissingInputs(InputPlace.GROUND, List.of("surface", "water crossings"), 2),
                new MissingInputs(InputPlace.RIDER, List.of("power"), 1));
    }

    /** Whoever has written the climbing of a flat course is not asked for it again because it has no long climb. */
    @Test
    void whatTheCourseIsKnownNotToHaveIsNotMissing() {
        Map<Measure, MeasureValue> flat = Map.of(Measure.ASCENT, MeasureValue.exact(2), Measure.DESCENT, MeasureValue.exact(2));
        List<UndeterminedRule> untold = List.of(untold("shipped/a", "ratio needed on the last climb"));
        assertThat(MissingInputs.of(untold, NOTHING.with(flat))).isEmpty();
        assertThat(MissingInputs.of(untold, NOTHING)).containsExactly(new MissingInputs(InputPlace.CLIMBING, List.of("ascent", "descent"), 1));
        assertThat(MissingInputs.of(List.of(untold("shipped/a", "steepest ramp")), NOTHING.with(flat))).as("no track").hasSize(1);
    }

    private static List<MissingInputs> wanted(String measure) {
        return MissingInputs.of(List.of(untold("shipped/a", measure)), NOTHING);
    }

    private static UndeterminedRule untold(String rule, String... wanting) {
        return new UndeterminedRule(ExampleBrief.origin(rule, Rank.SHIPPED, Force.SHOULD, Evidence.PRACTICE, "Why."), List.of("food"), List.of(wanting));
    }
}
