package courseworthy.report;

import courseworthy.ride.Range;
import courseworthy.worth.BreakEven;
import courseworthy.worth.ClimbInGear;
import courseworthy.worth.SetUp;
import java.util.ArrayList;
import java.util.List;

/** What stands in the rows of a comparison, the same for every output that is read by people. */
public final class CompareWords {

    private CompareWords() {
    }

    /** One row: what, and a cell for each set-up. */
    record Row(String what, List<String> cells) {
    }

    /** The set-ups by letter: the first is the recommended. */
    static String letter(int setUp) {
        return setUp == 0 ? "recommended" : "set-up " + (char) ('A' + setUp - 1);
    }

    /** A set-up's column by its letter; one that is not what was asked for says so, and which bike it shows. */
    public static String heading(List<SetUp> setUps, int setUp) {
        SetUp shown = setUps.get(setUp);
        SetUp.Refusal bike = shown.refusedBike();
        if (bike != null) {
            return letter(setUp) + ": " + bike.here() + ", not " + bike.asked();
        }
        return shown.asAsked() ? letter(setUp) : letter(setUp) + ", not as asked";
    }

    static List<Row> rows(List<SetUp> setUps) {
        List<Row> out = new ArrayList<>();
        out.add(row("riding time", setUps, each -> Figures.time(each.riding())));
        out.add(row("against recommended", setUps, CompareWords::against));
        out.add(row("work", setUps, each -> Phrases.number(each.work() / 1000, 0) + " kJ"));
        out.add(row("mass", setUps, each -> mass(each.effect().mass())));
        out.add(row("last long climb", setUps, each -> cadence(each.climbed())));
        out.add(row("steepest 100 m", setUps, each -> cadence(each.steepest())));
        out.add(row("spun out from", setUps, each -> each.topSpeed() == null ? "" : Figures.speed(each.topSpeed())));
        out.add(row("break-even", setUps, each -> each.breakEven() == null ? "" : even(each.breakEven())));
        return out;
    }

    private interface Cell {
        String of(SetUp setUp);
    }

    private static Row row(String what, List<SetUp> setUps, Cell cell) {
        List<String> cells = new ArrayList<>();
        for (SetUp each : setUps) {
            cells.add(cell.of(each));
        }
        return new Row(what, cells);
    }

    private static String against(SetUp setUp) {
        return setUp.returned().isExact() && setUp.returned().mid() == 0 ? setUp.changes().isEmpty() ? "" : "no difference"
                : WorthWords.returns(setUp.returned());
    }

    private static String mass(Range mass) {
        return mass.isExact() && mass.mid() == 0 ? "" : WorthWords.mass(mass);
    }

    private static String cadence(ClimbInGear climbed) {
        return climbed == null ? "" : Figures.cadence(climbed.cadence());
    }

    private static String even(BreakEven even) {
        return WorthWords.odds(even, even.faster().equals("recommended") ? "the recommended" : "it");
    }

    /** What differs, in lines. */
    static List<String> differences(SetUp setUp) {
        List<String> out = new ArrayList<>();
        for (SetUp.Refusal each : setUp.refused()) {
            out.add("! " + each.topic().name() + " cannot be " + each.asked() + " and stays " + each.here()
                    + (each.by().isEmpty() ? "." : ": " + String.join(", ", each.by()) + " stands against it."));
        }
        for (SetUp.Difference each : setUp.changes()) {
            out.add((each.asked() ? "" : "with it ") + each.topic().name() + " " + each.here() + " in place of " + each.recommended() + ".");
        }
        if (setUp.changes().isEmpty() && setUp.refused().isEmpty()) {
            out.add("Nothing differs from the recommended.");
        }
        if (another(setUp)) {
            out.add("Ridden anew: where it is not the bike at hand, with the usual mass, tyres and position of its kind.");
        }
        if (!setUp.uncounted().isEmpty()) {
            out.add("Not in these figures: what " + String.join(", ", setUp.uncounted()) + (setUp.uncounted().size() == 1 ? " does." : " do."));
        }
        return out;
    }

    private static boolean another(SetUp setUp) {
        for (SetUp.Difference each : setUp.changes()) {
            if (each.topic().name().equals("bike")) {
                return true;
            }
        }
        return false;
    }

    static final String MEANS = "Each set-up is the whole call made anew with what was asked for fixed; limits still go first. Times are for riding,"
            + " at the same effort. Work is at the crank. What parts weigh and cost in drag and rolling is common practice with a wide range.";
}
