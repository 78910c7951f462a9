package courseworthy.engine;

import courseworthy.sheet.RulesFolder;
import java.nio.file.Path;
import java.util.List;

/** Checks cases from a command line: the rules folder, then optionally the part of the path that sheets must contain. */
final class CheckCases {

    private CheckCases() {
    }

    public static void main(String[] args) {
        Path rules = Path.of(args.length > 0 ? args[0] : "rules");
        String only = args.length > 1 ? args[1] : "";
        int wrong = 0;
        int rows = 0;
        int cases = 0;
        int mutants = 0;
        for (Path sheet : sheets(rules, only)) {
            CaseCheck.Outcome outcome = CaseCheck.of(rules, sheet);
            outcome.problems().forEach(System.out::println);
            wrong += outcome.problems().size();
            rows += outcome.rows();
            cases += outcome.cases();
            mutants += outcome.mutants();
        }
        System.out.printf("%d rows, %d cases, %d wrong conditions tried, %d problems%n", rows, cases, mutants, wrong);
        System.exit(wrong == 0 ? 0 : 1);
    }

    /** The sheets whose shown path contains a text. */
    static List<Path> sheets(Path rules, String only) {
        return RulesFolder.files(rules, ".yaml").stream()
                .filter(p -> !p.toString().endsWith(".cases.yaml"))
                .filter(p -> !RulesFolder.shown(rules, p).equals(RulesFolder.REAL_PAIRS) && !RulesFolder.isOtherTable(RulesFolder.shown(rules, p)))
                .filter(p -> RulesFolder.shown(rules, p).contains(only)).toList();
    }
}
