package courseworthy.analysis;

import courseworthy.analysis.Impact.DecisionChange;
import courseworthy.claim.Claim;
import courseworthy.claim.Rank;
import courseworthy.claim.TestedFact;
import courseworthy.claim.Verb;
import courseworthy.decision.Decision;
import courseworthy.demand.DerivedMeasures;
import courseworthy.demand.Measure;
import courseworthy.sheet.Sheet;
import courseworthy.sheet.Sheet.LeaveOut;
import courseworthy.topic.Topic;
import courseworthy.topic.Topic.Applies;
import courseworthy.topic.Topics;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What turned a decision: a coach's row that speaks or no longer does, a rule left out, or another decision that turned before it.
 *
 * @param now     a claim that was not made before; null where there is none
 * @param gone    a claim that is not made any more, by the rule of {@code now} where that made one; null where there is none
 * @param left    a rule left out, or left out no longer; null where that is not it
 * @param back    whether {@code left} is left out no longer
 * @param through the decision it follows from, where no row of the sheets compared bears on it itself; null where none is known
 * @param half    what {@code now} rests on that its row did not ask for before; empty where the row is new, or asks what it asked
 * @param tests   where a row falls silent, what it asks for now and did not before; where one speaks that rests on nothing new, what it
 *                asks for no longer
 */
public record ChangeCause(Claim now, Claim gone, LeaveOut left, boolean back, DecisionChange through, List<TestedFact> half, List<String> tests) {

    static final String DECIDED = "decided: ";

    /** @param turned what turned out differently in earlier layers of the same call */
    static ChangeCause of(Decision was, Decision is, List<Sheet> before, List<Sheet> after, Map<Topic, DecisionChange> turned) {
        List<Claim> come = without(claims(is), claims(was));
        List<Claim> went = without(claims(was), claims(is));
        Claim now = telling(coachs(come), was, is);
        Claim gone = now == null ? telling(coachs(went), is, was) : ofRule(now, went);
        if (now != null || gone != null) {
            RowChange row = RowChange.of(now == null ? gone : now, before, after);
            return new ChangeCause(now, gone, null, false, null, now == null ? List.of() : row.met(now), row.tests(now, gone));
        }
        LeaveOut left = leftOut(went, after, before);
        LeaveOut back = left == null ? leftOut(come, before, after) : null;
        if (left != null || back != null) {
            return new ChangeCause(null, null, left == null ? back : left, left == null, null, List.of(), List.of());
        }
        return new ChangeCause(telling(come, was, is), telling(went, is, was), null, false, through(is.topic(), come, went, turned),
                    List.of(), List.of());
    }

    private static List<Claim> coachs(List<Claim> claims) {
        return claims.stream().filter(claim -> claim.origin().rank() == Rank.COACH).toList();
    }

    /** Of several claims the one that tells most of a change: what it says is what came, or rules out what was; null where there is none. */
    private static Claim telling(List<Claim> claims, Decision from, Decision to) {
        Claim best = null;
        int most = -1;
        for (Claim claim : claims) {
            boolean excludes = claim.verb() == Verb.RULE_OUT || claim.verb() == Verb.AVOID;
            Long meant = excludes ? from.value() : to.value();
            boolean says = meant != null && claim.values().contains(meant);
            int tells = (says ? 2 : 0) + (to.taken().contains(claim) ? 1 : 0);
            if (tells > most) {
                best = claim;
                most = tells;
            }
        }
        return best;
    }

    private static List<Claim> claims(Decision decision) {
        List<Claim> out = new ArrayList<>(decision.taken());
        decision.lost().forEach(lost -> out.add(lost.claim()));
        return out;
    }

    private static List<Claim> without(List<Claim> claims, List<Claim> others) {
        Set<String> said = new LinkedHashSet<>();
        others.forEach(claim -> said.add(key(claim)));
        return claims.stream().filter(claim -> !said.contains(key(claim))).toList();
    }

    private static String key(Claim claim) {
        return claim.origin().rule() + " " + claim.verb() + " " + claim.values() + " " + claim.origin().force();
    }

    /** What the same rule said before, with the same verb where it did. */
    private static Claim ofRule(Claim now, List<Claim> claims) {
        Claim out = null;
        for (Claim claim : claims) {
            boolean same = claim.origin().rule().equals(now.origin().rule());
            out = same && (out == null || claim.verb() == now.verb() && out.verb() != now.verb()) ? claim : out;
        }
        return out;
    }

    /** The first of some claims whose rule one side leaves out and the other does not. */
    private static LeaveOut leftOut(List<Claim> claims, List<Sheet> by, List<Sheet> notBy) {
        for (Claim claim : claims) {
            LeaveOut out = leaveOut(claim.origin().rule(), by);
            if (out != null && leaveOut(claim.origin().rule(), notBy) == null) {
                return out;
            }
        }
        return null;
    }

    private static LeaveOut leaveOut(String rule, List<Sheet> sheets) {
        for (Sheet sheet : sheets) {
            for (LeaveOut each : sheet.leaveOuts()) {
                if (each.rule().equals(rule)) {
                    return each;
                }
            }
        }
        return null;
    }

    /** The first decision that turned before, of those that the claims in question rested on. */
    private static DecisionChange through(Topic topic, List<Claim> come, List<Claim> went, Map<Topic, DecisionChange> turned) {
        Set<Topic> restsOn = new LinkedHashSet<>();
        for (Applies applies : topic.applies()) {
            restsOn.add(applies.topic());
        }
        come.forEach(claim -> restsOn.addAll(read(claim)));
        went.forEach(claim -> restsOn.addAll(read(claim)));
        for (Topic each : restsOn) {
            DecisionChange before = turned.get(each);
            if (before != null && before.change() != Impact.ChangeLevel.FIRMNESS) {
                return before.cause().through() == null ? before : before.cause().through();
            }
        }
        // On another kind of bike the ride itself is another: hours, loads, gears.
        DecisionChange bike = turned.get(Topics.BIKE);
        return bike != null && bike.change() != Impact.ChangeLevel.FIRMNESS && !topic.equals(bike.topic()) ? bike : null;
    }

    /** The topics that a claim tests, and those from which its value derives. */
    private static List<Topic> read(Claim claim) {
        List<Topic> out = new ArrayList<>();
        for (TestedFact ground : claim.grounds()) {
            if (ground.measure().startsWith(DECIDED)) {
                out.add(Topics.of(ground.measure().substring(DECIDED.length())));
            } else if (Measure.find(ground.measure()) != null) {
                out.addAll(DerivedMeasures.topicsRead(Measure.find(ground.measure())));
            }
        }
        for (Measure measure : Measure.values()) {
            if (measure.derived() && claim.written().endsWith(measure.written())) {
                out.addAll(DerivedMeasures.topicsRead(measure));
            }
        }
        return out;
    }
}
