package courseworthy.build;

import courseworthy.fit.FitResult;
import courseworthy.fit.SeatFit;
import courseworthy.workshop.MountingPlace;
import courseworthy.workshop.Part;
import courseworthy.workshop.PartDetail;
import java.util.List;
import java.util.Map;

/**
 * One bike's position carried over to another. Lengths in m, angles in degrees.
 *
 * @param from      the position to carry
 * @param now       the other bike as it stands
 * @param choices   stems of the workshop that are known to fit, each with the spacers that bring the hands closest, the closest first
 * @param advised   of these, the one to fit: the closest, where it comes so much closer than the stem that is on it as its work is worth;
 *                  null where none is known to fit
 * @param unknown   the closest of those not known to fit, where it comes closer by more than a millimetre; else null
 * @param refused   stems that do not fit, each as it would come closest
 * @param wished    a stem of a common size that would come closer than any at hand; null where none would by much
 * @param saddle    the saddle's place
 * @param toMeasure what is missing, in sentences without a full stop
 * @param toMind    what to mind, in sentences without a full stop
 */
public record PositionTransfer(Position from, Position now, List<StemChoice> choices, StemChoice advised, StemChoice unknown, List<StemChoice> refused, StemChoice wished, Saddle saddle,
        List<String> toMeasure, List<String> toMind) {

    public PositionTransfer {
        choices = List.copyOf(choices);
        refused = List.copyOf(refused);
        toMeasure = List.copyOf(toMeasure);
        toMind = List.copyOf(toMind);
    }

    /**
     * A stem on some spacers.
     *
     * @param stem     the stem
     * @param turned   whether it is mounted the other way up than its angle is written for
     * @param angle    of the stem as mounted, against the square of the steerer
     * @param under    height of the spacers under it
     * @param spacers  what they are made of
     * @param above    steerer left above the stem, to be filled with spacers; null where it is not known
     * @param forward  how far the hands come too far forward; negative where they come too far back
     * @param up       how far they come too high; negative where too low
     * @param fit      whether it is known to fit, else what is in the way or what to find out
     * @param asNow    whether it is how the bike stands
     */
    public record StemChoice(Part stem, boolean turned, double angle, double under, Map<Part, Double> spacers, Double above,
            double forward, double up, FitResult fit, boolean asNow) {

        public StemChoice {
            spacers = java.util.Collections.unmodifiableMap(new java.util.LinkedHashMap<>(spacers));
        }

        /** Length of the stem. */
        public double length() {
            return stem.number(PartDetail.STEM_LENGTH);
        }

        /** How far the hands are off. */
        public double apart() {
            return Math.hypot(forward, up);
        }
    }

    /**
     * The saddle on the bike carried to.
     *
     * @param height    wanted, bottom bracket to saddle top along the seat tube; null where it is not known
     * @param longer    how much longer its cranks are, which the height makes up for; null where not known, and then left out
     * @param setback   wanted, tip behind the bottom bracket; null where not known
     * @param onRails   how much farther forward on its rails the same saddle sits than on the bike carried from; null where not known
     * @param post      the post that is on it; null where none is listed
     * @param fit       whether the post goes in deep enough, and not too deep, at that height; null without a post or a height
     * @param others    loose posts that do, where it does not
     */
    public record Saddle(Double height, Double longer, Double setback, Double onRails, Part post, FitResult fit, List<Part> others) {
        public Saddle {
            others = List.copyOf(others);
        }
    }

    /** Whether the bars are known to be of different shapes, so that the hands lie elsewhere on them. */
    public boolean otherBar() {
        return from.barShape() != null && now.barShape() != null && !from.barShape().equals(now.barShape());
    }

    /**
     * The saddle of the bike carried from, where one that is not known to be ridden in by this rider is on this one and it may go on here; else
     * null.
     */
    public Part ownSaddle() {
        Part own = from.parts().get(MountingPlace.SADDLE);
        Part other = now.parts().get(MountingPlace.SADDLE);
        Part post = now.parts().get(MountingPlace.SEATPOST);
        boolean riddenIn = other != null && other.has(PartDetail.HOURS_USED) && !BuildVariables.isNew(other) && !now.bike().isAnothers();
        boolean fits = own != null && other != null && post != null && own != other && !riddenIn && own.mayServe(now.bike()) && SeatFit.rails(own, post).fits();
        return fits ? own : null;
    }

    /** The closest that is known to fit; null where none is. */
    public StemChoice closest() {
        return choices.isEmpty() ? null : choices.get(0);
    }
}
