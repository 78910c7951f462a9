package courseworthy.task;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.analysis.Finding;
import courseworthy.analysis.Finding.Kind;
import courseworthy.analysis.SheetCheck;
import courseworthy.call.Call;
import courseworthy.call.CallMaker;
import courseworthy.claim.Claim;
import courseworthy.claim.Task;
import courseworthy.claim.Verb;
import courseworthy.decision.Decision;
import courseworthy.demand.Measure;
import courseworthy.demand.MeasureScale;
import courseworthy.engine.DroolsRules;
import courseworthy.engine.ShippedRules;
import courseworthy.problem.Faults;
import courseworthy.sheet.Condition;
import courseworthy.sheet.Row;
import courseworthy.sheet.Rulebook;
import courseworthy.sheet.Sheet;
import courseworthy.sheet.SheetReader;
import courseworthy.sheet.SituationWriter;
import courseworthy.sheet.Stage;
import courseworthy.sheet.Truth;
import courseworthy.topic.SettledTopic;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Every remark on sheets by chance is shown by its example: written, read again and called with all rules in force, as {@code why} does.
 * Whether it shows is judged here anew, by a plain look at what each row asks and says.
 */
class ShownFindingsTest {

    private static final int SHEETS = Integer.getInteger("courseworthy.shown", 60);
    /** Of answers that come about only together with others, and of what is told of one where no day was found. */
    private static final String HANGING = """
            sheet: Mine
            author: a coach
            advice:
              - {id: a, when: {front reference pressure: over 2 bar}, say: {front tyre pressure: prefer 3 bar}, because: It is so.}
              - {id: b, when: {front reference pressure: between 2.5 bar and 3 bar}, say: {front tyre pressure: prefer 2 bar}, because: So.}
              - {id: c, when: {decided: {easiest gear: under 0.7}}, say: {lubricant: prefer dry}, because: It is so.}
              - {id: d, when: {decided: {easiest gear: under 0.6}}, say: {lubricant: prefer wet}, because: It is so.}
              - {id: e, when: {decided: {front tyre width: over 40 mm, rear tyre width: over 45 mm}}, say: {chain: prefer new a week before},
                 because: It is so.}
              - {id: f, when: {decided: {front tyre width: over 30 mm}}, say: {chain: prefer keep if within its wear limit}, because: So.}
              - {id: g, when: {front reference pressure: over 25 bar}, say: {rear tyre pressure: prefer 2 bar}, because: It is so.}
              - {id: h, when: {front reference pressure: over 25 bar}, say: {rear tyre pressure: prefer 2 bar}, because: It is so.}
              - {id: i, when: {rider: Kim}, say: {plugs: prefer 1}, because: It is so.}
              - {id: j, when: {rider: [Lee, Max]}, say: {plugs: prefer 5}, because: It is so.}
              - {id: k, when: {date: between 11-01 and 02-28}, say: {tubes: prefer 1}, because: It is so.}
              - {id: l, when: {date: between 2026-06-01 and 2026-08-31}, say: {tubes: prefer 3}, because: It is so.}
              - {id: m, when: {any stretch: {sharp stones: yes, length: over 5 km}}, say: {spares: prefer none}, because: It is so.}
              - {id: n, when: {no stretch: {sharp stones: yes, length: over 3 km}}, say: {spares: prefer quick link}, because: It is so.}
              - {id: o, when: {share of course: {where: {paved: yes}, is: over 60 %}}, say: {tools: prefer multi-tool}, because: It is so.}
              - {id: p, when: {share of course: {where: {paved: no}, is: over 60 %}}, say: {tools: prefer multi-tool with chain tool},
                 because: It is so.}
            """;
    private static final List<String> TOPICS = List.of("plugs", "front tyre casing", "fork travel", "front tyre pressure", "lubricant");
    private static final ShippedRules SHIPPED = ShippedRules.load();

    @TempDir
    private Path folder;

    private final Map<Kind, Integer> counts = new EnumMap<>(Kind.class);
    private SplittableRandom chance;

    @Test
    void everyRemarkIsShownByItsExample() throws IOException {
        for (int i = 0; i < SHEETS; i++) {
            chance = new SplittableRandom(i);
            look(i, sheet());
        }
        System.out.println("remarks opened: " + counts);
        // Rows and tags that are nobody's are found among riders, not in a sheet alone: SheetCheckRidersTest.
        for (Kind kind : EnumSet.complementOf(EnumSet.of(Kind.SILENT, Kind.TAG_WITHOUT_RIDERS))) {
            assertThat(counts.getOrDefault(kind, 0)).as("%s of %s", kind, counts).isPositive();
        }
    }

    /** Two of which one excludes the other on every day do not contradict: Kim and Lee, winter and June, paved and unpaved. */
    @Test
    void whatHangsTogetherIsKnown() throws IOException {
        look(1, HANGING);
        assertThat(counts).isEqualTo(Map.of(Kind.CONTRADICTS, 3, Kind.UNREASONED, 1));
    }

    private void look(int number, String text) throws IOException {
        Faults faults = new Faults();
        Sheet sheet = SheetReader.read(Files.writeString(folder.resolve("mine-" + number + ".yaml"), text), "mine.yaml", 0, faults);
        assertThat(faults.stop()).as(text).isFalse();
        List<Row> inForce = Rulebook.of(SHIPPED.sheets(), List.of(), List.of(sheet), faults).rows();
        DroolsRules rules = null;
        Set<String> topics = number % 10 == 0 ? Set.of("plugs", "dropper travel", "front tyre casing") : Set.of();
        for (Finding remark : SheetCheck.of(sheet.rows(), ShippedRules.rules(), inForce, topics, number % 2 == 0, new FindingVerifier(inForce, SHIPPED)).list()) {
            assertThat(remark.witness().situation()).as("%s of %s", remark, text).isNotNull();
            SituationFile file = read(remark);
            assertThat(file.situation().measures().keySet()).isEqualTo(remark.witness().situation().measures().keySet());
            if (!file.given().isEmpty()) {
                List<Row> all = new ArrayList<>(inForce);
                all.addAll(file.given());
                judge(remark, inForce, CallMaker.call(new DroolsRules(all, SHIPPED), file.situation().demands()), text);
            } else {
                rules = rules == null ? new DroolsRules(inForce, SHIPPED) : rules;
                judge(remark, inForce, CallMaker.call(rules, file.situation().demands()), text);
            }
            counts.merge(remark.kind(), 1, Integer::sum);
        }
    }

    private SituationFile read(Finding remark) throws IOException {
        Faults faults = new Faults();
        Path path = Files.writeString(folder.resolve("situation.yaml"), "situation: Some\n" + SituationWriter.of(remark.witness().situation()));
        SituationFile file = SituationFile.read(path, "situation.yaml", faults);
        assertThat(file).as("%s: %s", remark, faults.faults()).isNotNull();
        return file;
    }

    // What a remark says, looked at anew ------------------------------------------------------------------------------

    private static void judge(Finding remark, List<Row> rows, Call call, String text) {
        String as = remark + " of " + text;
        Map<String, Row> byId = new HashMap<>();
        rows.forEach(row -> byId.put(row.origin().rule(), row));
        Map<String, List<Claim>> said = said(call, remark.on());
        if (remark.kind() == Kind.GAP) {
            assertThat(said).as(as).isEmpty();
            assertThat(call.on(Topics.of(remark.on())).status()).as(as).isEqualTo(Decision.Status.SETTLED);
            return;
        }
        if (remark.rows().isEmpty()) {
            assertThat(said).as(as).isNotEmpty();
            return;
        }
        Row first = byId.get(remark.rows().get(0).rule());
        if (remark.kind() == Kind.NEVER || remark.kind() == Kind.UNREASONED && remark.witness().silent() != null) {
            assertThat(said).as(as).doesNotContainKey(first.origin().rule());
            assertThat(unmet(first, call)).as(as).isNotEmpty().isEqualTo(remark.witness().unmet());
            return;
        }
        assertThat(unmet(first, call)).as(as).isEmpty();
        assertThat(said).as(as).containsKey(first.origin().rule());
        if (remark.kind() == Kind.SET_ASIDE) {
            assertThat(call.on(Topics.of(remark.on())).status()).as(as).isEqualTo(Decision.Status.NOT_APPLICABLE);
        }
        if (remark.rows().size() == 2 && remark.kind() != Kind.UNREASONED) {
            two(remark, first, byId.get(remark.rows().get(1).rule()), said, call, as);
        }
    }

    private static void two(Finding remark, Row first, Row second, Map<String, List<Claim>> said, Call call, String as) {
        if (remark.kind() == Kind.JOINABLE) {
            assertThat(said).as(as).doesNotContainKey(second.origin().rule());
            assertThat(unmet(second, call)).as(as).isNotEmpty();
            return;
        }
        assertThat(unmet(second, call)).as(as).isEmpty();
        assertThat(said).as(as).containsKey(second.origin().rule());
        boolean clash = false;
        for (Claim one : said.get(first.origin().rule())) {
            for (Claim other : said.get(second.origin().rule())) {
                clash |= against(one, other) || against(other, one);
            }
        }
        assertThat(clash).as(as).isEqualTo(remark.kind() == Kind.CONTRADICTS || remark.kind() == Kind.OVERLAPS);
    }

    /** Whether following the second leaves no room for the first. */
    private static boolean against(Claim one, Claim other) {
        return switch (other.verb()) {
            case AT_LEAST -> one.verb() != Verb.AT_LEAST && one.value() < other.value();
            case AT_MOST -> one.verb() != Verb.AT_MOST && one.value() > other.value();
            case PREFER -> one.verb() == Verb.PREFER && one.value() != other.value();
            case AVOID, RULE_OUT -> one.verb() == Verb.PREFER && one.value() == other.value();
            case ONE_OF -> false;
        };
    }

    /** What each rule said on a topic; of tasks, that it said something. */
    private static Map<String, List<Claim>> said(Call call, String on) {
        Map<String, List<Claim>> out = new HashMap<>();
        if (on.isEmpty()) {
            for (Task task : call.tasks()) {
                out.put(task.origin().rule(), List.of());
            }
            return out;
        }
        Decision decision = call.on(Topics.of(on));
        decision.taken().forEach(claim -> out.computeIfAbsent(claim.origin().rule(), id -> new ArrayList<>()).add(claim));
        decision.lost().forEach(lost -> out.computeIfAbsent(lost.claim().origin().rule(), id -> new ArrayList<>()).add(lost.claim()));
        return out;
    }

    private static Set<Integer> unmet(Row row, Call call) {
        Map<Topic, SettledTopic> settled = new HashMap<>();
        for (Decision one : call.decisions()) {
            settled.put(one.topic(), new SettledTopic(one.topic(), one.value() != null, one.value() == null ? 0 : one.value()));
        }
        Stage stage = new Stage(Topics.LAST_LAYER, call.demands(), settled);
        Set<Integer> out = new HashSet<>();
        List<Condition> parts = row.condition().parts();
        for (int i = 0; i < parts.size(); i++) {
            if (parts.get(i).on(stage) != Truth.TRUE) {
                out.add(i);
            }
        }
        return out;
    }

    // Sheets by chance ------------------------------------------------------------------------------------------------

    private String sheet() {
        StringBuilder out = new StringBuilder("sheet: Mine\nauthor: a coach\nadvice:\n");
        String when = when();
        String says = says();
        for (int i = 0; i < 12; i++) {
            switch (chance.nextInt(12)) {
                case 0 -> when = chance.nextBoolean() ? when : "    when: {any of: [" + when.substring(when.indexOf('{')).strip() + "]}\n";
                case 1 -> when = "    when: {hours: " + one("under 3 h", "between 3 h and 5 h", "over 5 h") + "}\n";
                case 2 -> when = "    when: {any of: [{hours: over 3 h}, {hours: under 5 h}]}\n";
                case 3 -> when = i > 9 ? many() : when();
                case 4 -> {
                    when = when();
                    says = chance.nextInt(3) == 0 ? "    do: {what: Look, find: Nothing, by: week before}\n"
                            : "    say: {saddle: prefer your usual saddle}\n";
                }
                default -> {
                    when = when();
                    says = says();
                }
            }
            out.append("  - id: row-").append(i).append('\n').append(when).append(says).append("    because: It is so.\n");
        }
        return out.toString();
    }

    /** Two times two times two ... alternatives: more than is reasoned about. */
    private String many() {
        List<String> pairs = new ArrayList<>();
        List<Measure> measures = new ArrayList<>();
        for (Measure measure : Measure.values()) {
            if (measure.scale().kind() == MeasureScale.Kind.QUANTITY && measure.scale().bands().isEmpty() && measure.layer() == 0) {
                measures.add(measure);
            }
        }
        for (int i = 0; i < 10; i++) {
            Measure one = measures.get(2 * i);
            Measure other = measures.get(2 * i + 1);
            pairs.add("{" + one.written() + ": over " + one.scale().text(5) + ", " + other.written() + ": over " + other.scale().text(9) + "}");
        }
        return "    when: {none of: [" + String.join(", ", pairs) + "]}\n";
    }

    private String when() {
        Set<String> parts = new LinkedHashSet<>();
        Set<String> keys = new HashSet<>();
        for (int i = chance.nextInt(4); i >= 0; i--) {
            String part = part();
            if (keys.add(part.substring(0, part.indexOf(':')))) {
                parts.add(part);
            }
        }
        return "    when: {" + String.join(", ", parts) + "}\n";
    }

    private String part() {
        return switch (chance.nextInt(14)) {
            case 0 -> "decided: {bike: " + one("road", "gravel", "trail", "[gravel, trail]") + "}";
            case 1 -> "any stretch: {sharp stones: yes, length: over " + one("1", "2", "4") + " km}";
            case 2 -> "no stretch: {sharp stones: yes, length: over " + one("1", "2", "4") + " km}";
            case 3 -> "share of course: {where: {paved: " + one("yes", "no") + "}, is: over " + one("20", "60", "90") + " %}";
            case 4 -> "rider: " + one("Kim", "Lee", "[Kim, Lee]");
            case 5 -> "rider tag: " + one("junior", "newcomer", "[junior, newcomer]");
            case 6 -> "date: " + one("between 11-01 and 02-28", "between 2026-06-01 and 2026-06-30", "between 05-01 and 09-30",
                    "between 2026-06-15 and 2026-12-31");
            case 7 -> "none of: [{" + plain() + "}" + (chance.nextBoolean() ? ", {" + plain() + "}]" : "]");
            case 8 -> "any of: [{" + plain() + "}, {" + plain() + "}]";
            case 9 -> "ledge height: over " + one("0.1", "0.5", "1.0") + " m";
            default -> plain();
        };
    }

    private String plain() {
        return one("hours", "slow hours") + ": " + one("over 5 h", "under 3 h", "between 3 h and 5 h", "over 9 h", "at least 3 h");
    }

    private String says() {
        String topic = TOPICS.get((int) (TOPICS.size() * Math.pow(chance.nextDouble(), 2)));
        String says = switch (topic) {
            case "plugs" -> one("prefer ", "prefer ", "at least ", "at most ") + one("1", "3", "5");
            case "front tyre casing" -> one("prefer ", "at least ", "at most ") + one("light", "reinforced", "heavy");
            case "fork travel" -> one("prefer 100 mm", "prefer 140 mm", "at most 0.9 x most fork travel");
            case "front tyre pressure" -> one("prefer 1.05 x front reference pressure", "at least 2 bar", "prefer 1.8 bar");
            default -> one("prefer dry", "prefer wet", "rule out wet");
        };
        return "    say: {" + topic + ": " + says + "}\n    force: " + one("should", "should", "must") + "\n";
    }

    private String one(String... words) {
        return words[chance.nextInt(words.length)];
    }
}
