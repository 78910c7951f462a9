package courseworthy.sheet;

import courseworthy.claim.SourceLocation;
import courseworthy.problem.Fault;
import courseworthy.problem.Faults;
import courseworthy.problem.Spelling;
import courseworthy.text.FieldReader;
import courseworthy.text.Node;
import courseworthy.units.Amount;
import courseworthy.units.Dimension;
import courseworthy.units.RuleValue;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * The figures that a sheet names once, under {@code values}, and uses by name: {@code the heavy load} stands for {@code 100 kg}. The
 * shipped sheets share theirs.
 */
public final class NamedValues {

    /** The key under which they stand. */
    static final String KEY = "values";
    /** A regular expression for a name where it is used. */
    public static final String NAME = "[a-z](?:[a-z0-9 -]*[a-z0-9-])?";
    /** A regular expression for a name where it is given; {@code and} and {@code x} would be read as words of a test or of a factor. */
    public static final String NEW_NAME = "(?!the )(?!.*  )(?!(?:.* )?(?:and|x)(?: |$))" + NAME;
    /** What stands before a name where it is used. */
    public static final String ARTICLE = "the ";

    private static final Pattern NAMED = Pattern.compile(NEW_NAME);
    private static final int LONGEST = 60;

    /**
     * One of them.
     *
     * @param value the figure with its unit, as written
     * @param where where it is named
     */
    record ValueDefinition(Node.Scalar value, SourceLocation where) {
    }

    private final Map<String, ValueDefinition> all = new LinkedHashMap<>();
    private final Set<String> used = new HashSet<>();

    /** Reads a block of them; faults for what is no name, no figure, without a reason, or named before. */
    void read(Node node, String file, Faults faults) {
        if (!(node instanceof Node.Mapping block)) {
            faults.add(file, node.line(), KEY, node.describe(), "names, each with its value, such as heavy load: {value: 100 kg, because: ...}", "");
            return;
        }
        for (Node.Entry entry : block.entries()) {
            FieldReader fields = new FieldReader(file, new Node.Mapping(List.of(), node.line(), node.column()), faults).fields(entry.key().text(), entry.value());
            if (fields != null) {
                add(entry.key(), fields, file, faults);
            }
        }
    }

    private void add(Node.Scalar key, FieldReader fields, String file, Faults faults) {
        String name = key.text();
        if (!NAMED.matcher(name).matches() || name.length() > LONGEST) {
            faults.add(file, key.line(), KEY, key.describe(), "a name in small letters, without \"the\", \"and\" or \"x\", such as heavy load", "");
        }
        ValueDefinition first = all.get(name);
        if (first != null) {
            faults.add(file, key.line(), KEY, key.describe() + " a second time", "a name of its own", "It first stands in " + first.where() + ".");
        }
        Node value = fields.required("value", "a figure with its unit");
        fields.prose("because");
        fields.prose("source");
        if (!fields.has("because") && !fields.has("source")) {
            faults.add(file, key.line(), name, "no reason", "because, or source where it is published", "Add a line \"because: ...\".");
        }
        fields.done();
        if (value instanceof Node.Scalar scalar && isAmount(scalar.text())) {
            all.putIfAbsent(name, new ValueDefinition(scalar, new SourceLocation(file, key.line())));
        } else if (value != null) {
            faults.add(file, value.line(), name, value.describe(), "a figure with its unit, such as 100 kg, 5 bar, 12 % or 0.68", "");
        }
    }

    private static boolean isAmount(String text) {
        for (Dimension dimension : Dimension.values()) {
            if (amount(text, dimension) != null) {
                return true;
            }
        }
        return false;
    }

    private static Amount amount(String text, Dimension dimension) {
        try {
            return Amount.parse(text, dimension);
        } catch (Amount.NotAnAmount other) {
            return null;
        }
    }

    /** Whether a text is meant as a name. */
    static boolean isName(String text) {
        return text.startsWith(ARTICLE);
    }

    /** The figure of a name that is used, in a dimension; null with a fault where there is none such or it is of another dimension. */
    Amount amount(String key, Node.Scalar written, Dimension dimension, String file, Faults faults) {
        String name = written.text().substring(ARTICLE.length());
        ValueDefinition named = all.get(name);
        if (named == null) {
            faults.add(file, written.line(), key, written.describe(), all.isEmpty() ? Amount.expected(dimension) : "one of the values of the sheet: "
                    + String.join(", ", all.keySet()), all.isEmpty() ? "Name it under \"values:\" to use it so." : Spelling.didYouMean(name, all.keySet()));
            return null;
        }
        used.add(name);
        Amount amount = amount(named.value().text(), dimension);
        if (amount == null) {
            faults.add(file, written.line(), key, written.describe() + ", which is " + named.value().text(), Amount.expected(dimension),
                    FieldReader.mend(named.value().text(), dimension));
        }
        return amount;
    }

    /** The text of a name's figure, its name behind it: {@code 100 kg (heavy load)}; any other text as it is. */
    String shown(String text) {
        ValueDefinition named = isName(text) ? all.get(text.substring(ARTICLE.length())) : null;
        return named == null ? text : named.value().text() + " (" + text.substring(ARTICLE.length()) + ")";
    }

    /** Notes those that the code uses by name. */
    void useByCode() {
        for (RuleValue value : RuleValue.values()) {
            used.add(value.written());
        }
    }

    /** A line each, its name and its figure as written, with a tab between. */
    public String packed() {
        StringBuilder out = new StringBuilder();
        all.forEach((name, named) -> out.append(name).append('\t').append(named.value().text()).append('\n'));
        return out.toString();
    }

    /** Names that the code needs and that stand nowhere, or for a figure of another dimension. */
    public List<String> missing() {
        return Arrays.stream(RuleValue.values())
                .filter(value -> !all.containsKey(value.written()) || amount(all.get(value.written()).value().text(), value.dimension()) == null)
                .map(RuleValue::written).toList();
    }

    /** A warning for each that no row uses. */
    void warnOfUnused(Faults faults) {
        all.forEach((name, named) -> {
            if (!used.contains(name)) {
                faults.add(Fault.warning(named.where().file(), named.where().line(), KEY, "\"" + name + "\", which no row uses", "a row that uses it",
                        "Write \"the " + name + "\" where you use it, or remove it."));
            }
        });
    }
}
