package courseworthy.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An invented race of six days on one build. */
class SixDaysTest {

    private static final String FOLDER = "src/test/resources/courseworthy/stage/";
    private static final String RIDER = "docs/examples/riders/ida-hardtail.yaml";
    /** Hours that organic pads and a chain last at the least, as rules/wear/intervals.yaml has them, and what the wet makes of an hour at the most (common practice, no source). */
    private static final Map<String, Double> LEAST = Map.of("front brake pads", 40.0, "rear brake pads", 40.0, "chain", 80.0);
    private static final Map<String, Double> MOST_DIRT = Map.of("dry", 1.0, "damp", 1.25, "wet", 2.5);
    private static final List<String> GOING = List.of("dry", "dry", "wet", "damp", "wet", "wet");

    @TempDir
    private static Path folder;
    private static JsonNode race;

    @BeforeAll
    static void run() throws Exception {
        race = json("stages", FOLDER + "six-days.yaml", "--rider", RIDER);
    }

    private static JsonNode json(String... words) throws Exception {
        List<String> all = new ArrayList<>(List.of(words));
        all.addAll(List.of("--format", "json"));
        CommandRun ran = CommandRun.of(all.toArray(String[]::new));
        assertThat(ran.code()).as(ran.err()).isZero();
        return new ObjectMapper().readTree(ran.out());
    }

    @Test
    void theBuildIsTheSameOnAllDays() {
        assertThat(race.get("days")).hasSize(6);
        assertThat(race.get("changes")).isEmpty();
        race.get("topics").forEach(topic -> {
            for (JsonNode day : race.get("days")) {
                for (JsonNode decision : day.get("decisions")) {
                    if (decision.get("topic").equals(topic.get("topic"))) {
                        assertThat(decision.get("value")).as("%s on stage %s", topic.get("topic"), day.get("stage")).isEqualTo(topic.get("value"));
                    }
                }
            }
        });
    }

    /** Counted anew from the hours of each day: none of it is used beyond its least life without having been renewed on an evening before. */
    @Test
    void whatWearsOutIsCalledBeforeItDoes() {
        int called = 0;
        for (JsonNode part : race.get("wear")) {
            Double least = LEAST.get(part.get("part").asText());
            if (least == null || !part.get("job").asText().equals("renew")) {
                continue;
            }
            double used = 0;
            for (int day = 1; day <= 6; day++) {
                for (JsonNode due : part.get("due_before_stage")) {
                    used = due.asInt() == day ? 0 : used;
                    called += due.asInt() == day ? 1 : 0;
                }
                used += race.get("days").get(day - 1).get("riding_s").get("high").asDouble() / 3600 * MOST_DIRT.get(GOING.get(day - 1));
                assertThat(used).as("%s after stage %d", part.get("part"), day).isLessThan(least);
            }
        }
        assertThat(called).as("pads in three wet days").isPositive();
    }

    @Test
    void theBagHoldsAsManyAsAreCalled() {
        long pads = 0;
        for (JsonNode part : race.get("wear")) {
            pads += part.get("part").asText().endsWith("brake pads") ? part.get("due_before_stage").size() : 0;
        }
        for (JsonNode item : race.get("bag")) {
            if (item.get("item").asText().equals("pairs of brake pads")) {
                assertThat(item.get("least").asLong()).isEqualTo(pads);
            }
        }
        assertThat(race.get("bag")).extracting(item -> item.get("item").asText()).contains("pairs of brake pads", "carbohydrate for the bike", "tubes");
    }

    @Test
    void aCompromiseCostsNothingWhereAllDaysAgree() {
        for (JsonNode topic : race.get("topics")) {
            boolean same = true;
            for (JsonNode day : topic.get("by_day")) {
                same &= day.get("wanted").equals(topic.get("value"));
            }
            if (same) {
                assertThat(topic.get("costs_s").isNull() || topic.get("costs_s").get("high").asDouble() == 0).as("%s", topic.get("topic")).isTrue();
            }
        }
        assertThat(race.get("topics")).anyMatch(topic -> !topic.get("ground").asText().equals("agreed"));
    }

    /** A race of one stage is that day. */
    @Test
    void oneStageIsThePlainEventOfItsCourse() throws Exception {
        for (String course : List.of("wood", "rock", "lanes")) {
            Files.copy(Path.of(FOLDER + course + ".yaml"), folder.resolve(course + ".yaml"));
            String day = "forecast: {low: 10 C, high: 18 C, going: wet}";
            Path stages = Files.writeString(folder.resolve(course + "-stage.yaml"), "role: race\nstart: 09:00\nstages:\n  - {course: " + course + ".yaml, date: 2026-07-06, " + day + "}\n");
            Path plain = Files.writeString(folder.resolve(course + "-plain.yaml"), "role: race\nstart: 09:00\ndate: " + LocalDate.of(2026, 7, 6) + "\n" + day + "\n");
            JsonNode one = json("stages", stages.toString(), "--rider", RIDER);
            JsonNode same = json("brief", folder.resolve(course + ".yaml").toString(), "--event", plain.toString(), "--rider", RIDER);
            int compared = 0;
            for (JsonNode decision : same.get("decisions")) {
                for (JsonNode settled : one.get("days").get(0).get("decisions")) {
                    if (settled.get("topic").equals(decision.get("topic"))) {
                        assertThat(settled.get("value")).as("%s: %s", course, decision.get("topic")).isEqualTo(decision.get("value"));
                        compared++;
                    }
                }
            }
            assertThat(compared).isEqualTo(one.get("days").get(0).get("decisions").size()).isGreaterThan(50);
            assertThat(one.get("costs_s").isNull() || one.get("costs_s").get("high").asDouble() == 0).isTrue();
        }
    }
}
