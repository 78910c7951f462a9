package courseworthy.report;

import courseworthy.course.Surface;
import courseworthy.report.picture.GroundMaterial;

/** Surfaces as pictures tell them apart. */
final class GroundMaterials {

    private GroundMaterials() {
    }

    /** @param surface null where not known */
    static GroundMaterial of(Surface surface) {
        if (surface == null) {
            return GroundMaterial.UNKNOWN;
        }
        return switch (surface.family()) {
            case PAVED -> GroundMaterial.PAVED;
            case FIRM -> GroundMaterial.FIRM;
            case GRAVEL -> GroundMaterial.GRAVEL;
            case ROCK -> GroundMaterial.ROCK;
            case EARTH -> surface == Surface.GRASS ? GroundMaterial.GRASS : GroundMaterial.EARTH;
            case SOFT -> surface == Surface.MUD ? GroundMaterial.MUD : surface == Surface.SAND ? GroundMaterial.SAND : GroundMaterial.SNOW;
        };
    }

    /** {@code fine gravel}; {@code unknown} where it is not known. */
    static String words(Surface surface) {
        return surface == null ? "unknown" : surface.tag().replace('_', ' ').replace(':', ' ');
    }
}
