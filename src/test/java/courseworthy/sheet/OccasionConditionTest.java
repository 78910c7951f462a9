package courseworthy.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.claim.Rank;
import courseworthy.demand.Demands;
import courseworthy.demand.Measure;
import courseworthy.demand.MeasureValue;
import courseworthy.demand.Occasion;
import courseworthy.engine.DroolsRules;
import courseworthy.engine.FiringResult;
import courseworthy.engine.GearPairs;
import courseworthy.engine.PlainRules;
import courseworthy.engine.RuleSet;
import courseworthy.engine.ShippedRules;
import courseworthy.problem.Fault;
import courseworthy.problem.Faults;
import courseworthy.text.Node;
import courseworthy.text.YamlReader;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Conditions on whose day it is, and which: by the calendar. */
class OccasionConditionTest {

    private static Truth on(String conditions, Occasion occasion) {
        Faults faults = new Faults();
        Condition condition = new ConditionReader("s.yaml", faults, new NamedValues()).read("when", YamlReader.read(conditions.getBytes(java.nio.charset.StandardCharsets.UTF_8), "s.yaml", faults));
        assertThat(faults.faults()).isEmpty();
        return condition.on(new Stage(0, new Demands(Map.of(), List.of(), List.of(), null, occasion), Map.of()));
    }

    private static Occasion day(String date) {
        return new Occasion("Kim", List.of(), LocalDate.parse(date));
    }

    @ParameterizedTest
    @CsvSource({
        "2026-05-09, 2026-05-08, FALSE", "2026-05-09, 2026-05-09, TRUE", "2026-05-09, 2027-05-09, FALSE",
        "between 2026-11-01 and 2027-02-28, 2026-10-31, FALSE", "between 2026-11-01 and 2027-02-28, 2026-11-01, TRUE",
        "between 2026-11-01 and 2027-02-28, 2027-02-28, TRUE", "between 2026-11-01 and 2027-02-28, 2027-03-01, FALSE",
        "between 11-01 and 02-28, 2030-12-31, TRUE", "between 11-01 and 02-28, 2031-01-01, TRUE", "between 11-01 and 02-28, 2031-02-28, TRUE",
        "between 11-01 and 02-28, 2032-02-29, FALSE", "between 11-01 and 02-29, 2032-02-29, TRUE", "between 11-01 and 02-28, 2030-10-31, FALSE",
        "between 04-01 and 04-30, 2030-04-30, TRUE", "between 04-01 and 04-30, 2030-05-01, FALSE", "between 04-01 and 04-30, 2030-03-31, FALSE"
    })
    void dates(String test, String date, Truth truth) {
        assertThat(on("date: " + test, day(date))).isEqualTo(truth);
    }

    @Test
    void aRiderIsMeantByNameOrByTag() {
        Occasion robin = new Occasion("Robin", List.of("First season", "juniors"), null);
        assertThat(on("rider: one of [kim, ROBIN]", robin)).isEqualTo(Truth.TRUE);
        assertThat(on("rider: Rob", robin)).isEqualTo(Truth.FALSE);
        assertThat(on("rider: Robin", Occasion.UNKNOWN)).isEqualTo(Truth.UNKNOWN);
        assertThat(on("rider tag: [masters, Juniors]", robin)).isEqualTo(Truth.TRUE);
        assertThat(on("rider tag: masters", robin)).isEqualTo(Truth.FALSE);
        assertThat(on("rider tag: masters", new Occasion("", List.of(), null))).isEqualTo(Truth.FALSE);
        assertThat(on("rider tag: masters", Occasion.UNKNOWN)).isEqualTo(Truth.UNKNOWN);
        assertThat(on("date: 2026-05-09", robin)).isEqualTo(Truth.UNKNOWN);
    }

    /** The rule network and the plain loop say the same of every day; few rules are asked one by one, many in bundles. */
    @ParameterizedTest
    @ValueSource(ints = {40, 1200})
    void networkAndLoopAgree(int size) {
        Random chance = new Random(size);
        StringBuilder text = new StringBuilder("sheet: Many\nauthor: me\nadvice:\n");
        for (int i = 0; i < size; i++) {
            text.append("  - id: r").append(i).append("\n    say: {plugs: prefer ").append(i % 9).append("}\n    because: x\n    when:\n");
            List<String> conditions = new ArrayList<>(List.of("rider: [" + name(chance) + ", E]", "rider tag: " + name(chance).toLowerCase(Locale.ROOT),
                    "date: between 0" + (1 + chance.nextInt(9)) + "-15 and 0" + (1 + chance.nextInt(9)) + "-20", "hours: over " + chance.nextInt(9) + " h",
                    "none of: [{date: 2026-0" + (1 + chance.nextInt(9)) + "-16}, {rider: " + name(chance) + "}]"));
            for (int left = 1 + chance.nextInt(2); left > 0; left--) {
                text.append("      ").append(conditions.remove(chance.nextInt(conditions.size()))).append('\n');
            }
        }
        Faults faults = new Faults();
        List<Row> rows = SheetReader.decode(YamlReader.read(text.toString().getBytes(StandardCharsets.UTF_8), "s.yaml", faults), "s.yaml", Rank.COACH, 0,
                faults).rows();
        assertThat(faults.faults()).isEmpty();
        PlainRules loop = new PlainRules(rows);
        DroolsRules network = new DroolsRules(rows, new ShippedRules(List.of(), new GearPairs(List.of()), Map.of()));
        int claims = 0;
        for (int i = 0; i < 200; i++) {
            Occasion occasion = new Occasion(chance.nextInt(4) == 0 ? null : name(chance), List.of(name(chance), name(chance)),
                    chance.nextInt(4) == 0 ? null : LocalDate.of(2026, 1 + chance.nextInt(9), 14 + chance.nextInt(7)));
            Map<Measure, MeasureValue> hours = chance.nextInt(4) == 0 ? Map.of() : Map.of(Measure.HOURS, MeasureValue.exact(60L * chance.nextInt(10)));
            Stage stage = new Stage(0, new Demands(hours, List.of(), List.of(), null, occasion), Map.of());
            try (RuleSet.Firing expected = loop.open(); RuleSet.Firing actual = network.open()) {
                List<String> wanted = said(expected.fire(stage));
                assertThat(said(actual.fire(stage))).containsExactlyElementsOf(wanted);
                assertThat(actual.undetermined()).containsExactlyElementsOf(expected.undetermined());
                claims += wanted.size();
            }
        }
        assertThat(claims).isGreaterThan(5 * size);
    }

    private static String name(Random chance) {
        return String.valueOf((char) ('A' + chance.nextInt(4)));
    }

    private static List<String> said(FiringResult said) {
        return said.claims().stream().map(claim -> claim.origin().rule()).sorted().toList();
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {
        "date: 2026-02-29; \"2026-02-29\"; The calendar has no such day.", "date: 9999-02-28; \"9999-02-28\"; Years run from 1901 to 2099.", "date: between 11-01 and 2026-02-28; \"between 11-01 and 2026-02-28\"; ''", "date: 11-01; \"11-01\"; ''",
        "date: over 2026-05-09; \"over 2026-05-09\"; ''"
    })
    void aDayThatIsNoneIsSaid(String condition, String found, String mend) {
        assertThat(faults(condition)).containsExactly("s.yaml:1: date: found " + found + ", expected a day such as 2026-05-09, between 2026-11-01 "
                + "and 2027-02-28, or (for every year) between 11-01 and 02-28" + (mend.isEmpty() ? "" : "\n    " + mend));
    }

    @Test
    void slipsAreSaid() {
        assertThat(faults("date: between 2026-05-09 and 2026-05-08"))
                .containsExactly("s.yaml:1: date: found \"between 2026-05-09 and 2026-05-08\", expected the earlier day first");
        assertThat(faults("rider: [Kim, kim]")).containsExactly("s.yaml:1: rider: found \"kim\" a second time, expected each name once");
        assertThat(faults("rider tag: one of [a,]")).containsExactly("s.yaml:1: rider tag: found an empty name, expected a name or one of [a, b]");
        assertThat(faults("rider: {name: Kim}")).hasSize(1);
    }

    private static List<String> faults(String condition) {
        Faults faults = new Faults();
        Node node = YamlReader.read(condition.getBytes(java.nio.charset.StandardCharsets.UTF_8), "s.yaml", faults);
        new ConditionReader("s.yaml", faults, new NamedValues()).read("when", node);
        return faults.faults().stream().map(Fault::text).toList();
    }
}
