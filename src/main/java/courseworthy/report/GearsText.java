package courseworthy.report;

import courseworthy.report.Page.Weight;
import courseworthy.worth.ClimbInGear;
import courseworthy.worth.DrivetrainResult;
import courseworthy.worth.GearChoice;

/** Writes for the terminal what a course asks of the gears. */
final class GearsText {

    private static final int BAR = 40;

    private final Page page;
    private final GearChoice choice;

    GearsText(Page page, GearChoice choice) {
        this.page = page;
        this.choice = choice;
    }

    /** The decided gears. */
    void all() {
        for (String line : GearWords.basis(choice)) {
            page.text(0, 2, line, Weight.PLAIN);
        }
        DrivetrainResult decided = choice.decided();
        if (decided == null) {
            page.gap();
            page.text(0, 2, "The gears decided are none that are made together.", Weight.ALERT);
            return;
        }
        steep(decided);
        speed(decided);
        use(decided);
    }

    private void steep(DrivetrainResult geared) {
        page.heading("WHERE IT IS STEEP, in " + GearWords.gear(geared.drivetrain().easiest(), geared.circumference()));
        if (geared.climbed().isEmpty()) {
            page.text(2, 2, "No climb is known.", Weight.PLAIN);
            return;
        }
        for (ClimbInGear climbed : geared.climbed()) {
            page.row(climbed.kind().written(), 18, GearWords.turned(climbed, choice), Weight.BOLD, "", 0, Weight.PLAIN);
            page.text(20, 20, Figures.percent(climbed.gradient(), 1) + ", " + Figures.watts(climbed.power()) + ", "
                    + Figures.speed(climbed.speed()) + ", " + Figures.torque(climbed.torque()), Weight.PLAIN);
        }
        page.text(2, 2, GearWords.TORQUE_MEANS, Weight.FAINT);
    }

    private void speed(DrivetrainResult geared) {
        page.heading("AT SPEED, in " + GearWords.gear(geared.drivetrain().hardest(), geared.circumference()));
        for (String line : GearWords.atSpeed(geared)) {
            page.text(2, 4, line, Weight.PLAIN);
        }
        page.text(2, 2, GearWords.SPUN_OUT_MEANS, Weight.FAINT);
    }

    private void use(DrivetrainResult geared) {
        page.heading("TIME IN EACH GEAR, largest step " + GearWords.step(geared));
        double most = 1;
        for (DrivetrainResult.Use use : geared.use()) {
            most = Math.max(most, use.seconds());
        }
        for (DrivetrainResult.Use use : geared.use()) {
            page.row(use.gear().teeth(), 8, pad(Figures.time(use.seconds()), 8) + "  " + "\u2588".repeat((int) Math.round(BAR * use.seconds() / most)),
                    Weight.PLAIN, "", 0, Weight.PLAIN);
        }
        page.text(2, 2, GearWords.besides(geared, choice), Weight.PLAIN);
    }

    private static String pad(String text, int columns) {
        return " ".repeat(Math.max(0, columns - text.length())) + text;
    }
}
