package courseworthy.fit;

import courseworthy.claim.Evidence;
import courseworthy.claim.Force;
import courseworthy.claim.Rank;
import courseworthy.claim.RuleOrigin;
import courseworthy.claim.SourceLocation;
import courseworthy.engine.CompiledDrl;
import courseworthy.engine.ShippedRules;
import courseworthy.fit.FitFindings.FitFinding;
import courseworthy.workshop.MountingPlace;
import courseworthy.workshop.Part;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.drools.modelcompiler.KieBaseBuilder;
import org.kie.api.KieBase;
import org.kie.api.definition.rule.Rule;
import org.kie.api.runtime.KieSession;

/** The rules under {@code rules/fit}, in a network of their own that is loaded when a workshop is given. */
public final class FitRules {

    private static final String PACKAGE = "courseworthy.fit.rules";

    private final KieBase network;
    private final Map<String, RuleOrigin> authors = new LinkedHashMap<>();
    private final Map<String, List<String>> topics = new LinkedHashMap<>();

    private FitRules(Map<String, SourceLocation> where) {
        network = KieBaseBuilder.createKieBaseFromModel(CompiledDrl.models(PACKAGE));
        for (Rule rule : network.getKiePackage(PACKAGE).getRules()) {
            authors.put(rule.getName(), origin(rule, where));
            topics.put(rule.getName(), topics(rule));
        }
    }

    /** Loads the rules. */
    public static FitRules load() {
        return new FitRules(ShippedRules.load().joins());
    }

    private static RuleOrigin origin(Rule rule, Map<String, SourceLocation> where) {
        Map<String, Object> data = rule.getMetaData();
        return new RuleOrigin("fit/" + rule.getName(), Rank.LIMIT, 0, Force.MUST,
                Evidence.valueOf(String.valueOf(data.get("evidence")).toUpperCase(Locale.ROOT)), String.valueOf(data.getOrDefault("source", "")),
                String.valueOf(data.get("because")), where.getOrDefault(rule.getName(), new SourceLocation("rules", 0)));
    }

    /** The rules as they sign their findings, by id without {@code fit/}. */
    public Map<String, RuleOrigin> authors() {
        return java.util.Collections.unmodifiableMap(authors);
    }

    private static List<String> topics(Rule rule) {
        Object written = rule.getMetaData().get("topics");
        return written == null ? List.of() : List.of(String.valueOf(written).split(", "));
    }

    /** The topics that a rule narrows by what it lets stand together; by id without {@code fit/}. */
    public Map<String, List<String>> topics() {
        return java.util.Collections.unmodifiableMap(topics);
    }

    /** The kinds of parts that a rule joins, in words, the frame of the bike among them where it takes part. */
    public static String joined(String rule) {
        java.util.Set<String> kinds = new java.util.LinkedHashSet<>();
        for (FitChecks.Check check : FitChecks.all()) {
            if (check.rule().equals(rule)) {
                check.places().forEach(place -> kinds.add(place.kind().word()));
            }
        }
        if (kinds.size() == 1 && !rule.equals("valve-through-the-rim")) {
            kinds.add("frame");
        }
        return rule.startsWith("marked-") ? "every part" : String.join(", ", kinds);
    }

    /** Everything there is to say of a bike: what does not fit, what is not known, what to mind; worst first. */
    public List<FitFinding> on(Part bike, Map<MountingPlace, Part> mounted, BuildLoad load) {
        FitFindings found = new FitFindings(authors);
        KieSession session = network.newKieSession();
        try {
            session.setGlobal("findings", found);
            session.insert(load);
            session.insert(MountedPart.bike(bike));
            mounted.forEach((place, part) -> session.insert(MountedPart.of(place, part, mounted)));
            session.fireAllRules();
        } finally {
            session.dispose();
        }
        return found.findings();
    }
}
