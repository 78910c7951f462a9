package courseworthy.worth;

import courseworthy.claim.Author;
import courseworthy.claim.Claim;
import courseworthy.claim.Evidence;
import courseworthy.claim.Force;
import courseworthy.claim.Rank;
import courseworthy.claim.Verb;
import courseworthy.claim.Where;
import courseworthy.rulebase.Rules;
import courseworthy.rulebase.Said;
import courseworthy.rulebase.Stage;
import courseworthy.rulebase.Untold;
import courseworthy.topic.Topic;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Rules to which is added that some topics are to have given values, as a rider's own constraint would: limits still go first, and all
 * that hangs on those topics is settled anew.
 */
final class Asked implements Rules {

    static final String SHEET = "set-up/";
    private static final String BECAUSE = "Asked for in this set-up.";
    /** After all sheets, so that it goes before the rider's own constraints (computing). */
    private static final int LAST = 1_000_000;

    private final Rules rules;
    private final Map<Topic, Long> values;

    /** @param values in the topics' ticks or positions */
    Asked(Rules rules, Map<Topic, Long> values) {
        this.rules = rules;
        this.values = values;
    }

    @Override
    public Firing open() {
        Firing firing = rules.open();
        return new Firing() {
            @Override
            public Said fire(Stage stage) {
                Said said = firing.fire(stage);
                if (stage.layer() > 0) {
                    return said;
                }
                List<Claim> claims = new ArrayList<>(said.claims());
                values.forEach((topic, value) -> add(claims, topic, value));
                return new Said(claims, said.tasks());
            }

            @Override
            public List<Untold> couldNotTell() {
                return firing.couldNotTell();
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
        Author author = new Author(SHEET + topic.name() + " " + verb.word() + " " + topic.text(value), Rank.RIDER, LAST, Force.MUST,
                Evidence.OPINION, "", BECAUSE, new Where("--set", 0));
        return Claim.of(author, topic, verb, value, topic.text(value), List.of());
    }
}
