package courseworthy.text;

import courseworthy.units.Dimension;
import java.util.List;
import java.util.function.Function;

/**
 * One key of a block that people write, with the form of its value: its reader reads it by this, and the schema of the file says the same.
 *
 * @param <T> what a value is read as; null where it is not written or is at fault
 */
public final class FileKey<T> {

    /** The form of a value. Of one that is in none of the plain forms, only the name of the key is declared. */
    public enum Form { AMOUNT, WHOLE, YES_NO, WORD, LINE, NAMES, OTHER }

    private final String name;
    private final String about;
    private final Form form;
    private final Dimension dimension;
    private final int least;
    private final int most;
    private final List<String> words;
    private final Function<FieldReader, T> reading;

    /** @param bounds the least and the most of a whole number; none for other forms */
    FileKey(String name, String about, Form form, Dimension dimension, List<String> words, int[] bounds, Function<FieldReader, T> reading) {
        this.name = name;
        this.about = about;
        this.form = form;
        this.dimension = dimension;
        this.words = List.copyOf(words);
        this.reading = reading;
        least = bounds.length == 0 ? 0 : bounds[0];
        most = bounds.length == 0 ? 0 : bounds[1];
    }

    /** As it is written. */
    public String name() {
        return name;
    }

    /** What is written there, in words; empty where the name says it all. */
    public String about() {
        return about;
    }

    public Form form() {
        return form;
    }

    /** Of an amount; null for other forms. */
    public Dimension dimension() {
        return dimension;
    }

    /** Of a whole number. */
    public int least() {
        return least;
    }

    /** Of a whole number. */
    public int most() {
        return most;
    }

    /** Those that are accepted, for one word of several; empty for other forms. */
    public List<String> words() {
        return words;
    }

    /** Reads it from a block. */
    public T read(FieldReader from) {
        return reading.apply(from);
    }

    @Override
    public String toString() {
        return name;
    }
}
