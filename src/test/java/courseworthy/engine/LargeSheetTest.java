package courseworthy.engine;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.analysis.Findings;
import courseworthy.analysis.SheetCheck;
import courseworthy.claim.Claim;
import courseworthy.problem.Faults;
import courseworthy.sheet.Row;
import courseworthy.sheet.Rulebook;
import courseworthy.sheet.Sheet;
import courseworthy.sheet.SheetReader;
import courseworthy.sheet.Stage;
import courseworthy.topic.Topics;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A large sheet read, looked over, put in force and asked. What that takes is measured by hand: {@link LargeSheetMeasure}. */
class LargeSheetTest {

    private static final int ROWS = Integer.getInteger("courseworthy.rows", 2000);
    private static final Comparator<Claim> ORDER = Comparator.comparing((Claim claim) -> claim.origin().rule())
            .thenComparing(claim -> claim.topic().name()).thenComparing(Claim::verb).thenComparing(Claim::written);

    @TempDir
    private Path folder;

    @Test
    void itIsReadLookedOverAndAsked() throws IOException {
        Path file = Files.writeString(folder.resolve("large.yaml"), LargeSheet.of(ROWS, 5));
        Faults faults = new Faults();
        Sheet sheet = SheetReader.read(file, "large.yaml", 0, faults);
        ShippedRules shipped = ShippedRules.load();
        List<Row> rows = Rulebook.of(shipped.sheets(), List.of(), List.of(sheet), faults).rows();
        DroolsRules network = new DroolsRules(rows, shipped);
        faults.throwIfAny();
        assertThat(sheet.rows()).hasSize(ROWS);

        Findings remarks = SheetCheck.of(sheet.rows(), ShippedRules.rules());
        assertThat(remarks.count()).isPositive();

        List<List<Stage>> situations = new ArrayList<>();
        GeneratedSituations generated = new GeneratedSituations(11);
        for (int i = 0; i < 20; i++) {
            situations.add(stages(generated.situation()));
        }
        PlainRules loop = new PlainRules(rows);
        long claims = 0;
        for (List<Stage> situation : situations) {
            List<Claim> said = claims(network, situation);
            assertThat(said).isEqualTo(claims(loop, situation));
            claims += said.size();
        }
        assertThat(claims).isPositive();
    }

    private static List<Stage> stages(GeneratedSituations.Situation situation) {
        List<Stage> out = new ArrayList<>();
        for (int layer = 0; layer <= Topics.LAST_LAYER; layer++) {
            out.add(situation.after(layer));
        }
        return out;
    }

    private static List<Claim> claims(RuleSet rules, List<Stage> stages) {
        List<Claim> out = ask(rules, stages);
        out.removeIf(claim -> claim.origin().rule().startsWith("pairing/"));
        out.sort(ORDER);
        return out;
    }

    private static List<Claim> ask(RuleSet rules, List<Stage> stages) {
        List<Claim> out = new ArrayList<>();
        try (RuleSet.Firing firing = rules.open()) {
            for (Stage stage : stages) {
                out.addAll(firing.fire(stage).claims());
            }
            firing.undetermined();
        }
        return out;
    }
}
