package courseworthy;

import courseworthy.brief.Catalogue;
import courseworthy.claim.Author;
import courseworthy.rulebase.DroolsRules;
import courseworthy.rulebase.FitRules;
import courseworthy.rulebase.House;
import courseworthy.rulebase.Row;
import courseworthy.rulebase.Saying;
import courseworthy.rulebase.Sheet;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The shipped rules as a list shows them. */
final class RuleList {

    private RuleList() {
    }

    /** Sorted by id; those on a topic alone where one is given. */
    static List<Catalogue.Rule> of(String topic) {
        List<Catalogue.Rule> out = new ArrayList<>();
        House house = House.load();
        List<Row> rows = new ArrayList<>();
        for (Sheet sheet : house.sheets()) {
            rows.addAll(sheet.rows());
        }
        for (Row row : rows) {
            out.add(row(row));
        }
        DroolsRules rules = new DroolsRules(rows, house);
        Map<String, String> topics = rules.topicsOfJoins();
        for (Author join : rules.joins()) {
            out.add(new Catalogue.Rule(join, List.of(), Set.of(topics.get(join.rule())), ""));
        }
        FitRules fit = FitRules.load();
        fit.authors().forEach((id, author) -> out.add(new Catalogue.Rule(author, List.of("whether parts go together: " + FitRules.joined(id)),
                new LinkedHashSet<>(fit.topics().get(id)), "")));
        out.removeIf(rule -> topic != null && !rule.topics().contains(topic));
        out.sort(Comparator.comparing(rule -> rule.author().rule()));
        return out;
    }

    private static Catalogue.Rule row(Row row) {
        List<String> says = new ArrayList<>();
        for (Saying saying : row.sayings()) {
            says.add(saying.topic().name() + ": " + saying.text());
        }
        String does = row.task() == null ? "" : row.task().due().words() + ", " + row.task().what();
        return new Catalogue.Rule(row.author(), says, new LinkedHashSet<>(row.topics()), does);
    }
}
