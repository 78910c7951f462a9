package courseworthy.sheet;

import courseworthy.claim.Rank;
import courseworthy.problem.Faults;
import courseworthy.text.Node;
import courseworthy.text.YamlReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** The folder {@code rules/}: the shipped sheets as they are written, for building and checking; the tool itself runs from the packed form of them. */
public final class RulesFolder {

    /** How the file of a sheet's cases ends, which lies beside it. */
    public static final String CASES = ".cases.yaml";
    /** The table of real gears, which is no sheet. */
    public static final String REAL_PAIRS = "rules/gearing/real-pairs.yaml";

    /** The table that infers ground from map tags, which is no sheet either. */
    public static final String GROUND = "rules/ground/";

    /** The table of the order of work on the stand, which is none either. */
    public static final String STAND = "rules/stand/";

    /** The table of how firm decisions are, which is none either. */
    public static final String FIRMNESS = "rules/firmness/";

    /** The table of how long parts last, which is none either. */
    public static final String WEAR = "rules/wear/";

    private static final List<String> OTHER_TABLES = List.of(GROUND, STAND, FIRMNESS, WEAR);

    /** Where limits are that join topics. */
    static final String PAIRING = "rules/pairing/";

    private RulesFolder() {
    }

    /** The shipped sheets below a folder, by path; rows under {@code limits/} and {@code pairing/} are limits. */
    public static List<Sheet> read(Path rules, Faults faults) {
        return decode(trees(rules, faults), faults);
    }

    /** Decodes trees by shown path into sheets; the table of real gears is passed over. */
    public static List<Sheet> decode(Map<String, Node.Mapping> trees, Faults faults) {
        List<Sheet> out = new ArrayList<>();
        NamedValues named = values(trees, faults);
        trees.forEach((shown, tree) -> {
            if (!shown.equals(REAL_PAIRS)) {
                out.add(SheetReader.decode(tree, shown, rank(shown), named, faults));
            }
        });
        named.useByCode();
        named.warnOfUnused(faults);
        return out;
    }

    public static Rank rank(String shown) {
        return shown.startsWith("rules/limits/") || shown.startsWith(PAIRING) ? Rank.LIMIT : Rank.SHIPPED;
    }

    /** The values that the shipped sheets name, each for all of them. */
    public static NamedValues values(Map<String, Node.Mapping> trees, Faults faults) {
        NamedValues out = new NamedValues();
        trees.forEach((shown, tree) -> {
            Node values = tree.get(NamedValues.KEY);
            if (values != null) {
                out.read(values, shown, faults);
            }
        });
        return out;
    }

    /** Whether a file is a table of its own kind, and no sheet. */
    public static boolean isOtherTable(String shown) {
        return OTHER_TABLES.stream().anyMatch(shown::startsWith);
    }

    /** Every tree below the folder but cases and tables of another kind, by shown path, in the order of paths. */
    public static Map<String, Node.Mapping> trees(Path rules, Faults faults) {
        Map<String, Node.Mapping> out = new LinkedHashMap<>();
        for (Path path : files(rules, ".yaml")) {
            if (!path.toString().endsWith(CASES) && !isOtherTable(shown(rules, path))) {
                Node.Mapping tree = YamlReader.read(path, shown(rules, path), faults);
                if (tree != null) {
                    out.put(shown(rules, path), tree);
                }
            }
        }
        return out;
    }

    /** The files below the folder whose names end so, in the order of their shown paths. */
    public static List<Path> files(Path rules, String ending) {
        try (Stream<Path> all = Files.walk(rules)) {
            return all.filter(p -> p.toString().endsWith(ending) && Files.isRegularFile(p))
                    .sorted(java.util.Comparator.comparing(p -> shown(rules, p))).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** {@code rules/...} with forward slashes. */
    public static String shown(Path rules, Path path) {
        return "rules/" + rules.relativize(path).toString().replace('\\', '/');
    }
}
