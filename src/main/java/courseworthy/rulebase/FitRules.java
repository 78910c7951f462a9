package courseworthy.rulebase;

import courseworthy.claim.Author;
import courseworthy.claim.Evidence;
import courseworthy.claim.Force;
import courseworthy.claim.Rank;
import courseworthy.claim.Where;
import courseworthy.rulebase.Found.Finding;
import courseworthy.workshop.Part;
import courseworthy.workshop.Place;
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

    private static final String PACKAGE = "courseworthy.rulebase.fits";

    private final KieBase network;
    private final Map<String, Author> authors = new LinkedHashMap<>();
    private final Map<String, List<String>> topics = new LinkedHashMap<>();

    private FitRules(Map<String, Where> where) {
        network = KieBaseBuilder.createKieBaseFromModel(Compiled.models(PACKAGE));
        for (Rule rule : network.getKiePackage(PACKAGE).getRules()) {
            authors.put(rule.getName(), author(rule, where));
            topics.put(rule.getName(), topics(rule));
        }
    }

    /** Loads the rules. */
    public static FitRules load() {
        return new FitRules(House.load().joins());
    }

    private static Author author(Rule rule, Map<String, Where> where) {
        Map<String, Object> data = rule.getMetaData();
        return new Author("fit/" + rule.getName(), Rank.LIMIT, 0, Force.MUST,
                Evidence.valueOf(String.valueOf(data.get("evidence")).toUpperCase(Locale.ROOT)), String.valueOf(data.getOrDefault("source", "")),
                String.valueOf(data.get("because")), where.getOrDefault(rule.getName(), new Where("rules", 0)));
    }

    /** The rules as they sign their findings, by id without {@code fit/}. */
    public Map<String, Author> authors() {
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
    public List<Finding> on(Part bike, Map<Place, Part> mounted, Load load) {
        Found found = new Found(authors);
        KieSession session = network.newKieSession();
        try {
            session.setGlobal("found", found);
            session.insert(load);
            session.insert(Fitted.bike(bike));
            mounted.forEach((place, part) -> session.insert(Fitted.of(place, part, place == Place.STEM ? mounted.get(Place.SPACERS) : null)));
            session.fireAllRules();
        } finally {
            session.dispose();
        }
        return found.findings();
    }
}
