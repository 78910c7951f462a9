package courseworthy.rulebase;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.claim.Due;
import courseworthy.claim.Evidence;
import courseworthy.claim.Force;
import courseworthy.claim.Rank;
import courseworthy.claim.Verb;
import courseworthy.problem.Fault;
import courseworthy.problem.Faults;
import courseworthy.text.Node;
import courseworthy.text.Yaml;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Sheets as people write them, right and wrong. */
class SheetReaderTest {

    private final Faults faults = new Faults();

    private Sheet sheet(String text) {
        Node.Mapping tree = Yaml.read(text.getBytes(StandardCharsets.UTF_8), "s.yaml", faults);
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
                      dropper stroke: [at least 125 mm, at most 6 in]
                    force: must
                    because: After four hours, rough descents punish tired hands first.
                  - id: easy-enough
                    say:
                      easiest gear: at most 0.95 x ratio needed on the last climb
                    because: The last climb is ridden on tired power.
                  - id: sealant-overnight
                    when:
                      decided: {front sealant: yes}
                    do:
                      what: Top up sealant, spin both wheels, lay each side down in turn
                      find: "No hiss at {front tyre pressure}"
                      by: two days before
                      needs: 12:00 h
                    evidence: practice
                    because: Fresh sealant needs a night and a short ride to find its leaks.
                leave out:
                  - rule: house/some-rule
                    because: We ride lower pressures than the house rule assumes.
                """);
        assertThat(faults.faults()).isEmpty();
        Row tired = sheet.rows().get(0);
        assertThat(tired.author().rule()).isEqualTo("Long rough days/tired-hands");
        assertThat(tired.author().force()).isEqualTo(Force.MUST);
        assertThat(tired.author().evidence()).isEqualTo(Evidence.OPINION);
        assertThat(tired.author().where()).hasToString("s.yaml:4");
        assertThat(tired.condition().canonical())
                .isEqualTo("all[decided bike[3], descent per km[181..], hours[241..], roughness[20..]]");
        assertThat(tired.sayings()).extracting(Saying::verb).containsExactly(Verb.PREFER, Verb.AT_LEAST, Verb.AT_MOST);
        assertThat(tired.sayings()).extracting(Saying::worth)
                .containsExactly(new Saying.Literal(120), new Saying.Literal(125), new Saying.Literal(152));
        assertThat(tired.layers()).containsExactly(1);
        assertThat(sheet.rows().get(1).sayings().get(0).written()).isEqualTo("0.95 x ratio needed on the last climb");
        assertThat(sheet.rows().get(2).task().due()).isEqualTo(Due.TWO_DAYS_BEFORE);
        assertThat(sheet.rows().get(2).task().needs()).isEqualTo(12 * 3600);
        assertThat(sheet.leaveOuts()).extracting(Sheet.LeaveOut::rule).containsExactly("house/some-rule");
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
                "s.yaml:4: because: found no such key, expected the reason, in one sentence\n    Add a line \"because: ...\".",
                "s.yaml:6: rouhgness: found an unknown measure, expected a measure, or one of: decided, any stretch, no stretch, "
                        + "share of course, any of, none of\n    Did you mean \"roughness\"?",
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
                "s.yaml:23: limit: found \"yes\", expected no such key\n"
                        + "    Limits are shipped with the tool and cannot be written in a sheet; \"force: must\" is the strongest.",
                "s.yaml:25: find: found \"{front presure}\", expected a topic in braces\n    Did you mean \"front tyre pressure\"?",
                "s.yaml:25: by: found \"tomorrow\", expected one of: week before, two days before, night before, race morning, at the start, "
                        + "after the race",
                "s.yaml:25: critical: found \"yes\", expected no such key in a sheet of one's own\n"
                        + "    Only the shipped rules mark what safety hangs on.",
                "s.yaml:28: decided: found \"bar width\", settled in layer 5, expected what is settled before front tyre width, which is in "
                        + "layer 2\n    Test a measure of the course or an earlier topic instead, so that topics do not wait for each other.");
    }
}
