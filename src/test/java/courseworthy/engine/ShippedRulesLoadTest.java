package courseworthy.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import courseworthy.problem.Faults;
import courseworthy.sheet.RulesFolder;
import courseworthy.topic.Topics;
import courseworthy.units.Amount;
import courseworthy.units.Dimension;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The packed rules are the written ones, and faulty ones are never packed. */
class ShippedRulesLoadTest {

    @TempDir
    private Path folder;

    @Test
    void packedRulesAreTheWrittenOnes() {
        Faults faults = new Faults();
        assertThat(ShippedRules.load().sheets()).isEqualTo(RulesFolder.read(Path.of("rules"), faults));
        assertThat(faults.faults()).isEmpty();
        assertThat(faults.warnings()).isEmpty();
    }

    @Test
    void faultyRulesFailTheBuildWithEveryFault() throws Exception {
        Path rules = Files.createDirectories(folder.resolve("rules/tyres"));
        Files.writeString(rules.resolve("a.yaml"), "sheet: A\nauthor: shipped\nadvice:\n  - id: x\n    say: {fork travle: prefer 120 mm}\n");
        Files.writeString(rules.resolve("b.yaml"), "sheet: B\nauthor: shipped\nadvice:\n  - id: x\n    say: {fork travel: prefer 12 mm}\n"
                + "    because: So.\n");
        Path packed = folder.resolve("shipped.rules");
        assertThatThrownBy(() -> ShippedRulesPacker.main(new String[] {folder.resolve("rules").toString(), packed.toString()}))
                .isInstanceOf(IllegalStateException.class).hasMessage("""
                        the shipped rules are faulty:
                        rules/tyres/a.yaml:4: because: found nothing, expected the reason, in one sentence
                            Add a line "because: ...".
                        rules/tyres/a.yaml:5: say: found "fork travle", expected a topic
                            Did you mean "fork travel"?
                        rules/tyres/b.yaml:5: fork travel: found "12 mm", expected between 80 mm and 170 mm""");
        assertThat(packed).doesNotExist();
    }

    @Test
    void oneIdInTwoSheetsFailsTheBuild() throws Exception {
        Path rules = Files.createDirectories(folder.resolve("rules/tyres"));
        String row = "author: shipped\nadvice:\n  - id: x\n    say: {fork travel: prefer 120 mm}\n    because: So.\n";
        Files.writeString(rules.resolve("a.yaml"), "sheet: A\n" + row);
        Files.writeString(rules.resolve("b.yaml"), "sheet: B\n" + row);
        assertThatThrownBy(() -> ShippedRulesPacker.pack(folder.resolve("rules"))).hasMessage("the shipped rules are faulty:\n"
                + "rules/tyres/b.yaml:4: id: found \"shipped/x\" a second time, expected an id of its own\n"
                + "    It first stands in rules/tyres/a.yaml:4.");
    }

    /** A gear in the table counts as the same gear does when somebody writes its teeth. */
    @Test
    void realGearsAreCountedAsWrittenOnesAre() throws Exception {
        assertThat(ShippedRules.load().pairs().pairs()).hasSizeGreaterThan(150).allSatisfy(pair -> {
            assertThat(pair.easiest()).isEqualTo(Topics.EASIEST_GEAR.resolution()
                    .ticks(Amount.parse(pair.easiestTeeth(), Dimension.RATIO)));
            assertThat(pair.hardest()).isEqualTo(Topics.HARDEST_GEAR.resolution()
                    .ticks(Amount.parse(pair.hardestTeeth(), Dimension.RATIO)));
        });
    }
}
