package courseworthy.worth;

import courseworthy.call.Call;
import courseworthy.demand.EstimatedRide;
import courseworthy.demand.EstimatedRide.RidePiece;
import courseworthy.demand.Measure;
import courseworthy.demand.MeasureValue;
import courseworthy.engine.ShippedRules;
import courseworthy.ride.PowerBalance;
import courseworthy.ride.Range;
import courseworthy.ride.RideEstimate;
import java.util.ArrayList;
import java.util.List;

/**
 * The gradients that each gear holds on the power that is left at the end of a ride: turned at the rider's lowest cadence the steepest, at the
 * highest the flattest. Air is still and as dense as at the start; the ground is that of the place where the easiest gear is asked for.
 *
 * @param drivetrain whose gears they are
 * @param power      uphill at the end of the ride, W
 * @param rolling    rolling resistance coefficient of the ground
 * @param lowest     cadence the rider turns for long on a climb, a minute
 * @param highest    cadence the rider turns for long, a minute
 * @param gears      the easiest first
 * @param steep      the steep pieces of the course, each on the power that is ridden there
 * @param topSpeed   where the hardest gear is spun out, m/s
 * @param useful     the fastest that pedalling pays, m/s; null where it is not known
 */
public record HeldGradients(Drivetrain drivetrain, Range power, double rolling, Range lowest, Range highest, List<HeldGear> gears, List<SteepPiece> steep,
        Range topSpeed, Range useful) {

    /** Nothing steeper is ridden, up or down (practice: roads and trails end about there). */
    private static final double STEEPEST = 0.60;

    public HeldGradients {
        gears = List.copyOf(gears);
        steep = List.copyOf(steep);
    }

    /**
     * One gear.
     *
     * @param gear     ring and sprocket
     * @param flattest gradient held at the highest cadence
     * @param steepest gradient held at the lowest cadence
     * @param slowest  speed at the lowest cadence, m/s
     * @param fastest  speed at the highest cadence, m/s
     * @param seconds  how long the ride uses it, s
     */
    public record HeldGear(Gear gear, double flattest, double steepest, double slowest, double fastest, double seconds) {
    }

    /**
     * A steep piece in the easiest gear.
     *
     * @param piece   the piece
     * @param climbed how it is ridden
     * @param held    whether the gear is turned at the lowest cadence or faster there
     */
    public record SteepPiece(RidePiece piece, ClimbInGear climbed, boolean held) {
    }

    /** The piece on which the easiest gear is turned slowest; null where no piece is known. */
    public SteepPiece hardest() {
        SteepPiece out = null;
        for (SteepPiece each : steep) {
            out = out == null || each.climbed().cadence().mid() < out.climbed().cadence().mid() ? each : out;
        }
        return out;
    }

    /**
     * Works it out for a call.
     *
     * @param mounted rings and cassette of a build, in place of those recommended; null for none
     * @return null where no ride was estimated, or the decisions name no gears that are made
     */
    public static HeldGradients of(Call call, Drivetrain mounted) {
        EstimatedRide on = call.demands().estimated();
        Drivetrain drivetrain = on == null ? null : mounted != null ? mounted : GearChoice.decided(call, ShippedRules.realPairs());
        return drivetrain == null ? null : of(call, on, drivetrain);
    }

    private static HeldGradients of(Call call, EstimatedRide on, Drivetrain drivetrain) {
        RideEstimate estimate = on.estimate();
        CadenceAnalysis cadence = GearChoice.turning(call);
        DrivetrainResult geared = cadence.of(drivetrain);
        double left = estimate.powerAt(estimate.riding().mid());
        double rolling = estimate.rolling(estimate.way().ground(estimate.stepAt(on.easiestAt() == null ? 0 : Math.min(on.easiestAt(), estimate.way().length())))).mid();
        PowerBalance balance = PowerBalance.of(estimate.basis().mass().mid(), estimate.basis().dragArea().mid(), rolling);
        List<HeldGear> gears = new ArrayList<>();
        for (DrivetrainResult.GearTime use : geared.use()) {
            double slowest = use.gear().speed(cadence.lowestCadence().mid(), geared.circumference());
            double fastest = use.gear().speed(cadence.highestCadence().mid(), geared.circumference());
            gears.add(new HeldGear(use.gear(), held(balance, left, fastest, estimate.density()), held(balance, left, slowest, estimate.density()), slowest,
                    fastest, use.seconds()));
        }
        List<SteepPiece> steep = new ArrayList<>();
        for (RidePiece piece : on.pieces()) {
            ClimbInGear climbed = cadence.climbed(piece, drivetrain.easiest());
            steep.add(new SteepPiece(piece, climbed, climbed.cadence().mid() >= cadence.lowestCadence().mid() && !climbed.walked()));
        }
        return new HeldGradients(drivetrain, estimate.powerFactor().times(left), rolling, cadence.lowestCadence(), cadence.highestCadence(), gears, steep,
                geared.hardest().topSpeed(), useful(call, cadence));
    }

    private static double held(PowerBalance balance, double power, double speed, double density) {
        return Math.max(-STEEPEST, Math.min(STEEPEST, balance.gradient(power, speed, 0, density)));
    }

    /** The ratio that is useful at speed is turned at the highest cadence. */
    private static Range useful(Call call, CadenceAnalysis cadence) {
        MeasureValue ratio = call.demands().get(Measure.RATIO_USEFUL_AT_SPEED);
        if (ratio == null) {
            return null;
        }
        var resolution = Measure.RATIO_USEFUL_AT_SPEED.scale().resolution();
        double perRatio = cadence.highestCadence().mid() / 60 * cadence.circumference();
        return new Range(resolution.base(ratio.low()) * perRatio, resolution.base(ratio.mid()) * perRatio, resolution.base(ratio.high()) * perRatio);
    }
}
