package courseworthy.engine;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.claim.Evidence;
import courseworthy.claim.Rank;
import courseworthy.claim.RuleOrigin;
import courseworthy.sheet.Row;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The shipped rules as a whole, all that is wrong with them at once. */
class ShippedRulesTest {

    @Test
    void everyRuleIsSignedAndEveryTopicSpokenOn() {
        ShippedRules shipped = ShippedRules.load();
        List<Row> rows = ShippedRules.rules();
        List<RuleOrigin> authors = new ArrayList<>(rows.stream().map(Row::origin).toList());
        authors.addAll(new DroolsRules(rows, shipped).joins());
        List<String> wrong = new ArrayList<>();
        Set<String> ids = new HashSet<>();
        for (RuleOrigin author : authors) {
            signed(author, wrong);
            if (!ids.add(author.rule())) {
                wrong.add(author.where() + ": " + author.rule() + " a second time");
            }
        }
        for (Topic topic : silent(rows)) {
            wrong.add("no rule on " + topic);
        }
        assertThat(wrong).isEmpty();
        assertThat(rows).hasSizeGreaterThan(150);
    }

    private static void signed(RuleOrigin author, List<String> wrong) {
        String at = author.where() + ": " + author.rule() + ": ";
        if (!author.because().matches("[A-Z0-9].*[.]")) {
            wrong.add(at + "the reason is not a sentence: " + author.because());
        }
        if (author.evidence() == Evidence.PUBLISHED && author.source().isBlank()) {
            wrong.add(at + "published, and no source");
        }
        boolean limit = author.where().file().startsWith("rules/limits/") || author.where().file().startsWith("rules/pairing/");
        if (limit != (author.rank() == Rank.LIMIT)) {
            wrong.add(at + "limits, and they alone, stand under rules/limits/ and rules/pairing/");
        }
        if (author.where().line() < 1) {
            wrong.add(at + "nobody knows where it is written");
        }
    }

    private static Set<Topic> silent(List<Row> rows) {
        Set<Topic> out = new LinkedHashSet<>(Topics.all());
        rows.forEach(row -> row.sayings().forEach(saying -> out.remove(saying.topic())));
        return out;
    }
}
