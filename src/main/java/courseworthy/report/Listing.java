package courseworthy.report;

import java.util.List;
import java.util.Objects;

/**
 * Lines of a file, as they are typed.
 *
 * @param language what they are written in, such as {@code yaml}; may be empty
 */
public record Listing(String language, List<String> lines) implements Block {

    public Listing {
        Objects.requireNonNull(language);
        lines = List.copyOf(lines);
    }

    @Override
    public void accept(BlockVisitor visitor) {
        visitor.listing(this);
    }
}
