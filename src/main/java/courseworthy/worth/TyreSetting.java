package courseworthy.worth;

import courseworthy.ride.Range;
import courseworthy.units.PressureSteps;

/**
 * What to pump one tyre to.
 *
 * @param load      on the wheel at the start line, kg
 * @param tyre      the tyre itself
 * @param start     gauge pressure at the start, Pa
 * @param pump      what the gauge shows where it is pumped, Pa
 * @param worth     pressures worth trying at the start, inside floor and ceiling, Pa
 * @param floor     against rim strikes, Pa
 * @param ceiling   the lowest limit from above, Pa; null where none is known
 * @param wet       for wet ground, Pa; null where the ground is wet already or it would be no lower
 * @param capped    whether the gauge at the pump was held at the ceiling
 * @param most      the most the gauge would show on the way, Pa
 */
public record TyreSetting(Range load, Tyre tyre, double start, double pump, Range worth, double floor, Double ceiling, Double wet, boolean capped, double most) {

    /**
     * A mounted tyre.
     *
     * @param width     as mounted, m
     * @param mounted   what a tyre marked with that width measures on the recommended rim, m; null where the rim is not decided
     * @param rim       inner width of the rim, m; 0 where not decided
     * @param published whether the published relation of pressure to width holds; else practice
     */
    public record Tyre(double width, Range mounted, double rim, boolean published) {
    }

    /** Less than this apart is not worth a word, Pa (judgement). */
    private static final double WORTH_SAYING = 4_000;

    /** Whether heat or height raises it on the way by more than a gauge shows. */
    public boolean risesOnTheWay() {
        return PressureSteps.nearest(most) - start > WORTH_SAYING;
    }

    /** Whether it rises over the ceiling on the way. */
    public boolean risesOverCeiling() {
        return ceiling != null && most > ceiling + WORTH_SAYING && PressureSteps.nearest(most) > PressureSteps.down(ceiling) + 1;
    }

    /** Whole pounds per square inch nearest to a pressure, never above the ceiling. */
    public long psi(double pascal) {
        return PressureSteps.psi(pascal, ceiling);
    }
}
