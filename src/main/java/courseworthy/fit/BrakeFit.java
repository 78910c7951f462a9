package courseworthy.fit;

import courseworthy.workshop.Part;
import courseworthy.workshop.PartDetail;
import java.util.List;

/**
 * Whether rotors, pads and their hubs go together. Every question is total: whatever is missing makes it
 * unknown, with what to measure. Used by the rules of fit and by the search for a build alike. Sizes are in m, masses in kg, angles in degrees.
 */
public final class BrakeFit {

    private BrakeFit() {
    }

    public static FitResult rotorMount(Part rotor, Part wheel) {
        return FitComparison.label(rotor, wheel, PartDetail.ROTOR_MOUNT);
    }

    public static FitResult rotorSize(Part rotor, Part holder) {
        Double diameter = rotor.number(PartDetail.DIAMETER);
        if (diameter == null) {
            return FitResult.unknown("measure " + rotor);
        }
        FitResult fit = FitComparison.within(diameter, holder.number(PartDetail.LEAST_ROTOR), holder.number(PartDetail.MOST_ROTOR), "what " + holder + " takes");
        return fit.and(FitComparison.known(holder, PartDetail.MOST_ROTOR, "find the largest rotor that " + holder + " takes"));
    }

    public static FitResult padsPermitted(Part pads, Part rotor) {
        String compound = pads.word(PartDetail.COMPOUND);
        List<String> permitted = rotor.words(PartDetail.PADS_PERMITTED);
        if (compound == null || permitted == null) {
            return FitResult.unknown(compound == null ? "read the compound of " + pads : "read which pads " + rotor + " permits");
        }
        return permitted.contains(compound) ? FitResult.FITS : FitResult.not(compound + " pads, where the rotor permits " + String.join(" and ", permitted));
    }

    /** The caliper's own shape where one is listed, else the brake's as it is written of the bike. @param caliper null where none is listed */
    public static FitResult padShape(Part pads, Part caliper, Part bike) {
        return FitComparison.label(pads, caliper == null ? bike : caliper, PartDetail.PAD_SHAPE);
    }

    /**
     * A caliper sits over one size of rotor: on the mount itself over the one that it is made for, else on an adapter. Where nothing is written
     * of either, an adapter may be there without being listed.
     *
     * @param adapter null for none
     * @param holder  the fork or the bike
     */
    public static FitResult adapterForRotor(Part rotor, Part adapter, Part holder) {
        Double mount = holder.number(PartDetail.MOUNT_ROTOR);
        if (adapter == null && mount == null) {
            return FitResult.FITS;
        }
        Double diameter = rotor.number(PartDetail.DIAMETER);
        if (diameter == null) {
            return FitResult.unknown("measure " + rotor);
        }
        if (adapter == null) {
            return Math.abs(mount - diameter) < FitComparison.SAME ? FitResult.FITS
                    : FitResult.not("no adapter for a rotor of " + FitComparison.mm(diameter) + ": the mount of " + holder + " is made for " + FitComparison.mm(mount));
        }
        Double marked = adapter.number(PartDetail.DIAMETER);
        if (marked == null) {
            return FitResult.unknown("read the rotor size marked on " + adapter);
        }
        return Math.abs(marked - diameter) < FitComparison.SAME ? FitComparison.same(adapter, holder, PartDetail.MOUNT_ROTOR)
                : FitResult.not(adapter + " is for a rotor of " + FitComparison.mm(marked) + ", not " + FitComparison.mm(diameter));
    }

    /** @param holder the fork or the bike */
    public static FitResult adapterMount(Part adapter, Part holder) {
        return FitComparison.label(adapter, holder, PartDetail.BRAKE_MOUNT);
    }

    /** On the mount of fork or frame, or on the adapter that is between. @param adapter null for none */
    public static FitResult caliperMount(Part caliper, Part adapter, Part holder) {
        return adapter == null ? FitComparison.label(caliper, holder, PartDetail.BRAKE_MOUNT)
                : FitComparison.label(caliper, PartDetail.BRAKE_MOUNT, adapter, PartDetail.CALIPER_MOUNT);
    }

    /** A caliper that is pulled by a cable and a lever that pushes fluid do nothing for each other; levers that brake too are listed as shifters. */
    public static FitResult actuation(Part caliper, Part levers) {
        String pushed = levers.word(PartDetail.BRAKE_ACTUATION);
        String how = caliper.word(PartDetail.BRAKE_ACTUATION);
        if (pushed == null) {
            return FitResult.FITS;
        }
        return how == null ? FitResult.unknown("see whether " + caliper + " is worked by a cable or by fluid")
                : how.equals(pushed) ? FitResult.FITS : FitResult.not(named(how) + " caliper against " + named(pushed) + " levers");
    }

    private static String named(String actuation) {
        return actuation.equals("cable") ? "cable-pulled" : actuation;
    }

    /** A longer fork takes the front caliper so much farther from the lever than the hose on the bike was measured for. */
    public static FitResult frontHose(Part caliper, Part fork, Part bike) {
        if (!caliper.has(PartDetail.HOSE_LENGTH) && !bike.has(PartDetail.FRONT_HOSE)) {
            return FitResult.FITS;
        }
        Double spare = frontHoseSpare(caliper, fork, bike);
        return spare == null ? FitResult.unknown(missing(caliper, bike, PartDetail.FRONT_HOSE, fork)) : reaches(caliper, spare);
    }

    /** Hose to spare with a fork, m; negative where it does not reach, null where a length is not known. */
    public static Double frontHoseSpare(Part caliper, Part fork, Part bike) {
        Double hose = caliper.number(PartDetail.HOSE_LENGTH);
        Double needed = bike.number(PartDetail.FRONT_HOSE);
        Double length = fork.number(PartDetail.LENGTH);
        Double design = bike.number(PartDetail.DESIGN_FORK_LENGTH);
        return hose == null || needed == null || length == null || design == null ? null : Double.valueOf(hose - needed - (length - design));
    }

    public static FitResult rearHose(Part caliper, Part bike) {
        Double hose = caliper.number(PartDetail.HOSE_LENGTH);
        Double needed = bike.number(PartDetail.REAR_HOSE);
        if (hose == null && needed == null) {
            return FitResult.FITS;
        }
        return hose == null || needed == null ? FitResult.unknown(missing(caliper, bike, PartDetail.REAR_HOSE, null)) : reaches(caliper, hose - needed);
    }

    private static String missing(Part caliper, Part bike, PartDetail needed, Part fork) {
        if (!caliper.has(PartDetail.HOSE_LENGTH)) {
            return "measure the hose of " + caliper;
        }
        if (!bike.has(needed)) {
            return "measure the " + needed.written() + " that " + bike + " needs";
        }
        return fork.has(PartDetail.LENGTH) ? "find the fork length that the geometry of " + bike + " is stated for" : "measure " + fork + " from axle to crown";
    }

    private static FitResult reaches(Part caliper, double spare) {
        return spare > -FitComparison.SAME ? FitResult.FITS : FitResult.not("the hose of " + caliper + " is " + FitComparison.mm(-spare) + " too short");
    }

    public static FitResult rotorsInOrder(Part front, Part rear) {
        return FitComparison.notLess(front, rear, PartDetail.DIAMETER, "rotor");
    }
}
