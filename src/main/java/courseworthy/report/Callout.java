package courseworthy.report;

/** A caution or a note that stands out from what is around it. */
public record Callout(Kind kind, RichText text) implements Block {

    /** What a callout is. */
    public enum Kind {
        CAUTION("Caution"), NOTE("Note");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        /** The word before the text, where a renderer has no sign for it. */
        public String word() {
            return word;
        }
    }

    @Override
    public void accept(BlockVisitor visitor) {
        visitor.callout(this);
    }
}
