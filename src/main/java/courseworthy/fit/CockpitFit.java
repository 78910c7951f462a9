package courseworthy.fit;

import courseworthy.units.RuleValue;
import courseworthy.workshop.Part;
import courseworthy.workshop.PartDetail;

/**
 * Whether stem, bar, shifters and extensions go together. Every question is total: whatever is missing makes it
 * unknown, with what to measure. Used by the rules of fit and by the search for a build alike. Sizes are in m, masses in kg, angles in degrees.
 */
public final class CockpitFit {

    private CockpitFit() {
    }

    public static FitResult steererClamp(Part stem, Part fork) {
        return FitComparison.same(stem, fork, PartDetail.STEERER_CLAMP);
    }

    /** The cut steerer against head tube, spacers and stem clamp. @param spacers null where there are none */
    public static FitResult steererLength(Part fork, Part stem, Part spacers, Part bike) {
        Double height = spacers == null ? Double.valueOf(0) : spacers.number(PartDetail.HEIGHT);
        return steererLength(fork, stem, spacers, height, bike);
    }

    /**
     * As {@link #steererLength(Part, Part, Part, Part)} for a height of spacers under the stem, m; what the fork's maker permits of
     * them is kept where it is known.
     */
    public static FitResult steererLength(Part fork, Part stem, double under, Part bike) {
        return steererLength(fork, stem, null, under, bike);
    }

    private static FitResult steererLength(Part fork, Part stem, Part spacers, Double height, Part bike) {
        Double length = fork.number(PartDetail.STEERER_LENGTH);
        Double head = bike.number(PartDetail.HEAD_TUBE);
        Double clamp = stem.number(PartDetail.CLAMP_HEIGHT);
        Double most = fork.number(PartDetail.MOST_SPACERS);
        if (most != null && height != null && height > most + 1e-9) {
            return FitResult.not(FitComparison.mm(height - most) + " more spacers under the stem than the maker of " + fork + " permits");
        }
        if (length == null || head == null || clamp == null || height == null) {
            return FitResult.unknown(length == null ? "measure the steerer of " + fork : head == null ? "measure the head tube of " + bike
                    : clamp == null ? "measure the clamp of " + stem : "measure " + spacers);
        }
        double above = length - head - clamp - height;
        if (above < -1e-9) {
            return FitResult.not("the steerer is " + FitComparison.mm(-above) + " too short");
        }
        if (above > RuleValue.STEERER_OVER_STEM.inBase() + 1e-9) {
            return FitResult.not("the steerer stands " + FitComparison.mm(above) + " out of the stem");
        }
        return above < 0.003 ? FitResult.FITS : FitResult.mind(FitComparison.mm(above) + " of spacers go above the stem, because the steerer is cut long");
    }

    /** The stem lengths that the frame's maker permits; most state none. */
    public static FitResult stemLength(Part stem, Part bike) {
        if (!bike.has(PartDetail.LEAST_STEM) && !bike.has(PartDetail.MOST_STEM)) {
            return FitResult.FITS;
        }
        Double length = stem.number(PartDetail.STEM_LENGTH);
        return length == null ? FitResult.unknown("measure the length of " + stem)
                : FitComparison.within(length, bike.number(PartDetail.LEAST_STEM), bike.number(PartDetail.MOST_STEM), "the stem lengths that " + bike + " permits");
    }

    public static FitResult barClamp(Part bar, Part stem) {
        return FitComparison.same(bar, stem, PartDetail.BAR_CLAMP);
    }

    public static FitResult barShape(Part shifter, Part bar) {
        return FitComparison.label(shifter, bar, PartDetail.BAR_SHAPE);
    }

    public static FitResult extensions(Part extensions, Part bar) {
        Boolean approved = bar.yes(PartDetail.EXTENSIONS_APPROVED);
        if (approved == null) {
            return FitResult.unknown("read whether " + bar + " is approved for clamp-on extensions");
        }
        return approved ? FitComparison.same(extensions, bar, PartDetail.BAR_CLAMP) : FitResult.not("the bar is not approved for clamp-on extensions");
    }
}
