package courseworthy.text;

import courseworthy.problem.Faults;
import courseworthy.problem.Spelling;
import courseworthy.units.Amount;
import courseworthy.units.Dimension;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Takes a block of keys apart: asks for each key by name and kind, collects a fault for whatever is not as it should be, and at
 * {@link #done()} a fault with the nearest spelling for each key nobody asked for. A getter that finds a fault returns null.
 */
public final class FieldReader {

    /** The longest name, in characters. */
    public static final int LONGEST_NAME = 200;

    private final String file;
    private final Node.Mapping block;
    private final Faults faults;
    private final Set<String> asked = new LinkedHashSet<>();

    public FieldReader(String file, Node.Mapping block, Faults faults) {
        this.file = file;
        this.block = block;
        this.faults = faults;
    }

    public String file() {
        return file;
    }

    public Faults faults() {
        return faults;
    }

    public Node.Mapping block() {
        return block;
    }

    public int line() {
        return block.line();
    }

    /** The line of a key, or of the block where the key is absent. */
    public int lineOf(String key) {
        for (Node.Entry entry : block.entries()) {
            if (entry.key().text().equals(key)) {
                return entry.key().line();
            }
        }
        return block.line();
    }

    public boolean has(String key) {
        asked.add(key);
        return block.get(key) != null;
    }

    /** The raw value of a key, or null where it is absent. */
    public Node node(String key) {
        asked.add(key);
        return block.get(key);
    }

    /** As {@link #node}, with a fault where the key is absent. */
    public Node required(String key, String expected) {
        Node node = node(key);
        if (node == null) {
            faults.add(file, block.line(), key, "nothing", expected, "Add a line \"" + key + ": ...\".");
        }
        return node;
    }

    /** A single value, or null where the key is absent or is not a single value. */
    public Node.Scalar scalar(String key, String expected) {
        Node node = node(key);
        if (node == null || node instanceof Node.Scalar) {
            return (Node.Scalar) node;
        }
        faults.add(file, node.line(), key, node.describe(), expected, "");
        return null;
    }

    /** A free text; warns where a comment may have cut it. */
    public String prose(String key) {
        Node.Scalar value = scalar(key, "a text");
        if (value == null) {
            return null;
        }
        if (value.cut()) {
            faults.add(YamlReader.cut(file, value, key));
        }
        return value.text();
    }

    /** A text on one line of at most so many characters; null where absent. */
    public String line(String key, int most) {
        String text = prose(key);
        if (text != null && text.length() > most) {
            fault(key, text.length() + " characters", "at most " + most, "");
        }
        return text == null ? null : text.strip().replace('\n', ' ');
    }

    /** A name of at most 200 characters; empty where absent. */
    public String name() {
        String name = line("name", LONGEST_NAME);
        return name == null ? "" : name;
    }

    /** An amount of a dimension with its unit. */
    public Amount amount(String key, Dimension dimension) {
        Node.Scalar value = scalar(key, Amount.expected(dimension));
        return value == null ? null : amount(key, value, dimension);
    }

    /** Reads a value found under a key as an amount. */
    public Amount amount(String key, Node.Scalar value, Dimension dimension) {
        try {
            return Amount.parse(value.text(), dimension);
        } catch (Amount.NotAnAmount e) {
            faults.add(file, value.line(), key, value.describe(), e.getMessage(), mend(value.text(), dimension));
            return null;
        }
    }

    /** How to write what was meant as an amount of this dimension; empty where it cannot be told. */
    public static String mend(String text, Dimension dimension) {
        List<String> symbols = courseworthy.units.Unit.symbolsOf(dimension);
        if (Amount.hasTooManyDigits(text)) {
            return "Write at most nine digits before the point, and twenty after it.";
        }
        String question = dimension == Dimension.RATIO ? Amount.teethQuestion(text) : symbols.isEmpty() ? "" : Amount.question(text);
        if (!question.isEmpty()) {
            return question;
        }
        if (text.matches("-?[0-9]+([.,][0-9]+)?") && !symbols.isEmpty()) {
            return "Add the unit, one of: " + String.join(", ", symbols) + ".";
        }
        if (dimension == Dimension.TIME && text.matches("-?[0-9]+:.*")) {
            return "Write the minutes with two digits, from 00 to 59, and the unit: 6:05 h.";
        }
        if (text.matches("-?[0-9]+([.][0-9]+)?[^0-9 .,].*")) {
            return "Put one space between the number and its unit.";
        }
        if (text.matches("-?[0-9]+,[0-9].*")) {
            return "Write the decimal with a point and no thousands separator.";
        }
        return "";
    }

    /** An amount within bounds given in the dimension's base unit; {@code range} says them in words. */
    public Amount amount(String key, Dimension dimension, double least, double most, String range) {
        Amount amount = amount(key, dimension);
        if (amount == null || amount.inBase() >= least && amount.inBase() <= most) {
            return amount;
        }
        faults.add(file, block.get(key).line(), key, block.get(key).describe(), range, "");
        return null;
    }

    /** A bare number of which thousands are ordinary, such as a price, within bounds; {@code range} says them in words. */
    public Amount sum(String key, double least, double most, String range) {
        if (node(key) instanceof Node.Scalar value && Amount.inGroups(value.text())) {
            faults.add(file, value.line(), key, value.describe(), range, Amount.question(value.text()));
            return null;
        }
        return amount(key, Dimension.NUMBER, least, most, range);
    }

    /** A whole number within bounds. */
    public Integer whole(String key, int least, int most) {
        Node node = node(key);
        if (node == null) {
            return null;
        }
        if (node instanceof Node.Scalar value && isWhole(value.text())) {
            int number = Integer.parseInt(value.text());
            if (number >= least && number <= most) {
                return number;
            }
        }
        faults.add(file, node.line(), key, node.describe(), "a whole number from " + least + " to " + most, "");
        return null;
    }

    /** Up to nine digits without a leading zero, with or without a minus. */
    private static boolean isWhole(String text) {
        int from = text.startsWith("-") ? 1 : 0;
        int digits = text.length() - from;
        if (digits < 1 || digits > 9 || text.charAt(from) == '0' && text.length() > 1) {
            return false;
        }
        for (int i = from; i < text.length(); i++) {
            if (text.charAt(i) < '0' || text.charAt(i) > '9') {
                return false;
            }
        }
        return true;
    }

    /** {@code yes}, {@code no}, {@code true} or {@code false}. */
    public Boolean yesNo(String key) {
        Node.Scalar value = scalar(key, "yes or no");
        if (value == null) {
            return null;
        }
        Boolean answer = truth(value.text());
        if (answer == null) {
            faults.add(file, value.line(), key, value.describe(), "yes or no", "");
        }
        return answer;
    }

    /** The truth a word stands for, or null. */
    public static Boolean truth(String word) {
        return switch (word) {
            case "yes", "true" -> Boolean.TRUE;
            case "no", "false" -> Boolean.FALSE;
            default -> null;
        };
    }

    /** A day of the calendar. */
    public LocalDate day(String key) {
        Node.Scalar value = scalar(key, Dates.EXPECTED);
        LocalDate day = value == null ? null : Dates.of(value.text());
        if (value != null && day == null) {
            faults.add(file, value.line(), key, value.describe(), Dates.EXPECTED, Dates.mend(value.text()));
        }
        return day;
    }

    /** One of a set of words. */
    public String word(String key, Collection<String> accepted) {
        Node node = node(key);
        if (node instanceof Node.Scalar value) {
            return word(key, value, accepted);
        }
        if (node != null) {
            faults.add(file, node.line(), key, node.describe(), "one of: " + String.join(", ", accepted), "");
        }
        return null;
    }

    /** Reads a value found under a key as one of a set of words. */
    public String word(String key, Node.Scalar value, Collection<String> accepted) {
        if (accepted.contains(value.text())) {
            return value.text();
        }
        faults.add(file, value.line(), key, value.describe(), "one of: " + String.join(", ", accepted),
                Spelling.didYouMean(value.text(), accepted));
        return null;
    }

    /** A block of keys of its own, or null where absent or not a block. */
    public FieldReader fields(String key) {
        Node node = node(key);
        if (node == null) {
            return null;
        }
        return fields(key, node);
    }

    /** Reads a value found under a key as a block of keys. */
    public FieldReader fields(String key, Node node) {
        if (node instanceof Node.Mapping mapping) {
            return new FieldReader(file, mapping, faults);
        }
        faults.add(file, node.line(), key, node.describe(), "a block of keys", "");
        return null;
    }

    /** The items of a list; a single value counts as a list of one; empty where absent. */
    public List<Node> items(String key) {
        Node node = node(key);
        if (node == null) {
            return List.of();
        }
        return node instanceof Node.Sequence list ? list.items() : List.of(node);
    }

    /** A list of blocks of keys; empty where absent. */
    public List<FieldReader> blocks(String key) {
        List<FieldReader> out = new ArrayList<>();
        for (Node item : items(key)) {
            FieldReader fields = fields(key, item);
            if (fields != null) {
                out.add(fields);
            }
        }
        return out;
    }

    /** A list of names, none of which has a comma in it unless it is quoted in a list; empty where absent. */
    public List<String> names(String key) {
        boolean alone = !(node(key) instanceof Node.Sequence);
        for (Node item : items(key)) {
            if (item instanceof Node.Scalar scalar && scalar.text().indexOf(',') >= 0 && (alone || !scalar.quoted())) {
                severalInOne(key, scalar);
                return List.of();
            }
        }
        return texts(key);
    }

    private void severalInOne(String key, Node.Scalar scalar) {
        faults.add(file, scalar.line(), key, scalar.describe() + ", which is one text", "each by itself", asList(scalar.text()));
    }

    /** How to write what stands in one text with commas as a list. */
    public static String asList(String text) {
        return "Write a list: [" + text + "]; what has a comma in it goes in quotes there.";
    }

    /**
     * A list of texts; empty where absent. Warns where a comment may have cut one; a plain text with commas in place of a list is refused,
     * since it would count as one.
     */
    public List<String> texts(String key) {
        List<String> out = new ArrayList<>();
        if (node(key) instanceof Node.Scalar alone && !alone.quoted() && alone.text().indexOf(',') >= 0) {
            severalInOne(key, alone);
            return out;
        }
        for (Node item : items(key)) {
            if (item instanceof Node.Scalar scalar) {
                if (scalar.cut()) {
                    faults.add(YamlReader.cut(file, scalar, key));
                }
                out.add(scalar.text());
            } else {
                faults.add(file, item.line(), key, item.describe(), "a text", "");
            }
        }
        return out;
    }

    /** Adds a fault at a key. */
    public void fault(String key, String found, String expected, String mend) {
        Node node = block.get(key);
        faults.add(file, node == null ? block.line() : node.line(), key, found, expected, mend);
    }

    /** Adds a fault, with the nearest spelling, for every key that was never asked for. */
    public void done() {
        for (Node.Entry entry : block.entries()) {
            String key = entry.key().text();
            if (!asked.contains(key)) {
                faults.add(file, entry.key().line(), key, "an unknown key", "one of: " + String.join(", ", asked),
                        Spelling.didYouMean(key, asked));
            }
        }
    }
}
