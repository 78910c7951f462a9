package courseworthy.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Spoilt files of every kind in great number: none takes over 2 s of the processor, all threads together, nor more memory than there is. With
 * {@code -Dcourseworthy.heap=256m} there is 256 MB; what does not fit ends with code 70. Those found wanting are kept in
 * {@code target/mutants}.
 */
class MutantsMeasure {

    private static final int EACH = Integer.getInteger("courseworthy.mutants", 20_000);
    private static final int FROM = Integer.getInteger("courseworthy.mutants.from", 0);
    private static final String KINDS = System.getProperty("courseworthy.mutants.kinds", ".*");
    private static final double MOST_SECONDS = 2;
    private static final Path KEPT = Path.of("target", "mutants");

    @TempDir
    private Path folder;

    private static double processorSeconds() {
        return ((com.sun.management.OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean()).getProcessCpuTime() / 1e9;
    }

    @ParameterizedTest
    @EnumSource
    void eachIsAnsweredOrRefusedInTime(FileMutants.Kind kind) throws IOException {
        assumeTrue(kind.name().matches(KINDS), "not asked for");
        FileMutants mutants = new FileMutants(folder, kind);
        mutants.unspoilt();
        List<String> wrong = new ArrayList<>();
        Map<Integer, Integer> codes = new TreeMap<>();
        double slowest = 0;
        double all = 0;
        int said = 0;
        for (int i = FROM; i < FROM + EACH; i++) {
            double start = processorSeconds();
            CommandRun ran = mutants.run(i);
            double took = processorSeconds() - start;
            if (took > MOST_SECONDS) {
                start = processorSeconds();
                ran = mutants.run(i);
                took = Math.min(took, processorSeconds() - start);
            }
            codes.merge(ran.code(), 1, Integer::sum);
            slowest = Math.max(slowest, took);
            all += took;
            said = Math.max(said, ran.err().length());
            String found = took > MOST_SECONDS ? String.format(Locale.ROOT, "%.2f s", took) : FileMutantsTest.wrong(ran, mutants.bytes(i));
            if (found != null) {
                wrong.add(kind + " " + i + ": " + found);
                Files.createDirectories(KEPT);
                Files.write(KEPT.resolve(kind + "-" + i), mutants.bytes(i));
                System.out.println(wrong.get(wrong.size() - 1));
            }
        }
        System.out.printf(Locale.ROOT, "%s: %d mutants, codes %s, slowest %.2f s, mean %.3f s, most said %d, heap %d MB, wrong %d%n", kind, EACH,
                codes, slowest, all / EACH, said, Runtime.getRuntime().maxMemory() / 1_000_000, wrong.size());
        assertThat(wrong).isEmpty();
    }
}
