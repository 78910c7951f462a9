package courseworthy.sheet;

import courseworthy.demand.MeasureScale;
import courseworthy.problem.Faults;
import courseworthy.problem.Spelling;
import courseworthy.text.FieldReader;
import courseworthy.text.Node;
import courseworthy.units.Amount;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads tests such as {@code over 18 m}, {@code between 2 km and 3 km}, {@code one of [road, gravel]}; null with a fault. */
public final class ValueTestReader {

    private static final Pattern ONE_OF = Pattern.compile("one of \\[(.*)]");
    private static final Pattern BETWEEN = Pattern.compile("between (.+?) and (.+)");
    private static final Pattern COMPARED = Pattern.compile("(over|under|at least|at most) (.+)");
    private static final String ACCEPTED = "over, under, at least, at most, between A and B, a value, or one of [a, b]";

    private final String file;
    private final Faults faults;
    private final NamedValues named;

    /** For what names no values of its own. */
    ValueTestReader(String file, Faults faults) {
        this(file, faults, new NamedValues());
    }

    ValueTestReader(String file, Faults faults, NamedValues named) {
        this.file = file;
        this.faults = faults;
        this.named = named;
    }

    /** The test, or null with a fault. */
    ValueTest test(Node node, TestSubject subject) {
        if (node instanceof Node.Sequence list) {
            return among(list.items(), subject);
        }
        if (!(node instanceof Node.Scalar scalar)) {
            fault(node, subject, node.describe(), ACCEPTED, "");
            return null;
        }
        Matcher oneOf = ONE_OF.matcher(scalar.text());
        if (oneOf.matches()) {
            return among(items(scalar, oneOf.group(1)), subject);
        }
        ValueTest test = range(scalar, subject);
        return test == null || possible(test, scalar, subject) ? test : null;
    }

    /** A test as it is shown; null where it names a value that stands elsewhere. */
    public static ValueTest of(String shown, TestSubject subject) {
        Faults faults = new Faults();
        ValueTest test = new ValueTestReader("", faults).test(new Node.Scalar(shown, false, false, 1, 1), subject);
        return faults.faults().isEmpty() ? test : null;
    }

    /** The test as written, lists included. */
    public static String written(Node node) {
        if (node instanceof Node.Sequence list) {
            return "one of [" + String.join(", ", list.items().stream().map(ValueTestReader::written).toList()) + "]";
        }
        return node instanceof Node.Scalar scalar ? scalar.text() : "";
    }

    /** The test as written, with the figure of each value that is named. */
    String shown(Node node) {
        String written = written(node);
        Matcher between = BETWEEN.matcher(written);
        Matcher compared = COMPARED.matcher(written);
        Matcher oneOf = ONE_OF.matcher(written);
        if (oneOf.matches()) {
            return "one of [" + String.join(", ", Arrays.stream(oneOf.group(1).split(",", -1)).map(item -> named.shown(item.trim())).toList()) + "]";
        } else if (between.matches()) {
            return "between " + named.shown(between.group(1)) + " and " + named.shown(between.group(2));
        }
        return compared.matches() ? compared.group(1) + " " + named.shown(compared.group(2)) : named.shown(written);
    }

    /** One exact value, or null with a fault. */
    Long value(Node node, TestSubject subject) {
        if (!(node instanceof Node.Scalar scalar)) {
            fault(node, subject, node.describe(), "one value", "");
            return null;
        }
        long[] ends = operand(scalar, subject);
        if (ends == null) {
            return null;
        }
        if (ends[0] != ends[1]) {
            fault(node, subject, scalar.describe(), "a number, such as " + subject.scale().resolution().number(ends[0]), "");
            return null;
        }
        if (subject.kind() != TestSubject.Kind.DECIDED && (ends[0] < subject.scale().least() || ends[0] > subject.scale().most())) {
            fault(node, subject, scalar.describe(), "between " + subject.text(subject.scale().least()) + " and " + subject.text(subject.scale().most()), "");
            return null;
        }
        return ends[0];
    }

    private ValueTest range(Node.Scalar scalar, TestSubject subject) {
        Matcher between = BETWEEN.matcher(scalar.text());
        if (between.matches()) {
            return ordered(scalar, subject) ? between(scalar, between, subject) : null;
        }
        Matcher compared = COMPARED.matcher(scalar.text());
        if (compared.matches()) {
            return ordered(scalar, subject) ? compared(scalar, compared, subject) : null;
        }
        long[] ends = operand(scalar, subject);
        if (ends == null) {
            return null;
        }
        boolean quantity = subject.scale().kind() == MeasureScale.Kind.QUANTITY;
        return quantity ? new ValueTest.Within(ends[0], ends[1]) : new ValueTest.Among(List.of(ends[0]));
    }

    private ValueTest between(Node.Scalar scalar, Matcher between, TestSubject subject) {
        long[] from = operand(part(scalar, between.group(1)), subject);
        long[] to = operand(part(scalar, between.group(2)), subject);
        return from == null || to == null ? null : new ValueTest.Within(from[0], to[1]);
    }

    private ValueTest compared(Node.Scalar scalar, Matcher compared, TestSubject subject) {
        long[] ends = operand(part(scalar, compared.group(2)), subject);
        if (ends == null) {
            return null;
        }
        return switch (compared.group(1)) {
            case "over" -> new ValueTest.Within(ends[1] == Long.MAX_VALUE ? Long.MAX_VALUE : ends[1] + 1, Long.MAX_VALUE);
            case "under" -> new ValueTest.Within(Long.MIN_VALUE, ends[0] - 1);
            case "at least" -> new ValueTest.Within(ends[0], Long.MAX_VALUE);
            default -> new ValueTest.Within(Long.MIN_VALUE, ends[1]);
        };
    }

    private boolean ordered(Node.Scalar scalar, TestSubject subject) {
        if (!subject.ordered()) {
            fault(scalar, subject, scalar.describe(), "a value or one of [a, b], since its values have no order",
                    "Values: " + String.join(", ", subject.scale().words()) + ".");
        }
        return subject.ordered();
    }

    private boolean possible(ValueTest test, Node.Scalar scalar, TestSubject subject) {
        long least = subject.scale().least();
        long most = subject.scale().most();
        if (!(test instanceof ValueTest.Within within)
                || Math.max(within.least(), least) <= Math.min(within.most(), most) && within.least() != Long.MAX_VALUE) {
            return true;
        }
        boolean inOrder = within.least() <= within.most();
        fault(scalar, subject, scalar.describe(), "a test that can hold", "No value of " + subject.written() + " is " + scalar.text()
                + (inOrder && limited(subject) ? ": it goes from " + subject.text(least) + " to " + subject.text(most) + "." : "."));
        return false;
    }

    /** Whether its limits say something that its words do not. */
    private static boolean limited(TestSubject subject) {
        MeasureScale scale = subject.scale();
        return scale.kind() == MeasureScale.Kind.QUANTITY && scale.bands().isEmpty() && subject.kind() != TestSubject.Kind.DECIDED;
    }

    private ValueTest among(List<Node> items, TestSubject subject) {
        List<Long> values = new ArrayList<>();
        for (Node item : items) {
            Long value = value(item, subject);
            if (value == null) {
                return null;
            }
            if (values.contains(value)) {
                fault(item, subject, item.describe() + " a second time", "each value once", "");
            }
            values.add(value);
        }
        return values.isEmpty() ? null : new ValueTest.Among(values);
    }

    /** The first and last tick that a written value stands for; only the word of a band stands for several. */
    private long[] operand(Node.Scalar scalar, TestSubject subject) {
        MeasureScale scale = subject.scale();
        if (scale.kind() != MeasureScale.Kind.QUANTITY) {
            Long position = position(scalar, subject);
            return position == null ? null : new long[] {position, position};
        }
        if (NamedValues.isName(scalar.text())) {
            Amount amount = named.amount(subject.written(), scalar, scale.resolution().unit().dimension(), file, faults);
            return amount == null ? null : exactly(scale.resolution().ticks(amount));
        }
        int band = scale.bands().isEmpty() ? -1 : scale.words().indexOf(scalar.text());
        if (band >= 0) {
            boolean last = band == scale.bands().size() - 1;
            return new long[] {scale.bands().get(band), last ? Long.MAX_VALUE : scale.bands().get(band + 1) - 1};
        }
        if (!scale.bands().isEmpty() && !scalar.text().matches("-?[0-9].*")) {
            fault(scalar, subject, scalar.describe(), "a number or one of: " + String.join(", ", scale.words()),
                    Spelling.didYouMean(scalar.text(), scale.words()));
            return null;
        }
        Node.Mapping none = new Node.Mapping(List.of(), scalar.line(), scalar.column());
        Amount amount = new FieldReader(file, none, faults).amount(subject.written(), scalar, scale.resolution().unit().dimension());
        if (amount == null) {
            return null;
        }
        return exactly(scale.resolution().ticks(amount));
    }

    private static long[] exactly(long ticks) {
        return new long[] {ticks, ticks};
    }

    private Long position(Node.Scalar scalar, TestSubject subject) {
        List<String> words = subject.scale().words();
        int at = words.indexOf(scalar.text());
        if (at < 0 && words.equals(List.of("no", "yes"))) {
            Boolean truth = FieldReader.truth(scalar.text());
            at = truth == null ? -1 : truth ? 1 : 0;
        }
        if (at < 0) {
            fault(scalar, subject, scalar.describe(), "one of: " + String.join(", ", words), Spelling.didYouMean(scalar.text(), words));
            return null;
        }
        return (long) at;
    }

    private static List<Node> items(Node.Scalar scalar, String inside) {
        List<Node> out = new ArrayList<>();
        for (String item : inside.split(",", -1)) {
            out.add(part(scalar, item.trim()));
        }
        return out;
    }

    private static Node.Scalar part(Node.Scalar whole, String text) {
        return new Node.Scalar(text, whole.quoted(), whole.cut(), whole.line(), whole.column());
    }

    private void fault(Node node, TestSubject subject, String found, String expected, String mend) {
        faults.add(file, node.line(), subject.written(), found, expected, mend);
    }
}
