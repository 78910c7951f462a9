package courseworthy.ride;

import courseworthy.course.Ground;
import courseworthy.course.Stretch;
import java.util.List;

/**
 * What the grounds of a way do to a ride: how they roll, how fast they let it go, and how they hold in bends. Under rain by the hour each has its
 * figures as it is ridden most, and after these once more dry, damp and wet, see {@link HourlyConditions#slot}.
 */
final class GroundFigures {

    /** Dry, damp and wet (computing). */
    private static final int WETNESSES = 3;

    private final DiscretisedCourse way;
    private final RideAssumptions basis;
    private final List<Stretch> stretches;
    final Range[] rolling;
    final Range[] cap;
    final Range[] sideways;
    /** The same two on dry ground, whatever the going. */
    final Range[] dryCap;
    final Range[] drySideways;
    /** Turns that must be braked for and that the track does not show, for each m, by ground. */
    final double[] turns;

    GroundFigures(DiscretisedCourse way, RideAssumptions basis, List<Stretch> stretches) {
        this.way = way;
        this.basis = basis;
        this.stretches = stretches;
        int slots = basis.rains() ? 1 + WETNESSES : 1;
        rolling = new Range[way.grounds() * slots];
        cap = new Range[rolling.length];
        sideways = new Range[rolling.length];
        dryCap = new Range[rolling.length];
        drySideways = new Range[rolling.length];
        turns = new double[way.grounds()];
        for (int i = 0; i < way.grounds(); i++) {
            fill(i, 0, basis.wetness());
            for (int wetness = 0; wetness < slots - 1; wetness++) {
                fill(i, HourlyConditions.slot(wetness), wetness);
            }
            Double counted = ground(i).turnsPerKm();
            turns[i] = counted == null ? 0 : Math.max(0, counted / 1000 - way.turnsShown(way.stretchOf(i)));
        }
    }

    private void fill(int i, int slot, int wetness) {
        Stretch stretch = stretches.get(way.stretchOf(i));
        List<Ground> possible = stretch.possible();
        double more = way.harder(i);
        Range passed = SpeedLimits.passing(stretch);
        int at = i + slot * way.grounds();
        rolling[at] = RollingResistance.of(possible, more, basis.kind(), wetness);
        cap[at] = passed != null ? passed : SpeedLimits.cap(possible, more, basis.kind(), basis.skill(), wetness);
        sideways[at] = SpeedLimits.sideways(possible, basis.skill(), wetness);
        dryCap[at] = passed != null || wetness == 0 ? cap[at] : SpeedLimits.cap(possible, more, basis.kind(), basis.skill(), 0);
        drySideways[at] = wetness == 0 ? sideways[at] : SpeedLimits.sideways(possible, basis.skill(), 0);
    }

    Ground ground(int i) {
        return stretches.get(way.stretchOf(i)).ground();
    }

    /** Takes for each ground the figures of how wet it is over most of its distance. */
    void asRidden(HourlyConditions conditions) {
        double[][] metres = new double[way.grounds()][WETNESSES];
        for (int at = 0; at < way.size() * basis.laps(); at++) {
            int step = at % way.size();
            metres[way.ground(step)][conditions.wetness(at)] += way.length(step);
        }
        for (int i = 0; i < way.grounds(); i++) {
            int most = 0;
            for (int wetness = 1; wetness < WETNESSES; wetness++) {
                most = metres[i][wetness] >= metres[i][most] ? wetness : most;
            }
            int from = i + HourlyConditions.slot(most) * way.grounds();
            rolling[i] = rolling[from];
            cap[i] = cap[from];
            sideways[i] = sideways[from];
        }
    }

    /** By ground, by what share it rolls worse where it is a technical grade harder; 0 off trails. */
    double[] harder() {
        double[] out = new double[way.grounds()];
        for (int i = 0; i < out.length; i++) {
            out[i] = !TrailCorner.on(ground(i).mtbScale(), 0) ? 0
                    : RollingResistance.of(ground(i), way.harder(i) + 1, basis.kind(), basis.wetness()).mid() / rolling[i].mid() - 1;
        }
        return out;
    }
}
