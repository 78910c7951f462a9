package courseworthy.report;

import java.util.ArrayList;
import java.util.List;

/** A bulleted or numbered list. */
public record ItemList(boolean numbered, List<Item> items) implements Block {

    public ItemList {
        items = List.copyOf(items);
    }

    /** A bulleted list of lines. */
    public static ItemList bulleted(List<RichText> lines) {
        return of(false, lines);
    }

    /** A numbered list of lines. */
    public static ItemList numbered(List<RichText> lines) {
        return of(true, lines);
    }

    private static ItemList of(boolean numbered, List<RichText> lines) {
        List<Item> items = new ArrayList<>();
        for (RichText line : lines) {
            items.add(new Item(line, List.of()));
        }
        return new ItemList(numbered, items);
    }

    @Override
    public void accept(BlockVisitor visitor) {
        visitor.items(this);
    }

    /** A line with whatever stands below it. */
    public record Item(RichText text, List<Block> below) {

        public Item {
            below = List.copyOf(below);
        }

        /** A line with bullets below it; no bullets where there are no lines for them. */
        public static Item of(RichText text, List<RichText> bullets) {
            return new Item(text, bullets.isEmpty() ? List.of() : List.of(bulleted(bullets)));
        }
    }
}
