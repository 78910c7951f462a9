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

    public static FitResult padShape(Part pads, Part bike) {
        return FitComparison.label(pads, bike, PartDetail.PAD_SHAPE);
    }

    public static FitResult rotorsInOrder(Part front, Part rear) {
        return FitComparison.notLess(front, rear, PartDetail.DIAMETER, "rotor");
    }
}
