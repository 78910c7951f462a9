package courseworthy.call;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.decision.Decision;
import courseworthy.engine.DroolsRules;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** What is published on each topic, and the topics that one rider decides alike on every course. */
class TopicNoteTest {

    private static final DroolsRules SHIPPED = ShippedRuleSet.read();
    private static final String ONE_RIDER = "kim-cross-country";

    /** The decisions that matter most have a source, or say that none was found. */
    @Test
    void theDecisionsThatMatterMostSayWhatIsPublished() {
        for (Topic topic : List.of(Topics.FRONT_TYRE_WIDTH, Topics.REAR_TYRE_WIDTH, Topics.FRONT_TYRE_PRESSURE, Topics.REAR_TYRE_PRESSURE, Topics.FRONT_TYRE_CASING,
                Topics.REAR_TYRE_CASING, Topics.FORK_TRAVEL, Topics.REAR_TRAVEL, Topics.EASIEST_GEAR, Topics.HARDEST_GEAR, Topics.AERO_EXTENSIONS, Topics.WATER,
                Topics.FOOD)) {
            TopicNote note = TopicNote.on(topic);
            assertThat(note).as(topic.name()).isNotNull();
            assertThat(note.published() + note.notFound()).as(topic.name()).isNotEmpty();
        }
    }

    /** A fact has its author or standard and its year; every line is a sentence; no topic has two notes. */
    @Test
    void factsNameTheirSourceAndYear() {
        Set<Topic> seen = new java.util.HashSet<>();
        for (TopicNote note : TopicNote.all()) {
            assertThat(note.topics()).isNotEmpty().allSatisfy(topic -> assertThat(seen.add(topic)).as(topic.name()).isTrue());
            for (String line : List.of(note.published(), note.disagreement(), note.notFound(), note.stays())) {
                assertThat(line.isEmpty() || line.endsWith(".")).as(line).isTrue();
            }
            assertThat(note.published().isEmpty() || note.published().matches("(?s).*(19|20)\\d\\d.*|.*ISO 4210.*|.*Bicycle Quarterly.*")).as(note.published()).isTrue();
        }
    }

    /** One rider on every shipped course with its event: what is decided alike on all of them says why, and nothing is forgotten. */
    @Test
    void whatStaysTheSameOnEveryCourseSaysWhy() {
        Map<Topic, Set<String>> values = new LinkedHashMap<>();
        int days = 0;
        for (ShippedDays day : ShippedDays.all()) {
            if (day.name().contains(ONE_RIDER)) {
                days++;
                for (Decision decision : CallMaker.call(SHIPPED, day.demands()).decisions()) {
                    values.computeIfAbsent(decision.topic(), topic -> new TreeSet<>()).add(decision.text());
                }
            }
        }
        assertThat(days).isGreaterThanOrEqualTo(12);
        values.forEach((topic, decided) -> {
            boolean constant = decided.size() == 1 && !decided.contains(Decision.Status.NOT_APPLICABLE.words());
            TopicNote note = TopicNote.on(topic);
            assertThat(!constant || note != null && !note.stays().isEmpty()).as("%s is %s on every course", topic, decided).isTrue();
        });
    }
}
