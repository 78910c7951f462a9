package courseworthy.rulebase;

import courseworthy.claim.Where;
import courseworthy.problem.Faults;
import courseworthy.text.Node;
import courseworthy.text.PackedTree;
import java.io.ByteArrayInputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The shipped rules as the tool runs them: packed when it is built, so that no text is parsed at start-up.
 *
 * @param sheets the shipped sheets, by path
 * @param pairs  the gears that exist
 * @param joins  where each rule that joins topics is written, by its name
 */
public record House(List<Sheet> sheets, RealPairs pairs, Map<String, Where> joins) {

    static final String PACKED = "/house.rules";

    /** The rows of the shipped sheets. */
    public static List<Row> rules() {
        return load().sheets().stream().flatMap(sheet -> sheet.rows().stream()).toList();
    }

    /** The gears that exist, for those who need them alone. */
    public static RealPairs realPairs() {
        return load().pairs();
    }

    /** Loads the packed rules. @throws IllegalStateException where they are missing or spoilt, which is a fault of the build */
    public static House load() {
        try (InputStream in = House.class.getResourceAsStream(PACKED)) {
            if (in == null) {
                throw new IllegalStateException("the shipped rules are missing: " + PACKED);
            }
            return read(new DataInputStream(new ByteArrayInputStream(in.readAllBytes())));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static House read(DataInputStream in) throws IOException {
        Map<String, Node.Mapping> trees = new LinkedHashMap<>();
        for (int left = in.readUnsignedShort(); left > 0; left--) {
            String shown = in.readUTF();
            trees.put(shown, (Node.Mapping) PackedTree.read(in));
        }
        Map<String, Where> joins = new LinkedHashMap<>();
        for (int left = in.readUnsignedShort(); left > 0; left--) {
            String name = in.readUTF();
            joins.put(name, new Where(in.readUTF(), in.readUnsignedShort()));
        }
        Faults faults = new Faults();
        House house = of(trees, joins, faults);
        faults.throwIfAny();
        return house;
    }

    /** Decodes trees of the rules folder, by shown path. */
    static House of(Map<String, Node.Mapping> trees, Map<String, Where> joins, Faults faults) {
        Node.Mapping pairs = trees.get(RulesFolder.REAL_PAIRS);
        RealPairs real = pairs == null ? new RealPairs(List.of()) : RealPairsReader.decode(pairs, RulesFolder.REAL_PAIRS, faults);
        return new House(RulesFolder.decode(trees, faults), real, joins);
    }

    static void write(Map<String, Node.Mapping> trees, Map<String, Where> joins, DataOutputStream out) throws IOException {
        out.writeShort(trees.size());
        for (Map.Entry<String, Node.Mapping> tree : trees.entrySet()) {
            out.writeUTF(tree.getKey());
            PackedTree.write(tree.getValue(), out);
        }
        out.writeShort(joins.size());
        for (Map.Entry<String, Where> join : joins.entrySet()) {
            out.writeUTF(join.getKey());
            out.writeUTF(join.getValue().file());
            out.writeShort(join.getValue().line());
        }
    }
}
