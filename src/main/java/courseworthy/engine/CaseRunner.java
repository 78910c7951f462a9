package courseworthy.engine;

import courseworthy.engine.CaseResults.FailedCase;
import courseworthy.engine.CaseResults.MissingCase;
import courseworthy.sheet.ConditionMutants;
import courseworthy.sheet.ConditionTrace;
import courseworthy.sheet.OutputMutants;
import courseworthy.sheet.Row;
import courseworthy.sheet.RowOutput;
import courseworthy.sheet.RuleCase;
import courseworthy.sheet.Situation;
import courseworthy.sheet.Stage;
import courseworthy.sheet.Truth;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

/** Holds rows against cases. */
public final class CaseRunner {

    private CaseRunner() {
    }

    /**
     * A situation in which a rule must speak, or not.
     *
     * @param fires    whether it must speak
     * @param expected the case that says what must come of it; null where nothing does
     */
    public record Touch(boolean fires, Situation facts, RuleCase expected) {

        /** A situation in which only that it speaks, or not, is asked for. */
        public Touch(boolean fires, Situation facts) {
            this(fires, facts, null);
        }

        public static Touch of(RuleCase one) {
            return new Touch(one.fires(), one.facts(), one.expects() ? one : null);
        }
    }

    /** What is otherwise than a case says; null where nothing is. */
    public static FailedCase failed(Row row, RuleCase one) {
        Stage stage = one.facts().after(row.condition().layer());
        if (row.condition().on(stage) == Truth.TRUE == one.fires()) {
            RowOutput output = RowOutput.of(row, one.facts());
            return !one.fires() || one.met(output) ? null : new FailedCase(one.where(), one.rule(), one.sentence(), differences(one, output));
        }
        List<String> differences = new ArrayList<>();
        differences.add("must " + (one.fires() ? "apply, but does not" : "not apply, but does"));
        differences.addAll(lines(row, stage));
        return new FailedCase(one.where(), one.rule(), one.sentence(), differences);
    }

    /** What a row gives otherwise than a case expects, each in one line. */
    static List<String> differences(RuleCase one, RowOutput output) {
        List<String> out = new ArrayList<>();
        if (one.says() != null) {
            differences("says", output.says(), one.says(), out);
        }
        if (one.does() != null) {
            differences("does", output.does(), one.does(), out);
        }
        return out;
    }

    private static void differences(String key, List<String> found, List<String> expected, List<String> out) {
        found.stream().filter(line -> !expected.contains(line)).forEach(line -> out.add(key + " " + line + ", which is not expected"));
        expected.stream().filter(line -> !found.contains(line)).forEach(line -> out.add("must have " + key + " " + line));
    }

    /** Each condition of a row with what was found at the end of a call. */
    public static List<String> lines(Row row, Situation end) {
        return lines(row, end.after(row.condition().layer()));
    }

    private static List<String> lines(Row row, Stage stage) {
        List<String> out = new ArrayList<>();
        for (ConditionTrace line : ConditionTrace.of(row, stage)) {
            out.add(words(line));
        }
        return out;
    }

    private static String words(ConditionTrace line) {
        StringBuilder out = new StringBuilder("  ".repeat(line.depth())).append(line.what());
        out.append(line.asked().isEmpty() ? "" : " " + line.asked()).append(": ");
        out.append(line.truth().name().toLowerCase(Locale.ROOT));
        if (!line.value().isEmpty() && line.truth() != Truth.UNKNOWN) {
            out.append(", found ").append(line.value()).append(line.off().isEmpty() ? "" : ", " + line.off());
        }
        return out.toString();
    }

    /** What of a row none of the situations touches: it speaking, it staying silent, each boundary, option and condition. */
    public static List<MissingCase> missing(Row row, List<Touch> touches) {
        List<MissingCase> out = new ArrayList<>();
        boolean fires = touches.stream().anyMatch(Touch::fires);
        boolean silent = touches.stream().anyMatch(touch -> !touch.fires());
        boolean always = row.condition().parts().isEmpty();
        if (!fires || !silent && !always) {
            String what = touches.isEmpty() ? "no case" : fires ? "no case in which it does not apply" : "no case in which it applies";
            out.add(missing(row, what, touches.isEmpty() ? "cases under fires and silent" : fires ? "a silent case" : "a firing case"));
            return out;
        }
        for (ConditionMutants.ConditionMutant mutant : ConditionMutants.of(row.condition())) {
            if (!noticed(row, mutant, touches)) {
                out.add(missing(row, "no case notices " + mutant.what(), mutant.lacking()));
            }
        }
        out.addAll(missingOutput(row, touches));
        return out;
    }

    /** What of that which a row gives could be otherwise, and no case would notice. */
    static List<MissingCase> missingOutput(Row row, List<Touch> touches) {
        List<RuleCase> expected = touches.stream().map(Touch::expected).filter(Objects::nonNull).filter(RuleCase::fires).toList();
        Situation facts = touches.stream().filter(Touch::fires).map(Touch::facts).findFirst().orElse(Situation.NONE);
        List<String> unknown = RowOutput.unknown(row, facts);
        String lacking = unknown.isEmpty() ? RowOutput.of(row, facts).written() + " to a firing case"
                : String.join(" and ", unknown) + " to a firing case, and what it then says";
        if (expected.isEmpty()) {
            return List.of(missing(row, "no case has what it says", lacking));
        }
        List<MissingCase> out = new ArrayList<>();
        for (OutputMutants.OutputMutant mutant : OutputMutants.of(row)) {
            if (expected.stream().allMatch(one -> one.met(RowOutput.of(mutant.row(), one.facts())))) {
                out.add(missing(row, "no case notices " + mutant.what(), lacking));
            }
        }
        return out;
    }

    private static boolean noticed(Row row, ConditionMutants.ConditionMutant mutant, List<Touch> touches) {
        int layer = row.condition().layer();
        for (Touch touch : touches) {
            if (mutant.condition().on(touch.facts().after(layer)) == Truth.TRUE != touch.fires()) {
                return true;
            }
        }
        return false;
    }

    private static MissingCase missing(Row row, String what, String lacking) {
        return new MissingCase(row.origin().where(), row.origin().rule(), what, lacking);
    }
}
