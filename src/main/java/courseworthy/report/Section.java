package courseworthy.report;

import java.util.List;

/**
 * A section of a report.
 *
 * @param id       by which it is asked for and referred to: lower-case letters, digits and hyphens; one section's in a report
 * @param aside    what stands beside the heading; may be empty
 * @param blocks   what stands under the heading
 * @param sections sections of the next level, after the blocks
 * @param detail   true for what only those look up who want to know more; a renderer may show the heading alone until it is asked for
 */
public record Section(String id, RichText heading, RichText aside, List<Block> blocks, List<Section> sections, boolean detail) {

    public Section {
        if (!id.matches("[a-z0-9]+(-[a-z0-9]+)*")) {
            throw new IllegalArgumentException("not an id of a section: " + id);
        }
        blocks = List.copyOf(blocks);
        sections = List.copyOf(sections);
    }

    public static Builder builder(String id, String heading) {
        return builder(id, RichText.of(heading));
    }

    public static Builder builder(String id, RichText heading) {
        return new Builder(id, heading);
    }

    /** True where nothing stands under the heading. */
    public boolean isEmpty() {
        return blocks.isEmpty() && sections.isEmpty();
    }

    /** Collects what a section holds, in order. */
    public static final class Builder extends ContentBuilder<Builder> {
        private final String id;
        private final RichText heading;
        private RichText aside = RichText.EMPTY;
        private boolean detail;

        private Builder(String id, RichText heading) {
            this.id = id;
            this.heading = heading;
        }

        /** What stands beside the heading. */
        public Builder aside(String words) {
            return aside(RichText.of(words));
        }

        public Builder aside(RichText text) {
            aside = text;
            return this;
        }

        /** What only those look up who want to know more. */
        public Builder detail() {
            detail = true;
            return this;
        }

        @Override
        Builder self() {
            return this;
        }

        public Section build() {
            return new Section(id, heading, aside, blocks(), sections(), detail);
        }
    }
}
