package courseworthy.fit;

import courseworthy.units.UseCategory;
import courseworthy.workshop.Part;
import courseworthy.workshop.PartDetail;
import courseworthy.workshop.PartKind;
import java.util.List;

/**
 * Whether parts bear the rider, the load and the drops. Every question is total: whatever is missing makes it
 * unknown, with what to measure. Used by the rules of fit and by the search for a build alike. Sizes are in m, masses in kg, angles in degrees.
 */
public final class LoadFit {

    /** Kinds that are marked with what they bear; of others a missing mark says nothing. */
    private static final List<PartKind> MARKED = List.of(PartKind.BIKE, PartKind.WHEEL);

    private LoadFit() {
    }

    public static FitResult bears(Part part, BuildLoad load) {
        Double system = part.number(PartDetail.MASS_LIMIT);
        Double rider = part.number(PartDetail.RIDER_LIMIT);
        if (system == null && rider == null && MARKED.contains(part.kind())) {
            return FitResult.unknown("read the highest mass marked on " + part);
        }
        FitResult whole = system == null || load.system() == null || load.system() <= system ? FitResult.FITS
                : FitResult.not(FitComparison.kg(load.system() - system) + " over its marked limit for rider, kit and bike");
        FitResult alone = rider == null || load.rider() == null || load.rider() <= rider ? FitResult.FITS
                : FitResult.not(FitComparison.kg(load.rider() - rider) + " over its marked limit for the rider");
        return whole.and(alone);
    }

    /** A ledge above the marked category is a limit; the category says no more than that. */
    public static FitResult ledges(Part part, BuildLoad load) {
        Double least = ledgeLimit(part);
        if (load.ledge() == null || least == null || load.ledge() <= least + 1e-9) {
            return FitResult.FITS;
        }
        return FitResult.not("a ledge of " + Math.round(load.ledge() * 100) + " cm is above what it is marked for (" + Math.round(least * 100) + " cm)");
    }

    /** The highest ledge a part is marked for, m, 5 without a bound; null where nothing is written. */
    public static Double ledgeLimit(Part part) {
        String category = part.word(PartDetail.USE_CATEGORY);
        Double written = part.number(PartDetail.LEDGE_LIMIT);
        if (category == null || written == null) {
            return category == null ? written : Double.valueOf(UseCategory.highestDrop(category));
        }
        return Math.min(UseCategory.highestDrop(category), written);
    }
}
