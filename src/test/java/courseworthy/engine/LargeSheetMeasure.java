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
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a large sheet takes: to read, look over, put in force and ask, on two cores. */
class LargeSheetMeasure {

    private static final int ROWS = Integer.getInteger("courseworthy.rows", 10_000);

    @TempDir
    private Path folder;

    @Test
    void itIsReadLookedOverAndAskedInTime() throws IOException {
        Path file = Files.writeString(folder.resolve("large.yaml"), LargeSheet.of(ROWS, 5));
        Faults faults = new Faults();
        long start = processorTime();
        Sheet sheet = SheetReader.read(file, "large.yaml", 0, faults);
        ShippedRules shipped = ShippedRules.load();
        List<Row> rows = Rulebook.of(shipped.sheets(), List.of(), List.of(sheet), faults).rows();
        DroolsRules network = new DroolsRules(rows, shipped);
        double load = (processorTime() - start) / 1e9;
        faults.throwIfAny();
        assertThat(sheet.rows()).hasSize(ROWS);

        start = System.nanoTime();
        Findings remarks = SheetCheck.of(sheet.rows(), ShippedRules.rules());
        double check = (System.nanoTime() - start) / 1e9;

        List<List<Stage>> situations = new ArrayList<>();
        GeneratedSituations generated = new GeneratedSituations(11);
        for (int i = 0; i < 60; i++) {
            situations.add(stages(generated.situation()));
        }
        double[] evaluations = new double[situations.size()];
        for (int i = 0; i < 4 * evaluations.length; i++) {
            start = processorTime();
            ask(network, situations.get(i % evaluations.length));
            evaluations[i % evaluations.length] = (processorTime() - start) / 1e6;
        }
        Arrays.sort(evaluations);
        double evaluation = evaluations[evaluations.length / 2];
        System.gc();
        double memory = ManagementFactory.getMemoryMXBean().getHeapMemoryUsage().getUsed() / 1e6;
        System.out.printf(Locale.ROOT, "%d rows: looked over in %.2f s (%d remarks), loaded in %.2f s, one evaluation %.1f ms, "
                + "heap in use %.0f MB%n", ROWS, check, remarks.count(), load, evaluation, memory);
        assertThat(check).as("s to look over").isLessThan(5);
        assertThat(load).as("s to load").isLessThan(2);
        assertThat(evaluation).as("ms for one evaluation").isLessThan(10);
        assertThat(memory).as("MB").isLessThan(400);
    }

    private static List<Stage> stages(GeneratedSituations.Situation situation) {
        List<Stage> out = new ArrayList<>();
        for (int layer = 0; layer <= Topics.LAST_LAYER; layer++) {
            out.add(situation.after(layer));
        }
        return out;
    }

    /** Of this thread, which alone does the work: what else the machine does is not counted. */
    private static long processorTime() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
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
