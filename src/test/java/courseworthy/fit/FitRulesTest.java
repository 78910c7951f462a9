package courseworthy.fit;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.claim.Evidence;
import courseworthy.claim.Rank;
import courseworthy.fit.FitFindings.FitFinding;
import courseworthy.workshop.MountingPlace;
import courseworthy.workshop.Part;
import courseworthy.workshop.Workshop;
import courseworthy.workshop.WorkshopGenerator;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** The rules of fit in the network against the plain table that the search uses. */
class FitRulesTest {

    private static final FitRules RULES = FitRules.load();

    @Test
    void bothKnowTheSameRules() {
        Set<String> table = new TreeSet<>();
        FitChecks.all().forEach(check -> table.add(check.rule()));
        assertThat(new TreeSet<>(RULES.authors().keySet())).isEqualTo(table);
    }

    @Test
    void everyRuleSaysWhereWhyAndHowItIsKnown() {
        assertThat(RULES.authors().values()).isNotEmpty().allSatisfy(author -> {
            assertThat(author.rank()).isEqualTo(Rank.LIMIT);
            assertThat(author.because()).endsWith(".");
            assertThat(author.evidence() == Evidence.PUBLISHED).isEqualTo(!author.source().isEmpty());
            assertThat(author.where().file()).startsWith("rules/fit/").endsWith(".drl");
            assertThat(author.where().line()).isPositive();
        });
    }

    /** A topic that a rule narrows is one of the catalogue. */
    @Test
    void theirTopicsExist() {
        assertThat(RULES.topics().values()).allSatisfy(topics -> assertThat(courseworthy.topic.Topics.names()).containsAll(topics));
        assertThat(RULES.topics().get("largest-sprocket")).containsExactly("easiest gear");
        assertThat(FitRules.joined("derailleur-capacity")).isEqualTo("derailleur, cassette, chainring");
    }

    /** Thousands of bikes put together by chance: the network finds what the table finds, word for word. */
    @Test
    void networkAndTableAgree() {
        int told = 0;
        for (int seed = 0; seed < 300; seed++) {
            Workshop workshop = new WorkshopGenerator(seed, 0.25, seed % 3 * 0.08).withSystems().of(2, 90);
            Random random = new Random(seed);
            BuildLoad load = seed % 5 == 0 ? BuildLoad.UNKNOWN : new BuildLoad(60.0 + random.nextInt(60), 80.0 + random.nextInt(60), random.nextInt(10) / 10.0);
            for (int i = 0; i < 10; i++) {
                Part bike = workshop.bikes().get(i % 2);
                Map<MountingPlace, Part> mounted = byChance(workshop, random);
                List<String> network = network(RULES.on(bike, mounted, load));
                assertThat(network).as("seed " + seed).isEqualTo(table(bike, mounted, load));
                told += network.size();
            }
        }
        assertThat(told).isGreaterThan(10_000);
    }

    private static Map<MountingPlace, Part> byChance(Workshop workshop, Random random) {
        Map<MountingPlace, Part> out = new EnumMap<>(MountingPlace.class);
        for (MountingPlace place : MountingPlace.values()) {
            List<Part> fitting = workshop.parts().stream().filter(part -> MountingPlace.of(part).contains(place)).toList();
            if (!fitting.isEmpty() && random.nextInt(8) > 0) {
                out.put(place, fitting.get(random.nextInt(fitting.size())));
            }
        }
        return out;
    }

    private static List<String> network(List<FitFinding> findings) {
        List<String> out = new ArrayList<>();
        findings.forEach(each -> out.add(each.origin().rule() + " " + each.fit().result() + " " + each.fit().words()));
        out.sort(null);
        return out;
    }

    private static List<String> table(Part bike, Map<MountingPlace, Part> mounted, BuildLoad load) {
        List<String> out = new ArrayList<>();
        for (FitChecks.Check check : FitChecks.all()) {
            FitResult fit = check.on(bike, load, mounted);
            if (fit.isReportable()) {
                out.add("fit/" + check.rule() + " " + fit.result() + " " + fit.words());
            }
        }
        out.sort(null);
        return out;
    }

    /** The shipped example as it stands: nothing that is mounted together is unfit; of the borrowed bike a mark has not been read. */
    @Test
    void theExampleFitsAsItStands() {
        courseworthy.problem.Faults faults = new courseworthy.problem.Faults();
        Workshop workshop = courseworthy.workshop.WorkshopReader.read(java.nio.file.Path.of("docs/examples/workshops/cellar.yaml"), "cellar.yaml", faults);
        List<String> open = new ArrayList<>();
        for (Part bike : workshop.bikes()) {
            RULES.on(bike, workshop.mounted(bike), new BuildLoad(80.0, 93.0, 0.1)).stream().filter(finding -> !finding.fit().fits())
                    .forEach(finding -> open.add(finding.fit().result() + ": " + finding.fit().words()));
        }
        assertThat(open).containsExactly("UNKNOWN: read the highest mass marked on borrowed bike");
    }
}
