package courseworthy.render;

import courseworthy.report.Report;
import courseworthy.report.Section;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * The anchors that viewers of Markdown commonly give to headings: the heading in lower case, without punctuation, its spaces as
 * hyphens, and a number after one that is there already (common practice, no source: CommonMark has none).
 */
final class MarkdownAnchors {

    private final Map<String, String> bySection = new HashMap<>();
    private final Map<String, Integer> taken = new HashMap<>();

    MarkdownAnchors(Report report) {
        anchor(MarkdownRenderer.beside(report.title(), report.subtitle()).plain());
        add(report.sections());
    }

    private void add(List<Section> sections) {
        for (Section section : sections) {
            bySection.put(section.id(), anchor(MarkdownRenderer.beside(section.heading(), section.aside()).plain()));
            add(section.sections());
        }
    }

    private String anchor(String heading) {
        StringBuilder out = new StringBuilder();
        heading.toLowerCase(Locale.ROOT).codePoints().forEach(c -> {
            if (c == ' ') {
                out.append('-');
            } else if (Character.isLetterOrDigit(c) || c == '-' || c == '_') {
                out.appendCodePoint(c);
            }
        });
        int before = taken.merge(out.toString(), 1, Integer::sum) - 1;
        return before == 0 ? out.toString() : out + "-" + before;
    }

    /** The anchor of a section; null where the report has no section with that id. */
    String of(String sectionId) {
        return bySection.get(sectionId);
    }
}
