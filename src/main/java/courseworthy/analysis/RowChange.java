package courseworthy.analysis;

import courseworthy.claim.Claim;
import courseworthy.claim.TestedFact;
import courseworthy.sheet.Condition;
import courseworthy.sheet.Row;
import courseworthy.sheet.Sheet;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The difference between the conditions of one row in two versions of a sheet: each test by a key, with its words.
 *
 * @param before the tests of the earlier version; null where it has no such row
 * @param after  the tests of the later version; null where it has no such row
 */
record RowChange(Map<String, String> before, Map<String, String> after) {

    /** The row that makes a claim, in both versions. */
    static RowChange of(Claim claim, List<Sheet> before, List<Sheet> after) {
        return new RowChange(tests(claim.origin().rule(), before), tests(claim.origin().rule(), after));
    }

    /** What a claim rests on that its row did not ask for before. */
    List<TestedFact> met(Claim claim) {
        List<TestedFact> out = new ArrayList<>();
        for (TestedFact ground : before == null || after == null ? List.<TestedFact>of() : claim.grounds()) {
            String key = key(ground.measure(), ground.test(), ground.met());
            if (after.containsKey(key) && !before.containsKey(key)) {
                out.add(ground);
            }
        }
        return out;
    }

    /** What silenced the row, or lets it speak, in words: tests that were added, or those that were taken away. */
    List<String> tests(Claim now, Claim gone) {
        boolean changed = now != null && gone != null;
        if (before == null || after == null || changed || now != null && !met(now).isEmpty()) {
            return List.of();
        }
        Map<String, String> out = new LinkedHashMap<>(now == null ? after : before);
        out.keySet().removeAll((now == null ? before : after).keySet());
        return List.copyOf(out.values());
    }

    private static Map<String, String> tests(String rule, List<Sheet> sheets) {
        Map<String, String> out = null;
        for (Sheet sheet : sheets) {
            for (Row row : sheet.rows()) {
                if (row.origin().rule().equals(rule)) {
                    out = new LinkedHashMap<>();
                    collect(row.condition(), true, out);
                }
            }
        }
        return out;
    }

    /** @param wanted whether the condition must hold, or, within {@code none of}, must not */
    private static void collect(Condition condition, boolean wanted, Map<String, String> to) {
        if (condition instanceof Condition.PartsCondition group) {
            boolean parts = wanted != group instanceof Condition.NoneOf;
            group.parts().forEach(part -> collect(part, parts, to));
        } else if (condition instanceof Condition.MeasureCondition measured) {
            add(measured.measure().written(), measured.written(), wanted, measured.measure().written() + " " + measured.written(), to);
        } else if (condition instanceof Condition.DecisionCondition decided) {
            add(ChangeCause.DECIDED + decided.topic().name(), decided.written(), wanted, decided.topic().name() + " " + decided.written(), to);
        } else if (condition instanceof Condition.Stretches stretches) {
            String any = stretches.any() ? "any stretch with " : "no stretch with ";
            add(stretches.measure(), stretches.set().written(), wanted, any + stretches.set().written(), to);
        } else if (condition instanceof Condition.StretchShareCondition share) {
            add(share.measure(), share.written(), wanted, share.measure() + " " + share.written(), to);
        } else if (condition instanceof Condition.OccasionTest occasion) {
            String key = occasion.test().key();
            add(key, occasion.written(), wanted, key + " " + occasion.written(), to);
        }
    }

    private static void add(String measure, String test, boolean wanted, String words, Map<String, String> to) {
        to.put(key(measure, test, wanted), wanted ? words : "not " + words);
    }

    private static String key(String measure, String test, boolean met) {
        return measure + "\n" + test + "\n" + met;
    }
}
