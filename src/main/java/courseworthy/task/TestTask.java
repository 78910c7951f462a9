package courseworthy.task;

import courseworthy.call.Call;
import courseworthy.call.CallMaker;
import courseworthy.call.Firmness;
import courseworthy.claim.Claim;
import courseworthy.claim.Task;
import courseworthy.course.Course;
import courseworthy.decision.Decision;
import courseworthy.decision.Decision.Status;
import courseworthy.demand.Demands;
import courseworthy.demand.RideInput;
import courseworthy.demand.Survey;
import courseworthy.engine.CaseResults;
import courseworthy.engine.CaseRunner;
import courseworthy.engine.CaseRunner.Touch;
import courseworthy.engine.DroolsRules;
import courseworthy.engine.ShippedRules;
import courseworthy.event.Event;
import courseworthy.event.EventReader;
import courseworthy.problem.Faults;
import courseworthy.problem.Progress;
import courseworthy.problem.Spelling;
import courseworthy.rider.Bike;
import courseworthy.rider.BikeReader;
import courseworthy.rider.Rider;
import courseworthy.rider.RiderReader;
import courseworthy.sheet.CallCase;
import courseworthy.sheet.CaseReader;
import courseworthy.sheet.Cases;
import courseworthy.sheet.Row;
import courseworthy.sheet.RuleCase;
import courseworthy.sheet.Rulebook;
import courseworthy.sheet.Sheet;
import courseworthy.sheet.SheetReader;
import courseworthy.sheet.Situation;
import courseworthy.text.Node;
import courseworthy.topic.SettledTopic;
import courseworthy.topic.Topic;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** Holds a sheet against its cases: those of its rows each alone, those of whole days under all rules and limits together. */
public final class TestTask {

    private final RequestReader inputs;
    private final Faults faults = new Faults();
    private final ShippedRules shipped = ShippedRules.load();
    private final Map<String, Row> rows = new LinkedHashMap<>();
    private final Map<Row, List<Touch>> touches = new LinkedHashMap<>();
    private final List<CaseResults.FailedCase> failed = new ArrayList<>();
    private Sheet sheet;
    private List<Sheet> others = List.of();
    private DroolsRules shared;
    private Set<String> known = Set.of();

    /** A case of a whole day, ready to be called. */
    private record Ready(CallCase one, Demands demands, RideInput ride, DroolsRules rules) {
    }

    private TestTask(Workspace workspace) {
        this.inputs = workspace.reader(faults);
    }

    /**
     * Tries a sheet.
     *
     * @param beside     other sheets that are in force with it
     * @param typedCases the files of cases; where there are none, the one beside the sheet
     * @param cover      whether to look for what no case covers
     */
    public static CaseResults of(Workspace workspace, String typed, List<String> beside, List<String> typedCases, boolean cover, Progress progress) {
        TestTask trial = new TestTask(workspace);
        trial.others = beside(beside, trial.inputs, trial.faults);
        trial.read(typed);
        List<RuleCase> ofRules = new ArrayList<>();
        List<Ready> calls = new ArrayList<>();
        for (String file : trial.sheet == null ? List.<String>of() : typedCases.isEmpty() ? List.of(NewSheetTask.casesOf(typed)) : typedCases) {
            Cases cases = trial.cases(file);
            ofRules.addAll(cases.ofRules());
            for (CallCase call : cases.calls()) {
                calls.add(trial.ready(call, file));
            }
        }
        ofRules.forEach(trial::mustHaveItsRow);
        workspace.stopOrWarn(trial.faults);
        ofRules.forEach(trial::tryRow);
        for (int i = 0; i < calls.size(); i++) {
            progress.at(i, calls.size());
            trial.tryCall(calls.get(i));
        }
        return new CaseResults(trial.sheet, trial.others, trial.rows.size(), ofRules.size() + calls.size(), trial.failed, cover ? trial.missing() : null);
    }

    /** Whether all cases came out as they say. */
    public static boolean asExpected(CaseResults results) {
        return results.failed().isEmpty();
    }

    private void read(String typed) {
        Path path = inputs.path(typed);
        sheet = path == null ? null : FileKind.sheet(path, typed, 0, faults);
        if (sheet == null) {
            return;
        }
        Rulebook book = Rulebook.of(shipped.sheets(), List.of(), all(), faults);
        known = new TreeSet<>();
        book.rows().forEach(row -> known.add(row.origin().rule()));
        book.leftOut().forEach(gone -> known.add(gone.rule()));
        for (Row row : sheet.rows()) {
            rows.put(row.origin().rule(), row);
            touches.put(row, new ArrayList<>());
        }
    }

    /** The sheets in force, the one that is tried last. */
    private List<Sheet> all() {
        List<Sheet> out = new ArrayList<>(others);
        out.add(sheet);
        return out;
    }

    /** Reads sheets that are in force beside one that is looked over or tried. */
    static List<Sheet> beside(List<String> typed, RequestReader inputs, Faults faults) {
        List<Sheet> out = new ArrayList<>();
        for (int i = 0; i < typed.size(); i++) {
            Path path = inputs.path(typed.get(i));
            Sheet sheet = path == null ? null : FileKind.sheet(path, typed.get(i), i, faults);
            if (sheet != null) {
                out.add(sheet);
            }
        }
        return out;
    }

    private Cases cases(String file) {
        Path path = inputs.path(file);
        if (path != null && !Files.exists(path)) {
            faults.add(file, 0, "", "no such file", "cases, beside the sheet or as named after it",
                    "'courseworthy sheet new' writes a sheet with cases to begin with.");
            return new Cases(List.of(), List.of());
        }
        return path == null ? new Cases(List.of(), List.of()) : CaseReader.read(path, file, sheet.title(), faults);
    }

    private Row row(String id) {
        return rows.get(sheet.title() + "/" + id);
    }

    private void mustHaveItsRow(RuleCase one) {
        if (row(one.rule()) == null) {
            List<String> ids = sheet.rows().stream().map(row -> row.origin().rule().substring(sheet.title().length() + 1)).toList();
            faults.add(one.where().file(), one.where().line(), "rule", "\"" + one.rule() + "\"", "the id of a row of " + sheet.file(),
                    Spelling.didYouMean(one.rule(), ids));
        }
    }

    private void tryRow(RuleCase one) {
        Row row = row(one.rule());
        touches.get(row).add(Touch.of(one));
        CaseResults.FailedCase outcome = CaseRunner.failed(row, one);
        if (outcome != null) {
            failed.add(outcome);
        }
    }

    /** Reads what a case of a whole day names, and puts its rules together. */
    private Ready ready(CallCase one, String file) {
        one.fires().forEach(named -> rule(named, one));
        one.silent().forEach(named -> rule(named, one));
        if (one.ride() == null) {
            return new Ready(one, one.situation().demands(), null, rules(new SituationFile("", file, one.situation()).given()));
        }
        CallCase.RideSources ridden = one.ride();
        SiblingFileReader beside = new SiblingFileReader(inputs, faults, file);
        Course course = beside.course(ridden.course(), ridden.ground());
        Rider rider = ridden.rider() == null ? Rider.UNKNOWN : ridden.rider() instanceof Node.Mapping block ? RiderReader.read(block, file, faults)
                : beside.read("rider", ridden.rider(), (path, shown) -> RiderReader.read(path, shown, faults));
        Event event = ridden.event() == null ? Event.UNKNOWN : ridden.event() instanceof Node.Mapping block ? EventReader.read(block, file, faults)
                : beside.read("event", ridden.event(), (path, shown) -> EventReader.read(path, shown, faults));
        ConsistencyCheck.check(course, event, faults);
        if (course == null || rider == null || event == null) {
            return null;
        }
        Bike fromEvent = event.bike() == null ? Bike.UNKNOWN : BikeReader.read(event.file(), event.bike(), faults);
        DroolsRules rules = rules(SheetReader.rider(rider.constraints(), rider.file(), faults));
        RideInput ride = faults.stop() ? null : new RideInput(course, rider, event, Survey.bike(rider.bike(), fromEvent));
        return ride == null ? null : new Ready(one, ride.atHand(), ride, rules);
    }

    /**
     * All rules together.
     *
     * @param own the rider's own, or what is given as settled
     */
    private DroolsRules rules(List<Row> own) {
        if (faults.stop()) {
            return null;
        }
        if (own.isEmpty() && shared != null) {
            return shared;
        }
        Rulebook book = Rulebook.of(shipped.sheets(), own, all(), faults);
        DroolsRules rules = faults.stop() ? null : new DroolsRules(book.rows(), shipped);
        shared = own.isEmpty() ? rules : shared;
        return rules;
    }

    /** The qualified id of a rule that a case names. */
    private String rule(CallCase.RuleReference named, CallCase one) {
        String id = rows.containsKey(sheet.title() + "/" + named.rule()) ? sheet.title() + "/" + named.rule() : named.rule();
        if (!known.contains(id) && !id.startsWith("rider/")) {
            faults.add(one.where().file(), named.line(), "call", "\"" + named.rule() + "\"", "the id of a row of " + sheet.file()
                    + ", or of another rule with its sheet", Spelling.didYouMean(named.rule(), known));
        }
        return id;
    }

    private void tryCall(Ready ready) {
        Call call = ready.ride() == null ? CallMaker.call(ready.rules(), ready.demands())
                : CallMaker.call(ready.rules(), ready.demands(), ready.ride()::on);
        Set<String> spoke = spoke(call);
        List<String> differences = new ArrayList<>();
        ready.one().expect().forEach((topic, expected) -> expect(call.on(topic), expected, differences));
        ready.one().firmness().forEach((topic, word) -> firmness(call, topic, word, differences));
        Situation end = situation(call);
        ready.one().fires().forEach(named -> spoken(rule(named, ready.one()), true, spoke, end, differences));
        ready.one().silent().forEach(named -> spoken(rule(named, ready.one()), false, spoke, end, differences));
        if (!differences.isEmpty()) {
            failed.add(new CaseResults.FailedCase(ready.one().where(), "", ready.one().sentence(), differences));
        }
    }

    private static Set<String> spoke(Call call) {
        Set<String> out = new TreeSet<>();
        for (Decision decision : call.decisions()) {
            for (Claim claim : decision.taken()) {
                out.add(claim.origin().rule());
            }
            for (Decision.LosingClaim lost : decision.lost()) {
                out.add(lost.claim().origin().rule());
            }
        }
        for (Task task : call.tasks()) {
            out.add(task.origin().rule());
        }
        return out;
    }

    /** What was known at the end of a call. */
    private static Situation situation(Call call) {
        Map<Topic, SettledTopic> settled = new LinkedHashMap<>();
        for (Decision decision : call.decisions()) {
            boolean is = decision.status() == Status.SETTLED;
            settled.put(decision.topic(), new SettledTopic(decision.topic(), is, is ? decision.value() : 0));
        }
        return new Situation(call.demands().values(), settled, call.demands().stretches(), call.demands().occasion());
    }

    private static void expect(Decision decision, CallCase.ExpectedValue expected, List<String> differences) {
        boolean met = expected.test() == null ? decision.status() == Status.NOT_APPLICABLE : expected.met(decision.value());
        if (!met) {
            differences.add(decision.topic().name() + ": found " + decision.text() + ", expected " + expected.written());
        }
    }

    private static void firmness(Call call, Topic topic, String word, List<String> differences) {
        Firmness firmness = call.firmness(topic);
        String found = firmness == null ? call.on(topic).status().words() : firmness.word();
        if (!found.equals(word)) {
            differences.add("firmness of " + topic.name() + ": found " + found + ", expected " + word);
        }
    }

    private void spoken(String rule, boolean must, Set<String> spoke, Situation end, List<String> differences) {
        Row row = rows.get(rule);
        if (row != null) {
            touches.get(row).add(new Touch(must, end));
        }
        if (spoke.contains(rule) == must) {
            return;
        }
        differences.add(rule + ": must " + (must ? "apply, but does not" : "not apply, but does"));
        if (row != null) {
            CaseRunner.lines(row, end).forEach(line -> differences.add("  " + line));
        }
    }

    private List<CaseResults.MissingCase> missing() {
        List<CaseResults.MissingCase> out = new ArrayList<>();
        touches.forEach((row, all) -> out.addAll(CaseRunner.missing(row, all)));
        return out;
    }
}
