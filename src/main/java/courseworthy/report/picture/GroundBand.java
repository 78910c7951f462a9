package courseworthy.report.picture;

import java.util.List;
import java.util.Objects;

/**
 * Ground of one kind along a lap, and how it is ridden on the first lap.
 *
 * @param fromMetres from the start of the lap
 * @param toMetres   from the start of the lap
 * @param material   for the pattern
 * @param surface    in words; {@code unknown} where it is not known
 * @param others     what the surface may be instead, in words; empty where it is certain
 * @param basis      where the ground is known from
 * @param roughness  0 like new asphalt to 5 barely rideable; null where not known
 * @param grade      technical grade; null where not known
 * @param climbing   null where no height is known
 * @param ridden     how it is ridden
 */
public record GroundBand(double fromMetres, double toMetres, GroundMaterial material, String surface, List<String> others, Basis basis,
        ValueRange roughness, TechnicalGrade grade, ClimbFigures climbing, RiddenStretch ridden) {

    /** Where ground is known from. */
    public enum Basis {
        /** A person wrote it. */
        WRITTEN,
        MAPPED,
        /** Inferred from a map, or one of several. */
        INFERRED,
        /** Taken since nothing else was known. */
        ASSUMED,
        UNKNOWN
    }

    public GroundBand {
        Objects.requireNonNull(material);
        Objects.requireNonNull(surface);
        Objects.requireNonNull(basis);
        Objects.requireNonNull(ridden);
        others = List.copyOf(others);
    }

    /**
     * How hard ground is to ride.
     *
     * @param value 0 to 6
     * @param text  as it is written, {@code 2+}
     */
    public record TechnicalGrade(double value, String text) {
    }

    /** Climbed and lost. */
    public record ClimbFigures(double ascentMetres, double descentMetres) {
    }

    /**
     * How ground is ridden.
     *
     * @param gear         the gear that most of its pedalled time is ridden in, {@code 34x50}; empty where it is not pedalled or no gears are known
     * @param sprocket     teeth of that gear's sprocket; 0 where there is none
     * @param startSeconds when its start is reached, from the start of the ride, stops counted
     */
    public record RiddenStretch(String gear, int sprocket, ValueRange startSeconds) {

        public RiddenStretch {
            Objects.requireNonNull(gear);
            Objects.requireNonNull(startSeconds);
        }
    }
}
