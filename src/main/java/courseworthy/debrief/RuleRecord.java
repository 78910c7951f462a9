package courseworthy.debrief;

import courseworthy.sheet.SheetInForce;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The running record of rules over several debriefs.
 *
 * @param debriefs how many
 * @param sheets    coaches' sheets that were in force at any of them, each version by itself
 * @param rules    by id
 * @param inTime   how often the time lay in the range that was told
 */
public record RuleRecord(int debriefs, List<SheetInForce> sheets, List<RuleTally> rules, Proportion inTime) {

    public RuleRecord {
        sheets = List.copyOf(sheets);
        rules = List.copyOf(rules);
    }

    /**
     * One rule.
     *
     * @param spoke    in how many debriefs
     * @param borneOut in how many it was borne out
     * @param not      in how many it was not
     * @param where    the debriefs in which it was not, by name
     */
    public record RuleTally(String rule, int spoke, int borneOut, int not, List<String> where) {
        public RuleTally {
            where = List.copyOf(where);
        }

        public int unknown() {
            return spoke - borneOut - not;
        }

        /** Of the times that could be told. */
        public Proportion share() {
            return new Proportion(borneOut, borneOut + not);
        }

        /** Whether there is a reason to look at it: it was not borne out at least once, and not mostly borne out. */
        public boolean toLookAt() {
            return not > 0 && share().low() <= 0.5;
        }
    }

    /** Rules that were put to the test at least once. */
    public List<RuleTally> tested() {
        return rules.stream().filter(rule -> rule.share().of() > 0).toList();
    }

    /** How many rules applied and were never put to the test. */
    public int untested() {
        return rules.size() - tested().size();
    }

    /** Each rule counts once a debrief. */
    public static RuleRecord of(List<DebriefResult> all) {
        Map<String, List<DebriefResult>> spoke = new TreeMap<>();
        int timed = 0;
        int inTime = 0;
        for (DebriefResult held : all) {
            held.rules().keySet().forEach(rule -> spoke.computeIfAbsent(rule, each -> new ArrayList<>()).add(held));
            timed += held.inTime() == null ? 0 : 1;
            inTime += Boolean.TRUE.equals(held.inTime()) ? 1 : 0;
        }
        List<RuleTally> rules = new ArrayList<>();
        spoke.forEach((rule, in) -> rules.add(rule(rule, in)));
        return new RuleRecord(all.size(), sheets(all), rules, new Proportion(inTime, timed));
    }

    private static List<SheetInForce> sheets(List<DebriefResult> all) {
        Map<String, SheetInForce> out = new LinkedHashMap<>();
        all.forEach(held -> held.given().sheets().forEach(sheet -> out.putIfAbsent(sheet.name() + "\n" + sheet.sha256(), sheet)));
        return List.copyOf(out.values());
    }

    private static RuleTally rule(String rule, List<DebriefResult> in) {
        int borneOut = 0;
        List<String> where = new ArrayList<>();
        for (DebriefResult held : in) {
            AdviceOutcome answer = held.rules().get(rule);
            borneOut += answer == AdviceOutcome.BORNE_OUT ? 1 : 0;
            if (answer == AdviceOutcome.NOT) {
                where.add(held.debrief().name());
            }
        }
        return new RuleTally(rule, in.size(), borneOut, where.size(), where);
    }

    /** Those to look at, the most often not borne out first. */
    public List<RuleTally> toLookAt() {
        List<RuleTally> out = new ArrayList<>();
        for (RuleTally rule : rules) {
            if (rule.toLookAt()) {
                out.add(rule);
            }
        }
        out.sort(java.util.Comparator.comparingInt(RuleTally::not).reversed());
        return out;
    }
}
