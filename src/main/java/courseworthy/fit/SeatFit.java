package courseworthy.fit;

import courseworthy.workshop.Part;
import courseworthy.workshop.PartDetail;
import java.util.List;

/**
 * Whether saddle and seatpost go together and into the frame. Every question is total: whatever is missing makes it
 * unknown, with what to measure. Used by the rules of fit and by the search for a build alike. Sizes are in m, masses in kg, angles in degrees.
 */
public final class SeatFit {

    private SeatFit() {
    }

    public static FitResult postDiameter(Part post, Part bike) {
        Double one = post.number(PartDetail.POST_DIAMETER);
        Double other = bike.number(PartDetail.POST_DIAMETER);
        if (one == null || other == null) {
            return FitComparison.same(post, bike, PartDetail.POST_DIAMETER);
        }
        double apart = Math.abs(one - other);
        return apart < 0.00005 ? FitResult.FITS : FitResult.not(FitComparison.mm(apart) + (one > other ? " too thick" : " too thin"));
    }

    /** How deep the post stands in the frame at the saddle height written of the bike. */
    public static FitResult postInsertion(Part post, Part saddle, Part bike) {
        return postInsertion(post, saddle, bike, bike.number(PartDetail.SADDLE_HEIGHT));
    }

    /** As {@link #postInsertion(Part, Part, Part)} at a saddle height, m; null where it is not known. */
    public static FitResult postInsertion(Part post, Part saddle, Part bike, Double wanted) {
        Double length = post.number(PartDetail.LENGTH);
        Double tube = bike.number(PartDetail.SEAT_TUBE);
        Double top = saddle.number(PartDetail.HEIGHT);
        Double frames = bike.number(PartDetail.LEAST_POST_INSERTION);
        Double posts = post.number(PartDetail.LEAST_INSERTION);
        if (length == null || wanted == null || tube == null || top == null || posts == null) {
            return FitResult.unknown(length == null ? "measure the length of " + post : posts == null ? "read the insertion marked on " + post
                    : top == null ? "measure " + saddle + " from rails to top" : "measure the saddle height and the seat tube of " + bike);
        }
        double inside = length - (wanted - tube - top);
        double least = frames == null ? posts : Math.max(posts, frames);
        if (inside < least - 1e-9) {
            return FitResult.not("the post stands " + FitComparison.mm(least - inside) + " too far out at this saddle height");
        }
        Double most = bike.number(PartDetail.MOST_POST_INSERTION);
        if (most == null) {
            return FitResult.unknown("measure how deep a post can go into " + bike);
        }
        return inside > most + 1e-9 ? FitResult.not("the post is " + FitComparison.mm(inside - most) + " too long for the seat tube") : FitResult.FITS;
    }

    /** The cable or hose of a dropper post in a frame that takes it so; a frame and a post that say nothing of it are not asked. */
    public static FitResult dropperRouting(Part post, Part bike) {
        String routing = post.word(PartDetail.ROUTING);
        List<String> taken = bike.words(PartDetail.DROPPER_ROUTING);
        if (!Boolean.TRUE.equals(post.yes(PartDetail.DROPPER)) || routing == null && taken == null) {
            return FitResult.FITS;
        }
        if (routing == null || taken == null) {
            return FitResult.unknown(routing == null ? "find the routing of " + post : "find which dropper routing " + bike + " takes");
        }
        return taken.contains(routing) ? FitResult.FITS : FitResult.not(routing + " routing, where " + bike + " takes " + String.join(" and ", taken));
    }

    /** A post that names a remote is worked by one on the bar. @param remote null for none */
    public static FitResult dropperRemote(Part post, Part remote) {
        return RemoteFit.worked(post, remote);
    }

    public static FitResult rails(Part saddle, Part post) {
        return FitComparison.label(saddle, post, PartDetail.RAILS);
    }
}
