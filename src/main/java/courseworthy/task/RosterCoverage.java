package courseworthy.task;

import courseworthy.analysis.Finding;
import courseworthy.analysis.Finding.Kind;
import courseworthy.analysis.Finding.Witness;
import courseworthy.call.Call;
import courseworthy.call.CallMaker;
import courseworthy.checklist.ChecklistMaker;
import courseworthy.course.Course;
import courseworthy.decision.Decision;
import courseworthy.demand.RideInput;
import courseworthy.demand.Survey;
import courseworthy.engine.DroolsRules;
import courseworthy.engine.ShippedRules;
import courseworthy.event.Event;
import courseworthy.event.EventReader;
import courseworthy.problem.Faults;
import courseworthy.problem.Progress;
import courseworthy.problem.Spelling;
import courseworthy.rider.Bike;
import courseworthy.rider.BikeReader;
import courseworthy.sheet.Row;
import courseworthy.sheet.Rulebook;
import courseworthy.sheet.Sheet;
import courseworthy.sheet.SheetReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;

/** Rows of a sheet that apply to no rider of a folder on any shipped course, and tags that a sheet asks for and no rider has. */
final class RosterCoverage {

    private static final String EVENTS = "docs/examples/events";

    private final RequestReader inputs;
    private final Path home;
    private final ShippedRules shipped = ShippedRules.load();
    private final List<RosterFolder.Member> riders;
    private final Set<String> applied = new HashSet<>();

    private RosterCoverage(Workspace workspace, List<RosterFolder.Member> riders) {
        this.home = workspace.home();
        this.inputs = new RequestReader(home, new Faults());
        this.riders = riders;
    }

    /**
     * A finding for each such tag, then one for each such row.
     *
     * @param sheet what is looked over
     * @param all   all sheets in force
     */
    static List<Finding> of(Workspace workspace, List<RosterFolder.Member> riders, Sheet sheet, List<Sheet> all, Progress progress) {
        RosterCoverage coverage = new RosterCoverage(workspace, riders);
        List<Finding> out = new ArrayList<>(coverage.tags(sheet));
        List<String> courses = coverage.inputs.names();
        int done = 0;
        for (RosterFolder.Member member : riders) {
            DroolsRules rules = coverage.rules(member, all);
            for (String course : courses) {
                coverage.ride(member, rules, course);
                progress.at(++done, courses.size() * riders.size());
            }
        }
        for (Row row : sheet.rows()) {
            if (!courses.isEmpty() && !coverage.applied.contains(row.origin().rule())) {
                out.add(coverage.silent(row, courses.size()));
            }
        }
        return out;
    }

    private DroolsRules rules(RosterFolder.Member member, List<Sheet> all) {
        List<Row> own = SheetReader.rider(member.rider().constraints(), member.rider().file(), new Faults());
        return new DroolsRules(Rulebook.of(shipped.sheets(), own, all, new Faults()).rows(), shipped);
    }

    private void ride(RosterFolder.Member member, DroolsRules rules, String name) {
        Course course = inputs.course(name, null);
        Path file = home.resolve(EVENTS).resolve(name + YamlFolder.ENDING);
        Event event = Files.isRegularFile(file) ? EventReader.read(file, name, new Faults()) : Event.UNKNOWN;
        if (course == null || event == null) {
            return;
        }
        Bike bike = event.bike() == null ? Bike.UNKNOWN : BikeReader.read(name, event.bike(), new Faults());
        Call call = CallMaker.call(rules, new RideInput(course, member.rider(), event, Survey.bike(member.rider().bike(), bike)));
        for (Decision decision : call.decisions()) {
            decision.taken().forEach(claim -> applied.add(claim.origin().rule()));
            decision.lost().forEach(lost -> applied.add(lost.claim().origin().rule()));
        }
        ChecklistMaker.listed(call).forEach(task -> applied.add(task.origin().rule()));
    }

    private Finding silent(Row row, int courses) {
        return finding(row, Kind.SILENT, "It applies to none of the " + riders.size() + (riders.size() == 1 ? " rider" : " riders") + " on any of the "
                + courses + " shipped courses, on the dates of their events.", "Leave it if you wrote it for a day or a rider still to come; if not, look at its conditions.");
    }

    private List<Finding> tags(Sheet sheet) {
        Set<String> borne = new TreeSet<>(String.CASE_INSENSITIVE_ORDER);
        riders.forEach(each -> borne.addAll(each.rider().tags()));
        List<Finding> out = new ArrayList<>();
        SortedSet<String> reported = new TreeSet<>(String.CASE_INSENSITIVE_ORDER);
        for (Row row : sheet.rows()) {
            for (String tag : TagCheck.asked(row)) {
                if (!borne.contains(tag) && reported.add(tag)) {
                    String near = Spelling.didYouMean(tag, borne);
                    out.add(finding(row, Kind.TAG_WITHOUT_RIDERS, "It needs the tag " + RequestReader.quoted(tag) + ", which none of the " + riders.size()
                            + (riders.size() == 1 ? " rider" : " riders") + " has.",
                            !near.isEmpty() ? near : borne.isEmpty() ? "Add tags to the riders' files." : "The riders have: " + String.join(", ", borne) + "."));
                }
            }
        }
        return out;
    }

    private static Finding finding(Row row, Kind kind, String text, String mend) {
        return new Finding(kind, List.of(row.origin()), "", text, mend, 0, "", Witness.NONE);
    }
}
