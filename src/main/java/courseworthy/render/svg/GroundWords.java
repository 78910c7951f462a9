package courseworthy.render.svg;

import courseworthy.report.picture.GroundMaterial;

/** What a hatch stands for, in a word. */
final class GroundWords {

    private GroundWords() {
    }

    static String of(GroundMaterial material) {
        return switch (material) {
            case PAVED -> "paved";
            case FIRM -> "firm gravel";
            case GRAVEL -> "loose gravel";
            case EARTH -> "earth";
            case GRASS -> "grass";
            case ROCK -> "rock";
            case SAND -> "sand";
            case MUD -> "mud";
            case SNOW -> "snow or ice";
            case UNKNOWN -> "not known";
        };
    }
}
