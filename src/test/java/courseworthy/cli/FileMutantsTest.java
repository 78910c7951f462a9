package courseworthy.cli;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.Draws;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Spoilt files of every kind end in an answer or in faults. What they take is measured by hand: {@link MutantsMeasure}. */
class FileMutantsTest {

    private static final int EACH = Integer.getInteger("courseworthy.mutants", Draws.of(100));
    /** Of messages, in characters: what scrolls by unread. */
    static final int MOST_SAID = 100_000;

    @TempDir
    private Path folder;

    @ParameterizedTest
    @EnumSource
    void eachIsAnsweredOrRefused(FileMutants.Kind kind) throws IOException {
        FileMutants mutants = new FileMutants(folder, kind);
        assertThat(mutants.unspoilt()).allSatisfy(ran -> assertThat(ran.code()).as(ran.err()).isZero());
        List<String> wrong = new ArrayList<>();
        for (int i = 0; i < EACH; i++) {
            String found = wrong(mutants.run(i), mutants.bytes(i));
            if (found != null) {
                wrong.add(kind + " " + i + ": " + found);
            }
        }
        assertThat(wrong).isEmpty();
    }

    /** What no spoilt file may bring about; null where it did not. */
    static String wrong(CommandRun ran, byte[] mutant) {
        boolean trace = ran.err().contains("Exception") || ran.err().contains("\tat ") || ran.err().contains("java.");
        if (ran.code() < 0 || ran.code() > 2 || trace) {
            return "code " + ran.code() + ", " + ran.err().substring(0, Math.min(400, ran.err().length()));
        }
        if (ran.code() == 2 && (ran.err().isEmpty() || !ran.out().isEmpty())) {
            return "refused with " + ran.err().length() + " characters said and " + ran.out().length() + " printed";
        }
        String text = new String(mutant, StandardCharsets.UTF_8);
        boolean names = text.contains("NaN") || text.contains("Infinity");
        if (ran.code() != 2 && !names && (ran.out().contains("NaN") || ran.out().contains("Infinity"))) {
            int at = Math.max(ran.out().indexOf("NaN"), ran.out().indexOf("Infinity"));
            return "no number: " + ran.out().substring(Math.max(0, at - 200), Math.min(ran.out().length(), at + 50));
        }
        return ran.err().length() > MOST_SAID ? ran.err().length() + " characters said: " + ran.err().substring(0, 400) : null;
    }
}
