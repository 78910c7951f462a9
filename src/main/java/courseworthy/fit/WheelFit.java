package courseworthy.fit;

import courseworthy.units.RuleValue;
import courseworthy.workshop.Part;
import courseworthy.workshop.PartDetail;

/**
 * Whether tyres, rims, inserts and axles go together. Every question is total: whatever is missing makes it
 * unknown, with what to measure. Used by the rules of fit and by the search for a build alike. Sizes are in m, masses in kg, angles in degrees.
 */
public final class WheelFit {

    /**
     * Permitted tyre widths by rim inner width, mm, of the ETRTO manuals of the 2000s and 2010s (from memory, within a size step):
     * inner width, narrowest and widest tyre. Used to caution alone.
     */
    private static final int[][] OLD_TABLE = {{13, 18, 25}, {15, 23, 32}, {17, 25, 52}, {19, 28, 62}, {21, 35, 64}, {23, 40, 64}, {25, 44, 64},
        {27, 47, 64}, {29, 50, 64}};

    private WheelFit() {
    }

    public static FitResult beadSeat(Part tyre, Part wheel) {
        return FitComparison.same(tyre, wheel, PartDetail.BEAD_SEAT);
    }

    /** The makers' charts where either is given; always the 5 mm of ETRTO; else the old general table cautions. */
    public static FitResult tyreOnRim(Part tyre, Part wheel) {
        Double width = tyre.number(PartDetail.WIDTH);
        Double rim = wheel.number(PartDetail.RIM_INNER_WIDTH);
        FitResult charts = charts(tyre, wheel, width, rim);
        if (width == null || rim == null) {
            // What is known not to fit goes before what is not known.
            return !charts.fits() ? charts
                    : FitResult.unknown(width == null ? "read the width marked on " + tyre : "measure between the rim's walls inside " + wheel);
        }
        if (width - rim < RuleValue.TYRE_OVER_RIM.inBase() - 1e-9) {
            return FitResult.not(FitComparison.mm(RuleValue.TYRE_OVER_RIM.inBase() - (width - rim)) + " too narrow for a rim of " + FitComparison.mm(rim) + " inside");
        }
        return !charts.fits() || isCharted(tyre, wheel) ? charts : general(width, rim);
    }

    private static boolean isCharted(Part tyre, Part wheel) {
        return wheel.has(PartDetail.LEAST_TYRE) && wheel.has(PartDetail.MOST_TYRE) || tyre.has(PartDetail.LEAST_RIM) && tyre.has(PartDetail.MOST_RIM);
    }

    /** Whether both widths are known, neither maker's chart is given, and the general table does not list the tyre for such a rim. */
    public static boolean isOutsideGeneralTable(Part tyre, Part wheel) {
        Double width = tyre.number(PartDetail.WIDTH);
        Double rim = wheel.number(PartDetail.RIM_INNER_WIDTH);
        return width != null && rim != null && !isCharted(tyre, wheel) && general(width, rim) != FitResult.FITS;
    }

    private static FitResult charts(Part tyre, Part wheel, Double width, Double rim) {
        FitResult wheels = width == null ? FitResult.FITS
                : FitComparison.within(width, wheel.number(PartDetail.LEAST_TYRE), wheel.number(PartDetail.MOST_TYRE), "the wheel's chart");
        FitResult tyres = rim == null ? FitResult.FITS : FitComparison.within(rim, tyre.number(PartDetail.LEAST_RIM), tyre.number(PartDetail.MOST_RIM), "the tyre's chart of rims");
        return wheels.and(tyres);
    }

    private static FitResult general(double width, double rim) {
        int[] row = OLD_TABLE[0];
        for (int[] each : OLD_TABLE) {
            if (rim / FitComparison.MM >= each[0] - 0.5) {
                row = each;
            }
        }
        boolean narrower = width / FitComparison.MM < row[1] - 0.5;
        boolean wider = width / FitComparison.MM > row[2] + 0.5;
        if (!narrower && !wider) {
            return FitResult.FITS;
        }
        return FitResult.mind(FitComparison.mm(width) + " is " + (narrower ? "narrower" : "wider") + " than the " + row[1] + " to " + row[2]
                + " mm that the general table lists for a rim of " + FitComparison.mm(rim) + " inside: "
                + (narrower ? "its tread sits flat and the rim stands nearer to the stones" : "it leans over in bends") + ", so check the manufacturers' charts");
    }

    public static FitResult hookless(Part tyre, Part wheel) {
        if (Boolean.FALSE.equals(wheel.yes(PartDetail.HOOKLESS))) {
            return FitResult.FITS;
        }
        Double width = tyre.number(PartDetail.WIDTH);
        boolean wide = width != null && width >= RuleValue.HOOKLESS_TYRE_WIDTH.inBase() - 1e-9;
        if (Boolean.TRUE.equals(tyre.yes(PartDetail.HOOKLESS)) && wide) {
            return FitResult.FITS;
        }
        if (!wheel.has(PartDetail.HOOKLESS)) {
            return FitResult.unknown("see whether the rim of " + wheel + " has hooks");
        }
        if (Boolean.FALSE.equals(tyre.yes(PartDetail.HOOKLESS))) {
            return FitResult.not("not approved for a rim without hooks");
        }
        if (width != null && !wide) {
            return FitResult.not(FitComparison.mm(RuleValue.HOOKLESS_TYRE_WIDTH.inBase() - width) + " too narrow for a rim without hooks");
        }
        return FitResult.unknown("read whether " + tyre + " is approved for rims without hooks");
    }

    /** The tyre's width as mounted, or as marked, against the clearance of fork or frame for its wheel size. */
    public static FitResult clears(Part tyre, Part wheel, Part holder) {
        Double bead = wheel.number(PartDetail.BEAD_SEAT);
        if (bead == null) {
            return FitResult.unknown("read the bead seat diameter of " + wheel);
        }
        Double clearance = holder.clearance(bead);
        if (clearance == null) {
            return FitResult.unknown("find the widest tyre that " + holder + " takes");
        }
        if (clearance == 0) {
            return FitResult.not(holder + " is not made for a wheel of " + FitComparison.mm(bead));
        }
        Double measured = tyre.number(PartDetail.MEASURED_WIDTH);
        Double width = measured == null ? tyre.number(PartDetail.WIDTH) : measured;
        if (width == null) {
            return FitResult.unknown("measure " + tyre + " as mounted");
        }
        if (width > clearance + 1e-9) {
            return FitResult.not(FitComparison.mm(width - clearance) + " too wide: " + FitComparison.mm(clearance) + " clears");
        }
        return measured == null && width + RuleValue.TYRE_OVER_MARKING.inBase() > clearance + 1e-9 ? FitResult.unknown("measure " + tyre + " as mounted") : FitResult.FITS;
    }

    public static FitResult valve(Part wheel) {
        Double depth = wheel.number(PartDetail.RIM_DEPTH);
        Double valve = wheel.number(PartDetail.VALVE_LENGTH);
        if (depth == null || valve == null) {
            return FitResult.unknown((depth == null ? "measure the rim depth of " : "measure the valve of ") + wheel);
        }
        double out = valve - depth;
        return out >= RuleValue.VALVE_OVER_RIM.inBase() - 1e-9 ? FitResult.FITS : FitResult.not("the valve is " + FitComparison.mm(RuleValue.VALVE_OVER_RIM.inBase() - out) + " too short for a rim " + FitComparison.mm(depth) + " deep");
    }

    public static FitResult axle(Part wheel, Part holder) {
        return FitComparison.same(wheel, holder, PartDetail.AXLE_WIDTH).and(FitComparison.label(wheel, holder, PartDetail.AXLE));
    }

    /** Sealant goes where rim and tyre are both made to run without a tube. */
    public static FitResult tubeless(Part part, String what) {
        Boolean tubeless = part.yes(PartDetail.TUBELESS);
        if (tubeless == null) {
            return FitResult.unknown("read whether " + part + " is made to run without a tube");
        }
        return tubeless ? FitResult.FITS : FitResult.not("no " + what + ": " + part + " is not made to run without a tube");
    }

    public static FitResult insert(Part insert, Part tyre) {
        Double width = tyre.number(PartDetail.WIDTH);
        FitResult size = FitComparison.same(insert, tyre, PartDetail.BEAD_SEAT);
        if (width == null) {
            return size.and(FitResult.unknown("read the width marked on " + tyre));
        }
        String find = "find the tyre widths that " + insert + " is made for";
        return size.and(FitComparison.within(width, insert.number(PartDetail.LEAST_TYRE), insert.number(PartDetail.MOST_TYRE), "what the insert is made for"))
                .and(FitComparison.known(insert, PartDetail.LEAST_TYRE, find)).and(FitComparison.known(insert, PartDetail.MOST_TYRE, find));
    }

    public static FitResult widthsInOrder(Part front, Part rear) {
        Double one = mounted(front);
        Double other = mounted(rear);
        if (one == null || other == null) {
            return FitResult.unknown("measure " + (one == null ? front : rear) + " as mounted");
        }
        return Math.round(one / FitComparison.MM) >= Math.round(other / FitComparison.MM) ? FitResult.FITS : FitResult.not("the front tyre is " + FitComparison.mm(other - one) + " narrower than the rear");
    }

    private static Double mounted(Part tyre) {
        Double measured = tyre.number(PartDetail.MEASURED_WIDTH);
        return measured == null ? tyre.number(PartDetail.WIDTH) : measured;
    }

    public static FitResult treadsInOrder(Part front, Part rear) {
        String one = front.word(PartDetail.TREAD);
        String other = rear.word(PartDetail.TREAD);
        if (one == null || other == null) {
            return FitResult.unknown("look at the tread of " + (one == null ? front : rear));
        }
        return PartDetail.TREAD.words().indexOf(one) >= PartDetail.TREAD.words().indexOf(other) ? FitResult.FITS : FitResult.not("the front tread is faster than the rear");
    }
}
