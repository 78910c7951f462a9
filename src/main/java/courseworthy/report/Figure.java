package courseworthy.report;

/**
 * A picture as data, to be drawn by a renderer in its own way.
 *
 * @param title           what is seen; may be empty
 * @param textEquivalent  the same in words, for readers and renderers that cannot see or draw it
 */
public record Figure(RichText title, Picture picture, RichText textEquivalent) implements Block {

    @Override
    public void accept(BlockVisitor visitor) {
        visitor.figure(this);
    }
}
