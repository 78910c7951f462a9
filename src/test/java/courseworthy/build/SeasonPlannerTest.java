package courseworthy.build;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.build.SeasonPlanner.Terms;
import courseworthy.call.Call;
import courseworthy.claim.Claim;
import courseworthy.claim.Evidence;
import courseworthy.claim.Force;
import courseworthy.claim.Rank;
import courseworthy.claim.RuleOrigin;
import courseworthy.claim.SourceLocation;
import courseworthy.claim.Verb;
import courseworthy.decision.Decision;
import courseworthy.decision.Settler;
import courseworthy.demand.Demands;
import courseworthy.event.Travel;
import courseworthy.event.WorkHours;
import courseworthy.fit.FitRules;
import courseworthy.problem.Faults;
import courseworthy.text.YamlReader;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import courseworthy.workshop.Workshop;
import courseworthy.workshop.WorkshopReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** What a season carries on from start to start, on the shipped workshop with a tyre added. */
class SeasonPlannerTest {

    private static final FitRules FIT = FitRules.load();

    private static Decision preferred(String topic, String value) {
        Topic on = Topics.of(topic);
        long ticks = on.kind() == Topic.Kind.QUANTITY ? Long.parseLong(value) : on.option(value);
        RuleOrigin author = new RuleOrigin("shipped/x", Rank.SHIPPED, 0, Force.MUST, Evidence.PRACTICE, "", "Because.", new SourceLocation("rules/x.yaml", 1));
        return Settler.settle(on, List.of(Claim.of(author, on, Verb.PREFER, ticks, value, List.of())));
    }

    private static Outing outing(int order, LocalDate date, String tread) {
        List<Decision> decisions = List.of(preferred("bike", "cross-country hardtail"), preferred("front tyre tread", tread), preferred("sealant age", "14"));
        Map<Topic, Decision> by = decisions.stream().collect(Collectors.toMap(Decision::topic, each -> each));
        List<Decision> all = new ArrayList<>();
        Topics.all().forEach(topic -> all.add(by.getOrDefault(topic, Settler.notApplicable(topic, List.of(), "not asked"))));
        Call call = new Call(new Demands(Map.of(), List.of(), List.of()), all, List.of(), List.of());
        return new Outing(order, "Ida", 1, new EventDay("Day " + order, "course", date, null, null, Travel.NONE, "race"), Recommendation.of(call, null), "hardtail", null);
    }

    private static List<String> sealant(boolean back, List<Outing> outings) throws IOException {
        String text = Files.readString(Path.of("docs/examples/workshops/cellar.yaml")).replace("  # Lights and bags\n",
                "  - {name: mud tyre, kind: tyre, mass: 840 g, bead seat: 622 mm, width: 59 mm, measured width: 59 mm, casing: reinforced, tread: mud, tubeless: yes, hookless: yes,"
                        + " marked pressure: 2.9 bar, hours used: 20 h}\n  - {name: old sealant, kind: sealant, on: everyday wheel front, mass: 60 g, added: 2025-06-01}\n  # Lights and bags\n");
        Faults faults = new Faults();
        Workshop read = WorkshopReader.decode(YamlReader.read(text.getBytes(StandardCharsets.UTF_8), "w.yaml", faults), "w.yaml", faults);
        faults.throwIfAny();
        List<String> out = new ArrayList<>();
        for (SeasonPlan.PlannedRide ride : SeasonPlanner.of(read, outings, new Terms(WorkHours.every(120), back, 15.0), FIT, () -> { }).rides()) {
            out.add(ride.build().wear().stream().map(WearNote::text).filter(line -> line.startsWith("old sealant")).findFirst().orElse(""));
        }
        return out;
    }

    /** A tyre that went on for one start is ridden at the next: its sealant is of that work, and only weeks later too old. */
    @Test
    void sealantIsAsNewAsTheTyreOfAnEarlierStart() throws IOException {
        List<String> told = sealant(false, List.of(outing(0, LocalDate.of(2026, 6, 7), "mud"), outing(1, LocalDate.of(2026, 6, 14), "mud"), outing(2, LocalDate.of(2026, 7, 12), "mud")));
        assertThat(told.subList(0, 2)).containsExactly("", "");
        // The tyre goes on two or three days before 7 June; 37 or 38 days later it is 12 July.
        assertThat(told.get(2)).matches("old sealant: 3[78] days old on the day, at most 14 days recommended; top it up");
    }

    /** Going back, the old tyre takes fresh sealant as well. */
    @Test
    void theWayBackTakesFreshSealantToo() throws IOException {
        List<Outing> outings = List.of(outing(0, LocalDate.of(2026, 6, 7), "mud"), outing(1, LocalDate.of(2026, 6, 14), "all-round"));
        assertThat(sealant(true, outings)).containsExactly("", "");
        assertThat(sealant(true, outings.subList(1, 2)).get(0)).startsWith("old sealant: 378 days old");
    }
}
