package courseworthy.render;

import courseworthy.report.Span.Footnote;
import java.util.ArrayList;
import java.util.List;

/** The sources of a report, numbered from one in the order of their first mention. */
public final class FootnoteIndex {

    private final List<String> sources = new ArrayList<>();

    public int number(Footnote footnote) {
        int at = sources.indexOf(footnote.source());
        if (at < 0) {
            sources.add(footnote.source());
            return sources.size();
        }
        return at + 1;
    }

    /** Those mentioned so far, the first one first. */
    public List<String> sources() {
        return List.copyOf(sources);
    }
}
