package courseworthy.report;

import java.util.Objects;

/** A piece of a line of text. */
public sealed interface Span {

    /** Shows the span to a visitor. */
    void accept(SpanVisitor visitor);

    /** What a reader sees of it, without any mark. */
    String plain();

    /**
     * Words.
     *
     * @param quoted true where they come from a file or the command line, such as a name; false for words of the tool
     */
    record Text(String text, Style style, boolean quoted) implements Span {

        public Text {
            Objects.requireNonNull(text);
            Objects.requireNonNull(style);
        }

        @Override
        public void accept(SpanVisitor visitor) {
            visitor.text(this);
        }

        @Override
        public String plain() {
            return text;
        }
    }

    /** Something to type, such as a command, an option or a key of a file. */
    record Code(String text) implements Span {

        public Code {
            Objects.requireNonNull(text);
        }

        @Override
        public void accept(SpanVisitor visitor) {
            visitor.code(this);
        }

        @Override
        public String plain() {
            return text;
        }
    }

    /**
     * A link to another page.
     *
     * @param target a relative path, or an address that begins with {@code https://} or {@code http://}; never text from a file
     */
    record Link(String label, String target) implements Span {

        public Link {
            Objects.requireNonNull(label);
            int scheme = target.indexOf(':');
            if (scheme >= 0 && !target.startsWith("https://") && !target.startsWith("http://")) {
                throw new IllegalArgumentException("not a web address or a relative path: " + target);
            }
        }

        /** True where it leads out of what the tool itself writes. */
        public boolean external() {
            return target.indexOf(':') >= 0;
        }

        @Override
        public void accept(SpanVisitor visitor) {
            visitor.link(this);
        }

        @Override
        public String plain() {
            return label;
        }
    }

    /** A reference to a section of the same report, by its id. */
    record CrossReference(String label, String sectionId) implements Span {

        public CrossReference {
            Objects.requireNonNull(label);
            Objects.requireNonNull(sectionId);
        }

        @Override
        public void accept(SpanVisitor visitor) {
            visitor.crossReference(this);
        }

        @Override
        public String plain() {
            return label;
        }
    }

    /**
     * How firm something stands, in a word; a page puts a square before it, filled by how firm it is.
     *
     * @param fill of the square
     */
    record Standing(String word, Fill fill) implements Span {

        public Standing {
            Objects.requireNonNull(word);
            Objects.requireNonNull(fill);
        }

        /** How much of a square is filled. */
        public enum Fill { FULL, HALF, OPEN }

        @Override
        public void accept(SpanVisitor visitor) {
            visitor.standing(this);
        }

        @Override
        public String plain() {
            return word;
        }
    }

    /** A mark that leads to a source. Renderers number sources in the order of their first mention and list them at the end. */
    record Footnote(String source) implements Span {

        /** The heading of the list of sources. */
        public static final String HEADING = "Sources";

        public Footnote {
            Objects.requireNonNull(source);
        }

        @Override
        public void accept(SpanVisitor visitor) {
            visitor.footnote(this);
        }

        @Override
        public String plain() {
            return "";
        }
    }
}
