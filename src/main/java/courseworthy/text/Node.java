package courseworthy.text;

import java.util.List;

/** A piece of what a user wrote, with the line and column (1-based) where it stands. */
public sealed interface Node {

    int line();

    int column();

    /** What it is, in words for a fault: {@code a list}, {@code a block of keys}, or the quoted text. */
    String describe();

    /**
     * A value or a key.
     *
     * @param text   the raw text, never coerced
     * @param quoted whether it was written in quotes or as a block, so that it can only be text
     * @param cut    whether a {@code #} comment follows an unquoted text on its line, so that words may have been lost
     */
    record Scalar(String text, boolean quoted, boolean cut, int line, int column) implements Node {
        @Override
        public String describe() {
            String shown = text.length() > 60 ? text.substring(0, 57) + "..." : text;
            return "\"" + shown.replace("\n", " ") + "\"";
        }
    }

    /** One {@code key: value}. */
    record Entry(Scalar key, Node value) {
    }

    /** A block of keys, in the order written. */
    record Mapping(List<Entry> entries, int line, int column) implements Node {
        /** The value of a key, or null. */
        public Node get(String key) {
            for (Entry entry : entries) {
                if (entry.key().text().equals(key)) {
                    return entry.value();
                }
            }
            return null;
        }

        @Override
        public String describe() {
            return "a block of keys";
        }
    }

    /** A list. */
    record Sequence(List<Node> items, int line, int column) implements Node {
        @Override
        public String describe() {
            return "a list";
        }
    }
}
