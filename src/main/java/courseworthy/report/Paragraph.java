package courseworthy.report;

/** A paragraph of text. */
public record Paragraph(RichText text, Role role) implements Block {

    /** What a paragraph is for. */
    public enum Role {
        /** It says something of the result. */
        BODY,
        /** It says how to read what stands above it: small print. */
        REMARK
    }

    @Override
    public void accept(BlockVisitor visitor) {
        visitor.paragraph(this);
    }
}
