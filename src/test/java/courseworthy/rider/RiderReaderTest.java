package courseworthy.rider;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.problem.Fault;
import courseworthy.problem.Faults;
import courseworthy.text.Node;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RiderReaderTest {

    private static final String WATTS = "a power with its unit, such as 245 W";

    @TempDir
    Path folder;

    private final Faults faults = new Faults();

    private Rider read(String text) {
        try {
            return RiderReader.read(Files.writeString(folder.resolve("r.yaml"), text), "r.yaml", faults);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private List<String> said() {
        return faults.faults().stream().map(Fault::text).toList();
    }

    /** US units by the agreement of 1959: 1 lb = 0.45359237 kg, 1 in = 25.4 mm; 1 US fl oz = 29.5735295625 ml. */
    @Test
    void everythingWrittenIsReadInBaseUnits() {
        Rider rider = read("""
                name: Ada Fell
                mass: 141 lb
                height: 1.78 m
                kit: 4 kg
                power:
                  - {for: 1:00 h, power: 250 W}
                  - {for: 20 min, power: 268 W}
                  - {for: 5 s, power: 1100 W}
                skill: good
                climbing cadence: 62 rpm
                highest cadence: 115 rpm
                races a year: 9
                sweat rate: 40 fl oz
                bar width: 30 in
                shoulder width: 15.5 in
                hand strength: weak
                year of birth: 2009
                injuries: [back, knees, back]
                preference: speed
                bike: {kind: trail}
                constraints:
                  - {id: narrow, say: {bar width: at most 760 mm}, because: Shoulder.}
                """);
        assertThat(said()).isEmpty();
        assertThat(rider.name()).isEqualTo("Ada Fell");
        assertThat(rider.file()).isEqualTo("r.yaml");
        assertThat(rider.mass()).isEqualTo(141 * 0.45359237);
        assertThat(rider.height()).isEqualTo(1.78);
        assertThat(rider.kit()).isEqualTo(4);
        assertThat(rider.efforts()).containsExactly(new Rider.MaximalEffort(5, 1100), new Rider.MaximalEffort(1200, 268), new Rider.MaximalEffort(3600, 250));
        assertThat(rider.skill()).isEqualTo("good");
        assertThat(rider.climbingCadence()).isEqualTo(62);
        assertThat(rider.highestCadence()).isEqualTo(115);
        assertThat(rider.racesAYear()).isEqualTo(9);
        assertThat(rider.sweatRate()).isEqualTo(40 * 0.0295735295625);
        assertThat(rider.barWidth()).isEqualTo(0.762);
        assertThat(rider.body()).isEqualTo(new Rider.BodyMeasures(0.3937, "weak", 2009, List.of("back", "knees")));
        assertThat(rider.body().ageIn(2026)).isEqualTo(17);
        assertThat(rider.preference()).isEqualTo("speed");
        assertThat(rider.bike().kind()).isEqualTo("trail");
        assertThat(((Node.Sequence) rider.constraints()).items()).hasSize(1);
    }

    @Test
    void whatIsNotWrittenIsUnknown() {
        Rider rider = read("name: Nobody\n");
        assertThat(said()).isEmpty();
        assertThat(rider).isEqualTo(Rider.builder().name("Nobody").file("r.yaml").build());
    }

    @Test
    void onePowerWithItsTimeIsEnough() {
        assertThat(read("power: 240 W\nheld for: 1:00 h\n").efforts()).containsExactly(new Rider.MaximalEffort(3600, 240));
        assertThat(said()).isEmpty();
    }

    /** Each slip alone, and all that is said of it. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "mass: 6.4 kg|r.yaml:1: mass: found \"6.4 kg\", expected a mass from 30 kg to 200 kg",
            "mass: 64|r.yaml:1: mass: found \"64\", expected a mass with its unit, such as 64 kg, 141 lb or 50 g;Add the unit, one of: kg, lb, g.",
            "height: 178 m|r.yaml:1: height: found \"178 m\", expected a height from 1.2 m to 2.3 m",
            "kit: 40 kg|r.yaml:1: kit: found \"40 kg\", expected a mass from 0 kg to 30 kg",
            "skill: god|r.yaml:1: skill: found \"god\", expected one of: novice, fair, good, expert;Did you mean \"good\"?",
            "climbing cadence: 20 rpm|r.yaml:1: climbing cadence: found \"20 rpm\", expected a cadence from 30 rpm to 110 rpm",
            "highest cadence: 300 rpm|r.yaml:1: highest cadence: found \"300 rpm\", expected a cadence from 60 rpm to 160 rpm",
            "races a year: some|r.yaml:1: races a year: found \"some\", expected a whole number from 0 to 200",
            "sweat rate: 8 L|r.yaml:1: sweat rate: found \"8 L\", expected litres an hour, from 0.1 L to 4 L",
            "bar width: 78 mm|r.yaml:1: bar width: found \"78 mm\", expected a width from 300 mm to 900 mm",
            "shoulder width: 39 mm|r.yaml:1: shoulder width: found \"39 mm\", expected a width from 250 mm to 550 mm",
            "hand strength: small|r.yaml:1: hand strength: found \"small\", expected one of: weak, usual, strong",
            "year of birth: 16|r.yaml:1: year of birth: found \"16\", expected a whole number from 1900 to 2100",
            "preference: comfrt|r.yaml:1: preference: found \"comfrt\", expected one of: comfort, balanced, speed;Did you mean \"comfort\"?",
            "injuries: [knee]|r.yaml:1: injuries: found \"knee\", expected any of: hands, neck, shoulders, back, knees, seat;"
                    + "Did you mean \"knees\"? Anything else belongs in notes.",
            "injuries: [toenail]|r.yaml:1: injuries: found \"toenail\", expected any of: hands, neck, shoulders, back, knees, seat;Anything else belongs in notes.",
            "bike: trail|r.yaml:1: bike: found \"trail\", expected a block of keys",
            "constraints: none|r.yaml:1: constraints: found \"none\", expected a list of rows, as in a sheet's advice;Start each row with a dash.",
            "power: 240 W|r.yaml:1: power: found \"240 W\" without a time, expected the best power and the time it was held for;"
                    + "Add a line \"held for: 1:00 h\", or whatever the time was.",
            "held for: 1:00 h|r.yaml:1: held for: found a time without a power, expected power beside it;Add a line \"power: 240 W\".",
            "weight: 64 kg|r.yaml:1: weight: found an unknown key, expected one of: name, mass, height, kit, power, held for, skill, "
                    + "climbing cadence, highest cadence, plug stop, tube stop, lost group, races a year, sweat rate, bar width, shoulder width, hand strength, year of birth, injuries, preference, tags, notes, bike, constraints;Did you mean \"mass\"?"})
    void aSlipIsSaidInFull(String text, String message) {
        read(text + "\n");
        assertThat(said()).containsExactly(message.replace(";", "\n    "));
    }

    @Test
    void aHeightThatDoesNotGoWithTheMassIsRefused() {
        read("mass: 200 kg\nheight: 1.2 m\n");
        assertThat(said()).containsExactly("r.yaml:2: height: found \"1.2 m\" at a mass of \"200 kg\", expected a body there can be\n"
                + "    Check mass and height.");
    }

    @Test
    void powersThatCannotBeAreRefused() {
        Rider rider = read("""
                power:
                  - {for: 1:00 h, power: 700 W}
                  - {for: 20 min, power: 280 W}
                  - {for: 5 min, power: 270 W}
                  - {for: 20 min, power: 281 W}
                  - {for: 1 min}
                  - {power: 300 W}
                  - 400 W
                  - {for: 2 s, power: 1100}
                """);
        assertThat(said()).containsExactly(
                "r.yaml:2: power: found \"700 W\", expected a power from 50 W to 600 W over that time",
                "r.yaml:4: power: found \"270 W\", expected less power the longer it is held\n    Another row holds 280 W for 20 min.",
                "r.yaml:5: for: found the same time twice, expected each time once",
                "r.yaml:6: power: found nothing, expected the best mean power over that time\n    Add a line \"power: ...\".",
                "r.yaml:7: for: found nothing, expected the time the power was held for\n    Add a line \"for: ...\".",
                "r.yaml:8: power: found \"400 W\", expected a block of keys",
                "r.yaml:9: for: found \"2 s\", expected a time from 5 s to 24 h",
                "r.yaml:9: power: found \"1100\", expected " + WATTS + "\n    Add the unit, one of: W.");
        assertThat(rider.efforts()).containsExactly(new Rider.MaximalEffort(1200, 280));
    }

    /** Power laws hold from about 3.5 min to 230 min (Riegel 1981); what is not used is said, and what alone cannot be used is refused. */
    @Test
    void anEffortThatIsNotUsedIsSaid() {
        Rider rider = read("power:\n  - {for: 10 s, power: 900 W}\n  - {for: 20 min, power: 280 W}\n  - {for: 6 h, power: 200 W}\n");
        assertThat(said()).isEmpty();
        assertThat(rider.efforts()).hasSize(3);
        assertThat(faults.warnings()).extracting(Fault::text).containsExactly(
                "r.yaml:2: warning: for: found \"10 s\", expected a time from 3 min to 24 h\n    It is not used. Power over less than 3 min says "
                        + "nothing of an hour: write a longer best effort, such as one of 20 min.",
                "r.yaml:4: warning: for: found \"6 h\" beside a shorter effort, expected efforts up to 4 h, or one alone\n    It is not used: the "
                        + "shorter one says more closely what an hour would be.");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"power: 900 W;held for: 10 s|r.yaml:2: held for: found \"10 s\"",
        "power: [{for: 30 s, power: 700 W}, {for: 2 min, power: 500 W}]|r.yaml:1: for: found \"30 s\""})
    void aSprintAloneIsRefused(String text, String start) {
        read(text.replace(";", "\n") + "\n");
        assertThat(said()).isNotEmpty();
        assertThat(said().get(0)).startsWith(start + ", expected a time from 3 min to 24 h\n    Power over less than 3 min says nothing of an hour");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"power: 250 W;held for: 6:00 h", "power: [{for: 6 h, power: 220 W}]"})
    void aLongEffortIsTaken(String text) {
        assertThat(read(text.replace(";", "\n") + "\n").efforts()).hasSize(1);
        assertThat(said()).isEmpty();
        assertThat(faults.warnings()).isEmpty();
    }

    @Test
    void powerBeyondAnyBodyIsRefused() {
        read("mass: 40 kg\npower: 400 W\nheld for: 1:00 h\n");
        assertThat(said()).containsExactly("r.yaml:2: power: found \"400 W\", expected at most 320 W over that time at a mass of \"40 kg\", 8 W/kg\n"
                + "    Check power, time and mass.");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"under 15, beginner", "\"under 15, beginner\""})
    void tagsInOneTextAreAsked(String tags) {
        read("tags: " + tags + "\n");
        assertThat(said()).containsExactly("r.yaml:1: tags: found \"under 15, beginner\", which is one text, expected each by itself\n"
                + "    Write a list: [under 15, beginner]; what has a comma in it goes in quotes there.");
    }

    @Test
    void aListOfTagsIsAListOfTags() {
        assertThat(read("tags: [under 15, beginner]\n").tags()).containsExactly("under 15", "beginner");
        assertThat(read("tags: [\"under 15, beginner\"]\n").tags()).containsExactly("under 15, beginner");
        assertThat(read("tags: beginner\n").tags()).containsExactly("beginner");
        assertThat(said()).isEmpty();
    }

    @Test
    void aTimeBesideAListAndCadencesTheWrongWayRoundAreRefused() {
        read("power: [{for: 1:00 h, power: 250 W}]\nheld for: 1:00 h\nclimbing cadence: 90 rpm\nhighest cadence: 80 rpm\n");
        assertThat(said()).containsExactly(
                "r.yaml:2: held for: found a time beside a list of powers, expected the time inside each item, as for\n    Remove held for.",
                "r.yaml:3: climbing cadence: found \"90 rpm\", expected less than the highest cadence");
    }

    @Test
    void theKeysAreThoseThatAreRead() {
        read("zzz: 1\n");
        assertThat(said().get(0)).contains("one of: " + String.join(", ", RiderReader.KEYS));
    }
}
