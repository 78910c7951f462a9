package courseworthy.engine;

import courseworthy.claim.SourceLocation;
import courseworthy.problem.Faults;
import courseworthy.sheet.Row;
import courseworthy.sheet.RulesFolder;
import courseworthy.sheet.Sheet;
import courseworthy.text.Node;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;

/**
 * The shipped rules as the tool runs them: packed when it is built, so that no text is parsed at start-up.
 *
 * @param sheets the shipped sheets, by path
 * @param pairs  the gears that exist
 * @param joins  where each rule that joins topics is written, by its name
 */
public record ShippedRules(List<Sheet> sheets, GearPairs pairs, Map<String, SourceLocation> joins) {

    static final String PACKED = "/shipped.rules";

    /** Once loaded they stay as they are, for every brief of a run. */
    private static volatile ShippedRules loaded;

    /** The rows of the shipped sheets. */
    public static List<Row> rules() {
        return load().sheets().stream().flatMap(sheet -> sheet.rows().stream()).toList();
    }

    /** The shipped row of an id. @throws IllegalArgumentException where there is none */
    public static Row row(String id) {
        return rules().stream().filter(row -> row.origin().rule().equals(id)).findFirst().orElseThrow(() -> new IllegalArgumentException("no row " + id));
    }

    /** The gears that exist, for those who need them alone. */
    public static GearPairs realPairs() {
        return load().pairs();
    }

    /** Loads the packed rules, the first time. @throws IllegalStateException where they are missing or spoilt, which is a fault of the build */
    public static ShippedRules load() {
        ShippedRules known = loaded;
        if (known == null) {
            known = unpacked();
            loaded = known;
        }
        return known;
    }

    private static ShippedRules unpacked() {
        try (InputStream in = ShippedRules.class.getResourceAsStream(PACKED)) {
            if (in == null) {
                throw new IllegalStateException("the shipped rules are missing: " + PACKED);
            }
            return PackedRules.read(in.readAllBytes());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Decodes trees of the rules folder, by shown path. */
    static ShippedRules of(Map<String, Node.Mapping> trees, Map<String, SourceLocation> joins, Faults faults) {
        Node.Mapping pairs = trees.get(RulesFolder.REAL_PAIRS);
        GearPairs real = pairs == null ? new GearPairs(List.of()) : GearPairsReader.decode(pairs, RulesFolder.REAL_PAIRS, faults);
        return new ShippedRules(RulesFolder.decode(trees, faults), real, joins);
    }
}
