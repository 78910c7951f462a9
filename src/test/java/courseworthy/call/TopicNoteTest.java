package courseworthy.call;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.decision.Decision;
import courseworthy.demand.Demands;
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
    private static final String RACER = "kim-cross-country";

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

    /** One rider on every shipped course, with its event or all with the same one, whoever it is: what is decided alike on all of them says why, and nothing is forgotten. */
    @Test
    void whatStaysTheSameOnEveryCourseSaysWhy() {
        Map<String, Map<Topic, Set<String>>> byRider = decidedByRider();
        assertThat(byRider).hasSizeGreaterThanOrEqualTo(7);
        byRider.forEach((rider, values) -> values.forEach((topic, decided) -> {
            TopicNote note = TopicNote.on(topic);
            assertThat(!isConstant(decided) || note != null && !note.stays().isEmpty()).as("%s: %s is %s on every course", rider, topic, decided).isTrue();
        }));
    }

    /** A line that says why something stays the same is not written of what changes with the course for everybody. */
    @Test
    void whatChangesForEveryRiderIsNotSaidToStay() {
        Map<String, Map<Topic, Set<String>>> byRider = decidedByRider();
        for (TopicNote note : TopicNote.all()) {
            assertThat(note.stays().isEmpty() || note.topics().stream().anyMatch(topic -> byRider.values().stream().anyMatch(values -> isConstant(values.get(topic)))))
                    .as("%s: %s", note.topics(), note.stays()).isTrue();
        }
    }

    private static boolean isConstant(Set<String> decided) {
        return decided.size() == 1 && !decided.contains(Decision.Status.NOT_APPLICABLE.words());
    }

    /** The values decided on all shipped courses, by rider and topic. */
    private static Map<String, Map<Topic, Set<String>>> decidedByRider() {
        Map<String, Map<Topic, Set<String>>> out = new LinkedHashMap<>();
        for (ShippedDays day : ShippedDays.all()) {
            decide(out.computeIfAbsent(day.name().substring(day.name().indexOf(' ') + 1), rider -> new LinkedHashMap<>()), day.demands());
        }
        for (String role : List.of("race", "training")) {
            for (ShippedDays day : ShippedDays.allAlike(role, RACER)) {
                decide(out.computeIfAbsent(RACER + " in one event, " + role, rider -> new LinkedHashMap<>()), day.demands());
            }
        }
        return out;
    }

    private static void decide(Map<Topic, Set<String>> values, Demands demands) {
        for (Decision decision : CallMaker.call(SHIPPED, demands).decisions()) {
            values.computeIfAbsent(decision.topic(), topic -> new TreeSet<>()).add(decision.text());
        }
    }
}
