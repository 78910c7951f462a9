package courseworthy.report;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A document that answers a command: a title, what comes first, and sections. It says what stands where, and leaves widths, colours,
 * marks and capitals to the renderers.
 *
 * @param subtitle what the document is, beside its title; may be empty
 * @param lead     what stands before the first section
 * @param identity what tells it from other reports, such as the names of course and rider and the date: a reader's ticks are kept by it; may be empty
 */
public record Report(RichText title, RichText subtitle, List<Block> lead, List<Section> sections, List<String> identity) {

    /** A report of nothing, which every renderer writes as an empty page. */
    public static final Report EMPTY = builder(RichText.EMPTY).build();

    public Report {
        lead = List.copyOf(lead);
        sections = List.copyOf(sections);
        identity = List.copyOf(identity);
        requireDistinctIds(sections, new HashSet<>());
    }

    private static void requireDistinctIds(List<Section> sections, Set<String> seen) {
        for (Section section : sections) {
            if (!seen.add(section.id())) {
                throw new IllegalArgumentException("two sections with the id " + section.id());
            }
            requireDistinctIds(section.sections(), seen);
        }
    }

    public static Builder builder(RichText title) {
        return new Builder(title);
    }

    /** A section by its id, at any level. */
    public Optional<Section> section(String id) {
        return section(id, sections);
    }

    private static Optional<Section> section(String id, List<Section> among) {
        for (Section each : among) {
            Optional<Section> found = each.id().equals(id) ? Optional.of(each) : section(id, each.sections());
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    /** The same report with some of its sections alone, in the order given, and without what comes first. */
    public Report withOnly(List<Section> parts) {
        return new Report(title, subtitle, List.of(), parts, identity);
    }

    /** Collects what a report holds, in order. */
    public static final class Builder extends ContentBuilder<Builder> {
        private final RichText title;
        private RichText subtitle = RichText.EMPTY;
        private List<String> identity = List.of();

        private Builder(RichText title) {
            this.title = title;
        }

        public Builder subtitle(String words) {
            return subtitle(RichText.of(words));
        }

        public Builder subtitle(RichText text) {
            subtitle = text;
            return this;
        }

        /** What tells the report from others. */
        public Builder identity(String... parts) {
            identity = List.of(parts);
            return this;
        }

        @Override
        Builder self() {
            return this;
        }

        public Report build() {
            return new Report(title, subtitle, blocks(), sections(), identity);
        }
    }
}
