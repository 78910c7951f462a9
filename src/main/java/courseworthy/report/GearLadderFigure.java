package courseworthy.report;

import courseworthy.report.picture.GearLadder;
import courseworthy.report.picture.GearLadder.Rung;
import courseworthy.report.picture.GearLadder.SpeedMark;
import courseworthy.report.picture.GearLadder.SteepMark;
import courseworthy.task.Brief;
import courseworthy.worth.HeldGradients;
import courseworthy.worth.HeldGradients.HeldGear;
import java.util.ArrayList;
import java.util.List;

/** The gears of a brief over the gradients that they hold late in the day. */
final class GearLadderFigure {

    private GearLadderFigure() {
    }

    /** Null where no ride was estimated or no gears are known. */
    static Figure of(Brief brief) {
        HeldGradients held = brief.heldGradients();
        if (held == null) {
            return null;
        }
        List<SpeedMark> speeds = new ArrayList<>();
        if (held.useful() != null) {
            speeds.add(new SpeedMark("fastest you pedal", Ranges.of(held.useful())));
        }
        speeds.add(new SpeedMark("spun out in " + held.drivetrain().hardest().teeth(), Ranges.of(held.topSpeed())));
        GearLadder ladder = new GearLadder(held.gears().stream().map(GearLadderFigure::rung).toList(),
                held.steep().stream().map(GearLadderFigure::piece).toList(), speeds);
        return new Figure(RichText.of(title(held)), ladder, RichText.of(sentence(held)), data(held));
    }

    private static Rung rung(HeldGear each) {
        return new Rung(each.gear().teeth(), each.gear().ring(), each.gear().sprocket(), each.flattest(), each.steepest(), each.slowest(), each.fastest(),
                each.seconds());
    }

    private static SteepMark piece(HeldGradients.SteepPiece each) {
        return new SteepMark(each.piece().kind().written(), Ranges.of(each.piece().gradient()), each.piece().middle(), each.held(),
                Ranges.of(each.climbed().cadence()));
    }

    private static String title(HeldGradients held) {
        String gear = "The lowest gear, " + held.drivetrain().easiest().teeth() + ", ";
        HeldGradients.SteepPiece hardest = held.hardest();
        return hardest == null ? gear + "holds " + percent(held.gears().get(0).steepest()) + " late in the day"
                : gear + (hardest.climbed().walked() ? "is walked on the " : hardest.held() ? "holds the " : "is too hard on the ") + hardest.piece().kind().written();
    }

    private static String sentence(HeldGradients held) {
        HeldGear easiest = held.gears().get(0);
        HeldGradients.SteepPiece hardest = held.hardest();
        return "On the " + Figures.watts(held.power()) + " left late in the day " + easiest.gear().teeth() + " holds up to " + percent(easiest.steepest())
                + " at " + Phrases.number(held.lowest().mid(), 0) + " rpm" + (hardest == null ? "" : "; the " + hardest.piece().kind().written() + ", "
                + Figures.percent(hardest.piece().gradient(), 1) + ", is turned at " + Figures.cadence(hardest.climbed().cadence()) + " on the power you put out there")
                + "; " + held.drivetrain().hardest().teeth() + " is spun out from " + Figures.speed(held.topSpeed().mid()) + ".";
    }

    private static String percent(double gradient) {
        return Phrases.number(100 * gradient, 1) + " %";
    }

    private static Table data(HeldGradients held) {
        Table.Builder out = Table.builder().column("Gear").figures("Flattest").figures("Steepest").figures("Speed, km/h").figures("In use");
        for (HeldGear each : held.gears()) {
            out.row(each.gear().teeth(), percent(each.flattest()), percent(each.steepest()),
                    Phrases.number(3.6 * each.slowest(), 1) + " to " + Phrases.number(3.6 * each.fastest(), 1), Figures.time(each.seconds()));
        }
        for (HeldGradients.SteepPiece each : held.steep()) {
            out.row(each.piece().kind().written(), "", Figures.percent(each.piece().gradient(), 1), "", Figures.cadence(each.climbed().cadence()));
        }
        return out.build();
    }
}
