package courseworthy.report;

import courseworthy.call.CloseThreshold;
import courseworthy.call.Firmness;
import courseworthy.demand.MeasureScale;
import courseworthy.report.SetUpSummary.Entry;
import courseworthy.task.Brief;
import courseworthy.task.LeastFirm;
import courseworthy.task.MissingInputs;
import courseworthy.worth.GearShortfall;
import courseworthy.worth.PressureSettings;
import java.util.ArrayList;
import java.util.List;

/** The set-up as a card: a few values large enough to be read from the bike, what belongs to each in a line below it. */
final class SetUpCard {

    /** Goes without saying where there is one value. */
    static final String BOTH_ENDS = " front and rear";

    /** The section on what is not firm. */
    static final String CHECK_FIRST = "check-first";

    private SetUpCard() {
    }

    static Section.Builder section(Brief brief) {
        List<Definition> rows = new ArrayList<>();
        for (Entry entry : SetUpSummary.of(brief)) {
            rows.add(switch (entry.about()) {
                case SetUpSummary.PRESSURE -> pressure(brief, entry);
                case SetUpSummary.GEARS -> gears(brief, entry);
                case SetUpSummary.BUILD -> build(entry);
                case SetUpSummary.TOO_HARD -> tooHard(brief.outlook().shortfall());
                default -> row(entry);
            });
        }
        return Section.builder("in-short", "In short").settings(rows).note(leastFirm(brief.leastFirm()))
                .caution(Phrases.missingGround(brief)).caution(GroundPhrases.mayChange(brief));
    }

    static final String LEAST_FIRM = "Least firm, and what would settle it:";

    /** The least firm decision and what would settle it, with the names of those that come next; empty where all are firm. */
    private static RichText leastFirm(List<LeastFirm> all) {
        if (all.isEmpty()) {
            return RichText.EMPTY;
        }
        RichText first = RichText.of("Least sure: ").append(leastSure(all.get(0)));
        List<String> next = all.subList(1, all.size()).stream().map(each -> each.decision().topic().name()).toList();
        return next.isEmpty() ? first : first.text(" ").crossReference("Next: " + String.join(", ", next), CHECK_FIRST).text(".");
    }

    /** {@code fork travel 120 mm (one habit).}; what it is now stands above, and is left out where more follows. */
    private static RichText leastSure(LeastFirm each) {
        String topic = each.decision().topic().name();
        if (each.close() == null && each.wanted().isEmpty() && each.firmness().assumed().isEmpty()) {
            return RichText.of(topic + " ").quoted(each.decision().phrase()).text(" (" + basis(each.firmness()) + ").");
        }
        return settled(each, RichText.of(topic + (each.close() == null ? "" : " (close call)")));
    }

    /** What a decision rests on, in a word or two. */
    private static String basis(Firmness firmness) {
        return firmness.agreement() == Firmness.AgreementGrade.DIVIDED ? "advice differs" : switch (firmness.evidence()) {
            case LIMIT -> "a limit";
            case SOURCE -> "published";
            case PRACTICES -> "habits of the trade";
            case PRACTICE -> "one habit";
            case OPINION -> "one opinion";
            case NONE -> "no advice";
        };
    }

    /** {@code bike (fair, close). A look at the ground: at a ledge height of 20 cm instead of 50 cm it would be gravel.} */
    static RichText leastFirm(LeastFirm each) {
        return settled(each, RichText.of(each.decision().topic().name() + " ").quoted(each.decision().phrase())
                .append(firmness(each)).text(". " + Phrases.capital(each.means().words())));
    }

    private static RichText firmness(LeastFirm each) {
        return RichText.of(" (").append(Phrases.standing(each.firmness().level())).text((each.close() == null ? "" : ", close") + ")");
    }

    /** What would settle it, behind its name. */
    private static RichText settled(LeastFirm each, RichText name) {
        if (each.close() != null) {
            CloseThreshold close = each.close();
            MeasureScale scale = close.measure().scale();
            return name.text(": with " + close.measure().written() + " " + scale.text(close.threshold()) + " instead of " + scale.text(close.from())
                    + " it would be ").quoted(close.otherwise().phrase()).text(".");
        }
        if (!each.wanted().isEmpty()) {
            MissingInputs wanted = each.wanted().get(0);
            return name.text(": give ").append(RichText.join(" and ", wanted.keys().stream().limit(2).map(RichText.EMPTY::code).toList()))
                    .text(" (" + wanted.place().word() + ").");
        }
        if (!each.firmness().assumed().isEmpty()) {
            return name.text(": so far assumed, " + each.firmness().assumed().get(0) + ".");
        }
        return name.text(each.firmness().agreement() == Firmness.AgreementGrade.ALL ? ": little is known of it." : ": advice differs.");
    }

    private static Definition row(Entry entry) {
        List<String> leading = new ArrayList<>();
        List<String> more = new ArrayList<>();
        List<String> first = entry.parts().subList(0, entry.leading());
        first.forEach(part -> split(part.replace(SetUpSummary.UNSURE, ""), leading, more));
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

    /** Those of the build, which may be others than those recommended. */
    private static Definition gears(Brief brief, Entry entry) {
        boolean built = brief.build() != null && brief.build().bike() != null && brief.roadBook() != null && brief.roadBook().drivetrain() != null;
        return built ? row(entry.about(), List.of(brief.roadBook().drivetrain().teeth()), RichText.ofQuoted("recommended: " + entry.values())) : row(entry);
    }

    private static Definition tooHard(GearShortfall shortfall) {
        return row(SetUpSummary.TOO_HARD, List.of(GearShortfallPhrases.shortest(shortfall)), RichText.ofQuoted(GearShortfallPhrases.needed(shortfall)));
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
            leading.add(part.substring(0, bracket).replace(BOTH_ENDS, ""));
            more.add(part.substring(bracket + 2, part.length() - 1));
        }
    }
}
