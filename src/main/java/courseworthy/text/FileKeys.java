package courseworthy.text;

import courseworthy.units.Amount;
import courseworthy.units.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** The keys of a block that people write, in the order in which its reader declares them. */
public final class FileKeys {

    private final List<FileKey<?>> all = new ArrayList<>();

    /** An amount within bounds, read in base units; {@code range} says the bounds in words. */
    public FileKey<Double> amount(String name, String about, Dimension dimension, double least, double most, String range) {
        return add(new FileKey<>(name, about, FileKey.Form.AMOUNT, dimension, List.of(), new int[0], from -> {
            Amount amount = from.amount(name, dimension, least, most, range);
            return amount == null ? null : Double.valueOf(amount.inBase());
        }));
    }

    /** A whole number within bounds. */
    public FileKey<Integer> whole(String name, String about, int least, int most) {
        return add(new FileKey<>(name, about, FileKey.Form.WHOLE, null, List.of(), new int[] {least, most}, from -> from.whole(name, least, most)));
    }

    public FileKey<Boolean> yesNo(String name, String about) {
        return plain(name, about, FileKey.Form.YES_NO, from -> from.yesNo(name));
    }

    /** One of some words. */
    public FileKey<String> word(String name, String about, List<String> words) {
        return add(new FileKey<>(name, about, FileKey.Form.WORD, null, words, new int[0], from -> from.word(name, words)));
    }

    /** A text on one line of at most so many characters; empty where it is not written. */
    public FileKey<String> line(String name, String about, int longest) {
        return plain(name, about, FileKey.Form.LINE, from -> {
            String text = from.line(name, longest);
            return text == null ? "" : text;
        });
    }

    /** A name, or a list of names; empty where none is written. */
    public FileKey<List<String>> names(String name, String about) {
        return plain(name, about, FileKey.Form.NAMES, from -> from.names(name));
    }

    /** Keys whose values the reader takes apart itself; their schemas are written where schemas are. */
    public FileKeys others(String... names) {
        for (String name : names) {
            plain(name, "", FileKey.Form.OTHER, from -> from.node(name));
        }
        return this;
    }

    /** Those declared so far, in order. */
    public List<FileKey<?>> all() {
        return List.copyOf(all);
    }

    /** The names of those declared so far, in order. */
    public List<String> names() {
        return all.stream().<String>map(FileKey::name).toList();
    }

    private <T> FileKey<T> plain(String name, String about, FileKey.Form form, Function<FieldReader, T> reading) {
        return add(new FileKey<>(name, about, form, null, List.of(), new int[0], reading));
    }

    private <T> FileKey<T> add(FileKey<T> key) {
        if (all.stream().anyMatch(each -> each.name().equals(key.name()))) {
            throw new IllegalStateException("two keys " + key.name());
        }
        all.add(key);
        return key;
    }
}
