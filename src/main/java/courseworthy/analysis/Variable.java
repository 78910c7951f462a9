package courseworthy.analysis;

import courseworthy.sheet.TestSubject;
import java.util.function.LongFunction;

/**
 * Something that conditions ask about, taken as free to be anything: a measure, a settled topic, a share of the course, or whether some
 * stretch is such and such. Stretches that are asked about in other words are other things; what follows from one for another is left out.
 * There is one for each thing in one check (see {@link VariableTable}).
 */
final class Variable {

    private final int number;
    private final String name;
    private final TestSubject scale;
    private final ValueSet all;
    private final ValueSet known;
    private final Object asked;
    private final LongFunction<String> words;

    /**
     * @param number its place among the things of a check
     * @param name   as sheets write it, with what it is asked of
     * @param scale  the scale of its values; null for yes and no, and for what of the occasion
     * @param all    every value it can have, and unknown
     * @param asked  the measure, the topic, the set of conditions on stretches, or what of the occasion
     * @param words  how its values are written
     */
    Variable(int number, String name, TestSubject scale, ValueSet all, Object asked, LongFunction<String> words) {
        this.number = number;
        this.name = name;
        this.scale = scale;
        this.all = all;
        this.known = all.orUnknown(false);
        this.asked = asked;
        this.words = words;
    }

    int number() {
        return number;
    }

    String name() {
        return name;
    }

    TestSubject scale() {
        return scale;
    }

    ValueSet all() {
        return all;
    }

    /** Every value it can have once it is known. */
    ValueSet known() {
        return known;
    }

    Object asked() {
        return asked;
    }

    String text(long value) {
        return words.apply(value);
    }

    /** A range in words, {@code between 2 km and 3 km}. */
    String text(long least, long most) {
        boolean open = least <= all.least(0);
        boolean end = most >= all.most(0);
        if (least == most) {
            return text(least);
        }
        if (open || end) {
            return open && end ? "anything" : open ? "at most " + text(most) : "at least " + text(least);
        }
        return "between " + text(least) + " and " + text(most);
    }
}
