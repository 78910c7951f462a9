package courseworthy.task;

import courseworthy.claim.SourceLocation;
import courseworthy.demand.Measure;
import courseworthy.engine.ShippedRules;
import courseworthy.problem.Faults;
import courseworthy.sheet.CaseReader;
import courseworthy.sheet.Row;
import courseworthy.sheet.RuleCase;
import courseworthy.sheet.RuleInputs;
import courseworthy.sheet.Sheet;
import courseworthy.topic.Topic;
import java.io.IOException;
import java.io.UncheckedIOException;
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

/** The catalogue of topics, measures and rules, made from the catalogue, the shipped rules and their cases. */
public final class PagesTask {

    /** How far the rows of a sheet are indented. */
    private static final int INDENT = 2;

    /** Where cases are looked for, below rules; null where there is no such folder. */
    private final Path home;
    private final Map<String, List<RuleCase>> cases = new HashMap<>();
    private final Map<String, List<String>> sheets = new HashMap<>();

    private PagesTask(Path home) {
        this.home = home;
    }

    /** The catalogue as it is shipped; nothing is to be written where its rules are. */
    public static PagesResult of(Workspace workspace) {
        if (workspace.home() != null) {
            workspace.protect(workspace.home().resolve("rules"));
        }
        return new PagesTask(workspace.home()).catalogue();
    }

    private PagesResult catalogue() {
        Faults faults = new Faults();
        List<Sheet> sheets = ShippedRules.load().sheets();
        Map<String, Row> rows = new TreeMap<>();
        for (Sheet sheet : sheets) {
            readCases(sheet, faults);
            for (Row row : sheet.rows()) {
                rows.put(row.origin().rule(), row);
            }
        }
        faults.throwIfAny();
        return new PagesResult(rules(rows), turns(rows));
    }

    private void readCases(Sheet sheet, Faults faults) {
        String shown = NewSheetTask.casesOf(sheet.file());
        Path beside = home == null ? null : home.resolve(shown);
        if (beside != null && Files.exists(beside)) {
            for (RuleCase each : CaseReader.read(beside, shown, sheet.title(), faults).ofRules()) {
                cases.computeIfAbsent(shown + " " + each.rule(), id -> new ArrayList<>()).add(each);
            }
        }
    }

    /** Every shipped rule with what it reads, rows with their cases. */
    private List<RulePage> rules(Map<String, Row> rows) {
        List<RulePage> out = new ArrayList<>();
        for (RuleEntry rule : RulesTask.of(null)) {
            Row row = rows.get(rule.origin().rule());
            out.add(row == null ? new RulePage(rule, List.of(), List.of(), List.of(), List.of(), List.of())
                    : new RulePage(rule, measures(row), topics(row), sentences(row, true), sentences(row, false), written(row)));
        }
        return out;
    }

    private static List<Measure> measures(Row row) {
        return new ArrayList<>(RuleInputs.measures(row));
    }

    private static List<String> topics(Row row) {
        List<String> out = new ArrayList<>();
        for (Topic topic : RuleInputs.topics(row)) {
            out.add(topic.name());
        }
        return out;
    }

    private List<String> sentences(Row row, boolean fires) {
        String file = NewSheetTask.casesOf(row.origin().where().file());
        String id = row.origin().rule().substring(row.origin().rule().indexOf('/') + 1);
        List<String> out = new ArrayList<>();
        if (row.condition().parts().isEmpty()) {
            return fires ? List.of("always") : List.of();
        }
        for (RuleCase each : cases.getOrDefault(file + " " + id, List.of())) {
            if (each.fires() == fires) {
                out.add(each.sentence());
            }
        }
        return out;
    }

    /** The lines of a row in its sheet: from the item of the list that it is to the next item, blank line or comment. */
    private List<String> written(Row row) {
        SourceLocation where = row.origin().where();
        List<String> lines = sheets.computeIfAbsent(where.file(), this::lines);
        List<String> out = new ArrayList<>();
        for (int i = where.line() - 1; i < lines.size(); i++) {
            String line = lines.get(i);
            boolean next = !out.isEmpty() && (line.isBlank() || line.startsWith("  - ") || line.startsWith("  #") || !line.startsWith(" "));
            if (next) {
                break;
            }
            out.add(line.substring(Math.min(INDENT, line.length())));
        }
        return out;
    }

    private List<String> lines(String file) {
        Path path = home == null ? null : home.resolve(file);
        try {
            return path == null || !Files.exists(path) ? List.of() : Files.readAllLines(path);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** For each measure the values at which a shipped rule turns, least first. */
    private static Map<Measure, List<Long>> turns(Map<String, Row> rows) {
        Map<Measure, List<Long>> out = new EnumMap<>(Measure.class);
        for (Measure measure : Measure.values()) {
            SortedSet<Long> at = new TreeSet<>();
            for (Row row : rows.values()) {
                RuleInputs.turns(row, measure, at);
            }
            out.put(measure, new ArrayList<>(at));
        }
        return out;
    }
}
