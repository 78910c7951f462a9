package courseworthy.demand;

import courseworthy.ride.DiscretisedCourse;
import courseworthy.ride.Range;
import courseworthy.ride.RideEstimate;
import courseworthy.ride.Roughness;

/**
 * Where aero extensions can be used: off the brakes, so only where nothing is likely to ask for them, and alone. The bounds are
 * practice, no source; each has a loose end that widens the range.
 */
public final class ExtensionUse {

    /** Speeds, m/s, gradients, roughness and turns per km between which hands can leave the brakes (practice, no source). */
    private static final double FAST_ENOUGH = 7;
    private static final double NOT_STEEPER_UP = 0.03;
    private static final double NOT_STEEPER_DOWN = -0.03;
    private static final double TOO_FAST = 14;
    private static final double SMOOTH_ENOUGH = 1.5;
    private static final double SMOOTH_AT_THE_LOOSE_END = 2.2;
    private static final double FEW_TURNS = 2;
    /** Of what could be ridden so, hands go back to the bars for eating, looking and other riders. */
    private static final Range KEPT_UP = new Range(0.5, 0.7, 0.9);

    private final SurveyAssumptions on;
    private final RideEstimate estimate;
    private final boolean[] sure;
    private final boolean[] maybe;

    ExtensionUse(SurveyAssumptions on, RideEstimate estimate) {
        this.on = on;
        this.estimate = estimate;
        sure = new boolean[on.course.stretches().size()];
        maybe = new boolean[sure.length];
        for (int i = 0; i < sure.length; i++) {
            Range roughness = Roughness.of(on.course.stretches().get(i).possible());
            sure[i] = fits(i, roughness, SMOOTH_ENOUGH);
            maybe[i] = roughness == null || fits(i, roughness, SMOOTH_AT_THE_LOOSE_END);
        }
    }

    /** Whether extensions fit a step of the first lap, company apart; the loose end counts ground that only may be smooth enough. */
    public boolean fits(int step, boolean looseEnd) {
        int stretch = estimate.way().stretch(step);
        return (looseEnd ? maybe[stretch] : sure[stretch]) && open(step);
    }

    /** Of the distance where they fit, the share over which hands stay on them, company counted. */
    public Range kept() {
        return new Range(KEPT_UP.low() * (1 - on.groupShare.high()), KEPT_UP.mid() * (1 - on.groupShare.mid()),
                KEPT_UP.high() * (1 - on.groupShare.low()));
    }

    /** Share of the distance. */
    Range share() {
        DiscretisedCourse way = estimate.way();
        double usable = 0;
        double atMost = 0;
        for (int i = 0; i < way.size(); i++) {
            if (open(i)) {
                usable += sure[way.stretch(i)] ? way.length(i) : 0;
                atMost += maybe[way.stretch(i)] ? way.length(i) : 0;
            }
        }
        double alone = 1 - on.groupShare.mid();
        double leastAlone = 1 - on.groupShare.high();
        return new Range(usable * KEPT_UP.low() * leastAlone, usable * KEPT_UP.mid() * alone,
                Math.max(usable, atMost) * KEPT_UP.high() * alone).times(1 / way.length());
    }

    private boolean fits(int stretch, Range roughness, double most) {
        if (roughness == null || roughness.mid() > most) {
            return false;
        }
        var ground = on.course.stretches().get(stretch).ground();
        Double grade = TerrainDemands.technicalGrade(ground);
        boolean loose = Boolean.TRUE.equals(TerrainDemands.sandy(ground));
        return !loose && (grade == null || grade < 1) && (ground.turnsPerKm() == null || ground.turnsPerKm() <= FEW_TURNS);
    }

    private boolean open(int step) {
        DiscretisedCourse way = estimate.way();
        double speed = estimate.speed(0, step);
        double gradient = way.gradient(step);
        return speed >= FAST_ENOUGH && speed <= TOO_FAST && gradient <= NOT_STEEPER_UP && gradient >= NOT_STEEPER_DOWN
                && way.straight(step);
    }
}
