package courseworthy.build;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.problem.Fault;
import courseworthy.problem.Faults;
import courseworthy.workshop.Detail;
import courseworthy.workshop.Kind;
import courseworthy.workshop.Part;
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

/** No key of a workshop is read and then forgotten. */
class WorkshopKeysTest {

    /** Those that define and read the keys, and use none of them. */
    private static final Set<String> READING = Set.of("Detail.java", "Kind.java", "WorkshopReader.java", "WorkshopSchema.java");

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
        List<Detail> unused = new ArrayList<>();
        for (Detail detail : Detail.values()) {
            if (!Pattern.compile("\\bDetail\\." + detail.name() + "\\b").matcher(sources).find()) {
                unused.add(detail);
            }
        }
        assertThat(unused).containsExactly(Detail.VOLUME);
    }

    @Test
    void whatNothingUsesIsWarnedOf(@TempDir Path folder) throws IOException {
        Faults faults = new Faults();
        Path file = Files.writeString(folder.resolve("w.yaml"), "parts:\n  - {name: bag, kind: bag, mass: 190 g, volume: 3 L}\n");
        WorkshopReader.read(file, "w.yaml", faults);
        assertThat(faults.faults()).isEmpty();
        assertThat(faults.warnings()).extracting(Fault::text).anyMatch(text -> text.contains("volume: found \"3 L\"") && text.contains("not used"));
    }

    @Test
    void pedalsWithAnotherCleatAskForItOnTheShoes() {
        Part two = new Part("two", Kind.PEDALS, 1, Map.of(Detail.CLEAT, "two bolts"));
        Part three = new Part("three", Kind.PEDALS, 2, Map.of(Detail.CLEAT, "three bolts"));
        assertThat(Afterwards.cleat(two, three)).containsExactly("Cleats on the shoes: three bolts in place of two bolts");
        assertThat(Afterwards.cleat(null, three)).containsExactly("Cleats on the shoes: three bolts");
        assertThat(Afterwards.cleat(two, two)).isEmpty();
    }
}
