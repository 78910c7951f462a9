package courseworthy.debrief;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.claim.Verb;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a day says of one saying: a table of cases, each of which reads as a sentence. */
class OutcomeAssessorTest {

    private static final Topic WIDTH = Topics.REAR_TYRE_WIDTH;
    private static final Topic CASING = Topics.REAR_TYRE_CASING;
    private static final Topic GRIPS = Topics.GRIPS_OR_TAPE;

    private static long mm(int millimetres) {
        return WIDTH.resolution().ticks(millimetres / 1000.0);
    }

    /** 45 mm was ridden. */
    @ParameterizedTest
    @CsvSource({
        "PREFER, 45, RIGHT, BORNE_OUT", "PREFER, 50, RIGHT, UNKNOWN", "PREFER, 40, RIGHT, UNKNOWN",
        "PREFER, 45, MORE, NOT", "PREFER, 50, MORE, BORNE_OUT", "PREFER, 40, MORE, NOT",
        "PREFER, 45, LESS, NOT", "PREFER, 50, LESS, NOT", "PREFER, 40, LESS, BORNE_OUT",
        "AT_LEAST, 45, RIGHT, BORNE_OUT", "AT_LEAST, 40, RIGHT, UNKNOWN", "AT_LEAST, 50, RIGHT, UNKNOWN",
        "AT_LEAST, 45, MORE, UNKNOWN", "AT_LEAST, 40, MORE, UNKNOWN", "AT_LEAST, 50, MORE, BORNE_OUT",
        "AT_LEAST, 45, LESS, NOT", "AT_LEAST, 40, LESS, UNKNOWN", "AT_LEAST, 50, LESS, NOT",
        "AT_MOST, 45, RIGHT, BORNE_OUT", "AT_MOST, 50, RIGHT, UNKNOWN", "AT_MOST, 40, RIGHT, UNKNOWN",
        "AT_MOST, 45, MORE, NOT", "AT_MOST, 50, MORE, UNKNOWN", "AT_MOST, 40, MORE, NOT",
        "AT_MOST, 45, LESS, UNKNOWN", "AT_MOST, 50, LESS, UNKNOWN", "AT_MOST, 40, LESS, BORNE_OUT",
        "ONE_OF, 45, RIGHT, UNKNOWN"})
    void ofAWidth(Verb verb, int value, Direction way, AdviceOutcome answer) {
        assertThat(new OutcomeAssessor(WIDTH, mm(45), way, null).of(verb, mm(value))).isEqualTo(answer);
    }

    /** Reinforced was ridden; the rider would take what stands last, where something does. */
    @ParameterizedTest
    @CsvSource({"PREFER, light, MORE, heavy, NOT", "PREFER, heavy, MORE, heavy, BORNE_OUT", "AVOID, reinforced, MORE, heavy, BORNE_OUT",
        "AVOID, heavy, MORE, heavy, NOT", "AVOID, light, MORE, heavy, UNKNOWN", "RULE_OUT, light, LESS, light, NOT", "AVOID, light, RIGHT, , UNKNOWN"})
    void ofACasing(Verb verb, String value, Direction way, String wanted, AdviceOutcome answer) {
        Long would = wanted == null ? null : Long.valueOf(CASING.option(wanted));
        assertThat(new OutcomeAssessor(CASING, CASING.option("reinforced"), way, would).of(verb, CASING.option(value))).isEqualTo(answer);
    }

    /** Standard grips were ridden. */
    @ParameterizedTest
    @CsvSource({"PREFER, standard, RIGHT, , BORNE_OUT", "PREFER, cushioned, RIGHT, , UNKNOWN", "PREFER, standard, ANOTHER, , NOT",
        "PREFER, cushioned, ANOTHER, , UNKNOWN", "PREFER, cushioned, ANOTHER, cushioned, BORNE_OUT", "PREFER, thin, ANOTHER, cushioned, UNKNOWN",
        "AVOID, standard, ANOTHER, , BORNE_OUT", "AVOID, cushioned, ANOTHER, cushioned, NOT"})
    void ofGrips(Verb verb, String value, Direction way, String wanted, AdviceOutcome answer) {
        Long would = wanted == null ? null : Long.valueOf(GRIPS.option(wanted));
        assertThat(new OutcomeAssessor(GRIPS, GRIPS.option("standard"), way, would).of(verb, GRIPS.option(value))).isEqualTo(answer);
    }

    /** What a rule names to a finer step than is decided is what was ridden: 117 mm of travel, decided as 120 mm. */
    @Test
    void withinAStepIsTheSame() {
        Topic travel = Topics.FORK_TRAVEL;
        long ridden = travel.resolution().ticks(0.120);
        long named = travel.resolution().ticks(0.117);
        assertThat(named).isNotEqualTo(ridden);
        assertThat(new OutcomeAssessor(travel, ridden, Direction.RIGHT, null).of(Verb.PREFER, named)).isEqualTo(AdviceOutcome.BORNE_OUT);
        assertThat(new OutcomeAssessor(travel, ridden, Direction.MORE, null).of(Verb.PREFER, named)).isEqualTo(AdviceOutcome.NOT);
        assertThat(new OutcomeAssessor(travel, ridden, Direction.MORE, null).of(Verb.PREFER, ridden + travel.step())).isEqualTo(AdviceOutcome.BORNE_OUT);
    }

    /** Turned upside down, at least is at most, and more is less. */
    @Test
    void upsideDownItIsTheSame() {
        for (int value = 30; value <= 60; value += 5) {
            for (Direction way : new Direction[] {Direction.RIGHT, Direction.MORE, Direction.LESS}) {
                Direction other = way == Direction.MORE ? Direction.LESS : way == Direction.LESS ? Direction.MORE : way;
                assertThat(new OutcomeAssessor(WIDTH, mm(45), way, null).of(Verb.AT_LEAST, mm(value)))
                        .isEqualTo(new OutcomeAssessor(WIDTH, mm(45), other, null).of(Verb.AT_MOST, mm(90 - value)));
                assertThat(new OutcomeAssessor(WIDTH, mm(45), way, null).of(Verb.PREFER, mm(value)))
                        .isEqualTo(new OutcomeAssessor(WIDTH, mm(45), other, null).of(Verb.PREFER, mm(90 - value)));
            }
        }
    }
}
