package courseworthy.task;

import courseworthy.claim.RuleOrigin;
import courseworthy.engine.DroolsRules;
import courseworthy.engine.ShippedRules;
import courseworthy.fit.FitRules;
import courseworthy.sheet.Row;
import courseworthy.sheet.Saying;
import courseworthy.sheet.Sheet;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The shipped rules as a list shows them. */
public final class RulesTask {

    private RulesTask() {
    }

    /** Sorted by id; those on a topic alone where one is given. */
    public static List<RuleEntry> of(String topic) {
        if (topic != null) {
            Workspace.topic("--topic", topic);
        }
        List<RuleEntry> out = new ArrayList<>();
        ShippedRules shipped = ShippedRules.load();
        List<Row> rows = new ArrayList<>();
        for (Sheet sheet : shipped.sheets()) {
            rows.addAll(sheet.rows());
        }
        for (Row row : rows) {
            out.add(row(row));
        }
        DroolsRules rules = new DroolsRules(rows, shipped);
        Map<String, String> topics = rules.topicsOfJoins();
        for (RuleOrigin join : rules.joins()) {
            out.add(new RuleEntry(join, List.of(), Set.of(topics.get(join.rule())), ""));
        }
        FitRules fit = FitRules.load();
        fit.authors().forEach((id, author) -> out.add(new RuleEntry(author, List.of("whether parts fit together: " + FitRules.joined(id)),
                new LinkedHashSet<>(fit.topics().get(id)), "")));
        out.removeIf(rule -> topic != null && !rule.topics().contains(topic));
        out.sort(Comparator.comparing(rule -> rule.origin().rule()));
        return out;
    }

    private static RuleEntry row(Row row) {
        List<String> says = new ArrayList<>();
        for (Saying saying : row.sayings()) {
            says.add(saying.topic().name() + ": " + saying.text());
        }
        String does = row.task() == null ? "" : row.task().due().words() + ", " + row.task().what();
        return new RuleEntry(row.origin(), says, new LinkedHashSet<>(row.topics()), does);
    }
}
