package courseworthy.task;

import courseworthy.build.Build;
import courseworthy.build.BuildCall;
import courseworthy.call.Call;
import courseworthy.call.CloseThreshold;
import courseworthy.checklist.Checklist;
import courseworthy.claim.Claim;
import courseworthy.claim.Task;
import courseworthy.course.Course;
import courseworthy.decision.Decision;
import courseworthy.demand.Measure;
import courseworthy.demand.MeasureValue;
import courseworthy.engine.UndeterminedRule;
import courseworthy.event.Event;
import courseworthy.rider.Rider;
import courseworthy.sheet.Sheet;
import courseworthy.sheet.SheetInForce;
import courseworthy.task.Brief.LeaveAlone;
import courseworthy.topic.Topics;
import courseworthy.worth.DayOutlook;
import courseworthy.worth.WorthCalculator;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Puts a brief together from what the steps before it found. */
public final class BriefAssembler {

    /** Tasks of this part say what not to touch. */
    static final String LEAVE_ALONE = "leave alone";

    private static final Set<String> UNTOUCHED = Set.of("your usual saddle", "keep", "keep if within its wear limit");

    private BriefAssembler() {
    }

    public static Brief of(Course course, Rider rider, Event event, Call call, Checklist checklist) {
        return of(course, rider, event, call, call, List.of(), null, checklist, DayOutlook.NONE, null, null, List.of());
    }

    /**
     * @param mounted the call made anew for the parts of the build; the call itself where there is none
     * @param close   thresholds on which decisions rest within what their measure may be
     * @param reliance what other ground and other figures would change; null where that is not wanted
     * @param outlook what to set, the day's plan, second calls
     * @param worths  what the decisions are worth; null where that is not wanted
     * @param build   the parts that realise it; null where no workshop is given
     * @param sheets  coaches' sheets in force, in the order given
     */
    public static Brief of(Course course, Rider rider, Event event, Call call, Call mounted, List<CloseThreshold> close, Reliance reliance, Checklist checklist,
            DayOutlook outlook, WorthCalculator worths, Build build, List<Sheet> sheets) {
        List<UndeterminedRule> untold = undetermined(call, mounted);
        return Brief.builder(CourseSummary.of(course), checklist.role(), call).event(event.name()).rider(rider.name()).notes(rider.notes()).shared(rider.shared()).date(checklist.date())
                .reasons(LeadingReason.of(call.decisions())).leaveAlone(leaveAlone(mounted, checklist.role())).couldNotTell(untold)
                .wanted(MissingInputs.of(untold, call.demands())).close(close).cautions(Cautions.of(mounted, event)).checklist(checklist).outlook(outlook)
                .worths(worths).detail(new BriefDetail(course, event, call, BuildCall.drivetrain(build), reliance)).build(build).sheets(SheetInForce.of(sheets)).build();
    }

    /** Of a situation that stands for course, rider and day: what was settled in it, and no more. */
    public static Brief of(String situation, String file, Call call, List<Sheet> sheets) {
        CourseSummary none = new CourseSummary(situation, "", file, 0, null, CourseSummary.GroundSummary.NONE, null, List.of(), List.of(), List.of());
        MeasureValue role = call.demands().get(Measure.ROLE);
        return Brief.builder(none, role != null && role.mid() == 1 ? "race" : "training", call).date(call.demands().occasion().date())
                .couldNotTell(call.undetermined()).sheets(SheetInForce.of(sheets)).build();
    }

    /** Rules that could not tell, of the parts of the build neither. */
    private static List<UndeterminedRule> undetermined(Call call, Call mounted) {
        if (mounted == call) {
            return call.undetermined();
        }
        Set<String> still = new HashSet<>();
        mounted.undetermined().forEach(each -> still.add(each.origin().rule()));
        return call.undetermined().stream().filter(each -> still.contains(each.origin().rule())).toList();
    }

    private static List<LeaveAlone> leaveAlone(Call call, String role) {
        List<LeaveAlone> out = new ArrayList<>();
        if (!role.equals("race")) {
            return out;
        }
        for (Decision decision : call.decisions()) {
            if (untouched(decision, call)) {
                Claim leading = LeadingReason.leading(decision);
                out.add(new LeaveAlone(decision.topic().name() + ": " + decision.text(),
                        leading == null ? "" : leading.origin().because()));
            }
        }
        for (Task task : call.tasks()) {
            if (task.part().equals(LEAVE_ALONE)) {
                out.add(new LeaveAlone(task.what(), task.origin().because()));
            }
        }
        return out;
    }

    /** Whether the decision is to keep what the rider has. */
    private static boolean untouched(Decision decision, Call call) {
        if (decision.value() == null) {
            return false;
        }
        if (decision.topic() == Topics.BAR_WIDTH) {
            MeasureValue used = call.demands().get(Measure.USED_BAR_WIDTH);
            return used != null && used.mid() == decision.value();
        }
        return UNTOUCHED.contains(decision.topic().text(decision.value()));
    }
}
