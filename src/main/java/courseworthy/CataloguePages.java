package courseworthy;

import courseworthy.brief.Catalogue;
import courseworthy.brief.CatalogueBook;
import courseworthy.demand.Measure;
import courseworthy.problem.Faults;
import courseworthy.rulebase.Case;
import courseworthy.rulebase.CaseReader;
import courseworthy.rulebase.House;
import courseworthy.rulebase.Reads;
import courseworthy.rulebase.Row;
import courseworthy.rulebase.Sheet;
import courseworthy.topic.Topic;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/** A page for each measure and each topic, made from the catalogue, the shipped rules and their cases. */
final class CataloguePages {

    /** Where cases are looked for, below rules; null where there is no such folder. */
    private final Path home;
    private final Map<String, List<Case>> cases = new HashMap<>();

    private CataloguePages(Path home) {
        this.home = home;
    }

    /** The pages by their path in the folder, the first the one to begin with. */
    static Map<String, String> of(Path home) {
        return new CataloguePages(home).pages();
    }

    /** Writes them into a folder, which must be new or empty; returns how many. */
    static int write(Path home, Path folder, String typed) {
        Map<String, String> pages = of(home);
        NewFolder.write(folder, typed, into -> fill(into, pages));
        return pages.size();
    }

    private static void fill(Path into, Map<String, String> pages) throws IOException {
        for (Map.Entry<String, String> page : pages.entrySet()) {
            Path file = into.resolve(page.getKey());
            Files.createDirectories(file.getParent());
            Files.write(file, page.getValue().getBytes(StandardCharsets.UTF_8));
        }
    }

    private Map<String, String> pages() {
        Faults faults = new Faults();
        List<Sheet> sheets = House.load().sheets();
        Map<String, Row> rows = new TreeMap<>();
        for (Sheet sheet : sheets) {
            readCases(sheet, faults);
            for (Row row : sheet.rows()) {
                rows.put(row.author().rule(), row);
            }
        }
        faults.throwIfAny();
        return new CatalogueBook(rules(rows), turns(rows)).pages();
    }

    private void readCases(Sheet sheet, Faults faults) {
        String shown = StarterSheet.casesOf(sheet.file());
        Path beside = home == null ? null : home.resolve(shown);
        if (beside != null && Files.exists(beside)) {
            for (Case each : CaseReader.read(beside, shown, sheet.title(), faults).ofRules()) {
                cases.computeIfAbsent(shown + " " + each.rule(), id -> new ArrayList<>()).add(each);
            }
        }
    }

    /** Every shipped rule with what it reads, rows with their cases. */
    private List<CatalogueBook.Entry> rules(Map<String, Row> rows) {
        List<CatalogueBook.Entry> out = new ArrayList<>();
        for (Catalogue.Rule rule : RuleList.of(null)) {
            Row row = rows.get(rule.author().rule());
            out.add(row == null ? new CatalogueBook.Entry(rule, List.of(), List.of(), List.of(), List.of())
                    : new CatalogueBook.Entry(rule, measures(row), topics(row), sentences(row, true), sentences(row, false)));
        }
        return out;
    }

    private static List<Measure> measures(Row row) {
        return new ArrayList<>(Reads.measures(row));
    }

    private static List<String> topics(Row row) {
        List<String> out = new ArrayList<>();
        for (Topic topic : Reads.topics(row)) {
            out.add(topic.name());
        }
        return out;
    }

    private List<String> sentences(Row row, boolean fires) {
        String file = StarterSheet.casesOf(row.author().where().file());
        String id = row.author().rule().substring(row.author().rule().indexOf('/') + 1);
        List<String> out = new ArrayList<>();
        if (row.condition().parts().isEmpty()) {
            return fires ? List.of("always") : List.of();
        }
        for (Case each : cases.getOrDefault(file + " " + id, List.of())) {
            if (each.fires() == fires) {
                out.add(each.sentence());
            }
        }
        return out;
    }

    /** For each measure the values at which a shipped rule turns, least first. */
    private static Map<Measure, List<Long>> turns(Map<String, Row> rows) {
        Map<Measure, List<Long>> out = new EnumMap<>(Measure.class);
        for (Measure measure : Measure.values()) {
            SortedSet<Long> at = new TreeSet<>();
            for (Row row : rows.values()) {
                Reads.turns(row, measure, at);
            }
            out.put(measure, new ArrayList<>(at));
        }
        return out;
    }
}
