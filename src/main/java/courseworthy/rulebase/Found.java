package courseworthy.rulebase;

import courseworthy.claim.Author;
import courseworthy.workshop.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Where rules of fit put what they find. */
public final class Found {

    private final Map<String, Author> authors;
    private final List<Finding> findings = new ArrayList<>();

    Found(Map<String, Author> authors) {
        this.authors = authors;
    }

    /**
     * What one rule found of some parts.
     *
     * @param author the rule, with its reason and its source
     * @param fit    whether they fit
     * @param parts  the parts, the bike where it takes part
     */
    public record Finding(Author author, Fit fit, List<Part> parts) {
        public Finding {
            parts = List.copyOf(parts);
        }
    }

    /** A rule's finding. */
    public void add(String rule, Fit fit, Fitted... fitted) {
        Author author = authors.get(rule);
        if (author == null) {
            throw new IllegalStateException("a rule of fit without its author: " + rule);
        }
        List<Part> parts = new ArrayList<>();
        for (Fitted each : fitted) {
            parts.add(each.getPart());
        }
        findings.add(new Finding(author, fit, parts));
    }

    /** What was found, worst first, then by rule and part. */
    List<Finding> findings() {
        findings.sort(java.util.Comparator.comparing((Finding each) -> each.fit().result()).reversed()
                .thenComparing(each -> each.author().rule()).thenComparing(each -> each.parts().toString()));
        return List.copyOf(findings);
    }
}
