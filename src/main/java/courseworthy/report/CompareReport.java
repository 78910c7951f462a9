package courseworthy.report;

import courseworthy.ride.Range;
import courseworthy.task.Brief;
import courseworthy.task.CompareResult;
import courseworthy.topic.Topics;
import courseworthy.worth.BreakEven;
import courseworthy.worth.ClimbInGear;
import courseworthy.worth.SetUp;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** Set-ups side by side, the recommended one first. */
public final class CompareReport {

    private static final String MEANS = "Each set-up is recalculated in full with your choices fixed; limits still apply. Times are riding times at the same "
            + "effort. Work is at the crank. What parts weigh and cost in drag and rolling is common practice with a wide range.";

    private static final String BUILD_MEANS = "The build of your workshop is taken as it is mounted, even where a rule says otherwise: the brief lists what its parts fall short of.";

    private CompareReport() {
    }

    public static Report of(CompareResult result) {
        List<SetUp> setUps = result.setUps();
        Report.Builder out = ReportHead.of(result.brief(), "set-ups side by side").table(table(setUps));
        for (int i = 1; i < setUps.size(); i++) {
            SetUp setUp = setUps.get(i);
            Section.Builder section = Section.builder("set-up-" + i, RichText.of(Phrases.capital(letter(i)) + ": ").quoted(setUp.written()));
            setUp.refused().forEach(each -> section.caution(refusal(result.brief(), each)));
            String chosen = result.build() && i == 1 ? "What its parts change:" : "Your choice:";
            out.section(section.bullets(chosen, changes(result.brief(), setUp, true)).bullets("What follows from it:", changes(result.brief(), setUp, false)).paragraphs(notes(setUp)));
        }
        return out.section(Section.builder("method", "How this is worked out").paragraph(MEANS).paragraph(result.build() ? BUILD_MEANS : "")).build();
    }

    /** The set-ups by letter: the first is the recommended. */
    private static String letter(int setUp) {
        return setUp == 0 ? "recommended" : "set-up " + (char) ('A' + setUp - 1);
    }

    /** A set-up's column by its letter; one that is not what was asked for says so, and which bike it shows. */
    public static String heading(List<SetUp> setUps, int setUp) {
        SetUp shown = setUps.get(setUp);
        SetUp.RefusedValue bike = shown.refusedBike();
        if (bike != null) {
            return letter(setUp) + ": " + bike.here() + ", not " + bike.asked();
        }
        return shown.asAsked() ? letter(setUp) : letter(setUp) + ", not as asked";
    }

    private static Table table(List<SetUp> setUps) {
        Table.Builder out = Table.builder().keyColumns(2).column("");
        for (int i = 0; i < setUps.size(); i++) {
            out.column(heading(setUps, i));
        }
        row(out, "riding time", setUps, each -> Figures.time(each.riding()));
        row(out, "against recommended", setUps, CompareReport::against);
        row(out, "work", setUps, each -> Phrases.number(each.work() / 1000, 0) + " kJ");
        row(out, "mass", setUps, each -> mass(each.effect().mass()));
        row(out, "last long climb", setUps, each -> cadence(each.gears().climbed()));
        row(out, "steepest 100 m", setUps, each -> cadence(each.gears().steepest()));
        row(out, "spun out from", setUps, each -> each.gears().topSpeed() == null ? "" : Figures.speed(each.gears().topSpeed()));
        row(out, "break-even", setUps, each -> each.breakEven() == null ? "" : breakEven(each.breakEven()));
        return out.build();
    }

    private static void row(Table.Builder table, String what, List<SetUp> setUps, Function<SetUp, String> cell) {
        List<RichText> cells = new ArrayList<>();
        cells.add(RichText.of(what));
        setUps.forEach(each -> cells.add(RichText.of(cell.apply(each))));
        if (cells.stream().skip(1).anyMatch(each -> !each.isEmpty())) {
            table.row(cells);
        }
    }

    private static String against(SetUp setUp) {
        return setUp.returned().mid() == 0 ? setUp.changes().isEmpty() ? "" : "no difference" : WorthReport.returns(setUp.returned());
    }

    private static String mass(Range mass) {
        return mass.isExact() && mass.mid() == 0 ? "" : WorthReport.mass(mass);
    }

    private static String cadence(ClimbInGear climbed) {
        return climbed == null ? "" : Figures.cadence(climbed.cadence());
    }

    private static String breakEven(BreakEven even) {
        return WorthReport.odds(even, even.faster().equals("recommended") ? "the recommended" : "it");
    }

    private static String refusal(Brief brief, SetUp.RefusedValue refused) {
        boolean stays = brief.on(refused.topic()).phrase().equals(refused.here());
        return Phrases.capital(refused.topic().name()) + " cannot be " + refused.asked() + (stays ? " and stays " : "; the nearest that can be is ") + refused.here()
                + (refused.by().isEmpty() ? "." : ", because of " + String.join(", ", refused.by()) + ".");
    }

    /** What differs, with how firm the recommendation is where another value is asked for. */
    private static List<RichText> changes(Brief brief, SetUp setUp, boolean asked) {
        List<RichText> out = new ArrayList<>();
        for (SetUp.SetUpDifference each : setUp.changes()) {
            if (each.asked() == asked) {
                String firmness = asked ? Phrases.firmness(brief, brief.on(each.topic())) : "";
                out.add(RichText.of(each.topic().name() + " ").strong(each.here()).text(" instead of " + each.recommended() + (firmness.isEmpty() ? "" : " (" + firmness + ")")));
            }
        }
        return out;
    }

    private static List<RichText> notes(SetUp setUp) {
        List<RichText> out = new ArrayList<>();
        if (setUp.changes().isEmpty() && setUp.refused().isEmpty()) {
            out.add(RichText.of("Nothing differs from the recommendation."));
        }
        if (setUp.changes().stream().anyMatch(each -> each.topic() == Topics.BIKE)) {
            out.add(RichText.of("The ride is recalculated on this bike: where it is not your own, with the usual mass, tyres and position of its kind."));
        }
        if (!setUp.uncounted().isEmpty()) {
            out.add(RichText.of("The effect of " + Phrases.list(setUp.uncounted()) + " is not included."));
        }
        return out;
    }
}
