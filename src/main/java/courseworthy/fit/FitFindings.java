package courseworthy.fit;

import courseworthy.claim.RuleOrigin;
import courseworthy.workshop.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Where rules of fit put what they find. */
public final class FitFindings {

    private final Map<String, RuleOrigin> authors;
    private final List<FitFinding> findings = new ArrayList<>();

    FitFindings(Map<String, RuleOrigin> authors) {
        this.authors = authors;
    }

    /**
     * What one rule found of some parts.
     *
     * @param origin the rule, with its reason and its source
     * @param fit    whether they fit
     * @param parts  the parts, the bike where it takes part
     */
    public record FitFinding(RuleOrigin origin, FitResult fit, List<Part> parts) {
        public FitFinding {
            parts = List.copyOf(parts);
        }
    }

    /** A rule's finding. */
    public void add(String rule, FitResult fit, MountedPart... fitted) {
        RuleOrigin author = authors.get(rule);
        if (author == null) {
            throw new IllegalStateException("a rule of fit without its author: " + rule);
        }
        List<Part> parts = new ArrayList<>();
        for (MountedPart each : fitted) {
            parts.add(each.getPart());
        }
        findings.add(new FitFinding(author, fit, parts));
    }

    /** What was found, worst first, then by rule and part. */
    List<FitFinding> findings() {
        findings.sort(java.util.Comparator.comparing((FitFinding each) -> each.fit().result()).reversed()
                .thenComparing(each -> each.origin().rule()).thenComparing(each -> each.parts().toString()));
        return List.copyOf(findings);
    }
}
