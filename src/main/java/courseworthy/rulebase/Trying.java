package courseworthy.rulebase;

import courseworthy.rulebase.Tried.Failed;
import courseworthy.rulebase.Tried.Missing;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Holds rows against cases. */
public final class Trying {

    private Trying() {
    }

    /**
     * A situation in which a rule must speak, or not.
     *
     * @param fires whether it must speak
     */
    public record Touch(boolean fires, Situation facts) {
    }

    /** What is otherwise than a case says; null where nothing is. */
    public static Failed failed(Row row, Case one) {
        Stage stage = one.facts().after(row.condition().layer());
        if (row.condition().on(stage) == Truth.TRUE == one.fires()) {
            return null;
        }
        List<String> differences = new ArrayList<>();
        differences.add("must " + (one.fires() ? "speak, but stays silent" : "stay silent, but speaks"));
        differences.addAll(lines(row, stage));
        return new Failed(one.where(), one.rule(), one.sentence(), differences);
    }

    /** Each condition of a row with what was found at the end of a call. */
    public static List<String> lines(Row row, Situation end) {
        return lines(row, end.after(row.condition().layer()));
    }

    private static List<String> lines(Row row, Stage stage) {
        List<String> out = new ArrayList<>();
        for (Examined line : Examined.of(row, stage)) {
            out.add(words(line));
        }
        return out;
    }

    private static String words(Examined line) {
        StringBuilder out = new StringBuilder("  ".repeat(line.depth())).append(line.what());
        out.append(line.asked().isEmpty() ? "" : " " + line.asked()).append(": ");
        out.append(line.truth().name().toLowerCase(Locale.ROOT));
        if (!line.value().isEmpty() && line.truth() != Truth.UNKNOWN) {
            out.append(", found ").append(line.value()).append(line.off().isEmpty() ? "" : ", " + line.off());
        }
        return out.toString();
    }

    /** What of a row none of the situations touches: it speaking, it staying silent, each boundary, option and condition. */
    public static List<Missing> missing(Row row, List<Touch> touches) {
        List<Missing> out = new ArrayList<>();
        boolean fires = touches.stream().anyMatch(Touch::fires);
        boolean silent = touches.stream().anyMatch(touch -> !touch.fires());
        boolean always = row.condition().parts().isEmpty();
        if (!fires || !silent && !always) {
            String what = touches.isEmpty() ? "no case" : fires ? "no case in which it stays silent" : "no case in which it speaks";
            out.add(missing(row, what, touches.isEmpty() ? "cases under fires and silent" : fires ? "a silent case" : "a firing case"));
            return out;
        }
        for (Mutants.Mutant mutant : Mutants.of(row.condition())) {
            if (!noticed(row, mutant, touches)) {
                out.add(missing(row, "no case notices " + mutant.what(), mutant.lacking()));
            }
        }
        return out;
    }

    private static boolean noticed(Row row, Mutants.Mutant mutant, List<Touch> touches) {
        int layer = row.condition().layer();
        for (Touch touch : touches) {
            if (mutant.condition().on(touch.facts().after(layer)) == Truth.TRUE != touch.fires()) {
                return true;
            }
        }
        return false;
    }

    private static Missing missing(Row row, String what, String lacking) {
        return new Missing(row.author().where(), row.author().rule(), what, lacking);
    }
}
