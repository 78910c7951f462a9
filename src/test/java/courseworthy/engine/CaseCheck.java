package courseworthy.engine;

import courseworthy.problem.Fault;
import courseworthy.problem.Faults;
import courseworthy.sheet.CaseReader;
import courseworthy.sheet.Condition;
import courseworthy.sheet.ConditionMutants;
import courseworthy.sheet.NamedValues;
import courseworthy.sheet.Row;
import courseworthy.sheet.RowOutput;
import courseworthy.sheet.RuleCase;
import courseworthy.sheet.RulesFolder;
import courseworthy.sheet.Sheet;
import courseworthy.sheet.SheetReader;
import courseworthy.sheet.Stage;
import courseworthy.sheet.Truth;
import courseworthy.text.Node;
import courseworthy.text.YamlReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Holds a sheet against the cases beside it. Every row has cases; each passes; and a row with any one thing wrong (a threshold moved by
 * one step, an option lost, a condition dropped) fails at least one of them.
 */
final class CaseCheck {

    private final List<String> problems = new ArrayList<>();
    private int cases;
    private int mutants;

    private CaseCheck() {
    }

    /**
     * What a check found.
     *
     * @param rows     rows of the sheet
     * @param cases    cases tried
     * @param mutants  wrong conditions tried
     * @param problems one text for each thing wrong
     */
    record Outcome(int rows, int cases, int mutants, List<String> problems) {
    }

    /** Checks the sheet of a path below a rules folder. */
    static Outcome of(Path rules, Path sheetPath) {
        CaseCheck check = new CaseCheck();
        String shown = RulesFolder.shown(rules, sheetPath);
        Faults faults = new Faults();
        Sheet sheet = sheet(rules, sheetPath, faults);
        List<RuleCase> cases = sheet == null ? List.of() : casesOf(sheetPath, shown, sheet, faults);
        for (Fault fault : faults.faults()) {
            check.problems.add(fault.text());
        }
        for (Fault warning : faults.warnings()) {
            check.problems.add(warning.text());
        }
        if (check.problems.isEmpty()) {
            check.against(sheet, cases);
        }
        return new Outcome(sheet == null ? 0 : sheet.rows().size(), check.cases, check.mutants, check.problems);
    }

    /** The sheet of a path below a rules folder; null where it cannot be read. */
    static Sheet sheet(Path rules, Path sheetPath, Faults faults) {
        String shown = RulesFolder.shown(rules, sheetPath);
        Node.Mapping tree = YamlReader.read(sheetPath, shown, faults);
        NamedValues shared = RulesFolder.values(RulesFolder.trees(rules, new Faults()), new Faults());
        return tree == null ? null : SheetReader.decode(tree, shown, RulesFolder.rank(shown), shared, faults);
    }

    static Path casesBeside(Path sheet) {
        return sheet.resolveSibling(sheet.getFileName().toString().replace(".yaml", ".cases.yaml"));
    }

    static List<RuleCase> casesOf(Path sheetPath, String shown, Sheet sheet, Faults faults) {
        Path beside = casesBeside(sheetPath);
        if (!Files.exists(beside)) {
            boolean needed = sheet.rows().stream().anyMatch(row -> !row.condition().parts().isEmpty());
            if (needed) {
                faults.add(shown, 0, "", "no cases", "cases beside the sheet, in " + beside.getFileName(), "");
            }
            return List.of();
        }
        return CaseReader.read(beside, shown.replace(".yaml", ".cases.yaml"), sheet.title(), faults).ofRules();
    }

    /** What rows of a sheet give that could be otherwise, and no case beside it would notice. */
    static List<String> unnoticedOutput(Path rules, Path sheetPath) {
        Faults faults = new Faults();
        Sheet sheet = sheet(rules, sheetPath, faults);
        List<RuleCase> cases = casesOf(sheetPath, RulesFolder.shown(rules, sheetPath), sheet, faults);
        List<String> out = new ArrayList<>();
        for (Row row : sheet.rows()) {
            List<CaseRunner.Touch> own = cases.stream().filter(one -> row.origin().rule().endsWith("/" + one.rule())).map(CaseRunner.Touch::of).toList();
            for (CaseResults.MissingCase missing : CaseRunner.missingOutput(row, own)) {
                out.add(missing.where() + ": " + missing.rule() + ": " + missing.what() + "\n    Add " + missing.lacking() + ".");
            }
        }
        return out;
    }

    private void against(Sheet sheet, List<RuleCase> all) {
        Map<String, List<RuleCase>> byRule = new LinkedHashMap<>();
        for (RuleCase one : all) {
            byRule.computeIfAbsent(one.rule(), r -> new ArrayList<>()).add(one);
        }
        for (Row row : sheet.rows()) {
            String rule = row.origin().rule();
            List<RuleCase> own = byRule.remove(rule.substring(rule.lastIndexOf('/') + 1));
            row(row, own == null ? List.of() : own);
        }
        byRule.forEach((rule, own) -> problems.add(own.get(0).where() + ": " + rule + ": no row of this id in " + sheet.file()));
    }

    private void row(Row row, List<RuleCase> own) {
        cases += own.size();
        String at = row.origin().where() + ": " + row.origin().rule() + ": ";
        boolean fires = own.stream().anyMatch(RuleCase::fires);
        boolean silent = own.stream().anyMatch(c -> !c.fires());
        if (!row.condition().parts().isEmpty() && !(fires && silent)) {
            problems.add(at + "no " + (fires ? "silent" : "firing") + " case");
            return;
        }
        boolean passed = true;
        for (RuleCase one : own) {
            passed &= passes(row, one);
        }
        if (passed) {
            mutants(row, own, at);
        }
    }

    private boolean passes(Row row, RuleCase one) {
        Stage stage = one.facts().after(row.condition().layer());
        if ((row.condition().on(stage) == Truth.TRUE) == one.fires()) {
            RowOutput output = RowOutput.of(row, one.facts());
            if (one.fires() && !one.met(output)) {
                problems.add(one.where() + ": " + one.rule() + ": \"" + one.sentence() + "\": " + String.join("; ", CaseRunner.differences(one, output)));
                return false;
            }
            return true;
        }
        List<String> why = new ArrayList<>();
        for (Condition part : row.condition().parts()) {
            why.add("\"" + ConditionMutants.text(part) + "\" is " + part.on(stage).name().toLowerCase(java.util.Locale.ROOT));
        }
        problems.add(one.where() + ": " + one.rule() + ": \"" + one.sentence() + "\": must " + (one.fires() ? "fire" : "stay silent")
                + ", but " + String.join("; ", why));
        return false;
    }

    private void mutants(Row row, List<RuleCase> own, String at) {
        for (ConditionMutants.ConditionMutant mutant : ConditionMutants.of(row.condition())) {
            mutants++;
            boolean noticed = own.stream().anyMatch(
                    c -> (mutant.condition().on(c.facts().after(row.condition().layer())) == Truth.TRUE) != c.fires());
            if (!noticed) {
                problems.add(at + "no case notices " + mutant.what() + "\n    Add " + mutant.lacking() + ".");
            }
        }
    }
}
