package courseworthy.build;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.problem.Fault;
import courseworthy.problem.Faults;
import courseworthy.workshop.Part;
import courseworthy.workshop.PartDetail;
import courseworthy.workshop.PartKind;
import courseworthy.workshop.Workshop;
import courseworthy.workshop.WorkshopReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** No key of a workshop is read and then forgotten. */
class WorkshopKeysTest {

    /** Those that define and read the keys, and use none of them. */
    private static final Set<String> READING = Set.of("PartDetail.java", "PartDetailReader.java", "PartKind.java", "WorkshopReader.java", "WorkshopSchema.java");

    @Test
    void eachIsAskedForByMoreThanItsReader() throws IOException {
        StringBuilder sources = new StringBuilder();
        try (Stream<Path> all = Files.walk(Path.of("src", "main", "java"))) {
            for (Path path : all.filter(each -> each.toString().endsWith(".java")).toList()) {
                if (!READING.contains(path.getFileName().toString())) {
                    sources.append(Files.readString(path));
                }
            }
        }
        List<PartDetail> unused = new ArrayList<>();
        for (PartDetail detail : PartDetail.values()) {
            if (!Pattern.compile("\\bPartDetail\\." + detail.name() + "\\b").matcher(sources).find()) {
                unused.add(detail);
            }
        }
        assertThat(unused).containsExactly(PartDetail.VOLUME);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"bag, mass: 190 g, volume: 3 L|volume: found \"3 L\"",
        "chainring, mass: 60 g, teeth: 32, speeds: 12|speeds: found \"12\"", "shock, mass: 300 g, lockout: at the fork/shock|lockout: found \"at the fork/shock\""})
    void whatNothingUsesIsWarnedOf(String part, String found, @TempDir Path folder) throws IOException {
        Faults faults = new Faults();
        Path file = Files.writeString(folder.resolve("w.yaml"), "parts:\n  - {name: any, kind: " + part + "}\n");
        WorkshopReader.read(file, "w.yaml", faults);
        assertThat(faults.faults()).isEmpty();
        assertThat(faults.warnings()).extracting(Fault::text).anyMatch(text -> text.contains(found) && text.contains("not used"));
    }

    /** The time a rider needs for a swap goes before the estimate, of every kind of part. */
    @ParameterizedTest
    @EnumSource(PartKind.class)
    void minutesAreTakenAsWritten(PartKind kind) {
        Workshop workshop = new Workshop("", "", List.of(), List.of(), Map.of(kind, 1234.0 * 60));
        assertThat(new MountingEffort(workshop).minutes(kind)).isEqualTo(1234);
    }

    @Test
    void pedalsWithAnotherCleatAskForItOnTheShoes() {
        Part two = new Part("two", PartKind.PEDALS, 1, Map.of(PartDetail.CLEAT, "two bolts"));
        Part three = new Part("three", PartKind.PEDALS, 2, Map.of(PartDetail.CLEAT, "three bolts"));
        assertThat(AfterSwapChecks.cleat(two, three)).containsExactly("cleats on the shoes: three bolts in place of two bolts");
        assertThat(AfterSwapChecks.cleat(null, three)).containsExactly("cleats on the shoes: three bolts");
        assertThat(AfterSwapChecks.cleat(two, two)).isEmpty();
    }
}
