package courseworthy.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.claim.Deadline;
import courseworthy.claim.Evidence;
import courseworthy.claim.Force;
import courseworthy.claim.Rank;
import courseworthy.claim.Verb;
import courseworthy.problem.Fault;
import courseworthy.problem.Faults;
import courseworthy.text.Node;
import courseworthy.text.YamlReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Sheets as people write them, right and wrong. */
class SheetReaderTest {

    private final Faults faults = new Faults();

    private Sheet sheet(String text) {
        Node.Mapping tree = YamlReader.read(text.getBytes(StandardCharsets.UTF_8), "s.yaml", faults);
        return SheetReader.decode(tree, "s.yaml", Rank.COACH, 0, faults);
    }

    private List<String> faultsOf(String text) {
        sheet(text);
        return faults.faults().stream().map(Fault::text).toList();
    }

    /** A sheet of one row with a condition and a saying. */
    private static String row(String when, String say) {
        return "sheet: One\nauthor: me\nadvice:\n  - id: a-row\n    when: " + when + "\n    say: " + say + "\n    because: So it is.\n";
    }

    @Test
    void readsTheDesignersExample() {
        Sheet sheet = sheet("""
                sheet: Long rough days
                author: head coach
                advice:
                  - id: tired-hands
                    when:
                      decided: {bike: cross-country full suspension}
                      roughness: at least rough
                      descent per km: over 18 m
                      hours: over 4:00 h
                    say:
                      fork travel: prefer 120 mm
                      dropper travel: [at least 125 mm, at most 6 in]
                    force: must
                    because: After four hours, rough descents punish tired hands first.
                  - id: easy-enough
                    say:
                      easiest gear: at most 0.95 x ratio needed on the last climb
                    because: The last climb is ridden on tired power.
                  - id: sealant-overnight
                    when:
                      decided: {front sealant: tubeless}
                    do:
                      what: Top up sealant, spin both wheels, lay each side down in turn
                      find: "No hiss at {front tyre pressure}"
                      by: two days before
                      needs: 12:00 h
                    evidence: practice
                    because: Fresh sealant needs a night and a short ride to find its leaks.
                leave out:
                  - rule: shipped/some-rule
                    because: We ride lower pressures than the shipped rule assumes.
                """);
        assertThat(faults.faults()).isEmpty();
        Row tired = sheet.rows().get(0);
        assertThat(tired.origin().rule()).isEqualTo("Long rough days/tired-hands");
        assertThat(tired.origin().force()).isEqualTo(Force.MUST);
        assertThat(tired.origin().evidence()).isEqualTo(Evidence.OPINION);
        assertThat(tired.origin().where()).hasToString("s.yaml:4");
        assertThat(tired.condition().canonical())
                .isEqualTo("all[decided bike[3], descent per km[181..], hours[241..], roughness[20..]]");
        assertThat(tired.sayings()).extracting(Saying::verb).containsExactly(Verb.PREFER, Verb.AT_LEAST, Verb.AT_MOST);
        assertThat(tired.sayings()).extracting(Saying::source)
                .containsExactly(new Saying.Literal(120), new Saying.Literal(125), new Saying.Literal(152));
        assertThat(tired.layers()).containsExactly(1);
        assertThat(sheet.rows().get(1).sayings().get(0).written()).isEqualTo("0.95 x ratio needed on the last climb");
        assertThat(sheet.rows().get(2).task().due()).isEqualTo(Deadline.TWO_DAYS_BEFORE);
        assertThat(sheet.rows().get(2).task().needs()).isEqualTo(12 * 3600);
        assertThat(sheet.leaveOuts()).extracting(Sheet.LeaveOut::rule).containsExactly("shipped/some-rule");
    }

    @Test
    void oneOfIsAListOrWritten() {
        String list = sheet(row("{bike at hand: [road, gravel]}", "{fork travel: prefer 120 mm}")).rows().get(0).condition().canonical();
        String written = sheet("sheet: One\nauthor: me\nadvice:\n  - id: a-row\n    when:\n      bike at hand: one of [gravel, road]\n"
                + "    say: {fork travel: prefer 120 mm}\n    because: So it is.\n").rows().get(0).condition().canonical();
        assertThat(list).isEqualTo("all[bike at hand[0, 1]]").isEqualTo(written);
        assertThat(faults.faults()).isEmpty();
    }

    @Test
    void oneOfInsideBracesIsToldToBeAList() {
        String text = row("{bike at hand: one of [road, gravel]}", "{fork travel: prefer 120 mm}");
        assertThat(YamlReader.read(text.getBytes(StandardCharsets.UTF_8), "s.yaml", faults)).isNull();
        assertThat(faults.faults()).extracting(Fault::text).containsExactly(
                "s.yaml:5: found a \"[\" after a text between brackets, expected a list alone, or the whole text in quotes\n"
                        + "    Write the list alone, such as \"key: [a, b]\", or put the whole text in double quotes.");
    }

    @Test
    void bandsAreWordsOrNumbers() {
        assertThat(canonical("at least rough")).isEqualTo("all[roughness[20..]]");
        assertThat(canonical("under rough")).isEqualTo("all[roughness[..19]]");
        assertThat(canonical("rough")).isEqualTo("all[roughness[20..29]]");
        assertThat(canonical("over rough")).isEqualTo("all[roughness[30..]]");
        assertThat(canonical("at most rough")).isEqualTo("all[roughness[..29]]");
        assertThat(canonical("between mixed and rough")).isEqualTo("all[roughness[10..29]]");
        assertThat(canonical("at least 2.3")).isEqualTo("all[roughness[23..]]");
        assertThat(faults.faults()).isEmpty();
    }

    private String canonical(String roughness) {
        return sheet(row("{roughness: " + roughness + "}", "{fork travel: prefer 120 mm}")).rows().get(0).condition().canonical();
    }

    @Test
    void allFaultsAtOnceEachWithItsLine() {
        assertThat(faultsOf("""
                sheet: Wrong
                author: me
                advice:
                  - id: one
                    when:
                      rouhgness: at least rough
                      descent per km: over 18
                      hours: over 4 parsec
                      bike at hand: at least gravel
                      role: rase
                    say:
                      fork travle: prefer 120 mm
                      fork travel: perfer 120 mm
                      rear travel: rule out 120 mm
                      seatpost: at least dropper
                      front tyre casing: at least reinforce
                      easiest gear: at most 0.95 x ratio needed on the last clmb
                      bar width: at most 0.95 x ratio needed on the last climb
                      front tyre width: prefer 100 mm
                    force: shall
                    evidence: published
                  - id: one
                    limit: yes
                    when: {decided: {front tyre width: over 40 mm}}
                    do: {what: x, find: "{front presure}", by: tomorrow, critical: yes}
                    because: So.
                  - id: three
                    when: {decided: {bar width: over 500 mm}}
                    say: {front tyre width: prefer 40 mm}
                    because: So.
                """)).containsExactly(
                "s.yaml:4: because: found nothing, expected the reason, in one sentence\n    Add a line \"because: ...\".",
                "s.yaml:6: rouhgness: found an unknown measure, expected a measure, or one of: decided, any stretch, no stretch, "
                        + "share of course, rider, rider tag, date, any of, none of\n    Did you mean \"roughness\"?",
                "s.yaml:7: descent per km: found \"18\", expected a length with its unit, such as 84 km, 52 mi, 1900 m, 6200 ft, 57 mm or "
                        + "2.25 in\n    Add the unit, one of: km, mi, m, ft, cm, mm, in.",
                "s.yaml:8: hours: found \"4 parsec\", expected a time with its unit, such as 6:30 h, 4 h, 45 min or 40 s",
                "s.yaml:9: bike at hand: found \"at least gravel\", expected a value or one of [a, b], since its values have no order\n"
                        + "    Values: road, gravel, cross-country hardtail, cross-country full suspension, trail.",
                "s.yaml:10: role: found \"rase\", expected one of: training, race\n    Did you mean \"race\"?",
                "s.yaml:12: say: found \"fork travle\", expected a topic\n    Did you mean \"fork travel\"?",
                "s.yaml:13: fork travel: found \"perfer 120 mm\", expected one of: at least, at most, prefer, avoid, rule out, then a value\n"
                        + "    Did you mean \"prefer\"?",
                "s.yaml:14: rear travel: found \"rule out 120 mm\", expected at least, at most or prefer, since it is a quantity",
                "s.yaml:15: seatpost: found \"at least dropper\", expected prefer, avoid or rule out, since its options have no order",
                "s.yaml:16: front tyre casing: found \"reinforce\", expected one of: light, reinforced, heavy\n    Did you mean \"reinforced\"?",
                "s.yaml:17: easiest gear: found \"ratio needed on the last clmb\", expected a measure\n"
                        + "    Did you mean \"ratio needed on the last climb\"?",
                "s.yaml:18: bar width: found \"0.95 x ratio needed on the last climb\", expected a measure of the same dimension, or a value "
                        + "with its unit",
                "s.yaml:19: front tyre width: found \"100 mm\", expected between 23 mm and 75 mm",
                "s.yaml:20: force: found \"shall\", expected one of: must, should, may",
                "s.yaml:21: evidence: found \"published\" without a source, expected a line \"source: ...\" too\n"
                        + "    Write who published it where, or evidence: practice.",
                "s.yaml:22: id: found \"one\" a second time, expected an id of its own\n    It first stands in line 4.",
                "s.yaml:23: limit: found \"yes\", expected no key of that name\n"
                        + "    Limits are shipped with the tool and cannot be written in a sheet; \"force: must\" is the strongest.",
                "s.yaml:25: find: found \"{front presure}\", expected a topic in braces\n    Did you mean \"front tyre pressure\"?",
                "s.yaml:25: by: found \"tomorrow\", expected one of: week before, two days before, night before, race morning, at the start, "
                        + "after the race",
                "s.yaml:25: critical: found \"yes\", expected no such mark in a sheet of your own\n"
                        + "    Only the shipped rules mark what safety hangs on.",
                "s.yaml:28: decided: found \"bar width\", settled in layer 5, expected what is settled before front tyre width, which is in "
                        + "layer 2\n    Test a measure of the course or an earlier topic instead, so that topics do not wait for each other.");
    }

    private String only(String when, String say) {
        List<String> said = faultsOf(row(when, say));
        assertThat(said).hasSize(1);
        return said.get(0).replaceFirst("s.yaml:[56]: ", "");
    }

    @Test
    void conditionsThatCannotBe() {
        String say = "{fork travel: prefer 120 mm}";
        assertThat(only("{}", say)).isEqualTo("when: found no condition, expected at least one condition\n"
                + "    Remove the line if the rule always holds.");
    }

    @Test
    void aListInsteadOfConditions() {
        assertThat(only("[roughness]", "{fork travel: prefer 120 mm}")).isEqualTo("when: found a list, expected a block of conditions");
    }

    @Test
    void aTopicAmongTheMeasures() {
        assertThat(only("{fork travel: over 100 mm}", "{lubricant: prefer wet}")).startsWith("fork travel: found an unknown measure")
                .endsWith("\n    It is a topic: write it under \"decided:\".");
    }

    @Test
    void aPropertyOfStretchesAmongTheMeasures() {
        assertThat(only("{smoothness: bad}", "{lubricant: prefer wet}")).startsWith("smoothness: found an unknown measure")
                .endsWith("\n    It is a property of a stretch: write it under \"any stretch:\".");
    }

    @Test
    void aTestThatNeverHolds() {
        assertThat(only("{hours: between 6:00 h and 4:00 h}", "{lubricant: prefer wet}")).isEqualTo(
                "hours: found \"between 6:00 h and 4:00 h\", expected a test that can hold\n    No value of hours is between 6:00 h and 4:00 h.");
    }

    /** Limits are those of the readers of riders, events and courses. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"{rider mass: over 900 kg} | No value of rider mass is over 900 kg: it goes from 30.0 kg to 200.0 kg.",
        "{rider mass: under 20 kg} | No value of rider mass is under 20 kg: it goes from 30.0 kg to 200.0 kg.",
        "{hottest temperature: over 200 F} | No value of hottest temperature is over 200 F: it goes from -110 C to 70 C.",
        "{distance: at least 6000 km} | No value of distance is at least 6000 km: it goes from 0.0 km to 5000.0 km.",
        "{laps: between 200 and 300} | No value of laps is between 200 and 300: it goes from 1 to 100.",
        "{any stretch: {ledge height: over 20 m}} | No value of ledge height is over 20 m: it goes from 0.00 m to 5.00 m.",
        "{share of course: {where: {sand: yes}, is: over 120 %}} | No value of share of course is over 120 %: it goes from 0 % to 100 %.",
        "{hardest mtb:scale: over 6} | No value of hardest mtb:scale is over 6: it goes from 0.0 to 6.0.",
        "{any stretch: {surface: asphalt, ascent: over 3000 m, length: under 2 km}} | No stretch climbs more than it is long."})
    void aTestThatNoDayCanMeet(String when, String mend) {
        assertThat(only(when, "{lubricant: prefer wet}")).endsWith("a test that can hold\n    " + mend);
    }

    @ParameterizedTest
    @ValueSource(strings = {"0000-05-09", "9999-05-09", "between 0001-01-01 and 2026-05-09"})
    void aYearThatIsNone(String date) {
        assertThat(only("{date: " + date + "}", "{lubricant: prefer wet}")).endsWith("\n    Years run from 1901 to 2099.");
    }

    @Test
    void aWordBeyondTheLast() {
        assertThat(only("{skill: over expert}", "{lubricant: prefer wet}"))
                .isEqualTo("skill: found \"over expert\", expected a test that can hold\n    No value of skill is over expert.");
    }

    @Test
    void nothingAboveTheLastBand() {
        assertThat(only("{roughness: over severe}", "{lubricant: prefer wet}"))
                .isEqualTo("roughness: found \"over severe\", expected a test that can hold\n    No value of roughness is over severe.");
    }

    @Test
    void anOptionTwice() {
        assertThat(only("{bike at hand: [road, road]}", "{lubricant: prefer wet}"))
                .isEqualTo("bike at hand: found \"road\" a second time, expected each value once");
    }

    @Test
    void aStretchOfNoGround() {
        assertThat(only("{any stretch: {length: over 1 km}}", "{lubricant: prefer wet}")).isEqualTo(
                "any stretch: found no condition on the ground of a stretch, expected at least one besides length, ascent and descent\n"
                        + "    For the whole course, test distance, ascent or descent.");
    }

    @Test
    void anUnknownPropertyOfAStretch() {
        assertThat(only("{no stretch: {sharp stone: yes}}", "{lubricant: prefer wet}"))
                .startsWith("no stretch: found \"sharp stone\", expected one of: length, ascent, descent,")
                .endsWith("\n    Did you mean \"sharp stones\"?");
    }

    @Test
    void aShareOfLengths() {
        assertThat(only("{share of course: {where: {surface: sand, length: over 1 km}, is: over 10 %}}", "{lubricant: prefer wet}"))
                .isEqualTo("share of course: found length, expected conditions on each stretch alone\n"
                        + "    Length, ascent and descent are for \"any stretch:\" and \"no stretch:\".");
    }

    @Test
    void aShareWithoutItsTest() {
        assertThat(only("{share of course: {where: {surface: sand}}}", "{lubricant: prefer wet}")).isEqualTo(
                "share of course: found a block of keys, expected where and is, such as {where: {surface: sand}, is: over 10 %}");
    }

    @Test
    void anEmptyAnyOf() {
        assertThat(only("{any of: []}", "{lubricant: prefer wet}"))
                .isEqualTo("any of: found an empty list, expected at least one set of conditions");
    }

    /** Two lines in one block are one set, of which both must hold: the opposite of what is meant. */
    @Test
    void anAnyOfWithoutDashes() {
        assertThat(only("{any of: {hours: over 4 h, mud: over 10 %}}", "{lubricant: prefer wet}"))
                .isEqualTo("any of: found a block of keys, expected a list of sets of conditions\n    Start each set with a dash: \"- hours: ...\" and "
                        + "\"- mud: ...\"; what must hold together stands in one set: \"- {hours: ..., mud: ...}\".");
    }

    @Test
    void aNoneOfWithoutADash() {
        assertThat(only("{hours: over 4 h, any of: [{none of: {role: training}}]}", "{lubricant: prefer wet}")).isEqualTo(
                "none of: found a block of keys, expected a list of sets of conditions\n    Start it with a dash: \"- role: ...\".");
    }

    @ParameterizedTest
    @ValueSource(strings = {"{rider: 'Kim, Robin'}", "{rider tag: 'first season, juniors'}"})
    void severalNamesInOneText(String when) {
        assertThat(only(when.replace("'", "\""), "{lubricant: prefer wet}")).contains(", which is one name, expected a name or one of [a, b]\n    Write a list: [");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"{ascent: over 1.500 m} | {lubricant: prefer wet} | Do you mean 1500 m or 1.5 m?",
        "{role: race} | {front tyre width: prefer 45.000 mm} | Do you mean 45000 mm or 45 mm?"})
    void whatMayBeThousandsIsAsked(String when, String say, String question) {
        assertThat(only(when, say)).endsWith("\n    " + question);
    }

    @Test
    void aBareShare() {
        assertThat(only("{paved share: over 10}", "{lubricant: prefer wet}"))
                .isEqualTo("paved share: found \"10\", expected a share with its sign, such as 6 %\n    Add the unit, one of: %.");
    }

    @Test
    void aMeasureOfAnotherDimension() {
        assertThat(only("{role: race}", "{front rim inner width: at least front reference pressure}"))
                .startsWith("front rim inner width: found \"front reference pressure\", expected a measure of the same dimension");
    }

    /** What sheets of older versions say, with the word that is said instead. */
    @ParameterizedTest
    @CsvSource({"front insert, prefer yes, fitted", "rear insert, avoid no, none", "rear sealant, prefer yes, tubeless", "front sealant, rule out no, tube",
        "aero extensions, rule out on, fitted", "power meter, prefer off, none", "helmet, prefer on, worn"})
    void formerOptionsAreMended(String topic, String says, String now) {
        String word = says.substring(says.lastIndexOf(' ') + 1);
        assertThat(only("{role: race}", "{" + topic + ": " + says + "}")).startsWith(topic + ": found \"" + word + "\", expected one of: ")
                .endsWith("\n    Did you mean \"" + now + "\"?");
    }

    @Test
    void formerOptionsInConditionsAreMended() {
        assertThat(only("{decided: {rear sealant: yes}}", "{sealant age: at most 30 days}"))
                .isEqualTo("rear sealant: found \"yes\", expected one of: tube, tubeless\n    Did you mean \"tubeless\"?");
    }

    @Test
    void aGearWithASlashIsMended() {
        assertThat(only("{role: race}", "{easiest gear: at most 34/50}")).isEqualTo(
                "easiest gear: found \"34/50\", expected a gear as a ratio or as ring by sprocket, such as 0.68 or 34x50\n    Did you mean \"34x50\"?");
    }

    @Test
    void aConditionDerivedTooLate() {
        assertThat(only("{front pressure floor: over 1.5 bar}", "{front insert: prefer fitted}")).isEqualTo(
                "front pressure floor: found \"front pressure floor\", settled in layer 5, expected what is settled before front insert, "
                        + "which is in layer 4\n    Test a measure of the course or an earlier topic instead, so that topics do not wait for "
                        + "each other.");
    }

    @Test
    void aVerbTwice() {
        assertThat(only("{role: race}", "{fork travel: [at least 120 mm, at least 100 mm]}"))
                .isEqualTo("fork travel: found \"at least\" a second time, expected each of at least, at most and prefer once");
    }

    @Test
    void aWordForAQuantity() {
        assertThat(only("{role: race}", "{bar width: prefer used bar with}"))
                .isEqualTo("bar width: found \"used bar with\", expected a value or a measure\n    Did you mean \"used bar width\"?");
    }

    @Test
    void aBareValue() {
        assertThat(only("{role: race}", "{fork travel: prefer 120}")).isEqualTo(
                "fork travel: found \"120\", expected a length with its unit, such as 84 km, 52 mi, 1900 m, 6200 ft, 57 mm or 2.25 in\n"
                        + "    Add the unit, one of: km, mi, m, ft, cm, mm, in.");
    }

    @Test
    void rowsWithHolesAndKeysNobodyKnows() {
        assertThat(faultsOf("""
                sheet: Holes
                advice:
                  - say: {fork travel: prefer 120 mm}
                    because: So.
                  - id: Not an id
                    because: So.
                    wen: {role: race}
                  - just words
                  - id: thing-to-do
                    do: {what: Wash it}
                    because: So.
                leave out:
                  - {rule: shipped/x}
                """)).containsExactly(
                "s.yaml:1: author: found nothing, expected who wrote it\n    Add a line \"author: ...\".",
                "s.yaml:3: id: found nothing, expected a name for the row, such as tired-hands\n    Add a line \"id: ...\".",
                "s.yaml:5: id: found \"Not an id\", expected small letters, digits and hyphens, such as tired-hands",
                "s.yaml:5: Not an id: found neither say nor do, expected at least one of them",
                "s.yaml:7: wen: found an unknown key, expected one of: id, when, say, force, evidence, source, because, do\n"
                        + "    Did you mean \"when\"?",
                "s.yaml:8: advice: found \"just words\", expected rows, each with id, say or do, and because",
                "s.yaml:10: find: found nothing, expected how to tell that it is done\n    Add a line \"find: ...\".",
                "s.yaml:10: by: found nothing, expected one of: week before, two days before, night before, race morning, at the start, "
                        + "after the race\n    Add a line \"by: ...\".",
                "s.yaml:13: because: found nothing, expected the reason, in one sentence\n    Add a line \"because: ...\".");
    }

    @Test
    void anEmptySheet() {
        assertThat(faultsOf("sheet: Nothing\nauthor: me\n")).containsExactly(
                "s.yaml:1: advice: found nothing, expected a list of rows\n    Write \"advice:\" and under it rows with an id.");
    }

    @Test
    void ridersSignTheirOwnConstraints() {
        String text = "constraints:\n  - id: proven-bar\n    say: {bar width: [at least 720 mm, at most 740 mm]}\n    force: must\n"
                + "    because: My shoulder.\n";
        Node.Mapping tree = YamlReader.read(text.getBytes(StandardCharsets.UTF_8), "kim.yaml", faults);
        List<Row> rows = SheetReader.rider(tree.get("constraints"), "kim.yaml", faults);
        assertThat(faults.faults()).isEmpty();
        assertThat(rows.get(0).origin().rule()).isEqualTo("rider/proven-bar");
        assertThat(rows.get(0).origin().rank()).isEqualTo(Rank.RIDER);
        assertThat(rows.get(0).origin().where()).hasToString("kim.yaml:2");
        assertThat(SheetReader.rider(null, "kim.yaml", faults)).isEmpty();
    }
}
