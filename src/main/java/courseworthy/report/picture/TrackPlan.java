package courseworthy.report.picture;

import java.util.List;

/**
 * The line of a course seen from above, north up. Places are metres east and north of the middle of its bounds.
 *
 * @param legs       in order; consecutive legs share a point where the track has no break
 * @param kilometres numbered marks along it
 * @param start      where it begins
 * @param finish     where it ends; the same as the start on a loop
 */
public record TrackPlan(List<TrackLeg> legs, List<KilometreMark> kilometres, PlanPoint start, PlanPoint finish) implements Picture {

    public TrackPlan {
        legs = List.copyOf(legs);
        kilometres = List.copyOf(kilometres);
    }

    /** A place. */
    public record PlanPoint(double eastMetres, double northMetres) {
    }

    /**
     * A piece of the line on one kind of ground.
     *
     * @param surface in words
     */
    public record TrackLeg(GroundMaterial material, String surface, List<PlanPoint> points) {

        public TrackLeg {
            points = List.copyOf(points);
        }
    }

    /** A kilometre from the start of the lap. */
    public record KilometreMark(int kilometre, PlanPoint at) {
    }

    @Override
    public <T> T accept(PictureVisitor<T> visitor) {
        return visitor.trackPlan(this);
    }
}
