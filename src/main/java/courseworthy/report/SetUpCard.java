package courseworthy.report;

import courseworthy.report.SetUpSummary.Entry;
import courseworthy.task.Brief;
import courseworthy.worth.PressureSettings;
import java.util.ArrayList;
import java.util.List;

/** The set-up as a card: a few values large enough to be read from the bike, what belongs to each in a line below it. */
final class SetUpCard {

    /** Goes without saying where there is one value. */
    private static final String BOTH_ENDS = " front and rear";

    private SetUpCard() {
    }

    static Section.Builder section(Brief brief) {
        List<Definition> rows = new ArrayList<>();
        for (Entry entry : SetUpSummary.of(brief)) {
            rows.add(entry.about().equals(SetUpSummary.PRESSURE) ? pressure(brief, entry) : entry.about().equals(SetUpSummary.BUILD) ? build(entry) : row(entry));
        }
        return Section.builder("in-short", "In short").settings(rows);
    }

    private static Definition row(Entry entry) {
        List<String> leading = new ArrayList<>();
        List<String> more = new ArrayList<>();
        entry.parts().subList(0, entry.leading()).forEach(part -> split(part, leading, more));
        more.addAll(entry.parts().subList(entry.leading(), entry.parts().size()));
        return row(entry.about(), leading, RichText.ofQuoted(String.join(", ", more)));
    }

    private static Definition row(String about, List<String> leading, RichText more) {
        Definition row = Definition.of(about, RichText.ofQuoted(String.join(", ", leading)));
        return more.isEmpty() ? row : row.details(List.of(more));
    }

    /** Those of the tyres that are ridden, which may be others than those recommended. */
    private static Definition pressure(Brief brief, Entry entry) {
        PressureSettings set = brief.outlook().pressures();
        List<String> start = set == null ? List.of() : SettingReport.atTheStart(set);
        return start.isEmpty() ? row(entry) : row(entry.about(), start, RichText.of(SettingReport.toPump(set)));
    }

    private static Definition build(Entry entry) {
        return row(entry.about(), List.of(entry.parts().get(0)), RichText.EMPTY.crossReference("its parts, and what to change", BuildReport.ID));
    }

    /** What stands in brackets is of the second line, but for another unit of the same. */
    private static void split(String part, List<String> leading, List<String> more) {
        int bracket = part.indexOf(" (");
        if (bracket < 0 || part.endsWith(" psi)") || !part.endsWith(")")) {
            leading.add(part.replace(BOTH_ENDS, ""));
        } else {
            leading.add(part.substring(0, bracket));
            more.add(part.substring(bracket + 2, part.length() - 1));
        }
    }
}
