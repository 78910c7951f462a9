package courseworthy.demand;

import courseworthy.ride.Range;

/**
 * How wide a tyre measures on a rim other than the one its width is marked for. A casing of fixed length from bead to bead takes the shape of
 * an arc over the rim; so a wider rim widens the tyre by about a third of the difference (geometry). Real casings stretch and are not round,
 * and what makers mark differs, so it is a range: half as much to half as much again. Measuring rims by width are those of ETRTO's
 * revision of 2020 (from memory).
 */
public final class MountedWidth {

    /** Marked widths up to these, mm, and the inner width of their measuring rims, mm. */
    private static final double[] UP_TO = {28, 34, 46, 57, 65};
    private static final double[] RIM = {19, 21, 23, 25, 30, 35};
    private static final double LEAST = 0.5;
    private static final double MOST = 1.5;

    private MountedWidth() {
    }

    /** Inner width of the rim on which a width is measured, m. */
    public static double measuringRim(double marked) {
        int i = 0;
        while (i < UP_TO.length && marked * 1000 > UP_TO[i] + 0.5) {
            i++;
        }
        return RIM[i] / 1000;
    }

    /**
     * Width as mounted, m.
     *
     * @param marked on the tyre, m
     * @param rim    inner width of the rim it is on, m; less than the tyre's width
     */
    public static Range of(double marked, double rim) {
        double change = arc(marked, measuringRim(marked), rim) - marked;
        return Range.around(marked + LEAST * change, marked + change, marked + MOST * change);
    }

    /** Width of the arc over a rim whose casing is as long as over another, m; by halving, to a micrometre. */
    private static double arc(double width, double over, double rim) {
        double casing = casing(width, over);
        double low = Math.max(rim, width / 2);
        double high = 2 * width;
        while (high - low > 1e-6) {
            double between = (low + high) / 2;
            if (casing(between, rim) < casing) {
                low = between;
            } else {
                high = between;
            }
        }
        return (low + high) / 2;
    }

    /** Length of the arc of a circle, m, that stands on a chord: the longer of the two. */
    private static double casing(double diameter, double chord) {
        return diameter * (Math.PI - Math.asin(Math.min(1, chord / diameter)));
    }
}
