package courseworthy.task;

import courseworthy.call.Call;
import courseworthy.call.CallMaker;
import courseworthy.call.CloseThresholdFinder;
import courseworthy.checklist.ChecklistMaker;
import courseworthy.course.Course;
import courseworthy.demand.RideInput;
import courseworthy.demand.Survey;
import courseworthy.engine.DroolsRules;
import courseworthy.engine.ShippedRules;
import courseworthy.event.Event;
import courseworthy.problem.Faults;
import courseworthy.problem.Progress;
import courseworthy.rider.Bike;
import courseworthy.rider.BikeReader;
import courseworthy.sheet.Row;
import courseworthy.sheet.Rulebook;
import courseworthy.sheet.Sheet;
import courseworthy.sheet.SheetReader;
import courseworthy.worth.DayOutlook;
import courseworthy.worth.Sensitivity;
import courseworthy.worth.WorthCalculator;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BiConsumer;
import java.util.stream.IntStream;

/** Makes the recommendation for every rider of a folder on one course and one day. Rules are loaded once for all who have none of their own. */
public final class RosterTask {

    private final Workspace workspace;
    private final String folder;
    private final ShippedRules shipped = ShippedRules.load();
    private final List<RosterRider> starters = new ArrayList<>();
    private final List<Sheet> sheets = new ArrayList<>();

    /** A rider with all that the recommendation is made from. */
    private record RosterRider(String name, RideInput ride, DroolsRules rules) {
    }

    private RosterTask(Workspace workspace, String folder) {
        this.workspace = workspace;
        this.folder = folder;
    }

    /**
     * Reads the riders and what all of them share.
     *
     * @param request names no rider and no workshop
     * @param riders  the folder of their files, as typed
     */
    public static RosterTask read(Workspace workspace, Request request, String riders) {
        RosterTask out = new RosterTask(workspace, riders);
        Faults faults = new Faults();
        out.read(request, workspace.reader(faults), faults);
        workspace.stopOrWarn(faults);
        return out;
    }

    private void read(Request request, RequestReader inputs, Faults faults) {
        List<RosterFolder.Member> members = RosterFolder.read(inputs, folder, faults);
        Course course = inputs.course(request.course(), request.ground(), request.map());
        Event event = inputs.event(request);
        ConsistencyCheck.check(course, event, faults);
        Bike ofEvent = event == null || event.bike() == null ? Bike.UNKNOWN : BikeReader.read(event.file(), event.bike(), faults);
        readSheets(request.sheets(), inputs, faults);
        TagCheck.check(folder, members, sheets, faults);
        DroolsRules shared = rules(List.of(), faults);
        for (RosterFolder.Member each : members) {
            List<Row> own = SheetReader.rider(each.rider().constraints(), each.rider().file(), faults);
            DroolsRules rules = own.isEmpty() ? shared : rules(own, faults);
            if (!faults.stop()) {
                starters.add(new RosterRider(each.name(), new RideInput(course, each.rider(), event, Survey.bike(each.rider().bike(), ofEvent)), rules));
            }
        }
    }

    private void readSheets(List<String> typed, RequestReader inputs, Faults faults) {
        for (int i = 0; i < typed.size(); i++) {
            Path path = inputs.path(typed.get(i));
            Sheet sheet = path == null ? null : FileKind.sheet(path, typed.get(i), i, faults);
            if (sheet != null) {
                sheets.add(sheet);
            }
        }
    }

    private DroolsRules rules(List<Row> own, Faults faults) {
        Rulebook book = Rulebook.of(shipped.sheets(), own, sheets, faults);
        return faults.stop() ? null : new DroolsRules(book.rows(), shipped);
    }

    /** The riders' names as they are shown, each another, in the order of the roster. */
    public List<String> names() {
        return starters.stream().map(RosterRider::name).toList();
    }

    /**
     * Makes all recommendations, on as many cores as there are.
     *
     * @param briefs takes the place of each rider in the roster with the whole brief, from several threads; null where no briefs are wanted
     */
    public RosterResult work(Progress progress, BiConsumer<Integer, Brief> briefs) {
        AtomicInteger done = new AtomicInteger();
        List<Brief> made = IntStream.range(0, starters.size()).parallel().mapToObj(i -> {
            Brief brief = brief(starters.get(i), briefs != null);
            if (briefs != null) {
                briefs.accept(i, brief);
            }
            progress.at(done.incrementAndGet(), starters.size());
            return brief;
        }).toList();
        List<RosterResult.Entry> entries = new ArrayList<>();
        for (int i = 0; i < made.size(); i++) {
            entries.add(RosterResult.Entry.of(starters.get(i).name(), starters.get(i).ride().rider(), made.get(i)));
        }
        return RosterResult.of(made.get(0), folder, entries);
    }

    /** @param whole else without what to set, the day's plan and what changes if the forecast turns */
    private Brief brief(RosterRider starter, boolean whole) {
        RideInput ride = starter.ride();
        Call call = CallMaker.call(starter.rules(), ride);
        if (!whole) {
            return BriefAssembler.of(ride.course(), ride.rider(), ride.event(), call, call, CloseThresholdFinder.of(starter.rules(), call), null,
                    ChecklistMaker.of(call, ride.event(), null), DayOutlook.NONE, null, null, sheets);
        }
        WorthCalculator worths = new WorthCalculator(call, Sensitivity.of(call.demands()));
        BriefTask.CallContext called = new BriefTask.CallContext(starter.rules(), call, ride, worths, null);
        return BriefTask.of(new Workspace(workspace.home(), warning -> { }), called, null, null, sheets);
    }
}
