package courseworthy.brief;

import courseworthy.brief.Brief.LeaveAlone;
import courseworthy.build.Build;
import courseworthy.call.Call;
import courseworthy.call.Margin;
import courseworthy.checklist.Checklist;
import courseworthy.claim.Claim;
import courseworthy.claim.Task;
import courseworthy.course.Course;
import courseworthy.decision.Decision;
import courseworthy.demand.Measure;
import courseworthy.demand.Value;
import courseworthy.event.Event;
import courseworthy.rider.Rider;
import courseworthy.rulebase.Sheet;
import courseworthy.rulebase.Untold;
import courseworthy.worth.Outlook;
import courseworthy.worth.Worths;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Puts a brief together from what the steps before it found. */
public final class Briefs {

    /** Tasks of this part say what not to touch. */
    static final String LEAVE_ALONE = "leave alone";

    private static final Set<String> UNTOUCHED = Set.of("the proven one", "keep", "keep if within its wear limit");

    private Briefs() {
    }

    public static Brief of(Course course, Rider rider, Event event, Call call, Checklist checklist) {
        return of(course, rider, event, call, call, List.of(), checklist, Outlook.NONE, null, null, List.of());
    }

    /**
     * @param mounted the call made anew for the parts of the build; the call itself where there is none
     * @param close   thresholds on which decisions rest within what their measure may be
     * @param outlook what to set, the day's plan, second calls
     * @param worths  what the decisions are worth; null where that is not wanted
     * @param build   the parts that realise it; null where no workshop is given
     * @param sheets  coaches' sheets in force, in the order given
     */
    public static Brief of(Course course, Rider rider, Event event, Call call, Call mounted, List<Margin> close, Checklist checklist, Outlook outlook, Worths worths,
            Build build, List<Sheet> sheets) {
        List<Untold> untold = untold(call, mounted);
        return new Brief(CourseLine.of(course), event.name(), rider.name(), checklist.role(), checklist.date(), call.demands(),
                call.decisions(), Reason.of(call.decisions()), leaveAlone(mounted, checklist.role()), untold,
                Wanted.of(untold), close, cautions(mounted, event, outlook), checklist, outlook, worths, build, InForce.of(sheets));
    }

    /** What the gears lack comes first: it decides whether the course is ridden. */
    private static List<String> cautions(Call call, Event event, Outlook outlook) {
        List<String> out = new ArrayList<>();
        if (outlook.shortfall() != null) {
            out.add(ShortfallWords.full(outlook.shortfall()));
        }
        out.addAll(Cautions.of(call, event));
        return out;
    }

    /** Of a situation that stands for course, rider and day: what was settled in it, and no more. */
    public static Brief of(String situation, String file, Call call, List<Sheet> sheets) {
        CourseLine none = new CourseLine(situation, "", file, 0, null, null, List.of(), null, List.of(), List.of(), List.of());
        Value role = call.demands().get(Measure.ROLE);
        return new Brief(none, "", "", role != null && role.mid() == 1 ? "race" : "training", call.demands().occasion().date(), call.demands(),
                call.decisions(), List.of(), List.of(), call.couldNotTell(), List.of(), List.of(), List.of(), null, Outlook.NONE, null, null, InForce.of(sheets));
    }

    /** Rules that could not tell, of the parts of the build neither. */
    private static List<Untold> untold(Call call, Call mounted) {
        if (mounted == call) {
            return call.couldNotTell();
        }
        Set<String> still = new HashSet<>();
        mounted.couldNotTell().forEach(each -> still.add(each.author().rule()));
        return call.couldNotTell().stream().filter(each -> still.contains(each.author().rule())).toList();
    }

    private static List<LeaveAlone> leaveAlone(Call call, String role) {
        List<LeaveAlone> out = new ArrayList<>();
        if (!role.equals("race")) {
            return out;
        }
        for (Decision decision : call.decisions()) {
            if (untouched(decision, call)) {
                Claim leading = Reason.leading(decision);
                out.add(new LeaveAlone(decision.topic().name() + ": " + decision.text(),
                        leading == null ? "" : leading.author().because()));
            }
        }
        for (Task task : call.tasks()) {
            if (task.part().equals(LEAVE_ALONE)) {
                out.add(new LeaveAlone(task.what(), task.author().because()));
            }
        }
        return out;
    }

    /** Whether the decision is to keep what the rider has. */
    private static boolean untouched(Decision decision, Call call) {
        if (decision.value() == null) {
            return false;
        }
        if (decision.topic().name().equals("bar width")) {
            Value used = call.demands().get(Measure.USED_BAR_WIDTH);
            return used != null && used.mid() == decision.value();
        }
        return UNTOUCHED.contains(decision.topic().text(decision.value()));
    }
}
