package courseworthy.worth;

import courseworthy.claim.Claim;
import courseworthy.claim.Evidence;
import courseworthy.claim.Force;
import courseworthy.claim.Rank;
import courseworthy.claim.RuleOrigin;
import courseworthy.claim.SourceLocation;
import courseworthy.claim.Verb;
import courseworthy.engine.FiringResult;
import courseworthy.engine.RuleSet;
import courseworthy.engine.UndeterminedRule;
import courseworthy.sheet.Stage;
import courseworthy.topic.Topic;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Rules to which is added that some topics are to have given values, as a rider's own constraint would: limits still go first, and all
 * that hangs on those topics is settled anew.
 */
final class RulesWithFixedTopics implements RuleSet {

    static final String SHEET = "set-up/";
    private static final String BECAUSE = "Asked for in this set-up.";
    /** After all sheets, so that it goes before the rider's own constraints (computing). */
    private static final int LAST = 1_000_000;

    private final RuleSet rules;
    private final Map<Topic, Long> values;

    /** @param values in the topics' ticks or positions */
    RulesWithFixedTopics(RuleSet rules, Map<Topic, Long> values) {
        this.rules = rules;
        this.values = values;
    }

    @Override
    public Firing open() {
        Firing firing = rules.open();
        return new Firing() {
            @Override
            public FiringResult fire(Stage stage) {
                FiringResult said = firing.fire(stage);
                if (stage.layer() > 0) {
                    return said;
                }
                List<Claim> claims = new ArrayList<>(said.claims());
                values.forEach((topic, value) -> add(claims, topic, value));
                return new FiringResult(claims, said.tasks());
            }

            @Override
            public List<UndeterminedRule> undetermined() {
                return firing.undetermined();
            }

            @Override
            public void close() {
                firing.close();
            }
        };
    }

    private static void add(List<Claim> claims, Topic topic, long value) {
        if (topic.kind() != Topic.Kind.OPTIONS) {
            claims.add(claim(topic, Verb.AT_LEAST, value));
            claims.add(claim(topic, Verb.AT_MOST, value));
            return;
        }
        for (long other = topic.least(); other <= topic.most(); other++) {
            if (other != value) {
                claims.add(claim(topic, Verb.RULE_OUT, other));
            }
        }
    }

    private static Claim claim(Topic topic, Verb verb, long value) {
        RuleOrigin author = new RuleOrigin(SHEET + topic.name() + " " + verb.word() + " " + topic.text(value), Rank.RIDER, LAST, Force.MUST,
                Evidence.OPINION, "", BECAUSE, new SourceLocation("--set", 0));
        return Claim.of(author, topic, verb, value, topic.text(value), List.of());
    }
}
