package courseworthy.report;

import courseworthy.worth.ClimbInGear;
import courseworthy.worth.DrivetrainResult;
import courseworthy.worth.GearChoice;

/** Writes as a Markdown page what a course asks of the gears. */
final class GearsMarkdown {

    private final Marked page;
    private final GearChoice choice;

    GearsMarkdown(Marked page, GearChoice choice) {
        this.page = page;
        this.choice = choice;
    }

    /** The decided gears. */
    void all(int level) {
        for (String line : GearWords.basis(choice)) {
            page.paragraph(line);
        }
        DrivetrainResult decided = choice.decided();
        if (decided == null) {
            page.paragraph("The gears decided are none that are made together.");
            return;
        }
        steep(decided, level);
        page.heading(level, "At speed, in " + GearWords.gear(decided.drivetrain().hardest(), decided.circumference()));
        for (String line : GearWords.atSpeed(decided)) {
            page.bullet(line);
        }
        page.gap();
        page.emphasised(GearWords.SPUN_OUT_MEANS);
        use(decided, level);
    }

    private void steep(DrivetrainResult geared, int level) {
        page.heading(level, "Where it is steep, in " + GearWords.gear(geared.drivetrain().easiest(), geared.circumference()));
        if (geared.climbed().isEmpty()) {
            page.paragraph("No climb is known.");
            return;
        }
        page.tableHead("Piece", "Gradient", "Power", "Speed", "Cadence", "Torque");
        for (ClimbInGear climbed : geared.climbed()) {
            page.tableRow(climbed.kind().written(), Figures.percent(climbed.gradient(), 1), Figures.watts(climbed.power()),
                    Figures.speed(climbed.speed()), GearWords.turned(climbed, choice), Figures.torque(climbed.torque()));
        }
        page.gap();
        page.emphasised(GearWords.TORQUE_MEANS);
    }

    private void use(DrivetrainResult geared, int level) {
        page.heading(level, "Time in each gear, largest step " + GearWords.step(geared));
        page.tableHead("Gear", "Time");
        for (DrivetrainResult.Use use : geared.use()) {
            page.tableRow(use.gear().teeth(), Figures.time(use.seconds()));
        }
        page.gap();
        page.paragraph(GearWords.besides(geared, choice));
    }
}
