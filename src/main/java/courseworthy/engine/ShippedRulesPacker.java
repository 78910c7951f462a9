package courseworthy.engine;

import courseworthy.claim.SourceLocation;
import courseworthy.problem.Fault;
import courseworthy.problem.Faults;
import courseworthy.sheet.NamedValues;
import courseworthy.sheet.Rulebook;
import courseworthy.sheet.RulesFolder;
import courseworthy.text.Node;
import courseworthy.units.RuleValue;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Packs the folder of shipped rules, and the values they name, into two resources when the tool is built; fails the build with every fault of theirs. */
public final class ShippedRulesPacker {

    private static final Pattern RULE = Pattern.compile("rule \"([^\"]+)\".*");

    private ShippedRulesPacker() {
    }

    /** @param args the rules folder and the file to write the rules to; their values go beside it */
    public static void main(String[] args) throws IOException {
        Path to = Path.of(args[1]);
        Files.createDirectories(to.getParent());
        write(pack(Path.of(args[0])), to);
        write(values(Path.of(args[0])).getBytes(StandardCharsets.UTF_8), to.resolveSibling(RuleValue.RESOURCE));
    }

    private static void write(byte[] bytes, Path to) throws IOException {
        Path draft = to.resolveSibling(to.getFileName() + ".draft");
        Files.write(draft, bytes);
        Files.move(draft, to, StandardCopyOption.REPLACE_EXISTING);
    }

    /** The values that the rules name. @throws IllegalStateException where one that the code needs is not among them */
    private static String values(Path rules) {
        NamedValues named = RulesFolder.values(RulesFolder.trees(rules, new Faults()), new Faults());
        if (!named.missing().isEmpty()) {
            throw new IllegalStateException("values that the code needs and the rules do not name, or name in another unit: " + named.missing());
        }
        return named.packed();
    }

    /** @throws IllegalStateException with every fault of the shipped rules, a line each */
    static byte[] pack(Path rules) throws IOException {
        Faults faults = new Faults();
        Map<String, Node.Mapping> trees = RulesFolder.trees(rules, faults);
        Map<String, SourceLocation> joins = joins(rules);
        ShippedRules shipped = ShippedRules.of(trees, joins, faults);
        Rulebook.of(shipped.sheets(), List.of(), List.of(), faults);
        if (faults.stop()) {
            throw new IllegalStateException("the shipped rules are faulty:\n" + String.join("\n", faults.faults().stream().map(Fault::text).toList()));
        }
        return PackedRules.write(shipped);
    }

    /** Where each rule that joins topics is written. */
    private static Map<String, SourceLocation> joins(Path rules) throws IOException {
        Map<String, SourceLocation> out = new LinkedHashMap<>();
        for (Path file : RulesFolder.files(rules, ".drl")) {
            int line = 0;
            for (String text : Files.readAllLines(file)) {
                line++;
                Matcher rule = RULE.matcher(text);
                if (rule.matches()) {
                    out.put(rule.group(1), new SourceLocation(RulesFolder.shown(rules, file), line));
                }
            }
        }
        return out;
    }
}
