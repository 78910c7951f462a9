package courseworthy.task;

import courseworthy.analysis.Finding;
import courseworthy.analysis.Findings;
import courseworthy.analysis.SheetCheck;
import courseworthy.engine.ShippedRules;
import courseworthy.problem.Faults;
import courseworthy.problem.Progress;
import courseworthy.sheet.Row;
import courseworthy.sheet.Rulebook;
import courseworthy.sheet.Sheet;
import courseworthy.topic.Topics;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;

/** Looks over a coach's sheet. */
public final class CheckTask {

    private CheckTask() {
    }

    /**
     * @param beside     other sheets that are in force with it
     * @param every      whether to list all remarks, however many of a kind
     * @param gaps       whether to look for situations and shipped courses on which no rule applies
     * @param riders   a folder of riders' files, to tell which rows apply to none of them; null for none
     * @param examples a folder to write an example of each finding into; null for none
     */
    public static CheckResult of(Workspace workspace, String file, List<String> beside, boolean gaps, boolean every, String riders, String examples,
            Progress progress) {
        CheckResult result = look(workspace, file, beside, gaps, every, riders, progress);
        if (examples == null) {
            return result;
        }
        Path folder = new RequestReader(workspace.home(), new Faults()).path(examples);
        if (folder != null) {
            workspace.mayWriteOver(folder, examples);
        }
        List<String> sheets = new ArrayList<>(beside);
        sheets.add(file);
        return new CheckResult(file, result.rows(), result.findings(), SheetExampleWriter.write(result.findings().list(), folder, examples, sheets));
    }

    private static CheckResult look(Workspace workspace, String file, List<String> beside, boolean gaps, boolean every, String riders, Progress progress) {
        Faults faults = new Faults();
        Path path = workspace.reader(faults).path(file);
        Sheet sheet = path == null ? null : FileKind.sheet(path, file, 0, faults);
        ShippedRules shipped = ShippedRules.load();
        List<Sheet> all = TestTask.beside(beside, workspace.reader(faults), faults);
        if (sheet != null) {
            all.add(sheet);
        }
        List<Row> inForce = sheet == null ? List.of() : Rulebook.of(shipped.sheets(), List.of(), all, faults).rows();
        List<RosterFolder.Member> roster = riders == null ? List.of() : RosterFolder.read(workspace.reader(faults), riders, faults);
        workspace.stopOrWarn(faults);
        Findings findings = SheetCheck.of(sheet.rows(), shipped(shipped, inForce), inForce, gaps ? Set.copyOf(Topics.names()) : Set.of(), every,
                new FindingVerifier(inForce, shipped));
        List<Finding> list = new ArrayList<>(findings.list());
        list.addAll(gaps ? LibraryGaps.of(workspace.home(), inForce, shipped) : List.of());
        list.addAll(roster.isEmpty() ? List.of() : RosterCoverage.of(workspace, roster, sheet, all, progress));
        return new CheckResult(file, sheet.rows().size(), new Findings(list, findings.unlisted()), List.of());
    }

    /** The shipped rows that are not left out. */
    private static List<Row> shipped(ShippedRules shipped, List<Row> inForce) {
        Set<Row> still = Collections.newSetFromMap(new IdentityHashMap<>());
        still.addAll(inForce);
        List<Row> out = new ArrayList<>();
        shipped.sheets().forEach(one -> out.addAll(one.rows()));
        out.removeIf(row -> !still.contains(row));
        return out;
    }
}
