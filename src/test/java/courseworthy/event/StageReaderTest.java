package courseworthy.event;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.problem.Fault;
import courseworthy.problem.Faults;
import courseworthy.text.YamlReader;
import courseworthy.topic.Work;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.LocalTime;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StageReaderTest {

    private static final String TWO = "stages:\n  - {course: a.yaml, date: 2026-08-05, group share: 30 %}\n  - {course: b.yaml, date: 2026-08-06, start: 10:30, laps: 2}\n";

    private final Faults faults = new Faults();

    private Event read(String text) {
        return EventReader.read(YamlReader.read(text.getBytes(StandardCharsets.UTF_8), "e.yaml", faults), "e.yaml", faults);
    }

    @Test
    void aStageIsTheEventOfItsDay() {
        Event race = read("name: Week\nrole: race\nstart: 09:00\naim: time\ngroup share: 10 %\n" + TWO);
        assertThat(faults.faults()).isEmpty();
        assertThat(race.isStageRace()).isTrue();
        assertThat(race.date()).isEqualTo(LocalDate.of(2026, 8, 5));
        Event first = race.plan().race().stages().get(0).day();
        assertThat(first.name()).isEqualTo("Week, stage 1");
        assertThat(first.role()).isEqualTo("race");
        assertThat(first.aim()).isEqualTo("time");
        assertThat(first.start()).isEqualTo(LocalTime.of(9, 0));
        assertThat(first.groupShare()).isEqualTo(0.3);
        assertThat(first.isStageRace()).isFalse();
        assertThat(first.plan().race().number()).isEqualTo(1);
        Event second = race.plan().race().stages().get(1).day();
        assertThat(second.start()).isEqualTo(LocalTime.of(10, 30));
        assertThat(second.groupShare()).isEqualTo(0.1);
        assertThat(second.laps()).isEqualTo(2);
        assertThat(race.plan().race().stages()).extracting(StageRace.RaceStage::line).containsExactly(7, 8);
    }

    @Test
    void whatMayChangeIsAListOrAWord() {
        assertThat(read(TWO + "changes between stages: [tyres, wheels]\n").plan().race().mayChange()).containsExactlyInAnyOrder(Work.TYRES, Work.WHEELS);
        assertThat(read(TWO + "changes between stages: nothing\n").plan().race().mayChange()).isEmpty();
        assertThat(read(TWO + "changes between stages: everything\n").plan().race().mayChange()).extracting(Work::word).containsExactlyInAnyOrderElementsOf(StageRace.CHANGES);
        assertThat(read(TWO).plan().race().stated()).isFalse();
        assertThat(faults.faults()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "stages: []|e.yaml:1: stages: found an empty list, expected at least one stage",
            "stages: [{date: 2026-08-05}]|e.yaml:1: course: found nothing, expected a file beside this one, or the name of a shipped course Add a line \"course: ...\".",
            "stages: [{course: a}]|e.yaml:1: date: found nothing, expected the day of the stage Add a line \"date: ...\".",
            "stages: [{course: a, date: 2026-08-05}, {course: b, date: 2026-08-05}]|e.yaml:1: date: found 2026-08-05, expected a day after that of the stage before, 2026-08-05 Write the stages in the order in which they are ridden.",
            "laps: 2~stages: [{course: a, date: 2026-08-05}]|e.yaml:1: laps: found laps beside stages, expected it in each stage that has it Move the line into the stages.",
            "date: 2026-08-05~stages: [{course: a, date: 2026-08-05}]|e.yaml:1: date: found date beside stages, expected it in each stage that has it Move the line into the stages.",
            "changes between stages: nothing|e.yaml:1: changes between stages: found changes between stages where there are none, expected stages, each with its course and date",
            "changes between stages: [tyre]~stages: [{course: a, date: 2026-08-05}]|e.yaml:1: changes between stages: found \"tyre\", expected everything or nothing alone, or a list of: "
                    + "bike, fork and rear travel, seatpost, tyres, wheels, gears, cockpit, contact points, electronics, brakes Did you mean \"tyres\"?",
            "changes between stages: pressure~stages: [{course: a, date: 2026-08-05}]|e.yaml:1: changes between stages: found \"pressure\", expected everything or nothing alone, or a list of: "
                    + "bike, fork and rear travel, seatpost, tyres, wheels, gears, cockpit, contact points, electronics, brakes That is seen to every day in any case: leave it out."})
    void aSlipIsSaidInFull(String text, String message) {
        read(text.replace('~', '\n') + "\n");
        assertThat(faults.faults()).extracting(Fault::text).extracting(said -> said.replaceAll("\\s+", " ")).containsExactly(message);
    }
}
