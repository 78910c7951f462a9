package courseworthy.course;

/**
 * What is written of the ground on a stretch; null means unknown, never smooth.
 *
 * @param surface        OpenStreetMap {@code surface}
 * @param smoothness     OpenStreetMap {@code smoothness}
 * @param trackGrade     OpenStreetMap {@code tracktype}, 1 solid to 5 soft
 * @param mtbScale       OpenStreetMap {@code mtb:scale}, 0 to 6, a {@code +} or {@code -} as a third of a grade
 * @param sharpStones    stones with edges that cut casings
 * @param ruts           ruts
 * @param roots          roots
 * @param sand           loose sand deep enough to steer in
 * @param mudWhenWet     turns to mud in rain
 * @param waterCrossings number of fords
 * @param ledgeHeight     highest ledge that must be ridden, m
 * @param turnsPerKm     turns that must be braked for, per km
 */
public record Ground(Surface surface, Smoothness smoothness, Integer trackGrade, Double mtbScale, Boolean sharpStones, Boolean ruts,
        Boolean roots, Boolean sand, Boolean mudWhenWet, Integer waterCrossings, Double ledgeHeight, Double turnsPerKm) {

    public static final Ground UNKNOWN = builder().build();

    /** This ground with whatever is unknown taken from another. */
    public Ground orElse(Ground other) {
        return new Ground(or(surface, other.surface), or(smoothness, other.smoothness), or(trackGrade, other.trackGrade),
                or(mtbScale, other.mtbScale), or(sharpStones, other.sharpStones), or(ruts, other.ruts), or(roots, other.roots),
                or(sand, other.sand), or(mudWhenWet, other.mudWhenWet), or(waterCrossings, other.waterCrossings),
                or(ledgeHeight, other.ledgeHeight), or(turnsPerKm, other.turnsPerKm));
    }

    private static <T> T or(T first, T second) {
        return first != null ? first : second;
    }

    public static Builder builder() {
        return new Builder();
    }

    /** Names each part as it is given. */
    public static final class Builder {

        private Surface surface;
        private Smoothness smoothness;
        private Integer trackGrade;
        private Double mtbScale;
        private Boolean sharpStones;
        private Boolean ruts;
        private Boolean roots;
        private Boolean sand;
        private Boolean mudWhenWet;
        private Integer waterCrossings;
        private Double ledgeHeight;
        private Double turnsPerKm;

        private Builder() {
        }

        public Builder surface(Surface value) {
            surface = value;
            return this;
        }

        public Builder smoothness(Smoothness value) {
            smoothness = value;
            return this;
        }

        public Builder trackGrade(Integer value) {
            trackGrade = value;
            return this;
        }

        public Builder mtbScale(Double value) {
            mtbScale = value;
            return this;
        }

        public Builder sharpStones(Boolean value) {
            sharpStones = value;
            return this;
        }

        public Builder ruts(Boolean value) {
            ruts = value;
            return this;
        }

        public Builder roots(Boolean value) {
            roots = value;
            return this;
        }

        public Builder sand(Boolean value) {
            sand = value;
            return this;
        }

        public Builder mudWhenWet(Boolean value) {
            mudWhenWet = value;
            return this;
        }

        public Builder waterCrossings(Integer value) {
            waterCrossings = value;
            return this;
        }

        public Builder ledgeHeight(Double value) {
            ledgeHeight = value;
            return this;
        }

        public Builder turnsPerKm(Double value) {
            turnsPerKm = value;
            return this;
        }

        public Ground build() {
            return new Ground(surface, smoothness, trackGrade, mtbScale, sharpStones, ruts, roots, sand, mudWhenWet, waterCrossings,
                    ledgeHeight, turnsPerKm);
        }
    }
}
