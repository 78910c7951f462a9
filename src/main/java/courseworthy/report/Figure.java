package courseworthy.report;

import courseworthy.report.picture.Picture;

/**
 * A picture as data, to be drawn by a renderer in its own way.
 *
 * @param title           what is seen; may be empty
 * @param textEquivalent  the same in words, for readers and renderers that cannot see or draw it
 * @param data            what is drawn, figure by figure; null where the words or the picture itself have it all
 */
public record Figure(RichText title, Picture picture, RichText textEquivalent, Table data) implements Block {

    /** A picture whose words or labels hold all its data. */
    public Figure(RichText title, Picture picture, RichText textEquivalent) {
        this(title, picture, textEquivalent, null);
    }

    @Override
    public void accept(BlockVisitor visitor) {
        visitor.figure(this);
    }
}
