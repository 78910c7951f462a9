package courseworthy.task;

import courseworthy.build.Build;
import courseworthy.call.Call;
import courseworthy.call.CloseThreshold;
import courseworthy.call.Firmness;
import courseworthy.call.FirmnessGrader;
import courseworthy.call.Flip;
import courseworthy.checklist.Checklist;
import courseworthy.decision.Decision;
import courseworthy.demand.Demands;
import courseworthy.engine.UndeterminedRule;
import courseworthy.rider.Rider;
import courseworthy.sheet.SheetInForce;
import courseworthy.topic.Topic;
import courseworthy.worth.DayOutlook;
import courseworthy.worth.DecisionWorth;
import courseworthy.worth.HeldGradients;
import courseworthy.worth.RoadBook;
import courseworthy.worth.WorthCalculator;
import java.time.LocalDate;
import java.util.List;

/**
 * The whole answer for one rider and one day, from which every output is written.
 *
 * @param course       the ground of one lap
 * @param event        the event's name; may be empty
 * @param rider        the rider's name; may be empty
 * @param notes        on the rider, as written; may be empty
 * @param shared       what was taken from the file that riders share
 * @param role         {@code training} or {@code race}
 * @param date         the day; null where it is not known
 * @param demands      what course, rider and day ask for, with what was assumed
 * @param decisions    one for each topic, in the order of the catalogue
 * @param firmness     how firm each decision is that has a value, in the order of the catalogue
 * @param reasons      the leading reason of each decision, those with one reason together
 * @param leaveAlone   what is not to be changed before a race; empty in training
 * @param undetermined rules that could not tell
 * @param wanted       what to write so that they can
 * @param close        thresholds on which decisions rest within what their measure may be
 * @param cautions     what to watch
 * @param checklist    what to do and when
 * @param outlook      what to set, the day's plan, and what changes if the forecast turns
 * @param worths       what decisions are worth, worked out when it is written; null where nothing is
 * @param detail       the ride in detail, worked out when it is asked for; null where nothing is
 * @param build        the parts of a workshop that realise the call; null where no workshop is given
 * @param sheets       coaches' sheets in force, in the order given
 */
public record Brief(CourseSummary course, String event, String rider, String notes, Rider.SharedFile shared, String role, LocalDate date, Demands demands,
        List<Decision> decisions, List<Firmness> firmness, List<LeadingReason> reasons, List<LeaveAlone> leaveAlone, List<UndeterminedRule> undetermined, List<MissingInputs> wanted,
        List<CloseThreshold> close, List<Caution> cautions, Checklist checklist, DayOutlook outlook, WorthCalculator worths, BriefDetail detail, Build build, List<SheetInForce> sheets) {

    public Brief {
        decisions = List.copyOf(decisions);
        firmness = List.copyOf(firmness);
        reasons = List.copyOf(reasons);
        leaveAlone = List.copyOf(leaveAlone);
        undetermined = List.copyOf(undetermined);
        wanted = List.copyOf(wanted);
        close = List.copyOf(close);
        cautions = List.copyOf(cautions);
    }

    /** What the files give of the rider's own that the recommendation is not, in the order of the catalogue. */
    public List<UsualDifference> differences() {
        return UsualDifference.of(decisions, demands);
    }

    /** What each decision is worth, or why that is not known; empty where nothing was worked out. */
    public List<DecisionWorth> worthOfDecisions() {
        return worths == null ? List.of() : worths.all();
    }

    /** The three decisions that are least firm or closest, and what would settle them; fewer where fewer are open. */
    public List<LeastFirm> leastFirm() {
        return LeastFirm.of(this);
    }

    /** The decisions that could change with ground that is inferred or unknown, in order. */
    public List<Decision> openToGround() {
        return detail == null || detail.reliance() == null ? List.of() : detail.reliance().open(decisions);
    }

    /** What single changes of a figure would change a decision; null where they were not looked for or it has no value. */
    public List<Flip> changes(Decision decision) {
        boolean sought = detail != null && detail.changes() != null && decision.value() != null;
        return sought ? detail.changes().of(decision.topic()) : null;
    }

    /** The days before the start; null where its day or time is not known, or no ride was estimated. */
    public Preparation preparation() {
        return detail == null ? null : Preparation.of(this, detail.event());
    }

    /** When the checklist is worked through; null where the day or the time of the start is not known, or no ride was estimated. */
    public CalendarResult calendar() {
        return detail == null ? null : CalendarTask.of(this, detail.event());
    }

    /** The line of the course seen from above; null where no track is known. */
    public CourseMap courseMap() {
        return detail == null ? null : detail.courseMap();
    }

    /** Which gradients the gears hold late in the day; null where no ride was estimated or no gears are known. */
    public HeldGradients heldGradients() {
        return detail == null ? null : detail.heldGradients();
    }

    /** The course as it is met on the way; null where no ride was estimated. */
    public RoadBook roadBook() {
        return detail == null ? null : detail.roadBook();
    }

    /** How firm a decision is; null where it has no value. */
    public Firmness firmness(Decision decision) {
        for (Firmness each : firmness) {
            if (each.decision().topic().equals(decision.topic())) {
                return each;
            }
        }
        return null;
    }

    /** The threshold on which a decision rests closely; null where it does not. */
    public CloseThreshold close(Decision decision) {
        for (CloseThreshold margin : close) {
            if (margin.decision().topic().equals(decision.topic())) {
                return margin;
            }
        }
        return null;
    }

    /** Something that stays as it is. */
    public record LeaveAlone(String what, String because) {
    }

    /** The decision on a topic. */
    public Decision on(Topic topic) {
        for (Decision decision : decisions) {
            if (decision.topic().equals(topic)) {
                return decision;
            }
        }
        throw new IllegalArgumentException("no decision on " + topic);
    }

    public static Builder builder(CourseSummary course, String role, Call call) {
        return new Builder(course, role, call);
    }

    /** Names each part as it is given. */
    public static final class Builder {

        private final CourseSummary course;
        private String event = "";
        private String rider = "";
        private String notes = "";
        private Rider.SharedFile shared = Rider.SharedFile.NONE;
        private final String role;
        private LocalDate date;
        private final Call call;
        private List<LeadingReason> reasons = List.of();
        private List<LeaveAlone> leaveAlone = List.of();
        private List<UndeterminedRule> undetermined = List.of();
        private List<MissingInputs> wanted = List.of();
        private List<CloseThreshold> close = List.of();
        private List<Caution> cautions = List.of();
        private Checklist checklist;
        private DayOutlook outlook = DayOutlook.NONE;
        private WorthCalculator worths;
        private BriefDetail detail;
        private Build build;
        private List<SheetInForce> sheets = List.of();

        private Builder(CourseSummary course, String role, Call call) {
            this.course = course;
            this.role = role;
            this.call = call;
        }

        public Builder event(String value) {
            event = value;
            return this;
        }

        public Builder rider(String value) {
            rider = value;
            return this;
        }

        public Builder shared(Rider.SharedFile value) {
            shared = value;
            return this;
        }

        public Builder notes(String value) {
            notes = value;
            return this;
        }

        public Builder date(LocalDate value) {
            date = value;
            return this;
        }

        public Builder reasons(List<LeadingReason> value) {
            reasons = value;
            return this;
        }

        public Builder leaveAlone(List<LeaveAlone> value) {
            leaveAlone = value;
            return this;
        }

        public Builder couldNotTell(List<UndeterminedRule> value) {
            undetermined = value;
            return this;
        }

        public Builder wanted(List<MissingInputs> value) {
            wanted = value;
            return this;
        }

        public Builder close(List<CloseThreshold> value) {
            close = value;
            return this;
        }

        public Builder cautions(List<Caution> value) {
            cautions = value;
            return this;
        }

        public Builder checklist(Checklist value) {
            checklist = value;
            return this;
        }

        public Builder outlook(DayOutlook value) {
            outlook = value;
            return this;
        }

        public Builder worths(WorthCalculator value) {
            worths = value;
            return this;
        }

        public Builder detail(BriefDetail value) {
            detail = value;
            return this;
        }

        public Builder build(Build value) {
            build = value;
            return this;
        }

        public Builder sheets(List<SheetInForce> value) {
            sheets = value;
            return this;
        }

        public Brief build() {
            List<Firmness> firmness = FirmnessGrader.of(new Call(call.demands(), call.decisions(), call.tasks(), undetermined));
            return new Brief(course, event, rider, notes, shared, role, date, call.demands(), call.decisions(), firmness, reasons, leaveAlone, undetermined, wanted,
                    close, cautions, checklist, outlook, worths, detail, build, sheets);
        }
    }
}
