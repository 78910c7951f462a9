package courseworthy.report;

import courseworthy.demand.EstimatedRide.Kind;
import courseworthy.report.picture.Bar;
import courseworthy.report.picture.BarChart;
import courseworthy.ride.Range;
import courseworthy.task.Brief;
import courseworthy.task.GearsResult;
import courseworthy.worth.ClimbInGear;
import courseworthy.worth.DrivetrainResult;
import courseworthy.worth.Gear;
import courseworthy.worth.GearChoice;
import courseworthy.worth.Sprint;
import courseworthy.worth.SpunOut;
import java.util.ArrayList;
import java.util.List;

/** The gears that a course needs, and what common chainrings and cassettes give on it. */
public final class GearsReport {

    private static final String NO_DRIVETRAIN = "No real chainring and cassette combination gives the recommended gears.";
    private static final String ON_CLIMBS_MEANS = "Speed and cadence are for the power you would put out there on the last lap, as tired as you then are; "
            + "crank torque is the mean over a turn of the cranks.";
    private static final String SPUN_OUT_MEANS = "Spun out: the hardest gear at the highest cadence takes less power than you would put out. The cost is "
            + "compared with a gear that is hard enough, at the same power.";
    private static final String COMMON_MEANS = "Common chainring and cassette combinations for this kind of bike, none of them worse than another on every "
            + "count, closest to the recommendation first. What the manufacturer publishes for a drivetrain takes precedence.";

    private static final String SMOOTHED = "These times follow the elevation line of the course, in which short ramps are smoothed out.";
    /** What is spun out is known no better than to so much, m (judgement). */
    private static final double SHORT = 10;
    /** Less of a sprint than this is nothing, s (judgement). */
    private static final double NOTHING = 0.05;

    private GearsReport() {
    }

    public static Report of(GearsResult result) {
        Report.Builder out = ReportHead.of(result.brief(), "the gears this course needs")
                .caution(result.shortfall() == null ? "" : GearShortfallPhrases.full(result.shortfall()))
                .paragraph(built(result.brief()));
        addRecommended(out, result.choice());
        return out.section(common(result.choice())).build();
    }

    private static RichText built(Brief brief) {
        boolean none = brief.build() == null || brief.build().bike() == null;
        return none ? RichText.EMPTY : RichText.of("Chainrings and cassette of the build: ").quoted(brief.build().bike().name()).text(".");
    }

    /** The recommended gears: on the climbs, at speed, and how long each is used. */
    static void addRecommended(ContentBuilder<?> out, GearChoice choice) {
        out.paragraph("Rear tyre " + Phrases.number(choice.width() * 1000, 0) + " mm. Cadence: " + Phrases.number(choice.lowest().mid(), 0)
                + " rpm at the lowest, " + Phrases.number(choice.highest().mid(), 0) + " rpm at the highest; you shift at "
                + Phrases.number(choice.usual(), 0) + " rpm, half-way between.");
        DrivetrainResult recommended = choice.decided();
        if (recommended == null) {
            out.caution(NO_DRIVETRAIN);
        } else {
            out.section(onClimbs(recommended, choice)).section(atSpeed(recommended)).section(use(recommended, choice));
        }
    }

    private static Section.Builder onClimbs(DrivetrainResult geared, GearChoice choice) {
        Table.Builder table = Table.builder().column("Where").column("Cadence").column("Gradient").column("Power").column("Speed").column("Torque");
        for (ClimbInGear each : geared.climbed()) {
            table.row(RichText.of(each.kind().written()), RichText.ofStrong(cadence(each, choice)), RichText.of(Figures.percent(each.gradient(), 1)),
                    RichText.of(Figures.watts(each.power())), RichText.of(Figures.speed(each.speed())), RichText.of(Figures.torque(each.torque())));
        }
        boolean none = geared.climbed().isEmpty();
        return Section.builder("climbs", "On the climbs").aside("in " + gear(geared.drivetrain().easiest(), geared.circumference()))
                .paragraph(none ? "No climb is known." : "").table(table.build()).remark(none ? "" : ON_CLIMBS_MEANS);
    }

    /** {@code 34x50 (0.68, development 1.59 m)}. */
    private static String gear(Gear gear, double circumference) {
        return gear.teeth() + " (" + Phrases.number(gear.ratio(), 2) + ", development " + Phrases.number(gear.development(circumference), 2) + " m)";
    }

    private static String cadence(ClimbInGear climbed, GearChoice choice) {
        boolean spun = climbed.cadence().mid() > choice.highest().mid();
        return Figures.cadence(climbed.cadence()) + (climbed.walked() ? "; you walk" : spun ? "; you would be in a harder gear" : "");
    }

    private static Section.Builder atSpeed(DrivetrainResult geared) {
        List<RichText> lines = new ArrayList<>();
        lines.add(RichText.of("Spun out from " + Figures.speed(geared.hardest().topSpeed()) + "."));
        lines.add(RichText.of("Alone: " + spinning(geared.hardest().alone()) + "."));
        lines.add(RichText.of("In a group: " + spinning(geared.hardest().group()) + "."));
        if (geared.hardest().sprint() != null) {
            lines.add(RichText.of("In the sprint: " + sprint(geared.hardest().sprint()) + "."));
        }
        return Section.builder("top-speed", "At speed").aside("in " + gear(geared.drivetrain().hardest(), geared.circumference()))
                .bullets(lines).remark(SPUN_OUT_MEANS);
    }

    private static String spinning(SpunOut spinning) {
        if (spinning.none()) {
            return "never spun out";
        }
        String cost = Figures.time(spinning.cost());
        String most = spinning.cost().high() < 0.5 ? "nothing" : Figures.time(spinning.cost().high()) + " or less";
        return spinning.metres().mid() < SHORT / 2 ? "spun out on " + Figures.distance(tens(spinning.metres().high())) + " at most, which costs " + most : distance(spinning.metres()) + " spun out, which costs " + cost;
    }

    private static String distance(Range metres) {
        return metres.high() < 1000 ? Figures.range(Range.around(tens(metres.low()), tens(metres.mid()), tens(metres.high())), 0, "m")
                : Figures.range(metres.times(0.001), 1, "km");
    }

    private static double tens(double metres) {
        return SHORT * Math.round(metres / SHORT);
    }

    private static String sprint(Sprint sprint) {
        String speed = Figures.watts(sprint.power()) + " would hold " + Figures.speed(sprint.speed());
        return sprint.cost().high() < NOTHING ? speed + "; not limited by the gear"
                : speed + "; the gear costs " + (sprint.cost().mid() < NOTHING ? Phrases.number(sprint.cost().high(), 1) + " s or less" : Figures.range(sprint.cost(), 1, "s"))
                + " over 200 m";
    }

    private static Section.Builder use(DrivetrainResult geared, GearChoice choice) {
        List<Bar> bars = new ArrayList<>();
        List<String> written = new ArrayList<>();
        for (DrivetrainResult.GearTime each : geared.use()) {
            String time = Figures.time(each.seconds());
            bars.add(new Bar(each.gear().teeth(), each.seconds(), time));
            written.add(each.gear().teeth() + " " + time);
        }
        Figure figure = new Figure(RichText.EMPTY, new BarChart("Gear", "Time", bars), RichText.of(String.join(", ", written) + "."));
        return Section.builder("time-in-gears", "Time in each gear").aside("largest step " + step(geared)).figure(figure)
                .paragraph("Coasting and braking " + Figures.time(geared.coasting()) + "; on foot " + Figures.time(geared.walking())
                        + "; in the easiest gear below " + Phrases.number(choice.lowest().mid(), 0) + " rpm " + Figures.time(geared.grinding()) + ".")
                .paragraph(isSmoothedOut(geared, choice) ? SMOOTHED : "");
    }

    /** Whether a piece is walked, or ground up, of which the times know nothing. */
    private static boolean isSmoothedOut(DrivetrainResult geared, GearChoice choice) {
        boolean walked = geared.climbed().stream().anyMatch(ClimbInGear::walked);
        boolean ground = geared.climbed().stream().anyMatch(each -> !each.walked() && each.cadence().mid() < choice.lowest().mid());
        return walked && geared.walking() == 0 || ground && geared.grinding() == 0;
    }

    private static Section.Builder common(GearChoice choice) {
        List<DrivetrainResult> shown = new ArrayList<>(choice.common());
        if (choice.decided() != null) {
            shown.add(0, choice.decided());
        }
        boolean climb = shown.stream().anyMatch(each -> !cadence(each, Kind.LAST_CLIMB).isEmpty());
        Table.Builder table = Table.builder().column("Chainrings and cassette");
        if (climb) {
            table.figures("Last climb");
        }
        table.figures("Steepest 100 m").figures("Spun out from").figures("Costs alone").figures("Largest step");
        for (DrivetrainResult each : shown) {
            List<RichText> row = row(each, climb);
            table.row(each == choice.decided() ? row.stream().map(cell -> cell.in(Style.STRONG)).toList() : row);
        }
        return Section.builder("other-gearing", "Other common gearing").aside("cadence in the easiest gear").table(table.build()).remark(COMMON_MEANS);
    }

    private static List<RichText> row(DrivetrainResult geared, boolean climb) {
        List<RichText> out = new ArrayList<>();
        out.add(RichText.of(geared.drivetrain().teeth()));
        if (climb) {
            out.add(RichText.of(cadence(geared, Kind.LAST_CLIMB)));
        }
        out.add(RichText.of(cadence(geared, Kind.HUNDRED)));
        out.add(RichText.of(Figures.speed(geared.hardest().topSpeed().mid())));
        out.add(RichText.of(Figures.time(geared.hardest().alone().cost().mid())));
        out.add(RichText.of(step(geared)));
        return out;
    }

    /** The cadence on a piece, empty where the piece is not known. */
    private static String cadence(DrivetrainResult geared, Kind kind) {
        for (ClimbInGear climbed : geared.climbed()) {
            if (climbed.kind() == kind) {
                return Phrases.number(climbed.cadence().mid(), 0) + " rpm";
            }
        }
        return "";
    }

    private static String step(DrivetrainResult geared) {
        return Figures.percent(geared.drivetrain().largestStep());
    }
}
