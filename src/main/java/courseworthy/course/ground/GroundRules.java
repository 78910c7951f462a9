package courseworthy.course.ground;

import courseworthy.problem.FaultList;
import courseworthy.problem.Faults;
import courseworthy.text.Node;
import courseworthy.text.YamlReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The table that infers ground from tags: rows in their order, of which the first that speaks of a key decides on it, and unusual
 * spellings by what they mean.
 *
 * @param rules     in order
 * @param spellings by tag, what an unusual value means
 */
public record GroundRules(List<GroundRule> rules, Map<String, Map<String, String>> spellings) {

    /** The files of {@code rules/ground}, which the build puts beside this class. */
    static final List<String> FILES = List.of("spellings.yaml", "surface.yaml", "technical.yaml");

    public GroundRules {
        rules = List.copyOf(rules);
    }

    /** The shipped table. @throws IllegalStateException where it is missing or spoilt, which is a fault of the build */
    public static GroundRules shipped() {
        Faults faults = new Faults();
        Map<String, Node.Mapping> trees = new LinkedHashMap<>();
        for (String file : FILES) {
            trees.put("rules/ground/" + file, YamlReader.read(bytes(file), "rules/ground/" + file, faults));
        }
        GroundRules out = of(trees, faults);
        if (!faults.faults().isEmpty()) {
            throw new IllegalStateException(FaultList.text(faults.faults()));
        }
        return out;
    }

    /** Decodes files by the names that faults show. */
    static GroundRules of(Map<String, Node.Mapping> trees, Faults faults) {
        List<GroundRule> rules = new ArrayList<>();
        Map<String, Map<String, String>> spellings = new LinkedHashMap<>();
        trees.forEach((file, tree) -> {
            if (tree != null) {
                GroundRuleReader.read(tree, file, rules, spellings, faults);
            }
        });
        return new GroundRules(rules, spellings);
    }

    private static byte[] bytes(String file) {
        try (InputStream in = GroundRules.class.getResourceAsStream(file)) {
            if (in == null) {
                throw new IllegalStateException("rules/ground/" + file + " is not in the build");
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
