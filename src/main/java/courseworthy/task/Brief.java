package courseworthy.task;

import courseworthy.build.Build;
import courseworthy.call.CloseThreshold;
import courseworthy.checklist.Checklist;
import courseworthy.decision.Decision;
import courseworthy.decision.Decision.Standing;
import courseworthy.demand.Demands;
import courseworthy.engine.UndeterminedRule;
import courseworthy.sheet.SheetInForce;
import courseworthy.topic.Topic;
import courseworthy.worth.DayOutlook;
import courseworthy.worth.WorthCalculator;
import java.time.LocalDate;
import java.util.List;

/**
 * The whole answer for one rider and one day, from which every output is written.
 *
 * @param course       the ground of one lap
 * @param event        the event's name; may be empty
 * @param rider        the rider's name; may be empty
 * @param role         {@code training} or {@code race}
 * @param date         the day; null where it is not known
 * @param demands      what course, rider and day ask for, with what was assumed
 * @param decisions    one for each topic, in the order of the catalogue
 * @param reasons      the leading reason of each decision, those with one reason together
 * @param leaveAlone   what is not to be changed before a race; empty in training
 * @param couldNotTell rules that could not tell
 * @param wanted       what to write so that they can
 * @param close        thresholds on which decisions rest within what their measure may be
 * @param cautions     what to watch
 * @param checklist    what to do and when
 * @param outlook      what to set, the day's plan, and what changes if the forecast turns
 * @param worths       what decisions are worth, worked out when it is written; null where nothing is
 * @param build        the parts of a workshop that realise the call; null where no workshop is given
 * @param sheets       coaches' sheets in force, in the order given
 */
public record Brief(CourseSummary course, String event, String rider, String role, LocalDate date, Demands demands,
        List<Decision> decisions, List<LeadingReason> reasons, List<LeaveAlone> leaveAlone, List<UndeterminedRule> couldNotTell, List<MissingInputs> wanted,
        List<CloseThreshold> close, List<Caution> cautions, Checklist checklist, DayOutlook outlook, WorthCalculator worths, Build build, List<SheetInForce> sheets) {

    public Brief {
        decisions = List.copyOf(decisions);
        reasons = List.copyOf(reasons);
        leaveAlone = List.copyOf(leaveAlone);
        couldNotTell = List.copyOf(couldNotTell);
        wanted = List.copyOf(wanted);
        close = List.copyOf(close);
        cautions = List.copyOf(cautions);
    }

    /** What the files give of the rider's own that the recommendation is not, in the order of the catalogue. */
    public List<UsualDifference> differences() {
        return UsualDifference.of(decisions, demands);
    }

    /** Decisions on which advice is split. */
    public List<Decision> split() {
        return decisions.stream().filter(each -> each.standing() == Standing.SPLIT).toList();
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
}
